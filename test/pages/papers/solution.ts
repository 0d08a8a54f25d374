/** A build with its real prediction, as the store holds it. */
import type { Build } from '../../../src/neck/build.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import type { Solution } from '../../../src/state/solution-slice.ts';

const predictor = createPredictor();
const known = new Map<Build, Solution>();

/** Predicted once for each build. */
export function solutionOf(build: Build): Solution {
  const before = known.get(build);
  if (before) return before;
  const solution = { build, prediction: predictor.predict(build), version: 1 };
  known.set(build, solution);
  return solution;
}
