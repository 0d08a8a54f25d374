/** What a worker refuses reaches the page as it is. */
import { expose, wrap } from 'comlink';
import { expect, test } from 'vitest';
import { Refused } from '../../src/mechanics/refusal.ts';
import { failureOf, failureText } from '../../src/speech/failures.ts';
import { throwRefusals } from '../../src/state/refusals-across.ts';

const worker = {
  refuse: (): number => {
    throw new Refused({ code: 'fret-not-there', fret: 30, frets: 22 });
  },
  fail: (): number => {
    throw new TypeError('no such wood');
  },
};

test('a refusal crosses with its quantities, any other error with its message', async () => {
  throwRefusals();
  const { port1, port2 } = new MessageChannel();
  expose(worker, port1);
  const api = wrap<typeof worker>(port2);
  const thrownBy = (asked: Promise<number>) => asked.then(() => null, failureOf);
  const refused = await thrownBy(api.refuse());
  expect(refused).toEqual({ code: 'fret-not-there', fret: 30, frets: 22 });
  expect(failureText(refused!, 'metric')).toBe('this neck has no fret 30: its frets are 1 to 22');
  expect(await thrownBy(api.fail())).toEqual({ code: 'unforeseen', message: 'no such wood' });
  port1.close();
  port2.close();
});
