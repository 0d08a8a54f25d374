/**
 * Starts a worker that computes, and has it speak the language of the page: what it refuses is read by people. The
 * sentences go to it before anything is asked, and messages keep their order; in English there is nothing to send.
 */
import { releaseProxy, wrap, type Remote } from 'comlink';
import { SENTENCES, spokenLanguage, translation } from '../speech/language.ts';
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
  const sentences = translation<Readonly<Record<string, string>>>(SENTENCES);
  if (sentences) void api.speak(spokenLanguage(), sentences);
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
