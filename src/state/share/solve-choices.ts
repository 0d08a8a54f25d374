/** Predictions and bands of the two or three builds of a page, one after the other, in a worker of their own. */
import type { Build } from '../../neck/build.ts';
import type { Prediction } from '../../mechanics/prediction-types.ts';
import type { BandNarrowing } from '../../mechanics/bench-log/standing.ts';
import type { Uncertainty } from '../../mechanics/uncertainty/types.ts';
import type { NarrowingsHere } from './narrowings-here.ts';
import { CHOICES_WORKER } from './shared.ts';
import { startSolverWorker } from '../running-worker.ts';

/** What is known of one build; null while it is being computed. */
export interface Solved {
  readonly prediction: Prediction | null;
  readonly uncertainty: Uncertainty | null;
  /** Hash of the measurements of this device that narrow its bands. */
  readonly narrowedBy?: string;
}

export interface ChoicesWorker {
  readonly predict: (build: Build) => Promise<Prediction>;
  readonly estimate: (build: Build, narrowing: BandNarrowing) => Promise<Uncertainty | null>;
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

export interface ChoicesListener {
  readonly solved: (index: number, solved: Solved) => void;
  readonly failed: () => void;
}

function startWorker(): ChoicesWorker {
  const { api, onCrash, end } = startSolverWorker(CHOICES_WORKER);
  const estimate: ChoicesWorker['estimate'] = (build, narrowing) => api.estimate(build, narrowing);
  return { predict: (build) => api.predict(build), estimate, onCrash, end };
}

/** What narrows the bands of a build here: nothing, unless it refers to measurements and they were accepted on this device. */
async function narrowingsOf(builds: readonly Build[]): Promise<NarrowingsHere> {
  if (!builds.some(({ biteReference, gripReference }) => biteReference ?? gripReference)) {
    return { optionsOf: () => ({}), hashOf: () => undefined };
  }
  const { narrowingsHere } = await import('./narrowings-here.ts');
  return narrowingsHere(builds);
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
    const narrowings = await narrowingsOf(builds);
    if (isOver) return;
    for (const [index, build] of builds.entries()) {
      const uncertainty = await worker.estimate(build, narrowings.optionsOf(build));
      if (isOver) return;
      const narrowedBy = narrowings.hashOf(build);
      const known = { prediction: predictions[index], uncertainty };
      listener.solved(index, narrowedBy === undefined ? known : { ...known, narrowedBy });
    }
    end();
  }

  worker.onCrash(fail);
  run().catch(fail);
  return end;
}
