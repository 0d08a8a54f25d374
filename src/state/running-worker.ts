/** Starts a worker that computes. */
import { releaseProxy, wrap, type Remote } from 'comlink';
import type { SolverApi } from './solver.worker.ts';

export interface RunningWorker {
  readonly api: Remote<SolverApi>;
  /** Calls back when the worker has broken down. */
  readonly onCrash: (crashed: () => void) => void;
  readonly end: () => void;
}

/** @param name what tools for developers call it */
export function startSolverWorker(name: string): RunningWorker {
  const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name });
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
