/** Entries that come in, beside those that are there: which are new, which say something else under an id that is known. */
import type { LogEntry } from './entry.ts';
import { contentHash } from './identity.ts';
import { readLogBytes, type ReadLog } from './read-csv.ts';

export interface ComparedEntries {
  /** Not there yet. */
  readonly fresh: readonly LogEntry[];
  /** There under the same id, saying something else: the entry that is there, and the one that comes. */
  readonly changed: readonly (readonly [LogEntry, LogEntry])[];
  /** There already. */
  readonly known: number;
}

/** An entry is there already when its id is, or when another entry says exactly the same. Linear in the entries. */
export function compareEntries(present: readonly LogEntry[], coming: readonly LogEntry[]): ComparedEntries {
  const byId = new Map(present.map((entry) => [entry.id, entry]));
  const contents = new Set(present.map(contentHash));
  const fresh: LogEntry[] = [];
  const changed: [LogEntry, LogEntry][] = [];
  let known = 0;
  for (const entry of coming) {
    const there = byId.get(entry.id);
    if (there && contentHash(there) !== contentHash(entry)) changed.push([there, entry]);
    else if (there || contents.has(contentHash(entry))) known += 1;
    else {
      fresh.push(entry);
      byId.set(entry.id, entry);
      contents.add(contentHash(entry));
    }
  }
  return { fresh, changed, known };
}

export type BroughtIn = ({ readonly ok: true } & ComparedEntries) | Extract<ReadLog, { readonly ok: false }>;

/** Reads a file and compares what is in it; the work of a worker. @param told how far it is, 0 to 1 */
export function bringIn(bytes: Uint8Array, present: readonly LogEntry[], told?: (share: number) => void): BroughtIn {
  const read = readLogBytes(bytes, told);
  return read.ok ? { ok: true, ...compareEntries(present, read.entries) } : read;
}
