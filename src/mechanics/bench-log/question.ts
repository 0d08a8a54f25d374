/**
 * Is a reading far outside what was predicted for it, and what would it mean? It is asked about before it goes into the log,
 * never refused: it may be right.
 *
 *   expected   fretted  B + W·r,  ln r ~ N(μ, s_b² + s_f²);   strung  W_s·r·(1 + …) + S·q,  ln q ~ N(0, s_s²)
 *              μ, s_b: what the log says of the bite so far, over the factor of the prediction (posterior.ts)
 *   far        beyond the 2nd or the 98th percentile, the gauge added in squares: one sound reading in 25 is asked about
 *   meaning    how many times as hard as predicted the studs would have to bite: (y − B) / W, (y − S) / W_s
 */
import type { EntryContent } from './entry.ts';
import { frettedFretsMm, LEFT_SCATTER } from './likelihood.ts';
import type { BitePosterior } from './posterior.ts';

export type Reading = 'measuredFrettedMm' | 'measuredStrungMm';

export interface Question {
  readonly reading: Reading;
  readonly measuredMm: number;
  readonly predictedMm: number;
  /** How many times as hard as predicted; null where nothing bites, or no bite leads there. */
  readonly biteTimes: number | null;
  /** Does it go the way of the frets or of the strings, where no bite leads there? */
  readonly code: 'other-bite' | 'no-bite' | 'without-bite';
}

/** The 98th percentile of the normal distribution. */
const FAR = 2.054;
/** Less than so little of the predicted bite is as good as none. */
const LEAST_TIMES = 0.02;

interface Parts {
  readonly measuredMm: number;
  readonly predictedMm: number;
  readonly fretsMm: number;
  readonly restMm: number;
  readonly restScatter: number;
  readonly leftScatter: number;
}

function partsOf(entry: EntryContent, reading: Reading): Parts | undefined {
  const measuredMm = entry[reading];
  if (measuredMm === null) return undefined;
  if (reading === 'measuredFrettedMm') {
    const predictedMm = entry.predictedFrettedMm ?? 0;
    const fretsMm = frettedFretsMm(entry);
    return { measuredMm, predictedMm, fretsMm, restMm: predictedMm - fretsMm, restScatter: 0, leftScatter: 0 };
  }
  const predictedMm = entry.predictedStrungMm ?? 0;
  const fretsMm = entry.predictedStrungFretsMm ?? 0;
  const restScatter = entry.stringScatter;
  return { measuredMm, predictedMm, fretsMm, restMm: predictedMm - fretsMm, restScatter, leftScatter: LEFT_SCATTER };
}

function questionOf(entry: EntryContent, reading: Reading, bite: Pick<BitePosterior, 'median' | 'logSpread'>) {
  const parts = partsOf(entry, reading);
  if (!parts) return undefined;
  const { measuredMm, predictedMm, fretsMm, restMm, restScatter, leftScatter } = parts;
  const middle = Math.log(bite.median / entry.biteFactor) + entry.fretShift;
  const spread = Math.hypot(bite.logSpread, entry.fretScatter, leftScatter);
  const centre = fretsMm * Math.exp(middle) + restMm;
  /** How far the frets and the rest reach to one side, mm. */
  const reach = (side: 1 | -1) => {
    const end = (partMm: number, scatter: number, at: number) => {
      const ends = [FAR, -FAR].map((z) => partMm * (Math.exp(at + z * scatter) - Math.exp(at)) * side);
      return Math.max(...ends);
    };
    return Math.hypot(end(fretsMm, spread, middle), end(restMm, restScatter, 0), FAR * entry.gaugeErrorMm);
  };
  const side = measuredMm > centre ? 1 : -1;
  if (Math.abs(measuredMm - centre) <= reach(side)) return undefined;
  const times = fretsMm === 0 ? null : (measuredMm - restMm) / fretsMm;
  const question = { reading, measuredMm, predictedMm };
  if (times === null) return { ...question, code: 'without-bite', biteTimes: null } as const;
  return times < LEAST_TIMES
    ? ({ ...question, code: 'no-bite', biteTimes: null } as const)
    : ({ ...question, code: 'other-bite', biteTimes: times } as const);
}

/** What there is to ask about an entry before it is kept. @param bite what the log says of it */
export function questionsOf(entry: EntryContent, bite: Pick<BitePosterior, 'median' | 'logSpread'>): Question[] {
  const readings: readonly Reading[] = ['measuredFrettedMm', 'measuredStrungMm'];
  return readings.map((reading) => questionOf(entry, reading, bite)).filter((question) => question !== undefined);
}
