/**
 * Talks to the worker that computes. Latest value wins: while one build is being computed only the newest of those that
 * came since is kept. A worker that crashes or falls silent is ended and replaced, and the page is told.
 */
import type { Build } from '../build/build.ts';
import type { Prediction } from '../mechanics/prediction-types.ts';

/** A running worker, however it was started. */
export interface SolverWorker {
  readonly predict: (build: Build) => Promise<Prediction>;
  /** Calls back when the worker has broken down. */
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

export interface SolverListener {
  readonly solved: (build: Build, prediction: Prediction) => void;
  readonly working: () => void;
  /** The worker was lost and another one took over. */
  readonly restarted: () => void;
  /** Nothing more will come until the next request. */
  readonly failed: (reason: string) => void;
}

export interface Solver {
  readonly request: (build: Build) => void;
  readonly end: () => void;
}

/** Longer than any solve takes: a worker silent for this long is taken for lost. */
const PATIENCE_MS = 30_000;
/** Workers lost in a row before giving up. */
const MAX_LOSSES = 3;

export function createSolver(
  start: () => SolverWorker,
  listener: SolverListener,
  patienceMs: number = PATIENCE_MS,
): Solver {
  let worker: SolverWorker | undefined;
  let inFlight: Build | undefined;
  let waiting: Build | undefined;
  let losses = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let ended = false;

  function lose(lost: SolverWorker): void {
    if (lost !== worker || ended) return;
    clearTimeout(timer);
    lost.end();
    worker = undefined;
    const build = waiting ?? inFlight;
    inFlight = undefined;
    waiting = undefined;
    losses += 1;
    if (losses > MAX_LOSSES) {
      losses = 0;
      listener.failed('the calculation stopped several times in a row');
      return;
    }
    listener.restarted();
    if (build) send(build);
  }

  function started(): SolverWorker {
    if (worker) return worker;
    const fresh = start();
    worker = fresh;
    fresh.onCrash(() => lose(fresh));
    return fresh;
  }

  function send(build: Build): void {
    const current = started();
    inFlight = build;
    listener.working();
    timer = setTimeout(() => lose(current), patienceMs);
    current.predict(build).then(
      (prediction) => {
        if (current !== worker || ended) return;
        losses = 0;
        finish();
        listener.solved(build, prediction);
      },
      (error: unknown) => {
        if (current !== worker || ended) return;
        const next = finish();
        if (!next) listener.failed(error instanceof Error ? error.message : String(error));
      },
    );
  }

  /** @returns whether another build was waiting and has been sent */
  function finish(): boolean {
    clearTimeout(timer);
    inFlight = undefined;
    const next = waiting;
    waiting = undefined;
    if (next) send(next);
    return next !== undefined;
  }

  return {
    request: (build) => {
      if (ended) return;
      if (inFlight) waiting = build;
      else send(build);
    },
    end: () => {
      ended = true;
      clearTimeout(timer);
      worker?.end();
      worker = undefined;
    },
  };
}
