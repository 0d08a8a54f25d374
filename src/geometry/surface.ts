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
import type { Build } from '../build/build.ts';
import { boardRadiusMm, lastFretMm, sagittaMm } from '../build/neck-shape.ts';
import { slotDepthAtMm } from '../fretwork/slots.ts';

/** Height of the playing surface at (x, z), mm, 0 at the crown. */
export function surfaceHeightMm(build: Build, xMm: number, zMm: number): number {
  return -sagittaMm(boardRadiusMm(build, xMm), zMm);
}

/** Slopes of the drop of the surface below its crown, (∂s/∂x, ∂s/∂z). */
export function surfaceSlope(build: Build, xMm: number, zMm: number): [number, number] {
  const radius = boardRadiusMm(build, xMm);
  if (radius === Infinity) return [0, 0];
  const root = Math.sqrt(radius * radius - zMm * zMm);
  const radiusSlope =
    build.boardShape === 'cone' ? (build.radiusLastFretMm - build.radiusNutMm) / lastFretMm(build) : 0;
  return [radiusSlope * (1 - radius / root), zMm / root];
}

/** Height of the slot floor of the fret at x, mm; never above the surface (a flat cut can run out at the edges). */
export function slotFloorHeightMm(build: Build, slotXMm: number, zMm: number): number {
  const surface = surfaceHeightMm(build, slotXMm, zMm);
  const radius = boardRadiusMm(build, slotXMm);
  return surface - Math.max(0, slotDepthAtMm(build, radius, zMm));
}
