/** References to measurements that were accepted on this device, each with the spread that they left. */
/** Older ones are forgotten; a build that refers to one can be accepted again. */
export const MOST_ADOPTED = 50;

/** The list with another one in front. */
export function withAdopted<Reference extends { readonly hash: string }>(
  adopted: readonly Reference[],
  fresh: Reference,
): Reference[] {
  return [fresh, ...adopted.filter((other) => other.hash !== fresh.hash)].slice(0, MOST_ADOPTED);
}
