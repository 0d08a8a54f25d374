/**
 * Lengths along the board's arc.
 *
 *   arc from the crown to z     a(z) = R·asin(z/R)          flat board: a = z
 *
 * z = distance from the centre line as seen from above, R = board radius there, mm. Source: the circle.
 * Assumed: the fret stands square to the centre line, so the section under it is a circle of the board's radius at that x
 * even on a conical board.
 */

/** @throws {RangeError} when z lies outside the circle. */
export function arcMm(radiusMm: number, zMm: number): number {
  if (radiusMm === Infinity) return zMm;
  if (!(Math.abs(zMm) <= radiusMm)) {
    throw new RangeError(`half width ${zMm} mm is more than the board radius of ${radiusMm} mm`);
  }
  return radiusMm * Math.asin(zMm / radiusMm);
}
