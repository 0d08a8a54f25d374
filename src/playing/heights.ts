/**
 * What a maker sets and measures under each string.
 *
 *   action            open string over the top of fret 12
 *   relief            greatest distance of the fret tops under the string from the straight line through the tops of fret 1
 *                     and of the fret at the body joint, hollow positive: a straightedge laid along the string
 *   nut               open string over the top of fret 1
 *   saddle            string at the saddle over that straight line, carried on to the saddle
 *
 * Strings that open towards the saddle ride over a cylinder as over a slight hump: the relief under the outer ones is less.
 */
import { actionMm, type SetUp, type StringOverFrets } from './set-up.ts';

export interface StringHeights {
  readonly actionMm: number;
  readonly reliefMm: number;
  readonly nutOverFret1Mm: number;
  readonly saddleOverFretsMm: number;
}

function heightsOf(string: StringOverFrets, jointFret: number): StringHeights {
  const { topMm, atSaddleMm } = string;
  const { fretXMm, lengthMm } = string.scale;
  const [from, to] = [fretXMm[0], fretXMm[jointFret - 1]];
  const slope = (topMm[jointFret - 1] - topMm[0]) / (to - from);
  const edge = (x: number) => topMm[0] + slope * (x - from);
  let reliefMm = 0;
  for (let fret = 1; fret < jointFret - 1; fret += 1) {
    const below = edge(fretXMm[fret]) - topMm[fret];
    if (Math.abs(below) > Math.abs(reliefMm)) reliefMm = below;
  }
  return {
    actionMm: actionMm(string, 12),
    reliefMm,
    nutOverFret1Mm: actionMm(string, 1),
    saddleOverFretsMm: atSaddleMm - edge(lengthMm),
  };
}

/** Every string, from the treble side to the bass side. @param jointFret the fret at the body joint */
export function stringHeights(neck: SetUp, jointFret: number): StringHeights[] {
  return neck.strings.map((string) => heightsOf(string, jointFret));
}
