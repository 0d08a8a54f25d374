/**
 * Force to press a fret in, and to pull it out.
 *
 *   seating    2·μ·F + 2·n·c·f·β·d    friction on both walls, and the studs ploughing their grooves: n studs on each wall,
 *              each of frontal area β·d (bite × stud width) at the embedding strength f times the bite factor c, as it bears
 *              on the wall (assumption)
 *   pull-out   press: 2·μ·F;  glue: 2·τ·A, A the flank of the tang that stands in glue (neck/glue-reach.ts), τ = 3 MPa for
 *              glue on metal and end grain (assumption);  press and glue: both
 *
 * μ 0.2–0.65 (0.65 static, air-dry wood on steel: McKenzie & Karpovich 1968). N.
 */
import type { Build } from '../../neck/build.ts';
import { gluedTangMm2 } from '../../neck/glue-reach.ts';
import { boardRadiusMm } from '../../neck/neck-shape.ts';
import type { Contact } from './contact.ts';
import type { Method } from '../prediction-types.ts';
import { studDiameterMm } from './wire-contact.ts';

/** Shear strength of the glue on metal and end grain, MPa. */
export const GLUE_SHEAR_MPA = 3;

interface ForceInputs {
  readonly build: Build;
  readonly method: Method;
  readonly contacts: readonly Contact[];
  readonly wedgeForceN: ArrayLike<number>;
  readonly biteMm: readonly number[];
  readonly fretXMm: readonly number[];
  /** Length of tang in each slot, from `tangLengthsMm`. */
  readonly tangLengthMm: readonly number[];
}

export function seatingForceN({ build, contacts, wedgeForceN, biteMm }: ForceInputs): number[] {
  const diameter = studDiameterMm(build.studAreaMm2);
  // A contact's studs give n·A·c·f when they are fully in.
  return contacts.map(
    ({ studForceN }, i) =>
      2 * build.friction * wedgeForceN[i] + 2 * (studForceN / build.studAreaMm2) * biteMm[i] * diameter,
  );
}

export function extractionForceN({ build, method, wedgeForceN, fretXMm, tangLengthMm }: ForceInputs): number[] {
  return tangLengthMm.map((length, i) => {
    const friction = 2 * build.friction * wedgeForceN[i];
    if (method === 'press') return friction;
    return friction + 2 * GLUE_SHEAR_MPA * gluedTangMm2(build, boardRadiusMm(build, fretXMm[i]), length / 2);
  });
}
