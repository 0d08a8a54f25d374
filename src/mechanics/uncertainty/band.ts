/**
 * Bands: the 5, 50 and 95 % points of samples, by selection instead of sorting (Hoare's quickselect).
 *
 * Of n samples in order, the q point is that of rank ⌊q·(n − 1)⌉.
 */

/** 5, 50 and 95 % points: p05 ≤ p50 ≤ p95. */
export interface Band {
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** Puts the value of rank k of values[from … to] in its place, smaller ones before it and larger ones after. */
function select(values: Float64Array, fromIndex: number, toIndex: number, k: number): number {
  let from = fromIndex;
  let to = toIndex;
  while (from < to) {
    const pivot = values[(from + to) >> 1];
    let i = from;
    let j = to;
    while (i <= j) {
      while (values[i] < pivot) i += 1;
      while (values[j] > pivot) j -= 1;
      if (i <= j) {
        const kept = values[i];
        values[i] = values[j]!;
        values[j] = kept;
        i += 1;
        j -= 1;
      }
    }
    if (k <= j) to = j;
    else if (k >= i) from = i;
    else break;
  }
  return values[k];
}

/** The band of all values; reorders them. Infinities count, NaN must not occur. */
export function bandOf(values: Float64Array): Band {
  const last = values.length - 1;
  const middle = Math.round(0.5 * last);
  const p50 = select(values, 0, last, middle);
  const p05 = select(values, 0, middle, Math.round(0.05 * last));
  const p95 = select(values, middle, last, Math.round(0.95 * last));
  return { p05, p50, p95 };
}
