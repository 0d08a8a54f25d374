/**
 * Keeps every neck that is or was on the bench: as it changes, when another one takes its place, and when the page goes;
 * and brings it back when the page opens again.
 */
import type { Build } from '../../neck/build.ts';
import type { CheckedBuild } from '../../neck/schema.ts';
import { sameBuild } from '../history.ts';
import type { BackbowState, BackbowStore } from '../store.ts';
import { formatWhen } from '../library/when.ts';
import { DRAFT_WORDS } from '../../speech/en/pages/drafts.ts';
import type { StorageTrouble } from '../device/trouble.ts';
import { createBenchRecords, type BenchRecords } from './bench-records.ts';
import { createJournal, idOfDraft, type Journal, type TextStorage } from './journal.ts';
import { freshPageId, openPages, showPage, type OpenPages } from './open-pages.ts';
import { holdsAll, latestOf, readStanding, type NeckRecord } from './record.ts';

/** Changes that follow each other faster than this are written once. */
const REST_MS = 300;
/** Where a tab remembers the record of the neck on its bench; a duplicated tab starts with a copy of it. */
const TAB_KEY = 'backbow.bench';
/** The same in earlier releases, which kept one neck for each window. */
const OLD_TAB_KEY = 'backbow.window';

/** A neck that was left on the bench. */
export interface LeftNeck {
  readonly record: NeckRecord;
  readonly latest: CheckedBuild;
  /** Might it be on the bench of another page still? It cannot always be told. */
  readonly mayBeOpen: boolean;
}

export interface BenchKeeper {
  readonly journal: Journal;
  /**
   * Brings back what this tab had on the bench, or else what the page that was closed last had.
   * @param fromOthers false when something else is about to be opened: then only this tab's own work comes back
   */
  readonly restore: (fromOthers: boolean) => Promise<void>;
  /** Keeps every change from now on. @returns a function that stops it */
  readonly follow: () => () => void;
  /** Necks that are on the bench of no page, newest first. */
  readonly left: () => Promise<readonly LeftNeck[]>;
  /** The record of the neck on the bench; null while it has none. */
  readonly current: () => NeckRecord | null;
  /** Forgets a neck that was left, for good. */
  readonly discard: (id: string) => void;
}

type TabStorage = Pick<Storage, 'getItem' | 'setItem'>;

interface Surroundings {
  readonly local: () => TextStorage;
  readonly tab: () => TabStorage;
  readonly page: string;
  readonly open: () => Promise<OpenPages>;
  readonly now: () => number;
}

function browser(): Surroundings {
  const page = freshPageId();
  showPage(page);
  return { local: () => localStorage, tab: () => sessionStorage, page, open: openPages, now: () => Date.now() };
}

/** The build that is the person's own: what a lesson puts on the bench for a while is not. */
export type OwnBuild = (state: BackbowState) => Build;

/** The records of a page, which tell the person what becomes of them. */
function tellingRecords(store: BackbowStore, journal: Journal, around: Surroundings): BenchRecords {
  /** Of the last writing. */
  let told: StorageTrouble | null = null;
  return createBenchRecords(journal, {
    page: around.page,
    now: around.now,
    remember: (id) => {
      try {
        around.tab().setItem(TAB_KEY, id);
        return true;
      } catch {
        // Nothing is kept: it holds until the page is closed.
        return false;
      }
    },
    wrote: (trouble) => {
      if (trouble !== null && trouble !== told) store.getState().notify('warning', DRAFT_WORDS[trouble]);
      told = trouble;
    },
    crowded: (oldest) => {
      const names = oldest.map(latestOf).map(readStanding);
      store.getState().notify(
        'warning',
        DRAFT_WORDS.crowded(oldest.length),
        names.flatMap((read) => (read.ok ? [read.build.name] : [])),
      );
    },
  });
}

/** @returns a function that stops it */
function followBench(store: BackbowStore, ownBuild: OwnBuild, records: BenchRecords): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let kept = ownBuild(store.getState());
  let placed = store.getState().necksPlaced;

  function flush(): void {
    clearTimeout(timer);
    timer = undefined;
    const build = ownBuild(store.getState());
    if (build !== kept && !sameBuild(build, kept)) records.keep(build);
    else records.write();
    kept = build;
  }

  const stop = store.subscribe((state, before) => {
    const build = ownBuild(state);
    const was = ownBuild(before);
    const isAnother = state.necksPlaced !== placed;
    placed = state.necksPlaced;
    if (build === was) return;
    // A preset that is chosen again is another neck, though its build was on the bench before.
    const known = isAnother ? undefined : (records.neckOf(build) ?? records.neck());
    if (known === records.neck()) {
      records.follow(build);
      timer ??= setTimeout(flush, REST_MS);
      return;
    }
    clearTimeout(timer);
    timer = undefined;
    kept = build;
    records.exchange(was, build, known);
  });
  const onLeave = (): void => {
    flush();
    records.mark(true);
  };
  const onBack = ({ persisted }: PageTransitionEvent): void => {
    if (persisted) records.mark(false);
  };
  const onHide = (): void => {
    if (document.visibilityState === 'hidden') flush();
  };
  addEventListener('pagehide', onLeave);
  addEventListener('pageshow', onBack);
  document.addEventListener('visibilitychange', onHide);
  return () => {
    stop();
    onLeave();
    removeEventListener('pagehide', onLeave);
    removeEventListener('pageshow', onBack);
    document.removeEventListener('visibilitychange', onHide);
  };
}

export function createBenchKeeper(
  store: BackbowStore,
  ownBuild: OwnBuild,
  around: Surroundings = browser(),
): BenchKeeper {
  const journal = createJournal(around.local);
  const records = tellingRecords(store, journal, around);
  /** What was brought back, until it has a record of this page. */
  let broughtBack = false;

  function bringBack(record: NeckRecord): boolean {
    const { build, replaceBuild, notify } = store.getState();
    const read = readStanding(latestOf(record));
    if (!read.ok) return false;
    broughtBack = true;
    // Nothing to tell when it is there already.
    const isThere = sameBuild(build, read.build);
    if (!isThere) {
      replaceBuild(read.build, DRAFT_WORDS.stepRestore);
      notify('info', DRAFT_WORDS.restored(read.build.name, formatWhen(latestOf(record).at, around.now())));
    }
    records.begin(store.getState().build, record);
    return true;
  }

  /** The id of the record that this tab had on its bench. */
  function knownHere(): string | null {
    try {
      const draft = around.tab().getItem(OLD_TAB_KEY);
      return around.tab().getItem(TAB_KEY) ?? (draft === null ? null : idOfDraft(draft));
    } catch {
      return null;
    }
  }

  async function restore(fromOthers: boolean): Promise<void> {
    records.begin(store.getState().build, null);
    const known = knownHere();
    if (known !== null) {
      // Its record, or the one that goes on from it.
      const goesOn = () => journal.all().find(({ before, left }) => left === null && before.includes(known));
      const own = journal.read(known) ?? goesOn();
      if (own) bringBack(own);
      return;
    }
    const onBenches = fromOthers ? journal.all().filter(({ left }) => left === null) : [];
    if (onBenches.length === 0) return;
    const { ids, isCertain } = await around.open();
    const isOver = (record: NeckRecord) => record.isClosed || (isCertain && !ids.has(record.page));
    const newest = onBenches.find((record) => isOver(record) && readStanding(latestOf(record)).ok);
    if (newest) bringBack({ ...newest, isClosed: true });
    else if (onBenches.some(({ page }) => !ids.has(page))) store.getState().notify('info', DRAFT_WORDS.mayBeLeft);
  }

  async function left(): Promise<readonly LeftNeck[]> {
    const stored = journal.all();
    const known = new Set(stored.map(({ id }) => id));
    const others = [...records.unwritten().filter(({ id }) => !known.has(id)), ...stored].filter(
      ({ id }) => id !== records.neck(),
    );
    if (others.length === 0) return [];
    const { ids, isCertain } = await around.open();
    const here = records.current();
    return others
      .filter((record) => record.left !== null || record.page === around.page || !ids.has(record.page))
      .filter((record) => !here || !holdsAll(here, record))
      .map((record) => ({
        record,
        latest: readStanding(latestOf(record)),
        mayBeOpen: record.left === null && !record.isClosed && !isCertain,
      }));
  }

  return {
    journal,
    restore,
    left,
    follow: () => {
      const build = ownBuild(store.getState());
      if (records.neck() === '') records.begin(build, null);
      if (broughtBack) records.keep(build);
      // After a reload this tab begins with what it has now, not with what was left in another one meanwhile.
      else records.remember();
      return followBench(store, ownBuild, records);
    },
    current: records.current,
    discard: records.discard,
  };
}
