/**
 * How deep a slot is, how far glue fills it, and how much of the tang stands in glue: one meaning for volume, grip and
 * stiffness.
 *
 *   slot that follows          depth D everywhere below the surface
 *   flat saw cut               D − s(z), s the drop of the surface at z
 *   glue at z                  φ·d(z)             d(z) depth of the slot there, φ the share of it that the glue reaches
 *   flank of the tang in glue  ∫ min(t, φ·d(z)) dz over the tang's length
 *
 * t = tang depth; all mm. Glue stands from the surface down. Source: geometry.
 */
import type { Build } from './build.ts';
import { sagittaMm } from './neck-shape.ts';

/** Intervals of Simpson's rule over half a slot; the integrands are smooth but for one kink. */
const INTERVALS = 200;

/** Composite Simpson over [0, to]. */
export function integrateTo(to: number, f: (z: number) => number): number {
  if (to <= 0) return 0;
  const step = to / INTERVALS;
  let sum = f(0) + f(to);
  for (let i = 1; i < INTERVALS; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(i * step);
  return (sum * step) / 3;
}

/** Depth of the slot below the board's surface at z, mm. */
export function slotDepthAtMm(build: Pick<Build, 'slotBottom' | 'slotDepthMm'>, radiusMm: number, zMm: number): number {
  return build.slotBottom === 'flat' ? build.slotDepthMm - sagittaMm(radiusMm, zMm) : build.slotDepthMm;
}

type Glued = Pick<Build, 'slotBottom' | 'slotDepthMm' | 'glueReachPercent'>;

/** Depth below the surface that glue fills at z, mm. */
export function gluedDepthMm(build: Glued, radiusMm: number, zMm: number): number {
  return (build.glueReachPercent / 100) * Math.max(0, slotDepthAtMm(build, radiusMm, zMm));
}

/** Area of one flank of the tang that stands in glue, mm². @param tangHalfMm half the length of tang in the slot. */
export function gluedTangMm2(build: Glued & Pick<Build, 'tangDepthMm'>, radiusMm: number, tangHalfMm: number): number {
  return 2 * integrateTo(tangHalfMm, (z) => Math.min(build.tangDepthMm, gluedDepthMm(build, radiusMm, z)));
}
