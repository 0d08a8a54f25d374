/** Rows of the table from times that were taken one by one. */
import { quantile, type BenchRow } from '../measure.ts';

/** Median and 10–90 % of some times. */
export function timed(what: string, timesMs: readonly number[], aimMs?: number): BenchRow {
  const sorted = timesMs.toSorted((a, b) => a - b);
  const row: BenchRow = {
    what,
    unit: 'ms',
    median: quantile(sorted, 0.5),
    low: quantile(sorted, 0.1),
    high: quantile(sorted, 0.9),
    runs: sorted.length,
  };
  return aimMs === undefined ? row : { ...row, aim: aimMs };
}

/** One percentile of some times as a row of its own, because it has an aim of its own. */
export function percentile(what: string, timesMs: readonly number[], percent: number, aimMs: number): BenchRow {
  const value = quantile(
    timesMs.toSorted((a, b) => a - b),
    percent / 100,
  );
  return {
    what: `${what}, ${percent}th percentile`,
    unit: 'ms',
    median: value,
    low: value,
    high: value,
    runs: 1,
    aim: aimMs,
  };
}
