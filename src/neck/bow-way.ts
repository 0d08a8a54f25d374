/** A bow as a maker sees it under the straightedge: which way it goes and how large it is, never a sign. */
export const BOW_WAYS = ['hump', 'hollow'] as const;
export type BowWay = (typeof BOW_WAYS)[number];

/** Which way a relief goes; null when it is flat. @param reliefMm positive hollow, negative humped */
export function wayOf(reliefMm: number): BowWay | null {
  if (reliefMm === 0) return null;
  return reliefMm < 0 ? 'hump' : 'hollow';
}

/** The relief of a bow, mm. @param sizeMm 0 or more */
export function reliefOf(way: BowWay, sizeMm: number): number {
  return way === 'hump' && sizeMm !== 0 ? -sizeMm : sizeMm;
}
