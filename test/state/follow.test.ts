/** What follows a held control: at once where nothing is held, and only after a rest under a thumb. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createFollower } from '../../src/state/follow.ts';
import { createBackbowStore } from '../../src/state/store.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function follow() {
  const store = createBackbowStore();
  const follower = createFollower(store);
  let told = 0;
  follower.subscribe(() => (told += 1));
  return { store, follower, told: () => told, kerf: () => follower.getState().build.kerfMm };
}

test('without a thumb every change is followed at once', () => {
  const { store, kerf, told } = follow();
  store.getState().change({ kerfMm: 0.6 }, 'kerf');
  expect([kerf(), told()]).toEqual([0.6, 1]);
});

test('under a thumb only what rests is followed, and all of it when it is let go', () => {
  const { store, kerf, told } = follow();
  const before = kerf();
  store.getState().beginGesture('kerf');
  vi.runAllTimers();
  const begun = told();
  for (const kerfMm of [0.6, 0.61, 0.62]) {
    store.getState().change({ kerfMm }, 'kerf');
    vi.advanceTimersByTime(200);
  }
  expect([kerf(), told()]).toEqual([before, begun]);
  vi.advanceTimersByTime(100);
  expect([kerf(), told()]).toEqual([0.62, begun + 1]);
  store.getState().change({ kerfMm: 0.63 }, 'kerf');
  store.getState().endGesture();
  expect(kerf()).toBe(0.63);
});

test('what comes later of a held thumb, such as its prediction, is followed too', () => {
  const { store, follower } = follow();
  store.getState().beginGesture('kerf');
  vi.runAllTimers();
  store.getState().change({ kerfMm: 0.6 }, 'kerf');
  vi.advanceTimersByTime(250);
  store.getState().setSolverStatus('idle');
  vi.runAllTimers();
  expect(follower.getState()).toBe(store.getState());
});
