/**
 * Small dense systems, symmetric and positive definite: A = L·Lᵀ (Cholesky), by rows, in place.
 *
 *   L(i, j) = (A(i, j) − Σ_{k<j} L(i, k)·L(j, k))/L(j, j),   L(i, i) = √(A(i, i) − Σ_{k<i} L(i, k)²)
 *
 * Reference: Golub & Van Loan, Matrix Computations, §4.2, from memory. Operations: n³/3.
 */
import { Refused } from '../refusal.ts';

/**
 * Factorises in place. @param matrix n × n row-major; its lower triangle is read, and overwritten with L
 * @throws {RangeError} when the matrix is not positive definite.
 */
export function factorDense(matrix: Float64Array, n: number): void {
  for (let i = 0; i < n; i += 1) {
    const row = i * n;
    let pivot = matrix[row + i];
    for (let j = 0; j < i; j += 1) {
      const other = j * n;
      let entry = matrix[row + j];
      for (let k = 0; k < j; k += 1) entry -= matrix[row + k] * matrix[other + k];
      entry /= matrix[other + j];
      matrix[row + j] = entry;
      pivot -= entry * entry;
    }
    if (!(pivot > 0)) throw new Refused({ code: 'matrix-not-positive', row: i, pivot });
    matrix[row + i] = Math.sqrt(pivot);
  }
}

/** Is the matrix positive definite? It is overwritten. */
export function isPositive(matrix: Float64Array, n: number): boolean {
  try {
    factorDense(matrix, n);
    return true;
  } catch (error) {
    if (error instanceof Refused) return false;
    throw error;
  }
}

/** Solves L·x = b in place. */
export function substituteForward(lower: Float64Array, x: Float64Array): void {
  const n = x.length;
  for (let i = 0; i < n; i += 1) {
    const row = i * n;
    let right = x[i];
    for (let j = 0; j < i; j += 1) right -= lower[row + j] * x[j];
    x[i] = right / lower[row + i];
  }
}

/** Solves Lᵀ·x = b in place. */
export function substituteBack(lower: Float64Array, x: Float64Array): void {
  const n = x.length;
  for (let i = n - 1; i >= 0; i -= 1) {
    const row = i * n;
    const value = x[i] / lower[row + i];
    x[i] = value;
    for (let j = 0; j < i; j += 1) x[j] -= lower[row + j] * value;
  }
}

/**
 * Solves A·x = b in place.
 * @param matrix as in `factorDense`. @param x in: b, length n; out: x.
 * @throws {RangeError} when the matrix is not positive definite.
 */
export function solveDense(matrix: Float64Array, x: Float64Array): void {
  factorDense(matrix, x.length);
  substituteForward(matrix, x);
  substituteBack(matrix, x);
}
