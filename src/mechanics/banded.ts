/**
 * Symmetric positive definite banded systems: A = L·Lᵀ (Cholesky), and the solution for a block of right-hand sides.
 *
 * Storage: `band[j·stride + k]`, stride = b + 4, holds A(j + k, j), k = 0…b, b the half bandwidth: the lower triangle by columns.
 * Right-hand sides: in blocks of four columns, see `blockIndex`.
 * Reference: Golub & Van Loan, Matrix Computations, §4.3.5 (band Cholesky), from memory.
 * Operations: about n·b² for the factor and 4·n·b for each right-hand side.
 */
import { say } from '../build/language.ts';

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

/** Columns are eliminated four at a time. */
const PANEL = 4;

/** Numbers from one column of the storage to the next. The three after the band stay zero, so that panels need no edges. */
export function bandStride({ halfBandwidth }: BandShape): number {
  return halfBandwidth + PANEL;
}

export function bandLength(shape: BandShape): number {
  // The updates of the last panel run over the end of the matrix into columns of zeros.
  return (shape.order + shape.halfBandwidth + PANEL) * bandStride(shape);
}

/**
 * Factorises in place; `band` becomes the factor's storage. A panel of four columns is eliminated at a time, so that every
 * entry of the trailing matrix is loaded and stored a quarter as often.
 * @throws {RangeError} when the matrix is not positive definite.
 */
export function factorise(shape: BandShape, band: Float64Array): BandFactor {
  const { order: n, halfBandwidth: b } = shape;
  const stride = bandStride(shape);
  const inverseDiagonal = new Float64Array(n);

  for (let j = 0; j < n; j += PANEL) {
    const width = Math.min(PANEL, n - j);
    for (let c = 0; c < width; c += 1) {
      const q = (j + c) * stride;
      for (let earlier = 0; earlier < c; earlier += 1) {
        const p = (j + earlier) * stride;
        const shift = c - earlier;
        const factor = band[p + shift]!;
        for (let k = shift; k <= b; k += 1) band[q + k - shift]! -= factor * band[p + k]!;
      }
      const pivot = band[q]!;
      if (!(pivot > 0)) throw new RangeError(say`the matrix is not positive definite: pivot ${j + c} is ${pivot}`);
      const root = Math.sqrt(pivot);
      const inverse = 1 / root;
      band[q] = root;
      inverseDiagonal[j + c] = inverse;
      for (let k = 1; k <= b; k += 1) band[q + k]! *= inverse;
    }
    if (width < PANEL) break;
    // Rank-four update of the columns j + 4 … j + 3 + b.
    const p0 = j * stride;
    const p1 = p0 + stride - 1;
    const p2 = p1 + stride - 1;
    const p3 = p2 + stride - 1;
    for (let k = PANEL; k < b + PANEL; k += 1) {
      const a0 = band[p0 + k]!;
      const a1 = band[p1 + k]!;
      const a2 = band[p2 + k]!;
      const a3 = band[p3 + k]!;
      const target = (j + k) * stride - k;
      for (let i = k; i < b + PANEL; i += 1) {
        band[target + i]! -= a0 * band[p0 + i]! + a1 * band[p1 + i]! + a2 * band[p2 + i]! + a3 * band[p3 + i]!;
      }
    }
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
  const stride = bandStride(factor);
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
  const stride = bandStride(shape);
  const band = new Float64Array(bandLength(shape));
  for (let j = 0; j < n; j += 1) for (let i = j; i < n; i += 1) band[j * stride + i - j] = matrix[i * n + j]!;
  const block = new Float64Array(n * LANES);
  rightHandSide.forEach((value, row) => (block[blockIndex(n, row, 0)] = value));
  solveBlock(factorise(shape, band), block, 1);
  return rightHandSide.map((_, row) => block[blockIndex(n, row, 0)]!);
}
