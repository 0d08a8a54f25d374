/**
 * The bench log in a backup: the entries, and what was accepted from them. An entry that says something else here stays as
 * it is here: it may have been corrected since, and both of them would count as two measurements of one neck.
 */
import { compareEntries } from '../../mechanics/bench-log/compare.ts';
import { entryProblems } from '../../mechanics/bench-log/entry-problems.ts';
import { LOG_NUMBERS, LOG_TEXTS, UNSAID, type LogEntry } from '../../mechanics/bench-log/entry.ts';
import { contentHash } from '../../mechanics/bench-log/identity.ts';
import { MOST_ROWS } from '../../mechanics/bench-log/read-csv.ts';
import { MOST_REFERRED, type BiteReference, type GripReference } from '../../neck/bite-reference.ts';
import { MOST_ADOPTED } from '../bench-log/adopted.ts';
import {
  changedRecord,
  isAcceptedGrip,
  isAdopted,
  readableEntries,
  recordOf,
  type LogRecord,
} from '../bench-log/log-record.ts';
import type { LogStorage } from '../bench-log/log-storage.ts';
import type { BackbowStore } from '../store.ts';
import { checkedList, EMPTY_TALLY, isObject, isText, NewerRecord, type CheckedPart, type Part } from './part.ts';

/** Factors of an earlier release, of which there are few. */
const MOST_EARLIER = 1000;
const PLACES = ['backbow-bench-log'];
const MOST_HASH = 64;

const COLUMNS = [...LOG_TEXTS, ...LOG_NUMBERS].map(({ id }) => id);

/** What an entry says, and nothing else. */
function logEntryOf(value: unknown): LogEntry | null {
  if (!isObject(value)) return null;
  // A backup of an earlier release says nothing of what was not asked for then.
  const entry: Record<string, unknown> = 'studShape' in value ? { ...UNSAID, ...value } : value;
  if (entryProblems(entry as unknown as LogEntry).length > 0) return null;
  return Object.fromEntries(COLUMNS.map((id) => [id, entry[id]])) as unknown as LogEntry;
}

function recordIn(stored: unknown): LogRecord {
  const record = recordOf(stored);
  if (!record) throw new NewerRecord();
  return record;
}

/** What the store could not keep lives in the page alone, and is saved from there. */
async function logOf(store: BackbowStore) {
  await store.getState().readBenchLog();
  const { benchLog, adoptedBites, earlierBites, acceptedGrips, unreadableEntries, logTrouble } = store.getState();
  return { entries: benchLog ?? [], adoptedBites, earlierBites, acceptedGrips, unreadableEntries, logTrouble };
}

export function entriesPart(storage: LogStorage, store: BackbowStore): Part {
  async function add(coming: readonly LogEntry[]) {
    let compared = compareEntries([], []);
    await storage.change((stored) => {
      const before = recordIn(stored);
      compared = compareEntries(readableEntries(before), coming);
      return changedRecord(before, [], compared.fresh);
    });
    const { fresh } = compared;
    const takeBack = () =>
      storage.change((stored) => {
        const before = recordIn(stored);
        const now = new Map(readableEntries(before).map((entry) => [entry.id, contentHash(entry)]));
        const untouched = fresh.filter((entry) => now.get(entry.id) === contentHash(entry));
        return changedRecord(before, untouched, []);
      });
    return { tally: tallyOf(compared), takeBack };
  }

  return {
    id: 'log',
    places: PLACES,
    save: async () => {
      const { entries, unreadableEntries, logTrouble } = await logOf(store);
      // Where the device keeps nothing, the entries of this page are all that there is.
      const trouble = entries.length === 0 ? logTrouble : null;
      return { value: entries, count: entries.length, leftOut: unreadableEntries, trouble };
    },
    check: (value) =>
      checkedList(value, {
        part: 'log',
        most: MOST_ROWS,
        read: logEntryOf,
        idOf: ({ id }) => id,
        foresee: async (items) => tallyOf(compareEntries(readableEntries(recordIn(await storage.read())), items)),
        add,
      }),
  };
}

function tallyOf({ fresh, known, changed }: ReturnType<typeof compareEntries>) {
  return { ...EMPTY_TALLY, fresh: fresh.length, known, stays: changed.length };
}

interface Accepted {
  readonly adopted: readonly BiteReference[];
  readonly earlier: readonly number[];
  /** Of backups since strips can be accepted. */
  readonly grips: readonly GripReference[];
}

function checkAccepted(value: unknown): Accepted | null {
  if (value === undefined) return { adopted: [], earlier: [], grips: [] };
  if (!isObject(value)) return null;
  const { adopted, earlier, grips = [] } = value;
  if (!Array.isArray(adopted) || !Array.isArray(earlier) || !Array.isArray(grips)) return null;
  if (adopted.length > MOST_ADOPTED || grips.length > MOST_ADOPTED || earlier.length > MOST_EARLIER) return null;
  const isSound =
    adopted.every((bite: unknown) => isAdopted(bite) && isText(bite.hash, MOST_HASH) && fits(bite)) &&
    earlier.every((factor: unknown) => typeof factor === 'number' && factor > 0) &&
    grips.every((grip: unknown) => isAcceptedGrip(grip) && isText(grip.hash, MOST_HASH) && gripFits(grip));
  return isSound ? { adopted, earlier, grips } : null;
}

const fits = ({ measurements }: BiteReference): boolean =>
  measurements.length <= MOST_REFERRED && measurements.every((id) => id.length <= MOST_HASH);

const gripFits = ({ documents }: GripReference): boolean =>
  documents.length <= MOST_REFERRED &&
  documents.every(({ id, hash }) => id.length <= MOST_HASH && hash.length <= MOST_HASH);

function mergeAccepted(before: LogRecord, { adopted, earlier, grips: comingGrips }: Accepted) {
  const gripsHere = new Set(before.grips.map(({ hash }) => hash));
  const otherGrips = comingGrips.filter(({ hash }) => !gripsHere.has(hash));
  const grips = otherGrips.slice(0, Math.max(0, MOST_ADOPTED - before.grips.length));
  const here = new Set(before.adopted.map(({ hash }) => hash));
  const others = adopted.filter(({ hash }) => !here.has(hash));
  const bites = others.slice(0, Math.max(0, MOST_ADOPTED - before.adopted.length));
  const factors = [...new Set(earlier)].filter((factor) => !before.earlier.includes(factor));
  const fresh = bites.length + factors.length + grips.length;
  const noPlace = others.length - bites.length + (otherGrips.length - grips.length);
  const known = adopted.length + earlier.length + comingGrips.length - fresh - noPlace;
  return { bites, factors, grips, tally: { ...EMPTY_TALLY, fresh, known, noPlace } };
}

export function acceptedPart(storage: LogStorage, store: BackbowStore): Part {
  async function add(coming: Accepted) {
    let merge = mergeAccepted(recordIn(undefined), coming);
    await storage.change((stored) => {
      const before = recordIn(stored);
      merge = mergeAccepted(before, coming);
      return {
        ...before,
        adopted: [...before.adopted, ...merge.bites],
        earlier: [...before.earlier, ...merge.factors],
        grips: [...before.grips, ...merge.grips],
      };
    });
    const { bites, factors, grips, tally } = merge;
    const gripHashes = new Set(grips.map(({ hash }) => hash));
    const takeBack = () =>
      storage.change((stored) => {
        const before = recordIn(stored);
        const hashes = new Set(bites.map(({ hash }) => hash));
        return {
          ...before,
          adopted: before.adopted.filter(({ hash }) => !hashes.has(hash)),
          earlier: before.earlier.filter((factor) => !factors.includes(factor)),
          grips: before.grips.filter(({ hash }) => !gripHashes.has(hash)),
        };
      });
    return { tally, takeBack };
  }

  return {
    id: 'accepted',
    places: PLACES,
    save: async () => {
      const { adoptedBites: adopted, earlierBites: earlier, acceptedGrips: grips } = await logOf(store);
      // Why the log could not be read is said of its entries.
      const count = adopted.length + earlier.length + grips.length;
      return { value: { adopted, earlier, grips }, count, leftOut: 0, trouble: null };
    },
    check: (value): CheckedPart => {
      const accepted = checkAccepted(value);
      if (!accepted) return { ok: false, fault: { part: 'accepted', place: 0, code: 'wrong-kind' } };
      return {
        ok: true,
        count: accepted.adopted.length + accepted.earlier.length + accepted.grips.length,
        foresee: async () => mergeAccepted(recordIn(await storage.read()), accepted).tally,
        add: () => add(accepted),
      };
    },
  };
}
