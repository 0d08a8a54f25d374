/** When the last backup of this device was made, and whether there is much that is in none. */
import type { LibraryEntry } from '../library/types.ts';
import { isMoment } from '../device/moment.ts';
import type { TextStorage } from '../journal/journal.ts';
import { isObject } from './part.ts';

const KEY = 'backbow.backup';
/** So much work is worth a word, and not sooner than after so long (common practice, no source). */
const MUCH = 5;
const LONG_MS = 30 * 24 * 3600_000;

export interface LastBackup {
  /** ms since 1970. */
  readonly at: number;
  /** Entries that the log had then. */
  readonly entries: number;
}

type Texts = () => Pick<TextStorage, 'getItem' | 'setItem'>;

export function lastBackup(texts: Texts = () => localStorage): LastBackup | null {
  try {
    const stored: unknown = JSON.parse(texts().getItem(KEY) ?? 'null');
    if (!isObject(stored) || !isMoment(stored['at'])) return null;
    return { at: stored['at'], entries: typeof stored['entries'] === 'number' ? stored['entries'] : 0 };
  } catch {
    return null;
  }
}

export function noteBackup(backup: LastBackup, texts: Texts = () => localStorage): void {
  try {
    texts().setItem(KEY, JSON.stringify(backup));
  } catch {
    // A device that keeps nothing has nothing to remind of.
  }
}

/** Is there much that would be lost with this device, and was there long no backup? */
export function isBackupDue(
  last: LastBackup | null,
  necks: readonly Pick<LibraryEntry, 'changedAt' | 'deletedAt'>[],
  entries: number,
  now: number = Date.now(),
): boolean {
  const kept = necks.filter(({ deletedAt }) => deletedAt === null);
  if (last === null) return kept.length + entries >= MUCH;
  const since = kept.filter(({ changedAt }) => changedAt > last.at).length + Math.max(0, entries - last.entries);
  return since >= MUCH && now - last.at > LONG_MS;
}
