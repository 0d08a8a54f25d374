/** @vitest-environment happy-dom */
/** Every lesson runs from end to end on the library itself, and what its texts say of the numbers is so. */
import { describe, expect, test } from 'vitest';
import { expectNear } from '../../expect-near.ts';
import { METHODS } from '../../../src/mechanics/prediction-types.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { act } from '../../../src/pages/lessons/acts.ts';
import { answerOf } from '../../../src/pages/lessons/ask-which.tsx';
import { FIGURES } from '../../../src/pages/lessons/figures/index.ts';
import { LESSONS } from '../../../src/pages/lessons/lessons/index.ts';
import { goalNow } from '../../../src/pages/lessons/goals.ts';
import { filled, measure, measureText, type Bench, type Measure } from '../../../src/pages/lessons/quantities.ts';
import { LESSON_TEXTS, textOf } from '../../../src/speech/en/pages/lesson-texts.ts';
import type { Lesson, Step } from '../../../src/pages/lessons/types.ts';
import type { StepText } from '../../../src/speech/lesson-text.ts';
import { railStops, stopIndex } from '../../../src/verdict/rail.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore } from '../../../src/state/store.ts';

const predictor = createPredictor();

interface Walked {
  readonly step: Step;
  readonly text: StepText;
  readonly bench: Bench;
}

/** Goes through a lesson as a learner does who shows every answer. */
function walk(lesson: Lesson): Walked[] {
  const store = createBackbowStore(STANDARD_PREFERENCES);
  store.getState().beginLesson(lesson.id);
  let remembered: Record<string, Measure> = {};
  return lesson.steps.map((step) => {
    act(store, step.acts ?? [], true);
    act(store, step.reveal ?? [], true);
    const { build } = store.getState();
    const bench: Bench = { build, prediction: predictor.predict(build), remembered };
    const kept = Object.entries(step.remember ?? {}).map(([name, quantity]) => [name, measure(quantity, bench)]);
    remembered = { ...remembered, ...(Object.fromEntries(kept) as Record<string, Measure>) };
    return { step, text: textOf(lesson.id).steps[step.id], bench };
  });
}

const walks = new Map(LESSONS.map((lesson) => [lesson.id, walk(lesson)]));

function fact(lesson: string, step: string, name: string): number {
  const { step: found, bench } = walks.get(lesson)!.find((walked) => walked.step.id === step)!;
  return measure(found.facts![name], bench).value;
}

const namesIn = (texts: readonly string[]): string[] =>
  texts.flatMap((text) => Array.from(text.matchAll(/\{(\w+)\}/g), ([, name]) => name));

test('there are at least the six lessons of the plan, and each has its text and no other', () => {
  expect(LESSONS.length).toBeGreaterThanOrEqual(6);
  expect(LESSONS.map(({ id }) => id).toSorted()).toEqual(Object.keys(LESSON_TEXTS).toSorted());
  expect(() => textOf('none')).toThrow(RangeError);
});

describe.each(LESSONS.map((lesson) => [lesson.id, lesson] as const))('%s', (id, lesson) => {
  const walked = walks.get(id)!;

  test('has a text for each step and a step for each text', () => {
    expect(Object.keys(textOf(id).steps).toSorted()).toEqual(lesson.steps.map((step) => step.id).toSorted());
    expect(new Set(lesson.steps.map((step) => step.id)).size).toBe(lesson.steps.length);
  });

  test('fills every name in its texts with a number, and keeps no number that is not used', () => {
    for (const { step, text, bench } of walked) {
      const named = new Set(namesIn([...text.says, ...(text.after ?? []), ...(text.done ?? [])]));
      expect([step.id, [...named].toSorted()]).toEqual([step.id, Object.keys(step.facts ?? {}).toSorted()]);
      for (const [name, quantity] of Object.entries(step.facts ?? {})) {
        for (const system of ['metric', 'inch'] as const) {
          const said = measureText(measure(quantity, bench), system);
          expect([step.id, name, said]).not.toEqual([step.id, name, '–']);
          expect(said).not.toMatch(/NaN|undefined|Infinity/);
        }
      }
    }
  });

  test('asks what it can answer: a question, an answer on the scale, a name for each option', () => {
    for (const { step, text, bench } of walked) {
      const { ask } = step;
      expect([step.id, text.question !== undefined, text.after !== undefined]).toEqual([
        step.id,
        ask !== undefined,
        ask !== undefined,
      ]);
      const asked = ask?.kind === 'value' ? measure(ask.of, bench).value : 0;
      const [min, max] = ask?.kind === 'value' ? [ask.min, ask.max] : [0, 0];
      expect(asked).toBeGreaterThanOrEqual(min);
      expect(asked).toBeLessThanOrEqual(max);
      const options = ask?.kind === 'which' ? ask.options.map((option) => option.id) : [];
      expect(Object.keys(text.options ?? {}).toSorted()).toEqual(options.toSorted());
    }
  });

  test('tells before an answer no number that is asked for', () => {
    for (const { step, text } of walked) {
      const { ask } = step;
      if (!ask) continue;
      const told = namesIn(text.says).map((name) => JSON.stringify(step.facts![name]));
      const asked =
        ask.kind === 'value'
          ? [ask.of]
          : ask.kind === 'line'
            ? [
                { q: 'relief', at: ask.at },
                { q: 'relief', at: ask.at, method: ask.method },
              ]
            : ask.options.map((option) => option.of).filter(({ q }) => q !== 'parameter');
      for (const quantity of asked) expect(told).not.toContain(JSON.stringify(quantity));
    }
  });

  test('asks for nothing that the picture has written on it', () => {
    const WRITTEN: Readonly<Record<string, readonly string[]>> = {
      slot: ['wedgeForce'],
      fret: ['nip', 'shelf'],
      end: ['nip', 'shelf'],
    };
    let view = 'neck';
    for (const { acts = [], ask, reveal = [] } of lesson.steps) {
      for (const one of acts) if (one.set === 'view') view = one.view;
      const asked = ask?.kind === 'value' ? [ask.of] : ask?.kind === 'which' ? ask.options.map(({ of }) => of) : [];
      for (const { q } of asked) expect(WRITTEN[view] ?? []).not.toContain(q);
      for (const one of reveal) if (one.set === 'view') view = one.view;
    }
  });

  test('shows only drawings that there are', () => {
    for (const { step } of walked) expect(step.figure === undefined || step.figure in FIGURES).toBe(true);
  });
});

describe('what the texts say of the numbers', () => {
  test('one fret is less than a sheet of paper, and all of them are several times as much', () => {
    expect(Math.abs(fact('one-and-all', 'one', 'bow'))).toBeLessThan(0.1);
    expect(fact('one-and-all', 'one', 'bow')).toBeLessThan(-0.01);
    expect(fact('one-and-all', 'all', 'times')).toBeGreaterThan(4);
  });

  test('fret 1 under the end of the straightedge bends nothing that shows', () => {
    const { bench } = walks.get('one-and-all')!.find(({ step }) => step.id === 'one')!;
    // 0.005 mm is half of what is printed.
    expect(Math.abs(measure({ q: 'relief', at: { phase: 'frets', fretsIn: 1 } }, bench).value)).toBeLessThan(0.005);
  });

  test('glued frets bend nothing, filled slots hardly give more, and the glued neck shows the most relief', () => {
    expect(Math.abs(fact('three-ways', 'glued', 'glue'))).toBeLessThan(0.005);
    expect(fact('three-ways', 'glued', 'press')).toBeLessThan(-0.1);
    expect(fact('three-ways', 'air', 'press')).toBeGreaterThan(20);
    expect(Math.abs(fact('three-ways', 'air', 'glue'))).toBeLessThan(5);
    const { step, bench } = walks.get('three-ways')!.find((walked) => walked.step.id === 'strung')!;
    expect(step.ask?.kind === 'which' && answerOf(step.ask, bench)).toBe('glue');
    const [press, glue, both] = METHODS.map((method) => fact('three-ways', 'strung', method));
    expect(both).toBeLessThan(press);
    expect(press).toBeLessThan(glue);
    expect(fact('three-ways', 'price', 'both')).toBeGreaterThan(fact('three-ways', 'price', 'press'));
  });

  test('the strings take the hump out and a little more, and the weeks go on forward', () => {
    expect(fact('strings', 'humped', 'bow')).toBeLessThan(-0.1);
    expect(fact('strings', 'strung', 'after')).toBeGreaterThan(0);
    expect(fact('strings', 'weeks', 'later')).toBeGreaterThan(fact('strings', 'weeks', 'now'));
  });

  test('the thick neck’s rod moves much less, cannot give what is wanted, and one-way it stays humped', () => {
    expect(fact('too-stiff', 'stiff', 'travel')).toBeLessThan(0.6 * fact('too-stiff', 'stiff', 'slim'));
    expect(fact('too-stiff', 'tight', 'kerf')).toBeLessThan(fact('too-stiff', 'tight', 'tang'));
    expect(fact('too-stiff', 'tight', 'settled')).toBeLessThan(-0.01);
    expect(fact('too-stiff', 'reach', 'least')).toBeLessThan(fact('too-stiff', 'reach', 'wanted'));
    expect(fact('too-stiff', 'one-way', 'least')).toBeLessThan(-0.005);
    expect(fact('too-stiff', 'one-way', 'most')).toBeLessThan(-0.005);
    // With the wider kerf the rod reaches what the player wants.
    expect(fact('too-stiff', 'ways-out', 'settled')).toBeGreaterThan(0);
    expect(fact('too-stiff', 'ways-out', 'least')).toBeGreaterThan(fact('too-stiff', 'reach', 'wanted'));
  });

  test('glue holds harder, and the chamfer has room', () => {
    expect(fact('chamfer', 'pull', 'both')).toBeGreaterThan(fact('chamfer', 'pull', 'press'));
    expect(fact('chamfer', 'width', 'room')).toBeGreaterThan(fact('chamfer', 'width', 'now'));
    // (crown − kerf)/2 by hand: (2.4 − 0.6)/2 = 0.9.
    expect(fact('chamfer', 'width', 'room')).toBe((2.4 - 0.6) / 2);
  });

  test('the nip is the whole line, the clearance and the oversize, a hair more along the arc', () => {
    const byHand = 1.5 + fact('nipping', 'nip', 'clearance') + fact('nipping', 'nip', 'oversize');
    const nip = fact('nipping', 'nip', 'nip');
    expect(nip).toBeGreaterThan(byHand);
    // Half a board of 27 mm on a radius above 254 mm: the slope at the edge lengthens the wire by less than 1 %.
    expect(nip).toBeLessThan(byHand * 1.01);
    expect(fact('nipping', 'all-sawn', 'nip')).toBe(0);
    expect(fact('nipping', 'none-sawn', 'shelf')).toBeGreaterThan(fact('nipping', 'none-sawn', 'oversize'));
  });
});

test('three blades: what the texts say of bow, hold and the months is so', () => {
  expect(fact('three-blades', 'thin', 'bow')).toBeLessThan(1.5 * fact('three-blades', 'wide', 'bow'));
  expect(fact('three-blades', 'wide', 'bow')).toBeLessThan(-0.02);
  expect(fact('three-blades', 'hold', 'hold')).toBeLessThan(0.6 * fact('three-blades', 'hold', 'thin'));
  const [thin, middle, wide] = ['thin', 'middle', 'wide'].map((name) => fact('three-blades', 'months', name));
  expect(thin).toBeLessThan(middle);
  expect(middle).toBeLessThan(wide);
  // The differences of the humps come through to the end.
  const humps = fact('three-blades', 'wide', 'bow') - fact('three-blades', 'wide', 'thin');
  expect(Math.abs(wide - thin - humps)).toBeLessThan(0.2 * humps);
  // Of the three blades only the middle one does the task.
  const task = LESSONS.find(({ id }) => id === 'three-blades')!.steps.at(-1)!;
  const { bench } = walks.get('three-blades')!.at(-1)!;
  const doneBy = [0.51, 0.58, 0.65].filter((kerfMm) => {
    const build = { ...bench.build, kerfMm };
    return goalNow(task.goal!, { ...bench, build, prediction: predictor.predict(build) }, build).isAchieved;
  });
  expect(doneBy).toEqual([0.58]);
});

test('reading a straightedge: half as long a quarter, and rocked some three times as much', () => {
  const { bench } = walks.get('straightedge')![0];
  const { fretXMm, straightedge } = bench.prediction;
  const [from, half, to] = [1, 7, straightedge.toFret].map((fret) => fretXMm[fret - 1]);
  expectNear((half - from) / (to - from), 0.5, 0.02, 'the fret nearest to half-way');
  const short = fact('straightedge', 'short', 'short') / fact('straightedge', 'short', 'relief');
  expect(short).toBeGreaterThan(0.2);
  expect(short).toBeLessThan(0.3);
  const rocked = fact('straightedge', 'rock', 'rocked') / -fact('straightedge', 'rock', 'hump');
  expect(rocked).toBeGreaterThan(2.5);
  expect(rocked).toBeLessThan(4);
});

describe('the bench', () => {
  test('comes back whole, with its undo, however the lesson is left', () => {
    for (const lesson of LESSONS) {
      const store = createBackbowStore(STANDARD_PREFERENCES);
      store.getState().change({ kerfMm: 0.61, name: 'Mine' }, 'Kerf');
      store.getState().setView('back');
      store.getState().setRail({ phase: 'strung' });
      const before = store.getState();
      store.getState().beginLesson(lesson.id);
      for (const step of lesson.steps) {
        act(store, [...(step.acts ?? []), ...(step.reveal ?? [])], true);
        store.getState().change({ crownWidthMm: 2.3 }, 'Crown width');
      }
      expect(store.getState().build).not.toBe(before.build);
      store.getState().endLesson();
      const {
        build,
        history,
        rail,
        view,
        comparing,
        lifted,
        showRod,
        showArrows,
        bowFactor,
        lesson: running,
      } = store.getState();
      expect(running).toBeNull();
      expect({ build, history, rail, view, comparing, lifted, showRod, showArrows, bowFactor }).toEqual({
        build: before.build,
        history: before.history,
        rail: before.rail,
        view: before.view,
        comparing: before.comparing,
        lifted: before.lifted,
        showRod: before.showRod,
        showArrows: before.showArrows,
        bowFactor: before.bowFactor,
      });
      expect(build).toBe(before.build);
      store.getState().undo();
      expect(store.getState().build.kerfMm).toBe(0.58);
    }
  });

  test('undo in a lesson takes back what the learner changed, and nothing of before', () => {
    const store = createBackbowStore(STANDARD_PREFERENCES);
    store.getState().change({ kerfMm: 0.61 }, 'Kerf');
    store.getState().beginLesson('strings');
    act(store, [{ set: 'preset', id: 'long-four' }], true);
    store.getState().change({ kerfMm: 0.6 }, 'Kerf');
    store.getState().undo();
    expect(store.getState().build.scaleLengthMm).toBe(864);
    store.getState().undo();
    expect(store.getState().build.scaleLengthMm).toBe(864);
  });

  test('another neck leaves the lesson and is placed beside the person’s own', () => {
    const store = createBackbowStore(STANDARD_PREFERENCES);
    store.getState().change({ name: 'Mine' }, 'Name');
    const mine = store.getState().build;
    store.getState().beginLesson('strings');
    act(store, [{ set: 'preset', id: 'long-four' }], true);
    store.getState().replaceBuild({ ...mine, name: 'From a file' }, 'Open');
    expect(store.getState().lesson).toBeNull();
    store.getState().undo();
    expect(store.getState().build).toBe(mine);
  });

  test('a neck that is refused leaves nothing', () => {
    const store = createBackbowStore(STANDARD_PREFERENCES);
    store.getState().beginLesson('strings');
    const outcome = store.getState().replaceBuild({ ...store.getState().build, kerfMm: 9 }, 'Open');
    expect([outcome.ok, store.getState().lesson === null]).toEqual([false, false]);
  });

  test('faults of a lesson are not passed over', () => {
    const store = createBackbowStore(STANDARD_PREFERENCES);
    expect(() => act(store, [{ set: 'values', values: {} }], true)).toThrow('no lesson is running');
    store.getState().beginLesson('strings');
    expect(() => act(store, [{ set: 'preset', id: 'none' }], true)).toThrow(RangeError);
    expect(() => act(store, [{ set: 'values', values: { kerfMm: 9 } }], true)).toThrow(/Kerf/);
  });
});

test('playing goes on to the moment that is asked for, and stops there', () => {
  const store = createBackbowStore(STANDARD_PREFERENCES);
  store.getState().beginLesson('strings');
  const to = { phase: 'strung' } as const;
  act(store, [{ set: 'play', from: { phase: 'frets', fretsIn: 20 }, to }], false);
  for (let tick = 0; tick < 100 && store.getState().playing; tick += 1) store.getState().stepRail(1);
  const { rail, build } = store.getState();
  expect(store.getState().playing).toBe(false);
  expect(stopIndex(railStops(build), rail)).toBe(stopIndex(railStops(build), to));
});

test('names in braces are filled and nothing else is touched', () => {
  expect(filled('a {b} c {d}', (name) => name.toUpperCase())).toBe('a B c D');
  expect(filled('{} { b } $1', () => 'x')).toBe('{} { b } $1');
});

test('why there is relief: what the texts say of room, frets and action is so', () => {
  expect(fact('why-relief', 'swing', 'fret')).toBeLessThanOrEqual(7);
  expect(fact('why-relief', 'deep', 'fret')).toBeGreaterThan(10);
  const [straight, hollow, deep] = ['straight', 'hollow', 'deep'].map((name) => fact('why-relief', 'which', name));
  expect(hollow).toBeGreaterThan(straight);
  expect(straight).toBeGreaterThan(deep);
  expect(fact('why-relief', 'lower', 'lowest')).toBeLessThan(fact('why-relief', 'lower', 'straight'));
});
