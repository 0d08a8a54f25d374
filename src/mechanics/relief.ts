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

/**
 * Light under the last of these frets when a straightedge is held down on the first of them, mm; 0 for a hollow neck, which
 * carries it at both. On a hump it leans on the fret that is steepest from the first. An even hump of height h over n equal
 * spaces shows 4·h·(1 − 1/n) there, since the edge lies along the tangent of its end.
 *
 * @param xMm places of the frets, ascending. @param reliefMm of the line of their tops, at each.
 */
export function rockedGapMm(xMm: readonly number[], reliefMm: readonly number[]): number {
  const run = (i: number): number => xMm[i] - xMm[0];
  const drop = (i: number): number => reliefMm[i] - reliefMm[0];
  const last = xMm.length - 1;
  let steepest = -Infinity;
  for (let i = 1; i <= last; i += 1) steepest = Math.max(steepest, -drop(i) / run(i));
  return steepest * run(last) + drop(last);
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
