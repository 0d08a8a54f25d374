/**
 * Relief: depth of the fret-top line below a straightedge laid from one fret to another.
 *
 *   r(x) = v(x) − [v(a) + (v(b) − v(a))·(x − a)/(b − a)]      v: depth displacement, down positive; mm
 *
 * Positive = forward bow (hollow), negative = back-bow (hump). The fret tops ride with the glue line under the board.
 */

/** Value of a line, given at ascending stations, at x; linear between stations, extended by the end slopes. */
export function sampleLine(stationXMm: ArrayLike<number>, values: ArrayLike<number>, xMm: number): number {
  const last = stationXMm.length - 1;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if (stationXMm[mid] <= xMm) low = mid;
    else high = mid;
  }
  const t = (xMm - stationXMm[low]) / (stationXMm[low + 1] - stationXMm[low]);
  return values[low] + t * (values[low + 1] - values[low]);
}

/** Turns depth displacements into relief against a straightedge from x = a to x = b. */
export function reliefFromDepth(
  stationXMm: Float64Array,
  depthMm: ArrayLike<number>,
  fromXMm: number,
  toXMm: number,
): Float64Array {
  const a = sampleLine(stationXMm, depthMm, fromXMm);
  const b = sampleLine(stationXMm, depthMm, toXMm);
  return stationXMm.map((x, i) => depthMm[i] - (a + ((b - a) * (x - fromXMm)) / (toXMm - fromXMm)));
}

/** The relief of greatest size between the ends of the straightedge, with its sign, and where it is. */
export function extremeRelief(
  stationXMm: Float64Array,
  reliefMm: ArrayLike<number>,
  fromXMm: number,
  toXMm: number,
): { readonly extremeMm: number; readonly extremeXMm: number } {
  let extremeMm = 0;
  let extremeXMm = (fromXMm + toXMm) / 2;
  for (let i = 0; i < stationXMm.length; i += 1) {
    const x = stationXMm[i];
    if (x < fromXMm || x > toXMm) continue;
    if (Math.abs(reliefMm[i]) > Math.abs(extremeMm)) {
      extremeMm = reliefMm[i]!;
      extremeXMm = x;
    }
  }
  return { extremeMm, extremeXMm };
}
