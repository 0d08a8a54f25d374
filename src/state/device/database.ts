/**
 * A table of the browser's own database. A database may never answer: its opening hangs, or waits for a page with another
 * release. After a while the asking is given up, so that the page can say so and go on.
 */
import { createStore, get, update, type UseStore } from 'idb-keyval';
import { NoAnswer } from './trouble.ts';

/** How long an answer may take, ms; and the next one, once one has not come. */
const PATIENCE_MS = 8000;
const SHORT_PATIENCE_MS = 1000;

export interface Table {
  /** @throws {NoAnswer} when the database does not answer in time; what was asked may still be done later */
  read<Value>(work: (table: UseStore) => Promise<Value>): Promise<Value>;
  /** The same for what changes something. */
  write<Value>(work: (table: UseStore) => Promise<Value>): Promise<Value>;
}

/** There is something to keep now. What asks comes only then. */
async function askToKeep(): Promise<void> {
  try {
    await (await import('./keep-always.ts')).keepAlways.ask();
  } catch {
    // Without the network it is asked with the next writing.
  }
}

/** @param patienceMs how long an answer may take */
export function deviceTable(database: string, table: string, patienceMs = PATIENCE_MS): Table {
  let opened: UseStore | undefined;
  let patience = patienceMs;

  function ask<Value>(work: (table: UseStore) => Promise<Value>): Promise<Value> {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => {
        patience = Math.min(patience, SHORT_PATIENCE_MS);
        reject(new NoAnswer(`${database} does not answer`));
      }, patience);
      const answered = () => {
        clearTimeout(timer);
        patience = patienceMs;
      };
      // Opened when first used: some browsers throw already here when storage is blocked.
      Promise.resolve()
        .then(() => work((opened ??= createStore(database, table))))
        .then(
          (value) => {
            answered();
            resolve(value);
          },
          (error: unknown) => {
            answered();
            reject(error);
          },
        );
    });
  }

  return {
    read: ask,
    write: async (work) => {
      const value = await ask(work);
      void askToKeep();
      return value;
    },
  };
}

/** A record by itself. */
export interface RecordStorage {
  read(): Promise<unknown>;
  /** Changes the record in one step that no other window can come between. */
  change(change: (stored: unknown) => unknown): Promise<void>;
}

/** @param key of the record, and name of its table */
export function deviceRecord(database: string, key: string): RecordStorage {
  const table = deviceTable(database, key);
  return {
    read: () => table.read((open) => get<unknown>(key, open)),
    change: (change) => table.write((open) => update<unknown>(key, change, open)),
  };
}
