/** Why a reading of a buzzing neck is refused, in both languages and units. */
import { expect, test } from 'vitest';
import { inBothLanguages } from './house.ts';

const { english, german } = await inBothLanguages(() => import('../../src/speech/playing/matches.ts'));
const plain = (text: string) => text.replaceAll(/[\u2068\u2069]/g, '').replaceAll('\u00a0', ' ');

test('another fret that comes first is named, with both forces', () => {
  const refusal = { code: 'other-first', fret: 6, forceN: 0.71, wouldTakeN: 1.93 } as const;
  expect(plain(english.matchRefusalText(refusal, 'metric'))).toContain(
    'hits fret 6 first, from 0.71 N, and that fret only from 1.93 N',
  );
  expect(plain(german.matchRefusalText(refusal, 'metric'))).toContain(
    'zuerst Bund 6, ab 0,71 N, und jenen erst ab 1,93 N',
  );
});

test('a string that lies on the fret says by how much, without a sign', () => {
  expect(plain(english.matchRefusalText({ code: 'lies-on', roomMm: -0.05 }, 'inch'))).toContain('0.002 in too low');
});

test('one that lies on it by what rounds to nothing is not called too low', () => {
  for (const roomMm of [0, -0.002])
    expect(plain(english.matchRefusalText({ code: 'lies-on', roomMm }, 'metric'))).toMatch(/touches that fret without/);
  expect(german.matchRefusalText({ code: 'lies-on', roomMm: 0 }, 'inch')).not.toContain('zu tief');
});

test('the others say what to do', () => {
  expect(english.matchRefusalText({ code: 'not-beyond' }, 'metric')).toMatch(/beyond/);
  expect(english.matchRefusalText({ code: 'too-unsure' }, 'metric')).toMatch(/more closely/);
});
