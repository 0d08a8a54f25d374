/** Sums of the rows of a table: how every line is made from unit lines. */

/**
 * Adds amount × row to `out` for some rows of a table, four in one pass: each number of `out` is loaded and stored a
 * quarter as often.
 * @param table rows × width, row-major, width the length of `out`. @param amounts one for each of `rows`.
 */
export function addRows(
  table: Float64Array,
  rows: readonly number[],
  amounts: readonly number[],
  out: Float64Array,
): void {
  const width = out.length;
  const inFours = rows.length - (rows.length % 4);
  for (let k = 0; k < inFours; k += 4) {
    const r0 = rows[k] * width;
    const r1 = rows[k + 1] * width;
    const r2 = rows[k + 2] * width;
    const r3 = rows[k + 3] * width;
    const a0 = amounts[k];
    const a1 = amounts[k + 1];
    const a2 = amounts[k + 2];
    const a3 = amounts[k + 3];
    for (let i = 0; i < width; i += 1)
      out[i] = out[i] + a0 * table[r0 + i] + a1 * table[r1 + i] + a2 * table[r2 + i] + a3 * table[r3 + i];
  }
  for (let k = inFours; k < rows.length; k += 1) {
    const start = rows[k] * width;
    const amount = amounts[k];
    for (let i = 0; i < width; i += 1) out[i] += amount * table[start + i];
  }
}
