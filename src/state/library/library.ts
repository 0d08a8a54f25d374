/**
 * The library: necks kept on this device. Every change is one step on one record, made against what is stored at that
 * moment; a record that another window has changed meanwhile is left alone and this window's neck is kept beside it.
 */
import type { Build } from '../../neck/build.ts';
import { writeProject } from '../../neck/file.ts';
import { sameBuild } from '../history.ts';
import type { CollectedBuild } from '../share/file.ts';
import { buildOf, entryOf, freeName } from './entry.ts';
import { troubleOf, type StorageTrouble } from '../device/trouble.ts';
import type { LibraryStorage } from './storage.ts';
import { MOST_DELETED, type Done, type LibraryEntry } from './types.ts';

export interface LibraryContents {
  /** Newest change first; deleted ones too. */
  readonly entries: readonly LibraryEntry[];
  /** Records that are no necks; they are left where they are. */
  readonly strange: number;
}

export interface Kept {
  readonly entry: LibraryEntry;
  /** Another window had changed the neck that should have been written over; this one is kept beside it. */
  readonly besideAnother: boolean;
}

export interface Imported {
  readonly added: readonly LibraryEntry[];
  /** Names of builds that were there already, the same in everything. */
  readonly alreadyThere: readonly string[];
  /** How many could not be kept, and why; null when all were. */
  readonly notKept: { readonly count: number; readonly trouble: StorageTrouble } | null;
}

export interface Library {
  read(): Promise<Done<LibraryContents>>;
  /** Keeps a build as a new neck. */
  keep(build: Build, picture: string | null): Promise<Done<Kept>>;
  /** Keeps a build in the place of an earlier state of it. @param over as this window last saw it */
  keepOver(over: Pick<LibraryEntry, 'id' | 'revision'>, build: Build, picture: string | null): Promise<Done<Kept>>;
  rename(id: string, name: string): Promise<Done<LibraryEntry>>;
  duplicate(id: string): Promise<Done<LibraryEntry>>;
  /** Marks as deleted, or takes the mark away. */
  setDeleted(id: string, deleted: boolean): Promise<Done<LibraryEntry>>;
  /** Deletes for good. */
  forget(ids: readonly string[]): Promise<Done<null>>;
  import(builds: readonly CollectedBuild[]): Promise<Done<Imported>>;
}

interface Surroundings {
  readonly now: () => number;
  readonly newId: () => string;
  /** Told after every change. */
  readonly changed: () => void;
}

async function attempt<Value>(work: () => Promise<Done<Value>>): Promise<Done<Value>> {
  try {
    return await work();
  } catch (error) {
    return { ok: false, trouble: troubleOf(error) };
  }
}

const done = <Value>(value: Value): Done<Value> => ({ ok: true, value });
const GONE = { ok: false, trouble: 'gone' } as const;

function freshEntry(
  { id, at }: { readonly id: string; readonly at: number },
  build: Build,
  picture: string | null,
  changedAt = at,
): LibraryEntry {
  const project = writeProject(build);
  return { id, name: build.name, createdAt: at, changedAt, revision: 1, project, picture, deletedAt: null };
}

/** A build that cannot be read stays as it is; only the list then calls it otherwise. */
function projectNamed(entry: LibraryEntry, name: string): string {
  const read = buildOf(entry);
  return read.ok ? writeProject({ ...read.build, name }) : entry.project;
}

const isThere = ({ deletedAt }: LibraryEntry): boolean => deletedAt === null;

/** Changes one neck, where it is one. @returns what it is now; undefined when it was left as it is */
async function changeEntry(
  storage: LibraryStorage,
  id: string,
  change: (entry: LibraryEntry) => LibraryEntry | undefined,
): Promise<LibraryEntry | undefined> {
  let now: LibraryEntry | undefined;
  await storage.change(id, (stored) => {
    const entry = entryOf(stored);
    const wanted = entry ? change(entry) : undefined;
    now = entry && wanted ? { ...wanted, revision: entry.revision + 1 } : undefined;
    return now;
  });
  return now;
}

/** What is stored; of the deleted ones those that are one too many go. */
async function contentsOf(storage: LibraryStorage): Promise<LibraryContents> {
  const records = await storage.all();
  const entries = records.map(entryOf);
  const known = entries.filter((entry) => entry !== null);
  const deleted = known.filter(({ deletedAt }) => deletedAt !== null).sort((a, b) => b.deletedAt! - a.deletedAt!);
  const over = new Set(deleted.slice(MOST_DELETED));
  await Promise.all(Array.from(over, ({ id }) => storage.remove(id)));
  return {
    entries: known.filter((entry) => !over.has(entry)).sort((a, b) => b.changedAt - a.changedAt),
    strange: entries.length - known.length,
  };
}

/** Adds what is not there already, one after the other, as long as there is room. */
async function importBeside(
  entries: readonly LibraryEntry[],
  builds: readonly CollectedBuild[],
  add: (collected: CollectedBuild) => Promise<LibraryEntry>,
): Promise<Imported> {
  const there = entries.filter(isThere).flatMap((entry) => {
    const checked = buildOf(entry);
    return checked.ok ? [checked.build] : [];
  });
  const added: LibraryEntry[] = [];
  const alreadyThere: string[] = [];
  for (const [index, collected] of builds.entries()) {
    const { build } = collected;
    if (there.some((other) => sameBuild(other, build))) {
      alreadyThere.push(build.name);
      continue;
    }
    try {
      added.push(await add(collected));
    } catch (error) {
      return { added, alreadyThere, notKept: { count: builds.length - index, trouble: troubleOf(error) } };
    }
    there.push(build);
  }
  return { added, alreadyThere, notKept: null };
}

export function createLibrary(storage: LibraryStorage, { now, newId, changed }: Surroundings): Library {
  const fresh = (build: Build, picture: string | null, changedAt?: number): LibraryEntry =>
    freshEntry({ id: newId(), at: now() }, build, picture, changedAt);

  async function add(entry: LibraryEntry): Promise<LibraryEntry> {
    await storage.change(entry.id, (stored) => (stored ? undefined : entry));
    return entry;
  }

  /** Changes a neck that is there. */
  async function alter(id: string, change: (entry: LibraryEntry) => LibraryEntry): Promise<Done<LibraryEntry>> {
    const altered = await changeEntry(storage, id, change);
    if (!altered) return GONE;
    changed();
    return done(altered);
  }

  /** Undefined when it is deleted or changed elsewhere: both then stay as they are. */
  const writeOver = (over: Pick<LibraryEntry, 'id' | 'revision'>, build: Build, picture: string | null) =>
    changeEntry(storage, over.id, (entry) => {
      if (!isThere(entry) || entry.revision !== over.revision) return undefined;
      const kept = { name: build.name, changedAt: now(), project: writeProject(build) };
      return { ...entry, ...kept, picture: picture ?? entry.picture };
    });

  function copyOf(entry: LibraryEntry, entries: readonly LibraryEntry[]): LibraryEntry {
    const name = freeName(entry.name, new Set(entries.filter(isThere).map((other) => other.name)));
    const at = now();
    return {
      ...entry,
      id: newId(),
      name,
      project: projectNamed(entry, name),
      createdAt: at,
      changedAt: at,
      revision: 1,
    };
  }

  return {
    read: () => attempt(async () => done(await contentsOf(storage))),

    keep: (build, picture) =>
      attempt(async () => {
        const entry = await add(fresh(build, picture));
        changed();
        return done({ entry, besideAnother: false });
      }),

    keepOver: (over, build, picture) =>
      attempt(async () => {
        const written = await writeOver(over, build, picture);
        const entry = written ?? (await add(fresh(build, picture)));
        changed();
        return done({ entry, besideAnother: written === undefined });
      }),

    rename: (id, name) => attempt(() => alter(id, (entry) => ({ ...entry, name, project: projectNamed(entry, name) }))),

    duplicate: (id) =>
      attempt(async () => {
        const { entries } = await contentsOf(storage);
        const entry = entries.find((candidate) => candidate.id === id);
        if (!entry) return GONE;
        const copy = await add(copyOf(entry, entries));
        changed();
        return done(copy);
      }),

    setDeleted: (id, deleted) => attempt(() => alter(id, (entry) => ({ ...entry, deletedAt: deleted ? now() : null }))),

    forget: (ids) =>
      attempt(async () => {
        for (const id of ids) await storage.remove(id);
        changed();
        return done(null);
      }),

    import: (builds) =>
      attempt(async () => {
        const { entries } = await contentsOf(storage);
        const imported = await importBeside(entries, builds, ({ build, changedAt }) =>
          add(fresh(build, null, changedAt ?? undefined)),
        );
        changed();
        return done(imported);
      }),
  };
}
