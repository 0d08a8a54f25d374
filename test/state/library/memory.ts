/** Storage for tests, which can be told to fail as browsers do. */
import type { LibraryRecords } from '../../../src/state/backup/library-records.ts';
import type { LibraryStorage } from '../../../src/state/library/storage.ts';
import type { LibraryEntry } from '../../../src/state/library/types.ts';

export interface MemoryStorage extends LibraryStorage, LibraryRecords {
  readonly records: Map<string, unknown>;
  /** Name of the error that every further writing or reading ends in. */
  fail: { reading?: string; writing?: string };
}

const failure = (name: string): Error => Object.assign(new Error(name), { name });

export function memoryStorage(): MemoryStorage {
  const records = new Map<string, unknown>();
  const storage: MemoryStorage = {
    records,
    fail: {},
    all: async () => {
      if (storage.fail.reading) throw failure(storage.fail.reading);
      return [...records.values()];
    },
    change: async (id, change) => {
      if (storage.fail.writing) throw failure(storage.fail.writing);
      const wanted = change(records.get(id) as LibraryEntry | undefined);
      if (wanted) records.set(id, structuredClone(wanted));
    },
    changeAll: async (change) => {
      if (storage.fail.reading) throw failure(storage.fail.reading);
      const wanted = change(new Map(records));
      if (wanted.size > 0 && storage.fail.writing) throw failure(storage.fail.writing);
      for (const [id, entry] of wanted) {
        if (entry) records.set(id, structuredClone(entry));
        else records.delete(id);
      }
    },
    remove: async (id) => {
      if (storage.fail.writing) throw failure(storage.fail.writing);
      records.delete(id);
    },
  };
  return storage;
}

/** A page's text storage, with room for so many characters. */
export function textStorage(room = Infinity): Storage {
  const texts = new Map<string, string>();
  return {
    get length() {
      return texts.size;
    },
    key: (index) => [...texts.keys()][index] ?? null,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, value) => {
      const others = [...texts].reduce((sum, [k, v]) => (k === key ? sum : sum + k.length + v.length), 0);
      if (others + key.length + value.length > room) throw failure('QuotaExceededError');
      texts.set(key, value);
    },
    removeItem: (key) => void texts.delete(key),
    clear: () => texts.clear(),
  };
}
