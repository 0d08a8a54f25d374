/**
 * The swing of one note as a picture needs it: the string at rest, its lowest line and that of the bound, over the line
 * through the fret tops under it, from the fretted fret (or the nut) to the end of the board.
 */
import type { Build } from '../neck/build.ts';
import { boardEndMm, stringPlacesMm } from '../neck/neck-shape.ts';
import { pluckOfNoteMm, type Playing } from './room.ts';
import type { SetUp, StringScale } from './set-up.ts';
import { boundDepth, idealDepth, pluckHeightMm } from './swing.ts';

export interface SwingLine {
  readonly xMm: Float64Array;
  /** Across, as the strings lie, mm. */
  readonly zMm: Float64Array;
  /** Share of the speaking length from the fretted fret. */
  readonly share: Float64Array;
  /** Height of the string at rest over the fret tops, mm. */
  readonly gapMm: Float64Array;
  /** How far below its rest the ideal string, and one within the bound of its partials, comes, mm. */
  readonly idealMm: Float64Array;
  readonly boundMm: Float64Array;
  /** Height of the pluck, mm, and its place over the speaking length, from the saddle. */
  readonly pluckHeightMm: number;
  readonly pluckShare: number;
}

/** Places between one fret and the next. */
const BETWEEN = 4;

/** From the fretted fret over every fret beyond to the end of the board, with places between. */
function placesOf({ fretXMm }: StringScale, note: number, endMm: number): Float64Array {
  const marks = [note === 0 ? 0 : fretXMm[note - 1], ...fretXMm.slice(note), endMm];
  const between = (from: number, to: number) =>
    Array.from({ length: BETWEEN }, (_, i) => from + ((to - from) * i) / BETWEEN);
  return Float64Array.from([...marks.slice(1).flatMap((to, i) => between(marks[i], to)), endMm]);
}

/** Height of the line through the fret tops, straight between frets and on beyond the outer ones. */
function topAt(fretXMm: readonly number[], topMm: Float64Array, xMm: number): number {
  const after = fretXMm.findIndex((x) => x >= xMm);
  const to = Math.max(1, after < 0 ? fretXMm.length - 1 : after);
  const slope = (topMm[to] - topMm[to - 1]) / (fretXMm[to] - fretXMm[to - 1]);
  return topMm[to - 1] + slope * (xMm - fretXMm[to - 1]);
}

/** @param string 0 = the highest; @param note 0 = open … the last but one fret */
export function swingLine(build: Build, setUp: SetUp, playing: Playing, string: number, note: number): SwingLine {
  const { scale, topMm, atNutMm, atSaddleMm, tensionN } = setUp.strings[string];
  const { fretXMm } = scale;
  const from = note === 0 ? 0 : fretXMm[note - 1];
  const start = note === 0 ? atNutMm : topMm[note - 1];
  const lengthMm = scale.lengthMm - from;
  const pluckMm = pluckOfNoteMm(playing.pluckMm, lengthMm);
  const pluckShare = pluckMm / lengthMm;
  const heightMm = pluckHeightMm(playing.forceN, pluckMm, lengthMm, tensionN);
  const xMm = placesOf(scale, note, boardEndMm(build));
  const share = xMm.map((x) => (x - from) / lengthMm);
  return {
    xMm,
    zMm: xMm.map((x) => stringPlacesMm(build, x)[string]),
    share,
    gapMm: xMm.map((x, i) => start + (atSaddleMm - start) * share[i] - topAt(fretXMm, topMm, x)),
    idealMm: share.map((u) => heightMm * idealDepth(u, pluckShare, playing.direction)),
    boundMm: share.map((u) => heightMm * boundDepth(u, pluckShare, playing.direction)),
    pluckHeightMm: heightMm,
    pluckShare,
  };
}
