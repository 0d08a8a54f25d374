/**
 * What the bench log says of the bite factor c: how much harder (or softer) this workshop's frets bite than predicted.
 *
 *   before      ln c ~ N(0, 0.4² + 0.31²): the bite, and the area of the studs, which no bow tells apart
 *   a neck      fretted   y_f = B + c′·W·e^ε + gauge
 *               strung    y_s = c′·W_s·e^ε·(1 + τ + σ) + S·e^η + gauge
 *               c′ = c / bite factor of the prediction; W, W_s: predicted part of the frets, S: of the strings, B: the bow
 *               before fretting, mm
 *               ε ~ N(m, s_f²), η ~ N(0, s_s²) with correlation ρ: scatter for other reasons than the bite
 *               τ ~ N(0, 0.09²): relaxation and creep of the wedges until the strings went on
 *               σ ~ N(0, 0.06²): frets and strings bend the neck in slightly different curves; where they nearly cancel, the
 *               relief of greatest size is not found where it was predicted
 *               gauge ~ N(0, g²), anew for each reading
 *   after       the product, on a grid of ln c that is coarse first, then fine where it counts
 *
 * The scatters s_f and s_s are themselves assumptions, known to some 15 %: they are widened by that (1.15).
 * τ and σ are those of the standard build's samples. Each neck's likelihood is integrated over ε numerically; the strings'
 * scatter given ε is taken as normal in mm. A neck that was only glued says nothing of c, nor one
 * measured with the rod snug: the prediction is that of a slack one. A neck measured fretted and strung has one ε for both.
 *
 * The median scales the bite (`Build.biteFactor`), the spread takes the place of 0.4 in the Monte Carlo
 * (`EstimateOptions.biteLogSpread`). What makes the answer doubtful stands beside it (doubts.ts).
 */
import { GRIP_LOG_SPREAD } from '../uncertainty/inputs.ts';
import { doubtsOf, type Doubt } from './doubts.ts';
import type { EntryContent } from './entry.ts';
import { STANDARD_LAW, underLaw, type GripLaw } from './law.ts';
import { informs, likelihoodOf } from './likelihood.ts';

export interface BitePosterior {
  /** Median of c, and the interval that holds it with 90 %. */
  readonly median: number;
  readonly p05: number;
  readonly p95: number;
  /** Standard deviation of ln c. */
  readonly logSpread: number;
  /** Entries that say something of the bite. */
  readonly necks: number;
  /** What makes it doubtful; empty when nothing does. */
  readonly doubts: readonly Doubt[];
}

/** ln c from −2.4 to 2.4: six standard deviations of the prior. */
const HALF_WIDTH = 6 * GRIP_LOG_SPREAD;
/** Step of ln c where all of the range counts; where little of it does, at least so many points share it. */
const STEP = 0.008;
const FEWEST = 120;
/** Step of the first pass. */
const COARSE_STEP = 10 * STEP;
/** What lies so far below the most likely, in ln, counts for nothing. */
const NOTHING = 60;

/** Points of ln c that share a range evenly. */
function points(low: number, high: number, step: number): Float64Array {
  const count = Math.round((high - low) / step) + 1;
  return Float64Array.from({ length: count }, (_, index) => low + (index * (high - low)) / (count - 1));
}

const prior = (logC: number) => -((logC / GRIP_LOG_SPREAD) ** 2) / 2;

/** ln of the posterior at each point, and of each entry's own likelihood for whoever looks at it. */
function summed(
  entries: readonly EntryContent[],
  at: Float64Array,
  look: (entry: EntryContent, logs: Float64Array) => void,
  told: (share: number) => void,
): Float64Array {
  const bites = at.map(Math.exp);
  const sums = at.map(prior);
  const logs = new Float64Array(at.length);
  for (const [index, entry] of entries.entries()) {
    if (index % 100 === 0) told(index / entries.length);
    const likelihood = likelihoodOf(entry);
    for (let i = 0; i < at.length; i += 1) {
      logs[i] = likelihood(bites[i]);
      sums[i] += logs[i];
    }
    look(entry, logs);
  }
  return sums;
}

const greatest = (values: Float64Array) => values.reduce((a, b) => Math.max(a, b), -Infinity);

/** The part of the range that counts, one coarse step wider on both sides. */
function whatCounts(at: Float64Array, sums: Float64Array): Float64Array {
  const most = greatest(sums);
  const first = Math.max(0, sums.findIndex((sum) => sum > most - NOTHING) - 1);
  const last = Math.min(at.length - 1, sums.findLastIndex((sum) => sum > most - NOTHING) + 1);
  return points(at[first], at[last], Math.min(STEP, (at[last] - at[first]) / FEWEST));
}

/**
 * The bite factor after these entries, which must be free of problems (`entryProblems`). Without any it is the prior.
 * @param law of the build that it is for: shape and embedding length of its studs
 * @param told how far it is, 0 to 1, from time to time
 */
export function bitePosterior(
  entries: readonly EntryContent[],
  law: GripLaw = STANDARD_LAW,
  told: (share: number) => void = () => undefined,
): BitePosterior {
  const used = entries.filter(informs).map((entry) => underLaw(law, entry));
  const coarse = points(-HALF_WIDTH, HALF_WIDTH, COARSE_STEP);
  const doubts = doubtsOf(coarse);
  const rough = summed(used, coarse, doubts.look, (share) => told(share / 2));
  const at = whatCounts(coarse, rough);
  const logs = summed(
    used,
    at,
    () => undefined,
    (share) => told((1 + share) / 2),
  );
  const most = greatest(logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = weights.reduce((sum, weight, i) => sum + (weight / total) * at[i], 0);
  const variance = weights.reduce((sum, weight, i) => sum + (weight / total) * (at[i] - mean) ** 2, 0);
  const step = at[1] - at[0];
  /** Point of the cumulative sum, each weight spread over its step. */
  const quantile = (part: number) => {
    let below = 0;
    for (const [i, weight] of weights.entries()) {
      const above = below + weight / total;
      if (above >= part) return Math.exp(at[i] + step * ((part - below) / (above - below) - 0.5));
      below = above;
    }
    return Math.exp(HALF_WIDTH);
  };
  return {
    median: quantile(0.5),
    p05: quantile(0.05),
    p95: quantile(0.95),
    logSpread: Math.sqrt(variance),
    necks: used.length,
    doubts: doubts.after(at, weights, used),
  };
}
