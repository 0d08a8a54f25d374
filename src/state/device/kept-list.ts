/**
 * A list of documents in one record of the browser's own database. It is read when somebody opens it; where the device refuses
 * to keep it, it lives as long as the page. Another window may change it at any time: what is changed is what is stored then.
 */
import type { RecordStorage } from './database.ts';
import { troubleOf, type StorageTrouble } from './trouble.ts';

/** How a list lies in its record. */
export interface ListForm<Stored, Item> {
  readonly empty: Stored;
  /** Null for a record of a newer release, or of something else: it must not be written over. */
  readonly recordOf: (stored: unknown) => Stored | null;
  /** Those that can be used, in the order in which they are shown. */
  readonly readable: (record: Stored) => readonly Item[];
  /** All that are there. */
  readonly count: (record: Stored) => number;
}

/** A record that must not be written over. */
class NewerRecord extends Error {}

export interface KeptItems<Item> {
  /** Null before they were read. */
  readonly items: readonly Item[] | null;
  /** Stored ones that this release cannot read. */
  readonly unreadable: number;
  /** Null while they are kept. */
  readonly trouble: StorageTrouble | 'newer' | null;
}

export class KeptList<Stored, Item> {
  private kept: KeptItems<Item> = { items: null, unreadable: 0, trouble: null };
  private record: Stored;
  private readonly watching = new Set<() => void>();
  private readonly storage: RecordStorage;
  private readonly form: ListForm<Stored, Item>;

  constructor(storage: RecordStorage, form: ListForm<Stored, Item>) {
    this.storage = storage;
    this.form = form;
    this.record = form.empty;
  }

  readonly now = (): KeptItems<Item> => this.kept;

  readonly watch = (told: () => void): (() => void) => {
    this.watching.add(told);
    return () => this.watching.delete(told);
  };

  readonly read = async (): Promise<void> => {
    // What could not be kept lives in this page only: the device must not take its place.
    if (this.kept.trouble !== null) return;
    try {
      const stored = this.form.recordOf(await this.storage.read());
      if (!stored) throw new NewerRecord();
      this.show(stored, null);
    } catch (error) {
      this.fail(error, this.record);
    }
  };

  readonly change = async (make: (before: Stored) => Stored): Promise<void> => {
    if (this.kept.trouble !== null) {
      this.show(make(this.record), this.kept.trouble);
      return;
    }
    try {
      let written = this.record;
      await this.storage.change((stored) => {
        const before = this.form.recordOf(stored);
        if (!before) throw new NewerRecord();
        written = make(before);
        return written;
      });
      this.show(written, null);
    } catch (error) {
      this.fail(error, make(this.record));
    }
  };

  private fail(error: unknown, record: Stored): void {
    this.show(record, error instanceof NewerRecord ? 'newer' : troubleOf(error));
  }

  private show(record: Stored, trouble: KeptItems<Item>['trouble']): void {
    this.record = record;
    const items = this.form.readable(record);
    this.kept = { items, unreadable: this.form.count(record) - items.length, trouble };
    for (const told of this.watching) told();
  }
}
