/** The library as the page sees it: what is in it, what went wrong, and what other windows changed. */
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Build } from '../../neck/build.ts';
import { writeCollection, type CollectedBuild } from '../share/file.ts';
import { sameBuild } from '../history.ts';
import type { BackbowStore } from '../store.ts';
import { followBenchEntry } from './bench-entry.ts';
import { buildOf } from './entry.ts';
import { createLibrary, type Imported, type Kept, type Library } from './library.ts';
import { deviceStorage } from './storage.ts';
import type { Done, LibraryEntry, LibraryTrouble } from './types.ts';

export interface LibraryState {
  /** Null before it was read. */
  readonly entries: readonly LibraryEntry[] | null;
  readonly strange: number;
  /** Why the last reading or change did not succeed. */
  readonly trouble: LibraryTrouble | null;
}

export interface PageLibrary {
  readonly state: StoreApi<LibraryState>;
  readonly refresh: () => Promise<void>;
  /** Reads again what was changed past the library, and has other windows do so. */
  readonly changedBeside: () => Promise<void>;
  /** Keeps the neck on the bench: over the one that it was opened from, or as a new one. */
  readonly keepBench: (picture: string | null, asNew: boolean) => Promise<Done<Kept>>;
  /** Id of the neck that the one on the bench was opened from or kept as, while that one is still there. */
  readonly benchId: () => string | null;
  /** The same, if the bench holds exactly what is kept. */
  readonly benchEntry: () => LibraryEntry | null;
  /** Puts a neck on the bench, as one step that undo takes back. @returns what is wrong with it, if anything is */
  readonly open: (entry: LibraryEntry, label: string) => ReturnType<typeof buildOf>;
  readonly rename: (id: string, name: string) => Promise<Done<LibraryEntry>>;
  readonly duplicate: (id: string) => Promise<Done<LibraryEntry>>;
  readonly setDeleted: (id: string, deleted: boolean) => Promise<Done<LibraryEntry>>;
  readonly forgetDeleted: () => Promise<Done<null>>;
  readonly import: (builds: readonly CollectedBuild[]) => Promise<Done<Imported>>;
  /** Every neck that can be read, as a file; and the names of those that cannot. */
  readonly exportAll: () => { readonly text: string; readonly count: number; readonly unreadable: readonly string[] };
}

/** Tells the other windows that something has changed. */
export interface Channel {
  readonly tell: () => void;
  readonly listen: (heard: () => void) => void;
}

const CHANNEL = 'backbow-library';

function browserChannel(): Channel {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined, listen: () => undefined };
  const channel = new BroadcastChannel(CHANNEL);
  return {
    tell: () => channel.postMessage('changed'),
    listen: (heard) => channel.addEventListener('message', heard),
  };
}

/** Pages that are not secure have no ids of the browser's own making. */
const newId = (now: number): string => crypto.randomUUID?.() ?? `${now}-${Math.random().toString(36).slice(2)}`;

/** Revisions as this window last saw or wrote them: what it may write over. */
function createSeen() {
  const revisions = new Map<string, number>();
  const saw = ({ id, revision }: LibraryEntry): void => void revisions.set(id, revision);
  return {
    saw,
    revisionOf: (id: string) => revisions.get(id),
    /** What this window changes itself is no change by another one. */
    async ownChange(outcome: Promise<Done<LibraryEntry>>): Promise<Done<LibraryEntry>> {
      const done = await outcome;
      if (done.ok && revisions.get(done.value.id) === done.value.revision - 1) saw(done.value);
      return done;
    },
  };
}

function exported(entries: readonly LibraryEntry[]): ReturnType<PageLibrary['exportAll']> {
  const unreadable: string[] = [];
  const builds: CollectedBuild[] = [];
  for (const entry of entries) {
    if (entry.deletedAt !== null) continue;
    const checked = buildOf(entry);
    if (checked.ok) builds.push({ build: checked.build, changedAt: entry.changedAt });
    else unreadable.push(entry.name);
  }
  return { text: writeCollection(builds), count: builds.length, unreadable };
}

export function createPageLibrary(
  store: BackbowStore,
  storage = deviceStorage(),
  channel: Channel = browserChannel(),
  now: () => number = () => Date.now(),
): PageLibrary {
  const state = createStore<LibraryState>(() => ({ entries: null, strange: 0, trouble: null }));
  const bench = followBenchEntry(store);
  const seen = createSeen();
  const library: Library = createLibrary(storage, {
    now,
    newId: () => newId(now()),
    changed: channel.tell,
  });

  async function refresh(): Promise<void> {
    const read = await library.read();
    if (read.ok) state.setState({ ...read.value, trouble: null });
    else state.setState({ trouble: read.trouble });
  }

  /** Shows what became of a change. */
  async function settled<Value>(outcome: Promise<Done<Value>>): Promise<Done<Value>> {
    const done = await outcome;
    if (done.ok || done.trouble === 'gone') await refresh();
    else state.setState({ trouble: done.trouble });
    return done;
  }

  channel.listen(() => {
    if (state.getState().entries !== null) void refresh();
  });

  const entryById = (id: string | null): LibraryEntry | null =>
    state.getState().entries?.find((entry) => entry.id === id && entry.deletedAt === null) ?? null;

  function current(build: Build): LibraryEntry | null {
    const entry = entryById(bench.current());
    const checked = entry && buildOf(entry);
    return checked?.ok && sameBuild(checked.build, build) ? entry : null;
  }

  async function keepBench(picture: string | null, asNew: boolean): Promise<Done<Kept>> {
    const { build } = store.getState();
    const id = asNew ? null : bench.current();
    const revision = id === null ? undefined : seen.revisionOf(id);
    const kept =
      id === null || revision === undefined
        ? await library.keep(build, picture)
        : await library.keepOver({ id, revision }, build, picture);
    if (kept.ok) {
      const { entry } = kept.value;
      seen.saw(entry);
      if (store.getState().build === build) bench.set(entry.id);
    }
    return kept;
  }

  return {
    state,
    refresh,
    changedBeside: () => {
      channel.tell();
      return refresh();
    },
    benchEntry: () => current(store.getState().build),
    keepBench: (picture, asNew) => settled(keepBench(picture, asNew)),
    open: (entry, label) => {
      const checked = buildOf(entry);
      if (!checked.ok) return checked;
      store.getState().replaceBuild(checked.build, label);
      seen.saw(entry);
      bench.set(entry.id);
      return checked;
    },
    benchId: () => entryById(bench.current())?.id ?? null,
    rename: (id, name) => settled(seen.ownChange(library.rename(id, name))),
    duplicate: (id) => settled(library.duplicate(id)),
    setDeleted: (id, deleted) => settled(seen.ownChange(library.setDeleted(id, deleted))),
    forgetDeleted: () => {
      const { entries } = state.getState();
      const ids = (entries ?? []).filter(({ deletedAt }) => deletedAt !== null).map(({ id }) => id);
      return settled(library.forget(ids));
    },
    import: (builds) => settled(library.import(builds)),
    exportAll: () => exported(state.getState().entries ?? []),
  };
}
