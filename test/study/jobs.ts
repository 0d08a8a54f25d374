/**
 * The study of the advice while frets go in: synthetic jobs, each with a truth drawn from the spreads of its inputs, a third of
 * them with studs of another law, a kerf that drifts along the neck, a grip of its own for each quarter, and 3 % by which the
 * neck differs from any model. Each is fretted three times: without looking, by the rule of three, and by the advice. Which
 * end strung and settled where the rod reaches the relief wanted with less than a third of its range? What was found is kept in
 * `jobs.json`; the validation page shows it, a test makes some again.
 */
import { readFileSync } from 'node:fs';
import { fretsInAfterQuarters, seatingQuarters } from '../../src/fretwork/plan/seating-order.ts';
import { slotAndTang, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { NO_EVIDENCE } from '../../src/mechanics/neck-readings/evidence.ts';
import { QUARTER_LOG_SPREAD } from '../../src/mechanics/neck-readings/spreads.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import type { Moment, Prediction } from '../../src/mechanics/prediction-types.ts';
import { runAtOnce } from '../../src/mechanics/steps.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { deviationsAt, INPUTS, spreadsOf } from '../../src/mechanics/uncertainty/inputs.ts';
import { adviceSteps, CLOSE_MM, ROD_SHARE_PERCENT } from '../../src/mechanics/while-fretting/advice.ts';
import { splitAt, withRest, type BowReading, type RestChange } from '../../src/mechanics/while-fretting/job.ts';
import { inProportion } from './rule-of-three.ts';
import { normals } from './workshops.ts';

/** With the rods that the necks have, and again without. */
export const JOBS = 250;
const FIRST_SEED = 90_000;
const SAMPLES = 500;
const GAUGE_MM = 0.02;
/** What a neck really differs by from the library's: solids hold it to 3 %. */
const TRUE_MODEL_ERROR = 0.03;
/** One standard deviation of the kerf from one end of the board to the other, mm: a blade that warms and wears (assumption). */
const DRIFT_MM = 0.01;
/** Studs of the truth: as drawn, blocks, points. */
const SHAPES = [null, 0, 2] as const;

/** Necks whose frets are pressed in: as the presets have them, and each without a rod. */
const PRESSED = PRESETS.map(({ build }) => build).filter(
  ({ method, workOrder }) => method !== 'glue' && workOrder === 'neck-first',
);
export const RODS = ['as-they-are', 'none'] as const;
export type Rods = (typeof RODS)[number];
const necksWith = (rods: Rods): readonly Build[] =>
  rods === 'none' ? PRESSED.map((build): Build => ({ ...build, rodKind: 'none' })) : PRESSED;

/** What lies in the drawer of the workshop: blades that are wider by so much than the one that sawed the slots, and one wire. */
const WIDER_BLADES_MM = [0.03, 0.06, 0.1] as const;
const FATTER_STUDS_MM = 0.06;

function stockFor(build: Build): RestChange[] {
  const { kerfMm, tangWidthMm, studWidthMm } = build;
  const kerfs = WIDER_BLADES_MM.map((wider) => kerfMm + wider).filter((kerf) => kerf < studWidthMm);
  return [
    ...kerfs.map((kerf): RestChange => ({ code: 'kerf', kerfMm: kerf })),
    { code: 'wire', tangWidthMm, studWidthMm: studWidthMm + FATTER_STUDS_MM },
    { code: 'glue' },
  ];
}

interface Truth {
  readonly deviates: readonly number[];
  readonly driftMm: number;
  /** Factor on what each fret does. */
  readonly grip: readonly number[];
  readonly strings: number;
  readonly errors: readonly number[];
}

function drawTruth(build: Build, index: number): Truth {
  const normal = normals(FIRST_SEED + index);
  const shape = SHAPES[index % SHAPES.length];
  const spreads = spreadsOf(build);
  const deviates = INPUTS.map(({ id }) => {
    const z = normal();
    return id === 'studShape' && shape !== null ? (shape - build.studShape) / spreads.studShape : z;
  });
  const model = 1 + TRUE_MODEL_ERROR * normal();
  const grip = Array.from({ length: build.fretCount }, () => model);
  for (const frets of seatingQuarters(build)) {
    const factor = model * Math.exp(QUARTER_LOG_SPREAD * normal());
    for (const fret of frets) grip[fret - 1] = factor;
  }
  const strings = 1 + TRUE_MODEL_ERROR * normal();
  const driftMm = DRIFT_MM * normal();
  return { deviates, driftMm, grip, strings, errors: [normal(), normal(), normal()] };
}

const predictor = createPredictor();
const estimator = createEstimator(predictor);

/** What the neck of the truth does, seated as the build says. */
function happens(build: Build, { deviates, driftMm, grip, strings }: Truth): Prediction {
  const regions = grip.map((_, index) => {
    const { kerfMm, tangWidthMm, studWidthMm } = slotAndTang(build, index + 1);
    const kerf = kerfMm + driftMm * (index / (grip.length - 1) - 0.5);
    return { fromFret: index + 1, toFret: index + 1, kerfMm: kerf, tangWidthMm, studWidthMm };
  });
  const found = predictor.predict({ ...build, regions }, deviationsAt(spreadsOf(build), deviates));
  const of = found.methods[build.method];
  const stations = found.stationXMm.length;
  const wedgeMm = of.basis.wedgeMm.map((mm, at) => mm * grip[Math.trunc(at / stations)]);
  const stringsMm = of.basis.stringsMm.map((mm) => mm * strings);
  return {
    ...found,
    methods: { ...found.methods, [build.method]: { ...of, basis: { ...of.basis, wedgeMm, stringsMm } } },
  };
}

const bowAt = (prediction: Prediction, build: Build, moment: Moment) =>
  lineAt(prediction, build.method, moment).extremeMm;
const withFrets = (fretsIn: readonly number[]): Moment => ({ strung: false, days: 0, rodPercent: 0, fretsIn });

/** How far the relief wanted lies outside what the rod reaches with its share, mm. */
function missMm(prediction: Prediction, build: Build, wantedMm: number): number {
  const { rod } = prediction;
  const [least, most] = rod.kind === 'none' ? [0, 0] : [rod.leastPercent, rod.mostPercent];
  const ends = [Math.max(least, -ROD_SHARE_PERCENT), Math.min(most, ROD_SHARE_PERCENT)].map((rodPercent) =>
    bowAt(prediction, build, { strung: true, days: build.settleDays, rodPercent }),
  );
  return Math.max(0, Math.min(...ends) - wantedMm, wantedMm - Math.max(...ends));
}

type Policy = (build: Build, readings: readonly BowReading[]) => RestChange;

const goOn: Policy = () => ({ code: 'go-on' });

/** In proportion to the first quarters, with the nearest blade; half the band of an unmeasured grip is let pass. */
function ruleOfThree(wantedFrettedMm: number, tolerance: number): Policy {
  return (build, readings) => {
    const last = readings.at(-1)!;
    const stated = predictor.predict(build);
    const predictedSoFarMm = bowAt(stated, build, withFrets(splitAt(build, last.seated).seated));
    const predictedFullMm = bowAt(stated, build, { strung: false, days: 0, rodPercent: 0 });
    if (predictedSoFarMm * predictedFullMm <= 0) return { code: 'go-on' };
    const { advice, kerfMm } = inProportion({
      predictedSoFarMm,
      measuredSoFarMm: last.measuredMm,
      predictedFullMm,
      targetFullMm: wantedFrettedMm,
      tolerance,
      kerfMm: build.kerfMm,
      studWidthMm: build.studWidthMm,
    });
    if (advice === 'glue-the-rest' || advice === 'past-target') return { code: 'glue' };
    if (kerfMm === undefined) return { code: 'go-on' };
    const blades = stockFor(build).flatMap((choice) => (choice.code === 'kerf' ? [choice.kerfMm] : []));
    const nearest = [build.kerfMm, ...blades].toSorted((a, b) => Math.abs(a - kerfMm) - Math.abs(b - kerfMm))[0];
    return nearest === build.kerfMm ? { code: 'go-on' } : { code: 'kerf', kerfMm: nearest };
  };
}

function advised(wantedMm: number, choices: readonly RestChange[]): Policy {
  return (build, readings) => {
    const job = { build, readings, evidence: NO_EVIDENCE, choices, wantedMm };
    const { outcomes, advised: index } = runAtOnce(adviceSteps(estimator, job, { samples: SAMPLES }));
    return outcomes[index].change;
  };
}

/** Frets the neck, looking after each of the first three quarters. @returns the neck as it was seated */
function fretted(start: Build, truth: Truth, policy: Policy): Build {
  let build = start;
  const readings: BowReading[] = [];
  fretsInAfterQuarters(start)
    .slice(0, -1)
    .forEach((fretsIn, quarter) => {
      const bow = bowAt(happens(build, truth), build, withFrets(fretsIn));
      readings.push({ seated: fretsIn.length, measuredMm: bow + GAUGE_MM * truth.errors[quarter], errorMm: GAUGE_MM });
      build = withRest(build, splitAt(build, fretsIn.length).rest, policy(build, readings));
    });
  return build;
}

export interface Job {
  /** How far each ends from where the rod reaches, mm. */
  readonly noneMm: number;
  readonly ruleMm: number;
  readonly adviceMm: number;
}

/** One job. @param index from 0 */
export function jobOf(rods: Rods, index: number): Job {
  const necks = necksWith(rods);
  const start = necks[index % necks.length];
  const stated = predictor.predict(start);
  const wantedMm = bowAt(stated, start, { strung: true, days: start.settleDays, rodPercent: 0 });
  const wantedFrettedMm = bowAt(stated, start, { strung: false, days: 0, rodPercent: 0 });
  const truth = drawTruth(start, index);
  const end = (policy: Policy) => {
    const build = fretted(start, truth, policy);
    return missMm(happens(build, truth), build, wantedMm);
  };
  return {
    noneMm: end(goOn),
    ruleMm: end(ruleOfThree(wantedFrettedMm, TOLERANCE)),
    adviceMm: end(advised(wantedMm, stockFor(start))),
  };
}

/** Half the band with the frets in of an unmeasured grip, as a share of the bow: what the rule of three lets pass. */
const TOLERANCE = 0.4;

export const isClose = (missedMm: number): boolean => missedMm <= CLOSE_MM;

/** One digit a job: 1 close without looking, 2 by the rule of three, 4 by the advice. */
export function digitOfJob({ noneMm, ruleMm, adviceMm }: Job): string {
  return [noneMm, ruleMm, adviceMm].reduce((sum, missed, bit) => sum + (isClose(missed) ? 2 ** bit : 0), 0).toString();
}

export interface JobRow {
  readonly rods: Rods;
  readonly jobs: string;
}
export interface JobStudy {
  readonly rows: readonly JobRow[];
}

export const jobRow = (rods: Rods): JobRow => ({
  rods,
  jobs: Array.from({ length: JOBS }, (_, index) => digitOfJob(jobOf(rods, index))).join(''),
});

export function readJobStudy(): JobStudy {
  return JSON.parse(readFileSync(new URL('jobs.json', import.meta.url), 'utf8')) as JobStudy;
}

const POLICIES = ['none', 'rule', 'advice'] as const;
export type PolicyId = (typeof POLICIES)[number];

/** Share of the jobs of some rows that end close, 0 to 1. */
export function closeShare(rows: readonly JobRow[], policy: PolicyId): number {
  const bit = 2 ** POLICIES.indexOf(policy);
  const digits = rows.flatMap(({ jobs }) => jobs.split(''));
  return digits.filter((digit) => (Number(digit) & bit) !== 0).length / digits.length;
}

/** Share of the jobs that would have ended close without looking, and do not as a policy has it. */
export function worseShare(rows: readonly JobRow[], policy: Exclude<PolicyId, 'none'>): number {
  const bit = 2 ** POLICIES.indexOf(policy);
  const digits = rows.flatMap(({ jobs }) => jobs.split(''));
  return digits.filter((digit) => (Number(digit) & 1) !== 0 && (Number(digit) & bit) === 0).length / digits.length;
}

const ROWS_SAY: Readonly<Record<Rods, string>> = {
  'as-they-are': 'with the rods that they have',
  none: 'without a rod',
};

/** The table of the validation page. */
export function jobStudySection({ rows }: JobStudy): string[] {
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const head = ['necks', 'jobs', 'going on', 'rule of three', 'advice', 'worse by the rule', 'worse by the advice'];
  const row = (says: string, of: readonly JobRow[]) =>
    line([
      says,
      `${of.reduce((sum, { jobs }) => sum + jobs.length, 0)}`,
      ...POLICIES.map((policy) => percent(closeShare(of, policy))),
      percent(worseShare(of, 'rule')),
      percent(worseShare(of, 'advice')),
    ]);
  return [
    '## While the frets go in: what the advice is worth',
    `Made by \`npm run study -- jobs\`, seeded: synthetic jobs on every preset that is pressed, each with a truth drawn from the spreads of its inputs, in a third of them studs that are blocks and in a third points, a kerf that drifts along the neck (±${DRIFT_MM} mm), a grip of its own for each quarter, and ±3 % by which the neck differs from any model. Read after each of three quarters with feelers of ±${GAUGE_MM} mm; in the drawer lie blades 0.03, 0.06 and 0.10 mm wider than the one that sawed the slots, and a wire whose studs are ${FATTER_STUDS_MM} mm wider. The relief wanted is the one that the stated neck would have. A job ends well when the relief, strung and settled, comes within ${CLOSE_MM} mm of it with no more than ${ROD_SHARE_PERCENT} % of the rod's range either way. Worse: jobs that going on would have ended well, and that did not. The rule of three lets pass what lies within ${100 * TOLERANCE} % of the bow and takes the nearest blade.`,
    [
      line(head),
      line(head.map(() => '---')),
      ...rows.map((one) => row(ROWS_SAY[one.rods], [one])),
      row('all', rows),
    ].join('\n'),
    'The advice ends about one job in a hundred more well than the rule of three, and leaves fewer worse: not the ten in a hundred that were hoped for. Most of what goes wrong comes after the last fret, from strings, wood and time, which no reading before it tells; without a rod nothing is left to mend it.',
  ];
}
