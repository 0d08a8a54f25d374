/** The way through the lessons, as this device keeps it. What cannot be read in its record stays as it is. */
import type { ListForm } from '../device/kept-list.ts';
import { keptText } from '../device/kept-text.ts';
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

export const textOfProgress = (record: ProgressRecord): string => JSON.stringify({ version: VERSION, ...record });

export function readableProgress({ entries }: ProgressRecord): ProgressEntry[] {
  return entries.map((each) => progressEntryOf(each)).filter((each) => each !== null);
}

/** With what is new of these; what is there already stays as it was at first. */
function withProgress(record: ProgressRecord, coming: readonly ProgressEntry[]): ProgressRecord {
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

/** Takes entries out and puts others in. */
export function changedProgress(
  { entries }: ProgressRecord,
  out: readonly ProgressEntry[],
  into: readonly ProgressEntry[],
): ProgressRecord {
  const gone = new Set(out.map(progressId));
  const left = entries.filter((each) => {
    const one = progressEntryOf(each);
    return one === null || !gone.has(progressId(one));
  });
  return withProgress({ entries: left }, into);
}

/** As it lies in the browser's storage: its text. */
export const PROGRESS_FORM: ListForm<ProgressRecord, ProgressEntry> = {
  empty: EMPTY,
  recordOf: (stored) => progressRecordOf(stored as string | null),
  readable: readableProgress,
  count: ({ entries }) => entries.length,
};

const kept = keptText(PROGRESS_KEY);

/** The record's text. */
export const keptProgress = kept.now;

/** Tells of changes, in other windows too. @returns what ends it */
export const watchProgress = kept.watch;

/** A record of a newer release is left alone. */
export function keepProgress(...coming: readonly ProgressEntry[]): void {
  const record = progressRecordOf(keptProgress());
  if (record) kept.keep(textOfProgress(withProgress(record, coming)));
}

/**
 * Forgets all of it, what a later release wrote among it; a record of a newer release is left alone.
 * @returns what brings it back, beside what has come since
 */
export function forgetProgress(): () => void {
  const gone = progressRecordOf(keptProgress());
  if (!gone) return () => undefined;
  kept.keep(textOfProgress(EMPTY));
  return () => {
    const since = progressRecordOf(keptProgress());
    if (since) kept.keep(textOfProgress(withProgress(gone, readableProgress(since))));
  };
}
