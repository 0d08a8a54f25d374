/**
 * The order in which frets go in, in four quarters.
 *
 *   spread        1, 5, 9, … then 3, 7, 11, … then 2, 6, 10, … then 4, 8, 12, …
 *   nut first     1, 2, 3, … in four groups as even as can be
 *   body first    the same from the last fret
 *
 * Spread out, each quarter covers the whole board, so the bow after m quarters has the shape of the whole and about m/4 of
 * its height: the straightedge tells after the first quarter, when three quarters can still be changed. From the nut on,
 * the first quarter makes more than its share (few frets over the body do much); from the last fret on, next to nothing.
 * Source: superposition of equal wedges at even spacing; the practice of alternating is common practice, no source.
 */
import type { Build } from '../../neck/build.ts';

type Order = Pick<Build, 'seatingOrder' | 'fretCount'>;

/** Fret numbers of the four quarters, each in the order of seating. */
export function seatingQuarters(build: Order): number[][] {
  const frets = Array.from({ length: build.fretCount }, (_, index) => index + 1);
  if (build.seatingOrder === 'spread') {
    return [1, 3, 2, 0].map((rest) => frets.filter((fret) => fret % 4 === rest));
  }
  if (build.seatingOrder === 'body-first') frets.reverse();
  const cut = (quarter: number) => Math.round((quarter * frets.length) / 4);
  return [0, 1, 2, 3].map((quarter) => frets.slice(cut(quarter), cut(quarter + 1)));
}

/** All fret numbers in the order of seating. */
export function seatingSequence(build: Order): number[] {
  return seatingQuarters(build).flat();
}

/** Frets that are in after each quarter: what to ask the mechanics for. */
export function fretsInAfterQuarters(build: Order): number[][] {
  const quarters = seatingQuarters(build);
  return quarters.map((_, index) => quarters.slice(0, index + 1).flat());
}
