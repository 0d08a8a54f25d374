/**
 * Symmetric positive definite banded systems: A = L·Lᵀ (Cholesky), and the solution for a block of right-hand sides.
 *
 * Storage: `band[j·(b + 1) + k]` holds A(j + k, j), k = 0…b, b the half bandwidth: the lower triangle by columns.
 * Right-hand sides: in blocks of four columns, see `blockIndex`.
 * Reference: Golub & Van Loan, Matrix Computations, §4.3.5 (band Cholesky), from memory.
 * Operations: about n·b² for the factor and 4·n·b for each right-hand side.
 */

/** Order n and half bandwidth b. */
export interface BandShape {
  readonly order: number;
  readonly halfBandwidth: number;
}

/** A factor L, by columns for the backward and by rows for the forward substitution. */
export interface BandFactor extends BandShape {
  readonly columns: Float64Array;
  /** `rows[i·b + (b − k)]` holds L(i, i − k), k = 1…b. */
  readonly rows: Float64Array;
  readonly inverseDiagonal: Float64Array;
}

export function bandLength({ order, halfBandwidth }: BandShape): number {
  // A tail of b extra columns lets the update loops run over the edge without a test.
  return (order + halfBandwidth) * (halfBandwidth + 1);
}

/**
 * Factorises in place; `band` becomes the factor's storage. Columns are eliminated in pairs, so that every entry of the
 * trailing matrix is loaded and stored half as often.
 * @throws {RangeError} when the matrix is not positive definite.
 */
export function factorise(shape: BandShape, band: Float64Array): BandFactor {
  const { order: n, halfBandwidth: b } = shape;
  const stride = b + 1;
  const inverseDiagonal = new Float64Array(n);
  const invert = (j: number): number => {
    const pivot = band[j * stride]!;
    if (!(pivot > 0)) throw new RangeError(`the matrix is not positive definite: pivot ${j} is ${pivot}`);
    const root = Math.sqrt(pivot);
    band[j * stride] = root;
    return (inverseDiagonal[j] = 1 / root);
  };

  let j = 0;
  for (; j + 1 < n; j += 2) {
    const p = j * stride;
    const q = p + stride;
    const inverseP = invert(j);
    for (let k = 1; k <= b; k += 1) band[p + k]! *= inverseP;
    // Column j + 1 takes the update of column j, then is scaled itself.
    const first = band[p + 1]!;
    for (let k = 1; k <= b; k += 1) band[q + k - 1]! -= first * band[p + k]!;
    const inverseQ = invert(j + 1);
    for (let k = 1; k <= b; k += 1) band[q + k]! *= inverseQ;
    // Rank-two update of the columns j + 2 … j + 1 + b.
    for (let k = 2; k <= b; k += 1) {
      const a = band[p + k]!;
      const c = band[q + k - 1]!;
      const target = (j + k) * stride - k;
      for (let i = k; i <= b; i += 1) band[target + i]! -= a * band[p + i]! + c * band[q + i - 1]!;
      band[target + b + 1]! -= c * band[q + b]!;
    }
    const last = band[q + b]!;
    band[(j + 1 + b) * stride]! -= last * last;
  }
  if (j < n) {
    const inverse = invert(j);
    for (let k = 1; k <= b; k += 1) band[j * stride + k]! *= inverse;
  }

  const rows = new Float64Array(n * b);
  for (let column = 0; column < n; column += 1) {
    const most = Math.min(b, n - 1 - column);
    for (let k = 1; k <= most; k += 1) rows[(column + k) * b + (b - k)] = band[column * stride + k]!;
  }
  return { order: n, halfBandwidth: b, columns: band, rows, inverseDiagonal };
}

/** Right-hand sides are solved four at a time, so that each entry of L is loaded once for four of them. */
export const LANES = 4;

/** Number of right-hand sides with the padding that fills the last block. */
export function paddedColumns(columns: number): number {
  return Math.ceil(columns / LANES) * LANES;
}

/** Where row r of right-hand side c stands: blocks of four columns, each n × 4 row-major. */
export function blockIndex(order: number, row: number, column: number): number {
  return ((column >> 2) * order + row) * LANES + (column & 3);
}

/**
 * Solves A·X = B in place for a block of right-hand sides.
 * @param values padded columns × n in blocks (see `blockIndex`); overwritten with X.
 * @param firstRow for each column the first row that is not zero (0 when unknown): forward substitution starts there.
 */
export function solveBlock(
  factor: BandFactor,
  values: Float64Array,
  columns: number,
  firstRow?: ArrayLike<number>,
): void {
  const size = factor.order * LANES;
  for (let c = 0; c < columns; c += LANES) {
    let from = firstRow ? factor.order : 0;
    for (let lane = c; firstRow && lane < Math.min(columns, c + LANES); lane += 1)
      from = Math.min(from, firstRow[lane]!);
    solveFour(factor, values.subarray((c / LANES) * size, (c / LANES + 1) * size), from);
  }
}

function solveFour(factor: BandFactor, x: Float64Array, from: number): void {
  const { order: n, halfBandwidth: b, columns, rows, inverseDiagonal } = factor;
  const stride = b + 1;
  for (let i = from; i < n; i += 1) {
    const start = Math.max(from, i - b);
    let l = i * b + b - (i - start);
    let s0 = 0, s1 = 0, s2 = 0, s3 = 0; // prettier-ignore
    const here = 4 * i;
    for (let at = 4 * start; at < here; at += 4, l += 1) {
      const value = rows[l]!;
      s0 += value * x[at]!;
      s1 += value * x[at + 1]!;
      s2 += value * x[at + 2]!;
      s3 += value * x[at + 3]!;
    }
    const inverse = inverseDiagonal[i]!;
    x[here] = (x[here]! - s0) * inverse;
    x[here + 1] = (x[here + 1]! - s1) * inverse;
    x[here + 2] = (x[here + 2]! - s2) * inverse;
    x[here + 3] = (x[here + 3]! - s3) * inverse;
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let l = i * stride + 1;
    let s0 = 0, s1 = 0, s2 = 0, s3 = 0; // prettier-ignore
    const here = 4 * i;
    const end = here + 4 * Math.min(b, n - 1 - i);
    for (let at = here + 4; at <= end; at += 4, l += 1) {
      const value = columns[l]!;
      s0 += value * x[at]!;
      s1 += value * x[at + 1]!;
      s2 += value * x[at + 2]!;
      s3 += value * x[at + 3]!;
    }
    const inverse = inverseDiagonal[i]!;
    x[here] = (x[here]! - s0) * inverse;
    x[here + 1] = (x[here + 1]! - s1) * inverse;
    x[here + 2] = (x[here + 2]! - s2) * inverse;
    x[here + 3] = (x[here + 3]! - s3) * inverse;
  }
}

/** Solves a small dense symmetric positive definite system; `matrix` is n × n row-major and is left as it was. */
export function solveDense(matrix: Float64Array, rightHandSide: Float64Array): Float64Array {
  const n = rightHandSide.length;
  const shape = { order: n, halfBandwidth: Math.max(1, n - 1) };
  const stride = shape.halfBandwidth + 1;
  const band = new Float64Array(bandLength(shape));
  for (let j = 0; j < n; j += 1) for (let i = j; i < n; i += 1) band[j * stride + i - j] = matrix[i * n + j]!;
  const block = new Float64Array(n * LANES);
  rightHandSide.forEach((value, row) => (block[blockIndex(n, row, 0)] = value));
  solveBlock(factorise(shape, band), block, 1);
  return rightHandSide.map((_, row) => block[blockIndex(n, row, 0)]!);
}
