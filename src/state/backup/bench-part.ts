/** The journal in a backup: what is on the bench, what was left on it, and how each neck was before. */
import { troubleOf } from '../device/trouble.ts';
import type { Journal } from '../journal/journal.ts';
import { holdsAll, MOST_STANDINGS, recordOf, storedOf, type NeckRecord } from '../journal/record.ts';
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

function merged(journal: Journal, coming: readonly NeckRecord[]) {
  const tally: Counted = { ...EMPTY_TALLY };
  const writings: NeckRecord[] = [];
  const here = journal.all();
  const begun = new Set<string>();
  const isThere = (id: string): boolean => begun.has(id) || journal.has(id);
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

export function benchPart(journal: Journal): Part {
  function add(coming: readonly NeckRecord[]) {
    const { tally, writings } = merged(journal, coming);
    const written: NeckRecord[] = [];
    const takeOut = (): void => {
      for (const record of written) {
        const now = journal.read(record.id);
        if (now && JSON.stringify(storedOf(now)) === JSON.stringify(storedOf(record))) journal.remove(record.id);
      }
    };
    try {
      for (const record of writings) {
        journal.add(record);
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
        const { records, unreadable } = journal.contents();
        const value = records.map(savedOf).filter((saved) => neckRecordOf(saved) !== null);
        return { value, count: value.length, leftOut: unreadable + records.length - value.length, trouble: null };
      } catch (error) {
        return { value: [], count: 0, leftOut: 0, trouble: troubleOf(error) };
      }
    },
    check: (value) => {
      const checked = checkedList('bench', value, MOST_RECORDS, neckRecordOf, ({ id }) => id);
      if (!checked.ok) return checked;
      const { items } = checked;
      return {
        ok: true,
        count: items.length,
        foresee: async () => {
          // Where nothing can be read nothing can be foreseen.
          journal.contents();
          return merged(journal, items).tally;
        },
        add: async () => {
          journal.contents();
          return add(items);
        },
      };
    },
  };
}
