/**
 * What try strips and entries of the bench log say together of a workshop's grip: samples of all deviates that they share with
 * a neck, jointly, so that every band of it narrows (EstimateOptions.grip), the floors of what none of them sees included.
 *
 *   p(z | y) ∝ N(z; 0, 1)·Π_strips L(y | z)·Π_necks L(y | z)          likelihood.ts, neck-likelihood.ts; importance.ts
 *
 * What was read on the very neck is heard with all of its inputs (neck-readings/likelihood.ts), and with a grip of its own for
 * each quarter of its frets where its bow was read after quarters.
 *
 * The prior is that of an unmeasured grip: bite factor 1 and the shape of the studs as the strip believes it, whatever the build
 * has taken over since. The deviates are then told from what the build states, so that bite and shape are what was found:
 *
 *   z'_bite = z_bite − ln(bite factor of the build)/s,    z'_shape = z_shape − (shape of the build − shape of the prior)/s
 *
 * Bite and area of the studs do the same to every bow; the factor that is told is that of both together, as in the bench log.
 *
 * Doubtful, as data:
 *   contradicting   χ² of the strips' readings at the mean of the posterior, with the squares of the deviates that it takes,
 *                   beyond the 99.9 % point for so many readings: what is least for readings from one truth
 *   far reading     one that lies there more than four of its own standard deviations off
 *   end of range    a shared deviate more than 2.5 standard deviations from what was assumed
 *   far on the neck a reading of the neck itself that lies as far off; a change that goes the other way than any sample has it
 *   few samples     fewer than so many effective ones: the readings are sharper than the samples can follow, or contradict
 *   other wire      the numbers of a strip's wire are not the neck's: shape, area and width of the studs stay unmeasured
 */
import type { Build } from '../../neck/build.ts';
import { chiSquared999 } from '../bench-log/doubts.ts';
import type { LogEntry } from '../bench-log/entry.ts';
import { informs } from '../bench-log/likelihood.ts';
import { bandOf, type Band } from '../uncertainty/band.ts';
import { addNeck, drawsAt, eachReading, quarterLogs, sigmaMm, type OwnNeck } from '../neck-readings/likelihood.ts';
import type { NeckReading, ReadingKind } from '../neck-readings/readings.ts';
import { spreadsOf, type UncertainInput } from '../uncertainty/inputs.ts';
import { normalDeviates } from '../uncertainty/normal.ts';
import type { QuarterGrips } from '../uncertainty/quarters.ts';
import type { KnownDeviates } from '../uncertainty/sampling.ts';
import { readingErrorMm, signedMm } from './document.ts';
import { importanceSamples, resampled, type Weighted } from './importance.ts';
import { stripLikelihood, type StripLikelihood } from './likelihood.ts';
import { neckLikelihood, type NeckLikelihood } from './neck-likelihood.ts';
import { deviatesAt, placesOf, wireDifferences, type Places, type StripEvidence, type WireNumber } from './places.ts';
import { GRIP_INPUTS, STRIP_MODEL_ERROR, type StripInput } from './spreads.ts';
import { spansOf, stripModel } from './strip-model.ts';
import { sampleStrip } from './strip-samples.ts';

export type GripDoubt =
  | { readonly code: 'contradicting' }
  | {
      readonly code: 'far-reading';
      readonly strip: number;
      readonly reading: number;
      readonly measuredMm: number;
      readonly expectedMm: number;
    }
  | { readonly code: 'end-of-range'; readonly input: UncertainInput; readonly side: 'low' | 'high' }
  | {
      readonly code: 'far-on-neck';
      readonly kind: ReadingKind;
      readonly measuredMm: number;
      readonly expectedMm: number;
    }
  | { readonly code: 'few-samples'; readonly effective: number; readonly least: number }
  | {
      readonly code: 'other-wire';
      readonly strip: number;
      readonly number: WireNumber;
      readonly ofStrip: number;
      readonly ofNeck: number;
    };

export interface GripPosterior {
  /** Deviates of the neck's inputs that were measured along, one a sample, all alike in weight; for EstimateOptions.grip. */
  readonly deviates: KnownDeviates;
  /** What each quarter of the frets bites beside that, where it was read: deviates of the same samples. */
  readonly quarters: QuarterGrips | undefined;
  /** Factor of each quarter's grip, in the order of seating. */
  readonly quarterGrips: readonly Band[] | undefined;
  /** How many times as far the rod moves the neck as all else that was measured lets expect; undefined where it was not read. */
  readonly rodTimes: number | undefined;
  readonly samples: number;
  /** Bite factor, the area of the studs with it, and shape of the studs: median, and the interval that holds 90 %. */
  readonly bite: Band;
  readonly studShape: Band;
  /** Between ln of the bite factor and the shape. */
  readonly correlation: number;
  /** Readings of strips, stiffness and density included, and entries of the bench log that speak. */
  readonly measured: number;
  readonly effective: number;
  readonly doubts: readonly GripDoubt[];
}

export interface GripOptions {
  readonly seed?: number;
  /** As many as the band has. */
  readonly samples?: number;
  /** What was read on the very neck; its entries are not among the others. */
  readonly own?: OwnNeck | undefined;
}

const FEWEST_EFFECTIVE = 300;
const FAR_SIGMAS = 4;
const END_SIGMAS = 2.5;
/** Samples of the prior that tell what a neck's shared deviates scatter. */
const PRIOR_SAMPLES = 1000;

/** Shape of the studs that the deviates of each strip, and of the neck, are told from: one for one wire. */
function shapesOf(neck: Build, strips: readonly StripEvidence[]) {
  const ofWire = (wire: StripEvidence['strip']['wire'] | Build) =>
    strips.find(({ strip }) => wireDifferences(strip.wire, wire).length === 0)?.strip.wire.studShape;
  return { strips: strips.map(({ strip }) => ofWire(strip.wire)!), neck: ofWire(neck) ?? neck.studShape };
}

/** Mean of every deviate. */
function meanOf({ deviates, weights, dimensions, samples }: Weighted): Float64Array {
  return Float64Array.from({ length: dimensions }, (_, d) => {
    let sum = 0;
    for (let i = 0; i < samples; i += 1) sum += weights[i] * deviates[d * samples + i];
    return sum;
  });
}

function farReadings(likelihoods: readonly StripLikelihood[], places: Places, mean: Float64Array): GripDoubt[] {
  return likelihoods.flatMap(({ model }, strip) => {
    const sampled = sampleStrip(model, deviatesAt(places.strips[strip], mean, 1));
    const spans = spansOf(model.strip);
    return model.strip.readings.flatMap((reading, index): GripDoubt[] => {
      const expectedMm = sampled.humpMm[spans.indexOf(reading.over)][0] * sampled.left(reading.days)[0];
      const measuredMm = signedMm(reading);
      const sigma = Math.hypot(readingErrorMm(reading), STRIP_MODEL_ERROR * expectedMm);
      const isFar = Math.abs(measuredMm - expectedMm) > FAR_SIGMAS * sigma;
      return isFar ? [{ code: 'far-reading', strip, reading: index, measuredMm, expectedMm }] : [];
    });
  });
}

/** What the neck's own readings are off by at one set of deviates, in standard deviations. */
function ownOff(own: OwnNeck | undefined, places: Places, mean: Float64Array) {
  const off: { readonly reading: NeckReading; readonly expectedMm: number; readonly sigmas: number }[] = [];
  if (!own) return off;
  eachReading(own, drawsAt(own, places, mean, 1), (reading, [expectedMm]) => {
    const sigmas = Math.abs(reading.measuredMm - expectedMm) / sigmaMm(own, reading, expectedMm);
    off.push({ reading, expectedMm, sigmas });
  });
  return off;
}

interface Heard {
  readonly neck: Build;
  readonly evidence: readonly StripEvidence[];
  readonly likelihoods: readonly StripLikelihood[];
  readonly own: OwnNeck | undefined;
  readonly places: Places;
}

function doubtsOf({ neck, evidence, likelihoods, own, places }: Heard, weighted: Weighted): GripDoubt[] {
  const mean = meanOf(weighted);
  const onNeck = ownOff(own, places, mean);
  const measured = likelihoods.reduce((sum, likelihood) => sum + likelihood.measured, onNeck.length);
  const square = likelihoods.reduce(
    (sum, likelihood, strip) => sum + likelihood.misfit(deviatesAt(places.strips[strip], mean, 1)),
    mean.reduce((sum, z) => sum + z * z, 0) + onNeck.reduce((sum, { sigmas }) => sum + sigmas ** 2, 0),
  );
  const farOnNeck = onNeck
    .filter(({ sigmas }) => sigmas > FAR_SIGMAS)
    .map(({ reading: { kind, measuredMm }, expectedMm }): GripDoubt => {
      return { code: 'far-on-neck', kind, measuredMm, expectedMm };
    });
  const ends = Object.entries(places.neck).flatMap(([input, place]): GripDoubt[] => {
    const z = mean[place];
    const side = z < 0 ? 'low' : 'high';
    return Math.abs(z) > END_SIGMAS ? [{ code: 'end-of-range', input: input as UncertainInput, side }] : [];
  });
  const wires = evidence.flatMap(({ strip }, index) =>
    wireDifferences(strip.wire, neck).map((number): GripDoubt => {
      return { code: 'other-wire', strip: index, number, ofStrip: strip.wire[number], ofNeck: neck[number] };
    }),
  );
  const { effective } = weighted;
  return [
    ...(measured > 0 && square > chiSquared999(measured) ? [{ code: 'contradicting' } as const] : []),
    ...farReadings(likelihoods, places, mean),
    ...farOnNeck,
    ...ends,
    ...(effective < FEWEST_EFFECTIVE ? [{ code: 'few-samples', effective, least: FEWEST_EFFECTIVE } as const] : []),
    ...wires,
  ];
}

/** Bite factor and shape of the samples: of the neck's wire, or of the first strip's where that is another. */
function found(neck: Build, places: Places, weighted: Weighted, studShape: number) {
  const spreads = spreadsOf(neck);
  const { deviates, weights, samples } = weighted;
  const placeOf = (input: StripInput) => places.neck[input] ?? places.strips[0].inputs[input];
  const row = (input: StripInput) => deviates.subarray(placeOf(input) * samples, (placeOf(input) + 1) * samples);
  const [bite, area, shape] = [row('bite'), row('studArea'), row('studShape')];
  const logs = bite.map((z, i) => spreads.bite * z + spreads.studArea * area[i]);
  const shapes = shape.map((z) => Math.max(0, studShape + spreads.studShape * z));
  const mean = (values: Float64Array) => values.reduce((sum, value, i) => sum + weights[i] * value, 0);
  const [meanLog, meanShape] = [mean(logs), mean(shapes)];
  const product = (a: Float64Array, am: number, b: Float64Array, bm: number) =>
    a.reduce((sum, value, i) => sum + weights[i] * (value - am) * (b[i] - bm), 0);
  const [ll, ss] = [product(logs, meanLog, logs, meanLog), product(shapes, meanShape, shapes, meanShape)];
  const correlation = ll * ss > 0 ? product(logs, meanLog, shapes, meanShape) / Math.sqrt(ll * ss) : 0;
  return { logs, shapes, correlation };
}

/** What the deviates of the prior are more than those that a neck tells from its own bite factor and shape. */
export function shiftsOf(neck: Build, studShape: number): Partial<Record<StripInput, number>> {
  const spreads = spreadsOf(neck);
  return {
    bite: Math.log(neck.biteFactor) / spreads.bite,
    studShape: (neck.studShape - studShape) / spreads.studShape,
  };
}

/** The deviates of the samples as the neck tells them: from its own bite factor and shape. */
function inTermsOf(
  neck: Build,
  places: Places,
  weighted: Weighted,
  taken: Uint32Array,
  studShape: number,
): KnownDeviates {
  const shifts = shiftsOf(neck, studShape);
  return Object.fromEntries(
    Object.entries(places.neck).map(([input, place]) => {
      const shift = shifts[input as StripInput] ?? 0;
      return [input, Float64Array.from(taken, (i) => weighted.deviates[place * weighted.samples + i] - shift)];
    }),
  );
}

/** Shape and width of the studs are asked for where everything that a strip tells of a wire is of the neck's. */
function shapeFound(places: Places, shapes: ReturnType<typeof shapesOf>): number {
  const isOwnWire = GRIP_INPUTS.every((input) => places.neck[input] !== undefined);
  return isOwnWire ? shapes.neck : shapes.strips[0];
}

/** The neck with the grip that nobody has measured: what its own readings are heard with. */
export function asUnmeasured(neck: Build, strips: readonly StripEvidence[]): Build {
  return { ...neck, biteFactor: 1, studShape: shapesOf(neck, strips).neck };
}

/** Of the rod's readings over what is expected of them at the mean of the posterior; their mean. */
function rodTimesOf(own: OwnNeck | undefined, places: Places, weighted: Weighted): number | undefined {
  const rods = ownOff(own, places, meanOf(weighted)).filter(({ reading }) => reading.kind === 'rod');
  if (rods.length === 0) return undefined;
  return rods.reduce((sum, { reading, expectedMm }) => sum + reading.measuredMm / expectedMm, 0) / rods.length;
}

/**
 * How many times as wide the shape of the studs is taken to spread where a strip is heard: ±1 about a ridge, so that block and
 * point are both one standard deviation off. Nothing that is read on a strip tells shape from bite well, and what is assumed of
 * it would go on speaking in the narrowed band: with ±0.5 that held of 81 % of the workshops whose studs are points.
 */
const SHAPE_WIDER = 2;

/** Adds ln N(z; 0, k)/N(z; 0, 1) of each wire's shape. */
function widenShapes(places: Places, deviates: Float64Array, logs: Float64Array): void {
  const found = [places.neck.studShape, ...places.strips.map(({ inputs }) => inputs.studShape)];
  const slope = (1 - 1 / SHAPE_WIDER ** 2) / 2;
  for (const place of new Set(found.filter((one) => one !== undefined)))
    for (let i = 0; i < logs.length; i += 1) logs[i] += slope * deviates[place * logs.length + i] ** 2;
}

/** ln of the likelihood of everything that speaks, for many samples. */
function likelihoodOfAll(
  { likelihoods, own, places }: Heard,
  necks: readonly NeckLikelihood[],
): (deviates: Float64Array, count: number) => Float64Array {
  return (deviates, count) => {
    const logs = new Float64Array(count);
    if (likelihoods.length > 0) widenShapes(places, deviates, logs);
    likelihoods.forEach((likelihood, strip) => likelihood.add(deviatesAt(places.strips[strip], deviates, count), logs));
    necks.forEach((likelihood) => likelihood.add(deviates, count, logs));
    if (own) addNeck(own, places, deviates, count, logs);
    return logs;
  };
}

/** Each quarter's grip: of all samples as bands, and of those that were taken. */
function quartersOf(places: Places, weighted: Weighted, all: Uint32Array, taken: Uint32Array) {
  const { quarters } = places;
  if (!quarters) return { quarters: undefined, quarterGrips: undefined };
  const logs = quarterLogs(places, weighted.deviates, weighted.samples);
  return {
    quarters: { frets: quarters.frets, logs: logs.map((log) => Float64Array.from(taken, (i) => log[i])) },
    quarterGrips: logs.map((log) => bandOf(Float64Array.from(all, (i) => Math.exp(log[i])))),
  };
}

/**
 * @param neck the build that they speak for
 * @param strips accepted by the maker as of its wire and saw; with readings or a stiffness, and free of problems
 * @param entries of the bench log, of other necks, free of problems; those that say nothing of the bite are passed over
 * @throws {RangeError} when there is nothing that speaks
 */
export function gripPosterior(
  neck: Build,
  strips: readonly StripEvidence[],
  entries: readonly LogEntry[] = [],
  { seed = 1, samples = 2000, own }: GripOptions = {},
): GripPosterior {
  const used = entries.filter(informs);
  const ownReadings = own?.read.reduce((sum, { readings }) => sum + readings.length, 0) ?? 0;
  if (strips.length + used.length + ownReadings === 0)
    throw new RangeError('no strip and no entry of the bench log speaks; one must');
  const quartersRead = own?.read.find(({ quarters }) => quarters !== undefined)?.quarters;
  const beside = { withNecks: used.length > 0, isRead: own !== undefined, quarters: quartersRead };
  const places = placesOf(neck, strips, beside);
  const shapes = shapesOf(neck, strips);
  const likelihoods = strips.map(({ strip, ownBoard }, index) =>
    stripLikelihood(stripModel(strip, neck, ownBoard, shapes.strips[index])),
  );
  const prior = used.length > 0 ? normalDeviates(seed, PRIOR_SAMPLES, places.dimensions) : new Float64Array(0);
  const necks = used.map((entry) => neckLikelihood(neck, entry, shapes.neck, places, prior));
  const heard: Heard = { neck, evidence: strips, likelihoods, own, places };
  const weighted = importanceSamples(places.dimensions, likelihoodOfAll(heard, necks), seed);
  const { logs, shapes: sampledShapes, correlation } = found(neck, places, weighted, shapeFound(places, shapes));
  const all = resampled(weighted, weighted.samples, seed);
  const taken = resampled(weighted, samples, seed);
  return {
    deviates: inTermsOf(neck, places, weighted, taken, shapes.neck),
    ...quartersOf(places, weighted, all, taken),
    rodTimes: rodTimesOf(own, places, weighted),
    samples,
    bite: bandOf(Float64Array.from(all, (i) => Math.exp(logs[i]))),
    studShape: bandOf(Float64Array.from(all, (i) => sampledShapes[i])),
    correlation,
    measured: likelihoods.reduce((sum, { measured }) => sum + measured, used.length + ownReadings),
    effective: weighted.effective,
    doubts: doubtsOf(heard, weighted),
  };
}
