/** Where the library lies: one record per neck, so that two windows never write over each other's necks. */
import { del, entries, update } from 'idb-keyval';
import { deviceTable, type Table } from '../device/database.ts';
import type { LibraryEntry } from './types.ts';

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

export const libraryTable = (): Table => deviceTable('backbow-library', 'necks');

/** The browser's own database. */
export function deviceStorage(): LibraryStorage {
  const table = libraryTable();
  return {
    all: async () => (await table.read((open) => entries<string, unknown>(open))).map(([, value]) => value),
    change: async (id, change) => {
      const changed = (stored: LibraryEntry | undefined): LibraryEntry => {
        const wanted = change(stored);
        if (wanted === undefined) throw new NothingToWrite();
        return wanted;
      };
      try {
        await table.write((open) => update<LibraryEntry>(id, changed, open));
      } catch (error) {
        if (!(error instanceof NothingToWrite)) throw error;
      }
    },
    remove: (id) => table.write((open) => del(id, open)),
  };
}

/** Ends a transaction without writing. */
class NothingToWrite extends Error {}
