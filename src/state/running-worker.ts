/** Starts a worker that computes. */
import { releaseProxy, wrap, type Remote } from 'comlink';
import { newSolverWorker } from './new-worker.ts';
import type { SolverApi } from './solver.worker.ts';

export interface RunningWorker {
  readonly api: Remote<SolverApi>;
  /** Calls back when the worker has broken down. */
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

/** @param name what tools for developers call it; a worker of that name that was started early is taken */
export function startSolverWorker(name: string): RunningWorker {
  const worker = newSolverWorker(name);
  const api = wrap<SolverApi>(worker);
  return {
    api,
    onCrash: (crashed) => {
      worker.addEventListener('error', crashed);
      worker.addEventListener('messageerror', crashed);
    },
    end: () => {
      api[releaseProxy]();
      worker.terminate();
    },
  };
}
