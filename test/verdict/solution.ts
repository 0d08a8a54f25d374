/** A build with its real prediction. */
import type { Build } from '../../src/neck/build.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import type { Reckoned } from '../../src/verdict/reckoned.ts';

const predictor = createPredictor();
const known = new Map<Build, Reckoned>();

/** Predicted once for each build. */
export function solutionOf(build: Build): Reckoned {
  const before = known.get(build);
  if (before) return before;
  const solution = { build, prediction: predictor.predict(build) };
  known.set(build, solution);
  return solution;
}
