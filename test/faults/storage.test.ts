/** What another release, another program or a failing device left in the browser's storage. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeProject } from '../../src/neck/file.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { createJournal, idOfDraft } from '../../src/state/journal/journal.ts';
import { freshRecord, latestOf, readStanding, standingOf, storedOf } from '../../src/state/journal/record.ts';
import { buildOf, entryOf } from '../../src/state/library/entry.ts';
import { createLibrary } from '../../src/state/library/library.ts';
import { APPEARANCES, loadPreferences, savePreferences, STANDARD_PREFERENCES } from '../../src/state/preferences.ts';
import { hold } from '../sweep/invariant.ts';
import { memoryStorage, textStorage } from '../state/library/memory.ts';
import { damaged, hostileText, hostileValue, spoilt } from './hostile.ts';
import { RUNS } from './runs.ts';

const BUILD = PRESETS[1].build;
const RECORD = {
  id: 'a',
  name: BUILD.name,
  createdAt: 1e12,
  changedAt: 1e12,
  revision: 3,
  project: writeProject(BUILD),
  picture: null,
  deletedAt: null,
};

const jsonOf = (value: unknown): string => JSON.stringify(value) ?? 'undefined';

test(`preferences are read as far as they are any (seed ${RUNS.preferences.seed})`, () => {
  const text = fc.oneof(
    hostileText,
    spoilt(STANDARD_PREFERENCES).map(jsonOf),
    damaged('{"unitSystem":"inch","appearance":"dark","singleKeys":false}'),
  );
  fc.assert(
    fc.property(text, (stored) => {
      const preferences = loadPreferences(() => ({ getItem: () => stored }));
      expect(['metric', 'inch']).toContain(preferences.unitSystem);
      expect(APPEARANCES).toContain(preferences.appearance);
      expect(typeof preferences.singleKeys).toBe('boolean');
    }),
    RUNS.preferences,
  );
});

test('preferences that cannot be read or written are no trouble', () => {
  const refuse = (): never => {
    throw new DOMException('blocked', 'SecurityError');
  };
  expect(loadPreferences(refuse)).toEqual(STANDARD_PREFERENCES);
  expect(() => savePreferences(STANDARD_PREFERENCES, refuse)).not.toThrow();
});

test(`journal records that are none are passed over, and good ones beside them found (seed ${RUNS.drafts.seed})`, () => {
  const good = storedOf(freshRecord('good', 'page', standingOf(BUILD, 5), null));
  const text = fc.oneof(hostileText, spoilt(good).map(jsonOf), damaged(jsonOf(good)));
  fc.assert(
    fc.property(text, fc.string({ unit: 'binary', maxLength: 12 }), (stored, key) => {
      const storage = textStorage();
      const strangers = [`backbow.draft.${key}x`, `backbow.neck.${key}x`];
      for (const stranger of strangers) storage.setItem(stranger, stored);
      storage.setItem('backbow.draft.old', jsonOf({ savedAt: 5, project: writeProject(BUILD) }));
      storage.setItem('backbow.neck.good', jsonOf(good));
      const journal = createJournal(() => storage);
      const found = journal.all();
      expect(found.map(({ id }) => id)).toEqual(expect.arrayContaining(['good', idOfDraft('old')]));
      for (const record of found) {
        expect(Number.isFinite(latestOf(record).at)).toBe(true);
        const read = readStanding(latestOf(record));
        expect(read.ok ? checkBuild(read.build).ok : read.problems.length > 0).toBe(true);
      }
      const mine = freshRecord('mine', 'page', standingOf(BUILD, 9), null);
      expect(journal.write(mine)).toBeNull();
      expect(journal.read('mine')).toEqual(mine);
      journal.tidy(mine, 'none', 10);
      // What cannot be read is left where it is.
      const unread = strangers.filter((stranger) => !found.some(({ id }) => stranger.endsWith(id)));
      for (const stranger of unread) expect(storage.getItem(stranger)).toBe(stored);
    }),
    RUNS.drafts,
  );
});

describe(`the library (seed ${RUNS.records.seed})`, () => {
  test('tells necks from what is none, and loses nothing it cannot read', async () => {
    const record = fc.oneof({ weight: 3, arbitrary: spoilt(RECORD) }, { weight: 1, arbitrary: hostileValue });
    await fc.assert(
      fc.asyncProperty(record, async (strange) => {
        const storage = memoryStorage();
        storage.records.set('strange', strange);
        storage.records.set('good', { ...RECORD, id: 'good' });
        const library = createLibrary(storage, { now: () => 2e12, newId: () => 'new', changed: () => undefined });
        const read = await library.read();
        if (!read.ok) throw new Error(read.trouble);
        const { entries, strange: others } = read.value;
        expect(entries.length + others).toBe(2);
        expect(entries.map(({ id }) => id)).toContain('good');
        for (const entry of entries) {
          const checked = buildOf(entry);
          hold(checked.ok || checked.problems.length > 0, () => 'refused without a reason');
          hold(!checked.ok || checkBuild(checked.build).ok, () => 'what was read is no build');
        }
        const kept = await library.keep(BUILD, null);
        expect(kept.ok).toBe(true);
        // What was there is there still, as it was.
        expect(storage.records.get('strange')).toEqual(strange);
      }),
      RUNS.records,
    );
  });

  test.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'refused'],
    ['InvalidStateError', 'refused'],
  ])('says what the device says: %s is %s', async (name, trouble) => {
    const storage = memoryStorage();
    const library = createLibrary(storage, { now: () => 0, newId: () => 'new', changed: () => undefined });
    storage.fail = { writing: name };
    expect(await library.keep(BUILD, null)).toEqual({ ok: false, trouble });
    storage.fail = { reading: name };
    expect(await library.read()).toEqual({ ok: false, trouble });
  });

  test('a record is a neck by what it holds, not by what it claims', () => {
    expect(entryOf({ ...RECORD, changedAt: Number.NaN })).toBeNull();
    expect(entryOf({ ...RECORD, picture: 'https://elsewhere.invalid/spy.png' })?.picture).toBeNull();
    expect(entryOf({ ...RECORD, createdAt: Infinity })?.createdAt).toBe(RECORD.changedAt);
  });
});
