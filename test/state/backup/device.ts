/** A device with everything that a backup takes, for tests: it can be filled, wiped and made to fail. */
import type { LogStorage } from '../../../src/state/bench-log/log-storage.ts';
import { createParts } from '../../../src/state/backup/parts.ts';
import type { TextStorage } from '../../../src/state/journal/journal.ts';
import { writeProject } from '../../../src/neck/file.ts';
import type { LibraryEntry } from '../../../src/state/library/types.ts';
import { STANDARD_PREFERENCES } from '../../../src/state/preferences.ts';
import { createBackbowStore } from '../../../src/state/store.ts';
import { JobStore } from '../../../src/state/jobs/job-store.ts';
import { StripStore } from '../../../src/state/strips/strip-store.ts';
import { PRESETS } from '../../tools/presets.ts';
import { memoryStorage, textStorage } from '../library/memory.ts';

export interface LogMemory extends LogStorage {
  stored: unknown;
  /** Name of the error that every further writing ends in. */
  fail: string | null;
}

export function logMemory(first?: unknown): LogMemory {
  const kept: LogMemory = {
    stored: first,
    fail: null,
    read: async () => structuredClone(kept.stored),
    change: async (change) => {
      const next = change(structuredClone(kept.stored));
      if (kept.fail !== null) throw Object.assign(new Error(kept.fail), { name: kept.fail });
      kept.stored = structuredClone(next);
    },
  };
  return kept;
}

export function kit(texts: TextStorage = textStorage()) {
  const library = memoryStorage();
  const log = logMemory();
  // What the store reads of the log is what the device holds.
  const store = createBackbowStore(STANDARD_PREFERENCES, log);
  const storage = logMemory();
  const strips = { storage, store: new StripStore(storage) };
  const jobStorage = logMemory();
  const jobs = { storage: jobStorage, store: new JobStore(jobStorage) };
  const parts = createParts({ store, library, log, strips, jobs, texts: () => texts });
  return { library, log, strips: storage, jobs: jobStorage, texts, store, parts };
}

export type Kit = ReturnType<typeof kit>;

export function neck(id: string, name: string, change: Partial<LibraryEntry> = {}): LibraryEntry {
  return {
    id,
    name,
    createdAt: 1_000,
    changedAt: 2_000,
    revision: 1,
    project: writeProject({ ...PRESETS[0].build, name }),
    picture: 'data:image/png;base64,iVBORw0KGgo=',
    deletedAt: null,
    ...change,
  };
}

export function putTexts(texts: TextStorage, all: Readonly<Record<string, unknown>>): void {
  for (const [key, value] of Object.entries(all)) {
    texts.setItem(key, typeof value === 'string' ? value : JSON.stringify(value));
  }
}

/** A record of the journal with necks of these names, oldest first. */
export function benchRecord(names: readonly string[], change: object = {}): unknown {
  const standings = names.map((name, at) => ({
    at: 1_000 + at,
    project: JSON.parse(writeProject({ ...PRESETS[1].build, name })) as unknown,
  }));
  return { version: 1, page: 'p', before: [], standings, left: null, isClosed: true, toldAt: null, ...change };
}

/** As browsers do that keep nothing for a page. */
export function refusingTexts(): TextStorage {
  const refuse = (): never => {
    throw Object.assign(new Error('blocked'), { name: 'SecurityError' });
  };
  return { getItem: refuse, setItem: refuse, removeItem: refuse, key: refuse, length: 1 };
}

export const textsOf = (texts: TextStorage): Record<string, string> =>
  Object.fromEntries(
    Array.from({ length: texts.length }, (_, at) => texts.key(at)!).map((key) => [key, texts.getItem(key)!]),
  );
