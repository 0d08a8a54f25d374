/**
 * Relief under the strings against time, rod neutral, and when a back-bow has gone.
 *
 *   e(τ) = relief of greatest size at the fret tops under the straightedge, τ days since stringing; flat where it comes
 *          to −0.02 mm or above: no feeler gauge tells less (common practice, no source)
 *
 * The stated crossing is found by bisection in ln τ. Each sample's is interpolated in ln τ between two of the times; what
 * is flat or hollow in the first hour counts as 0 days, what is still humped after ten years has no day.
 */
import { METHODS, type Method, type Prediction } from '../prediction-types.ts';
import { sampleLine } from '../relief.ts';
import { lineAt } from '../states.ts';
import { bandOf } from './band.ts';
import { sampledMoment, sampleExtremes, type SampledMoment } from './band-at.ts';
import type { FlatCrossing, Sampled, TimeCourseBand } from './types.ts';

export const FIRST_DAYS = 1 / 24;
export const LAST_DAYS = 3650;
const TIMES = 25;
/** A fret top this low over the line of the others is flat, mm. */
export const FLAT_MM = 0.02;

/** An hour to ten years, evenly on a log scale. */
export function courseDays(times: number = TIMES): Float64Array {
  return Float64Array.from({ length: times }, (_, i) => FIRST_DAYS * (LAST_DAYS / FIRST_DAYS) ** (i / (times - 1)));
}

/** Relief of greatest size under the strings at a time, rod neutral, as stated. */
function statedAt(prediction: Prediction, method: Method, days: number): number {
  return lineAt(prediction, method, { strung: true, days, rodPercent: 0 }).extremeMm;
}

/** The same at the fret tops alone. */
function extremeAtFrets(prediction: Prediction, method: Method, days: number): number {
  const { reliefMm } = lineAt(prediction, method, { strung: true, days, rodPercent: 0 });
  const { fromFret, toFret } = prediction.straightedge;
  let extreme = 0;
  for (const x of prediction.fretXMm.slice(fromFret - 1, toFret)) {
    const value = sampleLine(prediction.stationXMm, reliefMm, x);
    if (Math.abs(value) > Math.abs(extreme)) extreme = value;
  }
  return extreme;
}

/**
 * Days since stringing at which a back-bow has gone, as stated: null when there is none from the start, or when it
 * outlasts ten years.
 */
export function flatAfterDays(prediction: Prediction, method: Method): number | null {
  const humped = (days: number) => extremeAtFrets(prediction, method, days) < -FLAT_MM;
  if (!humped(FIRST_DAYS) || humped(LAST_DAYS)) return null;
  let low = Math.log(FIRST_DAYS);
  let high = Math.log(LAST_DAYS);
  for (let i = 0; i < 30; i += 1) {
    const middle = (low + high) / 2;
    if (humped(Math.exp(middle))) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

/** The course of each method. */
export function timeCourses(sampled: Sampled, prediction: Prediction): Record<Method, TimeCourseBand> {
  const days = courseDays();
  const at = Array.from(days, (day) => sampledMoment(sampled, day));
  const entries = METHODS.map((method) => [method, timeCourse(sampled, prediction, method, days, at)]);
  return Object.fromEntries(entries) as Record<Method, TimeCourseBand>;
}

function timeCourse(
  sampled: Sampled,
  prediction: Prediction,
  method: Method,
  days: Float64Array,
  at: readonly SampledMoment[],
): TimeCourseBand {
  const statedMm = days.map((day) => statedAt(prediction, method, day));
  const p05Mm = new Float64Array(days.length);
  const p50Mm = new Float64Array(days.length);
  const p95Mm = new Float64Array(days.length);
  const crossing = new Float64Array(sampled.samples).fill(Infinity);
  let before: Float64Array | undefined;
  days.forEach((day, t) => {
    const extremes = sampleExtremes(sampled, method, { strung: true, days: day, rodPercent: 0 }, at[t]);
    for (let i = 0; i < crossing.length; i += 1) {
      if (crossing[i] < Infinity || extremes[i] < -FLAT_MM) continue;
      if (!before) crossing[i] = 0;
      else {
        const part = (-FLAT_MM - before[i]) / (extremes[i] - before[i]);
        crossing[i] = days[t - 1] * (day / days[t - 1]) ** part;
      }
    }
    before = Float64Array.from(extremes);
    const band = bandOf(extremes);
    p05Mm[t] = band.p05;
    p50Mm[t] = band.p50;
    p95Mm[t] = band.p95;
  });
  return {
    days,
    statedMm,
    p05Mm,
    p50Mm,
    p95Mm,
    flat: flatCrossing(crossing, prediction, method, extremeAtFrets(prediction, method, FIRST_DAYS) >= -FLAT_MM),
  };
}

function flatCrossing(
  crossing: Float64Array,
  prediction: Prediction,
  method: Method,
  fromStart: boolean,
): FlatCrossing {
  const n = crossing.length;
  const shareFromStart = crossing.reduce((sum, day) => sum + (day === 0 ? 1 : 0), 0) / n;
  const shareNever = crossing.reduce((sum, day) => sum + (day === Infinity ? 1 : 0), 0) / n;
  const { p05, p50, p95 } = bandOf(crossing);
  const orNull = (day: number) => (day === Infinity ? null : day);
  return {
    days: flatAfterDays(prediction, method),
    fromStart,
    p05Days: orNull(p05),
    p50Days: orNull(p50),
    p95Days: orNull(p95),
    shareFromStart,
    shareLater: 1 - shareFromStart - shareNever,
    shareNever,
  };
}
