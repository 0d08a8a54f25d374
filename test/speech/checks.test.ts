/** Checks in words: every code, in both languages, with numbers that show what is wrong. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import type { QuantityKey } from '../../src/neck/quantities.ts';
import { checkFretwork } from '../../src/fretwork/checks/checks.ts';
import { inBothLanguages } from './house.ts';

const { english, german } = await inBothLanguages(async () => ({
  checks: await import('../../src/speech/checks.ts'),
  apart: await import('../../src/speech/shown-apart.ts'),
  texts: await import('../../src/speech/en/fretwork/checks.ts'),
}));

/** The number of a text such as "−0,575 mm". */
const numberIn = (text: string) => Number(/^−?[\d.,]+/.exec(text)![0].replace('−', '-').replace(',', '.'));

const QUIET = { ...defaultBuild(), boardWood: 'sugar-maple' };
const found = (change: object, code: string) =>
  checkFretwork({ ...QUIET, ...change }).find((check) => check.code === code)!;

test('a number is named, and says what it needs', () => {
  expect(english.checks.checkNumbers(found({ kerfMm: 0.736 }, 'weak-bite'), 'metric')).toBe(
    'Bite is 0.012\u00a0mm; it needs 0.030\u00a0mm.',
  );
  expect(german.checks.checkNumbers(found({ kerfMm: 0.736 }, 'weak-bite'), 'metric')).toBe(
    'Eingriff der Noppen: 0,012\u00a0mm; nötig sind 0,030\u00a0mm.',
  );
  const regions = [{ fromFret: 12, toFret: 14, kerfMm: 0.736, tangWidthMm: 0.5, studWidthMm: 0.76 }];
  expect(english.checks.checkNumbers(found({ regions }, 'weak-bite'), 'metric')).toBe(
    'Bite is 0.012\u00a0mm at frets 12 to 14; it needs 0.030\u00a0mm.',
  );
  expect(english.checks.checkNumbers(found({ chamferMm: 1 }, 'chamfer-too-wide'), 'inch')).toMatch(
    /^Chamfer is 0\.039\u00a0in at frets 1 to \d+; it may be 0\.036\u00a0in at most\.$/,
  );
  expect(english.checks.checkNumbers(found({}, 'dust'), 'metric')).toBe('');
});

describe('a value is never shown equal to the limit that it breaks', () => {
  test('in the words of a check', () => {
    // Bite (0.76 − 0.7006)/2 = 0.0297: to three digits it is the limit of 0.030.
    expect(english.checks.checkNumbers(found({ kerfMm: 0.7006 }, 'weak-bite'), 'metric')).toBe(
      'Bite is 0.0297\u00a0mm; it needs 0.0300\u00a0mm.',
    );
  });

  test('whatever the value, the unit, the system and the language (seed 4106)', () => {
    // Given and computed; mm, mm², N, GPa, %, days, degrees.
    const keys = fc.constantFrom<QuantityKey>(
      ...(['kerfMm', 'crownLeftMm', 'studAreaMm2', 'pullOutForceN', 'blankModulusGPa', 'rodRangePercent'] as const),
      ...(['wireRadiusPercent', 'restDays', 'flatAfterDays', 'endBevelDegrees', 'settledReliefMm'] as const),
    );
    const sizes = fc.double({ min: -1000, max: 1000, noNaN: true });
    const gaps = fc.integer({ min: 0, max: 9 }).map((digits) => 1.7 * 10 ** -digits);
    fc.assert(
      fc.property(sizes, gaps, keys, (limit, gap, key) => {
        for (const { apart } of [english, german]) {
          for (const system of ['metric', 'inch'] as const) {
            for (const value of [limit - gap, limit + gap]) {
              const shown = apart.shownApart(key, value, limit, system);
              expect(shown.value).not.toBe(shown.limit);
              expect(numberIn(shown.value) < numberIn(shown.limit)).toBe(value < limit);
            }
          }
        }
      }),
      { seed: 4106, numRuns: 500 },
    );
  });

  test('and the usual digits are kept where they tell the two apart', () => {
    expect(english.apart.shownApart('studBiteMm', 0.012, 0.03, 'metric')).toEqual({
      value: '0.012\u00a0mm',
      limit: '0.030\u00a0mm',
    });
    expect(english.apart.shownApart('shelfMm', 2, 2, 'metric').value).toBe('2.00\u00a0mm');
  });

  test('a number of the build keeps the digits that it was given, and its limit has as many', () => {
    expect(english.apart.shownApart('kerfMm', 0.575, 0.6, 'metric')).toEqual({
      value: '0.575\u00a0mm',
      limit: '0.600\u00a0mm',
    });
    // Three digits against two would show 0.604 beside 0.60: the wrong way round.
    expect(english.apart.shownApart('kerfMm', 0.604, 0.60412345, 'metric')).toEqual({
      value: '0.6040\u00a0mm',
      limit: '0.6041\u00a0mm',
    });
    expect(english.apart.shownApart('restDays', 0.5, 1, 'metric').limit).toMatch(/^1(\.0)?\u00a0days?$/);
  });
});

describe.each([
  ['English', english],
  ['German', german],
] as const)('%s', (_name, house) => {
  const { CHECK_TEXTS } = house.texts;
  test('there is a text for each of the 55 codes', () => {
    expect(Object.keys(CHECK_TEXTS)).toHaveLength(55);
  });

  test('every code has a title that is no sentence, and a remedy that is one', () => {
    for (const [code, { title, remedy }] of Object.entries(CHECK_TEXTS)) {
      expect([code, title]).toEqual([code, expect.stringMatching(/^\p{Lu}[^.]*$/u)]);
      expect([code, remedy]).toEqual([code, expect.stringMatching(/^\p{Lu}.*\.$/u)]);
    }
    const titles = Object.values(CHECK_TEXTS).map(({ title }) => title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  test('a variant that has no words is refused, not shown as nothing', () => {
    expect(() => house.checks.checkReason({ code: 'back-bow-no-rod', variant: null, about: [] })).toThrow(
      'check "back-bow-no-rod" has no variant "null"',
    );
  });
});
