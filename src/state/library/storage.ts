/** Where the library lies: one record per neck, so that two windows never write over each other's necks. */
import { del, entries, promisifyRequest, update } from 'idb-keyval';
import { deviceTable } from '../device/database.ts';
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
  /**
   * Changes many records in one step, all of them or none.
   * @param change gets every record by its key and gives those that shall be; undefined takes one out
   */
  changeAll(
    change: (stored: ReadonlyMap<string, unknown>) => ReadonlyMap<string, LibraryEntry | undefined>,
  ): Promise<void>;
}

/** The browser's own database. */
export function deviceStorage(): LibraryStorage {
  const table = deviceTable('backbow-library', 'necks');
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
    changeAll: (change) =>
      table.write((open) =>
        open('readwrite', async (records) => {
          const [keys, values] = await Promise.all([
            promisifyRequest(records.getAllKeys()),
            promisifyRequest(records.getAll() as IDBRequest<unknown[]>),
          ]);
          try {
            const wanted = change(new Map(keys.map((key, at) => [key as string, values[at]])));
            for (const [id, entry] of wanted) {
              if (entry) records.put(entry, id);
              else records.delete(id);
            }
          } catch (error) {
            records.transaction.abort();
            throw error;
          }
          await promisifyRequest(records.transaction);
        }),
      ),
  };
}

/** Ends a transaction without writing. */
class NothingToWrite extends Error {}
