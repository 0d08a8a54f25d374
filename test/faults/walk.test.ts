/** @vitest-environment happy-dom */
/** Random walks over every control: six thousand steps in the long draw, the state looked at after each, computed after each 25th. */
import { expect, test } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { createBackbowStore } from '../../src/state/store.ts';
import { dice, holdPredictable, holdSound, holdUndoable, nextStep } from './walk.ts';
import { draw } from '../draw.ts';

const STEPS = draw(500, 50);
const SEEDS = Array.from({ length: 12 }, (_, index) => 8201 + index);
const predictor = createPredictor();

test.each(SEEDS)(`${STEPS} steps (seed %i)`, (seed) => {
  const store = createBackbowStore(STANDARD_PREFERENCES);
  const at = dice(seed);
  const trail: string[] = [];
  let accepted = 0;
  for (let step = 1; step <= STEPS; step += 1) {
    const before = store.getState().build;
    const [name, run] = nextStep(store, at);
    trail.push(name);
    try {
      run();
      holdSound(store);
      if (step % 10 === 0) holdUndoable(store);
      if (step % 25 === 0) holdPredictable(store, predictor);
    } catch (cause) {
      throw new Error(`seed ${seed}, step ${step}, after ${trail.slice(-3).join(' → ')}`, { cause });
    }
    if (store.getState().build !== before) accepted += 1;
  }
  // Most walks would stand still if nothing were accepted.
  expect(accepted).toBeGreaterThan(STEPS / 5);
});

test(`the walks together are more than ${draw(5000, 500)} steps, each with dice of its own`, () => {
  expect(STEPS * SEEDS.length).toBeGreaterThanOrEqual(draw(5000, 500));
  expect(new Set(SEEDS.map((seed) => dice(seed).share())).size).toBe(SEEDS.length);
});
