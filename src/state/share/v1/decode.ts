/** Reading links of version 1 (codec.ts has their form); by itself, so that the customer's first words come before all else. */
import { inflateSync } from 'fflate';
import { fromBase64Url } from '../base64url.ts';
import { withChanges, type Changes, type StoredBuild } from '../changes.ts';
import { crc32 } from '../crc32.ts';
import { MOST_SHARED } from '../shared.ts';
import ADDED_4 from './added-4.json' with { type: 'json' };
import FROZEN from './frozen.json' with { type: 'json' };

const BASE: StoredBuild = FROZEN.base;
const BASE_4: StoredBuild = withChanges(BASE, ADDED_4);

/** What a link of this version of the project format is written against. */
export const baseOf = (project: number): StoredBuild => (project < 4 ? BASE : BASE_4);

/** Deflate looks at the end of its dictionary most cheaply, so the likeliest text stands last. */
export const DICTIONARY: Uint8Array = new TextEncoder().encode(
  `${FROZEN.words.join(' ')}${JSON.stringify(FROZEN.base)}${FROZEN.words.at(-1)}`,
);

/** JSON that a link may hold, in bytes; three builds with the longest notes stay well below. */
const MOST_BYTES = 400_000;
export const CHECK_BYTES = 4;

/** What a link held, not yet checked. */
export interface Unchecked {
  /** Version of the project format that the builds are written in. */
  readonly project: number;
  readonly builds: readonly StoredBuild[];
  /** One for each build, or fewer. */
  readonly bites: readonly unknown[];
  readonly grips: readonly unknown[];
  readonly page: unknown;
  readonly offers: unknown;
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
  const { project, builds, page, offers, bites, grips } = data;
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
    offers,
  };
}
