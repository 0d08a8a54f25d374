/** The contact of each fret of a build with its slot, from wire, kerf, wood and the length of the tang. */
import { slotAndTang, type Build } from '../../neck/build.ts';
import { fretPositionsMm, tangLengthMm } from '../../neck/neck-shape.ts';
import type { Contact } from './contact.ts';
import { embeddingStrengthMPa } from './contact.ts';
import type { Deviations } from '../deviations.ts';
import { boardProperties } from '../elements/materials.ts';

/** Diameter of the circle of a stud's area, mm: the d of the embedding rule. */
export function studDiameterMm(studAreaMm2: number): number {
  return Math.sqrt((4 * studAreaMm2) / Math.PI);
}

/** Length of tang in the slot of each fret, mm. */
export function tangLengthsMm(build: Build): number[] {
  return fretPositionsMm(build.scaleLengthMm, build.fretCount).map((x) => tangLengthMm(build, x));
}

/** One contact per fret, for the methods that press (a glue fit, neck/kerf.ts, does not). */
export function contactsOf(build: Build, deviations: Deviations): Contact[] {
  const wood = boardProperties(build);
  const strength = embeddingStrengthMPa(studDiameterMm(build.studAreaMm2), wood.densityKgM3 * deviations.density);
  const bite = build.biteFactor * deviations.bite;
  const depth = Math.min(build.tangDepthMm, build.slotDepthMm + deviations.slotDepthMm);
  return tangLengthsMm(build).map((length, index) => {
    const here = slotAndTang(build, index + 1);
    const kerf = here.kerfMm + deviations.kerfMm;
    return {
      studForceN: bite * (length / build.studPitchMm) * build.studAreaMm2 * deviations.studArea * strength,
      studHeightMm: (here.studWidthMm + deviations.studWidthMm - here.tangWidthMm) / 2,
      studShape: Math.max(0, build.studShape + deviations.studShape),
      embeddingLengthMm: build.studSoftnessMm * deviations.studSoftness,
      studInterferenceMm: here.studWidthMm + deviations.studWidthMm - kerf,
      bodyInterferenceMm: here.tangWidthMm - kerf,
      bodyStiffnessNMm: bite * length * depth * build.wallStiffnessNMm3 * deviations.wallStiffness,
      bodyLimitN: bite * length * depth * wood.crushingMPa * deviations.crushing,
    };
  });
}
