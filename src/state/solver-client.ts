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

/**
 * The worker in use: it is started when something is first asked of it, and ended when it breaks down or falls silent.
 * @param lost told after that
 */
function watchWorker(start: () => SolverWorker, patienceMs: number, lost: () => void) {
  let worker: SolverWorker | undefined;
  let patience: ReturnType<typeof setTimeout> | undefined;

  function end(): void {
    clearTimeout(patience);
    worker?.end();
    worker = undefined;
  }

  function lose(gone: SolverWorker): void {
    if (gone !== worker) return;
    end();
    lost();
  }

  function started(): SolverWorker {
    if (worker) return worker;
    const fresh = start();
    worker = fresh;
    fresh.onCrash(() => lose(fresh));
    return fresh;
  }

  return {
    started,
    /** The worker, which now has to answer in time. */
    asked(): SolverWorker {
      const current = started();
      clearTimeout(patience);
      patience = setTimeout(() => lose(current), patienceMs);
      return current;
    },
    answered: () => clearTimeout(patience),
    isInUse: (one: SolverWorker) => one === worker,
    end,
  };
}

/**
 * The bands of one build at a time, computed once nothing newer has come for a moment.
 * @param answered told of every answer
 */
function bandsAfterRest(
  watched: ReturnType<typeof watchWorker>,
  listener: SolverListener,
  restMs: number,
  answered: () => void,
) {
  /** What is awaited or being computed. The same build may be asked for again, with other readings behind it. */
  let awaited: { readonly build: Build } | undefined;
  let rest: ReturnType<typeof setTimeout> | undefined;

  function estimate(asked: { readonly build: Build }): void {
    const { build } = asked;
    const current = watched.asked();
    const isCurrent = () => watched.isInUse(current) && awaited === asked;
    const settle = () => {
      watched.answered();
      awaited = undefined;
    };
    current.estimate(build).then(
      (uncertainty) => {
        if (!isCurrent()) return;
        settle();
        answered();
        if (uncertainty) listener.estimated(build, uncertainty);
      },
      (error: unknown) => {
        if (!isCurrent()) return;
        settle();
        listener.failed(failureOf(error), 'bands');
      },
    );
  }

  return {
    soon(build: Build): void {
      const asked = { build };
      awaited = asked;
      rest = setTimeout(() => estimate(asked), restMs);
    },
    /** @returns the build that they were wanted for */
    giveUp(): Build | undefined {
      clearTimeout(rest);
      const build = awaited?.build;
      awaited = undefined;
      return build;
    },
  };
}

export function createSolver(
  start: () => SolverWorker,
  listener: SolverListener,
  { patienceMs, restMs }: SolverTimes = TIMES,
): Solver {
  let losses = 0;
  const watched = watchWorker(start, patienceMs, goOn);
  const bands = bandsAfterRest(watched, listener, restMs, () => {
    losses = 0;
  });
  let inFlight: Build | undefined;
  let waiting: Build | undefined;
  let ended = false;

  /** The worker was lost: another one takes over what is asked for, unless too many were lost. */
  function goOn(): void {
    const what = waiting || inFlight ? 'prediction' : 'bands';
    const awaited = bands.giveUp();
    const build = waiting ?? inFlight ?? awaited;
    inFlight = waiting = undefined;
    losses += 1;
    if (losses > MAX_LOSSES) {
      losses = 0;
      listener.failed({ code: 'stopped-repeatedly' }, what);
      return;
    }
    listener.restarted();
    if (build) predict(build);
  }

  function predict(build: Build): void {
    const current = watched.asked();
    bands.giveUp();
    inFlight = build;
    listener.working();
    current.predict(build).then(
      (prediction) => {
        if (!watched.isInUse(current)) return;
        const next = settle();
        if (!next) bands.soon(build);
        listener.solved(build, prediction);
      },
      (error: unknown) => {
        if (!watched.isInUse(current)) return;
        if (!settle()) listener.failed(failureOf(error), 'prediction');
      },
    );
  }

  /** @returns whether another build was waiting and has been sent */
  function settle(): boolean {
    watched.answered();
    inFlight = undefined;
    const next = waiting;
    waiting = undefined;
    if (next) predict(next);
    return next !== undefined;
  }

  return {
    request: (build) => {
      if (ended) return;
      if (inFlight) waiting = build;
      else predict(build);
    },
    stress: (build, fret) => watched.started().stress(build, fret),
    end: () => {
      ended = true;
      bands.giveUp();
      watched.end();
    },
  };
}
