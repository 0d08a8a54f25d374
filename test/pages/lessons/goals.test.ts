/** @vitest-environment happy-dom */
/** Every task is open when its step begins, can be done by what it allows, and is not done by anything else. */
import { describe, expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { act } from '../../../src/pages/lessons/acts.ts';
import { goalNow, type GoalNow } from '../../../src/pages/lessons/goals.ts';
import { LESSONS } from '../../../src/pages/lessons/lessons/index.ts';
import { textOf } from '../../../src/speech/en/pages/lesson-texts.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore } from '../../../src/state/store.ts';

const predictor = createPredictor();

/** One way in which each task is done. */
const DONE: Readonly<Record<string, Partial<Build>>> = {
  'one-and-all yours': { kerfMm: 0.68 },
  'three-ways choose': { method: 'both', kerfMm: 0.65 },
  'strings yours': { kerfMm: 0.53 },
  'three-blades yours': { kerfMm: 0.58 },
  'straightedge yours': { targetReliefMm: 0.2 },
  'why-relief yours': { targetReliefMm: 0.22, stringHeightFret12Mm: 2.95 },
  'too-stiff within-reach': { kerfMm: 0.53 },
  'too-stiff rescue': { kerfMm: 0.56 },
  'chamfer yours': { chamferMm: 0.3 },
  'nipping yours': { linesSawnThrough: 2, nipClearanceMm: 0.3, oversizeMm: 0.5 },
};

const TASKS = LESSONS.flatMap(({ id, steps }) =>
  steps.flatMap((step, index) => (step.goal ? [{ name: `${id} ${step.id}`, id, index, step, goal: step.goal }] : [])),
);

function atStep(id: string, index: number): Build {
  const store = createBackbowStore(STANDARD_PREFERENCES);
  store.getState().beginLesson(id);
  for (const { acts = [], reveal = [] } of LESSONS.find((lesson) => lesson.id === id)!.steps.slice(0, index + 1)) {
    act(store, acts, true);
    act(store, reveal, true);
  }
  return store.getState().lesson!.placed!;
}

function held({ id, index, goal }: (typeof TASKS)[number], change: Partial<Build> = {}): GoalNow {
  const placed = atStep(id, index);
  const build = { ...placed, ...change };
  return goalNow(goal, { build, prediction: predictor.predict(build), remembered: {} }, placed);
}

test('every lesson sets one, and each of them has a way here', () => {
  expect(new Set(TASKS.map(({ id }) => id)).size).toBe(LESSONS.length);
  expect(TASKS.map(({ name }) => name).toSorted()).toEqual(Object.keys(DONE).toSorted());
});

describe.each(TASKS.map((task) => [task.name, task] as const))('%s', (name, task) => {
  test('has words for the task and for everything that has to hold', () => {
    const text = textOf(task.id).steps[task.step.id];
    expect(text.task).toBeTruthy();
    expect(Object.keys(text.wanted ?? {}).toSorted()).toEqual(task.goal.wanted.map((wanted) => wanted.id).toSorted());
  });

  test('is open at first', () => {
    const { isAchieved, others } = held(task);
    expect([isAchieved, others]).toEqual([false, []]);
  });

  test('is done by what it allows, and not when something else was changed too', () => {
    expect(Object.keys(DONE[name]).filter((key) => !(task.goal.by as readonly string[]).includes(key))).toEqual([]);
    expect(held(task, DONE[name]).wanted.filter(({ isMet }) => !isMet)).toEqual([]);
    expect(held(task, DONE[name]).isAchieved).toBe(true);
    const beside = held(task, { ...DONE[name], settleDays: 89 });
    expect([beside.isAchieved, beside.others]).toEqual([false, ['settleDays']]);
  });
});

test('a name is no change of the neck', () => {
  expect(held(TASKS[0], { ...DONE[TASKS[0].name], name: 'Mine', notes: 'x' }).isAchieved).toBe(true);
});
