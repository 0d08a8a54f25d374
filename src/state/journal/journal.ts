/**
 * The journal on the device: a text for each neck that was on the bench. It lies in the page's text storage, since that is
 * written in one step, even while a page is being closed, and needs nothing that only secure pages have.
 */
import { troubleOf } from '../device/trouble.ts';
import type { StorageTrouble } from '../device/trouble.ts';
import { holdsAll, latestOf, recordOf, storedOf, type NeckRecord } from './record.ts';

export type TextStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** Where the text of each neck lies, followed by its id. */
export const PREFIX = 'backbow.neck.';
/** Where earlier releases kept one neck for each window. */
export const OLD_PREFIX = 'backbow.draft.';
/** What such a neck is called here. */
export const idOfDraft = (windowId: string): string => `draft.${windowId}`;

/** Necks that were left on the bench and are kept; of more, the oldest go, and only those that the person was told of. */
export const MOST_LEFT = 60;
/** How many are told of at once. */
export const TOLD_AT_ONCE = 10;
/** A neck that is on the bench of a page, and that page was not closed, and was not heard of for this long. */
const ABANDONED_MS = 30 * 24 * 3600_000;

export interface Journal {
  /** Records that can be read, newest first. */
  all(): readonly NeckRecord[];
  read(id: string): NeckRecord | null;
  /** @returns why it could not be kept, or null */
  write(record: NeckRecord): StorageTrouble | null;
  remove(id: string): void;
  /**
   * After a neck has left the bench: takes away records that this one holds whole, and keeps the number of the others.
   * @param bench id of the neck that is on the bench now
   * @returns necks that go next and that the person must now be told of
   */
  tidy(gone: NeckRecord, bench: string, now: number): readonly NeckRecord[];
}

function recordOfDraft(id: string, stored: unknown): NeckRecord | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { savedAt, project } = stored as Record<string, unknown>;
  if (typeof project !== 'string') return null;
  try {
    const standing = { at: savedAt, project: JSON.parse(project) as unknown };
    return recordOf(id, { version: 1, page: '', standings: [standing], isClosed: true });
  } catch {
    return null;
  }
}

/** @param storage may throw, as browsers do that keep nothing for a page */
export function createJournal(storage: () => TextStorage): Journal {
  function parsed(key: string): unknown {
    try {
      return JSON.parse(storage().getItem(key) ?? 'null') as unknown;
    } catch {
      return null;
    }
  }

  function keysWith(prefix: string): string[] {
    try {
      const kept = storage();
      return Array.from({ length: kept.length }, (_, index) => kept.key(index) ?? '')
        .filter((key) => key.startsWith(prefix))
        .map((key) => key.slice(prefix.length));
    } catch {
      return [];
    }
  }

  const read = (id: string): NeckRecord | null => recordOf(id, parsed(PREFIX + id)) ?? draft(id);

  /** What an earlier release kept. It is left where it is until the neck goes. */
  function draft(id: string): NeckRecord | null {
    if (!id.startsWith(idOfDraft(''))) return null;
    return recordOfDraft(id, parsed(OLD_PREFIX + id.slice(idOfDraft('').length)));
  }

  function all(): readonly NeckRecord[] {
    return [...new Set([...keysWith(PREFIX), ...keysWith(OLD_PREFIX).map(idOfDraft)])]
      .flatMap((id) => read(id) ?? [])
      .sort((a, b) => latestOf(b).at - latestOf(a).at);
  }

  function remove(id: string): void {
    try {
      storage().removeItem(PREFIX + id);
      if (id.startsWith(idOfDraft(''))) storage().removeItem(OLD_PREFIX + id.slice(idOfDraft('').length));
    } catch {
      // Nothing is kept, so nothing is left behind.
    }
  }

  function put(record: NeckRecord): StorageTrouble | null {
    try {
      storage().setItem(PREFIX + record.id, JSON.stringify(storedOf(record)));
      return null;
    } catch (error) {
      return troubleOf(error);
    }
  }

  /** Records that are on no bench, as far as it is known, oldest first. */
  const onNoBench = (now: number): NeckRecord[] =>
    all()
      .filter((record) => record.left !== null || record.isClosed || now - latestOf(record).at > ABANDONED_MS)
      .toReversed();

  function write(record: NeckRecord): StorageTrouble | null {
    let trouble = put(record);
    if (trouble !== 'full') return trouble;
    for (const old of onNoBench(latestOf(record).at).filter(({ toldAt, id }) => toldAt !== null && id !== record.id)) {
      remove(old.id);
      trouble = put(record);
      if (trouble === null) return null;
    }
    // How it is now comes before how it was.
    return record.standings.length > 1 ? put({ ...record, standings: record.standings.slice(-1) }) : trouble;
  }

  return {
    all,
    read,
    write,
    remove,
    tidy(gone, bench, now) {
      const held = all().filter(({ id }) => id !== gone.id && id !== bench);
      for (const other of held) if (holdsAll(gone, other)) remove(other.id);
      const others = onNoBench(now).filter(({ id }) => id !== gone.id && id !== bench);
      while (others.length >= MOST_LEFT && others[0].toldAt !== null) remove(others.shift()!.id);
      if (others.length < MOST_LEFT - TOLD_AT_ONCE || others.some(({ toldAt }) => toldAt !== null)) return [];
      return others
        .slice(0, TOLD_AT_ONCE)
        .map((record) => ({ ...record, toldAt: now }))
        .filter((record) => put(record) === null);
    },
  };
}
