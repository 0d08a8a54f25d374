import fc from 'fast-check';
import { expect, test } from 'vitest';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { createBackbowStore } from '../../src/state/store.ts';
import { railStops, stopIndex } from '../../src/verdict/rail.ts';

test('seed 2: stepping stays on the rail and moves by whole stops', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -40, max: 40 }), { maxLength: 30 }), (steps) => {
      const store = createBackbowStore(STANDARD_PREFERENCES);
      const stops = railStops(store.getState().build);
      let expected = stopIndex(stops, store.getState().rail);
      for (const step of steps) {
        const before = expected;
        expected = Math.max(0, Math.min(stops.length - 1, expected + step));
        expect(store.getState().stepRail(step)).toBe(expected !== before);
        expect(stopIndex(stops, store.getState().rail)).toBe(expected);
      }
    }),
    { seed: 2, numRuns: 50 },
  );
});

test('playing from the end begins again at the bare board', () => {
  const store = createBackbowStore(STANDARD_PREFERENCES);
  store.getState().setRail({ phase: 'rod' });
  store.getState().setPlaying(true);
  expect(store.getState().rail).toEqual({ phase: 'bare' });
  store.getState().setPlaying(false);
  store.getState().setRail({ phase: 'strung' });
  store.getState().setPlaying(true);
  expect(store.getState().rail).toEqual({ phase: 'strung' });
});
