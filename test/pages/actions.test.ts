// @vitest-environment happy-dom
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { comboOf, comboText, listenToKeys } from '../../src/pages/workshop/actions/keys.ts';
import { actionById, ACTIONS } from '../../src/pages/workshop/actions/table.ts';
import { STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { createBackbowStore, type BackbowStore } from '../../src/state/store.ts';

let store: BackbowStore;
beforeEach(() => {
  store = createBackbowStore(STANDARD_PREFERENCES);
  document.body.replaceChildren();
  window.location.hash = '';
});

describe('the table', () => {
  test('gives every action its own id and every key one action', () => {
    const ids = ACTIONS.map((action) => action.id);
    const keys = ACTIONS.flatMap((action) => action.keys);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(keys).size).toBe(keys.length);
    expect(() => actionById('fly')).toThrow(RangeError);
  });

  test('names every action in every state it can be in', () => {
    store.getState().change({ kerfMm: 0.6 }, 'Kerf');
    for (const action of ACTIONS) expect(action.label(store.getState())).not.toBe('');
    expect(actionById('undo').label(store.getState())).toBe('Undo: Kerf');
  });

  test('changes the build only where it says so, and then in one step that can be undone', async () => {
    // Opening asks for a file and saving hands one out: both are tested with the project file.
    for (const action of ACTIONS.filter(({ id }) => !['open', 'save'].includes(id))) {
      store = createBackbowStore(STANDARD_PREFERENCES);
      store.getState().change({ kerfMm: 0.6 }, 'Kerf');
      store.getState().change({ kerfMm: 0.62 }, 'Kerf');
      store.getState().undo();
      const before = store.getState().build;
      await action.run(store);
      expect([action.id, store.getState().build !== before]).toEqual([action.id, action.changesBuild]);
      if (!action.changesBuild || ['undo', 'redo'].includes(action.id)) continue;
      store.getState().undo();
      expect([action.id, store.getState().build === before]).toEqual([action.id, true]);
    }
  });
});

describe('keys', () => {
  function press(key: string, init: KeyboardEventInit = {}, target: EventTarget = document.body): KeyboardEvent {
    const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...init });
    target.dispatchEvent(event);
    return event;
  }

  function field(markup: string): HTMLElement {
    document.body.innerHTML = markup;
    return document.body.firstElementChild as HTMLElement;
  }

  let stop: () => void;
  beforeEach(() => {
    stop?.();
    stop = listenToKeys(store, window);
  });

  test('act anywhere on the page', () => {
    expect(press('3').defaultPrevented).toBe(true);
    expect(store.getState().view).toBe('fret');
    press('u');
    expect(store.getState().unitSystem).toBe('inch');
    press(',');
    expect(store.getState().rail).toEqual({ phase: 'frets', fretsIn: 21 });
  });

  test('undo and redo', () => {
    store.getState().change({ kerfMm: 0.6 }, 'Kerf');
    press('z', { ctrlKey: true });
    expect(store.getState().build.kerfMm).toBe(0.58);
    press('Z', { ctrlKey: true, shiftKey: true });
    expect(store.getState().build.kerfMm).toBe(0.6);
  });

  test('are letters where somebody types', () => {
    for (const markup of [
      '<input type="text">',
      '<textarea></textarea>',
      '<select></select>',
      '<input type="number">',
    ]) {
      expect([markup, press('u', {}, field(markup)).defaultPrevented]).toEqual([markup, false]);
    }
    expect(store.getState().unitSystem).toBe('metric');
    press('u', {}, field('<input type="range">'));
    expect(store.getState().unitSystem).toBe('inch');
  });

  test('undo the build from a number field in which nothing was typed, and the text where something was', () => {
    store.getState().change({ kerfMm: 0.6 }, 'Kerf');
    press('z', { ctrlKey: true }, field('<input type="text" data-idle="false">'));
    expect(store.getState().build.kerfMm).toBe(0.6);
    press('z', { ctrlKey: true }, field('<input type="text" data-idle="true">'));
    expect(store.getState().build.kerfMm).toBe(0.58);
  });

  test('of one letter can be turned off; the others and help stay', () => {
    store.getState().setSingleKeys(false);
    press('u');
    expect(store.getState().unitSystem).toBe('metric');
    press('?');
    expect(store.getState().helpOpen).toBe(true);
  });

  test('rest while the help is open', () => {
    store.getState().setHelpOpen(true);
    press('u');
    expect(store.getState().unitSystem).toBe('metric');
    press('?');
    expect(store.getState().helpOpen).toBe(false);
  });

  test('do nothing once it has stopped listening', () => {
    stop();
    press('u');
    expect(store.getState().unitSystem).toBe('metric');
    stop = vi.fn();
  });

  test('are written as they are engraved', () => {
    expect(comboOf({ key: 'z', ctrlKey: false, metaKey: true, altKey: false, shiftKey: true })).toBe('Mod+Shift+Z');
    expect(comboOf({ key: '?', ctrlKey: false, metaKey: false, altKey: false, shiftKey: true })).toBe('?');
    expect(comboText('Mod+Shift+Z', false)).toBe('Ctrl Shift Z');
    expect(comboText('Mod+Z', true)).toBe('⌘ Z');
  });
});
