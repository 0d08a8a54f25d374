/** Runs the steps of the Monte Carlo to their end. */
import type { Build } from '../../../src/neck/build.ts';
import { createPredictor, type Predictor } from '../../../src/mechanics/predict.ts';
import { createEstimator, type EstimateOptions } from '../../../src/mechanics/uncertainty/estimate.ts';
import { spreadsOf } from '../../../src/mechanics/uncertainty/inputs.ts';
import { modelSteps, type ResponseModel } from '../../../src/mechanics/uncertainty/model.ts';
import type { Uncertainty } from '../../../src/mechanics/uncertainty/types.ts';
import { runAtOnce } from '../../../src/mechanics/steps.ts';

export function modelOf(build: Build, predictor: Predictor = createPredictor()): ResponseModel {
  return runAtOnce(modelSteps(build, spreadsOf(build), predictor, createPredictor()));
}

export function uncertaintyOf(
  build: Build,
  options: EstimateOptions = {},
  predictor: Predictor = createPredictor(),
): Uncertainty {
  return runAtOnce(createEstimator(predictor).steps(build, options));
}
