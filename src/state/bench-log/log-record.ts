/** The bench log as it is stored: one record. What cannot be read in it stays as it is. */
import { entryProblems, type LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { AdoptedBite } from './adopted.ts';

const VERSION = 1;

export interface LogRecord {
  readonly version: typeof VERSION;
  readonly entries: readonly unknown[];
  readonly adopted: readonly AdoptedBite[];
}

export const EMPTY_RECORD: LogRecord = { version: VERSION, entries: [], adopted: [] };

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isAdopted(value: unknown): value is AdoptedBite {
  return (
    isObject(value) &&
    [value['biteFactor'], value['logSpread'], value['necks']].every((n) => typeof n === 'number' && n > 0)
  );
}

/** @returns null for a record of a newer release, or of something else: it must not be written over */
export function recordOf(stored: unknown): LogRecord | null {
  if (stored === undefined) return EMPTY_RECORD;
  if (!isObject(stored) || stored['version'] !== VERSION || !Array.isArray(stored['entries'])) return null;
  const adopted: unknown[] = Array.isArray(stored['adopted']) ? stored['adopted'] : [];
  return { version: VERSION, entries: stored['entries'] as unknown[], adopted: adopted.filter(isAdopted) };
}

function isEntry(value: unknown): value is LogEntry {
  if (!isObject(value) || typeof value['date'] !== 'string' || typeof value['neck'] !== 'string') return false;
  return entryProblems(value as unknown as LogEntry).length === 0;
}

/** The entries that can be used, in the order of their dates. */
export function readableEntries(record: LogRecord): LogEntry[] {
  return record.entries.filter(isEntry).toSorted((a, b) => a.date.localeCompare(b.date));
}

/** Do two entries say the same? */
export function sameEntry(a: unknown, b: unknown): boolean {
  const sorted = (value: unknown) =>
    JSON.stringify(
      isObject(value) ? Object.entries(value).toSorted(([one], [other]) => one.localeCompare(other)) : value,
    );
  return sorted(a) === sorted(b);
}

/**
 * Takes some entries out and puts others in. Each is found by what it says, so that a change can be made to a list that
 * another window has changed meanwhile; one that is there already is not put in twice.
 */
export function changedRecord(record: LogRecord, out: readonly LogEntry[], into: readonly LogEntry[]): LogRecord {
  const left = [...record.entries];
  for (const entry of out) {
    const at = left.findIndex((other) => sameEntry(other, entry));
    if (at >= 0) left.splice(at, 1);
  }
  const fresh = into.filter((entry) => !left.some((other) => sameEntry(other, entry)));
  return { ...record, entries: [...left, ...fresh] };
}
