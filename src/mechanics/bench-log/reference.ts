/** The measurements that a build refers to, among those that are at hand. */
import { MOST_REFERRED, type BiteReference } from '../../neck/bite-reference.ts';
import type { LogEntry } from './entry.ts';
import { hashOfSet } from './identity.ts';
import type { GripLaw } from './law.ts';
import { informs } from './likelihood.ts';
import type { BitePosterior } from './posterior.ts';

/** The median of the bite as a build takes it: to a hundredth. */
export function biteFactorOf({ median }: Pick<BitePosterior, 'median'>): number {
  return Math.round(median * 100) / 100;
}

export type Referred =
  | { readonly code: 'here'; readonly entries: readonly LogEntry[] }
  /** None of them is here. */
  | { readonly code: 'not-here' }
  /** Some are gone, or say something else than they did, or the build takes its studs for others. */
  | { readonly code: 'changed'; readonly deleted: number };

/** What a log says of the bite through, in the order of the log. */
export function informing(entries: readonly LogEntry[]): LogEntry[] {
  return entries.filter(informs);
}

/**
 * @param law of the build: its bite factor means nothing under another
 * @param known ids that go with the hash, where it is known here although the reference does not name them
 */
export function resolveReference(
  { measurements, hash }: Pick<BiteReference, 'measurements' | 'hash'>,
  entries: readonly LogEntry[],
  law: GripLaw,
  known: readonly string[] = [],
): Referred {
  const ids = measurements.length > 0 ? measurements : known;
  if (ids.length === 0) {
    // A summary names none: only a whole log can be what it speaks of.
    const all = informing(entries);
    const isIt = all.length > 0 && all.length <= MOST_REFERRED && hashOfSet(all, law) === hash;
    return isIt ? { code: 'here', entries: all } : { code: 'not-here' };
  }
  const wanted = new Set(ids);
  const found = entries.filter(({ id }) => wanted.has(id));
  if (found.length === 0 && known.length === 0) return { code: 'not-here' };
  if (found.length === wanted.size && hashOfSet(found, law) === hash) return { code: 'here', entries: found };
  return { code: 'changed', deleted: wanted.size - found.length };
}

/** What a build takes from the log: the factor, and a reference to the measurements behind it. */
export function referenceTo(entries: readonly LogEntry[], posterior: BitePosterior, law: GripLaw): BiteReference {
  const used = informing(entries);
  return {
    factor: biteFactorOf(posterior),
    measurements: used.map(({ id }) => id),
    hash: hashOfSet(used, law),
    necks: posterior.necks,
    logSpread: posterior.logSpread,
  };
}
