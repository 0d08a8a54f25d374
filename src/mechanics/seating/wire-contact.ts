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

/** One tang in its slot, all as it really is. */
export interface TangInSlot {
  /** Of the tang in the slot, and the depth over which it stands against the walls. */
  readonly lengthMm: number;
  readonly depthMm: number;
  readonly kerfMm: number;
  readonly tangWidthMm: number;
  readonly studWidthMm: number;
  readonly studAreaMm2: number;
  readonly studPitchMm: number;
  readonly studShape: number;
  /** f of the wood for these studs, its crushing strength, and what its sawn walls give. */
  readonly embeddingStrengthMPa: number;
  readonly crushingMPa: number;
  readonly studSoftnessMm: number;
  readonly wallStiffnessNMm3: number;
  readonly biteFactor: number;
}

export function tangContact(tang: TangInSlot): Contact {
  const { lengthMm, depthMm, kerfMm, tangWidthMm, studWidthMm, biteFactor } = tang;
  return {
    studForceN: biteFactor * (lengthMm / tang.studPitchMm) * tang.studAreaMm2 * tang.embeddingStrengthMPa,
    studHeightMm: (studWidthMm - tangWidthMm) / 2,
    studShape: tang.studShape,
    embeddingLengthMm: tang.studSoftnessMm,
    studInterferenceMm: studWidthMm - kerfMm,
    bodyInterferenceMm: tangWidthMm - kerfMm,
    bodyStiffnessNMm: biteFactor * lengthMm * depthMm * tang.wallStiffnessNMm3,
    bodyLimitN: biteFactor * lengthMm * depthMm * tang.crushingMPa,
  };
}

/** One contact per fret, for the methods that press (a glue fit, neck/kerf.ts, does not). */
export function contactsOf(build: Build, deviations: Deviations): Contact[] {
  const wood = boardProperties(build);
  const shared = {
    depthMm: Math.min(build.tangDepthMm, build.slotDepthMm + deviations.slotDepthMm),
    studAreaMm2: build.studAreaMm2 * deviations.studArea,
    studPitchMm: build.studPitchMm,
    studShape: Math.max(0, build.studShape + deviations.studShape),
    embeddingStrengthMPa: embeddingStrengthMPa(
      studDiameterMm(build.studAreaMm2),
      wood.densityKgM3 * deviations.density,
    ),
    crushingMPa: wood.crushingMPa * deviations.crushing,
    studSoftnessMm: build.studSoftnessMm * deviations.studSoftness,
    wallStiffnessNMm3: build.wallStiffnessNMm3 * deviations.wallStiffness,
    biteFactor: build.biteFactor * deviations.bite,
  };
  return tangLengthsMm(build).map((lengthMm, index) => {
    const here = slotAndTang(build, index + 1);
    return tangContact({
      ...shared,
      lengthMm,
      kerfMm: here.kerfMm + deviations.kerfMm,
      tangWidthMm: here.tangWidthMm,
      studWidthMm: here.studWidthMm + deviations.studWidthMm,
    });
  });
}
