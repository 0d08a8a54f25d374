import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { checkChange } from '../../src/neck/schema.ts';
import { bowKind, bowText } from '../../src/speech/bow.ts';
import { inReadersUnits, problemTexts } from '../../src/speech/problems.ts';
import { timeText } from '../../src/speech/times.ts';

describe('a bow in words', () => {
  test.each([
    [-0.291, 'metric', '0.29\u00a0mm back-bow'],
    [0.06, 'metric', '0.06\u00a0mm relief'],
    [0.004, 'metric', 'flat'],
    [-0.004, 'metric', 'flat'],
    [-0.291, 'inch', '0.011\u00a0in back-bow'],
    [0.01, 'inch', 'flat'],
  ] as const)('%d in %s is “%s”', (relief, system, text) => {
    expect(bowText(relief, system)).toBe(text);
  });

  test('what is printed as nothing is called flat, and nothing else is', () => {
    for (const system of ['metric', 'inch'] as const) {
      for (let relief = -0.03; relief <= 0.03; relief += 0.0007) {
        expect(bowKind(relief, system) === 'flat').toBe(!/[1-9]/.test(bowText(relief, system)));
      }
    }
  });
});

describe('problems in the reader’s units', () => {
  test('stay as they are in mm', () => {
    const [problem] = checkChange(defaultBuild(), { slotDepthMm: 6 });
    expect(problemTexts([problem!, problem!], 'metric')).toEqual([problem!.message]);
  });

  test.each([
    ['Kerf (kerfMm) is 3; it takes 0.3 to 1.2 mm.', 'Kerf (kerfMm) is 3; it takes 0.012 to 0.047 in.'],
    [
      'Slot depth is 6 mm; here it can be at most 4.865 mm: 0.3 mm must stay.',
      'Slot depth is 0.24 in; here it can be at most 0.19154 in: 0.012 in must stay.',
    ],
    ['Pull is 10 N here.', 'Pull is 2.2 lbf here.'],
    ['Hardness 500 N/mm³ and 2 N·m stay, and 3 frets.', 'Hardness 500 N/mm³ and 2 N·m stay, and 3 frets.'],
  ])('%s', (metric, inch) => {
    expect(inReadersUnits(metric, 'inch')).toBe(inch);
  });
});

test.each([
  [1 / 24, 'an hour'],
  [0.5, '12 hours'],
  [1, 'a day'],
  [3, '3 days'],
  [7, 'a week'],
  [30, 'a month'],
  [90, '3 months'],
  [45, '45 days'],
  [365, 'a year'],
  [3650, '10 years'],
  [400, '400 days'],
])('%d days are %s', (days, text) => {
  expect(timeText(days)).toBe(text);
});
