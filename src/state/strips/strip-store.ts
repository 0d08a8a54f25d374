/**
 * The try strips of this device. They are read when somebody opens them; where the device refuses to keep them they live as
 * long as the page.
 */
import type { TryStrip } from '../../mechanics/try-strip/document.ts';
import { troubleOf, type StorageTrouble } from '../device/trouble.ts';
import { changedStrips, NO_STRIPS, readableStrips, stripRecordOf, type StripRecord } from './strip-record.ts';
import { deviceStripStorage, type StripStorage } from './strip-storage.ts';

/** A record that must not be written over. */
class NewerRecord extends Error {}

export interface KeptStrips {
  /** The newest first; null before they were read. */
  readonly strips: readonly TryStrip[] | null;
  /** Stored ones that this release cannot read. */
  readonly unreadable: number;
  /** Null while they are kept. */
  readonly trouble: StorageTrouble | 'newer' | null;
}

export class StripStore {
  private kept: KeptStrips = { strips: null, unreadable: 0, trouble: null };
  private record: StripRecord = NO_STRIPS;
  private readonly watching = new Set<() => void>();
  private readonly storage: StripStorage;

  constructor(storage: StripStorage = deviceStripStorage()) {
    this.storage = storage;
  }

  readonly now = (): KeptStrips => this.kept;

  readonly watch = (told: () => void): (() => void) => {
    this.watching.add(told);
    return () => this.watching.delete(told);
  };

  readonly read = async (): Promise<void> => {
    // What could not be kept lives in this page only: the device must not take its place.
    if (this.kept.trouble !== null) return;
    try {
      const stored = stripRecordOf(await this.storage.read());
      if (!stored) throw new NewerRecord();
      this.show(stored, null);
    } catch (error) {
      this.fail(error, this.record);
    }
  };

  /** Takes strips out and puts others in; they must be free of problems. */
  readonly change = async (out: readonly TryStrip[], into: readonly TryStrip[]): Promise<void> => {
    if (this.kept.trouble !== null) {
      this.show(changedStrips(this.record, out, into), this.kept.trouble);
      return;
    }
    try {
      let written = this.record;
      await this.storage.change((stored) => {
        const before = stripRecordOf(stored);
        if (!before) throw new NewerRecord();
        written = changedStrips(before, out, into);
        return written;
      });
      this.show(written, null);
    } catch (error) {
      this.fail(error, changedStrips(this.record, out, into));
    }
  };

  private fail(error: unknown, record: StripRecord): void {
    this.show(record, error instanceof NewerRecord ? 'newer' : troubleOf(error));
  }

  private show(record: StripRecord, trouble: KeptStrips['trouble']): void {
    this.record = record;
    const strips = readableStrips(record);
    this.kept = { strips, unreadable: record.strips.length - strips.length, trouble };
    for (const told of this.watching) told();
  }
}

/** Of this page. */
export const stripStore = new StripStore();
