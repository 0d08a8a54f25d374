import { beforeEach, describe, expect, test } from 'vitest';
import { PRESETS } from '../tools/presets.ts';
import { PART_IDS, partChanged } from '../../src/geometry/parts.ts';
import { isUnsaved } from '../../src/state/build-slice.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { createBackbowStore, type BackbowStore } from '../../src/state/store.ts';

let store: BackbowStore;
const state = () => store.getState();
const undoLabels = () => state().history.past.map((entry) => entry.label);

beforeEach(() => {
  store = createBackbowStore(STANDARD_PREFERENCES);
});

describe('a change', () => {
  test('is accepted, can be undone by its name, and redone', () => {
    const before = state().build;
    expect(state().change({ kerfMm: 0.6 }, 'Kerf')).toEqual({ ok: true });
    expect(state().build.kerfMm).toBe(0.6);
    expect(undoLabels()).toEqual(['Kerf']);
    state().undo();
    expect(state().build).toBe(before);
    state().redo();
    expect(state().build.kerfMm).toBe(0.6);
  });

  test('keeps the very lists that it does not touch, so that what depends on them alone is not made anew', () => {
    const before = state().build;
    state().change({ kerfMm: 0.6 }, 'Kerf');
    const after = state().build;
    const lists = (Object.keys(before) as (keyof typeof before)[]).filter((key) => typeof before[key] === 'object');
    expect(lists).toEqual(expect.arrayContaining(['regions', 'strings', 'binding', 'laminates']));
    for (const key of lists) expect(after[key]).toBe(before[key]);
    expect(PART_IDS.filter((part) => partChanged(part, before, after))).toEqual(['board', 'binding']);
    state().change({ strings: before.strings.slice(1) }, 'Strings');
    expect(state().build.strings).not.toBe(before.strings);
    expect(state().build.regions).toBe(before.regions);
  });

  test('out of range is refused with value, range and unit, and nothing moves', () => {
    const before = state().build;
    const outcome = state().change({ kerfMm: 3 }, 'Kerf');
    expect(outcome.ok).toBe(false);
    expect(!outcome.ok && outcome.problems[0]).toMatchObject({
      parameter: 'kerfMm',
      value: 3,
      min: 0.3,
      max: 1.2,
      unit: 'mm',
    });
    expect(state().build).toBe(before);
    expect(undoLabels()).toEqual([]);
  });

  test('to an impossible combination is refused', () => {
    const before = state().build;
    const outcome = state().change({ slotDepthMm: 6 }, 'Slot depth');
    expect(!outcome.ok && outcome.problems[0]).toMatchObject({ code: 'impossible', parameter: 'slotDepthMm' });
    expect(state().build).toBe(before);
  });

  test('to what is already so leaves no step', () => {
    state().change({ kerfMm: state().build.kerfMm }, 'Kerf');
    expect(undoLabels()).toEqual([]);
  });
});

describe('a gesture', () => {
  test('of many changes is one step', () => {
    const before = state().build;
    state().beginGesture('Kerf');
    for (const kerfMm of [0.59, 0.6, 0.61]) state().change({ kerfMm }, 'Kerf');
    expect(undoLabels()).toEqual([]);
    state().endGesture();
    expect(undoLabels()).toEqual(['Kerf']);
    state().undo();
    expect(state().build).toBe(before);
  });

  test('that ends where it began leaves no step', () => {
    const { kerfMm } = state().build;
    state().beginGesture('Kerf');
    state().change({ kerfMm: 0.7 }, 'Kerf');
    state().change({ kerfMm }, 'Kerf');
    state().endGesture();
    expect(undoLabels()).toEqual([]);
  });

  test('that was never ended does not swallow what follows', () => {
    state().beginGesture('Kerf');
    state().change({ kerfMm: 0.7 }, 'Kerf');
    state().beginGesture('Chamfer');
    state().change({ chamferMm: 0.3 }, 'Chamfer');
    state().endGesture();
    expect(undoLabels()).toEqual(['Kerf', 'Chamfer']);
  });

  test('in progress is undone as a whole', () => {
    const before = state().build;
    state().beginGesture('Kerf');
    state().change({ kerfMm: 0.7 }, 'Kerf');
    state().undo();
    expect(state().build).toBe(before);
  });
});

test('another build is one step, and it is saved until something changes', () => {
  const { build } = PRESETS[1];
  expect(isUnsaved(state())).toBe(false);
  state().replaceBuild(build, 'Start from');
  expect(undoLabels()).toEqual(['Start from']);
  expect(isUnsaved(state())).toBe(true);
  state().markSaved(state().build);
  expect(isUnsaved(state())).toBe(false);
  state().change({ name: 'Other' }, 'Name');
  expect(isUnsaved(state())).toBe(true);
  state().undo();
  expect(isUnsaved(state())).toBe(false);
});
