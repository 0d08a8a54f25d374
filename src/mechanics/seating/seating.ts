/**
 * Seating: the wedge forces at which every tang fits its slot.
 *
 *   F_i = φ_i(Δ_i),   Δ_i = Σ_j C_ij·F_j + o_i      C: slot flexibility matrix (mm/N), o: opening by other loads (mm)
 *
 * φ falls with Δ and C is positive definite, so there is one solution: it is the F at which
 *
 *   J(F) = ½·Fᵀ·C·F + Σ_i ∫_{Δ_i}^∞ φ_i,      ∇J = −C·r,   r = φ(Δ) − F
 *
 * is least, and J is strongly convex. Newton with the contacts' tangent k = −φ′: the step solves
 * (I + K·C)·dF = r, K = diag(k), by a symmetric and positive definite matrix (see below). Along it J falls at first,
 * since its slope is −rᵀ·(C⁻¹ + K)⁻¹·r < 0. The whole step is taken when J has surely fallen at its end; else it is cut,
 * by bisection, to where the slope is at most half as steep and still downwards. Either way J falls in proportion to the
 * square of its gradient, so the search comes down from any start, over any number of corners (where a tang meets the wall,
 * where a wall crushes, where studs let go); between corners it is Newton's method. A line search on J
 * converges so for every strongly convex function whose gradient is Lipschitz (Nocedal & Wright, Numerical Optimization,
 * §3.2, from memory); one on the greatest residual, which is no such function, sticks at corners.
 */
import { Refused } from '../refusal.ts';
import { solveDense } from '../elements/dense.ts';
import { contactForce, steepestNMm, type Contact, type Seated } from './contact.ts';

export interface Seating {
  readonly forceN: Float64Array;
  readonly openingMm: Float64Array;
  /** −dF/dΔ of each contact there, N/mm. */
  readonly stiffnessNMm: Float64Array;
}

/** Ordinary necks need three to six; the hardest of ten thousand extreme ones a hundred or two. */
const MOST_STEPS = 1000;
/** The forces are settled when none is off by more than this, N. */
const SETTLED_N = 1e-8;
/** What may be left of it where that cannot be reached, N. Rounding alone may leave more: see `roundingN`. */
const ROUNDING_N = 1e-6;
/** A whole step is taken when J falls by at least half of this share of its slope at the start. */
const FALL_WANTED = 0.2;
/** Else the step ends where at most this share of that slope is left. */
const SLOPE_LEFT = 0.5;
const MOST_BISECTIONS = 60;

/**
 * @param flexibility n × n row-major, mm/N, symmetric and positive definite; @param otherOpeningMm o, length n;
 * @param seated where the tangs stood before the other loads came on; undefined for fresh slots.
 * @param startForceN forces to begin with: those before the other loads came on, say.
 * @throws {Refused} when the forces do not settle to within rounding: the flexibility is not positive definite, or a number is none.
 */
export function seat(
  contacts: readonly Contact[],
  flexibility: Float64Array,
  otherOpeningMm?: ArrayLike<number>,
  seated?: readonly Seated[],
  startForceN?: Float64Array,
): Seating {
  const n = contacts.length;
  const forceN = startForceN ? Float64Array.from(startForceN) : new Float64Array(n);
  const openingMm = new Float64Array(n);
  const stiffnessNMm = new Float64Array(n);
  const residual = new Float64Array(n);
  const matrix = new Float64Array(n * n);

  const open = () => {
    multiply(flexibility, forceN, openingMm);
    for (let i = 0; i < n; i += 1) openingMm[i] += otherOpeningMm?.[i] ?? 0;
  };
  /** Contacts at the openings. @returns the greatest residual, N. */
  const touch = (): number => {
    let worst = 0;
    for (let i = 0; i < n; i += 1) {
      const state = contactForce(contacts[i], openingMm[i], seated?.[i]);
      stiffnessNMm[i] = state.stiffnessNMm;
      residual[i] = state.forceN - forceN[i];
      worst = Math.max(worst, Math.abs(residual[i]));
    }
    return worst;
  };

  /** No further step can be told from rounding. */
  const isWithinRounding = () =>
    contacts.every((contact, i) => {
      let sizeMm = Math.abs(otherOpeningMm?.[i] ?? 0);
      for (let j = 0; j < n; j += 1) sizeMm += Math.abs(flexibility[i * n + j] * forceN[j]);
      return Math.abs(residual[i]) <= Math.max(ROUNDING_N, roundingN(contact, n, sizeMm, forceN[i]));
    });

  open();
  let worst = touch();
  for (let step = 0; step < MOST_STEPS && !(worst <= SETTLED_N); step += 1) {
    const change = newtonStep(flexibility, stiffnessNMm, residual, matrix);
    const opens = new Float64Array(n);
    multiply(flexibility, change, opens);
    const before = { forceN: forceN.slice(), openingMm: openingMm.slice() };
    goAlong((share) => {
      for (let i = 0; i < n; i += 1) {
        forceN[i] = before.forceN[i] + share * change[i];
        openingMm[i] = before.openingMm[i] + share * opens[i];
      }
      touch();
      return -dot(opens, residual);
    }, -dot(opens, residual));
    // Sums of steps would gather rounding.
    open();
    const now = touch();
    // Contacts hard as steel on a neck soft as rubber: rounding leaves a little more, and no further step removes it.
    const isSpent = now > worst / 2 && isWithinRounding();
    worst = now;
    if (isSpent) break;
  }
  if (!isWithinRounding()) throw new Refused({ code: 'seating-unsettled', leftN: worst });
  return { forceN, openingMm, stiffnessNMm };
}

/**
 * How far rounding alone may take a residual from nothing, N: an opening that is the sum of n + 1 terms is uncertain by
 * (n + 1)·u·Σ|terms|, u = 2⁻⁵³ (Higham, Accuracy and Stability of Numerical Algorithms, §3.1, from memory), and a contact
 * turns that into force. Where strings close slots by metres, which hard tangs then hold open, it is more than any step
 * can take away; to this the forces solve the problem as stated.
 * @param sizeMm Σ|terms| of the slot's opening
 */
function roundingN(contact: Contact, n: number, sizeMm: number, forceN: number): number {
  return ((n + 1) * (steepestNMm(contact) * sizeMm + Math.abs(forceN)) * Number.EPSILON) / 2;
}

/**
 * Goes to a share of a step at which J has fallen. The slope s of J never falls along the step, so that J changes by at most
 * (s(½) + s(1))/2 over all of it, and falls all the way to wherever s is not yet positive.
 * @param slopeAt moves there and tells the slope.
 */
function goAlong(slopeAt: (share: number) => number, slopeAtStart: number): void {
  const middle = slopeAt(1 / 2);
  const end = slopeAt(1);
  if (end <= 0 || middle + end <= FALL_WANTED * slopeAtStart) return;
  let [low, high] = [0, 1];
  for (let i = 0; i < MOST_BISECTIONS; i += 1) {
    const share = (low + high) / 2;
    const slope = slopeAt(share);
    if (slope > 0) high = share;
    else if (slope >= SLOPE_LEFT * slopeAtStart) return;
    else low = share;
  }
  slopeAt(low);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i] * b[i];
  return sum;
}

/** out = C·x. */
function multiply(matrix: Float64Array, x: Float64Array, out: Float64Array): void {
  const n = x.length;
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += matrix[i * n + j] * x[j];
    out[i] = sum;
  }
}

/**
 * dF of a Newton step: (I + K·C)·dF = r. Contacts without a tangent (spent, or not touching) take dF = r; of the others
 * dF = D·(I + D·C·D)⁻¹·D⁻¹·r′, r′ being what the former leave of r, so that nothing is the difference of two large numbers.
 * @param matrix room for n × n numbers.
 */
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
    let free = 0;
    for (let j = 0; j < n; j += 1) if (root[j] === 0) free += flexibility[i * n + j] * residual[j];
    z[i] = root[i] === 0 ? 0 : residual[i] / root[i] - root[i] * free;
    for (let j = 0; j <= i; j += 1) {
      const c = (flexibility[i * n + j] + flexibility[j * n + i]) / 2;
      matrix[i * n + j] = root[i] * c * root[j];
    }
    matrix[i * n + i] += 1;
  }
  solveDense(matrix, z);
  return residual.map((r, i) => (root[i] === 0 ? r : root[i] * z[i]));
}
