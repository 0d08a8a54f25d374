/** The part of the board that the chart shows: from one fret to another, 0 being the nut, the last standing for the board's end. */
export interface FretRange {
  readonly from: number;
  readonly to: number;
}

/** Frets between the ends at least: closer than this there is nothing to see. */
export const LEAST_SPAN = 2;

export function wholeBoard(frets: number): FretRange {
  return { from: 0, to: frets };
}

export function isWhole({ from, to }: FretRange, frets: number): boolean {
  return from === 0 && to === frets;
}

/** The range as it fits on a board with that many frets; another end of the board shows the whole of it. */
export function rangeOn(range: FretRange | null, frets: number): FretRange {
  return range && range.to <= frets && range.to - range.from >= LEAST_SPAN ? range : wholeBoard(frets);
}

/** A range with another beginning or end; the other side makes way where they would come too close. */
export function withFrom(range: FretRange, from: number, frets: number): FretRange {
  const start = Math.min(from, frets - LEAST_SPAN);
  return { from: start, to: Math.max(range.to, start + LEAST_SPAN) };
}

export function withTo(range: FretRange, to: number): FretRange {
  const end = Math.max(to, LEAST_SPAN);
  return { from: Math.min(range.from, end - LEAST_SPAN), to: end };
}

/**
 * A range made longer or shorter about a fret that keeps its place.
 * @param factor above 1 shows more frets; it changes by a fret at least
 */
export function zoomed(range: FretRange, about: number, factor: number, frets: number): FretRange {
  const before = range.to - range.from;
  const wanted = Math.round(before * factor);
  const changed = wanted === before ? before + Math.sign(factor - 1) : wanted;
  const span = Math.min(frets, Math.max(LEAST_SPAN, changed));
  const share = before === 0 ? 0.5 : Math.min(1, Math.max(0, (about - range.from) / before));
  const from = Math.min(frets - span, Math.max(0, Math.round(about - share * span)));
  return { from, to: from + span };
}

/** Where the range begins and ends, mm from the nut. */
export function rangeMm(
  { from, to }: FretRange,
  fretXMm: readonly number[],
  endXMm: number,
): readonly [number, number] {
  return [from === 0 ? 0 : fretXMm[from - 1], to >= fretXMm.length ? endXMm : fretXMm[to - 1]];
}
