/**
 * What a tang does to the walls of its slot: two contacts in parallel on each wall.
 *
 *   studs   F_s = n·A·p(β_s),   p(β) = f·(1 − exp(−β/δ)),   f = 0.082·(1 − 0.01 d)·ρ N/mm²,   K₀ = f/δ
 *           n = contact width / stud pitch; A projected area of a stud, mm²; d = √(4A/π) mm; ρ kg/m³; δ embedding length, mm
 *           f: embedding strength along the grain, EN 1995-1-1 eq. 8.16 / 8.32. It was written for dowels of millimetres; a
 *           stud of well under 1 mm is an extrapolation. The curve is that of Foschi 1974 without hardening (from memory).
 *           Unloading along K₀, never into tension.
 *   body    F_b = w·h·min(f_c, K_f·β_b) when the kerf is narrower than the tang: w contact width, h contact depth,
 *           f_c crushing strength parallel to the grain, K_f stiffness of a sawn wall, N/mm³ (assumption)
 *
 * Both walls are alike: β = (width − kerf − Δ)/2 with Δ the slot's opening.
 */

export interface Contact {
  /** n·A·f on one wall, N: what the studs reach when fully embedded. */
  readonly studForceN: number;
  /** δ, mm. */
  readonly embeddingLengthMm: number;
  /** Width over the studs less the kerf, mm. */
  readonly studInterferenceMm: number;
  /** Tang body width less the kerf, mm. */
  readonly bodyInterferenceMm: number;
  /** w·h·K_f on one wall, N/mm. */
  readonly bodyStiffnessNMm: number;
  /** w·h·f_c on one wall, N. */
  readonly bodyLimitN: number;
}

/** f in N/mm². */
export function embeddingStrengthMPa(diameterMm: number, densityKgM3: number): number {
  return 0.082 * (1 - 0.01 * diameterMm) * densityKgM3;
}

export interface ContactState {
  readonly forceN: number;
  /** −dF/dΔ, N/mm, ≥ 0. */
  readonly stiffnessNMm: number;
}

/** Bite of the studs into one wall, mm; 0 when they do not reach it. */
export function studBiteMm(contact: Contact, openingMm: number): number {
  return Math.max(0, (contact.studInterferenceMm - openingMm) / 2);
}

/**
 * Force on a wall at an opening.
 * @param deepestBiteMm the deepest bite so far: below it the studs unload along K₀. 0 for a fresh slot.
 */
export function contactForce(contact: Contact, openingMm: number, deepestBiteMm: number): ContactState {
  const { studForceN, embeddingLengthMm: delta } = contact;
  const bite = studBiteMm(contact, openingMm);
  let force = 0;
  let perBite = 0;
  if (bite >= deepestBiteMm) {
    if (contact.studInterferenceMm > openingMm) {
      const fallen = Math.expm1(-bite / delta);
      force = studForceN * -fallen;
      perBite = (studForceN / delta) * (1 + fallen);
    }
  } else {
    const reached = studForceN * -Math.expm1(-deepestBiteMm / delta);
    const unloaded = reached - (studForceN / delta) * (deepestBiteMm - (contact.studInterferenceMm - openingMm) / 2);
    if (unloaded > 0) {
      force = unloaded;
      perBite = studForceN / delta;
    }
  }
  const bodyBite = (contact.bodyInterferenceMm - openingMm) / 2;
  if (bodyBite > 0) {
    const elastic = contact.bodyStiffnessNMm * bodyBite;
    if (elastic < contact.bodyLimitN) {
      force += elastic;
      perBite += contact.bodyStiffnessNMm;
    } else {
      force += contact.bodyLimitN;
    }
  }
  return { forceN: force, stiffnessNMm: perBite / 2 };
}

/** Pressure of the tang's body over the crushing strength of the wall, at most 1; 0 where the body does not touch. */
export function wallPressureShare(contact: Contact, openingMm: number): number {
  const bite = Math.max(0, (contact.bodyInterferenceMm - openingMm) / 2);
  return Math.min(1, (contact.bodyStiffnessNMm * bite) / contact.bodyLimitN);
}
