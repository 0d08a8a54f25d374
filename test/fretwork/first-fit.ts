/** A plain plan to hold the better one against. */
import type { Piece } from '../../src/fretwork/plan/cutting.ts';

/** Sticks that first-fit decreasing needs (Johnson 1973): each piece, longest first, into the first stick with room for it. */
export function firstFitDecreasing(pieces: readonly Piece[], stickLengthMm: number, cutLossMm: number): number {
  const room: number[] = [];
  for (const { lengthMm } of pieces.toSorted((a, b) => b.lengthMm - a.lengthMm)) {
    const size = lengthMm + cutLossMm;
    const stick = room.findIndex((free) => free + 1e-9 >= size);
    if (stick === -1) room.push(stickLengthMm + cutLossMm - size);
    else room[stick] -= size;
  }
  return room.length;
}
