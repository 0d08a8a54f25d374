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

export function createLibrary(storage: LibraryStorage, { now, newId, changed }: Surroundings): Library {
  function fresh(build: Build, picture: string | null, changedAt = now()): LibraryEntry {
    const project = writeProject(build);
    return {
      id: newId(),
      name: build.name,
      createdAt: now(),
      changedAt,
      revision: 1,
      project,
      picture,
      deletedAt: null,
    };
  }

  async function add(entry: LibraryEntry): Promise<LibraryEntry> {
    await storage.change(entry.id, (stored) => (stored ? undefined : entry));
    return entry;
  }

  /** Changes a neck that is there. */
  async function alter(id: string, change: (entry: LibraryEntry) => LibraryEntry): Promise<Done<LibraryEntry>> {
    let altered: LibraryEntry | undefined;
    await storage.change(id, (stored) => {
      const entry = entryOf(stored);
      altered = entry ? { ...change(entry), revision: entry.revision + 1 } : undefined;
      return altered;
    });
    if (!altered) return GONE;
    changed();
    return done(altered);
  }

  async function read(): Promise<LibraryContents> {
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

  async function namesTaken(): Promise<Set<string>> {
    return new Set((await read()).entries.filter(({ deletedAt }) => deletedAt === null).map(({ name }) => name));
  }

  return {
    read: () => attempt(async () => done(await read())),

    keep: (build, picture) =>
      attempt(async () => {
        const entry = await add(fresh(build, picture));
        changed();
        return done({ entry, besideAnother: false });
      }),

    keepOver: (over, build, picture) =>
      attempt(async () => {
        let written: LibraryEntry | undefined;
        await storage.change(over.id, (stored) => {
          const entry = entryOf(stored);
          // Deleted or changed elsewhere: both stay as they are.
          if (!entry || entry.deletedAt !== null || entry.revision !== over.revision) return undefined;
          written = {
            ...entry,
            name: build.name,
            changedAt: now(),
            revision: entry.revision + 1,
            project: writeProject(build),
            picture: picture ?? entry.picture,
          };
          return written;
        });
        const besideAnother = written === undefined;
        const entry = written ?? (await add(fresh(build, picture)));
        changed();
        return done({ entry, besideAnother });
      }),

    rename: (id, name) =>
      attempt(() =>
        alter(id, (entry) => {
          const read = buildOf(entry);
          // A build that cannot be read keeps its record as it is; only the list calls it otherwise.
          return { ...entry, name, project: read.ok ? writeProject({ ...read.build, name }) : entry.project };
        }),
      ),

    duplicate: (id) =>
      attempt(async () => {
        const contents = await read();
        const entry = contents.entries.find((candidate) => candidate.id === id);
        if (!entry) return GONE;
        const name = freeName(entry.name, await namesTaken());
        const checked = buildOf(entry);
        const project = checked.ok ? writeProject({ ...checked.build, name }) : entry.project;
        const at = now();
        const copy = { ...entry, id: newId(), name, project, createdAt: at, changedAt: at, revision: 1 };
        await add(copy);
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
        const { entries } = await read();
        const there = entries
          .filter(({ deletedAt }) => deletedAt === null)
          .flatMap((entry) => {
            const checked = buildOf(entry);
            return checked.ok ? [checked.build] : [];
          });
        const added: LibraryEntry[] = [];
        const alreadyThere: string[] = [];
        let notKept: Imported['notKept'] = null;
        for (const [index, { build, changedAt }] of builds.entries()) {
          if (there.some((other) => sameBuild(other, build))) {
            alreadyThere.push(build.name);
            continue;
          }
          try {
            added.push(await add(fresh(build, null, changedAt ?? now())));
          } catch (error) {
            notKept = { count: builds.length - index, trouble: troubleOf(error) };
            break;
          }
          there.push(build);
        }
        changed();
        return done({ added, alreadyThere, notKept });
      }),
  };
}
