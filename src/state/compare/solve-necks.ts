/** Predictions and bands of compared necks, in a worker of their own; what was computed once is kept with its build. */
import { failureOf, type Failure } from '../../speech/failures.ts';
import type { Build } from '../../neck/build.ts';
import type { BandNarrowing } from '../../mechanics/bench-log/standing.ts';
import type { Prediction } from '../../mechanics/prediction-types.ts';
import type { Uncertainty } from '../../mechanics/uncertainty/types.ts';
import { startSolverWorker } from '../running-worker.ts';

/** What is known of one neck; null while it is being computed. */
export interface SolvedNeck {
  readonly prediction: Prediction | null;
  readonly uncertainty: Uncertainty | null;
}

export interface NecksWorker {
  readonly predict: (build: Build) => Promise<Prediction>;
  readonly estimate: (build: Build, narrowing: BandNarrowing) => Promise<Uncertainty | null>;
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

export interface NecksListener {
  readonly solved: (build: Build, solved: SolvedNeck) => void;
  readonly failed: (failure: Failure) => void;
}

function startWorker(): NecksWorker {
  const { api, onCrash, end } = startSolverWorker('comparison');
  return {
    predict: (build) => api.predict(build),
    estimate: (build, narrowing) => api.estimate(build, narrowing),
    onCrash,
    end,
  };
}

/**
 * All predictions first, so that picture and table stand soon; then the bands.
 * @returns a function that gives up what is not done yet
 */
export function solveNecks(
  builds: readonly Build[],
  narrowing: (build: Build) => BandNarrowing,
  listener: NecksListener,
  start: () => NecksWorker = startWorker,
): () => void {
  let isOver = builds.length === 0;
  if (isOver) return () => undefined;
  const worker = start();

  function end(): void {
    if (isOver) return;
    isOver = true;
    worker.end();
  }

  function fail(failure: Failure): void {
    if (isOver) return;
    end();
    listener.failed(failure);
  }

  async function run(): Promise<void> {
    const predictions: Prediction[] = [];
    for (const build of builds) {
      const prediction = await worker.predict(build);
      if (isOver) return;
      predictions.push(prediction);
      listener.solved(build, { prediction, uncertainty: null });
    }
    for (const [index, build] of builds.entries()) {
      const uncertainty = await worker.estimate(build, narrowing(build));
      if (isOver) return;
      listener.solved(build, { prediction: predictions[index], uncertainty });
    }
    end();
  }

  worker.onCrash(() => fail({ code: 'broke-off' }));
  run().catch((error: unknown) => fail(failureOf(error)));
  return end;
}
