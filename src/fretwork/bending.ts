/**
 * Bending wire to a radius, with springback.
 *
 *   springback                 Δκ_after/Δκ_bent = 1 − 3ξ + 4ξ³,   ξ = Y/(E·H·Δκ_bent) ≤ 1/2;  nothing stays when ξ ≥ 1/2
 *   from straight wire         Δκ = 1/R, so ξ = R_bent·Y/(E·H)
 *   from a coil                Δκ is counted from 1/R_coil; a coil tighter than the fret is bent open
 *   the bend to aim at         4ξ³ − (3 + q)·ξ + 1 = 0,   q = Δκ_wanted·E·H/Y,   its root in (0, 1/2]
 *   misfit at the ends         s(R_board) − s(R_wire),   s(R) = R − √(R² − z²)
 *
 * κ = 1/R curvature in 1/mm, Y = yield strength in MPa, E = modulus in MPa, H = height of the wire in the plane of
 * bending = crown height + tang depth in mm, z = half length.
 * Source: elastic–perfectly-plastic bending of a rectangular section; the springback formula for sheet in manufacturing
 * textbooks has the same form (Kalpakjian & Schmid, Manufacturing Engineering and Technology, from memory).
 * Assumed: the T of crown and tang bends like a rectangle of its height; the coil is free of stress; yield without hardening.
 * So the radius is a start: bend one piece, hold it to the board, correct.
 */
import type { Build } from '../neck/build.ts';
import { metalById, type Metal } from '../neck/metals.ts';
import { sagittaMm } from '../neck/neck-shape.ts';
import { madeEnds, type FretEnd } from './ends.ts';

/** Share of a bend that stays, for ξ ≥ 0. @throws {RangeError} when ξ is negative or no number. */
export function springbackRatio(xi: number): number {
  if (!(xi >= 0)) throw new RangeError(`ξ is ${xi}; it must be 0 or more`);
  return xi >= 0.5 ? 0 : 1 - 3 * xi + 4 * xi ** 3;
}

/** Least change of curvature that leaves anything behind is twice this, 1/mm. */
function yieldCurvature(metal: Pick<Metal, 'modulusGPa' | 'yieldMPa'>, heightMm: number): number {
  return metal.yieldMPa / (metal.modulusGPa * 1000 * heightMm);
}

export interface Bend {
  /** Radius that the free wire shall have; Infinity = straight. */
  readonly wantedRadiusMm: number;
  /** Radius as it comes. */
  readonly startRadiusMm: number;
  /** Signed: a negative radius means bending a coil open beyond straight. Infinity = pull it just straight. */
  readonly bendToRadiusMm: number;
  readonly direction: 'tighter' | 'straighter' | 'none';
  /** Share of the bend that stays. */
  readonly stays: number;
}

/**
 * The radius to bend to so that the wire springs back to the wanted one.
 * @throws {RangeError} when a radius or the height is not positive.
 */
export function bendTo(
  wantedRadiusMm: number,
  startRadiusMm: number,
  metal: Pick<Metal, 'modulusGPa' | 'yieldMPa'>,
  heightMm: number,
): Bend {
  for (const [name, value] of [
    ['wanted radius', wantedRadiusMm],
    ['radius as it comes', startRadiusMm],
    ['height of the wire', heightMm],
  ] as const) {
    if (!(value > 0)) throw new RangeError(`${name} is ${value} mm; it must be more than 0 mm`);
  }
  const start = 1 / startRadiusMm;
  const wanted = 1 / wantedRadiusMm - start;
  if (wanted === 0) {
    return { wantedRadiusMm, startRadiusMm, bendToRadiusMm: wantedRadiusMm, direction: 'none', stays: 1 };
  }
  const limit = yieldCurvature(metal, heightMm);
  // Middle root of ξ³ − (p/4)·ξ + 1/4 = 0, p = 3 + q, by the cosine rule for three real roots.
  const p = 3 + Math.abs(wanted) / limit;
  const third = Math.acos(Math.max(-1, -1.5 * Math.sqrt(12 / p) * (1 / p))) / 3;
  const xi = 2 * Math.sqrt(p / 12) * Math.cos(third - (2 * Math.PI) / 3);
  const bent = start + (Math.sign(wanted) * limit) / xi;
  return {
    wantedRadiusMm,
    startRadiusMm,
    bendToRadiusMm: 1 / bent,
    direction: wanted > 0 ? 'tighter' : 'straighter',
    stays: springbackRatio(xi),
  };
}

/** Radius from which wire counts as straight: no gauge tells it from a line, mm. */
const STRAIGHT_MM = 10_000;

/** A radius of wire, Infinity where it is too flat to hold a gauge to; the sign stays. */
export function gaugedRadiusMm(radiusMm: number): number {
  return Math.abs(radiusMm) > STRAIGHT_MM ? Infinity : radiusMm;
}

/** Height of the wire in the plane of bending. */
export function wireHeightMm(build: Pick<Build, 'crownHeightMm' | 'tangDepthMm'>): number {
  return build.crownHeightMm + build.tangDepthMm;
}

/** Radius of the free wire wanted over a board of this radius: straight over a flat one. */
export function wantedWireRadiusMm(build: Pick<Build, 'wireRadiusPercent'>, boardRadiusMm: number): number {
  return (boardRadiusMm * build.wireRadiusPercent) / 100;
}

/** How to bend the wire of this build for a board radius. @param metalId another alloy than the build's, for comparing. */
export function bendFor(build: Build, boardRadiusMm: number, metalId: string = build.wireMetal): Bend {
  const startRadiusMm = build.wireForm === 'coil' ? build.coilRadiusMm : Infinity;
  return bendTo(wantedWireRadiusMm(build, boardRadiusMm), startRadiusMm, metalById(metalId), wireHeightMm(build));
}

/** Gap between the ends of the free wire and the board when its middle touches, mm; negative: the middle stands off. */
export function endMisfitMm(boardRadiusMm: number, wireRadiusMm: number, halfLengthMm: number): number {
  return sagittaMm(boardRadiusMm, halfLengthMm) - sagittaMm(wireRadiusMm, halfLengthMm);
}

/** The bend of one fret, and how it lies on its board before it is pressed. */
export interface FretBend extends Bend {
  readonly fret: number;
  /** How far the middle stands off when the ends touch; negative: the ends stand off. */
  readonly middleStandsOffMm: number;
}

/** Each fret bent for its own radius: on a conical board they differ. */
export function fretBends(build: Build, ends: readonly FretEnd[] = madeEnds(build)): FretBend[] {
  return ends.map((end) => {
    const bend = bendFor(build, end.radiusMm);
    const misfit = endMisfitMm(end.radiusMm, bend.wantedRadiusMm, end.crownFootHalfMm);
    return { ...bend, fret: end.fret, middleStandsOffMm: misfit === 0 ? 0 : -misfit };
  });
}

/** Ways to have a wrong radius; what each does and how to mend it is in speech/en/wire.ts. Common practice, no source. */
export const WRONG_RADII = ['flatter', 'tighter', 'straight', 'twisted'] as const;
export type WrongRadius = (typeof WRONG_RADII)[number];
