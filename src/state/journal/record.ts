/**
 * One neck of the journal: every neck that was on the bench has an id and a record of its own, which only the page that
 * began it writes. The record holds the neck's standings: how it came, how it was when work on it paused, how it was last.
 */
import type { Build } from '../../neck/build.ts';
import { readProject, writeProject } from '../../neck/file.ts';
import { PRESETS } from '../../neck/presets.ts';
import type { CheckedBuild } from '../../neck/schema.ts';
import { presetBuild } from '../../speech/names.ts';
import { isMoment } from '../device/moment.ts';
import { sameBuild } from '../history.ts';

const VERSION = 1;

/** A neck as it was at one moment. */
export interface Standing {
  /** ms since 1970. */
  readonly at: number;
  /** The contents of its project file. Not every release can read it, so it is kept as it was found. */
  readonly project: unknown;
}

/** How a neck left the bench. */
export interface Leaving {
  readonly at: number;
  /** Name of the neck that took its place. */
  readonly for: string;
}

export interface NeckRecord {
  readonly id: string;
  /** The page that has, or had, this neck on its bench. */
  readonly page: string;
  /** Records of earlier pages that this one goes on from, the latest first. */
  readonly before: readonly string[];
  /** Oldest first, at least one. */
  readonly standings: readonly Standing[];
  /** Null while it is on the bench of its page. */
  readonly left: Leaving | null;
  /** Was its page closed as pages are? Not after a crash, and not while it is open. */
  readonly isClosed: boolean;
  /** When the person was told that this neck goes next; null when it may not go. */
  readonly toldAt: number | null;
}

/** Standings kept of one neck. Of more, those between the first and the latest ones go. */
export const MOST_STANDINGS = 8;
/** Earlier records that are remembered. */
const MOST_BEFORE = 20;
/** Changes within this time belong to one standing. */
export const STANDING_MS = 10 * 60_000;

export const standingOf = (build: Build, at: number): Standing => ({
  at,
  project: JSON.parse(writeProject(build)) as unknown,
});

export const readStanding = ({ project }: Standing): CheckedBuild => readProject(JSON.stringify(project));

export const latestOf = ({ standings }: NeckRecord): Standing => standings.at(-1)!;

export const sameStanding = (a: Standing, b: Standing): boolean =>
  JSON.stringify(a.project) === JSON.stringify(b.project);

/** Does one record hold every standing of the other? */
export function holdsAll(record: NeckRecord, other: NeckRecord): boolean {
  return other.standings.every((standing) => record.standings.some((kept) => sameStanding(kept, standing)));
}

export function isPreset(build: Build): boolean {
  return PRESETS.some((preset) => sameBuild(presetBuild(preset), build));
}

/** A preset that nobody has touched needs no record once it is gone: it is in the list of presets. */
export function isOnlyPresets({ standings }: NeckRecord): boolean {
  return standings.map(readStanding).every((read) => read.ok && isPreset(read.build));
}

/** A record for a neck that comes to the bench. @param from the record that it goes on from */
export function freshRecord(id: string, page: string, standing: Standing, from: NeckRecord | null): NeckRecord {
  return {
    id,
    page,
    before: from ? [from.id, ...from.before].slice(0, MOST_BEFORE) : [],
    standings: from ? withStanding(from.standings, standing, false) : [standing],
    left: null,
    isClosed: false,
    toldAt: null,
  };
}

/** @param inPlace whether it takes the place of the latest one */
export function withStanding(
  standings: readonly Standing[],
  standing: Standing,
  inPlace: boolean,
): readonly Standing[] {
  const kept = inPlace ? standings.slice(0, -1) : standings;
  const last = kept.at(-1);
  const all = last && sameStanding(last, standing) ? kept : [...kept, standing];
  return all.length <= MOST_STANDINGS ? all : [all[0], ...all.slice(1 - MOST_STANDINGS)];
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function isStanding(value: unknown): value is Standing {
  return isObject(value) && isMoment(value['at']) && isObject(value['project']);
}

/** @returns null for what is no record, or one of a newer release */
export function recordOf(id: string, stored: unknown): NeckRecord | null {
  if (!isObject(stored) || stored['version'] !== VERSION || !Array.isArray(stored['standings'])) return null;
  const { page, before, left, isClosed, toldAt } = stored;
  const standings = (stored['standings'] as unknown[]).filter(isStanding);
  if (standings.length === 0 || standings.length < stored['standings'].length) return null;
  const isLeft = isObject(left) && isMoment(left['at']);
  return {
    id,
    page: typeof page === 'string' ? page : '',
    before: Array.isArray(before) ? before.filter((other): other is string => typeof other === 'string') : [],
    standings,
    left: isLeft ? { at: left['at'] as number, for: typeof left['for'] === 'string' ? left['for'] : '' } : null,
    isClosed: isClosed === true,
    toldAt: isMoment(toldAt) ? toldAt : null,
  };
}

/** What is stored of a record; its id is the key that it is stored under. */
export function storedOf({ id: _id, ...record }: NeckRecord): unknown {
  return { version: VERSION, ...record };
}
