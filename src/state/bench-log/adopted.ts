/** References to measurements that were accepted on this device, each with the spread that they left. */
import type { BiteReference } from '../../neck/bite-reference.ts';

/** Older ones are forgotten; a build that refers to one can be accepted again. */
export const MOST_ADOPTED = 50;

/** The list with another one in front. */
export function withAdopted(adopted: readonly BiteReference[], bite: BiteReference): BiteReference[] {
  return [bite, ...adopted.filter((other) => other.hash !== bite.hash)].slice(0, MOST_ADOPTED);
}
