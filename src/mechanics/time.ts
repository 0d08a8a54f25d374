/**
 * Time: creep of wood under load, relaxation of the wedges.
 *
 *   creep      φ(t) = (t/29 500 d)^0.21                           Toratti 1992 (from memory)
 *   wedge      r(t) = F(t)/F(0) = 1/(1 + a·(t/90 d)^0.21)         a = 0.5 leaves two thirds after three months (assumption,
 *                                                                 after the Wood Handbook's 60–70 %, from memory)
 *   deflection of a load put on at 0 and held:       1 + φ(t)
 *   deflection by the relaxing wedges (Boltzmann):   ω(t) = r(t) + φ(t) + ∫₀ᵗ φ(t − s)·r′(s) ds
 *
 * Times in days.
 */

const CREEP_DAYS = 29_500;
const RELAXATION_DAYS = 90;
const EXPONENT = 0.21;

/** φ(t). @param factor 1 as published. */
export function creep(days: number, factor = 1): number {
  return days <= 0 ? 0 : factor * (days / CREEP_DAYS) ** EXPONENT;
}

/** r(t). @param amount a. */
export function wedgeForceLeft(days: number, amount: number): number {
  return days <= 0 ? 1 : 1 / (1 + amount * (days / RELAXATION_DAYS) ** EXPONENT);
}

const STEPS = 64;
/**
 * The steps of the integral, s = t·u⁴ with u even: graded towards both ends, where the kernel and r change fast. Both
 * kernels are powers, so what the steps need of them does not depend on t:
 * (s/90)^0.21 = (t/90)^0.21·u^0.84 at the end of a step, (t − s)^0.21 = t^0.21·(1 − u⁴)^0.21 at its middle.
 */
const RELAXED_SHARE = Float64Array.from({ length: STEPS }, (_, k) => ((k + 1) / STEPS) ** (4 * EXPONENT));
const CREPT_SHARE = Float64Array.from({ length: STEPS }, (_, k) => (1 - ((k + 0.5) / STEPS) ** 4) ** EXPONENT);

/** ω(t): the wedges' part of the line over that at seating. 64 steps hold the integral to 1e-4. */
export function wedgeLineLeft(days: number, amount: number, creepFactor = 1): number {
  if (days <= 0) return 1;
  const relaxed = amount * (days / RELAXATION_DAYS) ** EXPONENT;
  let integral = 0;
  let before = 1;
  for (let k = 0; k < STEPS; k += 1) {
    const now = 1 / (1 + relaxed * RELAXED_SHARE[k]);
    integral += CREPT_SHARE[k] * (now - before);
    before = now;
  }
  return wedgeForceLeft(days, amount) + creep(days, creepFactor) * (1 + integral);
}

/** The strings' part of the line over that on the day they went on. */
export function stringLineGrowth(days: number, creepFactor = 1): number {
  return 1 + creep(days, creepFactor);
}
