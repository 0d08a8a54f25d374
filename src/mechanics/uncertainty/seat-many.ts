/**
 * One slot of many samples: what `seatOne` of one-slot.ts finds for each, to a ten-millionth, without making anything on the way.
 *
 *   r(F) = φ(c·F) − F = 0, falling in F: Newton from F = 0, held between the greatest force known to be too small and the
 *   least known to be too great
 */
import type { Contact } from '../seating/contact.ts';
import type { ContactInput } from './one-slot.ts';

const SETTLED = 1e-7;
const MOST_STEPS = 60;

/** Deviations from the stated contact, one a sample: factors and offsets. */
export type ManyDeviations = Readonly<Record<ContactInput, Float64Array>>;

/** The contact of one sample: numbers only, so that nothing is made anew. */
interface Here {
  studForceN: number;
  studHeightMm: number;
  studShape: number;
  embeddingLengthMm: number;
  studInterferenceMm: number;
  bodyInterferenceMm: number;
  bodyStiffnessNMm: number;
  bodyLimitN: number;
  /** What `touch` finds: force and −dF/dΔ. */
  forceN: number;
  stiffnessNMm: number;
}

/** First loading of both contacts at an opening: contactForce of seating/contact.ts. */
function touch(here: Here, openingMm: number): void {
  const bite = (here.studInterferenceMm - openingMm) / 2;
  let force = 0;
  let perBite = 0;
  if (bite > 0) {
    const { studHeightMm, studShape, embeddingLengthMm } = here;
    const spent = Math.exp(-bite / embeddingLengthMm);
    const grows = bite < studHeightMm && studShape > 0;
    const area = grows ? (studShape === 1 ? bite / studHeightMm : (bite / studHeightMm) ** studShape) : 1;
    const full = here.studForceN * area;
    force = full * (1 - spent);
    perBite = full * ((grows ? ((1 - spent) * studShape) / bite : 0) + spent / embeddingLengthMm);
  }
  const bodyBite = (here.bodyInterferenceMm - openingMm) / 2;
  if (bodyBite > 0) {
    const elastic = here.bodyStiffnessNMm * bodyBite;
    if (elastic < here.bodyLimitN) {
      force += elastic;
      perBite += here.bodyStiffnessNMm;
    } else force += here.bodyLimitN;
  }
  here.forceN = force;
  here.stiffnessNMm = perBite / 2;
}

function seated(here: Here, flexibilityMmN: number): number {
  touch(here, 0);
  let low = 0;
  let high = here.forceN;
  let force = high / (1 + flexibilityMmN * here.stiffnessNMm);
  for (let step = 0; step < MOST_STEPS && high - low > SETTLED * high; step += 1) {
    touch(here, flexibilityMmN * force);
    const residual = here.forceN - force;
    if (residual > 0) low = force;
    else high = force;
    const next = force + residual / (1 + flexibilityMmN * here.stiffnessNMm);
    if (Math.abs(next - force) <= SETTLED * force) return next;
    force = next > low && next < high ? next : (low + high) / 2;
  }
  return force;
}

/**
 * Force of a fret in a fresh slot of its own in each sample, N.
 * @param flexibilityMmN c as stated; @param softer what it is multiplied by in each sample
 */
export function seatMany(
  contact: Contact,
  flexibilityMmN: number,
  on: ManyDeviations,
  softer: Float64Array,
): Float64Array {
  const here: Here = { ...contact, forceN: 0, stiffnessNMm: 0 };
  const { bite, studArea, density, crushing, kerfMm, studWidthMm, studShape, studSoftness, wallStiffness } = on;
  const out = new Float64Array(softer.length);
  for (let i = 0; i < out.length; i += 1) {
    const c = bite[i];
    const wider = studWidthMm[i];
    const kerf = kerfMm[i];
    here.studForceN = contact.studForceN * density[i] * studArea[i] * c;
    here.studHeightMm = contact.studHeightMm + wider / 2;
    here.studShape = Math.max(0, contact.studShape + studShape[i]);
    here.embeddingLengthMm = contact.embeddingLengthMm * studSoftness[i];
    here.studInterferenceMm = contact.studInterferenceMm + wider - kerf;
    here.bodyInterferenceMm = contact.bodyInterferenceMm - kerf;
    here.bodyStiffnessNMm = contact.bodyStiffnessNMm * wallStiffness[i] * c;
    here.bodyLimitN = contact.bodyLimitN * c * crushing[i];
    out[i] = seated(here, flexibilityMmN * softer[i]);
  }
  return out;
}
