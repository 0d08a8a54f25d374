import { describe, expect, test } from 'vitest';
import { counted, measure, quantile } from './measure.ts';
import { tableOf } from './table.ts';

test('quantiles are interpolated', () => {
  expect([0, 0.25, 0.5, 1].map((part) => quantile([1, 2, 3, 5], part))).toEqual([1, 1.75, 2.5, 5]);
  expect(quantile([4], 0.9)).toBe(4);
});

test('a measurement has its median between its percentiles and its yardstick from the operations', async () => {
  let sum = 0;
  const work = () => (sum += Math.sqrt(sum + 1));
  const row = await measure('work', work, { flop: 3e6, yardstick: { flopPerSecond: 1e9 }, budgetMs: 20, aimMs: 5 });
  expect(row.low).toBeLessThanOrEqual(row.median);
  expect(row.median).toBeLessThanOrEqual(row.high);
  expect(row.runs).toBeGreaterThanOrEqual(5);
  // 3 million operations at a thousand million per second are 3 ms; rounding only.
  expect(Math.abs((row.yardstick ?? 0) / 3 - 1)).toBeLessThan(1e-12);
  expect(row.aim).toBe(5);
});

test('a promise is waited for', async () => {
  let finished = 0;
  const row = await measure(
    'later',
    async () => {
      await Promise.resolve();
      finished += 1;
    },
    { budgetMs: 20 },
  );
  expect(finished).toBeGreaterThanOrEqual(row.runs);
});

describe('the table', () => {
  test('shows median, spread, yardstick, aim and whether it was met', () => {
    const row = { what: 'solve', unit: 'ms', median: 12.345, low: 11, high: 20.5, runs: 40, yardstick: 4, aim: 25 };
    const text = tableOf([row, counted('triangles', 123456, '', 100_000)]);
    const [head, rule, solve, triangles] = text.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
    expect(head?.[1]).toBe('what');
    expect(rule?.[1]).toMatch(/^-+$/);
    expect(solve?.slice(1, -1)).toEqual(['solve', '12.3', '11.0–20.5', 'ms', '40', '4.00', '3.09', '25.0', 'met']);
    expect(triangles?.slice(1, -1)).toEqual(['triangles', '123456', '', '', '1', '', '', '100000', 'missed']);
    expect(new Set(text.split('\n').map((line) => line.length)).size).toBe(1);
  });
});
