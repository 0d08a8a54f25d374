/**
 * A strip before it is sawn: what it will bow, and what its readings will leave of the bands of a neck.
 *
 *   samples     z_i from the prior, of neck and strip together: strip (strip-samples.ts) and neck (uncertainty/sampling.ts)
 *   a reading   of the truth z_k with the errors of model, instrument and stiffness
 *   after it    the neck's values of all samples with the weights L(z_i | reading of k), its own left out: width from the 5 to
 *               the 95 % point; told for some tens of truths, evenly spread over the humps that may
 *               come out, as its 5, 50 and 95 % points
 *
 * Weights of the prior's own samples are enough for a width: those of a sharp reading leave a hundred effective samples or so.
 *
 *   wood below the slots    σ = F/(b·l) + 6·F·e/(b·l²)     F force of a fret, b width, l wood below the slot, e from the middle
 *                                                          of the contact to the middle of that wood; at the slot's floor, as a
 *                                                          beam has it: what the floor's corner adds is left out
 *   too small               the hump less than five standard deviations of the instrument (common practice, no source)
 */
import type { Build } from '../../neck/build.ts';
import type { Method } from '../prediction-types.ts';
import { sampleExtremes } from '../uncertainty/band-at.ts';
import { bandOf, type Band } from '../uncertainty/band.ts';
import { INPUTS } from '../uncertainty/inputs.ts';
import type { ResponseModel } from '../uncertainty/model.ts';
import { normalDeviates, normalQuantile, seededRandom } from '../uncertainty/normal.ts';
import { factorsOf } from '../uncertainty/sampling.ts';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import {
  readingErrorMm,
  type StripContent,
  type StripReading,
  type StripSpan,
  type StripStiffness,
} from './document.ts';
import { shiftsOf } from './grip-posterior.ts';
import { stripLikelihood } from './likelihood.ts';
import { deviatesAt, type StripPlaces } from './places.ts';
import { predictStrip, type StripPrediction } from './predicted.ts';
import { STRIP_INPUTS, STRIP_MODEL_ERROR, type StripInput } from './spreads.ts';
import { statedLn, stiffnessReadings, stiffnessThatReads } from './stiffness.ts';
import { spansOf, stripModel, type StripModel } from './strip-model.ts';
import { sampleStrip, type SampledStrip, type StripDeviates } from './strip-samples.ts';

/** What a neck is asked for. */
export const NECK_OUTCOMES = ['fretted', 'strung', 'settled', 'wedgeForceN'] as const;
export type NeckOutcome = (typeof NECK_OUTCOMES)[number];

export type PlannedReading = Pick<StripReading, 'days' | 'over' | 'instrument' | 'ownErrorMm'>;
type Test = Pick<Exclude<StripStiffness, { test: 'none' }>, 'test' | 'state'>;

export interface StripPlan {
  /** Its readings and its stiffness are not looked at. */
  readonly strip: StripContent;
  readonly ownBoard: boolean;
  readonly readings: readonly PlannedReading[];
  /** How its stiffness will be measured; null = not. */
  readonly stiffness: Test | null;
}

export type StripWarning =
  | {
      readonly code: 'hump-too-small';
      readonly reading: number;
      readonly over: StripSpan;
      readonly humpMm: number;
      readonly leastMm: number;
    }
  | { readonly code: 'wood-crushes'; readonly group: number; readonly stressMPa: number; readonly mostMPa: number };

export interface StripDesign {
  /** On the day of the frets; the readings' spans among all. */
  readonly prediction: StripPrediction;
  /** The bands of the neck with an unmeasured grip. */
  readonly before: Readonly<Record<NeckOutcome, Band>>;
  /** How wide its 90 % bands will be: as likely as not p50, and 90 % of the time between p05 and p95. */
  readonly widthAfter: Readonly<Record<NeckOutcome, Band>>;
  readonly warnings: readonly StripWarning[];
}

const SAMPLES = 12_000;
const TRUTHS = 32;
const ERRORS_READ = 5;

/** Deviates of neck and strip together: those of the neck's inputs first, then what is the strip's alone. */
function together(plan: StripPlan, isOwnWire: boolean): { readonly places: StripPlaces; readonly dimensions: number } {
  let next = INPUTS.length;
  const own = () => (next += 1) - 1;
  const wood: readonly StripInput[] = ['boardModulus', 'acrossGrain', 'density', 'crushing'];
  const wire: readonly StripInput[] = ['studArea', 'studShape', 'studWidthMm'];
  const placeOf = (input: StripInput) => {
    const isShared = (plan.ownBoard || !wood.includes(input)) && (isOwnWire || !wire.includes(input));
    return isShared ? INPUTS.findIndex(({ id }) => id === input) : own();
  };
  const inputs = Object.fromEntries(STRIP_INPUTS.map((input) => [input, placeOf(input)])) as Record<StripInput, number>;
  const places = { inputs, slotDepth: own(), kerfs: plan.strip.groups.map(own) };
  return { places, dimensions: next };
}

/** What a strip with the deviates of one sample is read to be. */
function readAs(
  model: StripModel,
  plan: StripPlan,
  sampled: SampledStrip,
  deviates: StripDeviates,
  truth: number,
  normal: () => number,
): StripContent {
  const { strip, spreads } = model;
  const errors = new Map(plan.readings.map(({ over }) => [over, 1 + STRIP_MODEL_ERROR * normal()]));
  const readings = plan.readings.map((planned): StripReading => {
    const hump = sampled.humpMm[spansOf(strip).indexOf(planned.over)][truth] * sampled.left(planned.days)[truth];
    const read = hump * errors.get(planned.over)! + readingErrorMm(planned) * normal();
    return { ...planned, bow: read < 0 ? 'hollow' : 'hump', sizeMm: Math.abs(read) };
  });
  if (plan.stiffness === null) return { ...strip, readings };
  const having = (stiffness: StripStiffness): StripContent => {
    return { ...strip, readings, offcut: { ...strip.offcut, stiffness } };
  };
  const [give, density] = stiffnessReadings({
    ...model,
    strip: having(stiffnessThatReads(strip, plan.stiffness, 0, 0)),
  });
  const { inputs, slotDepth } = deviates;
  const ofModulus = spreads.boardModulus * inputs.boardModulus[truth];
  const lnGive = statedLn(give, inputs.acrossGrain[truth], slotDepth[truth]) - ofModulus + give.errorLn * normal();
  const lnDensity = density
    ? statedLn(density, 0, 0) + spreads.density * inputs.density[truth] + density.errorLn * normal()
    : 0;
  return having(stiffnessThatReads(strip, plan.stiffness, lnGive, lnDensity));
}

/** Width from the 5 to the 95 % point of weighted values. @param order of the values, least first */
function weightedWidth(values: Float64Array, order: Uint32Array, weights: Float64Array, total: number): number {
  let below = 0;
  let from = Number.NaN;
  for (const i of order) {
    below += weights[i];
    if (Number.isNaN(from) && below >= 0.05 * total) from = values[i]!;
    if (below >= 0.95 * total) return values[i] - from;
  }
  return 0;
}

function warningsOf(model: StripModel, plan: StripPlan, prediction: StripPrediction): StripWarning[] {
  const small = plan.readings.flatMap((reading, index): StripWarning[] => {
    const humpMm = prediction.spans.find(({ over }) => over === reading.over)!.bandMm.p50;
    const leastMm = ERRORS_READ * readingErrorMm(reading);
    return humpMm < leastMm ? [{ code: 'hump-too-small', reading: index, over: reading.over, humpMm, leastMm }] : [];
  });
  const { widthMm, thicknessMm, slotDepthMm, contactDepthMm } = model.description;
  const below = thicknessMm - slotDepthMm;
  const arm = slotDepthMm - contactDepthMm / 2 + below / 2;
  const mostMPa = model.wood.crushingMPa;
  const crushed = prediction.forceN.flatMap(({ p95 }, group): StripWarning[] => {
    const stressMPa = (p95 / (widthMm * below)) * (1 + (6 * arm) / below);
    return stressMPa > mostMPa ? [{ code: 'wood-crushes', group, stressMPa, mostMPa }] : [];
  });
  return [...small, ...crushed];
}

/** What the neck's readouts are in every sample. */
function outcomesOf(model: ResponseModel, method: Exclude<Method, 'glue'>, deviates: Float64Array) {
  const draws = factorsOf(model, deviates);
  const at = (strung: boolean, days: number) => sampleExtremes(draws, method, { strung, days, rodPercent: 0 });
  return {
    fretted: at(false, 0),
    strung: at(true, 0),
    settled: at(true, model.time.settleDays),
    wedgeForceN: draws.meanForceN,
  } satisfies Record<NeckOutcome, Float64Array>;
}

/** The deviates of the neck's inputs as it tells them: from its own bite factor and shape. */
function toldBy(neck: Build, all: Float64Array, studShape: number): Float64Array {
  const own = all.slice(0, INPUTS.length * SAMPLES);
  for (const [input, shift] of Object.entries(shiftsOf(neck, studShape))) {
    const row = INPUTS.findIndex(({ id }) => id === input);
    for (let i = row * SAMPLES; i < (row + 1) * SAMPLES; i += 1) own[i] -= shift;
  }
  return own;
}

const each = <Value>(of: (outcome: NeckOutcome) => Value) =>
  Object.fromEntries(NECK_OUTCOMES.map((outcome) => [outcome, of(outcome)])) as Record<NeckOutcome, Value>;

/**
 * One truth a step; the last returns the design.
 * @param neckModel of the neck, its bite unmeasured (uncertainty/model.ts)
 * @param isOwnWire will the neck have the strip's wire?
 */
export function* designSteps(
  neck: Build,
  neckModel: ResponseModel,
  plan: StripPlan,
  method: Exclude<Method, 'glue'> = 'press',
  isOwnWire = true,
  seed = 1,
): Generator<{ readonly done: number; readonly total: number }, StripDesign> {
  const model = stripModel({ ...plan.strip, readings: [] }, neck, plan.ownBoard);
  const { places, dimensions } = together(plan, isOwnWire);
  const all = normalDeviates(seed, SAMPLES, dimensions);
  const deviates = deviatesAt(places, all, SAMPLES);
  const sampled = sampleStrip(model, deviates);
  const outcomes = outcomesOf(
    neckModel,
    method,
    toldBy(neck, all, isOwnWire ? plan.strip.wire.studShape : neck.studShape),
  );
  const orders = each((outcome) => {
    const values = outcomes[outcome];
    return Uint32Array.from(values.keys()).sort((a, b) => values[a] - values[b]);
  });
  const random = seededRandom(seed);
  const normal = () => normalQuantile((uniformFloat64(random) + 2 ** -54) / (1 + 2 ** -52));
  const widths = each(() => new Float64Array(TRUTHS));
  const first = sampled.humpMm[spansOf(model.strip).indexOf(plan.readings[0]?.over ?? 'ends')];
  const byHump = Uint32Array.from(first.keys()).sort((a, b) => first[a] - first[b]);
  for (let k = 0; k < TRUTHS; k += 1) {
    yield { done: k, total: TRUTHS };
    const truth = byHump[Math.floor(((k + 0.5) / TRUTHS) * SAMPLES)];
    const strip = readAs(model, plan, sampled, deviates, truth, normal);
    const logs = new Float64Array(SAMPLES);
    stripLikelihood({ ...model, strip }).add(deviates, logs);
    // The truth itself would always fit.
    logs[truth] = -Infinity;
    const most = logs.reduce((a, b) => Math.max(a, b), -Infinity);
    const weights = logs.map((log) => Math.exp(log - most));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    for (const outcome of NECK_OUTCOMES)
      widths[outcome][k] = weightedWidth(outcomes[outcome], orders[outcome], weights, total);
  }
  const prediction = predictStrip(model);
  return {
    prediction,
    before: each((outcome) => bandOf(Float64Array.from(outcomes[outcome]))),
    widthAfter: each((outcome) => bandOf(widths[outcome])),
    warnings: warningsOf(model, plan, prediction),
  };
}
