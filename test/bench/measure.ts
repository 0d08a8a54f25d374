/**
 * Timing for the bench: medians of repeated runs, and the yardstick that tells how fast this machine's arithmetic is.
 */
import { performance } from 'node:perf_hooks';

/** One line of the bench's table. */
export interface BenchRow {
  /** What was measured. */
  what: string;
  /** Unit of the three values, such as `ms` or `kB`. */
  unit: string;
  median: number;
  /** 10th and 90th percentile of the runs; the same as the median for a value that was counted, not timed. */
  low: number;
  high: number;
  /** How many runs the median is of; 1 for a value that was counted. */
  runs: number;
  /**
   * What the bare arithmetic of this work would take on this machine, in the same unit: its floating-point operations
   * over the rate of a plain dot product.
   */
  yardstick?: number;
  /** The aim for the median, in the same unit. */
  aim?: number;
}

/** What each bench file is given. */
export interface Yardstick {
  /** Floating-point operations per second of a plain dot-product loop, measured in this run. */
  flopPerSecond: number;
}

/** What each `*.bench.ts` exports as its default. */
export type Bench = (yardstick: Yardstick) => BenchRow[] | Promise<BenchRow[]>;

/** How to measure. */
export interface MeasureOptions {
  /** Floating-point operations of one run; gives the row its yardstick. */
  flop?: number;
  yardstick?: Yardstick;
  /** The aim for the median, ms. */
  aimMs?: number;
  /** Measure for about this long after warming up, ms. */
  budgetMs?: number;
}

/** The value below which a part of the sorted values lies, interpolated between neighbours. */
export function quantile(sorted: readonly number[], part: number): number {
  const at = part * (sorted.length - 1);
  const below = sorted[Math.floor(at)] ?? Number.NaN;
  const above = sorted[Math.ceil(at)] ?? Number.NaN;
  return below + (above - below) * (at - Math.floor(at));
}

/**
 * Times a function: warmed up first, then run again and again until the budget is used, quick ones in batches that the
 * clock can resolve.
 *
 * @param what - the row's name
 * @param run - the work; what it returns is ignored, though returning something keeps the work from being optimised away
 * @returns milliseconds per run
 */
export async function measure(
  what: string,
  run: () => unknown,
  { flop, yardstick, aimMs, budgetMs = 1000 }: MeasureOptions = {},
): Promise<BenchRow> {
  const once = async (batch: number): Promise<number> => {
    const start = performance.now();
    for (let count = 0; count < batch; count += 1) {
      const result = run();
      if (result instanceof Promise) await result;
    }
    return (performance.now() - start) / batch;
  };
  const warmUpEnd = performance.now() + budgetMs / 4;
  let estimate = await once(1);
  while (performance.now() < warmUpEnd) estimate = Math.min(estimate, await once(1));

  const batch = Math.max(1, Math.ceil(0.5 / Math.max(estimate, 1e-6)));
  const times: number[] = [];
  const end = performance.now() + budgetMs;
  while (times.length < 5 || (performance.now() < end && times.length < 1000)) times.push(await once(batch));
  times.sort((a, b) => a - b);
  return {
    what,
    unit: 'ms',
    median: quantile(times, 0.5),
    low: quantile(times, 0.1),
    high: quantile(times, 0.9),
    runs: times.length * batch,
    ...(flop !== undefined && yardstick ? { yardstick: (flop / yardstick.flopPerSecond) * 1000 } : {}),
    ...(aimMs === undefined ? {} : { aim: aimMs }),
  };
}

/** A row for something that is counted and comes out the same each time, such as triangles or bytes. */
export function counted(what: string, value: number, unit: string, aim?: number): BenchRow {
  const row: BenchRow = { what, unit, median: value, low: value, high: value, runs: 1 };
  return aim === undefined ? row : { ...row, aim };
}

/**
 * The rate of a plain dot-product loop over arrays that stay in the nearest cache: two operations per element, added up
 * one after the other as written.
 */
export async function measureYardstick(): Promise<{ yardstick: Yardstick; row: BenchRow }> {
  const length = 1024;
  const repeats = 200;
  const a = Float64Array.from({ length }, (_, index) => 1 / (index + 1));
  const b = Float64Array.from({ length }, (_, index) => 1 / (index + 2));
  let kept = 0;
  const row = await measure('yardstick', () => {
    for (let repeat = 0; repeat < repeats; repeat += 1) {
      let sum = 0;
      for (let index = 0; index < length; index += 1) sum += a[index] * b[index];
      kept += sum;
    }
    return kept;
  });
  const toGigaflop = (milliseconds: number): number => (2 * length * repeats) / milliseconds / 1e6;
  return {
    yardstick: { flopPerSecond: toGigaflop(row.median) * 1e9 },
    row: {
      what: 'yardstick: plain dot-product loop',
      unit: 'Gflop/s',
      median: toGigaflop(row.median),
      low: toGigaflop(row.high),
      high: toGigaflop(row.low),
      runs: row.runs,
    },
  };
}
