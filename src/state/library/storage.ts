/** Where the library lies: one record per neck, so that two windows never write over each other's necks. */
import { createStore, del, entries, update } from 'idb-keyval';
import type { LibraryEntry, StorageTrouble } from './types.ts';

export interface LibraryStorage {
  /** Every record, whatever it holds: what cannot be read must not be lost. */
  all(): Promise<unknown[]>;
  /**
   * Changes one record in one step that no other window can come between.
   * @param change gets what is stored now and gives what shall be; undefined leaves everything as it is
   */
  change(id: string, change: (stored: LibraryEntry | undefined) => LibraryEntry | undefined): Promise<void>;
  remove(id: string): Promise<void>;
}

const DATABASE = 'backbow-library';
const TABLE = 'necks';

/** The browser's own database. */
export function deviceStorage(): LibraryStorage {
  let opened: ReturnType<typeof createStore> | undefined;
  // Opened when first used: some browsers throw already here when storage is blocked.
  const table = () => (opened ??= createStore(DATABASE, TABLE));
  return {
    all: async () => (await entries<string, unknown>(table())).map(([, value]) => value),
    change: async (id, change) => {
      const changed = (stored: LibraryEntry | undefined): LibraryEntry => {
        const wanted = change(stored);
        if (wanted === undefined) throw new NothingToWrite();
        return wanted;
      };
      try {
        await update<LibraryEntry>(id, changed, table());
      } catch (error) {
        if (!(error instanceof NothingToWrite)) throw error;
      }
    },
    remove: async (id) => {
      await del(id, table());
    },
  };
}

/** Ends a transaction without writing. */
class NothingToWrite extends Error {}

/** What a failure of the device means for the person. */
export function troubleOf(error: unknown): StorageTrouble {
  return error instanceof Error && error.name === 'QuotaExceededError' ? 'full' : 'refused';
}
