/**
 * Links of version 1.
 *
 *   text      base64url(CRC-32 of what follows, 4 bytes big-endian ‖ raw deflate of the JSON)
 *   JSON      { "project": version of the project format, "builds": [changes, …], "page": { … }, "bites": [summary, …], "grips": … }
 *   changes   of the first build against the frozen base, of each other one against the first; from project version 4 on the base
 *             is that with what had been added by then (added-4.json), or a neck like any other would fill its link with defaults
 *   summary   of the measurements behind each build's bite, and behind its grip, without their ids, or null; left out where no build has any.
 *             A reader that does not know it opens the same necks.
 *
 * Deflate starts from a frozen dictionary. Base and dictionary stand in frozen.json and never change: what later releases
 * add or rename travels as changes, and the project format's own migrations bring old builds up to date.
 */
import { deflateSync, inflateSync } from 'fflate';
import { PROJECT_VERSION } from '../../../neck/file.ts';
import { fromBase64Url, toBase64Url } from '../base64url.ts';
import { changesFrom, withChanges, type Changes, type StoredBuild } from '../changes.ts';
import { crc32 } from '../crc32.ts';
import { MOST_SHARED, type Shared } from '../shared.ts';
import ADDED_4 from './added-4.json' with { type: 'json' };
import FROZEN from './frozen.json' with { type: 'json' };

const BASE: StoredBuild = FROZEN.base;
const BASE_4: StoredBuild = withChanges(BASE, ADDED_4);

/** What a link of this version of the project format is written against. */
const baseOf = (project: number): StoredBuild => (project < 4 ? BASE : BASE_4);

/** Deflate looks at the end of its dictionary most cheaply, so the likeliest text stands last. */
export const DICTIONARY: Uint8Array = new TextEncoder().encode(
  `${FROZEN.words.join(' ')}${JSON.stringify(FROZEN.base)}${FROZEN.words.at(-1)}`,
);

/** JSON that a link may hold, in bytes; three builds with the longest notes stay well below. */
const MOST_BYTES = 400_000;
const CHECK_BYTES = 4;

/** What a link held, not yet checked. */
export interface Unchecked {
  /** Version of the project format that the builds are written in. */
  readonly project: number;
  readonly builds: readonly StoredBuild[];
  /** One for each build, or fewer. */
  readonly bites: readonly unknown[];
  readonly grips: readonly unknown[];
  readonly page: unknown;
}

export function encode({ builds, page }: Shared): string {
  const [first, ...others] = builds.map(({ biteReference: _bite, gripReference: _grip, ...build }) => ({ ...build }));
  const grips = builds.map(({ gripReference }) => (gripReference ? { ...gripReference, documents: [] } : null));
  const bites = builds.map(({ biteReference }) => (biteReference ? { ...biteReference, measurements: [] } : null));
  const changes = [changesFrom(baseOf(PROJECT_VERSION), first), ...others.map((build) => changesFrom(first, build))];
  const isPlain = page.from === '' && page.to === '' && page.note === '' && page.advised === null;
  const json = new TextEncoder().encode(
    JSON.stringify({
      project: PROJECT_VERSION,
      builds: changes,
      ...(isPlain ? {} : { page }),
      ...(bites.some(Boolean) ? { bites } : {}),
      ...(grips.some(Boolean) ? { grips } : {}),
    }),
  );
  const packed = deflateSync(json, { level: 9, dictionary: DICTIONARY });
  const bytes = new Uint8Array(CHECK_BYTES + packed.length);
  new DataView(bytes.buffer).setUint32(0, crc32(packed));
  bytes.set(packed, CHECK_BYTES);
  return toBase64Url(bytes);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isChanges(value: unknown): value is Changes {
  return (
    isRecord(value) &&
    isRecord(value['set']) &&
    Array.isArray(value['drop']) &&
    value['drop'].every((key) => typeof key === 'string')
  );
}

function unpack(text: string): unknown {
  const bytes = fromBase64Url(text);
  if (!bytes || bytes.length <= CHECK_BYTES) return undefined;
  const packed = bytes.subarray(CHECK_BYTES);
  if (crc32(packed) !== new DataView(bytes.buffer).getUint32(0)) return undefined;
  try {
    const out = new Uint8Array(MOST_BYTES + 1);
    const json = inflateSync(packed, { dictionary: DICTIONARY, out });
    if (json.length > MOST_BYTES) return undefined;
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(json));
  } catch {
    // Not deflate, not UTF-8 or not JSON: somebody else's text with a sum that fits.
    return undefined;
  }
}

/** @returns null when the text is no link of this version, or not a whole one */
export function decode(text: string): Unchecked | null {
  const data = unpack(text);
  if (!isRecord(data)) return null;
  const { project, builds, page, bites, grips } = data;
  if (typeof project !== 'number' || !Number.isInteger(project) || project < 1) return null;
  if (!Array.isArray(builds) || builds.length < 1 || builds.length > MOST_SHARED || !builds.every(isChanges))
    return null;
  const [changes, ...others] = builds;
  const first = withChanges(baseOf(project), changes);
  return {
    project,
    builds: [first, ...others.map((other) => withChanges(first, other))],
    bites: Array.isArray(bites) ? bites : [],
    grips: Array.isArray(grips) ? grips : [],
    page,
  };
}
