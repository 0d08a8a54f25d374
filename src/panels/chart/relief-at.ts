/** Relief of a sampled line at any place, by straight interpolation between its stations. */
export function reliefAt(stationXMm: ArrayLike<number>, reliefMm: ArrayLike<number>, xMm: number): number {
  const last = stationXMm.length - 1;
  let [low, high] = [0, last];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (stationXMm[middle]! <= xMm) low = middle;
    else high = middle;
  }
  const [x0, x1] = [stationXMm[low]!, stationXMm[high]!];
  const along = x1 === x0 ? 0 : Math.min(1, Math.max(0, (xMm - x0) / (x1 - x0)));
  return reliefMm[low]! + along * (reliefMm[high]! - reliefMm[low]!);
}
