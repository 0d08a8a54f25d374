/**
 * Keeps every neck that is or was on the bench: as it changes, when another one takes its place, and when the page goes.
 * A page writes only the records that it began itself. What it finds from an earlier page (its own before a reload, or one
 * that was closed) it goes on with in a record of its own, so two pages never write over each other and need not know of
 * each other: a duplicated tab has a copy of the work.
 */
import type { Build } from '../../neck/build.ts';
import type { CheckedBuild } from '../../neck/schema.ts';
import { sameBuild } from '../history.ts';
import type { BackbowState, BackbowStore } from '../store.ts';
import { formatWhen } from '../library/when.ts';
import { DRAFT_WORDS } from '../../speech/en/drafts.ts';
import type { StorageTrouble } from '../device/trouble.ts';
import { createJournal, idOfDraft, type Journal, type TextStorage } from './journal.ts';
import { freshPageId, openPages, showPage, type OpenPages } from './open-pages.ts';
import {
  freshRecord,
  holdsAll,
  isOnlyPresets,
  isPreset,
  latestOf,
  readStanding,
  standingOf,
  STANDING_MS,
  withStanding,
  type NeckRecord,
} from './record.ts';

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
  /** Keeps what changed last, before the page goes. @returns why it cannot be kept, or null */
  readonly keepNow: () => StorageTrouble | null;
  /** Necks that are on the bench of no page, newest first. */
  readonly left: () => Promise<readonly LeftNeck[]>;
  /** The record of the neck on the bench; null while there is none. */
  readonly current: () => NeckRecord | null;
  /** Forgets a neck that was left, for good. */
  readonly discard: (id: string) => void;
}

interface Surroundings {
  readonly local: () => TextStorage;
  readonly tab: () => Pick<Storage, 'getItem' | 'setItem'>;
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

export function createBenchKeeper(
  store: BackbowStore,
  ownBuild: OwnBuild,
  around: Surroundings = browser(),
): BenchKeeper {
  const journal = createJournal(around.local);
  /** Records of this page, as they should be stored. */
  const records = new Map<string, NeckRecord>();
  /** Those that are not stored so yet. */
  const unwritten = new Set<string>();
  /** Which neck a build is a state of. */
  const necks = new WeakMap<Build, string>();
  let begun = 0;
  /** The neck on the bench. */
  let neck = '';
  /** The record that the neck on the bench goes on from, until its own record is stored. */
  let from: NeckRecord | null = null;
  /** When the standing began that changes go into; null before the next change. */
  let standingSince: number | null = null;
  /** Of the last writing. */
  let told: StorageTrouble | null = null;
  let keepLast = (): void => undefined;

  function inTab<Value>(work: (tab: Pick<Storage, 'getItem' | 'setItem'>) => Value): Value | null {
    try {
      return work(around.tab());
    } catch {
      // Nothing is kept: it holds until the page is closed.
      return null;
    }
  }

  function put(record: NeckRecord): void {
    records.set(record.id, record);
    unwritten.add(record.id);
  }

  /** Writes what is not written yet; what fails stays to be written with the next change. */
  function write(): void {
    let trouble: StorageTrouble | null = null;
    for (const id of unwritten) {
      const refused = journal.write(records.get(id)!);
      trouble ??= refused;
      if (refused !== null) continue;
      unwritten.delete(id);
      if (id === neck) settleIn();
    }
    if (trouble !== null && trouble !== told) store.getState().notify('warning', DRAFT_WORDS[trouble]);
    told = trouble;
  }

  /** The neck on the bench has its own record: the tab remembers it, and the one that it goes on from is not needed. */
  function settleIn(): void {
    const isRemembered = inTab((tab) => (tab.setItem(TAB_KEY, neck), true));
    if (from?.isClosed && isRemembered !== null && holdsAll(records.get(neck)!, from)) journal.remove(from.id);
    from = null;
  }

  /** Another neck is on the bench, which has no record yet. */
  function begin(build: Build): void {
    neck = `${around.page}.${(begun += 1)}`;
    necks.set(build, neck);
    standingSince = null;
  }

  /** Takes the build on the bench into its record. */
  function take(build: Build): void {
    const now = around.now();
    const standing = standingOf(build, now);
    const record = records.get(neck);
    if (!record) {
      put(freshRecord(neck, around.page, standing, from));
      return;
    }
    // How it came, and how an earlier page left it, stay standings of their own.
    const inPlace = standingSince !== null && now - standingSince < STANDING_MS;
    if (!inPlace) standingSince = now;
    const standings = withStanding(record.standings, standing, inPlace);
    put({ ...record, standings, left: null, isClosed: false });
  }

  /** Another neck takes the place of the one on the bench. @param known its own record, where it has been there before */
  function exchange(was: Build, build: Build, known: string | undefined): void {
    const gone = neck;
    if (records.has(gone) || !isPreset(was)) take(was);
    if (known === undefined) begin(build);
    else [neck, standingSince] = [known, null];
    from = null;
    // First the one that comes, so that a crash between the two leaves both.
    if (known === undefined || records.has(known) || !isPreset(build)) take(build);
    write();
    // An untouched preset may have no record: after a reload the tab begins with it, not with the neck before.
    if (!records.has(neck)) inTab((tab) => tab.setItem(TAB_KEY, neck));
    const record = records.get(gone);
    if (record) leave({ ...record, left: { at: around.now(), for: build.name } });
  }

  function leave(gone: NeckRecord): void {
    if (isOnlyPresets(gone)) {
      unwritten.delete(gone.id);
      journal.remove(gone.id);
      return;
    }
    put(gone);
    write();
    const goNext = unwritten.has(gone.id) ? [] : journal.tidy(gone, neck, around.now());
    if (goNext.length === 0) return;
    const names = goNext.map(latestOf).map(readStanding);
    store.getState().notify(
      'warning',
      DRAFT_WORDS.crowded(goNext.length),
      names.flatMap((read) => (read.ok ? [read.build.name] : [])),
    );
  }

  function bringBack(record: NeckRecord): boolean {
    const { build, replaceBuild, notify } = store.getState();
    const read = readStanding(latestOf(record));
    if (!read.ok) return false;
    from = record;
    // Nothing to tell when it is there already.
    if (sameBuild(build, read.build)) return true;
    replaceBuild(read.build, DRAFT_WORDS.stepRestore);
    begin(store.getState().build);
    notify('info', DRAFT_WORDS.restored(read.build.name, formatWhen(latestOf(record).at, around.now())));
    return true;
  }

  /** The record that this tab had on its bench, or the one that goes on from it. */
  function ofThisTab(id: string): NeckRecord | null {
    return journal.read(id) ?? journal.all().find(({ before, left }) => left === null && before.includes(id)) ?? null;
  }

  async function restore(fromOthers: boolean): Promise<void> {
    begin(store.getState().build);
    const draft = inTab((tab) => tab.getItem(OLD_TAB_KEY));
    const known = inTab((tab) => tab.getItem(TAB_KEY)) ?? (draft === null ? null : idOfDraft(draft));
    const own = known === null ? null : ofThisTab(known);
    if (own && bringBack(own)) return;
    if (known !== null || !fromOthers) return;
    const onBenches = journal.all().filter(({ left }) => left === null);
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
    const all = [...[...records.values()].filter(({ id }) => unwritten.has(id) && !known.has(id)), ...stored];
    const others = all.filter(({ id }) => id !== neck && id !== from?.id);
    if (others.length === 0) return [];
    const { ids, isCertain } = await around.open();
    const here = records.get(neck);
    return others
      .filter((record) => record.left !== null || !ids.has(record.page) || record.page === around.page)
      .filter((record) => !here || !holdsAll(here, record))
      .map((record) => ({
        record,
        latest: readStanding(latestOf(record)),
        mayBeOpen: record.left === null && !record.isClosed && !isCertain,
      }));
  }

  function follow(): () => void {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let kept = ownBuild(store.getState());
    if (neck === '') begin(kept);
    if (from) {
      take(kept);
      write();
    }
    function flush(): void {
      clearTimeout(timer);
      timer = undefined;
      const build = ownBuild(store.getState());
      if (build !== kept && !sameBuild(build, kept)) take(build);
      kept = build;
      write();
    }
    keepLast = flush;
    let placed = store.getState().necksPlaced;
    const stop = store.subscribe((state, before) => {
      const build = ownBuild(state);
      const was = ownBuild(before);
      const isAnother = state.necksPlaced !== placed;
      placed = state.necksPlaced;
      if (build === was) return;
      const known = necks.get(build) ?? (isAnother ? undefined : neck);
      if (known === neck) {
        necks.set(build, neck);
        timer ??= setTimeout(flush, REST_MS);
        return;
      }
      clearTimeout(timer);
      timer = undefined;
      kept = build;
      exchange(was, build, known);
    });
    function mark(isClosed: boolean): void {
      const record = records.get(neck);
      if (record && record.isClosed !== isClosed) put({ ...record, isClosed });
      write();
    }
    const onLeave = (): void => {
      flush();
      mark(true);
    };
    const onBack = ({ persisted }: PageTransitionEvent): void => {
      if (persisted) mark(false);
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

  return {
    journal,
    restore,
    follow,
    left,
    keepNow: () => {
      keepLast();
      return told;
    },
    current: () => records.get(neck) ?? null,
    discard: (id) => {
      records.delete(id);
      unwritten.delete(id);
      journal.remove(id);
    },
  };
}
