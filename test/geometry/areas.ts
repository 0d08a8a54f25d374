/** Areas that the shapes are held to. */
import { crownFootMm } from '../../src/geometry/crown-profile.ts';
import type { CutLoop, CutPlane } from '../../src/geometry/cut.ts';

/** Area of the crown's cross-section, mm². */
export function crownAreaMm2(widthMm: number, heightMm: number): number {
  const foot = crownFootMm(heightMm);
  const rise = heightMm - foot;
  const half = widthMm / 2;
  if (rise > half) return foot * widthMm + (Math.PI / 2) * half * rise;
  const rho = (half * half + rise * rise) / (2 * rise);
  return foot * widthMm + rho * rho * Math.asin(half / rho) - (rho - rise) * half;
}

/** Signed area of a loop in its plane, mm²: positive for the outside of a solid, negative for a hole in it. */
export function loopAreaMm2({ points }: CutLoop, axis: CutPlane['axis']): number {
  // Seen from the far side: right is +x for a cut across z, and −z for a cut across x; up is y.
  const right = (i: number): number => (axis === 'z' ? points[3 * i] : -points[3 * i + 2]);
  const count = points.length / 3;
  let twice = 0;
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    twice += right(i) * points[3 * j + 1] - right(j) * points[3 * i + 1];
  }
  return twice / 2;
}
