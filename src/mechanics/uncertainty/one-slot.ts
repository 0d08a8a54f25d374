/**
 * One slot for all of its kind: the seating of a representative fret, solved anew for every sample, since the force is
 * not nearly linear in the width of kerf and studs.
 *
 *   F = φ(c·F)      φ: force of the contact at an opening (contact.ts); c = Δ/F of that slot in the full seating, mm/N
 *
 * c holds the neighbours' share too, which is 2 % of the slot's own near the nut and about 30 % near the body: all frets of one kind deviate together.
 */
import { contactForce, type Contact } from '../seating/contact.ts';
import type { Deviations } from '../deviations.ts';

/** The contact with deviations on top; the same as contactsOf (wire-contact.ts) gives with them. */
export function deviatedContact(
  contact: Contact,
  deviations: Pick<Deviations, 'density' | 'crushing' | 'kerfMm' | 'studWidthMm' | 'studSoftness' | 'bite'>,
): Contact {
  const { density, crushing, kerfMm, studWidthMm, studSoftness, bite } = deviations;
  return {
    studForceN: contact.studForceN * density * bite,
    embeddingLengthMm: contact.embeddingLengthMm * studSoftness,
    studInterferenceMm: contact.studInterferenceMm + studWidthMm - kerfMm,
    bodyInterferenceMm: contact.bodyInterferenceMm - kerfMm,
    bodyStiffnessNMm: contact.bodyStiffnessNMm * bite,
    bodyLimitN: contact.bodyLimitN * bite * crushing,
  };
}

/** Wedge force of a fret in a fresh slot of its own, N. @param flexibilityMmN c. */
export function seatOne(contact: Contact, flexibilityMmN: number): number {
  let low = 0;
  let high = contactForce(contact, 0, 0).forceN;
  let force = high;
  for (let step = 0; step < 60 && high - low > 1e-9 * high; step += 1) {
    const state = contactForce(contact, flexibilityMmN * force, 0);
    const residual = state.forceN - force;
    if (residual > 0) low = force;
    else high = force;
    if (Math.abs(residual) <= 1e-9 * high) break;
    const next = force + residual / (1 + flexibilityMmN * state.stiffnessNMm);
    force = next > low && next < high ? next : (low + high) / 2;
  }
  return force;
}
