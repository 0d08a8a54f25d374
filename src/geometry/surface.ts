/**
 * The playing surface and the slot floors.
 *
 *   height of the surface     y(x, z) = −s(R(x), z),  s = R − √(R² − z²)
 *   floor along the radius    y = −s − d                                    as deep below the surface everywhere
 *   flat floor                y = −d
 *   normal of the surface     (∂s/∂x, 1, ∂s/∂z),  ∂s/∂z = z/√(R² − z²),  ∂s/∂x = R′·(1 − R/√(R² − z²))
 *
 * R radius at x, R′ its slope along the neck, d depth of the slot at the centre line; all mm. Source: plane geometry.
 * Assumed: the arc lies in the plane across the neck, which differs from a true cone's section by less than a micrometre.
 */
import type { Build } from '../neck/build.ts';
import { boardRadiusMm, lastFretMm, sagittaMm } from '../neck/neck-shape.ts';
import { slotDepthAtMm } from '../neck/glue-reach.ts';

/** The surface of one build, with what does not change along it worked out once. */
export interface BoardSurface {
  /** Radius at x, mm; Infinity on a flat board. */
  radiusMm(xMm: number): number;
  /** Height at (x, z), mm, 0 at the crown. */
  heightMm(radiusMm: number, zMm: number): number;
  /** Slopes of the drop of the surface below its crown at z, along the neck and across it. */
  slopeAlong(radiusMm: number, zMm: number): number;
  slopeAcross(radiusMm: number, zMm: number): number;
  /** Height of the floor of a slot under that radius, mm; never above the surface (a flat cut can run out at the edges). */
  floorMm(radiusMm: number, zMm: number): number;
}

export function createSurface(build: Build): BoardSurface {
  const last = lastFretMm(build);
  const radiusSlope = build.boardShape === 'cone' ? (build.radiusLastFretMm - build.radiusNutMm) / last : 0;
  const heightMm = (radius: number, z: number): number => -sagittaMm(radius, z);
  return {
    radiusMm: (x) => (build.boardShape === 'flat' ? Infinity : build.radiusNutMm + radiusSlope * x),
    heightMm,
    slopeAlong: (radius, z) =>
      radius === Infinity || radiusSlope === 0 ? 0 : radiusSlope * (1 - radius / Math.sqrt(radius * radius - z * z)),
    slopeAcross: (radius, z) => (radius === Infinity ? 0 : z / Math.sqrt(radius * radius - z * z)),
    floorMm: (radius, z) => heightMm(radius, z) - Math.max(0, slotDepthAtMm(build, radius, z)),
  };
}

/** Height of the playing surface at (x, z), mm, 0 at the crown. */
export function surfaceHeightMm(build: Build, xMm: number, zMm: number): number {
  return -sagittaMm(boardRadiusMm(build, xMm), zMm);
}

/** Slopes of the drop of the surface below its crown, (∂s/∂x, ∂s/∂z). */
export function surfaceSlope(build: Build, xMm: number, zMm: number): [number, number] {
  const surface = createSurface(build);
  const radius = surface.radiusMm(xMm);
  return [surface.slopeAlong(radius, zMm), surface.slopeAcross(radius, zMm)];
}
