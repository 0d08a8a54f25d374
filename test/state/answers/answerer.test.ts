/** Questions beside the build in hand: the latest wins, giving up ends the worker, a crash is told and survived. */
import { describe, expect, test } from 'vitest';
import { createAnswerer, type AnsweringWorker } from '../../../src/state/answers/answerer.ts';

/** Workers whose answers the test gives. */
function workers() {
  const started: { ended: boolean; crash: () => void }[] = [];
  const start = (): AnsweringWorker => {
    const worker = { ended: false, crash: () => undefined as void };
    started.push(worker);
    return {
      api: {} as AnsweringWorker['api'],
      onCrash: (crashed) => (worker.crash = crashed),
      end: () => (worker.ended = true),
    };
  };
  return { started, start };
}

/** An answer that is given later. */
function later<Value>() {
  let give!: (value: Value | null) => void;
  let refuse!: (error: Error) => void;
  const promise = new Promise<Value | null>((resolve, reject) => {
    give = resolve;
    refuse = reject;
  });
  return { ask: () => promise, give, refuse };
}

describe('an answerer', () => {
  test('hands the answer over, and asks the same worker again', async () => {
    const { started, start } = workers();
    const answerer = createAnswerer(start);
    expect(await answerer.ask(async () => 7)).toEqual({ kind: 'answer', value: 7 });
    expect(await answerer.ask(async () => 8)).toEqual({ kind: 'answer', value: 8 });
    expect(started).toHaveLength(1);
  });

  test('drops an earlier question when a later one comes', async () => {
    const answerer = createAnswerer(workers().start);
    const [early, late] = [later<number>(), later<number>()];
    const first = answerer.ask(early.ask);
    const second = answerer.ask(late.ask);
    expect(await first).toEqual({ kind: 'dropped' });
    early.give(1);
    late.give(2);
    expect(await second).toEqual({ kind: 'answer', value: 2 });
  });

  test('giving up ends the worker at once; the next question starts another', async () => {
    const { started, start } = workers();
    const answerer = createAnswerer(start);
    const asked = answerer.ask(later<number>().ask);
    answerer.giveUp();
    expect(await asked).toEqual({ kind: 'dropped' });
    expect(started[0].ended).toBe(true);
    expect(await answerer.ask(async () => 3)).toEqual({ kind: 'answer', value: 3 });
    expect(started).toHaveLength(2);
  });

  test('tells why there is no answer, and goes on after a crash', async () => {
    const { started, start } = workers();
    const answerer = createAnswerer(start);
    const refused = later<number>();
    const first = answerer.ask(refused.ask);
    refused.refuse(new RangeError('relief wanted is 9 mm'));
    expect(await first).toEqual({
      kind: 'failed',
      failure: { code: 'unforeseen', message: 'relief wanted is 9 mm' },
    });
    const lost = answerer.ask(later<number>().ask);
    started[0].crash();
    expect(await lost).toEqual({ kind: 'failed', failure: { code: 'broke-off' } });
    expect(await answerer.ask(async () => 4)).toEqual({ kind: 'answer', value: 4 });
  });
});
