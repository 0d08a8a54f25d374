/** The worker: one predictor with its caches, answering one build at a time. */
import { expose } from 'comlink';
import { createPredictor } from '../mechanics/predict.ts';

const predictor = createPredictor();

export type SolverApi = Pick<typeof predictor, 'predict'>;

expose({ predict: (build) => predictor.predict(build) } satisfies SolverApi);
