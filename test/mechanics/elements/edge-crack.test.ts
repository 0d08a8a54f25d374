/**
 * Slots in a strip: what the table of reference values does not say of them already (test/reference/rows/slots.ts).
 */
import { describe, expect, it } from 'vitest';
import { EMPTY, UNCUT } from '../../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence } from '../../../src/mechanics/influence.ts';
import { expectNear } from '../../expect-near.ts';
import { isotropic, orthotropic } from './plane-model.ts';
import { ISOTROPIC, rectangularNeck } from './rectangular.ts';
import { slotRotation } from './slotted-strip.ts';

const STRIP = { heightMm: 20, slotDepthMm: 3, kerfMm: 0.6, modulusMPa: 10_000, finestMm: 0.03, halfLengthMm: 160 };
/** Nothing strains across the width, so that plane stress and plane strain are one. */
const FREE = { widthRatio: 0.132, poissonWidth: 0, poissonDepthWidth: 0 };
const WOOD = { depthRatio: 0.065, shearRatio: 0.063, poisson: 0.45, ...FREE };

/** θ E b h²/M of one slot in a strip meshed as the program meshes necks. */
function programRotation(ratios: typeof WOOD, kerfMm = STRIP.kerfMm, refinement: 1 | 2 = 1): number {
  const wood = { modulusMPa: STRIP.modulusMPa, ...ratios };
  const strip = rectangularNeck({
    lengthMm: 400,
    widthMm: 50,
    boardThicknessMm: 6,
    neckThicknessMm: STRIP.heightMm - 6,
    board: wood,
    neck: wood,
    fretXMm: [200],
    slotDepthMm: STRIP.slotDepthMm,
    kerfMm,
  });
  const model = createNeckModel(strip, refinement);
  const couple = 1e4;
  const turn = (filling: typeof EMPTY) => {
    const influence = solveInfluence(model, filling);
    const { stationXMm } = influence;
    const line = combineLine(influence, { cases: { couple } });
    const slope = (a: number, b: number) => (line[b] - line[a]) / (stationXMm[b] - stationXMm[a]);
    // Of one end against the other, away from ends and slot: however the strip is held.
    const last = stationXMm.length - 1;
    return slope(5, 20) - slope(last - 20, last - 5);
  };
  return (Math.abs(turn(EMPTY) - turn(UNCUT)) * STRIP.modulusMPa * 50 * STRIP.heightMm ** 2) / couple;
}

describe('a slot of 3 mm and 0.6 mm kerf in a strip of 20 mm', () => {
  it.each([
    ['isotropic', { ...ISOTROPIC, ...FREE }, isotropic(STRIP.modulusMPa, 0.3)],
    ['wood', WOOD, orthotropic(STRIP.modulusMPa, WOOD.depthRatio, WOOD.shearRatio, WOOD.poisson)],
  ] as const)('opens on the mesh of the program as on a fine one: %s', (_name, ratios, stiffness) => {
    const fine = slotRotation({ ...STRIP, stiffness });
    expectNear(
      programRotation(ratios),
      fine,
      0.06,
      'coarse elements at the floor of the slot are a few per cent too stiff',
    );
    expectNear(programRotation(ratios, STRIP.kerfMm, 2), fine, 0.03, 'half of that with half the elements');
  });

  it('the coarse mesh is too stiff, never too soft', () => {
    const fine = slotRotation({ ...STRIP, stiffness: isotropic(STRIP.modulusMPa, 0.3) });
    const ratios = { ...ISOTROPIC, ...FREE };
    expect(programRotation(ratios)).toBeLessThan(programRotation(ratios, STRIP.kerfMm, 2));
    expect(programRotation(ratios, STRIP.kerfMm, 2)).toBeLessThan(fine);
  });

  it('hardly notices how wide it is', () => {
    const stiffness = orthotropic(STRIP.modulusMPa, WOOD.depthRatio, WOOD.shearRatio, WOOD.poisson);
    const rotation = (kerfMm: number) => slotRotation({ ...STRIP, kerfMm, stiffness });
    const slope = (rotation(0.7) - rotation(0.5)) / rotation(0.6);
    expect(slope).toBeGreaterThan(0);
    // 2 % between kerfs of 0.5 and 0.7 mm; the kerf itself is missing beam, the rest is the rounder tip.
    expect(slope).toBeLessThan(0.03);
  });

  it('does not depend on the length of the strip or on the finest element', () => {
    const stiffness = isotropic(STRIP.modulusMPa, 0.3);
    const rotation = slotRotation({ ...STRIP, stiffness });
    expectNear(
      slotRotation({ ...STRIP, stiffness, halfLengthMm: 240 }),
      rotation,
      1e-4,
      'Saint-Venant: the ends are eight heights away',
    );
    expectNear(
      slotRotation({ ...STRIP, stiffness, finestMm: 0.015 }),
      rotation,
      2e-3,
      'converged to a fraction of a per cent',
    );
  });

  it('two moduli, one shape: the compliance scales with 1/E', () => {
    const rotation = slotRotation({ ...STRIP, stiffness: isotropic(STRIP.modulusMPa, 0.3) });
    const stiffer = slotRotation({
      ...STRIP,
      modulusMPa: 3 * STRIP.modulusMPa,
      stiffness: isotropic(3 * STRIP.modulusMPa, 0.3),
    });
    expectNear(stiffer, rotation, 1e-6, 'scaling');
  });
});
