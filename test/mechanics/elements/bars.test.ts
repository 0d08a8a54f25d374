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

describe('bars softer than the wood that they displace', () => {
  /** A heart 8 mm wide between softer sides; bars over it and 3 mm beyond on either side. */
  const HEART = 40 * MODULUS;
  const laminated = (depthMm: number): NeckDescription => ({
    ...neckWith(depthMm),
    bars: { totalWidthMm: 14, depthMm, modulusMPa: 1500 },
    neck: [
      { toHalfWidthFraction: 8 / WIDTH, wood: { modulusMPa: HEART, ...ISOTROPIC } },
      { toHalfWidthFraction: 1, wood: { modulusMPa: MODULUS, ...ISOTROPIC } },
    ],
  });

  it.each([3.1, 5.7, 11.9])('take away as much of each piece as they displace: bars %d mm deep', (depthMm) => {
    const layers = [
      { e: MODULUS * WIDTH, from: 0, to: BOARD },
      { e: HEART * 8 + MODULUS * (WIDTH - 8), from: BOARD, to: BOARD + NECK },
      { e: 1500 * 14 - HEART * 8 - MODULUS * 6, from: BOARD, to: BOARD + depthMm },
    ].map(({ e, from, to }) => ({ ea: e * (to - from), y: (from + to) / 2, ei: (e * (to - from) ** 3) / 12 }));
    const axis = layers.reduce((sum, { ea, y }) => sum + ea * y, 0) / layers.reduce((sum, { ea }) => sum + ea, 0);
    const byHand = 1 / layers.reduce((sum, { ea, ei, y }) => sum + ei + ea * (y - axis) ** 2, 0);
    expectNear(curvatureOf(laminated(depthMm)), byHand, 1e-3, 'rounding of a mesh that bends exactly');
  });

  it.each([2, 5.3, 7.7, 10.1, 12])('hold it up however stiff the wood was measured: bars %d mm deep', (depthMm) => {
    const stiff = (modulusMPa: number) => ({ modulusMPa, ...ISOTROPIC });
    const round: NeckDescription = {
      ...laminated(depthMm),
      bars: { totalWidthMm: 40, depthMm, modulusMPa: 110_000 },
      backShoulderMm: 0.5,
      backExponent: 1.4,
      neck: [
        { toHalfWidthFraction: 0.2, wood: stiff(9.5e6) },
        { toHalfWidthFraction: 1, wood: stiff(6.8e6) },
      ],
    };
    // Less than all of it in wood, and more than as if there were none where the bars are.
    const bare = curvatureOf({ ...round, bars: null });
    expect(curvatureOf(round)).toBeGreaterThan(bare);
    expect(curvatureOf(round)).toBeLessThan(50 * bare);
  });
});

describe('a barred neck under a couple bends as the composite beam', () => {
  it.each([2, 3.1, 4.4, 5.7, 6.9, 8.3, 9.5, 10.6, 11.9])('bars %d mm deep', (depthMm) => {
    expectNear(curvatureOf(neckWith(depthMm)), composite(depthMm), 1e-3, 'rounding of a mesh that bends exactly');
  });

  it('a tenth of a millimetre more is a tenth of a millimetre more', () => {
    const depths = Array.from({ length: 13 }, (_, i) => 5 + i / 10);
    const curvatures = depths.map((depth) => curvatureOf(neckWith(depth)));
    curvatures.slice(1).forEach((curvature, i) => {
      const [fell, byHand] = [curvatures[i] - curvature, composite(depths[i]) - composite(depths[i + 1])];
      expectNear(fell, byHand, 0.05, 'the difference of two numbers that are good to a thousandth');
    });
    expect(curvatures).toEqual(curvatures.toSorted((a, b) => b - a));
  });
});
