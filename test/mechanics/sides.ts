/**
 * The line of the fret tops along an edge of the board, and twist, on a neck whose frets are slanted.
 *
 *   x_e = x + z·t      v_e = v(x) + z·β(x)      z = ±w/2, plus towards the bass; t tangent of the slant, β tilt (elements/twist.ts)
 *   twist φ = β − t·v′                           rotation about the neck's length at a place, rad: bass side down positive
 *
 * β goes with v: of a neck that is turned as a whole about an axis across it by s, v = s·x and β = s·t.
 */
import { linearAt, slantAt, type NeckDescription } from '../../src/mechanics/description.ts';
import type { Combination, Influence } from '../../src/mechanics/influence.ts';
import { CASES, caseColumn } from '../../src/mechanics/elements/loads.ts';
import { reliefFromDepth, sampleLine } from '../../src/mechanics/relief.ts';

export type Side = 'bass' | 'treble';

/** A neck's middle line and its tilt at the same stations. */
export interface TiltedLine {
  readonly depthMm: ArrayLike<number>;
  readonly tiltRad: ArrayLike<number>;
}

type Slanted = Pick<NeckDescription, 'widthMm'> & { readonly fan: NonNullable<NeckDescription['fan']> };

/** Half the width, plus towards the bass. */
const sideMm = ({ widthMm }: Slanted, side: Side, xMm: number) =>
  ((side === 'bass' ? 1 : -1) * linearAt(widthMm, xMm)) / 2;

/** Where what crosses the middle at x meets an edge, mm. */
export function edgeXMm(neck: Slanted, side: Side, xMm: number): number {
  return xMm + sideMm(neck, side, xMm) * slantAt(neck.fan, xMm);
}

/** Relief along an edge, at the stations, against a straightedge there from the fret that crosses the middle at `from` to that at `to`. */
export function edgeRelief(
  neck: Slanted,
  side: Side,
  stationXMm: Float64Array,
  line: TiltedLine,
  fromXMm: number,
  toXMm: number,
): { readonly edgeXMm: Float64Array; readonly reliefMm: Float64Array } {
  const xs = stationXMm.map((x) => edgeXMm(neck, side, x));
  const depth = stationXMm.map((x, k) => line.depthMm[k] + sideMm(neck, side, x) * line.tiltRad[k]);
  const [from, to] = [fromXMm, toXMm].map((x) => edgeXMm(neck, side, x));
  return { edgeXMm: xs, reliefMm: reliefFromDepth(xs, depth, from, to) };
}

/** Rotation about the length of the neck at x, rad, bass side down positive: of its edges at that place, over the width. */
export function twistAtRad(neck: Slanted, stationXMm: Float64Array, line: TiltedLine, xMm: number): number {
  const depthAt = (side: Side) =>
    sampleLine(
      stationXMm.map((x) => edgeXMm(neck, side, x)),
      Array.from(stationXMm, (x, k) => line.depthMm[k] + sideMm(neck, side, x) * line.tiltRad[k]),
      xMm,
    );
  return (depthAt('bass') - depthAt('treble')) / linearAt(neck.widthMm, xMm);
}

/** Tilt of a neck with slanted frets under a combination, rad. */
export function combineTilt({ tiltRad, stationXMm, wedges }: Influence, combination: Combination): Float64Array {
  const stations = stationXMm.length;
  const out = new Float64Array(stations);
  const add = (row: number, amount: number) => {
    for (let k = 0; k < stations; k += 1) out[k] += amount * tiltRad![row * stations + k];
  };
  for (let i = 0; combination.wedgeN && i < wedges; i += 1) add(i, combination.wedgeN[i]);
  for (const name of CASES) add(caseColumn(wedges, name), combination.cases?.[name] ?? 0);
  return out;
}
