import { beforeAll, beforeEach, expect, test } from 'vitest';
import { seatingSequence } from '../../src/fretwork/plan/seating-order.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import type { Prediction } from '../../src/mechanics/prediction-types.ts';
import { createDrawnLine } from '../../src/state/drawn-line.ts';
import { createFretDrop, DROP_MM, DROP_MS, type DropClock } from '../../src/state/fret-drop.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import type { RailPosition } from '../../src/verdict/rail.ts';
import { createBackbowStore, type BackbowStore } from '../../src/state/store.ts';

let store: BackbowStore;
let prediction: Prediction;
let nowMs: number;
let still: boolean;
let frames: Map<number, () => void>;
let lastFrame: number;
const state = () => store.getState();
const clock: DropClock = {
  now: () => nowMs,
  nextFrame: (draw) => {
    frames.set((lastFrame += 1), draw);
    return lastFrame;
  },
  cancelFrame: (id) => void frames.delete(id),
  isStill: () => still,
};

/** Time goes on, and what waited for a frame is drawn. */
function after(ms: number): void {
  nowMs += ms;
  const due = [...frames.values()];
  frames.clear();
  for (const draw of due) draw();
}

const fretsIn = (count: number): RailPosition => ({ phase: 'frets', fretsIn: count });

beforeAll(() => {
  prediction = createPredictor().predict(createBackbowStore(STANDARD_PREFERENCES).getState().build);
});

beforeEach(() => {
  store = createBackbowStore(STANDARD_PREFERENCES);
  state().setSolution(state().build, prediction);
  state().setRail(fretsIn(5));
  nowMs = 1000;
  still = false;
  frames = new Map();
  lastFrame = 0;
});

function opened() {
  const source = createFretDrop(store, clock);
  let told = 0;
  const stop = source.subscribe(() => {
    told += 1;
  });
  return { source, stop, told: () => told };
}

const copied = (line: { readonly reliefMm: ArrayLike<number> }) => Array.from(line.reliefMm);

test('the fret that goes in falls; the bow is that of the state before, and of the state after once it is seated', () => {
  const { source, told } = opened();
  const before = copied(source.read());
  const fret = seatingSequence(state().build)[5];
  state().setRail(fretsIn(6));
  expect(source.read().liftMm![fret - 1]).toBe(DROP_MM);
  expect(copied(source.read())).toEqual(before);
  const heights: number[] = [];
  for (let step = 0; step < 4; step += 1) {
    after(DROP_MS / 5);
    heights.push(source.read().liftMm![fret - 1]);
    expect(copied(source.read())).toEqual(before);
  }
  expect(heights).toEqual(heights.toSorted((a, b) => b - a));
  expect(heights.at(-1)).toBeGreaterThan(0);
  expect(heights.at(-1)).toBeLessThan(DROP_MM);
  const calls = told();
  after(DROP_MS / 5);
  expect(told()).toBeGreaterThan(calls);
  expect(source.read().liftMm![fret - 1]).toBe(0);
  expect(copied(source.read())).toEqual(copied(createDrawnLine(store).read()));
  expect(copied(source.read())).not.toEqual(before);
  expect(frames.size).toBe(0);
});

test('the last fret and the first fall as well', () => {
  const { source } = opened();
  const order = seatingSequence(state().build);
  state().setRail({ phase: 'bare' });
  expect(Array.from(source.read().liftMm!)).toEqual(order.map(() => Infinity));
  state().setRail(fretsIn(1));
  expect(source.read().liftMm![order[0] - 1]).toBe(DROP_MM);
  state().setRail(fretsIn(order.length - 1));
  state().setRail({ phase: 'frets', fretsIn: 'all' });
  expect(source.read().liftMm![order.at(-1)! - 1]).toBe(DROP_MM);
  after(DROP_MS);
  expect(source.read().liftMm).toBeUndefined();
});

test('nothing falls when the page is asked to keep still, when frets come out, or when more than one goes in', () => {
  const { source } = opened();
  for (const [stillness, rail] of [
    [true, fretsIn(6)],
    [false, fretsIn(5)],
    [false, fretsIn(12)],
    [false, { phase: 'strung' }],
    [false, fretsIn(3)],
  ] as const) {
    still = stillness;
    state().setRail(rail);
    expect(frames.size).toBe(0);
    expect(copied(source.read())).toEqual(copied(createDrawnLine(store).read()));
  }
});

test('a fret that still falls is seated when the next one comes', () => {
  const { source } = opened();
  const order = seatingSequence(state().build);
  state().setRail(fretsIn(6));
  after(DROP_MS / 3);
  state().setRail(fretsIn(7));
  expect(source.read().liftMm![order[5] - 1]).toBe(0);
  expect(source.read().liftMm![order[6] - 1]).toBe(DROP_MM);
  expect(frames.size).toBe(1);
});

test('a new solution seats it at once, and so does looking away', () => {
  const { source, stop } = opened();
  state().setRail(fretsIn(6));
  state().setSolution({ ...state().build }, prediction);
  expect(copied(source.read())).toEqual(copied(createDrawnLine(store).read()));
  expect(frames.size).toBe(0);
  state().setRail(fretsIn(7));
  stop();
  expect(frames.size).toBe(0);
  expect(copied(source.read())).toEqual(copied(createDrawnLine(store).read()));
});
