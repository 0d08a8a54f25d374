/** Joins the store and the worker: every new build of the store is computed, the answer goes back into the store. */
import { releaseProxy, wrap } from 'comlink';
import type { Build } from '../build/build.ts';
import { biteLogSpreadOf } from './bench-log/adopted.ts';
import type { BackbowState, BackbowStore } from './store.ts';
import { followStress } from './follow-stress.ts';
import { createSolver, type Solver, type SolverWorker } from './solver-client.ts';
import type { SolverApi } from './solver.worker.ts';
import { SOLVER_WORDS } from './words.ts';

/** @param biteLogSpread of a build: the bench log's where it holds, else undefined */
function startWorker(biteLogSpread: (build: Build) => number | undefined): SolverWorker {
  const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'solver' });
  const remote = wrap<SolverApi>(worker);
  return {
    predict: (build) => remote.predict(build),
    estimate: (build) => remote.estimate(build, { biteLogSpread: biteLogSpread(build) }),
    stress: (build, fret) => remote.stress(build, fret),
    onCrash: (crashed) => {
      worker.addEventListener('error', crashed);
      worker.addEventListener('messageerror', crashed);
    },
    end: () => {
      remote[releaseProxy]();
      worker.terminate();
    },
  };
}

/** Has the bench log changed how sure the bite of this build is? */
function hasOtherSpread(state: BackbowState, before: BackbowState): boolean {
  const { adoptedBites, build } = state;
  return (
    adoptedBites !== before.adoptedBites &&
    biteLogSpreadOf(adoptedBites, build) !== biteLogSpreadOf(before.adoptedBites, build)
  );
}

/** @returns a function that ends the connection and the worker */
export function connectSolver(
  store: BackbowStore,
  start: () => SolverWorker = () => startWorker((build) => biteLogSpreadOf(store.getState().adoptedBites, build)),
): () => void {
  const { setSolution, setBands, setSolverStatus, notify } = store.getState();
  const solver: Solver = createSolver(start, {
    working: () => setSolverStatus('working'),
    solved: (build, prediction) => {
      setSolution(build, prediction);
      if (store.getState().build === build) setSolverStatus('idle');
    },
    estimated: setBands,
    restarted: () => notify('warning', SOLVER_WORDS.restarted),
    failed: (reason) => {
      setSolverStatus('failed');
      notify('error', SOLVER_WORDS.failed(reason));
    },
  });
  solver.request(store.getState().build);
  const stopStress = followStress(store, solver.stress);
  const stop = store.subscribe((state, before) => {
    if (state.build !== before.build || hasOtherSpread(state, before)) solver.request(state.build);
  });
  return () => {
    stop();
    stopStress();
    solver.end();
  };
}
