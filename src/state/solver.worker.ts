/** The worker: one predictor with its caches. A newer request makes it give up the band that it is working on. */
import { expose } from 'comlink';
import type { Build } from '../build/build.ts';
import { createPredictor } from '../mechanics/predict.ts';
import type { Prediction } from '../mechanics/prediction-types.ts';
import { createEstimator, type EstimateOptions } from '../mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
let latest = 0;

export interface SolverApi {
  predict(build: Build): Prediction;
  /** Null when another request came meanwhile. */
  estimate(build: Build, options?: EstimateOptions): Promise<Uncertainty | null>;
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
};

expose(api);
