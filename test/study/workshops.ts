/**
 * Synthetic workshops: each has a truth drawn from the spreads of uncertainty/inputs.ts, makes a strip from the offcut of its
 * neck's board, measures it with the errors that are assumed, and is told the bands of the neck. Does the neck lie in them?
 *
 * The neck is the first preset. The other neck of the last kind is another one of the same preset by the same workshop: grip,
 * wire and time are those of the truth, wood, kerf and slots its own.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { defaultBuild } from '../../src/neck/build.ts';
import { ORDINARY_SCATTER, UNSAID, type LogEntry } from '../../src/mechanics/bench-log/entry.ts';
import { predictedPart } from '../../src/mechanics/bench-log/predicted.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import type { StripReading, TryStrip } from '../../src/mechanics/try-strip/document.ts';
import { gripPosterior, type GripPosterior } from '../../src/mechanics/try-strip/grip-posterior.ts';
import { deviatesAt } from '../../src/mechanics/try-strip/places.ts';
import { placesAlone } from '../../src/mechanics/try-strip/predicted.ts';
import { GRIP_INPUTS, STRIP_INPUTS, type StripInput } from '../../src/mechanics/try-strip/spreads.ts';
import { statedLn, stiffnessReadings, stiffnessThatReads } from '../../src/mechanics/try-strip/stiffness.ts';
import { spansOf, stripModel } from '../../src/mechanics/try-strip/strip-model.ts';
import { sampleStrip } from '../../src/mechanics/try-strip/strip-samples.ts';
import { sampleExtremes } from '../../src/mechanics/uncertainty/band-at.ts';
import { bandOf, type Band } from '../../src/mechanics/uncertainty/band.ts';
import { BENT_ERROR, INPUTS, spreadsOf } from '../../src/mechanics/uncertainty/inputs.ts';
import { modelSteps, type ResponseModel } from '../../src/mechanics/uncertainty/model.ts';
import { normalQuantile, seededRandom } from '../../src/mechanics/uncertainty/normal.ts';
import { withQuarters, type QuarterGrips } from '../../src/mechanics/uncertainty/quarters.ts';
import { drawSamples, factorsOf, type Draws, type KnownDeviates } from '../../src/mechanics/uncertainty/sampling.ts';
import { runAtOnce } from '../../src/mechanics/steps.ts';

export const NECK = defaultBuild();
const SAMPLES = 2000;
const SEED = 1;
const GAUGE_MM = 0.02;
/** What a strip really differs by from the library's, as a share of its bow: solids hold it to 3 %. */
const TRUE_MODEL_ERROR = 0.03;

const predictor = createPredictor();
function solve(): ResponseModel {
  return runAtOnce(modelSteps(NECK, spreadsOf(NECK), predictor, createPredictor()));
}
let solved: ResponseModel | undefined;
/** Of the neck; solved when it is first asked for. */
export const model = (): ResponseModel => (solved ??= solve());

/** What a neck is asked for, press fit. */
export const OUTCOMES = ['fretted', 'strung', 'settled', 'force'] as const;
export type Outcome = (typeof OUTCOMES)[number];

export const each = <Value>(of: (outcome: Outcome) => Value) =>
  Object.fromEntries(OUTCOMES.map((outcome) => [outcome, of(outcome)])) as Record<Outcome, Value>;

export function outcomesOf(draws: Draws): Record<Outcome, Float64Array> {
  const at = (strung: boolean, days: number) => sampleExtremes(draws, 'press', { strung, days, rodPercent: 0 });
  return {
    fretted: at(false, 0),
    strung: at(true, 0),
    settled: at(true, model().time.settleDays),
    force: draws.meanForceN,
  };
}

export function bandsWith(known?: KnownDeviates, quarters?: QuarterGrips): Record<Outcome, Band> {
  const values = outcomesOf(withQuarters(drawSamples(model(), SEED, SAMPLES, known), quarters));
  return each((outcome) => bandOf(Float64Array.from(values[outcome])));
}

/** The bands that would be left if everything that a strip and the bench log can see were known. */
export function floorBands(): Record<Outcome, Band> {
  return bandsWith(Object.fromEntries(STRIP_INPUTS.map((input) => [input, new Float64Array(SAMPLES)])));
}

/** A kind of measurement. */
export interface Kind {
  readonly id: 'ruler' | 'feelers' | 'weighed' | 'two-kerfs' | 'and-a-neck';
  readonly says: string;
  readonly isWeighed: boolean;
  readonly withNeck: boolean;
  readonly strip: TryStrip;
  readonly spans: readonly StripReading['over'][];
  readonly instrument: 'ruler' | 'feelers';
}

const ONE_KERF: TryStrip = {
  id: 'bcdfghjklmnpqr',
  date: '2026-03-02',
  name: 'Offcut',
  workshop: '',
  notes: '',
  offcut: {
    lengthMm: 300,
    widthMm: 60,
    thicknessMm: 6,
    wood: NECK.boardWood,
    sawn: NECK.boardSawn,
    ownModulusGPa: null,
    ownDensityKgM3: null,
    cutFrom: '',
    stiffness: { test: 'none' },
  },
  wire: {
    name: '',
    tangWidthMm: NECK.tangWidthMm,
    tangDepthMm: NECK.tangDepthMm,
    studWidthMm: NECK.studWidthMm,
    studAreaMm2: NECK.studAreaMm2,
    studPitchMm: NECK.studPitchMm,
    studShape: NECK.studShape,
  },
  slotDepthMm: NECK.slotDepthMm,
  endMm: 12.5,
  groups: [{ blade: '', kerfMm: NECK.kerfMm, kerfErrorMm: 0.01, frets: 12 }],
  readings: [],
};
const TWO_KERFS: TryStrip = {
  ...ONE_KERF,
  groups: [NECK.kerfMm, NECK.kerfMm + 0.06].map((kerfMm) => ({ blade: '', kerfMm, kerfErrorMm: 0.01, frets: 6 })),
};

const one = { strip: ONE_KERF, spans: ['ends'], withNeck: false } as const;
const two = { strip: TWO_KERFS, spans: ['ends', 0, 1], instrument: 'feelers', isWeighed: true } as const;
export const KINDS: readonly Kind[] = [
  { ...one, id: 'ruler', says: 'a ruler over the ends', isWeighed: false, instrument: 'ruler' },
  { ...one, id: 'feelers', says: 'feelers over the ends', isWeighed: false, instrument: 'feelers' },
  { ...one, id: 'weighed', says: 'feelers, and the slotted strip weighed', isWeighed: true, instrument: 'feelers' },
  { ...two, id: 'two-kerfs', says: 'the same over each of two groups of kerfs', withNeck: false },
  { ...two, id: 'and-a-neck', says: 'the same, and another neck’s bow', withNeck: true },
];

export type Normal = () => number;
export function normals(seed: number): Normal {
  const random = seededRandom(seed);
  return () => normalQuantile((uniformFloat64(random) + 2 ** -54) / (1 + 2 ** -52));
}

/** The strip that gives so under a weight, its slots sawn and empty. */
function weighing(strip: TryStrip, lnGive: number): TryStrip {
  const stiffness = stiffnessThatReads(strip, { test: 'weight', state: 'slotted' }, lnGive, 0);
  return { ...strip, offcut: { ...strip.offcut, stiffness } };
}

/** What the strip of a truth is measured to do. @param shared of the inputs that it has in common with the neck */
function measured(kind: Kind, shared: Readonly<Record<StripInput, number>>, normal: Normal): TryStrip {
  const { strip, spans, instrument, isWeighed } = kind;
  const own = stripModel(strip, NECK, true);
  const places = placesAlone(own);
  const z = new Float64Array(places.dimensions);
  for (const input of STRIP_INPUTS) z[places.inputs[input]] = shared[input];
  z[places.slotDepth] = normal();
  for (const place of places.kerfs) z[place] = normal();
  const sampled = sampleStrip(own, deviatesAt(places, z, 1));
  const readings = spans.map((over): StripReading => {
    const hump = sampled.humpMm[spansOf(strip).indexOf(over)][0] * (1 + TRUE_MODEL_ERROR * normal());
    const read = hump + (instrument === 'ruler' ? 0.5 : 0.05) * normal();
    return { days: 0, bow: read < 0 ? 'hollow' : 'hump', sizeMm: Math.abs(read), over, instrument, ownErrorMm: null };
  });
  const [give] = stiffnessReadings(stripModel(weighing(strip, 0), NECK, true));
  const ln = statedLn(give, shared.acrossGrain, z[places.slotDepth]) - own.spreads.boardModulus * shared.boardModulus;
  const error = BENT_ERROR * normal();
  return { ...(isWeighed ? weighing(strip, ln + error) : strip), readings };
}

export const rowsOf = (deviates: Readonly<Record<string, number>>) =>
  Float64Array.from(INPUTS, ({ id }) => deviates[id]);

export const stated = () => predictor.predict(NECK);
const entryOf = (measuredFrettedMm: number): LogEntry => ({
  ...UNSAID,
  ...ORDINARY_SCATTER,
  ...predictedPart(stated(), 'press', NECK),
  id: 'zxwvtsrqpnmlkj',
  date: '2026-03-01',
  neck: 'Another',
  method: 'press',
  gaugeErrorMm: GAUGE_MM,
  measuredFrettedMm,
  measuredStrungMm: null,
});

export const drawAll = (normal: Normal): Record<string, number> =>
  Object.fromEntries(INPUTS.map(({ id }) => [id, normal()]));

function posteriorOf(strip: TryStrip, entries: readonly LogEntry[]): GripPosterior {
  return gripPosterior(NECK, [{ strip, ownBoard: true }], entries, { seed: SEED, samples: SAMPLES });
}

interface Told {
  /** What the neck of the truth does. */
  readonly truth: Record<Outcome, number>;
  readonly bands: Record<Outcome, Band>;
}

/** One workshop. @param shape of the studs in truth; null as drawn */
function told(kind: Kind, shape: number | null, seed: number): Told {
  const normal = normals(seed);
  const truth = drawAll(normal);
  if (shape !== null) truth['studShape'] = (shape - NECK.studShape) / spreadsOf(NECK).studShape;
  const other = { ...drawAll(normal), ...Object.fromEntries(GRIP_INPUTS.map((input) => [input, truth[input]])) };
  const gauge = normal();
  const strip = measured(kind, truth as Record<StripInput, number>, normal);
  const bow = outcomesOf(factorsOf(model(), rowsOf(other))).fretted[0] + GAUGE_MM * gauge;
  const values = outcomesOf(factorsOf(model(), rowsOf(truth)));
  return {
    truth: each((outcome) => values[outcome][0]),
    bands: bandsWith(posteriorOf(strip, kind.withNeck ? [entryOf(bow)] : []).deviates),
  };
}

/** Which outcomes of one workshop's neck lie within their 90 % bands. @param shape of the studs in truth; null as drawn */
export function hits(kind: Kind, shape: number | null, seed: number): Record<Outcome, boolean> {
  const { truth, bands } = told(kind, shape, seed);
  return each((outcome) => truth[outcome] >= bands[outcome].p05 && truth[outcome] <= bands[outcome].p95);
}

export function widthsAfter(kind: Kind, seed: number): Record<Outcome, number> {
  const { bands } = told(kind, null, seed);
  return each((outcome) => bands[outcome].p95 - bands[outcome].p05);
}

/** The bands that a kind of measurement leaves when everything is read as it is stated. */
export function bandsAfter(kind: Kind): Record<Outcome, Band> {
  const zero = Object.fromEntries(INPUTS.map(({ id }) => [id, 0]));
  const strip = measured(kind, zero as Record<StripInput, number>, () => 0);
  return bandsWith(
    posteriorOf(strip, kind.withNeck ? [entryOf(predictedPart(stated(), 'press', NECK).predictedFrettedMm!)] : [])
      .deviates,
  );
}
