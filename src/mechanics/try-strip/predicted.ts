/**
 * What a strip will do before anybody has measured it, and readings that are far from that. Those are asked about before they
 * are kept, never refused: they may be right.
 *
 *   band       5, 50 and 95 % points of the samples of the prior; of the strip's own wood, slots and kerfs as well
 *   far        beyond the 2nd or the 98th percentile, the instrument added in squares: one sound reading in 25 is asked about
 *   meaning    how many times as hard as stated the studs would have to bite, all else as stated
 */
import { bandOf, type Band } from '../uncertainty/band.ts';
import { normalDeviates } from '../uncertainty/normal.ts';
import { readingErrorMm, signedMm, type StripSpan } from './document.ts';
import { deviatesAt, type StripPlaces } from './places.ts';
import { STRIP_INPUTS, type StripInput } from './spreads.ts';
import { spansOf, type StripModel } from './strip-model.ts';
import { sampleStrip, type SampledStrip } from './strip-samples.ts';

export interface StripPrediction {
  /** Over the ends, then over each group: hump positive, mm. */
  readonly spans: readonly { readonly over: StripSpan; readonly statedMm: number; readonly bandMm: Band }[];
  /** Mean force of a fret of each group, N. */
  readonly forceN: readonly Band[];
}

export interface StripQuestion {
  readonly code: 'other-bite' | 'no-bite';
  /** Which reading of the strip. */
  readonly reading: number;
  readonly measuredMm: number;
  readonly predictedMm: number;
  readonly bandMm: Band;
  /** How many times as hard as stated; null where no bite leads there. */
  readonly biteTimes: number | null;
}

export interface PredictionOptions {
  readonly seed?: number;
  readonly samples?: number;
}

const STANDARD = { seed: 1, samples: 2000 } as const;
/** The 98th percentile of the normal distribution. */
const FAR = 2.054;
/** ln of the bites that are tried. */
const WIDEST_LOG_BITE = 4;
const TRIED_BITES = 321;

/** Places of a strip that stands by itself. */
export function placesAlone({ strip }: Pick<StripModel, 'strip'>): StripPlaces & { readonly dimensions: number } {
  const own = STRIP_INPUTS.length;
  return {
    inputs: Object.fromEntries(STRIP_INPUTS.map((input, place) => [input, place])) as Record<StripInput, number>,
    slotDepth: own,
    kerfs: strip.groups.map((_, group) => own + 1 + group),
    dimensions: own + 1 + strip.groups.length,
  };
}

function priorOf(model: StripModel, { seed = STANDARD.seed, samples = STANDARD.samples }: PredictionOptions) {
  const places = placesAlone(model);
  return sampleStrip(model, deviatesAt(places, normalDeviates(seed, samples, places.dimensions), samples));
}

/** ω as stated. */
function statedLeft(model: StripModel, days: number): number {
  const places = placesAlone(model);
  return sampleStrip(model, deviatesAt(places, new Float64Array(places.dimensions), 1)).left(days)[0];
}

function atDay(sampled: SampledStrip, at: number, days: number): Float64Array {
  const left = sampled.left(days);
  return sampled.humpMm[at].map((hump, i) => hump * left[i]);
}

/** @param days since the frets went in */
export function predictStrip(model: StripModel, days = 0, options: PredictionOptions = {}): StripPrediction {
  const sampled = priorOf(model, options);
  const stated = statedLeft(model, days);
  return {
    spans: spansOf(model.strip).map((over, at) => ({
      over,
      statedMm: model.statedHumpMm[at] * stated,
      bandMm: bandOf(atDay(sampled, at, days)),
    })),
    forceN: sampled.forceN.map((force) => bandOf(Float64Array.from(force))),
  };
}

/** How many times as hard the studs would have to bite for a hump; null where no bite leads there. */
function biteTimesFor(model: StripModel, at: number, humpMm: number): number | null {
  const places = placesAlone(model);
  const deviates = new Float64Array(places.dimensions * TRIED_BITES);
  const logs = Float64Array.from(
    { length: TRIED_BITES },
    (_, i) => WIDEST_LOG_BITE * ((2 * i) / (TRIED_BITES - 1) - 1),
  );
  deviates.set(
    logs.map((log) => log / model.spreads.bite),
    places.inputs.bite * TRIED_BITES,
  );
  const humps = sampleStrip(model, deviatesAt(places, deviates, TRIED_BITES)).humpMm[at];
  const above = humps.findIndex((hump) => hump >= humpMm);
  if (above <= 0) return null;
  const part = (humpMm - humps[above - 1]) / (humps[above] - humps[above - 1]);
  return Math.exp(logs[above - 1] + part * (logs[above] - logs[above - 1]));
}

function percentile(values: Float64Array, share: number): number {
  return values.toSorted()[Math.round(share * (values.length - 1))];
}

/** What there is to ask about the readings of a strip before they are kept. */
export function stripQuestions(model: StripModel, options: PredictionOptions = {}): StripQuestion[] {
  const { readings } = model.strip;
  if (readings.length === 0) return [];
  const sampled = priorOf(model, options);
  const spans = spansOf(model.strip);
  return readings.flatMap((reading, index): StripQuestion[] => {
    const at = spans.indexOf(reading.over);
    const humps = atDay(sampled, at, reading.days);
    const measuredMm = signedMm(reading);
    const bandMm = bandOf(Float64Array.from(humps));
    const end = percentile(humps, measuredMm > bandMm.p50 ? 0.98 : 0.02);
    const reach = Math.hypot(end - bandMm.p50, FAR * readingErrorMm(reading));
    if (Math.abs(measuredMm - bandMm.p50) <= reach) return [];
    const left = statedLeft(model, reading.days);
    const biteTimes = biteTimesFor(model, at, measuredMm / left);
    const predictedMm = model.statedHumpMm[at] * left;
    const code = biteTimes === null ? 'no-bite' : 'other-bite';
    return [{ code, reading: index, measuredMm, predictedMm, bandMm, biteTimes }];
  });
}
