/** The library in a backup: every neck with its picture, deleted ones too. */
import { MOST_NAME } from '../../neck/build.ts';
import { MOST_PROJECT_BYTES } from '../../neck/file.ts';
import { troubleOf } from '../device/trouble.ts';
import { sameBuild } from '../history.ts';
import { buildOf, entryOf } from '../library/entry.ts';
import { MOST_DELETED, type LibraryEntry } from '../library/types.ts';
import type { LibraryRecords } from './library-records.ts';
import { checkedList, EMPTY_TALLY, idBeside, isObject, isRecordId, isText, type Counted, type Part } from './part.ts';

const MOST_NECKS = 5000;
const MOST_PICTURE_CHARACTERS = 2_000_000;
/** Pictures of dots only: others can hold more than a picture. */
const PICTURE = /^data:image\/(png|jpeg|webp);base64,[A-Za-z0-9+/=]*$/;

/** One record that is put in, and what was there before. */
interface Writing {
  readonly entry: LibraryEntry;
  readonly was: LibraryEntry | undefined;
}

function neckOf(value: unknown): LibraryEntry | null {
  const entry = entryOf(value);
  if (entry === null || !isObject(value)) return null;
  const { id, name, project, picture, createdAt, revision, deletedAt } = value;
  const isSound =
    isRecordId(id) &&
    isText(name, MOST_NAME) &&
    isText(project, MOST_PROJECT_BYTES) &&
    (picture === null || (isText(picture, MOST_PICTURE_CHARACTERS) && PICTURE.test(picture))) &&
    entry.createdAt === createdAt &&
    Number.isSafeInteger(revision) &&
    entry.deletedAt === deletedAt;
  return isSound ? entry : null;
}

function sameNeck(a: LibraryEntry, b: LibraryEntry): boolean {
  if (a.name !== b.name) return false;
  if (a.project === b.project) return true;
  const [one, other] = [buildOf(a), buildOf(b)];
  return one.ok && other.ok && sameBuild(one.build, other.build);
}

const contentOf = ({ name, project }: LibraryEntry): string => JSON.stringify([name, project]);

function merged(stored: ReadonlyMap<string, unknown>, coming: readonly LibraryEntry[]) {
  const tally: Counted = { ...EMPTY_TALLY };
  const writings: Writing[] = [];
  const there = new Map(stored);
  const deletedHere = [...stored.values()].filter((value) => typeof entryOf(value)?.deletedAt === 'number').length;
  let placesLeft = Math.max(0, MOST_DELETED - deletedHere);

  function put(entry: LibraryEntry, how: 'fresh' | 'beside'): void {
    if (entry.deletedAt !== null && (placesLeft -= 1) < 0) {
      tally.noPlace += 1;
      return;
    }
    there.set(entry.id, entry);
    writings.push({ entry, was: undefined });
    tally[how] += 1;
  }

  /** @returns whether it is settled, because the same neck is there under this id */
  function meet(entry: LibraryEntry): boolean {
    const was = entryOf(there.get(entry.id));
    if (!was || !sameNeck(was, entry)) return false;
    if (was.deletedAt === null || entry.deletedAt !== null) tally.known += 1;
    else {
      writings.push({ entry: { ...was, deletedAt: null, revision: was.revision + 1 }, was });
      tally.back += 1;
    }
    return true;
  }

  // Of the deleted ones the latest come first, as the library keeps them.
  for (const entry of coming.toSorted((a, b) => (b.deletedAt ?? Infinity) - (a.deletedAt ?? Infinity) || 0)) {
    if (!there.has(entry.id)) put(entry, 'fresh');
    else if (!meet(entry)) {
      const beside = { ...entry, id: idBeside(entry.id, contentOf(entry)) };
      if (!there.has(beside.id)) put(beside, 'beside');
      // What came in once and was changed since is left as it is now.
      else if (!meet(beside)) tally.known += 1;
    }
  }
  return { tally, writings };
}

const isUntouched = (stored: unknown, { entry }: Writing): boolean => {
  const now = entryOf(stored);
  return now !== null && now.revision === entry.revision && now.deletedAt === entry.deletedAt && sameNeck(now, entry);
};

export function necksPart(storage: LibraryRecords): Part {
  async function add(coming: readonly LibraryEntry[]) {
    let { tally, writings } = merged(new Map(), []);
    await storage.changeAll((stored) => {
      ({ tally, writings } = merged(stored, coming));
      return new Map(writings.map(({ entry }) => [entry.id, entry]));
    });
    const takeBack = () =>
      storage.changeAll((stored) => {
        const untouched = writings.filter((writing) => isUntouched(stored.get(writing.entry.id), writing));
        return new Map(
          untouched.map(({ entry, was }) => [entry.id, was && { ...was, revision: entry.revision + 1 }] as const),
        );
      });
    return { tally, takeBack };
  }

  return {
    id: 'necks',
    places: ['backbow-library'],
    save: async () => {
      try {
        const records = await storage.all();
        const value = records.map((record) => neckOf(entryOf(record))).filter((entry) => entry !== null);
        return { value, count: value.length, leftOut: records.length - value.length, trouble: null };
      } catch (error) {
        return { value: [], count: 0, leftOut: 0, trouble: troubleOf(error) };
      }
    },
    check: (value) =>
      checkedList(value, {
        part: 'necks',
        most: MOST_NECKS,
        read: neckOf,
        idOf: ({ id }) => id,
        foresee: async (items) => {
          const there = (await storage.all()).flatMap((record) => (isObject(record) ? [[record['id'], record]] : []));
          return merged(new Map(there as [string, unknown][]), items).tally;
        },
        add,
      }),
  };
}
