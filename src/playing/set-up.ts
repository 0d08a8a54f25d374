/**
 * Strings over their frets: the heights from which the room of a string follows.
 *
 * Heights are measured up from the straight line through the tops of the board's crown at fret 1 and at the body joint, at
 * the centre of the neck; relief is the depth of the fret tops below that line.
 *
 *   top of fret i under a string      t_i = crown − s(z) − r(x_i) − fall_i      s the board's arc at the string's place z, r the relief,
 *                                     with the fall-away that the neck has; fall_i what is filed off beside it
 *   string over the nut               y_0 = h_nut − s(z) − r(0)                 to the underside of the string
 *   string over fret 12               y_12 = h_12 + b·z/(z_bass − z_treble) − s(z) − r(x_12)      b by how much the bass is higher
 *   saddle                            y_L = y_0 + (y_12 − y_0)·L/x_12           so that fret 12 has the height that was set
 *
 * A string that is not parallel to the centre line rides over a cylinder as over a slight hump; a cone that opens with the
 * strings takes it away. Both come out of s(z) at the string's own places.
 */
import type { Build } from '../neck/build.ts';
import {
  boardRadiusMm,
  bodyJointMm,
  fallAwayMm,
  fretPositionMm,
  fretPositionsMm,
  NO_FALL_AWAY,
  sagittaMm,
  stringPlacesMm,
  type FallAway,
  stringHeightAtNutMm,
} from '../neck/neck-shape.ts';
import { predictString } from '../mechanics/strings.ts';
import { sampleLine } from '../mechanics/relief.ts';

/** A line of the fret tops, as the prediction has them. */
export interface TopLine {
  /** Ascending, from the nut on, mm. */
  readonly stationXMm: Float64Array;
  /** Depth below the straight line at each station, hollow positive, mm. */
  readonly reliefMm: ArrayLike<number>;
}

/** The neck as the strings find it. Strings from the treble side to the bass side. */
export interface SetUp {
  readonly strings: readonly StringOverFrets[];
}

/** The scale of one string: what speaks of it when it is open, and where the frets cross it, from the nut on, mm. */
export interface StringScale {
  readonly lengthMm: number;
  readonly fretXMm: readonly number[];
}

export interface StringOverFrets {
  /** Strings of one scale have one and the same: what follows from it alone is reckoned once. */
  readonly scale: StringScale;
  readonly tensionN: number;
  /** Height of its underside at the nut and at the saddle, mm. */
  readonly atNutMm: number;
  readonly atSaddleMm: number;
  /** Height of the top of each fret under it, mm. */
  readonly topMm: Float64Array;
}

/** By how much each string lies higher over fret 12 than the mean of all, mm, from the highest string to the lowest. */
export function aboveMeanMm(build: Build): number[] {
  const at12 = stringPlacesMm(build, fretPositionMm(build.scaleLengthMm, 12));
  const across = at12.length > 1 ? at12.at(-1)! - at12[0] : Infinity;
  return at12.map((z) => (build.bassHigherMm * z) / across);
}

/**
 * The strings of a build over a line of fret tops, with the saddle set so that fret 12 has the string height of the build.
 * @param line in the state in which the neck is set up
 */
export function setUp(build: Build, line: TopLine, fall: FallAway = NO_FALL_AWAY): SetUp {
  const fretXMm = fretPositionsMm(build.scaleLengthMm, build.fretCount);
  const twelfth = fretPositionMm(build.scaleLengthMm, 12);
  const filed = fallAwayMm(fretXMm, fall);
  const relief = (x: number) => sampleLine(line.stationXMm, line.reliefMm, x);
  const reliefAtFrets = fretXMm.map(relief);
  const atNut = stringPlacesMm(build, 0);
  const at12 = stringPlacesMm(build, twelfth);
  const above = aboveMeanMm(build);
  const atFrets = fretXMm.map((x) => stringPlacesMm(build, x));
  const scale: StringScale = { lengthMm: build.scaleLengthMm, fretXMm };
  const arc = (x: number, z: number) => sagittaMm(boardRadiusMm(build, x), z);
  const strings = build.strings.map((string, index): StringOverFrets => {
    const nut = stringHeightAtNutMm(build) - arc(0, atNut[index] ?? 0) - relief(0);
    const over12 = build.stringHeightFret12Mm + above[index] - arc(twelfth, at12[index] ?? 0) - relief(twelfth);
    const topMm = Float64Array.from(
      fretXMm,
      (x, i) => build.crownHeightMm - arc(x, atFrets[i]?.[index] ?? 0) - (reliefAtFrets[i] ?? 0) - (filed[i] ?? 0),
    );
    return {
      scale,
      tensionN: predictString(string, scale.lengthMm).tensionN,
      atNutMm: nut,
      atSaddleMm: nut + ((over12 - nut) * scale.lengthMm) / twelfth,
      topMm,
    };
  });
  return { strings };
}

/** Slope of a line of fret tops where the neck has become the body, depth over length, positive = falling away. */
function slopeOverBody(build: Build, line: TopLine): number {
  const joint = bodyJointMm(build);
  const end = line.stationXMm.at(-1) ?? joint;
  const from = Math.min(joint, end - 10);
  return (
    (sampleLine(line.stationXMm, line.reliefMm, end) - sampleLine(line.stationXMm, line.reliefMm, from)) / (end - from)
  );
}

/**
 * The strings of a build that was set up on one line of fret tops, once the neck has another: the nut rides on the neck,
 * the saddle on the body, which goes on straight from the joint. It is how the rod, the weather and time move the action.
 */
export function afterwards(build: Build, setUpOn: TopLine, now: TopLine, fall: FallAway = NO_FALL_AWAY): SetUp {
  const before = setUp(build, setUpOn, fall);
  const after = setUp(build, now, fall);
  const down = (slopeOverBody(build, now) - slopeOverBody(build, setUpOn)) * (build.scaleLengthMm - bodyJointMm(build));
  return {
    ...after,
    strings: after.strings.map((string, index) => ({
      ...string,
      atSaddleMm: (before.strings[index]?.atSaddleMm ?? string.atSaddleMm) - down,
    })),
  };
}

/** Height of the underside of an open string over the top of a fret, mm: the action there. */
export function actionMm(string: StringOverFrets, fret: number): number {
  const { lengthMm, fretXMm } = string.scale;
  const share = (fretXMm[fret - 1] ?? Number.NaN) / lengthMm;
  return string.atNutMm + (string.atSaddleMm - string.atNutMm) * share - (string.topMm[fret - 1] ?? Number.NaN);
}
