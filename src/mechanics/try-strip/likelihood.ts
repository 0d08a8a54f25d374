/**
 * How likely a strip's readings are with the deviates of many samples.
 *
 *   hump      y_i = μ_i·(1 + e_s) + g_i        μ_i = hump over span s at its day; e_s ~ N(0, 5 %) once for each span of a strip;
 *                                              g_i ~ N(0, σ_i²) of the instrument, anew for each reading
 *   stiffness ln y = ln(give) − s_E·z_E + e     and ln ρ = ln ρ_stated + s_ρ·z_ρ + e  (stiffness.ts)
 *
 * e_s is integrated out: the readings of a span have the covariance diag(σ²) + 0.05²·μμᵀ, whose inverse and determinant are
 * those of Sherman and Morrison.
 */
import { readingErrorMm, signedMm, type StripReading, type StripSpan } from './document.ts';
import { STRIP_MODEL_ERROR } from './spreads.ts';
import { statedLn, stiffnessReadings, type StiffnessReading } from './stiffness.ts';
import { spansOf, type StripModel } from './strip-model.ts';
import type { StripDescription } from '../strip/strip.ts';
import { sampleStrip, type SampledStrip, type StripDeviates } from './strip-samples.ts';

/** Readings of one span. */
interface SpanReadings {
  readonly at: number;
  readonly readings: readonly StripReading[];
}

export interface StripLikelihood {
  readonly model: StripModel;
  /** How many numbers were measured. */
  readonly measured: number;
  /** Adds ln of the likelihood of every sample to `logs`, without constants. */
  add(deviates: StripDeviates, logs: Float64Array): void;
  /** χ² of the readings: what they are off by at one set of deviates, in standard deviations squared. */
  misfit(deviates: StripDeviates): number;
}

/** Samples of strips that were solved, by the deviates that they were drawn with: the prior's come again with each reading. */
const drawn = new WeakMap<StripDescription, WeakMap<ArrayBufferLike, Map<string, SampledStrip>>>();

function sampledOnce(model: StripModel, deviates: StripDeviates): SampledStrip {
  const { inputs, slotDepth, kerfs } = deviates;
  const ofStrip = drawn.get(model.description) ?? new WeakMap<ArrayBufferLike, Map<string, SampledStrip>>();
  drawn.set(model.description, ofStrip);
  const ofDraw = ofStrip.get(slotDepth.buffer) ?? new Map<string, SampledStrip>();
  ofStrip.set(slotDepth.buffer, ofDraw);
  const key = [slotDepth, ...kerfs, ...Object.values(inputs)].map((row) => row.byteOffset).join(' ');
  const sampled = ofDraw.get(key) ?? sampleStrip(model, deviates);
  ofDraw.set(key, sampled);
  return sampled;
}

function bySpan(model: StripModel): SpanReadings[] {
  const { readings } = model.strip;
  return spansOf(model.strip)
    .map((over: StripSpan, at) => ({ at, readings: readings.filter((reading) => reading.over === over) }))
    .filter((span) => span.readings.length > 0);
}

/** What one stiffness reading is off by, in standard deviations. */
function stiffnessOff(reading: StiffnessReading, { spreads }: StripModel, deviates: StripDeviates, i: number): number {
  const { inputs, slotDepth } = deviates;
  const expected =
    reading.of === 'give'
      ? statedLn(reading, inputs.acrossGrain[i], slotDepth[i]) - spreads.boardModulus * inputs.boardModulus[i]
      : statedLn(reading, 0, 0) + spreads.density * inputs.density[i];
  return (reading.measuredLn - expected) / reading.errorLn;
}

export function stripLikelihood(model: StripModel): StripLikelihood {
  const spans = bySpan(model);
  const stiffness = stiffnessReadings(model);
  const days = [...new Set(model.strip.readings.map((reading) => reading.days))];

  /** Calls back with χ² and ln of the determinant of each sample. */
  const each = (deviates: StripDeviates, visit: (i: number, square: number, logDeterminant: number) => void) => {
    const sampled = sampledOnce(model, deviates);
    const left = new Map(days.map((day) => [day, sampled.left(day)]));
    for (let i = 0; i < sampled.samples; i += 1) {
      let square = 0;
      let logDeterminant = 0;
      for (const { at, readings } of spans) {
        const hump = sampled.humpMm[at][i];
        let [rr, ru, uu] = [0, 0, 0];
        for (const reading of readings) {
          const expected = hump * left.get(reading.days)![i];
          const error = readingErrorMm(reading);
          const off = (signedMm(reading) - expected) / error;
          const model = (STRIP_MODEL_ERROR * expected) / error;
          rr += off * off;
          ru += off * model;
          uu += model * model;
        }
        square += rr - (ru * ru) / (1 + uu);
        logDeterminant += Math.log1p(uu);
      }
      for (const reading of stiffness) square += stiffnessOff(reading, model, deviates, i) ** 2;
      visit(i, square, logDeterminant);
    }
  };

  return {
    model,
    measured: model.strip.readings.length + stiffness.length,
    add: (deviates, logs) => each(deviates, (i, square, logDeterminant) => (logs[i] -= (square + logDeterminant) / 2)),
    misfit: (deviates) => {
      let first = 0;
      each(deviates, (i, square) => {
        if (i === 0) first = square;
      });
      return first;
    },
  };
}
