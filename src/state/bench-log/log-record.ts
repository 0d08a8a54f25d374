/**
 * The bench log as it is stored: one record. What cannot be read in it stays as it is.
 *
 *   version 1   entries without ids or circumstances; each gets the id that its content gives, the same on every device.
 *               Bite factors that were taken over, which narrowed the band of every build that happened to have one
 *   version 2   entries as they are in mechanics/bench-log/entry.ts, and references to them that were accepted
 */
import { idOf } from '../device/id-of.ts';
import { contentProblems, entryProblems } from '../../mechanics/bench-log/entry-problems.ts';
import { byDate, UNSAID, type LogEntry } from '../../mechanics/bench-log/entry.ts';
import { withContentId } from '../../mechanics/bench-log/identity.ts';
import type { BiteReference, GripReference } from '../../neck/bite-reference.ts';

const VERSION = 2;

export interface LogRecord {
  readonly version: typeof VERSION;
  readonly entries: readonly unknown[];
  readonly adopted: readonly BiteReference[];
  /** References to strips and readings that were accepted. */
  readonly grips: readonly GripReference[];
  /** Bite factors that version 1 took from the log, without saying from which entries. */
  readonly earlier: readonly number[];
}

const EMPTY_RECORD: LogRecord = { version: VERSION, entries: [], adopted: [], grips: [], earlier: [] };

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function isAdopted(value: unknown): value is BiteReference {
  if (!isObject(value) || typeof value['hash'] !== 'string' || !Array.isArray(value['measurements'])) return false;
  return (
    value['measurements'].every((id) => typeof id === 'string') &&
    [value['factor'], value['logSpread'], value['necks']].every((n) => typeof n === 'number' && n > 0)
  );
}

export function isAcceptedGrip(value: unknown): value is GripReference {
  if (!isObject(value) || typeof value['hash'] !== 'string' || !Array.isArray(value['documents'])) return false;
  return (value['documents'] as readonly unknown[]).every(
    (one) => isObject(one) && ['kind', 'id', 'hash'].every((key) => typeof one[key] === 'string'),
  );
}

/** Factors that version 1 noted when they were taken from the log. */
function factorsOf(adopted: readonly unknown[]): number[] {
  return adopted
    .map((value) => (isObject(value) ? value['biteFactor'] : undefined))
    .filter((factor): factor is number => typeof factor === 'number' && factor > 0);
}

/** Entries that were found sound once: they never change. */
const sound = new WeakSet<object>();

function isEntry(value: unknown): value is LogEntry {
  if (!isObject(value)) return false;
  if (sound.has(value)) return true;
  if (entryProblems(value as unknown as LogEntry).length > 0) return false;
  sound.add(value);
  return true;
}

/** An entry of version 1 with what it lacks; anything that is none stays as it is. */
function withId(value: unknown): unknown {
  if (!isObject(value) || 'id' in value) return value;
  const content = { ...UNSAID, ...(value as unknown as LogEntry) };
  return contentProblems(content).length > 0 ? value : withContentId(content);
}

const SINCE = Object.keys(UNSAID) as readonly (keyof typeof UNSAID)[];

/**
 * An entry of a release that asked for less, with what that means: one from before the shape of studs was asked for was
 * predicted under the earlier law of the grip, and nothing else was read on one from before that was asked for.
 */
function withSince(value: unknown): unknown {
  return !isObject(value) || SINCE.every((key) => key in value) ? value : { ...UNSAID, ...value };
}

function numbersIn(value: unknown): number[] {
  return Array.isArray(value) ? value.filter((each): each is number => typeof each === 'number') : [];
}

/** @returns null for a record of a newer release, or of something else: it must not be written over */
export function recordOf(stored: unknown): LogRecord | null {
  if (stored === undefined) return EMPTY_RECORD;
  if (!isObject(stored) || !Array.isArray(stored['entries'])) return null;
  const { version } = stored;
  if (version !== 1 && version !== VERSION) return null;
  const entries = stored['entries'] as readonly unknown[];
  const adopted: unknown[] = Array.isArray(stored['adopted']) ? stored['adopted'] : [];
  return {
    version: VERSION,
    entries: version === 1 ? entries.map(withId) : entries.map(withSince),
    adopted: adopted.filter(isAdopted),
    grips: Array.isArray(stored['grips']) ? (stored['grips'] as readonly unknown[]).filter(isAcceptedGrip) : [],
    earlier: version === 1 ? factorsOf(adopted) : numbersIn(stored['earlier']),
  };
}

/** The entries that can be used, in the order of their dates. */
export function readableEntries(record: LogRecord): LogEntry[] {
  return byDate(record.entries.filter(isEntry));
}

/**
 * Takes some entries out and puts others in. Each is found by its id, so that a change can be made to a list that another
 * window has changed meanwhile; one that is there already is not put in twice. Entries must be free of problems.
 */
export function changedRecord(record: LogRecord, out: readonly LogEntry[], into: readonly LogEntry[]): LogRecord {
  const gone = new Set<unknown>(out.map(({ id }) => id));
  const left = record.entries.filter((entry) => !gone.has(idOf(entry)));
  const there = new Set(left.map(idOf));
  const fresh = into.filter(({ id }) => !there.has(id));
  for (const entry of fresh) sound.add(entry);
  return { ...record, entries: [...left, ...fresh] };
}
