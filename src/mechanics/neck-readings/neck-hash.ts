/** What a neck is as it lies on the bench, as a hash: everything but its name, what is wanted of it, and what readings give. */
import { digestOf } from '../../neck/digest.ts';
import type { Build } from '../../neck/build.ts';
import { filedExactly } from '../../neck/quantities.ts';

const LEFT_OUT: ReadonlySet<string> = new Set([
  'name',
  'notes',
  'binding',
  'biteFactor',
  'studShape',
  'biteReference',
  'gripReference',
  'targetReliefMm',
  'settleDays',
]);

const hashes = new WeakMap<Build, string>();

export function neckHash(build: Build): string {
  const known = hashes.get(build);
  if (known !== undefined) return known;
  const entries = Object.entries(build)
    .filter(([key]) => !LEFT_OUT.has(key))
    .toSorted(([one], [other]) => (one < other ? -1 : 1));
  const text = JSON.stringify(entries, (_key, value: unknown) =>
    typeof value === 'number' ? filedExactly(value) : value,
  );
  const hash = digestOf(text).slice(0, 32);
  hashes.set(build, hash);
  return hash;
}
