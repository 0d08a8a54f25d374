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

/** Inputs that change a contact, and the neck not at all. */
export const CONTACT_INPUTS = [
  'density',
  'crushing',
  'kerfMm',
  'studWidthMm',
  'studShape',
  'studArea',
  'studSoftness',
  'wallStiffness',
  'bite',
] as const satisfies readonly (keyof Deviations)[];
export type ContactInput = (typeof CONTACT_INPUTS)[number];

/** The contact with deviations on top; the same as contactsOf (wire-contact.ts) gives with them. */
export function deviatedContact(contact: Contact, deviations: Pick<Deviations, ContactInput>): Contact {
  const { density, crushing, kerfMm, studWidthMm, studShape, studArea, studSoftness, wallStiffness, bite } = deviations;
  return {
    studForceN: contact.studForceN * density * studArea * bite,
    studHeightMm: contact.studHeightMm + studWidthMm / 2,
    studShape: Math.max(0, contact.studShape + studShape),
    embeddingLengthMm: contact.embeddingLengthMm * studSoftness,
    studInterferenceMm: contact.studInterferenceMm + studWidthMm - kerfMm,
    bodyInterferenceMm: contact.bodyInterferenceMm - kerfMm,
    bodyStiffnessNMm: contact.bodyStiffnessNMm * wallStiffness * bite,
    bodyLimitN: contact.bodyLimitN * bite * crushing,
  };
}

/** Wedge force of a fret in a fresh slot of its own, N. @param flexibilityMmN c. */
export function seatOne(contact: Contact, flexibilityMmN: number): number {
  let low = 0;
  let high = contactForce(contact, 0).forceN;
  let force = high;
  for (let step = 0; step < 60 && high - low > 1e-9 * high; step += 1) {
    const state = contactForce(contact, flexibilityMmN * force);
    const residual = state.forceN - force;
    if (residual > 0) low = force;
    else high = force;
    if (Math.abs(residual) <= 1e-9 * high) break;
    const next = force + residual / (1 + flexibilityMmN * state.stiffnessNMm);
    force = next > low && next < high ? next : (low + high) / 2;
  }
  return force;
}
