/**
 * How wide the band of the relief becomes once some inputs are known better, or something that depends on them is read.
 *
 *   known better   z' = z̄ + (z − z̄)·min(1, e/(s·σ_z))    z deviate of the input, s its spread, e the error that measuring leaves
 *   read           r' = r − Σ_k b_k·(y_k − ȳ_k)           r relief, y what is read with its error; b by least squares, so that
 *                                                         r' is what the readings do not tell of r
 *
 * The samples are those of the band (sampling.ts), so that before and after share everything else. The 5 and 95 % points of
 * some thousand samples step from one to the next; how much is left is told by the means of the samples around them. Those of
 * an input that becomes known are taken twice, with z and with its mirror image about z̄: what chance had made it share with
 * the other inputs falls out.
 */
import type { Method, Moment } from '../prediction-types.ts';
import { sampleExtremes } from './band-at.ts';
import { bandOf } from './band.ts';
import { INPUTS, type UncertainInput } from './inputs.ts';
import type { ResponseModel } from './model.ts';
import { normalDeviates } from './normal.ts';
import { factorsOf, type Draws } from './sampling.ts';

/** The error that measuring leaves of an input: a standard deviation, of the logarithm for factors, else as its spread. */
export type Left = Readonly<Partial<Record<UncertainInput, number>>>;

/** What is read on the neck, or on a strip that was sawn and fretted beside it; with one standard deviation of the reading. */
export type Reading =
  /** The relief of this neck at a moment, mm. */
  | { readonly of: 'relief'; readonly moment: Moment; readonly errorMm: number; readonly error?: number }
  /** What its strings do to it, or its rod: at the middle of the straightedge, mm; and as a share what the model may be off by. */
  | { readonly of: 'strings' | 'rod'; readonly errorMm: number; readonly error: number }
  /** The mean wedge force of its wire in slots of another kerf from the same saw, as a share of it. */
  | { readonly of: 'force'; readonly error: number };

export interface Knowledge {
  readonly left: Left;
  readonly readings: readonly Reading[];
}

interface Question {
  readonly model: ResponseModel;
  /** The samples of the band as it is. */
  readonly draws: Draws;
  readonly method: Method;
  readonly moment: Moment;
}

const NONE: ReadonlySet<UncertainInput> = new Set();
const KERF = INPUTS.findIndex(({ id }) => id === 'kerfMm');
/** Seed of the errors of readings: other than any that a band is asked for with. */
const READING_SEED = 90_210;

function momentsOf(row: Float64Array): { readonly mean: number; readonly deviation: number } {
  let [sum, squares] = [0, 0];
  for (const z of row) sum += z;
  const mean = sum / row.length;
  for (const z of row) squares += (z - mean) ** 2;
  return { mean, deviation: Math.sqrt(squares / row.length) };
}

/** Deviates in which these inputs are known so well. @param mirrored rows that are mirrored about their mean */
function narrowed({ model, draws }: Question, left: Left, mirrored: ReadonlySet<UncertainInput>): Float64Array {
  const out = Float64Array.from(draws.deviates);
  INPUTS.forEach(({ id }, index) => {
    const error = left[id];
    if (error === undefined && !mirrored.has(id)) return;
    const row = out.subarray(index * draws.samples, (index + 1) * draws.samples);
    const { mean, deviation } = momentsOf(row);
    const spread = model.spreads[id] * deviation;
    const share = error === undefined || spread <= error ? 1 : error / spread;
    const factor = mirrored.has(id) ? -share : share;
    for (let i = 0; i < row.length; i += 1) row[i] = mean + factor * (row[i] - mean);
  });
  return out;
}

/** The same neck with the kerf of another cut: its deviates are those of another sample. */
function otherKerf(deviates: Float64Array, samples: number): Float64Array {
  const out = Float64Array.from(deviates);
  const half = samples >> 1;
  for (let i = 0; i < samples; i += 1) out[KERF * samples + i] = deviates[KERF * samples + ((i + half) % samples)]!;
  return out;
}

function centred(values: Float64Array): Float64Array {
  const { mean } = momentsOf(values);
  return values.map((value) => value - mean);
}

/** Takes out of the values what lies along a column, both about their means. */
function without(values: Float64Array, column: Float64Array): Float64Array {
  let [shared, size] = [0, 0];
  for (let i = 0; i < values.length; i += 1) {
    shared += values[i] * column[i];
    size += column[i] ** 2;
  }
  return size > 0 ? values.map((value, i) => value - (shared / size) * column[i]) : values;
}

/** Rows of errors that a reading of the relief and one of the force have for themselves. */
const ERROR_ROWS = 2;

/** One standard deviation of a reading that would be so large. */
function errorOf(reading: Reading, value: number): number {
  if (reading.of === 'force') return reading.error * value;
  return reading.error === undefined ? reading.errorMm : Math.hypot(reading.errorMm, reading.error * value);
}

/** What a reading would be of every sample. */
function expectedOf(
  { model, draws: { samples }, method }: Question,
  sampled: Draws,
  deviates: Float64Array,
  reading: Reading,
): Float64Array {
  if (reading.of === 'relief') return sampleExtremes(sampled, method, reading.moment);
  if (reading.of === 'force') return factorsOf(model, otherKerf(deviates, samples)).meanForceN;
  const { stringsMm, rodMm, stringsFactor, rodFactor } = sampled.methods[method];
  const middle = Math.round((model.spanFrom + model.spanTo) / 2);
  const [line, factor] = reading.of === 'strings' ? [stringsMm, stringsFactor] : [rodMm, rodFactor];
  return factor.map((share) => line[middle] * share);
}

/** Relief of every sample less what the readings tell of it. */
function untold(question: Question, deviates: Float64Array, readings: readonly Reading[]): Float64Array {
  const { model, draws, method, moment } = question;
  const { samples } = draws;
  const sampled = factorsOf(model, deviates, draws.gaugeDeviates);
  const relief = sampleExtremes(sampled, method, moment);
  if (readings.length === 0) return relief;
  // The rows of fewer are the first of those of more.
  const errors = normalDeviates(READING_SEED, samples, ERROR_ROWS + readings.length);
  const columns: Float64Array[] = [];
  for (const [at, reading] of readings.entries()) {
    const row =
      reading.of === 'force' ? 1 : reading.of === 'relief' && reading.error === undefined ? 0 : ERROR_ROWS + at;
    const error = errors.subarray(row * samples, (row + 1) * samples);
    const read = expectedOf(question, sampled, deviates, reading).map((value, i) => {
      return value + errorOf(reading, value) * error[i];
    });
    columns.push(columns.reduce(without, centred(read)));
  }
  return columns.reduce(without, centred(relief));
}

/** Width of what holds 90 of 100 samples when so much is known, mm. */
export function widthKnowing(question: Question, { left, readings }: Knowledge): number {
  const { p05, p95 } = bandOf(untold(question, narrowed(question, left, NONE), readings));
  return p95 - p05;
}

/** Mean of what lies between the 90 and 98 % points less mean of what lies between the 2 and 10 % points. */
function spanOf(values: Float64Array): number {
  const sorted = values.toSorted();
  const mean = (from: number, to: number) => {
    const part = sorted.subarray(Math.round(from * sorted.length), Math.round(to * sorted.length));
    return part.reduce((sum, value) => sum + value, 0) / part.length;
  };
  return mean(0.9, 0.98) - mean(0.02, 0.1);
}

/** Width of the band once more is known over that before: 1 or less. */
export function shareLeft(question: Question, before: Knowledge, after: Knowledge): number {
  const ids = INPUTS.map(({ id }) => id).filter((id) => after.left[id] !== before.left[id]);
  const sides = ids.length === 0 ? [NONE] : [NONE, new Set(ids)];
  const span = ({ left, readings }: Knowledge) => {
    const reliefs = sides.map((mirrored) => untold(question, narrowed(question, left, mirrored), readings));
    const all = new Float64Array(reliefs.length * question.draws.samples);
    reliefs.forEach((relief, i) => all.set(relief, i * question.draws.samples));
    return spanOf(all);
  };
  const [now, then] = [span(before), span(after)];
  return now > 0 ? Math.min(1, then / now) : 1;
}
