/**
 * The arc that a fret follows: concentric with the board's surface at its slot.
 *
 *   position    z = (R + h)·sin φ,  y = −R + (R + h)·cos φ,  φ = s/R        (flat board: z = s, y = h)
 *
 * s distance along the board's surface from its middle, h height above the surface, R radius at the slot; mm, rad.
 */
import { sagittaMm } from '../neck/neck-shape.ts';

export interface ArcPoint {
  readonly y: number;
  readonly z: number;
  /** Direction away from the surface there: (0, up.y, up.z). */
  readonly upY: number;
  readonly upZ: number;
}

export function arcPoint(radiusMm: number, alongMm: number, heightMm: number): ArcPoint {
  if (radiusMm === Infinity) return { y: heightMm, z: alongMm, upY: 1, upZ: 0 };
  const angle = alongMm / radiusMm;
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  // −R + R·cos φ without the cancellation: minus the sagitta at R·sin φ.
  return {
    y: heightMm * cosine - sagittaMm(radiusMm, radiusMm * sine),
    z: (radiusMm + heightMm) * sine,
    upY: cosine,
    upZ: sine,
  };
}
