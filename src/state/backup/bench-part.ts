/** The journal in a backup: what is on the bench, what was left on it, and how each neck was before. */
import { digestOf } from '../../neck/digest.ts';
import { troubleOf } from '../device/trouble.ts';
import { OLD_PREFIX, PREFIX, type Journal, type TextStorage } from '../journal/journal.ts';
import {
  freshRecord,
  holdsAll,
  isPreset,
  MOST_STANDINGS,
  recordOf,
  standingOf,
  storedOf,
  type NeckRecord,
} from '../journal/record.ts';
import type { BackbowState, BackbowStore } from '../store.ts';
import { checkedList, EMPTY_TALLY, idBeside, isObject, isRecordId, type Counted, type Part } from './part.ts';

const MOST_RECORDS = 1000;

const savedOf = (record: NeckRecord): unknown => ({ id: record.id, ...(storedOf(record) as object) });

function neckRecordOf(value: unknown): NeckRecord | null {
  if (!isObject(value) || !isRecordId(value['id'])) return null;
  const record = recordOf(value['id'], value);
  return record && record.standings.length <= MOST_STANDINGS ? record : null;
}

/** On no bench, and not to go before the person is told so here. */
const laidBy = (record: NeckRecord): NeckRecord => ({
  ...record,
  isClosed: record.isClosed || record.left === null,
  toldAt: null,
});

/** The journal, and the texts that it lies in. */
interface Bench {
  readonly journal: Journal;
  readonly texts: () => TextStorage;
}

/**
 * Every record that can be read, and how many cannot be.
 * @throws what the browser throws that keeps nothing for a page
 */
function contents({ journal, texts }: Bench) {
  const storage = texts();
  const keys = Array.from({ length: storage.length }, (_, at) => storage.key(at) ?? '');
  const stored = keys.filter((key) => key.startsWith(PREFIX) || key.startsWith(OLD_PREFIX)).length;
  const records = journal.all();
  return { records, unreadable: Math.max(0, stored - records.length) };
}

function merged({ journal, texts }: Bench, coming: readonly NeckRecord[]) {
  const tally: Counted = { ...EMPTY_TALLY };
  const writings: NeckRecord[] = [];
  const here = journal.all();
  const begun = new Set<string>();
  const isThere = (id: string): boolean => begun.has(id) || texts().getItem(PREFIX + id) !== null;
  const put = (record: NeckRecord): void => {
    begun.add(record.id);
    writings.push(record);
  };
  for (const record of coming) {
    if (here.some((other) => holdsAll(other, record))) tally.known += 1;
    else if (!isThere(record.id)) {
      put(laidBy(record));
      tally.fresh += 1;
    } else {
      // Only the page that began a record writes it.
      const id = idBeside(record.id, JSON.stringify(record.standings));
      if (isThere(id)) tally.known += 1;
      else {
        put({ ...laidBy(record), id });
        tally.beside += 1;
      }
    }
  }
  return { tally, writings };
}

/** The neck on the bench, where the device has no record of it: nothing is kept here, or there was no room. */
function unkept({ build }: BackbowState, records: readonly NeckRecord[]): readonly NeckRecord[] {
  if (isPreset(build)) return [];
  const standing = standingOf(build, Date.now());
  const id = `unkept.${digestOf(JSON.stringify(standing.project)).slice(0, 12)}`;
  const record = freshRecord(id, '', standing, null);
  return records.some((other) => holdsAll(other, record)) ? [] : [record];
}

export function benchPart(journal: Journal, texts: () => TextStorage, store: BackbowStore): Part {
  const bench = { journal, texts };

  function add(coming: readonly NeckRecord[]) {
    const { tally, writings } = merged(bench, coming);
    const written: NeckRecord[] = [];
    const takeOut = (): void => {
      for (const record of written) {
        const now = journal.read(record.id);
        if (now && JSON.stringify(storedOf(now)) === JSON.stringify(storedOf(record))) journal.remove(record.id);
      }
    };
    try {
      for (const record of writings) {
        // Not as the journal writes, which takes others away where there is no room.
        texts().setItem(PREFIX + record.id, JSON.stringify(storedOf(record)));
        written.push(record);
      }
    } catch (error) {
      takeOut();
      throw error;
    }
    return { tally, takeBack: async () => takeOut() };
  }

  return {
    id: 'bench',
    places: ['backbow.neck.', 'backbow.draft.'],
    save: async () => {
      try {
        const { records, unreadable } = contents(bench);
        const all = [...records, ...unkept(store.getState(), records)];
        const value = all.map(savedOf).filter((saved) => neckRecordOf(saved) !== null);
        return { value, count: value.length, leftOut: unreadable + all.length - value.length, trouble: null };
      } catch (error) {
        const value = unkept(store.getState(), []).map(savedOf);
        // Then it is all that there is.
        return { value, count: value.length, leftOut: 0, trouble: value.length === 0 ? troubleOf(error) : null };
      }
    },
    check: (value) =>
      checkedList(value, {
        part: 'bench',
        most: MOST_RECORDS,
        read: neckRecordOf,
        idOf: ({ id }) => id,
        foresee: async (items) => {
          // Where nothing can be read nothing can be foreseen.
          contents(bench);
          return merged(bench, items).tally;
        },
        add: async (items) => {
          contents(bench);
          return add(items);
        },
      }),
  };
}
