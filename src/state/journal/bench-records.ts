/**
 * The records of one page: of the neck on its bench and of those that left it. A page writes only records that it began
 * itself. What it finds from an earlier page (its own before a reload, or one that was closed) it goes on with in a record
 * of its own, so two pages never write over each other and need not know of each other: a duplicated tab has a copy.
 */
import type { Build } from '../../neck/build.ts';
import type { StorageTrouble } from '../device/trouble.ts';
import type { Journal } from './journal.ts';
import {
  freshRecord,
  holdsAll,
  isOnlyPresets,
  isPreset,
  standingOf,
  STANDING_MS,
  withStanding,
  type NeckRecord,
} from './record.ts';

export interface BenchRecords {
  /** Id of the neck on the bench. */
  readonly neck: () => string;
  /** Its record; null while it has none. */
  readonly current: () => NeckRecord | null;
  /** The neck that a build is a state of. */
  readonly neckOf: (build: Build) => string | undefined;
  /** Another state of the neck on the bench. */
  readonly follow: (build: Build) => void;
  /** A neck is on the bench that has no record yet. @param from the record that it goes on from */
  readonly begin: (build: Build, from: NeckRecord | null) => void;
  /** Takes the build on the bench into its record, and writes it. */
  readonly keep: (build: Build) => void;
  /** Another neck takes the place of the one on the bench. @param known its own id, where it has been there before */
  readonly exchange: (was: Build, build: Build, known: string | undefined) => void;
  /** Has the tab remember that this neck is on its bench. */
  readonly remember: () => void;
  /** Marks the page as closed or open again. */
  readonly mark: (isClosed: boolean) => void;
  /** Tries again to write what could not be written. */
  readonly write: () => void;
  /** What could not be written, newest last. */
  readonly unwritten: () => readonly NeckRecord[];
  readonly discard: (id: string) => void;
}

interface Surroundings {
  readonly page: string;
  readonly now: () => number;
  /** Has the tab remember which record is that of its bench. @returns whether it does */
  readonly remember: (id: string) => boolean;
  /** Told after every writing. */
  readonly wrote: (trouble: StorageTrouble | null) => void;
  /** Told of necks that go next. */
  readonly crowded: (oldest: readonly NeckRecord[]) => void;
}

/** Records of this page as they should be stored, and which of them are not yet. @param wrote told after every writing */
function createWritings(journal: Journal, wrote: Surroundings['wrote']) {
  const records = new Map<string, NeckRecord>();
  const unwritten = new Set<string>();
  return {
    get: (id: string) => records.get(id),
    put(record: NeckRecord): void {
      records.set(record.id, record);
      unwritten.add(record.id);
    },
    /** @param done told of each record that is stored now */
    write(done: (record: NeckRecord) => void): void {
      if (unwritten.size === 0) return;
      let trouble: StorageTrouble | null = null;
      for (const id of unwritten) {
        const record = records.get(id)!;
        const refused = journal.write(record);
        trouble ??= refused;
        if (refused !== null) continue;
        unwritten.delete(id);
        done(record);
      }
      wrote(trouble);
    },
    isWritten: (id: string) => !unwritten.has(id),
    unwritten: () => [...unwritten].map((id) => records.get(id)!),
    /** It need not be stored any more. */
    takeAway(id: string): void {
      unwritten.delete(id);
      journal.remove(id);
    },
    discard(id: string): void {
      records.delete(id);
      unwritten.delete(id);
      journal.remove(id);
    },
  };
}

export function createBenchRecords(journal: Journal, around: Surroundings): BenchRecords {
  const writings = createWritings(journal, around.wrote);
  const necks = new WeakMap<Build, string>();
  let begun = 0;
  let neck = '';
  /** The record that the neck on the bench goes on from, until its own record is stored. */
  let from: NeckRecord | null = null;
  /** When the standing began that changes go into; null before the next change. */
  let standingSince: number | null = null;

  const write = (): void => writings.write((record) => record.id === neck && settleIn(record));

  /** The neck on the bench has its own record: the tab remembers it, and the one that it goes on from is not needed. */
  function settleIn(record: NeckRecord): void {
    const isRemembered = around.remember(neck);
    if (from?.isClosed && isRemembered && holdsAll(record, from)) journal.remove(from.id);
    from = null;
  }

  function begin(build: Build, earlier: NeckRecord | null): void {
    neck = `${around.page}.${(begun += 1)}`;
    from = earlier;
    standingSince = null;
    necks.set(build, neck);
  }

  function take(build: Build): void {
    const now = around.now();
    const standing = standingOf(build, now);
    const record = writings.get(neck);
    if (!record) {
      writings.put(freshRecord(neck, around.page, standing, from));
      return;
    }
    // How it came, and how an earlier page left it, stay standings of their own.
    const inPlace = standingSince !== null && now - standingSince < STANDING_MS;
    if (!inPlace) standingSince = now;
    const standings = withStanding(record.standings, standing, inPlace);
    writings.put({ ...record, standings, left: null, isClosed: false });
  }

  function leave(gone: NeckRecord): void {
    if (isOnlyPresets(gone)) {
      writings.takeAway(gone.id);
      return;
    }
    writings.put(gone);
    write();
    const oldest = writings.isWritten(gone.id) ? journal.tidy(gone, neck, around.now()) : [];
    if (oldest.length > 0) around.crowded(oldest);
  }

  return {
    begin,
    write,
    neck: () => neck,
    current: () => writings.get(neck) ?? null,
    neckOf: (build) => necks.get(build),
    follow: (build) => void necks.set(build, neck),
    keep: (build) => {
      take(build);
      write();
    },
    exchange: (was, build, known) => {
      const gone = neck;
      if (writings.get(gone) || from !== null || !isPreset(was)) take(was);
      if (known === undefined) begin(build, null);
      else [neck, from, standingSince] = [known, null, null];
      // First the one that comes, so that a crash between the two leaves both.
      if (known === undefined || writings.get(known) || !isPreset(build)) take(build);
      write();
      // A preset that nobody has touched may have no record: after a reload the tab begins with it, not with the neck before.
      if (!writings.get(neck)) around.remember(neck);
      const record = writings.get(gone);
      if (record) leave({ ...record, left: { at: around.now(), for: build.name } });
    },
    remember: () => void around.remember(neck),
    mark: (isClosed) => {
      const record = writings.get(neck);
      if (!record) around.remember(neck);
      else if (record.isClosed !== isClosed) writings.put({ ...record, isClosed });
      write();
    },
    unwritten: writings.unwritten,
    discard: writings.discard,
  };
}
