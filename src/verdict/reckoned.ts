import type { Build } from '../neck/build.ts';
import type { Prediction } from '../mechanics/prediction-types.ts';

/** A build together with the prediction that is true of it: what every verdict is given. */
export interface Reckoned {
  readonly build: Build;
  readonly prediction: Prediction;
}
