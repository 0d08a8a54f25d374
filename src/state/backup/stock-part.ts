/** Blades and wires in a backup. One that says something else here stays as it is. */
import { hashOfText } from '../../mechanics/bench-log/identity.ts';
import { troubleOf } from '../device/trouble.ts';
import type { TextStorage } from '../journal/journal.ts';
import { stockItemOf, type StockItem } from '../stock/stock-item.ts';
import {
  changedStock,
  MOST_STOCK,
  readableStock,
  STOCK_KEY,
  stockRecordOf,
  writeStock,
  type StockRecord,
} from '../stock/stock-store.ts';
import { checkedList, EMPTY_TALLY, NewerRecord, type Part, type Tally } from './part.ts';

const hashOf = (item: StockItem): string => hashOfText(JSON.stringify(item));

function compared(record: StockRecord, coming: readonly StockItem[]) {
  const here = new Map(readableStock(record).map((item) => [item.id, hashOf(item)]));
  const fresh = coming.filter(({ id }) => !here.has(id));
  const stays = coming.filter((item) => here.has(item.id) && here.get(item.id) !== hashOf(item)).length;
  const tally: Tally = { ...EMPTY_TALLY, fresh: fresh.length, stays, known: coming.length - fresh.length - stays };
  return { fresh, tally };
}

export function stockPart(texts: () => TextStorage): Part {
  function now(): StockRecord {
    const record = stockRecordOf(texts().getItem(STOCK_KEY));
    if (!record) throw new NewerRecord();
    return record;
  }

  async function add(coming: readonly StockItem[]) {
    const record = now();
    const { fresh, tally } = compared(record, coming);
    if (fresh.length > 0) writeStock(texts(), changedStock(record, [], fresh));
    const takeBack = async () => {
      const later = now();
      const hashes = new Map(readableStock(later).map((item) => [item.id, hashOf(item)]));
      const untouched = fresh.filter((item) => hashes.get(item.id) === hashOf(item));
      if (untouched.length > 0) writeStock(texts(), changedStock(later, untouched, []));
    };
    return { tally, takeBack };
  }

  return {
    id: 'stock',
    places: [STOCK_KEY],
    save: async () => {
      try {
        const record = now();
        const value = readableStock(record);
        return { value, count: value.length, leftOut: record.items.length - value.length, trouble: null };
      } catch (error) {
        return { value: [], count: 0, leftOut: 0, trouble: error instanceof NewerRecord ? 'newer' : troubleOf(error) };
      }
    },
    check: (value) =>
      checkedList<StockItem>(value, {
        part: 'stock',
        most: MOST_STOCK,
        read: stockItemOf,
        idOf: ({ id }) => id,
        foresee: async (items) => compared(now(), items).tally,
        add,
      }),
  };
}
