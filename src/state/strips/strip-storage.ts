/** Where try strips lie: one record in the browser's own database. */
import { get, update } from 'idb-keyval';
import { deviceTable } from '../device/database.ts';

export interface StripStorage {
  read(): Promise<unknown>;
  /** Changes the record in one step that no other window can come between. */
  change(change: (stored: unknown) => unknown): Promise<void>;
}

const KEY = 'strips';

export function deviceStripStorage(): StripStorage {
  const table = deviceTable('backbow-try-strips', 'strips');
  return {
    read: () => table.read((open) => get<unknown>(KEY, open)),
    change: (change) => table.write((open) => update<unknown>(KEY, change, open)),
  };
}
