/** The library keeps what it is given, loses nothing to another window, and says what the device refused. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { writeProject } from '../../../src/neck/file.ts';
import type { Build } from '../../../src/neck/build.ts';
import { buildOf, freeName } from '../../../src/state/library/entry.ts';
import { createPageLibrary } from '../../../src/state/library/library-store.ts';
import { MOST_DELETED, type Done } from '../../../src/state/library/types.ts';
import { readCollection } from '../../../src/state/share/file.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore } from '../../../src/state/store.ts';
import { memoryStorage, type MemoryStorage } from './memory.ts';

/** Windows of one browser: they share the storage and hear of each other. */
function browser(storage: MemoryStorage = memoryStorage()) {
  const listeners: (() => void)[] = [];
  let clock = 1_000;
  return {
    storage,
    open() {
      const store = createBackbowStore(STANDARD_PREFERENCES);
      const mine: (() => void)[] = [];
      const channel = {
        tell: () => listeners.filter((heard) => !mine.includes(heard)).forEach((heard) => heard()),
        listen: (heard: () => void) => {
          mine.push(heard);
          listeners.push(heard);
        },
      };
      const library = createPageLibrary(store, storage, channel, () => (clock += 1_000));
      const names = () =>
        (library.state.getState().entries ?? []).filter(({ deletedAt }) => deletedAt === null).map(({ name }) => name);
      const change = (values: Partial<Build>) => store.getState().change(values, 'test');
      return { store, library, names, change };
    },
  };
}

function value<Value>(done: Done<Value>): Value {
  if (!done.ok) throw new Error(done.trouble);
  return done.value;
}

const PICTURE = 'data:image/png;base64,AAAA';

describe('one window', () => {
  test('keeps the neck on the bench, then keeps its changes in the same place', async () => {
    const { library, change, names } = browser().open();
    change({ name: 'Ash' });
    const first = value(await library.keepBench(PICTURE, false));
    change({ kerfMm: 0.6 });
    expect(library.benchEntry()).toBeNull();
    const second = value(await library.keepBench(null, false));
    expect(second.entry.id).toBe(first.entry.id);
    expect(second.entry.picture).toBe(PICTURE);
    expect(names()).toEqual(['Ash']);
    expect(buildOf(library.state.getState().entries![0])).toMatchObject({ build: { name: 'Ash', kerfMm: 0.6 } });
    expect(library.benchEntry()?.id).toBe(first.entry.id);
  });

  test('keeps as a new neck when asked to, and when another neck has been put on the bench', async () => {
    const { library, change, store, names } = browser().open();
    change({ name: 'One' });
    await library.keepBench(null, false);
    await library.keepBench(null, true);
    store.getState().replaceBuild({ ...PRESETS[1].build, name: 'Two' }, 'Start from');
    await library.keepBench(null, false);
    expect(names()).toEqual(['Two', 'One', 'One']);
  });

  test('undo leads back to the neck before with its own place in the library', async () => {
    const { library, change, store, names } = browser().open();
    change({ name: 'Mine' });
    const mine = value(await library.keepBench(null, false)).entry.id;
    store.getState().replaceBuild({ ...PRESETS[2].build, name: 'Other' }, 'Open');
    const other = value(await library.keepBench(null, false)).entry.id;
    expect(other).not.toBe(mine);
    store.getState().undo();
    expect(library.benchId()).toBe(mine);
    change({ kerfMm: 0.61 });
    expect(value(await library.keepBench(null, false)).entry.id).toBe(mine);
    store.getState().undo();
    store.getState().redo();
    expect(library.benchId()).toBe(mine);
    expect(names().toSorted()).toEqual(['Mine', 'Other']);
  });

  test('a preset chosen again is not the neck that was kept from it', async () => {
    const { library, store, names } = browser().open();
    value(await library.keepBench(null, false));
    store.getState().replaceBuild(PRESETS[1].build, 'Start from');
    store.getState().replaceBuild(PRESETS[0].build, 'Start from');
    expect(library.benchId()).toBeNull();
    await library.keepBench(null, false);
    expect(names().length).toBe(2);
  });

  test('before the first keeping there is nothing that undo could write over', async () => {
    const { library, store } = browser().open();
    await library.refresh();
    store.getState().replaceBuild({ ...PRESETS[1].build, name: 'Kept' }, 'Open');
    await library.keepBench(null, false);
    store.getState().undo();
    expect(library.benchId()).toBeNull();
  });

  test('opens, renames, duplicates, deletes and brings back', async () => {
    const { library, change, store, names } = browser().open();
    change({ name: 'Ash' });
    const { id } = value(await library.keepBench(null, false)).entry;
    expect(value(await library.duplicate(id)).name).toBe('Ash (2)');
    expect(value(await library.duplicate(id)).name).toBe('Ash (3)');
    const renamed = value(await library.rename(id, 'Birch'));
    expect(buildOf(renamed)).toMatchObject({ build: { name: 'Birch' } });
    expect(value(await library.setDeleted(id, true)).deletedAt).not.toBeNull();
    expect(names()).toEqual(['Ash (3)', 'Ash (2)']);
    await library.setDeleted(id, false);
    expect(names()).toContain('Birch');
    const before = store.getState().build;
    store.getState().replaceBuild(PRESETS[3].build, 'Start from');
    expect(library.open(renamed, 'Open from the library').ok).toBe(true);
    expect(store.getState().build).toEqual({ ...before, name: 'Birch' });
    expect(store.getState().history.past.at(-1)?.label).toBe('Open from the library');
  });

  test('forgets deleted necks for good only when told, or when there are very many', async () => {
    const { library, names } = browser().open();
    const builds = Array.from({ length: MOST_DELETED + 3 }, (_, index) => ({
      build: { ...PRESETS[0].build, name: `Neck ${index}` },
      changedAt: null,
    }));
    const { added } = value(await library.import(builds));
    for (const { id } of added) await library.setDeleted(id, true);
    const deleted = library.state.getState().entries!;
    expect(deleted.length).toBe(MOST_DELETED);
    // The first ones that were deleted are the ones forgotten.
    expect(deleted.map(({ name }) => name)).not.toContain('Neck 0');
    await library.forgetDeleted();
    expect(library.state.getState().entries).toEqual([]);
    expect(names()).toEqual([]);
  });

  test('exports everything and imports it elsewhere; what is there already is not added twice', async () => {
    const here = browser().open();
    await here.library.import(PRESETS.map(({ build }, index) => ({ build, changedAt: 5_000_000 + index })));
    const { text, count, unreadable } = here.library.exportAll();
    expect([count, unreadable]).toEqual([PRESETS.length, []]);
    const read = readCollection(text);
    if (!read.ok) throw new Error(read.trouble);

    const there = browser().open();
    there.store.getState().replaceBuild(PRESETS[4].build, 'Start from');
    await there.library.keepBench(null, false);
    const imported = value(await there.library.import(read.builds));
    expect(imported.alreadyThere).toEqual([PRESETS[4].label]);
    expect(imported.added.length).toBe(PRESETS.length - 1);
    expect(imported.added.map(({ changedAt }) => changedAt)).toContain(5_000_000);
    expect(value(await there.library.import(read.builds)).added).toEqual([]);
  });

  test('lists what cannot be read, and leaves it where it is', async () => {
    const { storage, open } = browser();
    const { library } = open();
    const { entry } = value(await library.keepBench(null, false));
    const broken = { ...entry, id: 'broken', name: 'Broken', project: writeProject(PRESETS[0].build).slice(0, 400) };
    storage.records.set('broken', broken);
    storage.records.set('strange', { what: 'is this' });
    storage.records.set('null', null);
    await library.refresh();
    const { entries, strange } = library.state.getState();
    expect(strange).toBe(2);
    expect(buildOf(entries!.find(({ id }) => id === 'broken')!).ok).toBe(false);
    expect(library.exportAll().unreadable).toEqual(['Broken']);
    expect(
      library.open(
        entries!.find(({ id }) => id === 'broken')!,
        'Open',
      ).ok,
    ).toBe(false);
    expect(storage.records.size).toBe(4);
  });
});

describe('two windows', () => {
  test('see each other’s necks', async () => {
    const { open } = browser();
    const [one, two] = [open(), open()];
    await Promise.all([one.library.refresh(), two.library.refresh()]);
    one.change({ name: 'From one' });
    await one.library.keepBench(null, false);
    await Promise.resolve();
    await two.library.refresh();
    expect(two.names()).toEqual(['From one']);
  });

  test('that change the same neck both keep their work', async () => {
    const { open } = browser();
    const [one, two] = [open(), open()];
    one.change({ name: 'Shared' });
    const { entry } = value(await one.library.keepBench(null, false));
    await two.library.refresh();
    two.library.open(two.library.state.getState().entries![0], 'Open');
    one.change({ kerfMm: 0.6 });
    expect(value(await one.library.keepBench(null, false)).besideAnother).toBe(false);
    two.change({ kerfMm: 0.63 });
    const kept = value(await two.library.keepBench(null, false));
    expect(kept.besideAnother).toBe(true);
    expect(kept.entry.id).not.toBe(entry.id);
    await one.library.refresh();
    const kerfs = one.library.state.getState().entries!.map((each) => {
      const read = buildOf(each);
      return read.ok ? read.build.kerfMm : null;
    });
    expect(new Set(kerfs)).toEqual(new Set([0.6, 0.63]));
  });

  test('one deletes what the other works on: the work is kept beside it', async () => {
    const { open } = browser();
    const [one, two] = [open(), open()];
    const { entry } = value(await one.library.keepBench(null, false));
    await two.library.refresh();
    await two.library.setDeleted(entry.id, true);
    one.change({ kerfMm: 0.6 });
    expect(value(await one.library.keepBench(null, false)).besideAnother).toBe(true);
  });
});

describe('a device that refuses', () => {
  test.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'refused'],
    ['InvalidStateError', 'refused'],
    ['UnknownError', 'refused'],
  ])('%s while writing is told as “%s”; nothing is changed', async (error, trouble) => {
    const { storage, open } = browser();
    const { library, names } = open();
    await library.keepBench(null, false);
    storage.fail = { writing: error };
    expect(await library.keepBench(null, true)).toEqual({ ok: false, trouble });
    expect(library.state.getState().trouble).toBe(trouble);
    expect(names().length).toBe(1);
    storage.fail = {};
    expect((await library.keepBench(null, true)).ok).toBe(true);
    expect(library.state.getState().trouble).toBeNull();
  });

  test('reading that is refused is told, and the list stays unread', async () => {
    const { storage, open } = browser();
    storage.fail = { reading: 'SecurityError' };
    const { library } = open();
    await library.refresh();
    expect(library.state.getState()).toMatchObject({ entries: null, trouble: 'refused' });
  });

  test('an import for which the room runs out says how many are missing', async () => {
    const { storage, open } = browser();
    const { library } = open();
    const change = storage.change.bind(storage);
    let left = 2;
    storage.change = async (...args) => {
      if ((left -= 1) < 0) throw Object.assign(new Error('full'), { name: 'QuotaExceededError' });
      await change(...args);
    };
    const builds = PRESETS.map(({ build }) => ({ build, changedAt: null }));
    const imported = value(await library.import(builds));
    expect(imported.added.length).toBe(2);
    expect(imported.notKept).toEqual({ count: PRESETS.length - 2, trouble: 'full' });
  });

  test('a neck that is gone is told as gone', async () => {
    const { library } = browser().open();
    expect(await library.rename('nowhere', 'x')).toEqual({ ok: false, trouble: 'gone' });
    expect(await library.duplicate('nowhere')).toEqual({ ok: false, trouble: 'gone' });
  });
});

test('a free name keeps within the length of a name', () => {
  expect(freeName('Ash', new Set(['Ash']))).toBe('Ash (2)');
  expect(freeName('Ash (2)', new Set(['Ash', 'Ash (2)', 'Ash (3)']))).toBe('Ash (4)');
  expect(freeName('x'.repeat(200), new Set())).toBe(`${'x'.repeat(196)} (2)`);
  expect(freeName('', new Set())).toBe(' (2)');
});
