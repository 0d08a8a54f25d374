/**
 * The bow that relaxing wedges leave in creeping wood, by quadrature apart from the library:
 *
 *   ω(t) = r(t) + φ(t) + ∫₀ᵗ φ(t − s)·r′(s) ds,   r = 1/(1 + a·(s/90)^0.21),   φ = (t/29 500)^0.21
 *
 * Both ends of the integral are singular in a derivative: tanh–sinh quadrature (Takahasi & Mori 1974) does not mind.
 */
export function boltzmannLineLeft(days: number, amount: number, creepFactor = 1): number {
  const phi = (t: number) => creepFactor * (t / 29_500) ** 0.21;
  const r = (s: number) => 1 / (1 + amount * (s / 90) ** 0.21);
  // r′(s) ds with v = (s/90)^0.21: −a/(1 + a·v)² dv, which has no pole at 0.
  const most = (days / 90) ** 0.21;
  const step = 0.02;
  let integral = 0;
  for (let k = -220; k <= 220; k += 1) {
    const u = k * step;
    const inner = (Math.PI / 2) * Math.sinh(u);
    const weight = ((most / 2) * ((Math.PI / 2) * Math.cosh(u))) / Math.cosh(inner) ** 2;
    const v = (most / 2) * (1 + Math.tanh(inner));
    const remaining = Math.max(0, days - 90 * v ** (1 / 0.21));
    integral += step * weight * phi(remaining) * (-amount / (1 + amount * v) ** 2);
  }
  return r(days) + phi(days) + integral;
}
