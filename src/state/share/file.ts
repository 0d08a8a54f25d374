/**
 * A file for what one project file cannot hold: several builds. JSON of our own:
 *
 *   { "format": "backbow collection", "version": 1,
 *     "builds": [{ "name": …, "changedAt": …, "project": { "format": "backbow project", "version": …, "build": { … } } }],
 *     "page": { … }, "offers": [{ "price": …, "time": … }] }
 *
 * A comparison has up to three builds and may have the texts of its page; a library has any number. Each build stands
 * there as its project file would, so that the project format's own reader checks it and brings it up to date.
 */
import type { Build } from '../../neck/build.ts';
import { checkProject, writeProject, type Made } from '../../neck/file.ts';
import type { Problem } from '../../neck/problems.ts';
import { checkOffers, checkPage, saysAnything } from './page-text.ts';
import { EMPTY_PAGE, type Offer, type PageText } from './shared.ts';

export const COLLECTION_FORMAT = 'backbow collection';
export const COLLECTION_VERSION = 1;
export const COLLECTION_EXTENSION = '.backbow-builds.json';

/** Builds that one file may hold. */
export const MOST_BUILDS = 2000;

export interface CollectedBuild {
  readonly build: Build;
  /** When it was last changed, ms since 1970; null when nobody knows. */
  readonly changedAt: number | null;
  /** Written beside it, and not read back. */
  readonly made?: Made;
}

/** A build of the file that was refused; the others are read all the same. */
export interface RefusedBuild {
  /** 1 is the first. */
  readonly place: number;
  /** Its name, where it has one that can be read. */
  readonly name: string | null;
  readonly problems: readonly Problem[];
}

export type CollectionTrouble = 'not-json' | 'not-a-collection' | 'newer' | 'too-many';

export type ReadCollection =
  | {
      readonly ok: true;
      readonly builds: readonly CollectedBuild[];
      readonly refused: readonly RefusedBuild[];
      /** Null when its texts cannot be read, or belong to builds that were refused. */
      readonly page: PageText | null;
      /** One for each build; left out where nothing is said for any. */
      readonly offers?: readonly Offer[];
    }
  | { readonly ok: false; readonly trouble: CollectionTrouble };

export function writeCollection(
  builds: readonly CollectedBuild[],
  page: PageText = EMPTY_PAGE,
  offers?: readonly Offer[],
): string {
  const data = {
    format: COLLECTION_FORMAT,
    version: COLLECTION_VERSION,
    builds: builds.map(({ build, changedAt, made }) => ({
      name: build.name,
      changedAt: changedAt === null ? null : new Date(changedAt).toISOString(),
      project: JSON.parse(writeProject(build, made)) as unknown,
    })),
    page,
    ...(saysAnything(offers) ? { offers } : {}),
  };
  return `${JSON.stringify(data, null, 2)}\n`;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Is this text meant to be a collection? Says nothing of whether it can be read. */
export function looksLikeCollection(text: string): boolean {
  try {
    const data: unknown = JSON.parse(text);
    return isRecord(data) && data['format'] === COLLECTION_FORMAT;
  } catch {
    return false;
  }
}

function timeOf(value: unknown): number | null {
  const time = typeof value === 'string' ? Date.parse(value) : Number.NaN;
  return Number.isFinite(time) ? time : null;
}

function nameIn(project: unknown): string | null {
  const build = isRecord(project) ? project['build'] : undefined;
  const name = isRecord(build) ? build['name'] : undefined;
  return typeof name === 'string' ? name.slice(0, 200) : null;
}

/** Reads a collection; builds that are refused are listed and change nothing in the others. */
export function readCollection(text: string): ReadCollection {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { ok: false, trouble: 'not-json' };
  }
  if (!isRecord(data) || data['format'] !== COLLECTION_FORMAT) return { ok: false, trouble: 'not-a-collection' };
  const { version, builds: entries, page, offers } = data;
  if (typeof version === 'number' && version > COLLECTION_VERSION) return { ok: false, trouble: 'newer' };
  if (version !== COLLECTION_VERSION || !Array.isArray(entries)) return { ok: false, trouble: 'not-a-collection' };
  if (entries.length > MOST_BUILDS) return { ok: false, trouble: 'too-many' };
  const builds: CollectedBuild[] = [];
  const refused: RefusedBuild[] = [];
  entries.forEach((entry: unknown, index) => {
    const project = isRecord(entry) ? entry['project'] : undefined;
    const read = checkProject(project ?? null);
    if (read.ok)
      builds.push({ build: read.build, changedAt: timeOf(isRecord(entry) ? entry['changedAt'] : undefined) });
    else refused.push({ place: index + 1, name: nameIn(project), problems: read.problems });
  });
  const texts = refused.length > 0 ? null : checkPage(page, builds.length);
  const said = checkOffers(offers, builds.length);
  return texts && said
    ? { ok: true, builds, refused, page: texts, ...said }
    : { ok: true, builds, refused, page: null };
}
