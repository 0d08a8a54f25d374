/** The stock of this device. What cannot be read in its record stays as it is. */
import { idOf } from '../device/id-of.ts';
import type { ListForm } from '../device/kept-list.ts';
import { storageWatchers } from '../device/kept-text.ts';
import { troubleOf, type StorageTrouble } from '../device/trouble.ts';
import { stockItemOf, type StockItem } from './stock-item.ts';

export const STOCK_KEY = 'backbow.stock';
const VERSION = 1;
/** A device keeps no more. */
export const MOST_STOCK = 300;

export interface StockRecord {
  /** As they are stored, those of a later release among them. */
  readonly items: readonly unknown[];
}

const EMPTY: StockRecord = { items: [] };

/** @returns null for a record of a newer release, or of something else: it must not be written over */
export function stockRecordOf(text: string | null): StockRecord | null {
  if (text === null) return EMPTY;
  try {
    const { version, items } = JSON.parse(text) as Partial<Record<string, unknown>>;
    return version === VERSION && Array.isArray(items) ? { items: items as readonly unknown[] } : null;
  } catch {
    return null;
  }
}

export const textOfStock = (record: StockRecord): string => JSON.stringify({ version: VERSION, ...record });

/** Those that can be used, as they were entered. */
export function readableStock({ items }: StockRecord): StockItem[] {
  return items.map((each) => stockItemOf(each)).filter((each) => each !== null);
}

/** As it lies in the browser's storage: its text. */
export const STOCK_FORM: ListForm<StockRecord, StockItem> = {
  empty: EMPTY,
  recordOf: (stored) => stockRecordOf(stored as string | null),
  readable: readableStock,
  count: ({ items }) => items.length,
};

/** Takes items out and puts others in; one that comes in under the id of one that goes takes its place. */
export function changedStock(record: StockRecord, out: readonly StockItem[], into: readonly StockItem[]): StockRecord {
  const gone = new Set<unknown>(out.map(({ id }) => id));
  const coming = new Map<unknown, StockItem>(into.map((each) => [each.id, each]));
  const items = record.items.flatMap((each) => {
    const id = idOf(each);
    const next = gone.has(id) ? coming.get(id) : each;
    coming.delete(id);
    return next === undefined ? [] : [next];
  });
  return { items: [...items, ...coming.values()] };
}

export interface KeptStock {
  readonly items: readonly StockItem[];
  /** Stored ones that this release cannot read. */
  readonly unreadable: number;
  /** Null while they are kept. */
  readonly trouble: StorageTrouble | 'newer' | null;
}

const { watch, tell } = storageWatchers();

/** Tells of changes, in other windows too. @returns what ends it */
export const watchStock = watch;

/** What the device did not take lives as long as the page. */
let unkept: { readonly record: StockRecord; readonly trouble: StorageTrouble | 'newer' } | null = null;

function stored(): { readonly record: StockRecord; readonly trouble: KeptStock['trouble'] } {
  if (unkept) return unkept;
  try {
    const record = stockRecordOf(localStorage.getItem(STOCK_KEY));
    return record ? { record, trouble: null } : { record: EMPTY, trouble: 'newer' };
  } catch (error) {
    return { record: EMPTY, trouble: troubleOf(error) };
  }
}

let last: { readonly key: string; readonly kept: KeptStock } | undefined;

/** The same object for as long as nothing has changed. */
export function keptStock(): KeptStock {
  const { record, trouble } = stored();
  const key = `${trouble} ${textOfStock(record)}`;
  if (last?.key !== key) {
    const items = readableStock(record);
    last = { key, kept: { items, unreadable: record.items.length - items.length, trouble } };
  }
  return last.kept;
}

/** Takes items out and puts others in. */
export function changeStock(out: readonly StockItem[], into: readonly StockItem[]): void {
  const { record, trouble } = stored();
  const changed = changedStock(record, out, into);
  if (trouble === null) {
    try {
      localStorage.setItem(STOCK_KEY, textOfStock(changed));
    } catch (error) {
      unkept = { record: changed, trouble: troubleOf(error) };
    }
  } else unkept = { record: changed, trouble };
  tell();
}
