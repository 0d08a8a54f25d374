import { describe, expect, test } from 'vitest';
import { bowKind, bowText } from '../../src/speech/bow.ts';
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
