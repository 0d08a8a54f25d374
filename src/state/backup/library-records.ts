/** The records of the library, all at once. */
import { entries, promisifyRequest } from 'idb-keyval';
import { libraryTable } from '../library/storage.ts';
import type { LibraryEntry } from '../library/types.ts';

export interface LibraryRecords {
  /** Every record, whatever it holds. */
  all(): Promise<unknown[]>;
  /**
   * Changes many records in one step, all of them or none.
   * @param change gets every record by its key and gives those that shall be; undefined takes one out
   */
  changeAll(
    change: (stored: ReadonlyMap<string, unknown>) => ReadonlyMap<string, LibraryEntry | undefined>,
  ): Promise<void>;
}

/** Those in the browser's own database. */
export function deviceRecords(): LibraryRecords {
  const table = libraryTable();
  return {
    all: async () => (await table.read((open) => entries<string, unknown>(open))).map(([, value]) => value),
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
