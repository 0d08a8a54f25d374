/** Try strips as they are stored: one record. What cannot be read in it stays as it is. */
import { idOf } from '../device/id-of.ts';
import { checkStrip } from '../../mechanics/try-strip/document-problems.ts';
import type { TryStrip } from '../../mechanics/try-strip/document.ts';

const VERSION = 1;

/** Of them a device keeps no more: each is an afternoon's work. */
export const MOST_STRIPS = 500;

export interface StripRecord {
  readonly version: typeof VERSION;
  readonly strips: readonly unknown[];
}

export const NO_STRIPS: StripRecord = { version: VERSION, strips: [] };

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** @returns null for a record of a newer release, or of something else: it must not be written over */
export function stripRecordOf(stored: unknown): StripRecord | null {
  if (stored === undefined) return NO_STRIPS;
  if (!isObject(stored) || stored['version'] !== VERSION || !Array.isArray(stored['strips'])) return null;
  return { version: VERSION, strips: stored['strips'] as readonly unknown[] };
}

/** The strips that can be used, the newest first. */
export function readableStrips(record: StripRecord): TryStrip[] {
  const sound = record.strips.flatMap((value) => {
    const checked = checkStrip(value);
    return checked.ok ? [checked.strip] : [];
  });
  return sound.toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
}

/** Takes strips out and puts others in, each found by its id, so that another window may have changed the list meanwhile. */
export function changedStrips(record: StripRecord, out: readonly TryStrip[], into: readonly TryStrip[]): StripRecord {
  const gone = new Set<unknown>(out.map(({ id }) => id));
  const left = record.strips.filter((strip) => !gone.has(idOf(strip)));
  const there = new Set(left.map(idOf));
  return { ...record, strips: [...left, ...into.filter(({ id }) => !there.has(id))] };
}
