/** What a part of the device has to say for itself, so that it can go into a backup and come back. */
import { digestOf } from '../../neck/digest.ts';
import type { StorageTrouble } from '../device/trouble.ts';

export const PART_IDS = [
  'log',
  'accepted',
  'strips',
  'jobs',
  'stock',
  'matches',
  'lessons',
  'necks',
  'bench',
  'settings',
] as const;
export type PartId = (typeof PART_IDS)[number];

/** What becomes of what a file holds. */
export interface Tally {
  /** Not here: comes in. */
  readonly fresh: number;
  /** Here already, or deleted there. */
  readonly known: number;
  /** Here it says something else: it comes in beside that. */
  readonly beside: number;
  /** Here it says something else, and what is here stays. */
  readonly stays: number;
  /** Was deleted here: comes back. */
  readonly back: number;
  /** There is no place for it: of such only so many are kept, and those that are here go first. */
  readonly noPlace: number;
}

export const EMPTY_TALLY: Tally = { fresh: 0, known: 0, beside: 0, stays: 0, back: 0, noPlace: 0 };

export type Counted = { -readonly [Key in keyof Tally]: Tally[Key] };

/** Does anything change here? */
export const changes = ({ fresh, beside, back }: Tally): boolean => fresh + beside + back > 0;

/** Why something of a file is refused. `place` counts from 1; 0 is the part itself. */
export interface Fault {
  readonly part: PartId;
  readonly place: number;
  readonly code: 'wrong-kind' | 'too-many' | 'same-id';
}

export type PartTrouble = StorageTrouble | 'newer';

/** What is here goes into a file. */
export interface SavedPart {
  readonly value: unknown;
  readonly count: number;
  /** Records that this release cannot read; they stay where they are and are not in the file. */
  readonly leftOut: number;
  /** Why it could not be read from the device; null when it could. */
  readonly trouble: PartTrouble | null;
}

/** What was written. */
export interface Added {
  readonly tally: Tally;
  /** Takes out what was put in, as far as nothing else has changed it since. */
  readonly takeBack: () => Promise<void>;
}

/** What a file holds of a part, found sound. */
export interface SoundPart {
  readonly ok: true;
  readonly count: number;
  /** What `add` would do now. @throws what the device throws */
  readonly foresee: () => Promise<Tally>;
  /** Puts it in beside what is here, all of it or nothing. @throws what the device throws */
  readonly add: () => Promise<Added>;
}

export type CheckedPart = SoundPart | { readonly ok: false; readonly fault: Fault };

export interface Part {
  readonly id: PartId;
  /** Where it lies: keys of the text storage (those that end in "." begin many), names of databases. */
  readonly places: readonly string[];
  readonly save: () => Promise<SavedPart>;
  /** @param value what a file holds of it; undefined where it holds nothing */
  readonly check: (value: unknown) => CheckedPart;
}

/** A record that a newer release wrote: it is left alone. */
export class NewerRecord extends Error {}

export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export const isText = (value: unknown, most: number): value is string =>
  typeof value === 'string' && value.length <= most;

const ID_DIGITS = 12;
const BESIDE = new RegExp(`~[0-9a-f]{${ID_DIGITS}}$`);
/** Longest id in a file, in characters. */
export const MOST_ID = 120;

export const isRecordId = (value: unknown): value is string => isText(value, MOST_ID) && value !== '';

/** The id for what comes in beside something else: the same content always gets the same one, so it comes in once. */
export function idBeside(id: string, content: string): string {
  return `${id.replace(BESIDE, '')}~${digestOf(content).slice(0, ID_DIGITS)}`;
}

/** A list of records, each with an id of its own. */
interface RecordList<Item> {
  readonly part: PartId;
  /** Most of them that a file may hold. */
  readonly most: number;
  /** Null for what is no such record. */
  readonly read: (value: unknown) => Item | null;
  readonly idOf: (item: Item) => string;
  readonly foresee: (items: readonly Item[]) => Promise<Tally>;
  readonly add: (items: readonly Item[]) => Promise<Added>;
}

function itemsOf<Item>(value: unknown, { part, most, read, idOf }: RecordList<Item>): readonly Item[] | Fault {
  if (value === undefined) return [];
  if (!Array.isArray(value)) return { part, place: 0, code: 'wrong-kind' };
  if (value.length > most) return { part, place: 0, code: 'too-many' };
  const items: Item[] = [];
  const ids = new Set<string>();
  for (const [index, each] of (value as unknown[]).entries()) {
    const item = read(each);
    if (item === null) return { part, place: index + 1, code: 'wrong-kind' };
    if (ids.has(idOf(item))) return { part, place: index + 1, code: 'same-id' };
    ids.add(idOf(item));
    items.push(item);
  }
  return items;
}

/** A part that is a list of records. @param value what a file holds of it; undefined where it holds nothing */
export function checkedList<Item>(value: unknown, list: RecordList<Item>): CheckedPart {
  const items = itemsOf(value, list);
  if ('code' in items) return { ok: false, fault: items };
  return { ok: true, count: items.length, foresee: () => list.foresee(items), add: () => list.add(items) };
}
