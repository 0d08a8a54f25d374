/** The way through the lessons, as this device keeps it. What cannot be read in its record stays as it is. */
import type { TextStorage } from '../journal/journal.ts';
import { progressEntryOf, progressId, type ProgressEntry } from './progress-entry.ts';

export const PROGRESS_KEY = 'backbow.lessons';
const VERSION = 1;
/** A device keeps no more; the oldest guesses go first. */
export const MOST_PROGRESS = 2000;

export interface ProgressRecord {
  /** As they are stored, those of a later release among them. */
  readonly entries: readonly unknown[];
}

const EMPTY: ProgressRecord = { entries: [] };

/** @returns null for a record of a newer release, or of something else: it must not be written over */
export function progressRecordOf(text: string | null): ProgressRecord | null {
  if (text === null) return EMPTY;
  try {
    const { version, entries } = JSON.parse(text) as Partial<Record<string, unknown>>;
    return version === VERSION && Array.isArray(entries) ? { entries: entries as readonly unknown[] } : null;
  } catch {
    return null;
  }
}

const textOfProgress = (record: ProgressRecord): string => JSON.stringify({ version: VERSION, ...record });

/** @throws what the device throws */
export function writeProgress(texts: TextStorage, record: ProgressRecord): void {
  texts.setItem(PROGRESS_KEY, textOfProgress(record));
}

export function readableProgress({ entries }: ProgressRecord): ProgressEntry[] {
  return entries.map((each) => progressEntryOf(each)).filter((each) => each !== null);
}

/** With what is new of these; what is there already stays as it was at first. */
export function withProgress(record: ProgressRecord, coming: readonly ProgressEntry[]): ProgressRecord {
  const known = new Set(readableProgress(record).map(progressId));
  const entries: readonly unknown[] = [...record.entries, ...coming.filter((one) => !known.has(progressId(one)))];
  let over = entries.length - MOST_PROGRESS;
  return {
    entries: entries.filter((each) => {
      const isOld = over > 0 && progressEntryOf(each)?.kind === 'guess';
      if (isOld) over -= 1;
      return !isOld;
    }),
  };
}

export function withoutProgress({ entries }: ProgressRecord, ids: ReadonlySet<string>): ProgressRecord {
  return {
    entries: entries.filter((each) => {
      const one = progressEntryOf(each);
      return one === null || !ids.has(progressId(one));
    }),
  };
}

const watching = new Set<() => void>();
/** What the device did not take lives as long as the page. */
let unkept: string | null = null;

/** The record's text. */
export function keptProgress(): string | null {
  try {
    return unkept ?? localStorage.getItem(PROGRESS_KEY);
  } catch {
    return unkept;
  }
}

/** Tells of changes, in other windows too. @returns what ends it */
export function watchProgress(told: () => void): () => void {
  watching.add(told);
  window.addEventListener('storage', told);
  return () => {
    watching.delete(told);
    window.removeEventListener('storage', told);
  };
}

/** A record of a newer release is left alone. */
export function keepProgress(...coming: readonly ProgressEntry[]): void {
  const record = progressRecordOf(keptProgress());
  if (!record) return;
  const changed = withProgress(record, coming);
  unkept = null;
  try {
    writeProgress(localStorage, changed);
  } catch {
    unkept = textOfProgress(changed);
  }
  for (const told of watching) told();
}

/** Forgets all of it that this release can read. */
export function forgetProgress(): void {
  const record = progressRecordOf(keptProgress());
  if (!record) return;
  unkept = null;
  const left = withoutProgress(record, new Set(readableProgress(record).map(progressId)));
  try {
    writeProgress(localStorage, left);
  } catch {
    unkept = textOfProgress(left);
  }
  for (const told of watching) told();
}
