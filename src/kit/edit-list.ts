/** Changing one entry of a list, leaving the list that was there untouched. */
export function withEntry<T>(list: readonly T[], index: number, change: Partial<T>): T[] {
  return list.map((entry, at) => (at === index ? { ...entry, ...change } : entry));
}
