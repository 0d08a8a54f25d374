/** Whatever the program keeps on a device is in the backup, or stands here with the reason why not. */
import { describe, expect, test } from 'vitest';
import { createParts } from '../../../src/state/backup/parts.ts';
import { PART_IDS } from '../../../src/state/backup/part.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore } from '../../../src/state/store.ts';
import { JobStore } from '../../../src/state/jobs/job-store.ts';
import { StripStore } from '../../../src/state/strips/strip-store.ts';
import { readFiles } from '../../tools/source-files.ts';
import { memoryStorage, textStorage } from '../library/memory.ts';
import { logMemory } from './device.ts';

/** Places that are in no backup. */
const NOT_SAVED: Readonly<Record<string, string>> = {
  'backbow.bench': 'which neck this tab has on its bench; a tab’s own',
  'backbow.window': 'the same in earlier releases',
  'backbow.backup': 'when this device was backed up',
  'backbow.asked-to-keep': 'whether this browser was asked to keep it all',
  'backbow.page.': 'a lock for as long as a page is open; keeps nothing',
  'backbow-pages': 'a channel between pages; keeps nothing',
  'backbow-offline-files': 'a part of the build; the kept files are those of the program',
  'backbow-security-policy': 'a part of the build',
  'backbow-licences': 'a part of the build',
  'backbow-licences-of-workers': 'a part of the build',
};

/** Names of places in a text. */
function placesIn(text: string): string[] {
  return [...text.matchAll(/['"`](backbow[.-][\w.-]*)/g)].map((match) => match[1]);
}

/** What gives a page somewhere to keep things. */
const STORAGE = /\b(localStorage|sessionStorage|indexedDB|deviceTable|deviceRecord|keptText)\b/;

const parts = () =>
  createParts({
    store: createBackbowStore(STANDARD_PREFERENCES),
    library: memoryStorage(),
    log: logMemory(),
    strips: { storage: logMemory(), store: new StripStore(logMemory()) },
    jobs: { storage: logMemory(), store: new JobStore(logMemory()) },
    texts: () => textStorage(),
  });

const sources = () => readFiles('src', /\.tsx?$/).filter(({ path }) => !path.startsWith('src/state/backup/'));

describe('what is kept on a device', () => {
  test('is in the table of the backup, or here with a reason', () => {
    const saved = new Set(parts().flatMap(({ places }) => places));
    const found = new Set(readFiles('src', /\.tsx?$/).flatMap(({ text }) => placesIn(text)));
    expect(found.size).toBeGreaterThan(10);
    expect([...found].filter((place) => !saved.has(place) && !(place in NOT_SAVED))).toEqual([]);
    expect([...saved, ...Object.keys(NOT_SAVED)].filter((place) => !found.has(place))).toEqual([]);
    expect([...saved].filter((place) => place in NOT_SAVED)).toEqual([]);
  });

  test('has a name that this test can see', () => {
    // The journal and the keeper of the bench get their storage handed over; database and kept texts are told their names.
    const handed = ['src/state/device/database.ts', 'src/state/device/kept-text.ts', 'src/state/preferences.ts'];
    const nameless = sources()
      .filter(({ path, text }) => STORAGE.test(text) && placesIn(text).length === 0 && !handed.includes(path))
      .map(({ path }) => path);
    expect(nameless).toEqual([]);
  });

  test('every part has one row', () => {
    expect(parts().map(({ id }) => id)).toEqual([...PART_IDS]);
  });

  test('a new place is found', () => {
    expect(placesIn(`const KEY = 'backbow.trials'; deviceTable("backbow-photos", 'all')`)).toEqual([
      'backbow.trials',
      'backbow-photos',
    ]);
  });
});
