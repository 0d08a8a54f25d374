/** Where the bench log lies: one record in the browser's own database. */
import { get, update } from 'idb-keyval';
import { deviceTable } from '../device/database.ts';

export interface LogStorage {
  read(): Promise<unknown>;
  /** Changes the record in one step that no other window can come between. */
  change(change: (stored: unknown) => unknown): Promise<void>;
}

const KEY = 'log';

export function deviceLogStorage(): LogStorage {
  const table = deviceTable('backbow-bench-log', 'log');
  return {
    read: () => table.read((open) => get<unknown>(KEY, open)),
    change: (change) => table.write((open) => update<unknown>(KEY, change, open)),
  };
}
