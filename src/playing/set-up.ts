/**
 * Strings over their frets: the heights from which the room of a string follows.
 *
 * Heights are measured up from the straight line through the tops of the board's crown at fret 1 and at the body joint, at
 * the centre of the neck; relief is the depth of the fret tops below that line.
 *
 *   top of fret i under a string      t_i = crown − s(z) − r(x_i) − fall_i      s the board's arc at the string's place z, r the relief
 *   string over the nut               y_0 = h_nut − s(z) − r(0)                 to the underside of the string
 *   string over fret 12               y_12 = h_12 − s(z) − r(x_12)
 *   saddle                            y_L = y_0 + (y_12 − y_0)·L/x_12           so that fret 12 has the height that was set
 *
 * A string that is not parallel to the centre line rides over a cylinder as over a slight hump; a cone that opens with the
 * strings takes it away. Both come out of s(z) at the string's own places.
 */
import type { Build } from '../neck/build.ts';
import {
  boardRadiusMm,
  bodyJointMm,
  fretPositionMm,
  fretPositionsMm,
  sagittaMm,
  stringPlacesMm,
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

/** The last frets filed lower, so that a string clears them: nothing at `fromFret`, `atLastFretMm` at the last. */
export interface FallAway {
  readonly fromFret: number;
  readonly atLastFretMm: number;
}

export const NO_FALL_AWAY: FallAway = { fromFret: 0, atLastFretMm: 0 };

/** The neck as the strings find it. Strings from the highest to the lowest. */
export interface SetUp {
  readonly scaleLengthMm: number;
  readonly fretXMm: readonly number[];
  readonly strings: readonly StringOverFrets[];
}

export interface StringOverFrets {
  readonly tensionN: number;
  /** Height of its underside at the nut and at the saddle, mm. */
  readonly atNutMm: number;
  readonly atSaddleMm: number;
  /** Height of the top of each fret under it, mm. */
  readonly topMm: Float64Array;
}

/** How far each fret is filed lower for the fall-away, mm. */
export function fallAwayMm(fretXMm: readonly number[], { fromFret, atLastFretMm }: FallAway): number[] {
  const from = fretXMm[fromFret - 1];
  const last = fretXMm.at(-1);
  if (atLastFretMm === 0 || from === undefined || last === undefined || last <= from) return fretXMm.map(() => 0);
  return fretXMm.map((x) => (x <= from ? 0 : (atLastFretMm * (x - from)) / (last - from)));
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
  const atFrets = fretXMm.map((x) => stringPlacesMm(build, x));
  const arc = (x: number, z: number) => sagittaMm(boardRadiusMm(build, x), z);
  const strings = build.strings.map((string, index): StringOverFrets => {
    const nut = build.stringHeightNutMm - arc(0, atNut[index] ?? 0) - relief(0);
    const over12 = build.stringHeightFret12Mm - arc(twelfth, at12[index] ?? 0) - relief(twelfth);
    const topMm = Float64Array.from(
      fretXMm,
      (x, i) => build.crownHeightMm - arc(x, atFrets[i]?.[index] ?? 0) - (reliefAtFrets[i] ?? 0) - (filed[i] ?? 0),
    );
    return {
      tensionN: predictString(string, build.scaleLengthMm).tensionN,
      atNutMm: nut,
      atSaddleMm: nut + ((over12 - nut) * build.scaleLengthMm) / twelfth,
      topMm,
    };
  });
  return { scaleLengthMm: build.scaleLengthMm, fretXMm, strings };
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
export function actionMm({ scaleLengthMm, fretXMm }: SetUp, string: StringOverFrets, fret: number): number {
  const share = (fretXMm[fret - 1] ?? Number.NaN) / scaleLengthMm;
  return string.atNutMm + (string.atSaddleMm - string.atNutMm) * share - (string.topMm[fret - 1] ?? Number.NaN);
}
