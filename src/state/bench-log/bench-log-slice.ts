/** The bench log in the store. It is kept on this device; where that is refused it lives as long as the page. */
import type { StateCreator } from 'zustand/vanilla';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import type { BackbowState } from '../store.ts';
import { troubleOf, type StorageTrouble } from '../device/trouble.ts';
import type { BiteReference, GripReference } from '../../neck/bite-reference.ts';
import { withAdopted } from './adopted.ts';
import type { LogRecord } from './log-record.ts';
import { deviceLogStorage, type LogStorage } from './log-storage.ts';

/** Why the log is not kept on this device: see there, or it is a record of a newer release that is left alone. */
export type LogTrouble = StorageTrouble | 'newer';

export interface BenchLogSlice {
  /** In the order of their dates; null before they were read. */
  readonly benchLog: readonly LogEntry[] | null;
  /** Stored entries that this release cannot read. They are left where they are. */
  readonly unreadableEntries: number;
  readonly adoptedBites: readonly BiteReference[];
  readonly acceptedGrips: readonly GripReference[];
  /** Bite factors that an earlier release took from the log, when builds did not refer to it. */
  readonly earlierBites: readonly number[];
  /** Null while the log is kept. */
  readonly logTrouble: LogTrouble | null;
  /** Reads what is stored; called again, what other windows have changed. */
  readonly readBenchLog: () => Promise<void>;
  /** Takes entries out of the log and puts others in. The entries must be free of problems. */
  readonly changeBenchLog: (out: readonly LogEntry[], into: readonly LogEntry[]) => Promise<void>;
  /** Accepts measurements that a build refers to, with the spread that they left here. */
  readonly adoptBite: (bite: BiteReference) => Promise<void>;
  /** Accepts strips and readings that a build refers to. */
  readonly acceptGrip: (grip: GripReference) => Promise<void>;
}

/** What reads and checks entries: not needed for the first picture. */
const records = () => import('./log-record.ts');
const EMPTY: LogRecord = { version: 2, entries: [], adopted: [], grips: [], earlier: [] };

/** A record that must not be written over. */
class NewerRecord extends Error {}

export const createBenchLogSlice =
  (storage: LogStorage = deviceLogStorage()): StateCreator<BackbowState, [], [], BenchLogSlice> =>
  (set, get) => {
    let record = EMPTY;
    let reading: Promise<void> | undefined;

    async function show(next: LogRecord): Promise<void> {
      const { readableEntries } = await records();
      record = next;
      const entries = readableEntries(next);
      const adopted = JSON.stringify(next.adopted) === JSON.stringify(get().adoptedBites);
      set({
        benchLog: entries,
        unreadableEntries: next.entries.length - entries.length,
        ...(adopted ? {} : { adoptedBites: next.adopted }),
        ...(JSON.stringify(next.grips) === JSON.stringify(get().acceptedGrips) ? {} : { acceptedGrips: next.grips }),
        earlierBites: next.earlier,
      });
    }

    function fail(error: unknown): void {
      set({ logTrouble: error instanceof NewerRecord ? 'newer' : troubleOf(error) });
    }

    async function read(): Promise<void> {
      // What could not be kept lives in this page only: the device must not take its place.
      if (get().logTrouble !== null) return;
      try {
        const { recordOf } = await records();
        const stored = recordOf(await storage.read());
        if (!stored) throw new NewerRecord();
        await show(stored);
      } catch (error) {
        fail(error);
        await show(record);
      }
    }

    async function change(make: (before: LogRecord) => LogRecord): Promise<void> {
      await (reading ??= read());
      if (get().logTrouble !== null) {
        await show(make(record));
        return;
      }
      const { recordOf } = await records();
      try {
        let written = record;
        await storage.change((stored) => {
          const before = recordOf(stored);
          if (!before) throw new NewerRecord();
          written = make(before);
          return written;
        });
        await show(written);
      } catch (error) {
        fail(error);
        await show(make(record));
      }
    }

    return {
      benchLog: null,
      unreadableEntries: 0,
      adoptedBites: [],
      acceptedGrips: [],
      earlierBites: [],
      logTrouble: null,
      readBenchLog: () => (reading = read()),
      changeBenchLog: async (out, into) => {
        const { changedRecord } = await records();
        await change((before) => changedRecord(before, out, into));
      },
      adoptBite: (bite) => change((before) => ({ ...before, adopted: withAdopted(before.adopted, bite) })),
      acceptGrip: (grip) => change((before) => ({ ...before, grips: withAdopted(before.grips, grip) })),
    };
  };
