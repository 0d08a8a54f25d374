/** Joins the store and the worker: every new build of the store is computed, the answer goes back into the store. */
import type { Build } from '../neck/build.ts';
import { narrowingOptions, sameNarrowing, type BandNarrowing } from '../mechanics/bench-log/standing.ts';
import { changeOf } from './build-change.ts';
import type { BackbowState, BackbowStore } from './store.ts';
import { followStress } from './follow-stress.ts';
import { startSolverWorker } from './running-worker.ts';
import { createSolver, type Solver, type SolverWorker } from './solver-client.ts';
import { failureText } from '../speech/failures.ts';
import { SOLVER_WORDS } from '../speech/en/workshop/solver.ts';

/** @param narrowing what narrows the bands of a build */
function startWorker(narrowing: (build: Build) => BandNarrowing): SolverWorker {
  const { api, onCrash, end } = startSolverWorker('solver');
  /** What the worker has on its bench: a worker that is lost takes it along. */
  let bench: Build | undefined;
  return {
    predict: (build) => {
      const change = changeOf(build, bench);
      bench = build;
      return api.predictBench(change);
    },
    estimate: (build) => api.estimate(build, narrowing(build)),
    stress: (build, fret) => api.stress(build, fret),
    onCrash,
    end,
  };
}

/** Has what this device measured changed how sure this build is? */
function isOtherwiseNarrowed(state: BackbowState, before: BackbowState): boolean {
  const { adoptedBites, benchLog, gripsHere, build } = state;
  return (
    (adoptedBites !== before.adoptedBites || benchLog !== before.benchLog || gripsHere !== before.gripsHere) &&
    !sameNarrowing(narrowingOptions(state, build), narrowingOptions(before, build))
  );
}

/** @returns a function that ends the connection and the worker */
export function connectSolver(
  store: BackbowStore,
  start: () => SolverWorker = () => startWorker((build) => narrowingOptions(store.getState(), build)),
): () => void {
  const { setSolution, setBands, setSolverStatus, setNotComputed, notify } = store.getState();
  const solver: Solver = createSolver(start, {
    working: () => setSolverStatus('working'),
    solved: (build, prediction) => {
      setSolution(build, prediction);
      if (store.getState().build === build) setSolverStatus('idle');
    },
    estimated: setBands,
    restarted: () => notify('warning', SOLVER_WORDS.restarted),
    failed: (failure, what) => {
      setNotComputed({ what, failure });
      const reason = failureText(failure, store.getState().unitSystem);
      notify('error', what === 'prediction' ? SOLVER_WORDS.failed(reason) : SOLVER_WORDS.bandsFailed(reason));
    },
  });
  const lookUp = (build: Build) => void store.getState().lookUpGrips([build]);
  solver.request(store.getState().build);
  lookUp(store.getState().build);
  const stopStress = followStress(store, solver.stress);
  const stop = store.subscribe((state, before) => {
    if (state.build.gripReference !== before.build.gripReference) lookUp(state.build);
    if (state.build !== before.build || isOtherwiseNarrowed(state, before)) solver.request(state.build);
  });
  return () => {
    stop();
    stopStress();
    solver.end();
  };
}
