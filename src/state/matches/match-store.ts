/**
 * The matches of this device, and which of them speak for the maker's strength: their ids, never a number taken from them. What
 * cannot be read in the record stays as it is.
 */
import { idOf } from '../device/id-of.ts';
import type { ListForm } from '../device/kept-list.ts';
import { keptText } from '../device/kept-text.ts';
import { buzzMatchOf, matchHash, type BuzzMatch } from '../../playing/buzz-match.ts';

export const MATCHES_KEY = 'backbow.matches';
const VERSION = 1;
/** Of them a device keeps no more. */
export const MOST_MATCHES = 200;

/** What was accepted, and what it said then. */
export interface Accepted {
  readonly id: string;
  readonly hash: string;
}

export interface MatchRecord {
  /** As they are stored, those of a later release among them. */
  readonly matches: readonly unknown[];
  readonly accepted: readonly Accepted[];
}

const EMPTY: MatchRecord = { matches: [], accepted: [] };

function isAccepted(value: unknown): value is Accepted {
  const { id, hash } = (typeof value === 'object' && value !== null ? value : {}) as Partial<Record<string, unknown>>;
  return typeof id === 'string' && typeof hash === 'string';
}

/** @returns null for a record of a newer release, or of something else: it must not be written over */
export function matchRecordOf(text: string | null): MatchRecord | null {
  if (text === null) return EMPTY;
  try {
    const { version, matches, accepted } = JSON.parse(text) as Partial<Record<string, unknown>>;
    if (version !== VERSION || !Array.isArray(matches) || !Array.isArray(accepted)) return null;
    return { matches, accepted: accepted.filter((each) => isAccepted(each)) };
  } catch {
    return null;
  }
}

export const textOfMatches = (record: MatchRecord): string => JSON.stringify({ version: VERSION, ...record });

/** Those that can be used, the newest first. */
export function readableMatches({ matches }: MatchRecord): BuzzMatch[] {
  const sound = matches.map((each) => buzzMatchOf(each)).filter((each) => each !== null);
  return sound.toReversed();
}

/** Those that are here, were accepted, and say what they said then. */
export function standingMatches(record: MatchRecord): BuzzMatch[] {
  const hashes = new Map(record.accepted.map(({ id, hash }) => [id, hash]));
  return readableMatches(record).filter((match) => hashes.get(match.id) === matchHash(match));
}

export function withMatch(record: MatchRecord, match: BuzzMatch): MatchRecord {
  return { ...record, matches: [...record.matches, match] };
}

export function withoutMatch({ matches, accepted }: MatchRecord, id: string): MatchRecord {
  return { matches: matches.filter((each) => idOf(each) !== id), accepted: accepted.filter((each) => each.id !== id) };
}

/** As they lie in the browser's storage, in the order in which they were entered. */
export const MATCHES_FORM: ListForm<MatchRecord, BuzzMatch> = {
  empty: EMPTY,
  recordOf: (stored) => matchRecordOf(stored as string | null),
  readable: (record) => readableMatches(record).toReversed(),
  count: ({ matches }) => matches.length,
};

/** Takes matches out and puts others in. */
export function changedMatches(
  record: MatchRecord,
  out: readonly BuzzMatch[],
  into: readonly BuzzMatch[],
): MatchRecord {
  return into.reduce(
    withMatch,
    out.reduce((left, { id }) => withoutMatch(left, id), record),
  );
}

/** Accepts all that can be used, or none. */
export function acceptedAs(record: MatchRecord, on: boolean): MatchRecord {
  const accepted = on ? readableMatches(record).map((match) => ({ id: match.id, hash: matchHash(match) })) : [];
  return { ...record, accepted };
}

const kept = keptText(MATCHES_KEY);

/** The record's text. */
export const keptMatches = kept.now;

/** Tells of changes, in other windows too. @returns what ends it */
export const watchMatches = kept.watch;

/** @returns whether the device keeps it */
export const keepMatches = (record: MatchRecord): boolean => kept.keep(textOfMatches(record));
