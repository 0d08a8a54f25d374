/** The worker: one predictor with its caches. A newer request makes it give up the band that it is working on. */
import { expose } from 'comlink';
import type { Build } from '../build/build.ts';
import { answerWanted, type WantedAnswer } from '../mechanics/inversion/answers.ts';
import type { ReliefGoal } from '../mechanics/inversion/goal.ts';
import { createPredictor } from '../mechanics/predict.ts';
import type { Prediction } from '../mechanics/prediction-types.ts';
import type { StressField } from '../mechanics/stress.ts';
import { answerTangs, type TangAnswer, type TangWish } from '../mechanics/refret-answers.ts';
import { createEstimator, type EstimateOptions } from '../mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
let latest = 0;

export interface SolverApi {
  predict(build: Build): Prediction;
  /** Null when another request came meanwhile. */
  estimate(build: Build, options?: EstimateOptions): Promise<Uncertainty | null>;
  /** Stress around one slot; it makes nothing give up. */
  stress(build: Build, fret: number): StressField;
  /** Every way to a wanted relief; null as above. */
  wanted(build: Build, goal: ReliefGoal, options?: EstimateOptions): Promise<WantedAnswer | null>;
  /** The best mixtures of tangs for a refret; null as above. */
  tangs(build: Build, wish: TangWish, options?: EstimateOptions): Promise<TangAnswer | null>;
}

const api: SolverApi = {
  predict(build) {
    latest += 1;
    return predictor.predict(build);
  },
  estimate(build, options) {
    const mine = (latest += 1);
    return estimator.estimate(build, options, () => mine !== latest);
  },
  stress: (build, fret) => predictor.stress(build, fret),
  wanted(build, goal, options) {
    const mine = (latest += 1);
    return answerWanted(predictor, estimator, build, goal, options, () => mine !== latest);
  },
  tangs(build, wish, options) {
    const mine = (latest += 1);
    return answerTangs(predictor, estimator, build, wish, options, () => mine !== latest);
  },
};

expose(api);
