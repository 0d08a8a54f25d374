/** When the calculation refuses or breaks: no number of the neck before survives, and the reason is kept. */
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { Refused } from '../../src/mechanics/refusal.ts';
import { createDrawnLine } from '../../src/state/drawn-line.ts';
import { linesOf } from '../../src/state/lines.ts';
import { currentBands } from '../../src/state/solution-slice.ts';
import { connectSolver } from '../../src/state/solver.ts';
import { createBackbowStore, type BackbowStore } from '../../src/state/store.ts';
import { currentStress } from '../../src/state/stress-view.ts';
import type { Uncertainty } from '../../src/mechanics/uncertainty/types.ts';

const predictor = createPredictor();
const REFUSAL = { code: 'seating-unsettled', leftN: 3 } as const;
const refuse = () => Promise.reject(new Refused(REFUSAL));

let store: BackbowStore;
let refusesPrediction: (build: Build) => boolean;
let refusesBands: (build: Build) => boolean;

/** Lets everything that is due be told. */
const told = () => vi.advanceTimersByTimeAsync(1000);

beforeEach(() => {
  vi.useFakeTimers();
  store = createBackbowStore();
  refusesPrediction = refusesBands = () => false;
  const disconnect = connectSolver(store, () => ({
    predict: (build) => (refusesPrediction(build) ? refuse() : Promise.resolve(predictor.predict(build))),
    estimate: (build) =>
      refusesBands(build) ? refuse() : Promise.resolve({ kindOfFret: [] } as unknown as Uncertainty),
    stress: (build, fret) => Promise.resolve(predictor.stress(build, fret)),
    onCrash: () => undefined,
    end: () => undefined,
  }));
  return () => {
    disconnect();
    vi.useRealTimers();
  };
});

test('a neck that is computed has nothing missing', async () => {
  await told();
  const { solution, notComputed, solverStatus } = store.getState();
  expect(solution?.build).toBe(store.getState().build);
  expect(notComputed).toBeNull();
  expect(solverStatus).toBe('idle');
});

describe('a neck that is refused', () => {
  beforeEach(async () => {
    await told();
    store.getState().setStress({ build: store.getState().build, fret: 1, field: predictor.stress(defaultBuild(), 1) });
    refusesPrediction = (build) => build.kerfMm === 0.6;
    store.getState().change({ kerfMm: 0.6 }, 'kerf');
    await told();
  });

  test('leaves no number, line, band or stress of the one before, and says why', () => {
    const state = store.getState();
    expect(state.solution).toBeNull();
    expect(state.bands).toBeNull();
    expect(state.stress).toBeNull();
    expect(linesOf(state)).toBeNull();
    expect(currentBands(state)).toBeNull();
    expect(currentStress(state)).toBeNull();
    expect(Array.from(createDrawnLine(store).read().reliefMm)).toEqual([0, 0]);
    expect(state.notComputed).toEqual({ what: 'prediction', failure: REFUSAL });
    expect(state.solverStatus).toBe('failed');
    expect(state.build.kerfMm).toBe(0.6);
  });

  test('is forgotten with the next that can be, which counts on', async () => {
    store.getState().change({ kerfMm: 0.61 }, 'kerf');
    expect(store.getState().notComputed).toBeNull();
    await told();
    const { solution, notComputed } = store.getState();
    expect(solution?.build.kerfMm).toBe(0.61);
    expect(solution?.version).toBe(2);
    expect(notComputed).toBeNull();
  });
});

test('where only the band is refused the numbers stay, without the band of the neck before', async () => {
  await told();
  expect(store.getState().bands).not.toBeNull();
  refusesBands = () => true;
  store.getState().change({ kerfMm: 0.6 }, 'kerf');
  await told();
  const { solution, bands, notComputed } = store.getState();
  expect(solution?.build.kerfMm).toBe(0.6);
  expect(bands).toBeNull();
  expect(notComputed).toEqual({ what: 'bands', failure: REFUSAL });
});
