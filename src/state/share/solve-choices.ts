/** Predictions and bands of the two or three builds of a page, one after the other, in a worker of their own. */
import type { Build } from '../../neck/build.ts';
import type { Prediction } from '../../mechanics/prediction-types.ts';
import type { Uncertainty } from '../../mechanics/uncertainty/types.ts';
import { startSolverWorker } from '../running-worker.ts';

/** What is known of one build; null while it is being computed. */
export interface Solved {
  readonly prediction: Prediction | null;
  readonly uncertainty: Uncertainty | null;
}

export interface ChoicesWorker {
  readonly predict: (build: Build) => Promise<Prediction>;
  readonly estimate: (build: Build) => Promise<Uncertainty | null>;
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

export interface ChoicesListener {
  readonly solved: (index: number, solved: Solved) => void;
  readonly failed: () => void;
}

function startWorker(): ChoicesWorker {
  const { api, onCrash, end } = startSolverWorker('choices');
  return { predict: (build) => api.predict(build), estimate: (build) => api.estimate(build), onCrash, end };
}

/** All predictions first, so that every choice has its sentences soon; then the bands. @returns a function that stops it */
export function solveChoices(
  builds: readonly Build[],
  listener: ChoicesListener,
  start: () => ChoicesWorker = startWorker,
): () => void {
  let isOver = false;
  const worker = start();

  function end(): void {
    if (isOver) return;
    isOver = true;
    worker.end();
  }

  function fail(): void {
    if (isOver) return;
    end();
    listener.failed();
  }

  async function run(): Promise<void> {
    const predictions: Prediction[] = [];
    for (const [index, build] of builds.entries()) {
      const prediction = await worker.predict(build);
      if (isOver) return;
      predictions.push(prediction);
      listener.solved(index, { prediction, uncertainty: null });
    }
    for (const [index, build] of builds.entries()) {
      const uncertainty = await worker.estimate(build);
      if (isOver) return;
      listener.solved(index, { prediction: predictions[index], uncertainty });
    }
    end();
  }

  worker.onCrash(fail);
  run().catch(fail);
  return end;
}
