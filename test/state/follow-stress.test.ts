import { beforeAll, beforeEach, expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import type { Prediction } from '../../src/mechanics/prediction-types.ts';
import type { StressField } from '../../src/mechanics/elements/stress.ts';
import { followStress } from '../../src/state/follow-stress.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { createBackbowStore, type BackbowStore } from '../../src/state/store.ts';
import { currentStress } from '../../src/state/stress-view.ts';

const predictor = createPredictor();
const { build } = createBackbowStore(STANDARD_PREFERENCES).getState();
let prediction: Prediction;
let store: BackbowStore;
const state = () => store.getState();

interface Question {
  readonly build: Build;
  readonly fret: number;
  readonly answer: (field?: StressField) => Promise<void>;
  readonly fail: (reason: string) => Promise<void>;
}
let questions: Question[];

/** Answers come when the test gives them. */
function ask(asked: Build, fret: number): Promise<StressField> {
  return new Promise((resolve, reject) => {
    questions.push({
      build: asked,
      fret,
      answer: async (field = predictor.stress(asked, fret)) => {
        resolve(field);
        await Promise.resolve();
      },
      fail: async (reason) => {
        reject(new Error(reason));
        await Promise.resolve();
      },
    });
  });
}

beforeAll(() => {
  prediction = predictor.predict(build);
});

beforeEach(() => {
  questions = [];
  store = createBackbowStore(STANDARD_PREFERENCES);
  state().setSolution(state().build, prediction);
});

test('nothing is asked before the cut across a slot is shown with its stress', () => {
  followStress(store, ask);
  state().setShowStress(true);
  state().setView('fret');
  state().selectFret(9);
  expect(questions).toEqual([]);
  state().setView('slot');
  expect(questions.map(({ fret }) => fret)).toEqual([9]);
});

test('what reaches the picture is what the library says of that slot, to the last digit', async () => {
  followStress(store, ask);
  state().setView('slot');
  state().setShowStress(true);
  expect(currentStress(state())).toBeNull();
  await questions[0].answer();
  const library = createPredictor().stress(state().build, state().selectedFret);
  expect(library.alongMPa.some((value) => value < -1)).toBe(true);
  expect(currentStress(state())).toEqual(library);
  // The wedge presses the walls together: there is compression, and tension below the slot.
  expect(Math.min(...library.alongMPa)).toBeLessThan(0);
  expect(Math.max(...library.alongMPa)).toBeGreaterThan(0);
});

test('the latest wish wins: of those that come meanwhile only the newest is asked', async () => {
  followStress(store, ask);
  state().setView('slot');
  state().setShowStress(true);
  for (const fret of [8, 9, 10]) state().selectFret(fret);
  expect(questions).toHaveLength(1);
  await questions[0].answer();
  expect(currentStress(state())).toBeNull();
  expect(questions.map(({ fret }) => fret)).toEqual([7, 10]);
  await questions[1].answer();
  expect(currentStress(state())?.fret).toBe(10);
  state().selectFret(11);
  expect(currentStress(state())).toBeNull();
});

test('a new solution is asked about at once, and an answer of the one before is dropped', async () => {
  followStress(store, ask);
  state().setView('slot');
  state().setShowStress(true);
  state().setSolution({ ...state().build, name: 'Another' }, prediction);
  expect(questions.map((question) => question.build.name)).toEqual([build.name, 'Another']);
  await questions[0].answer();
  expect(state().stress).toBeNull();
  await questions[1].answer();
  expect(currentStress(state())).not.toBeNull();
});

test('a glue fit has no wedge and so no stress to show', () => {
  followStress(store, ask);
  state().setSolution({ ...state().build, method: 'glue' }, prediction);
  state().setView('slot');
  state().setShowStress(true);
  expect(questions).toEqual([]);
});

test('a failure is told', async () => {
  followStress(store, ask);
  state().setView('slot');
  state().setShowStress(true);
  await questions[0].fail('no such slot');
  expect(state().notices.at(-1)?.text).toMatch(/no such slot/);
});

test('nothing is asked after it has stopped', () => {
  const stop = followStress(store, ask);
  stop();
  state().setView('slot');
  state().setShowStress(true);
  expect(questions).toEqual([]);
});
