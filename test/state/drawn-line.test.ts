import { beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHODS, type Prediction } from '../../src/mechanics/prediction-types.ts';
import { createDrawnLine } from '../../src/state/drawn-line.ts';
import { linesOf } from '../../src/state/lines.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { railStops } from '../../src/verdict/rail.ts';
import { createBackbowStore, type BackbowStore } from '../../src/state/store.ts';
import { expectNear, expectNothing } from '../expect-near.ts';

let store: BackbowStore;
let prediction: Prediction;
const state = () => store.getState();

beforeAll(() => {
  prediction = createPredictor().predict(createBackbowStore(STANDARD_PREFERENCES).getState().build);
});

beforeEach(() => {
  store = createBackbowStore(STANDARD_PREFERENCES);
});

test('before the first prediction the neck is drawn straight', () => {
  expect(Array.from(createDrawnLine(store).read().reliefMm)).toEqual([0, 0]);
});

test('the line follows rail and factor, tells its listeners, and is the line of the chosen method', () => {
  const source = createDrawnLine(store);
  const told = vi.fn();
  const stop = source.subscribe(told);
  state().setSolution(state().build, prediction);
  expect(told).toHaveBeenCalledTimes(1);
  for (const stopOnRail of railStops(state().build)) {
    state().setRail(stopOnRail);
    const { reliefMm, xMm } = source.read();
    expect(xMm).toBe(prediction.stationXMm);
    expect(Array.from(reliefMm)).toEqual(Array.from(linesOf(state())![state().build.method].reliefMm));
  }
  const calls = told.mock.calls.length;
  state().setBowFactor(80);
  expect(source.read().factor).toBe(80);
  state().setTrueScale(true);
  expect(source.read().factor).toBe(1);
  expect(told).toHaveBeenCalledTimes(calls + 2);
  state().setUnitSystem('inch');
  expect(told).toHaveBeenCalledTimes(calls + 2);
  stop();
  state().setBowFactor(20);
  expect(told).toHaveBeenCalledTimes(calls + 2);
  expect(source.read().factor).toBe(20);
});

test('scrubbing writes into one buffer', () => {
  const source = createDrawnLine(store);
  state().setSolution(state().build, prediction);
  const { reliefMm } = source.read();
  state().stepRail(-4);
  expect(source.read().reliefMm).toBe(reliefMm);
});

test('frets that are not in yet are not drawn', () => {
  const source = createDrawnLine(store);
  state().setSolution(state().build, prediction);
  expect(source.read().liftMm).toBeUndefined();
  state().setRail({ phase: 'frets', fretsIn: 2 });
  const lift = Array.from(source.read().liftMm!);
  expect(lift.flatMap((mm, index) => (mm === 0 ? [index + 1] : []))).toEqual([1, 5]);
  expect(lift.filter((mm) => mm === Infinity)).toHaveLength(20);
});

test('the stops of the rail are the library’s own states', () => {
  state().setSolution(state().build, prediction);
  const at = (position: Parameters<ReturnType<typeof state>['setRail']>[0]) => {
    state().setRail(position);
    return linesOf(state())!;
  };
  const why = 'the same sums in another order, double precision';
  for (const method of METHODS) {
    const said = prediction.methods[method];
    // A glue fit does not bow at all before it is strung: compared against the size of a real bow.
    const size = Math.abs(said.strung.extremeMm);
    const fretted = at({ phase: 'frets', fretsIn: 'all' })[method].extremeMm;
    expectNothing(fretted - said.fretted.extremeMm, size, 1e-9, why);
    expectNear(at({ phase: 'strung' })[method].extremeMm, said.strung.extremeMm, 1e-9, why);
    const { settleDays } = state().build;
    expectNear(at({ phase: 'weeks', days: settleDays })[method].extremeMm, said.settled.extremeMm, 1e-9, why);
    expectNear(at({ phase: 'rod' })[method].extremeMm, said.rodSet.extremeMm, 1e-9, why);
  }
});
