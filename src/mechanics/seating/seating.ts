/**
 * Seating: the wedge forces at which every tang fits its slot.
 *
 *   F_i = φ_i(Δ_i),   Δ_i = Σ_j C_ij·F_j + o_i      C: slot flexibility matrix (mm/N), o: opening by other loads (mm)
 *
 * φ falls with Δ, so the solution is unique. Newton with the contacts' tangent k = −φ′: the step solves
 * (I + D·C·D)·z = −D·C·r with D = diag(√k), dF = r + D·z, which is symmetric and positive definite.
 */
import { Refused } from '../refusal.ts';
import { solveDense } from '../elements/dense.ts';
import { contactForce, type Contact } from './contact.ts';

export interface Seating {
  readonly forceN: Float64Array;
  readonly openingMm: Float64Array;
  /** −dF/dΔ of each contact there, N/mm. */
  readonly stiffnessNMm: Float64Array;
}

const MOST_STEPS = 100;
/** The forces are settled when none is off by more than this, N. */
const SETTLED_N = 1e-8;

/**
 * @param flexibility n × n row-major, mm/N; @param otherOpeningMm o, length n;
 * @param deepestBiteMm deepest bite so far of each slot, or undefined for fresh slots.
 * @param startForceN forces to begin with: those before the other loads came on, say.
 * @throws {Refused} when the forces do not settle (cannot happen for a flexibility that is positive definite).
 */
export function seat(
  contacts: readonly Contact[],
  flexibility: Float64Array,
  otherOpeningMm?: ArrayLike<number>,
  deepestBiteMm?: ArrayLike<number>,
  startForceN?: Float64Array,
): Seating {
  const n = contacts.length;
  const forceN = startForceN ? Float64Array.from(startForceN) : new Float64Array(n);
  const openingMm = new Float64Array(n);
  const stiffnessNMm = new Float64Array(n);
  const residual = new Float64Array(n);
  const matrix = new Float64Array(n * n);

  const evaluate = (): number => {
    let worst = 0;
    for (let i = 0; i < n; i += 1) {
      let opening = otherOpeningMm?.[i] ?? 0;
      for (let j = 0; j < n; j += 1) opening += flexibility[i * n + j]! * forceN[j]!;
      openingMm[i] = opening;
      const state = contactForce(contacts[i]!, opening, deepestBiteMm?.[i] ?? 0);
      stiffnessNMm[i] = state.stiffnessNMm;
      residual[i] = state.forceN - forceN[i]!;
      worst = Math.max(worst, Math.abs(residual[i]!));
    }
    return worst;
  };

  let worst = evaluate();
  for (let step = 0; step < MOST_STEPS && worst > SETTLED_N; step += 1) {
    const change = newtonStep(flexibility, stiffnessNMm, residual, matrix);
    const before = Float64Array.from(forceN);
    // Halve the step until it helps: the contacts' curve has a corner where the body meets the wall.
    for (let share = 1; share > 1e-6; share /= 2) {
      for (let i = 0; i < n; i += 1) forceN[i] = before[i]! + share * change[i]!;
      const now = evaluate();
      if (now < worst || share < 2e-6) {
        worst = now;
        break;
      }
    }
  }
  if (worst > 100 * SETTLED_N) throw new Refused({ code: 'seating-unsettled', leftN: worst });
  return { forceN, openingMm, stiffnessNMm };
}

/** @param matrix room for n × n numbers. @returns dF. */
function newtonStep(
  flexibility: Float64Array,
  stiffness: Float64Array,
  residual: Float64Array,
  matrix: Float64Array,
): Float64Array {
  const n = residual.length;
  const root = stiffness.map(Math.sqrt);
  const z = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < i; j += 1) {
      const c = (flexibility[i * n + j]! + flexibility[j * n + i]!) / 2;
      matrix[i * n + j] = root[i]! * c * root[j]!;
      z[i]! -= c * residual[j]!;
      z[j]! -= c * residual[i]!;
    }
    const c = flexibility[i * n + i]!;
    matrix[i * n + i] = root[i]! * c * root[i]! + 1;
    z[i]! -= c * residual[i]!;
  }
  for (let i = 0; i < n; i += 1) z[i]! *= root[i]!;
  solveDense(matrix, z);
  return residual.map((r, i) => r + root[i]! * z[i]!);
}
