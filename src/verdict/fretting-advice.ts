/** Advice while frets go in, past the checks: what each choice would newly raise, and none advised that they stop. */
import type { Check } from '../fretwork/checks/check-types.ts';
import type { Predictor } from '../mechanics/predict.ts';
import {
  adviceSteps,
  advisedOf,
  type AdviceOptions,
  type FrettingJob,
  type Outcome,
  type ReadLines,
} from '../mechanics/while-fretting/advice.ts';
import { splitAt, withRest, type RestChange } from '../mechanics/while-fretting/job.ts';
import type { Estimator } from '../mechanics/uncertainty/estimate.ts';
import { slotAndTang, type Build } from '../neck/build.ts';
import type { Band } from '../mechanics/uncertainty/band.ts';
import type { GripDoubt } from '../mechanics/try-strip/grip-posterior.ts';
import { isOffered, raisedByChange } from './raised-by.ts';

export interface AdvisedOutcome extends Outcome {
  readonly raised: readonly Check[];
  /** Nothing stops it. */
  readonly isOffered: boolean;
}

export interface FrettingAdvice {
  readonly seated: number;
  readonly lines: ReadLines;
  /** The first is going on. */
  readonly outcomes: readonly AdvisedOutcome[];
  /** Index of the outcome that is advised. */
  readonly advised: number;
  /** What the readings say of the bite, and what is doubtful about them. */
  readonly bite: Band;
  readonly doubts: readonly GripDoubt[];
}

/** A blade and a wire as the workshop has them. */
export interface StockForRest {
  readonly bladesMm: readonly number[];
  readonly wires: readonly { readonly tangWidthMm: number; readonly studWidthMm: number }[];
}

/** Steps of the kerf where no blade is known, mm: what can be told apart with feelers. */
const KERF_STEP_MM = 0.03;
const MOST_KERFS = 4;
/** Kerfs nearer than that are one. */
const SAME_MM = 0.0025;

/** What can be done with the frets to come: slots can be opened and never closed, and another wire must go into them. */
function restChoices(build: Build, rest: readonly number[], stock: StockForRest): RestChange[] {
  if (rest.length === 0 || build.method === 'glue') return [];
  const slots = rest.map((fret) => slotAndTang(build, fret));
  const kerfMm = Math.max(...slots.map((slot) => slot.kerfMm));
  const studs = Math.min(...slots.map((slot) => slot.studWidthMm));
  // Glued in already.
  if (kerfMm >= studs) return [];
  const free = Array.from({ length: MOST_KERFS }, (_, step) => Number((kerfMm + (step + 1) * KERF_STEP_MM).toFixed(3)));
  const blades = (stock.bladesMm.length > 0 ? stock.bladesMm : free).filter(
    (blade) => blade > kerfMm + SAME_MM && blade < studs,
  );
  const [first] = slots;
  const others = stock.wires.filter(
    ({ tangWidthMm, studWidthMm }) => tangWidthMm !== first.tangWidthMm || studWidthMm !== first.studWidthMm,
  );
  return [
    ...[...new Set(blades)].toSorted((a, b) => a - b).map((kerf): RestChange => ({ code: 'kerf', kerfMm: kerf })),
    ...others.map((wire): RestChange => ({ code: 'wire', ...wire })),
    { code: 'glue' },
  ];
}

/** Studs of frets that are glued in are not to bite; going on raises nothing new. */
function raisedIn({ code }: RestChange, raised: readonly Check[]): readonly Check[] {
  if (code === 'go-on') return [];
  return code === 'glue' ? raised.filter((check) => check.code !== 'no-bite' && check.code !== 'weak-bite') : raised;
}

/** In steps, as `adviceSteps`. */
export function* frettingSteps(
  predictor: Pick<Predictor, 'predict'>,
  estimator: Pick<Estimator, 'drawing'>,
  job: Omit<FrettingJob, 'choices'>,
  stock: StockForRest,
  options: AdviceOptions = {},
): Generator<unknown, FrettingAdvice> {
  const { rest } = splitAt(job.build, Math.max(...job.readings.map(({ seated }) => seated)));
  const choices = restChoices(job.build, rest, stock);
  const { outcomes, seated, lines, posterior } = yield* adviceSteps(estimator, { ...job, choices }, options);
  const now = { build: job.build, prediction: predictor.predict(job.build) };
  const told = outcomes.map((outcome): AdvisedOutcome => {
    const { regions } = withRest(job.build, rest, outcome.change);
    const raised = raisedIn(outcome.change, raisedByChange(predictor, now, { regions }));
    return { ...outcome, raised, isOffered: isOffered(raised) };
  });
  const offered = told.filter((outcome) => outcome.isOffered);
  return {
    seated,
    lines,
    outcomes: told,
    advised: told.indexOf(offered[advisedOf(offered, job.wantedMm)]),
    bite: posterior.bite,
    doubts: posterior.doubts,
  };
}
