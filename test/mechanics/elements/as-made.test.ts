/** Laminates, channels and bars as they are made: constant laminates, straight channels, two rods, tubes and T bars. */
import { describe, expect, it } from 'vitest';
import { UNCUT, type NeckDescription } from '../../../src/mechanics/description.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { describeNeck } from '../../../src/mechanics/describe.ts';
import { combineLine, createNeckModel, solveInfluence } from '../../../src/mechanics/influence.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { createSection } from '../../../src/mechanics/elements/section.ts';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { channelDepthMm, laminateShares } from '../../../src/neck/neck-shape.ts';
import { checkBuild } from '../../../src/neck/schema.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';
import { ISOTROPIC, middleCurvature, rectangularNeck } from './rectangular.ts';

const predictor = createPredictor();
/** As wide at the nut as at the last fret. */
const parallel = (change: Partial<Build> = {}): Build => ({ ...defaultBuild(), widthLastFretMm: 43, ...change });
const linesOf = (build: Build) => {
  const { basis } = predictor.predict(build).methods.press;
  return [basis.stringsMm, basis.wedgeMm];
};
function expectSame(one: Build, other: Build): void {
  const [a, b] = [linesOf(one), linesOf(other)];
  a.forEach((line, which) => {
    const most = Math.max(...line.map(Math.abs));
    line.forEach((value, i) => expect(Math.abs(value - b[which][i])).toBeLessThan(1e-9 * most));
  });
}

describe('laminates of constant width', () => {
  const shares = [
    { wood: 'wenge', share: 0.2 },
    { wood: 'sugar-maple', share: 0.3 },
    { wood: 'mahogany', share: 0.5 },
  ];
  const widths = [{ ...shares[0], widthMm: 8.6 }, { ...shares[1], widthMm: 12.9 }, shares[2]];

  it('are those of the same shares where the neck does not taper', () => {
    const [byShare, byWidth] = [parallel({ laminates: shares }), parallel({ laminates: widths })];
    expectSame(byShare, byWidth);
    laminateShares(byWidth).forEach((share, index) =>
      expectNear(share, shares[index].share, ROUNDING, '8.6 and 12.9 of 43 mm'),
    );
  });

  it('keep their width where it does: the outermost piece takes what the taper adds', () => {
    const build = { ...defaultBuild(), laminates: widths };
    const section = createSection(describeNeck(build, AS_STATED));
    const at = (x: number) => {
      const out = new Float64Array(4);
      section.stiffness(x, build.boardThicknessMm + 1, out, 0);
      return out[0];
    };
    const outer = createSection(describeNeck({ ...build, laminates: [{ wood: 'mahogany', share: 1 }] }, AS_STATED));
    const alone = (x: number) => {
      const out = new Float64Array(4);
      outer.stiffness(x, build.boardThicknessMm + 1, out, 0);
      return out[0];
    };
    // Beyond the channel's end, so that nothing is missing in the middle.
    expectNear(at(420) - at(400), alone(420) - alone(400), 1e-6, 'only mahogany is added');
  });

  it.each([
    [
      'a width on the outermost',
      [
        { ...shares[0], widthMm: 8 },
        { ...shares[1], widthMm: 8 },
        { ...shares[2], widthMm: 20 },
      ],
    ],
    ['one without', [{ ...shares[0], widthMm: 8 }, shares[1], shares[2]]],
    ['more than the nut is wide', [{ ...shares[0], widthMm: 30 }, { ...shares[1], widthMm: 12 }, shares[2]]],
  ])('are refused with %s', (_what, laminates) => {
    expect(checkBuild({ ...defaultBuild(), laminates }).ok).toBe(false);
  });
});

describe('a straight channel', () => {
  it('is the tapering one where the neck does not taper and is thick enough', () => {
    const thick = { thicknessFret1Mm: 24, thicknessFret12Mm: 26, channelDepthMm: 9 };
    expectSame(parallel({ ...thick, channelCut: 'straight' }), parallel({ ...thick, channelCut: 'tapered' }));
  });

  it('is as deep as it is said to be where the tapering one stops short', () => {
    const build = { ...defaultBuild(), channelDepthMm: 11 };
    expect(channelDepthMm(build, 100)).toBe(11);
    expect(channelDepthMm({ ...build, channelCut: 'tapered' }, 100)).toBeLessThan(9);
  });

  it('that follows a curved rod is shallower at its ends by the curve of the rod', () => {
    const build: Build = {
      ...defaultBuild(),
      rodKind: 'one-way',
      channelFollowsRod: true,
      channelDepthMm: 10,
      rodCurveMm: 4,
    };
    expect([5, 195, 385].map((x) => channelDepthMm(build, x))).toEqual([6, 10, 6]);
    const section = createSection(describeNeck(build, AS_STATED));
    for (const x of [5, 100, 195, 300, 385])
      expectNear(section.channelFloorMm(x) - build.boardThicknessMm, channelDepthMm(build, x), ROUNDING, 'one depth');
    expect(checkBuild({ ...build, channelDepthMm: 4.5 }).ok).toBe(false);
  });

  it('leaves wood behind it, or is refused', () => {
    const read = checkBuild({ ...defaultBuild(), channelDepthMm: 14.5 });
    expect(read.ok ? [] : read.problems.map(({ parameter }) => parameter)).toEqual(['channelDepthMm']);
  });
});

describe('two rods', () => {
  const one = parallel({ channelWidthMm: 0 });
  const two: Build = { ...one, rodCount: 2 };

  it('do twice what one does, where no channel is cut', () => {
    const [single, both] = [one, two].map((build) => predictor.predict(build).methods.press);
    single.basis.rodMm.forEach((value, i) =>
      expect(Math.abs(both.basis.rodMm[i] - 2 * value)).toBeLessThan(
        2e-3 * Math.max(...single.basis.rodMm.map(Math.abs)),
      ),
    );
    // Twice as far for the wood, and the same stretch of either: between once and twice as many turns.
    expect(both.rodTurnsAtLimit).toBeGreaterThan(single.rodTurnsAtLimit);
    expect(both.rodTurnsAtLimit).toBeLessThan(2 * single.rodTurnsAtLimit);
  });

  it('take twice the wood, in two channels with wood between them', () => {
    const build: Build = { ...defaultBuild(), rodCount: 2, rodsApartMm: 16, channelWidthMm: 6 };
    const [both, none] = [build, { ...build, rodKind: 'none' as const }].map((of) =>
      createSection(describeNeck(of, AS_STATED)),
    );
    expectNear(none.chordMm(100, 8) - both.chordMm(100, 8), 12, ROUNDING, 'two of 6 mm');
    expect(checkBuild({ ...build, rodsApartMm: 7 }).ok).toBe(false);
  });

  it('leave the heart of the neck between them', () => {
    const laminates = [
      { wood: 'wenge', share: 0.2, widthMm: 8 },
      { wood: 'mahogany', share: 0.8 },
    ];
    const build: Build = { ...defaultBuild(), laminates, rodCount: 2, rodsApartMm: 16, channelWidthMm: 6 };
    const out = new Float64Array(8);
    const [both, none] = [build, { ...build, rodKind: 'none' as const }].map((of) =>
      createSection(describeNeck(of, AS_STATED)),
    );
    both.stiffness(100, 8, out, 0);
    none.stiffness(100, 8, out, 4);
    const mahogany = createSection(describeNeck({ ...build, laminates: [{ wood: 'mahogany', share: 1 }] }, AS_STATED));
    const [cut, whole] = [new Float64Array(4), new Float64Array(4)];
    mahogany.stiffness(100, 8, cut, 0);
    createSection(
      describeNeck({ ...build, rodKind: 'none', laminates: [{ wood: 'mahogany', share: 1 }] }, AS_STATED),
    ).stiffness(100, 8, whole, 0);
    // The channels lie 5 to 11 mm from the middle, the heart ends at 4: all that is gone is mahogany.
    expectNear(out[4] - out[0], whole[0] - cut[0], ROUNDING, 'only mahogany is gone');
  });
});

describe('tubes and T bars', () => {
  const [WIDTH, BOARD, NECK, WOOD, STEEL] = [50, 6, 14, 12_000, 200_000];
  const wood = { modulusMPa: WOOD, ...ISOTROPIC };
  const neckWith = (bars: NeckDescription['bars']): NeckDescription => ({
    ...rectangularNeck({
      lengthMm: 500,
      widthMm: WIDTH,
      boardThicknessMm: BOARD,
      neckThicknessMm: NECK,
      board: wood,
      neck: wood,
    }),
    bars,
  });
  const curvatureOf = (neck: NeckDescription) => {
    const influence = solveInfluence(createNeckModel(neck), UNCUT, 'named');
    return Math.abs(middleCurvature(influence.stationXMm, combineLine(influence, { cases: { couple: 1 } })));
  };
  /** 1/(E·I) of wood and layers about their common axis: parallel axes, worked by hand. */
  const composite = (layers: readonly (readonly [from: number, to: number, added: number])[]) => {
    const parts = [
      [0, BOARD + NECK, WOOD * WIDTH] as const,
      ...layers.map(([a, b, e]) => [BOARD + a, BOARD + b, e] as const),
    ];
    const axis =
      parts.reduce((sum, [a, b, e]) => sum + (e * (b * b - a * a)) / 2, 0) /
      parts.reduce((sum, [a, b, e]) => sum + e * (b - a), 0);
    return 1 / parts.reduce((sum, [a, b, e]) => sum + (e * ((b - axis) ** 3 - (a - axis) ** 3)) / 3, 0);
  };

  it.each([1, 1.7])('a tube of 9.5 × 9.5 mm with walls of %d mm is the composite beam', (wall) => {
    const size = 9.5;
    const layers = [
      { toMm: wall, metal: 1, gone: 1 },
      { toMm: size - wall, metal: (2 * wall) / size, gone: 1 },
      { toMm: size, metal: 1, gone: 1 },
    ];
    const found = curvatureOf(neckWith({ totalWidthMm: size, depthMm: size, modulusMPa: STEEL, layers }));
    const [solid, hollow] = [(STEEL - WOOD) * size, STEEL * 2 * wall - WOOD * size];
    const expected = composite([
      [0, wall, solid],
      [wall, size - wall, hollow],
      [size - wall, size, solid],
    ]);
    expectNear(found, expected, 0.004, 'as the composite beam of bars.test.ts');
  });

  it('a T of 10 × 11 mm with flange and web of 2 mm is the composite beam', () => {
    const layers = [
      { toMm: 2, metal: 1, gone: 1 },
      { toMm: 11, metal: 0.2, gone: 0.2 },
    ];
    const found = curvatureOf(neckWith({ totalWidthMm: 10, depthMm: 11, modulusMPa: STEEL, layers }));
    const expected = composite([
      [0, 2, (STEEL - WOOD) * 10],
      [2, 11, (STEEL - WOOD) * 2],
    ]);
    expectNear(found, expected, 0.004, 'as the composite beam of bars.test.ts');
  });

  it('one whose walls meet is the solid bar', () => {
    const bars: Partial<Build> = { barCount: 1, barWidthMm: 6, barDepthMm: 8 };
    const solid = { ...parallel(bars), barKind: 'solid' as const, barModulusGPa: 200 };
    expectSame(solid, { ...parallel(bars), barKind: 'steel' });
    const thick = describeNeck({ ...parallel(bars), barKind: 'steel-tube', barWallMm: 2.999_999 }, AS_STATED);
    const [closed, full] = [thick, describeNeck(solid, AS_STATED)].map(curvatureOf);
    expectNear(closed, full, 1e-5, 'a gap of two nanometres');
  });
});
