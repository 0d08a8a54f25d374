/** The supports keep a neck in place without a part in how it bends, however unlike board and neck are. */
import { describe, expect, it } from 'vitest';
import { hold, multiply, withSlots } from '../../../src/mechanics/elements/assembly.ts';
import { EMPTY, UNCUT } from '../../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence } from '../../../src/mechanics/influence.ts';
import { expectNear, expectNothing } from '../../expect-near.ts';
import { displacementsOf, forcesOf } from '../load-cases.ts';
import { DEFAULT_NECK } from '../necks.ts';
import { ISOTROPIC, middleCurvature, rectangularNeck } from './rectangular.ts';

const [LENGTH, WIDTH, BOARD, NECK] = [800, 50, 6, 12];

function stripOf(boardMPa: number, neckMPa: number) {
  return rectangularNeck({
    lengthMm: LENGTH,
    widthMm: WIDTH,
    boardThicknessMm: BOARD,
    neckThicknessMm: NECK,
    board: { modulusMPa: boardMPa, ...ISOTROPIC },
    neck: { modulusMPa: neckMPa, ...ISOTROPIC },
    fretXMm: Array.from({ length: 36 }, (_, i) => 20 * (i + 1)),
    slotDepthMm: 1,
  });
}

/** 1/(E·I) of two layers about their common axis: parallel axes, worked by hand. */
function composite(boardMPa: number, neckMPa: number): number {
  const parts = [
    { ea: boardMPa * WIDTH * BOARD, y: BOARD / 2, h: BOARD },
    { ea: neckMPa * WIDTH * NECK, y: BOARD + NECK / 2, h: NECK },
  ];
  const axis = parts.reduce((sum, { ea, y }) => sum + ea * y, 0) / parts.reduce((sum, { ea }) => sum + ea, 0);
  return 1 / parts.reduce((sum, { ea, y, h }) => sum + ea * (h ** 2 / 12 + (y - axis) ** 2), 0);
}

describe('a board and a neck as unlike as blanks that were measured amiss can be', () => {
  // 0.002 MPa and 2.5 million are what the ends of the ranges of a blank's numbers come to.
  it.each([
    [2.5e6, 0.002],
    [0.002, 2.5e6],
    [1e9, 1e-3],
    [12_000, 12_000],
  ])('%d MPa on %d MPa bend as the composite beam', (boardMPa, neckMPa) => {
    const influence = solveInfluence(createNeckModel(stripOf(boardMPa, neckMPa)), UNCUT, 'named');
    const line = combineLine(influence, { cases: { couple: 1 } });
    const curvature = Math.abs(middleCurvature(influence.stationXMm, line));
    expectNear(curvature, composite(boardMPa, neckMPa), 1e-4, 'rounding of a mesh that bends exactly');
  });
});

describe('the supports of a neck', () => {
  it('carry nothing', () => {
    const { assembly, loads } = createNeckModel(DEFAULT_NECK);
    const { shape, held } = assembly;
    expect(held).toHaveLength(3);
    const band = withSlots(assembly, EMPTY);
    const factor = hold(assembly, withSlots(assembly, EMPTY));
    displacementsOf(assembly, loads, factor).forEach((displacements, loadCase) => {
      const inner = multiply(shape, band, displacements);
      const outer = forcesOf(loads, loadCase, shape.order);
      const scale = outer.reduce((most, force) => Math.max(most, Math.abs(force)), 0);
      for (const dof of held)
        expectNothing(inner[dof] - outer[dof], scale, 1e-5, 'what rounding leaves of a neck in equilibrium');
    });
  });
});
