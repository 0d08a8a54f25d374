/**
 * Cross-section of the crown: a short upright foot, then a low arc.
 *
 *   foot height    e = min(0.12·H, 0.15 mm)
 *   arc            circle through both feet and the apex: rise a = H − e, ρ = (W²/4 + a²)/(2a), when a ≤ W/2;
 *                  otherwise the half-ellipse with half-axes W/2 and a
 *   area           e·W + circular segment ρ²·φ − (ρ − a)·W/2, φ = asin(W/(2ρ)); or e·W + π/4·W·a
 *
 * W crown width, H crown height, mm. Source: plane geometry. Assumed: the foot's height (practice).
 */
export interface CrownPoint {
  /** Along the neck from the middle of the crown, and above its underside, mm. */
  readonly along: number;
  readonly up: number;
  /** Outward direction. */
  readonly normalAlong: number;
  readonly normalUp: number;
}

export function crownFootMm(heightMm: number): number {
  return Math.min(0.12 * heightMm, 0.15);
}

/** Points of the arc from the nut side to the body side, foot tops included, `segments` + 1 of them. */
export function crownArc(widthMm: number, heightMm: number, segments: number): CrownPoint[] {
  const foot = crownFootMm(heightMm);
  const rise = heightMm - foot;
  const half = widthMm / 2;
  const circular = rise <= half;
  const rho = (half * half + rise * rise) / (2 * rise);
  const reach = circular ? Math.asin(Math.min(1, half / rho)) : Math.PI / 2;
  return Array.from({ length: segments + 1 }, (_, index) => {
    const angle = reach * ((2 * index) / segments - 1);
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
    const end = index === 0 ? -half : index === segments ? half : undefined;
    if (circular) {
      const up = end === undefined ? foot + rise - rho * (1 - cosine) : foot;
      return { along: end ?? rho * sine, up, normalAlong: sine, normalUp: cosine };
    }
    const up = end === undefined ? foot + rise * cosine : foot;
    return { along: end ?? half * sine, up, normalAlong: sine / half, normalUp: cosine / rise };
  });
}
