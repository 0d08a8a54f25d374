/**
 * Is a reading far outside what was predicted for it, and what would it mean? It is asked about before it goes into the log,
 * never refused: it may be right.
 *
 *   expected   fretted  B + W·r,  ln r ~ N(μ, s_b² + s_f²);   strung  W_s·r·(1 + …) + S·q,  ln q ~ N(0, s_s²)
 *              μ, s_b: what the log says of the bite so far, over the factor of the prediction (posterior.ts)
 *   far        beyond the 2nd or the 98th percentile, the gauge added in squares: one sound reading in 25 is asked about
 *   further    pull, rod and quarters: as predicted but for a factor, ln of it ~ N(0, s²) of strings, rod or bite; the other way
 *              than predicted by more than the instrument's error is asked about by itself
 *   meaning    how many times as hard as predicted the studs would have to bite: (y − B) / W, (y − S) / W_s
 */
import type { EntryContent } from './entry.ts';
import { frettedFretsMm, LEFT_SCATTER } from './likelihood.ts';
import { modelErrorOf, QUARTER_LOG_SPREAD } from '../neck-readings/spreads.ts';
import type { BitePosterior } from './posterior.ts';

export type FurtherReading =
  'measuredPullMm' | 'measuredRodMm' | 'measuredQuarter1Mm' | 'measuredQuarter2Mm' | 'measuredQuarter3Mm';
export type Reading = 'measuredFrettedMm' | 'measuredStrungMm' | FurtherReading;

export interface Question {
  readonly reading: Reading;
  readonly measuredMm: number;
  readonly predictedMm: number;
  /** How many times as hard as predicted; null where nothing bites, or no bite leads there. */
  readonly biteTimes: number | null;
  /** Does it go the way of the frets or of the strings, where no bite leads there? */
  readonly code: 'other-bite' | 'no-bite' | 'without-bite' | 'other-way' | 'other-size';
  /** Measured over predicted, of what is further read. */
  readonly times?: number;
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

function partsOf(entry: EntryContent, reading: 'measuredFrettedMm' | 'measuredStrungMm'): Parts | undefined {
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

type Bite = Pick<BitePosterior, 'median' | 'logSpread'>;

function questionOf(
  entry: EntryContent,
  reading: 'measuredFrettedMm' | 'measuredStrungMm',
  bite: Bite,
): Question | undefined {
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

/** What is further read on a neck: its size, what was predicted, and how far that scatters. */
function furtherOf(entry: EntryContent, bite: Bite) {
  const { gaugeErrorMm, stringScatter, fretScatter } = entry;
  const dial = { errorMm: entry.dialErrorMm ?? gaugeErrorMm, centre: 1 };
  const grip = {
    errorMm: gaugeErrorMm,
    centre: (bite.median / entry.biteFactor) * Math.exp(entry.fretShift),
    spread: Math.hypot(bite.logSpread, fretScatter, QUARTER_LOG_SPREAD),
  };
  const { predictedPullMm, predictedRodMm } = entry;
  const pull = { ...dial, predictedMm: predictedPullMm, spread: Math.hypot(stringScatter, modelErrorOf('pull')) };
  const rod = { ...dial, predictedMm: predictedRodMm, spread: Math.hypot(stringScatter, modelErrorOf('rod')) };
  return {
    measuredPullMm: pull,
    measuredRodMm: rod,
    measuredQuarter1Mm: { ...grip, predictedMm: entry.predictedQuarter1Mm },
    measuredQuarter2Mm: { ...grip, predictedMm: entry.predictedQuarter2Mm },
    measuredQuarter3Mm: { ...grip, predictedMm: entry.predictedQuarter3Mm },
  } satisfies Record<FurtherReading, unknown>;
}

function furtherQuestions(entry: EntryContent, bite: Bite): Question[] {
  return Object.entries(furtherOf(entry, bite)).flatMap(([id, of]): Question[] => {
    const reading = id as FurtherReading;
    const [measuredMm, { predictedMm, errorMm, centre, spread }] = [entry[reading], of];
    if (measuredMm === null || predictedMm === null || predictedMm === 0) return [];
    const times = measuredMm / predictedMm;
    const question = { reading, measuredMm, predictedMm, biteTimes: null, times };
    const error = (FAR * errorMm) / Math.abs(predictedMm);
    if (times < -error) return [{ ...question, code: 'other-way' }];
    const end = centre * Math.exp((times > centre ? FAR : -FAR) * spread);
    const isFar = Math.abs(times - centre) > Math.hypot(end - centre, error);
    return isFar ? [{ ...question, code: 'other-size' }] : [];
  });
}

/** What there is to ask about an entry before it is kept. @param bite what the log says of it */
export function questionsOf(entry: EntryContent, bite: Bite): Question[] {
  const readings = ['measuredFrettedMm', 'measuredStrungMm'] as const;
  const bows = readings.map((reading) => questionOf(entry, reading, bite)).filter((question) => question !== undefined);
  return [...bows, ...furtherQuestions(entry, bite)];
}
