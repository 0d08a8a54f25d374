/**
 * Force to press a fret in, and to pull it out.
 *
 *   seating    2·μ·F + 2·n·f·β·d      friction on both walls, and the studs ploughing their grooves: n studs on each wall,
 *              each of frontal area β·d (bite × stud width) at the embedding strength f (assumption)
 *   pull-out   press: 2·μ·F;  glue: τ·(2·h·w)·reach, τ = 3 MPa for glue on metal and end grain (assumption);
 *              press and glue: both
 *
 * μ 0.2–0.65 (0.65 static, air-dry wood on steel: McKenzie & Karpovich 1968). h tang depth, w tang length, mm; N.
 */
import type { Build } from '../../neck/build.ts';
import { embeddingStrengthMPa } from './contact.ts';
import { boardProperties } from '../elements/materials.ts';
import type { Method } from '../prediction-types.ts';
import { studDiameterMm } from './wire-contact.ts';

/** Shear strength of the glue on metal and end grain, MPa. */
export const GLUE_SHEAR_MPA = 3;

interface ForceInputs {
  readonly build: Build;
  readonly method: Method;
  readonly wedgeForceN: ArrayLike<number>;
  readonly biteMm: readonly number[];
  /** Length of tang in each slot, from `tangLengthsMm`. */
  readonly tangLengthMm: readonly number[];
}

export function seatingForceN({ build, wedgeForceN, biteMm, tangLengthMm }: ForceInputs): number[] {
  const diameter = studDiameterMm(build.studAreaMm2);
  const strength = embeddingStrengthMPa(diameter, boardProperties(build).densityKgM3);
  return tangLengthMm.map((length, i) => {
    const studs = length / build.studPitchMm;
    return 2 * build.friction * wedgeForceN[i]! + 2 * studs * strength * biteMm[i]! * diameter;
  });
}

export function extractionForceN({ build, method, wedgeForceN, tangLengthMm }: ForceInputs): number[] {
  const depth = Math.min(build.tangDepthMm, build.slotDepthMm);
  return tangLengthMm.map((length, i) => {
    const friction = 2 * build.friction * wedgeForceN[i]!;
    const glued = 2 * GLUE_SHEAR_MPA * depth * length * (build.glueReachPercent / 100);
    return friction + (method === 'press' ? 0 : glued);
  });
}
