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
import { say } from '../speech/language.ts';
import type { Build } from '../neck/build.ts';
import { metalById, type Metal } from '../neck/metals.ts';
import { sagittaMm } from '../neck/neck-shape.ts';
import { withDecimalSign } from '../speech/quantity.ts';
import { fretEnds, type FretEnd } from './ends.ts';

/** Share of a bend that stays, for ξ ≥ 0. @throws {RangeError} when ξ is negative or no number. */
export function springbackRatio(xi: number): number {
  if (!(xi >= 0)) throw new RangeError(`ξ is ${xi}; it must be 0 or more`);
  return xi >= 0.5 ? 0 : 1 - 3 * xi + 4 * xi ** 3;
}

/** Least change of curvature that leaves anything behind is twice this, 1/mm. */
function yieldCurvature(metal: Pick<Metal, 'modulusGPa' | 'yieldMPa'>, heightMm: number): number {
  return metal.yieldMPa / (metal.modulusGPa * 1000 * heightMm);
}

/** Radius that wire of `startRadiusMm` (Infinity = straight) has after being bent to `bentRadiusMm` and let go. */
export function radiusAfterMm(
  bentRadiusMm: number,
  startRadiusMm: number,
  metal: Pick<Metal, 'modulusGPa' | 'yieldMPa'>,
  heightMm: number,
): number {
  const start = 1 / startRadiusMm;
  const change = 1 / bentRadiusMm - start;
  if (change === 0) return startRadiusMm;
  const after = start + change * springbackRatio(yieldCurvature(metal, heightMm) / Math.abs(change));
  return after === 0 ? Infinity : 1 / after;
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
    [say`wanted radius`, wantedRadiusMm],
    [say`radius as it comes`, startRadiusMm],
    [say`height of the wire`, heightMm],
  ] as const) {
    if (!(value > 0)) throw new RangeError(withDecimalSign(say`${name} is ${value} mm; it must be more than 0 mm`));
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
export function fretBends(build: Build, ends: readonly FretEnd[] = fretEnds(build)): FretBend[] {
  return ends.map((end) => {
    const bend = bendFor(build, end.radiusMm);
    const misfit = endMisfitMm(end.radiusMm, bend.wantedRadiusMm, end.crownFootHalfMm);
    return { ...bend, fret: end.fret, middleStandsOffMm: misfit === 0 ? 0 : -misfit };
  });
}

export interface WrongRadius {
  readonly id: 'flatter' | 'straight' | 'tighter' | 'twisted';
  readonly when: string;
  readonly happens: string;
  readonly remedy: string;
}

/** What happens with a wrong radius: common practice, no source. */
export const WRONG_RADIUS: readonly WrongRadius[] = [
  {
    id: 'flatter',
    when: say`The wire is flatter than the board.`,
    happens: say`The middle sits and the ends stand up. Pressed down they spring up again, at once or after the first season, and the player feels them at the edges.`,
    remedy: say`Bend tighter, to less than the board’s radius, so that the ends sit down first.`,
  },
  {
    id: 'tighter',
    when: say`The wire is much tighter than the board.`,
    happens: say`The ends sit and the middle stands up. Hammering the middle flat spreads the wire: the ends walk outwards, the tang tears the slot, and the crown kinks.`,
    remedy: say`Open the bend until the middle stands off by a few tenths only.`,
  },
  {
    id: 'straight',
    when: say`Coiled wire goes on a flat board as it comes.`,
    happens: say`The middle bulges up under every blow and the ends dig into the edges of the board.`,
    remedy: say`Bend the coil open first, past straight, and let it spring back.`,
  },
  {
    id: 'twisted',
    when: say`The bend runs out of the plane of the tang.`,
    happens: say`The fret leans in its slot, one shoulder of the crown stands off, and the saw cut is prised open.`,
    remedy: say`Guide the tang in a groove while bending; sight along every piece.`,
  },
];
