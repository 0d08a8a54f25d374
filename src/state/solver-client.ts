/**
 * Talks to the worker that computes. Latest value wins: while one build is being predicted only the newest of those that
 * came since is kept. Once it has been predicted and nothing new comes for a moment, its bands are computed; a newer
 * build makes the worker give them up. A worker that crashes or falls silent is ended and replaced, and the page is told.
 */
import { failureOf, type Failure } from '../speech/failures.ts';
import type { Build } from '../neck/build.ts';
import type { Prediction } from '../mechanics/prediction-types.ts';
import type { StressField } from '../mechanics/elements/stress.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';
import type { NotComputed } from './solution-slice.ts';

/** A running worker, however it was started. */
export interface SolverWorker {
  readonly predict: (build: Build) => Promise<Prediction>;
  /** Null when a newer request made the worker give up. */
  readonly estimate: (build: Build) => Promise<Uncertainty | null>;
  readonly stress: (build: Build, fret: number) => Promise<StressField>;
  /** Calls back when the worker has broken down. */
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

export interface SolverListener {
  readonly solved: (build: Build, prediction: Prediction) => void;
  readonly estimated: (build: Build, uncertainty: Uncertainty) => void;
  readonly working: () => void;
  /** The worker was lost and another one took over. */
  readonly restarted: () => void;
  /** What was asked for last is not computed, and nothing more will come until the next request. */
  readonly failed: (failure: Failure, what: NotComputed['what']) => void;
}

export interface Solver {
  readonly request: (build: Build) => void;
  /** Stress around one slot; never answered by a worker that is lost meanwhile. */
  readonly stress: (build: Build, fret: number) => Promise<StressField>;
  readonly end: () => void;
}

export interface SolverTimes {
  /** Longer than any answer takes: a worker silent for this long is taken for lost. */
  readonly patienceMs: number;
  /** Quiet time before bands are computed, so that a slider in motion does not start them again and again. */
  readonly restMs: number;
}

const TIMES: SolverTimes = { patienceMs: 30_000, restMs: 250 };
/** Workers lost in a row before giving up. */
const MAX_LOSSES = 3;

export function createSolver(
  start: () => SolverWorker,
  listener: SolverListener,
  { patienceMs, restMs }: SolverTimes = TIMES,
): Solver {
  let worker: SolverWorker | undefined;
  let inFlight: Build | undefined;
  let waiting: Build | undefined;
  /** The build whose bands are awaited or being computed. */
  let estimating: Build | undefined;
  let losses = 0;
  let patience: ReturnType<typeof setTimeout> | undefined;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let ended = false;

  function lose(lost: SolverWorker): void {
    if (lost !== worker || ended) return;
    clearTimeout(patience);
    clearTimeout(rest);
    lost.end();
    worker = undefined;
    const what = waiting || inFlight ? 'prediction' : 'bands';
    const build = waiting ?? inFlight ?? estimating;
    inFlight = waiting = estimating = undefined;
    losses += 1;
    if (losses > MAX_LOSSES) {
      losses = 0;
      listener.failed({ code: 'stopped-repeatedly' }, what);
      return;
    }
    listener.restarted();
    if (build) predict(build);
  }

  function started(): SolverWorker {
    if (worker) return worker;
    const fresh = start();
    worker = fresh;
    fresh.onCrash(() => lose(fresh));
    return fresh;
  }

  function watch(current: SolverWorker): void {
    clearTimeout(patience);
    patience = setTimeout(() => lose(current), patienceMs);
  }

  function predict(build: Build): void {
    const current = started();
    clearTimeout(rest);
    estimating = undefined;
    inFlight = build;
    listener.working();
    watch(current);
    current.predict(build).then(
      (prediction) => {
        if (current !== worker || ended) return;
        const next = settle();
        if (!next) estimateSoon(build);
        listener.solved(build, prediction);
      },
      (error: unknown) => {
        if (current !== worker || ended) return;
        if (!settle()) listener.failed(failureOf(error), 'prediction');
      },
    );
  }

  /** @returns whether another build was waiting and has been sent */
  function settle(): boolean {
    clearTimeout(patience);
    inFlight = undefined;
    const next = waiting;
    waiting = undefined;
    if (next) predict(next);
    return next !== undefined;
  }

  function estimateSoon(build: Build): void {
    estimating = build;
    rest = setTimeout(() => estimate(build), restMs);
  }

  function estimate(build: Build): void {
    const current = started();
    watch(current);
    const isCurrent = () => current === worker && estimating === build && !ended;
    current.estimate(build).then(
      (uncertainty) => {
        if (!isCurrent()) return;
        clearTimeout(patience);
        estimating = undefined;
        losses = 0;
        if (uncertainty) listener.estimated(build, uncertainty);
      },
      (error: unknown) => {
        if (!isCurrent()) return;
        clearTimeout(patience);
        estimating = undefined;
        listener.failed(failureOf(error), 'bands');
      },
    );
  }

  return {
    request: (build) => {
      if (ended) return;
      if (inFlight) waiting = build;
      else predict(build);
    },
    stress: (build, fret) => started().stress(build, fret),
    end: () => {
      ended = true;
      clearTimeout(patience);
      clearTimeout(rest);
      worker?.end();
      worker = undefined;
    },
  };
}
