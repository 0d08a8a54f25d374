/** Where the bench log lies: one record in the browser's own database. */
import { createStore, get, update } from 'idb-keyval';

export interface LogStorage {
  read(): Promise<unknown>;
  /** Changes the record in one step that no other window can come between. */
  change(change: (stored: unknown) => unknown): Promise<void>;
}

const DATABASE = 'backbow-bench-log';
const TABLE = 'log';
const KEY = 'log';

export function deviceLogStorage(): LogStorage {
  let opened: ReturnType<typeof createStore> | undefined;
  // Opened when first used: some browsers throw already here when storage is blocked.
  const table = () => (opened ??= createStore(DATABASE, TABLE));
  return {
    read: async () => get<unknown>(KEY, table()),
    change: async (change) => {
      await update<unknown>(KEY, change, table());
    },
  };
}
