/**
 * Symmetric positive definite banded systems: A = L·Lᵀ (Cholesky), and the solution for right-hand sides, four at a time.
 *
 * Storage: `band[j·stride + k]`, stride = b + 4, holds A(j + k, j), k = 0…b, b the half bandwidth: the lower triangle by columns.
 * Right-hand sides: in blocks of four, see `blockIndex`.
 * Reference: Golub & Van Loan, Matrix Computations, §4.3.5 (band Cholesky), from memory.
 * Operations: about n·b² for the factor and 4·n·b for each right-hand side.
 *
 * Everything is done in panels of four columns of L (the order is padded to full panels with rows of the unit matrix).
 * What bounds the speed is not the arithmetic but the loads and stores around it, and a panel shares them out:
 *
 *   factor          an entry right of the panel is loaded and stored once for four columns; two columns of it are done
 *                   together, so that the panel's own entries are loaded once for both
 *   substitution    4 rows × 4 right-hand sides of the solution are held while the panel runs past: 4 entries of L are
 *                   loaded for 16 products. Both ways the panel is subtracted from the rows yet to come (forward: those
 *                   below it, backward: those above), so that L by columns serves both.
 */
import { Refused } from '../refusal.ts';

/** Order n and half bandwidth b. */
export interface BandShape {
  readonly order: number;
  readonly halfBandwidth: number;
}

/** A factor L in the storage of the matrix, with 1/L(j, j) on its diagonal. */
export interface BandFactor extends BandShape {
  readonly band: Float64Array;
}

/** Columns of L that are handled together. */
const PANEL = 4;

/** Numbers from one column of the storage to the next. The three after the band stay zero, so that panels need no edges. */
export function bandStride({ halfBandwidth }: BandShape): number {
  return halfBandwidth + PANEL;
}

export function bandLength(shape: BandShape): number {
  // The updates of the last panel run over the end of the matrix into columns of zeros.
  return (shape.order + shape.halfBandwidth + PANEL) * bandStride(shape);
}

/** The order with the rows that fill the last panel. */
function paddedOrder(order: number): number {
  return Math.ceil(order / PANEL) * PANEL;
}

/**
 * Factorises in place; `band` becomes the factor's storage.
 * @throws {RangeError} when the matrix is not positive definite.
 */
export function factorise(shape: BandShape, band: Float64Array): BandFactor {
  const { order, halfBandwidth } = shape;
  const stride = bandStride(shape);
  const end = paddedOrder(order);
  for (let row = order; row < end; row += 1) band[row * stride] = 1;
  const inverseRoot = (pivot: number, row: number) => {
    if (!(pivot > 0)) throw new Refused({ code: 'matrix-not-positive', row, pivot });
    return 1 / Math.sqrt(pivot);
  };

  for (let j = 0; j < end; j += PANEL) {
    // p_c + k is where L(j + k, j + c) stands.
    const p0 = j * stride;
    const p1 = p0 + stride - 1;
    const p2 = p1 + stride - 1;
    const p3 = p2 + stride - 1;
    const d0 = inverseRoot(band[p0], j);
    const l10 = band[p0 + 1] * d0;
    const l20 = band[p0 + 2] * d0;
    const l30 = band[p0 + 3] * d0;
    const d1 = inverseRoot(band[p1 + 1] - l10 * l10, j + 1);
    const l21 = (band[p1 + 2] - l20 * l10) * d1;
    const l31 = (band[p1 + 3] - l30 * l10) * d1;
    const d2 = inverseRoot(band[p2 + 2] - l20 * l20 - l21 * l21, j + 2);
    const l32 = (band[p2 + 3] - l30 * l20 - l31 * l21) * d2;
    const d3 = inverseRoot(band[p3 + 3] - l30 * l30 - l31 * l31 - l32 * l32, j + 3);
    band[p0] = d0;
    band[p0 + 1] = l10;
    band[p0 + 2] = l20;
    band[p0 + 3] = l30;
    band[p1 + 1] = d1;
    band[p1 + 2] = l21;
    band[p1 + 3] = l31;
    band[p2 + 2] = d2;
    band[p2 + 3] = l32;
    band[p3 + 3] = d3;

    const below = halfBandwidth + PANEL;
    for (let k = PANEL; k < below; k += 1) {
      const a0 = band[p0 + k] * d0;
      const a1 = (band[p1 + k] - a0 * l10) * d1;
      const a2 = (band[p2 + k] - a0 * l20 - a1 * l21) * d2;
      band[p0 + k] = a0;
      band[p1 + k] = a1;
      band[p2 + k] = a2;
      band[p3 + k] = (band[p3 + k] - a0 * l30 - a1 * l31 - a2 * l32) * d3;
    }

    // What the panel takes off the columns j + k and j + k + 1; past the last column the second one has no rows.
    for (let k = PANEL; k < below; k += 2) {
      const a0 = band[p0 + k];
      const a1 = band[p1 + k];
      const a2 = band[p2 + k];
      const a3 = band[p3 + k];
      const b0 = band[p0 + k + 1];
      const b1 = band[p1 + k + 1];
      const b2 = band[p2 + k + 1];
      const b3 = band[p3 + k + 1];
      const first = (j + k) * stride - k;
      const second = first + stride - 1;
      band[first + k] -= a0 * a0 + a1 * a1 + a2 * a2 + a3 * a3;
      for (let i = k + 1; i < below; i += 1) {
        const c0 = band[p0 + i];
        const c1 = band[p1 + i];
        const c2 = band[p2 + i];
        const c3 = band[p3 + i];
        band[first + i] -= a0 * c0 + a1 * c1 + a2 * c2 + a3 * c3;
        band[second + i] -= b0 * c0 + b1 * c1 + b2 * c2 + b3 * c3;
      }
    }
  }
  return { order, halfBandwidth, band };
}

/** Factorises the matrix after holding some unknowns at nothing; `band` is used up. */
export function factoriseHeld(shape: BandShape, band: Float64Array, held: readonly number[]): BandFactor {
  const stride = bandStride(shape);
  for (const dof of held) {
    for (let k = 1; k <= shape.halfBandwidth; k += 1) {
      band[dof * stride + k] = 0;
      if (dof - k >= 0) band[(dof - k) * stride + k] = 0;
    }
    band[dof * stride] = 1;
  }
  return factorise(shape, band);
}

/** Right-hand sides that are solved together: those of a block. */
export const LANES = 4;

/** Room for a block of right-hand sides, all zero. */
export function createBlock(order: number): Float64Array {
  return new Float64Array(paddedOrder(order) * LANES);
}

/** Where row r of right-hand side 0 to 3 stands in its block: row-major. */
export function blockIndex(row: number, lane: number): number {
  return row * LANES + lane;
}

/**
 * Solves A·X = B in place for a block of right-hand sides.
 * @param block from `createBlock`; overwritten with X.
 * @param firstRow the first row that is not zero (0 when unknown): forward substitution starts there.
 */
export function solveBlock(factor: BandFactor, block: Float64Array, firstRow = 0): void {
  substituteForward(factor, block, firstRow);
  substituteBackward(factor, block);
}

/** L·Y = B: each panel's own rows, then what they take off the rows below. @param firstRow rows before it are zero. */
function substituteForward({ order, halfBandwidth, band }: BandFactor, x: Float64Array, firstRow: number): void {
  const down = halfBandwidth + PANEL - 1;
  const end = paddedOrder(order);
  for (let j = firstRow - (firstRow % PANEL); j < end; j += PANEL) {
    const p0 = j * (down + 1);
    const p1 = p0 + down;
    const p2 = p1 + down;
    const p3 = p2 + down;
    for (let at = LANES * j; at < LANES * (j + 1); at += 1) {
      const x0 = x[at] * band[p0];
      const x1 = (x[at + 4] - band[p0 + 1] * x0) * band[p1 + 1];
      const x2 = (x[at + 8] - band[p0 + 2] * x0 - band[p1 + 2] * x1) * band[p2 + 2];
      const x3 = (x[at + 12] - band[p0 + 3] * x0 - band[p1 + 3] * x1 - band[p2 + 3] * x2) * band[p3 + 3];
      x[at] = x0;
      x[at + 4] = x1;
      x[at + 8] = x2;
      x[at + 12] = x3;
    }
    const rows = Math.min(halfBandwidth, end - j - PANEL);
    subtractPanel(x, j, j + PANEL, rows, band, p0 + PANEL, down, 1);
  }
}

/** Lᵀ·X = Y: each panel's own rows, the last first, then what they take off the rows above. */
function substituteBackward({ order, halfBandwidth, band }: BandFactor, x: Float64Array): void {
  const down = halfBandwidth + PANEL - 1;
  for (let j = paddedOrder(order) - PANEL; j >= 0; j -= PANEL) {
    const p0 = j * (down + 1);
    const p1 = p0 + down;
    const p2 = p1 + down;
    const p3 = p2 + down;
    for (let at = LANES * j; at < LANES * (j + 1); at += 1) {
      const x3 = x[at + 12] * band[p3 + 3];
      const x2 = (x[at + 8] - band[p2 + 3] * x3) * band[p2 + 2];
      const x1 = (x[at + 4] - band[p1 + 2] * x2 - band[p1 + 3] * x3) * band[p1 + 1];
      const x0 = (x[at] - band[p0 + 1] * x1 - band[p0 + 2] * x2 - band[p0 + 3] * x3) * band[p0];
      x[at] = x0;
      x[at + 4] = x1;
      x[at + 8] = x2;
      x[at + 12] = x3;
    }
    const rows = Math.min(halfBandwidth, j);
    subtractPanel(x, j, j - rows, rows, band, (j - rows) * down + j, 1, down);
  }
}

/**
 * Takes what the four solved rows from `solved` on give off `rows` rows from `first` on. The first of these four and the
 * first of those rows meet in `band[entry]`; the next of the four stands `across` further on, the next row `along`.
 */
function subtractPanel(
  x: Float64Array,
  solved: number,
  first: number,
  rows: number,
  band: Float64Array,
  entry: number,
  across: number,
  along: number,
): void {
  const s = LANES * solved;
  const a0 = x[s], a1 = x[s + 1], a2 = x[s + 2], a3 = x[s + 3]; // prettier-ignore
  const b0 = x[s + 4], b1 = x[s + 5], b2 = x[s + 6], b3 = x[s + 7]; // prettier-ignore
  const c0 = x[s + 8], c1 = x[s + 9], c2 = x[s + 10], c3 = x[s + 11]; // prettier-ignore
  const d0 = x[s + 12], d1 = x[s + 13], d2 = x[s + 14], d3 = x[s + 15]; // prettier-ignore
  const end = LANES * (first + rows);
  const across2 = 2 * across;
  const across3 = 3 * across;
  for (let at = LANES * first, e = entry; at < end; at += LANES, e += along) {
    const a = band[e];
    const b = band[e + across];
    const c = band[e + across2];
    const d = band[e + across3];
    x[at] -= a * a0 + b * b0 + c * c0 + d * d0;
    x[at + 1] -= a * a1 + b * b1 + c * c1 + d * d1;
    x[at + 2] -= a * a2 + b * b2 + c * c2 + d * d2;
    x[at + 3] -= a * a3 + b * b3 + c * c3 + d * d3;
  }
}
