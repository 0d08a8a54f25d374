/** Stiff bars act down to where they end, wherever the rows of the mesh lie: beside the composite beam. */
import { describe, expect, it } from 'vitest';
import { UNCUT, type NeckDescription } from '../../../src/mechanics/description.ts';
import { combineLine, createNeckModel, solveInfluence } from '../../../src/mechanics/influence.ts';
import { expectNear } from '../../expect-near.ts';
import { ISOTROPIC, middleCurvature, rectangularNeck } from './rectangular.ts';

const [WIDTH, BOARD, NECK, MODULUS] = [50, 6, 14, 12_000];
const BARS = { totalWidthMm: 8, modulusMPa: 125_000 };

function neckWith(depthMm: number): NeckDescription {
  const wood = { modulusMPa: MODULUS, ...ISOTROPIC };
  const plain = rectangularNeck({
    lengthMm: 500,
    widthMm: WIDTH,
    boardThicknessMm: BOARD,
    neckThicknessMm: NECK,
    board: wood,
    neck: wood,
  });
  return { ...plain, bars: { ...BARS, depthMm } };
}

/** Curvature under 1 N·mm, 1/mm. */
function curvatureOf(neck: NeckDescription): number {
  const influence = solveInfluence(createNeckModel(neck), UNCUT, 'named');
  return Math.abs(middleCurvature(influence.stationXMm, combineLine(influence, { cases: { couple: 1 } })));
}

/** 1/(E·I) of wood and bars together about their common axis: parallel axes, worked by hand. */
function composite(depthMm: number): number {
  const height = BOARD + NECK;
  const parts = [
    { ea: MODULUS * WIDTH * height, y: height / 2, ei: (MODULUS * WIDTH * height ** 3) / 12 },
    {
      ea: (BARS.modulusMPa - MODULUS) * BARS.totalWidthMm * depthMm,
      y: BOARD + depthMm / 2,
      ei: ((BARS.modulusMPa - MODULUS) * BARS.totalWidthMm * depthMm ** 3) / 12,
    },
  ];
  const axis = parts.reduce((sum, { ea, y }) => sum + ea * y, 0) / parts.reduce((sum, { ea }) => sum + ea, 0);
  return 1 / parts.reduce((sum, { ea, ei, y }) => sum + ei + ea * (y - axis) ** 2, 0);
}

describe('a barred neck under a couple bends as the composite beam', () => {
  it.each([2, 3.1, 4.4, 5.7, 6.9, 8.3, 9.5, 10.6, 11.9])('bars %d mm deep', (depthMm) => {
    expectNear(curvatureOf(neckWith(depthMm)), composite(depthMm), 1e-3, 'rounding of a mesh that bends exactly');
  });

  it('a tenth of a millimetre more is a tenth of a millimetre more', () => {
    const depths = Array.from({ length: 13 }, (_, i) => 5 + i / 10);
    const curvatures = depths.map((depth) => curvatureOf(neckWith(depth)));
    curvatures.slice(1).forEach((curvature, i) => {
      const [fell, byHand] = [curvatures[i]! - curvature, composite(depths[i]!) - composite(depths[i + 1]!)];
      expectNear(fell, byHand, 0.05, 'the difference of two numbers that are good to a thousandth');
    });
    expect(curvatures).toEqual(curvatures.toSorted((a, b) => b - a));
  });
});
