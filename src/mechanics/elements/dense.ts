/**
 * Small dense systems, symmetric and positive definite: A = L·Lᵀ (Cholesky), by rows, in place.
 *
 *   L(i, j) = (A(i, j) − Σ_{k<j} L(i, k)·L(j, k))/L(j, j),   L(i, i) = √(A(i, i) − Σ_{k<i} L(i, k)²)
 *
 * Reference: Golub & Van Loan, Matrix Computations, §4.2, from memory. Operations: n³/3.
 */
import { Refused } from '../refusal.ts';

/**
 * Solves A·x = b in place.
 * @param matrix n × n row-major; its lower triangle is read, and overwritten with L. @param x in: b, length n; out: x.
 * @throws {RangeError} when the matrix is not positive definite.
 */
export function solveDense(matrix: Float64Array, x: Float64Array): void {
  const n = x.length;
  for (let i = 0; i < n; i += 1) {
    const row = i * n;
    // Forward substitution goes along with the factor.
    let right = x[i];
    let pivot = matrix[row + i];
    for (let j = 0; j < i; j += 1) {
      const other = j * n;
      let entry = matrix[row + j];
      for (let k = 0; k < j; k += 1) entry -= matrix[row + k] * matrix[other + k];
      entry /= matrix[other + j];
      matrix[row + j] = entry;
      pivot -= entry * entry;
      right -= entry * x[j];
    }
    if (!(pivot > 0)) throw new Refused({ code: 'matrix-not-positive', row: i, pivot });
    matrix[row + i] = Math.sqrt(pivot);
    x[i] = right / matrix[row + i];
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    const row = i * n;
    const value = x[i] / matrix[row + i];
    x[i] = value;
    for (let j = 0; j < i; j += 1) x[j] -= matrix[row + j] * value;
  }
}
