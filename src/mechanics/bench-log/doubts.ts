/**
 * What makes an answer of the log doubtful, as data; speech words it.
 *
 *   end of the grid   more than a thousandth of the posterior lies in the outermost fortieth of the range of ln c (±2.4), or
 *                     its peak does: the truth may lie beyond
 *   identical         three entries or more with exactly the same numbers: one neck entered several times makes the band too
 *                     narrow (two may well agree: feelers read in hundredths)
 *   contradicting     Σ (m_i − m)² / v_i over the entries, m_i and v_i the mean and variance of ln c that each neck's own
 *                     likelihood gives, m their mean weighted by 1 / v_i: chi-squared with n − 1 degrees of freedom when all
 *                     come from one bite (Cochran's Q; Cochran 1954, from memory). Beyond its 99.9 % point they do not.
 *   unexplained       entries that no bite can explain: at the best bite of the whole range a reading still lies farther
 *                     from it than four of its own standard deviations
 *
 * The 99.9 % point is that of Wilson and Hilferty (1931; Abramowitz and Stegun 26.4.17): 3 % high at one degree, 1.2 % at five, 0.3 % at twenty.
 */
import type { EntryContent } from './entry.ts';
import { LOG_NUMBERS } from './entry.ts';
import { leastMisfit } from './least-misfit.ts';

export type Doubt =
  | { readonly code: 'end-of-grid'; readonly side: 'soft' | 'hard' }
  /** So many entries share their numbers with others. */
  | { readonly code: 'identical'; readonly entries: number }
  | { readonly code: 'contradicting' }
  | { readonly code: 'unexplained'; readonly entries: number };

const MOST_AT_END = 1e-3;
const END_SHARE = 1 / 40;
const FEWEST_IDENTICAL = 3;
/** The 99.9 % point of the normal distribution. */
const NORMAL_999 = 3.0902;
const MOST_SIGMAS = 4;

/** The 99.9 % point of chi-squared. */
export function chiSquared999(degrees: number): number {
  const part = 2 / (9 * degrees);
  return degrees * (1 - part + NORMAL_999 * Math.sqrt(part)) ** 3;
}

function endOfGrid(range: Float64Array, at: Float64Array, weights: Float64Array): Doubt | undefined {
  const half = range.at(-1)!;
  const edge = half * (1 - 2 * END_SHARE);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const share = (isEnd: (logC: number) => boolean) =>
    weights.reduce((sum, weight, i) => sum + (isEnd(at[i]) ? weight : 0), 0) / total;
  if (share((logC) => logC < -edge) > MOST_AT_END) return { code: 'end-of-grid', side: 'soft' };
  if (share((logC) => logC > edge) > MOST_AT_END) return { code: 'end-of-grid', side: 'hard' };
  return undefined;
}

function identical(used: readonly EntryContent[]): Doubt | undefined {
  const counts = new Map<string, number>();
  for (const entry of used) {
    const key = JSON.stringify([entry.method, ...LOG_NUMBERS.map(({ id }) => entry[id])]);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const entries = [...counts.values()]
    .filter((count) => count >= FEWEST_IDENTICAL)
    .reduce((sum, count) => sum + count, 0);
  return entries > 0 ? { code: 'identical', entries } : undefined;
}

export interface Doubts {
  /** Looks at one entry's likelihood on the range, ln. */
  readonly look: (entry: EntryContent, logs: Float64Array) => void;
  /** @param at the points of the posterior, @param weights what it has there */
  readonly after: (at: Float64Array, weights: Float64Array, used: readonly EntryContent[]) => Doubt[];
}

/** @param range points of ln c over the whole range, evenly */
export function doubtsOf(range: Float64Array): Doubts {
  const step = range[1] - range[0];
  let precision = 0;
  let first = 0;
  let second = 0;
  let looked = 0;
  let unexplained = 0;

  function look(entry: EntryContent, logs: Float64Array): void {
    if (leastMisfit(entry, range) > MOST_SIGMAS) {
      unexplained += 1;
      return;
    }
    const most = logs.reduce((a, b) => Math.max(a, b), -Infinity);
    let [total, mean, square] = [0, 0, 0];
    for (const [i, log] of logs.entries()) {
      const weight = Math.exp(log - most);
      total += weight;
      mean += weight * range[i];
      square += weight * range[i] ** 2;
    }
    mean /= total;
    // No finer than the range can tell.
    const variance = square / total - mean * mean + step * step;
    precision += 1 / variance;
    first += mean / variance;
    second += (mean * mean) / variance;
    looked += 1;
  }

  function contradicting(): Doubt | undefined {
    if (looked < 2) return undefined;
    const apart = second - (first * first) / precision;
    return apart > chiSquared999(looked - 1) ? { code: 'contradicting' } : undefined;
  }

  return {
    look,
    after: (at, weights, used) =>
      [
        endOfGrid(range, at, weights),
        unexplained > 0 ? ({ code: 'unexplained', entries: unexplained } as const) : undefined,
        contradicting(),
        identical(used),
      ].filter((doubt) => doubt !== undefined),
  };
}
