/**
 * The band of a prediction: model, samples, readouts. In steps between which it can be given up, since each of the
 * predictions under it takes tens of milliseconds.
 */
import { Refused } from '../refusal.ts';
import type { Build } from '../../neck/build.ts';
import { createPredictor, type Predictor } from '../predict.ts';
import { METHODS, type Method } from '../prediction-types.ts';
import { nextTask, runSteps } from '../steps.ts';
import { spreadsOf } from './inputs.ts';
import { MODEL_STEPS, modelSteps, type ResponseModel } from './model.ts';
import { withQuarters, type QuarterGrips } from './quarters.ts';
import { readoutsOf } from './readouts.ts';
import { drawSamples, type Draws, type KnownDeviates } from './sampling.ts';
import { timeCourses } from './time-course.ts';
import type { MethodUncertainty, Uncertainty } from './types.ts';

export interface EstimateOptions {
  /** Whole number; the same seed gives the same band. */
  readonly seed?: number;
  readonly samples?: number;
  /** Standard deviation of ln bite: what the bench log leaves of it (bench-log/posterior.ts); 0.4 without a log. */
  readonly biteLogSpread?: number;
  /** What try strips and the bench log leave of the grip (try-strip/grip-posterior.ts): with it `biteLogSpread` is not used. */
  readonly grip?: KnownDeviates;
  /** Grip of each quarter of the frets beside that, of the same samples, where the neck was read after quarters. */
  readonly quarters?: QuarterGrips | undefined;
}

export const STANDARD_SEED = 1;
export const STANDARD_SAMPLES = 2000;
const LEAST_SAMPLES = 100;
const MOST_SAMPLES = 100_000;

/** How far it has come: done of total steps. */
export interface Progress {
  readonly done: number;
  readonly total: number;
}

/** What a band is made of: the model of a build and its samples. */
export interface Drawn {
  readonly model: ResponseModel;
  readonly draws: Draws;
}

export interface Estimator {
  /** Model and samples alone, one step a call of `next`. */
  drawing(build: Build, options?: EstimateOptions): Generator<Progress, Drawn>;
  /** One step a call of `next`; the last returns the band. */
  steps(build: Build, options?: EstimateOptions): Generator<Progress, Uncertainty>;
  /**
   * The same, asking between steps whether to stop.
   * @param shouldStop asked before each step; when it says so the answer is null.
   * @param breathe lets others run between steps, e.g. so that messages to a worker arrive.
   */
  estimate(
    build: Build,
    options?: EstimateOptions,
    shouldStop?: () => boolean,
    breathe?: () => Promise<void>,
    onProgress?: (progress: Progress) => void,
  ): Promise<Uncertainty | null>;
}

const TOTAL_STEPS = MODEL_STEPS + 2 + METHODS.length;

/**
 * @param predictor predicts the build itself and its contacts; necks with other moduli are kept apart, so that they do
 * not push out the necks that it keeps.
 * @throws {RangeError} from `steps` and `estimate` for a number of samples or a seed that cannot be.
 */
export function createEstimator(predictor: Predictor): Estimator {
  const aside = createPredictor();

  function* drawing(build: Build, options: EstimateOptions = {}): Generator<Progress, Drawn> {
    const { seed = STANDARD_SEED, samples = STANDARD_SAMPLES, biteLogSpread, grip, quarters } = options;
    if (!Number.isInteger(samples) || samples < LEAST_SAMPLES || samples > MOST_SAMPLES) {
      throw new Refused({ code: 'samples-beyond-range', samples, least: LEAST_SAMPLES, most: MOST_SAMPLES });
    }
    if (!Number.isInteger(seed)) throw new Refused({ code: 'seed-not-whole', seed });
    if (biteLogSpread !== undefined && !(biteLogSpread >= 0)) {
      throw new Refused({ code: 'bite-spread-negative', biteLogSpread });
    }
    let done = 0;
    const solving = modelSteps(build, spreadsOf(build, grip ? undefined : biteLogSpread), predictor, aside);
    let solved = solving.next();
    while (!solved.done) {
      yield { done: (done += 1), total: TOTAL_STEPS };
      solved = solving.next();
    }
    return { model: solved.value, draws: withQuarters(drawSamples(solved.value, seed, samples, grip), quarters) };
  }

  function* steps(build: Build, options: EstimateOptions = {}): Generator<Progress, Uncertainty> {
    const { seed = STANDARD_SEED } = options;
    const { model, draws } = yield* drawing(build, options);
    let done = MODEL_STEPS;
    yield { done: (done += 1), total: TOTAL_STEPS };
    const courses = timeCourses(draws, model.prediction);
    yield { done: (done += 1), total: TOTAL_STEPS };
    const methods: Partial<Record<Method, MethodUncertainty>> = {};
    for (const method of METHODS) {
      methods[method] = {
        ...draws.methods[method],
        ...readoutsOf(draws, model.prediction, method, build),
        timeCourse: courses[method],
      };
      yield { done: (done += 1), total: TOTAL_STEPS };
    }
    const { meanForceN: _force, statedWedges: _stated, ...sampled } = draws;
    return { ...sampled, seed, methods: methods as Record<Method, MethodUncertainty> };
  }

  async function estimate(
    build: Build,
    options: EstimateOptions = {},
    shouldStop: () => boolean = () => false,
    breathe: () => Promise<void> = nextTask,
    onProgress: (progress: Progress) => void = () => undefined,
  ): Promise<Uncertainty | null> {
    const run = await runSteps(steps(build, options), shouldStop, onProgress, breathe);
    return run && run.value;
  }

  return { drawing, steps, estimate };
}
