/** @vitest-environment happy-dom */
/** What is on the bench survives a reload and a crash; two windows keep their own; a device that refuses is told about. */
import { afterEach, describe, expect, test, vi } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { createDrafts, MOST_DRAFTS } from '../../../src/state/library/drafts.ts';
import { createDraftKeeper } from '../../../src/state/library/keep-draft.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore } from '../../../src/state/store.ts';
import { textStorage } from './memory.ts';

afterEach(() => {
  vi.useRealTimers();
});

/** A device with windows that can be opened, reloaded and closed. */
function device(
  local: () => Storage = (
    (kept) => () =>
      kept
  )(textStorage()),
) {
  const open = new Set<string>();
  let clock = 0;
  return {
    local,
    async window(id: string, isKnown = false, fromOthers = true) {
      const store = createBackbowStore(STANDARD_PREFERENCES);
      const keeper = createDraftKeeper(store, (state) => state.build, {
        local,
        here: { id, isKnown },
        open: async () => open,
        hold: async (wanted) => {
          if (open.has(wanted)) return false;
          open.add(wanted);
          return true;
        },
        renew: () => `${id}-renewed`,
        now: () => (clock += 1000),
      });
      await keeper.restore(fromOthers);
      const stop = keeper.follow();
      const close = () => {
        stop();
        open.delete(keeper.windowId());
      };
      const change = (name: string) => store.getState().change({ name }, 'Name');
      const name = () => store.getState().build.name;
      const notices = () => store.getState().notices.map(({ text }) => text);
      return { store, keeper, close, change, name, notices };
    },
  };
}

const STANDARD = PRESETS[0]!.label;

describe('the bench', () => {
  test('is as it was after a reload, with a notice, and undo starts afresh', async () => {
    const { window } = device();
    const before = await window('a');
    before.change('Half done');
    before.close();
    const after = await window('a', true);
    expect(after.name()).toBe('Half done');
    expect(after.notices()[0]).toContain('“Half done” is back on the bench as you left it');
    after.store.getState().undo();
    expect(after.name()).toBe(STANDARD);
  });

  test('is as it was in a new window after a crash, and the draft moves along', async () => {
    const { window, local } = device();
    const before = await window('a');
    before.change('Half done');
    before.close();
    const after = await window('b');
    expect(after.name()).toBe('Half done');
    expect(
      createDrafts(local)
        .all()
        .map(({ windowId }) => windowId),
    ).toEqual(['b']);
    expect(await after.keeper.left()).toEqual([]);
  });

  test('says nothing and restores nothing where nothing was changed', async () => {
    const { window } = device();
    const before = await window('a');
    before.close();
    const after = await window('a', true);
    expect(after.notices()).toEqual([]);
    expect(after.store.getState().history.past).toEqual([]);
  });

  test('is written a moment after a change, without waiting for the page to close', async () => {
    vi.useFakeTimers();
    const { window, local } = device();
    const { change } = await window('a');
    change('Written');
    vi.advanceTimersByTime(1000);
    expect(createDrafts(local).read('a')?.build.name).toBe('Written');
  });

  test('does not take what another open window has in hand', async () => {
    const { window } = device();
    const one = await window('a');
    one.change('In hand');
    one.store.getState().change({ kerfMm: 0.6 }, 'Kerf');
    const two = await window('b');
    expect(two.name()).toBe(STANDARD);
    two.change('Second');
    two.close();
    one.close();
    expect((await window('a', true)).name()).toBe('In hand');
    expect((await window('b', true)).name()).toBe('Second');
  });

  test('of a duplicated tab goes on under an id of its own', async () => {
    const { window, local } = device();
    const one = await window('a');
    one.change('Original');
    dispatchEvent(new Event('pagehide'));
    const copy = await window('a', true);
    expect(copy.name()).toBe('Original');
    copy.change('Copy');
    copy.close();
    one.close();
    expect(createDrafts(local).read('a')?.build.name).toBe('Original');
    expect(createDrafts(local).read('a-renewed')?.build.name).toBe('Copy');
  });

  test('leaves others’ work alone when a link is about to be opened', async () => {
    const { window } = device();
    const one = await window('a');
    one.change('Waiting');
    one.close();
    const two = await window('b', false, false);
    expect(two.name()).toBe(STANDARD);
    expect((await two.keeper.left()).map(({ build }) => build.name)).toEqual(['Waiting']);
  });
});

describe('drafts', () => {
  test('that are broken are passed over', () => {
    const kept = textStorage();
    const drafts = createDrafts(() => kept);
    drafts.write({ windowId: 'good', savedAt: 3, build: PRESETS[1]!.build });
    kept.setItem('backbow.draft.a', '{');
    kept.setItem('backbow.draft.b', '{"savedAt":1,"project":"{}"}');
    kept.setItem('backbow.draft.c', '{"savedAt":"soon","project":7}');
    kept.setItem('backbow.draft.d', 'null');
    kept.setItem('backbow.preferences', '{}');
    expect(drafts.all()).toEqual([{ windowId: 'good', savedAt: 3, build: PRESETS[1]!.build }]);
  });

  test('beyond a dozen are forgotten, the oldest first', () => {
    const kept = textStorage();
    const drafts = createDrafts(() => kept);
    for (let at = 0; at < MOST_DRAFTS + 4; at += 1) {
      drafts.write({ windowId: `w${at}`, savedAt: at, build: PRESETS[0]!.build });
    }
    expect(drafts.all().map(({ windowId }) => windowId)).toEqual(
      Array.from({ length: MOST_DRAFTS }, (_, index) => `w${MOST_DRAFTS + 3 - index}`),
    );
  });
});

describe('a device', () => {
  test('that is full is told about once, and the page goes on', async () => {
    const { window } = device(
      (
        (kept) => () =>
          kept
      )(textStorage(100)),
    );
    const one = await window('a');
    one.change('Too much');
    dispatchEvent(new Event('pagehide'));
    one.change('Still too much');
    dispatchEvent(new Event('pagehide'));
    expect(one.notices()).toEqual([expect.stringContaining('There is no room left on this device')]);
    expect(one.name()).toBe('Still too much');
    one.close();
  });

  test('that keeps nothing is told about, and the page goes on', async () => {
    const { window } = device(() => {
      throw Object.assign(new Error('The operation is insecure.'), { name: 'SecurityError' });
    });
    const one = await window('a', true);
    one.change('Private');
    one.close();
    expect(one.notices()).toEqual([expect.stringContaining('This browser keeps nothing for this page')]);
  });
});
