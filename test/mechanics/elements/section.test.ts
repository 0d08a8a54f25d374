/** The section integrated across its width, beside polygon integration by matter-js. */
import { describe, expect, it } from 'vitest';
import { backDepthMm, sagittaMm } from '../../../src/neck/neck-shape.ts';
import { linearAt, type NeckDescription, type NeckWood } from '../../../src/mechanics/description.ts';
import { GAUSS } from '../../../src/mechanics/elements/element.ts';
import { createMesh, nodeAt } from '../../../src/mechanics/elements/mesh.ts';
import { createSection, fillerPlaneStress, inPlane, type Section } from '../../../src/mechanics/elements/section.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';
import { ALL_NECKS, DEFAULT_NECK } from '../necks.ts';
import { combineProperties, polygonProperties, type Point, type Properties } from './polygon.ts';

const UNIT: NeckWood = {
  modulusMPa: 1,
  depthRatio: 0.1,
  widthRatio: 0.1,
  shearRatio: 1,
  poisson: 0,
  poissonWidth: 0,
  poissonDepthWidth: 0,
};

/** One material of modulus 1, so that c11 is the width of the section at that depth; no bars. */
function plainNeck(neck: NeckDescription): NeckDescription {
  return { ...neck, bars: null, board: UNIT, neck: [{ toHalfWidthFraction: 1, wood: UNIT }] };
}

const c = new Float64Array(4);
function widthAt(section: Section, x: number, y: number): number {
  section.stiffness(x, y, c, 0);
  return c[0];
}

/** Area, centroid and second moment of the widths that the section gives, by the midpoint rule between depths. */
function integrate(section: Section, x: number, fromMm: number, toMm: number, steps: number): Properties {
  let area = 0, first = 0, second = 0; // prettier-ignore
  const height = (toMm - fromMm) / steps;
  for (let k = 0; k < steps; k += 1) {
    const y = fromMm + (k + 0.5) * height;
    const strip = widthAt(section, x, y) * height;
    area += strip;
    first += strip * y;
    second += strip * (y * y + (height * height) / 12);
  }
  const depth = first / area;
  return { area, depth, secondMoment: second - area * depth * depth };
}

/** What the mesh itself makes of a column of its elements: the two Gauss points of each row. */
function meshProperties(neck: NeckDescription, column: number): Properties & { readonly xMm: number } {
  const mesh = createMesh(createSection(neck));
  const x = mesh.columnXMm[column];
  let area = 0, first = 0, second = 0; // prettier-ignore
  for (let row = 0; row < mesh.rows; row += 1) {
    const upper = mesh.nodeYMm[nodeAt(mesh, column, row)];
    const lower = mesh.nodeYMm[nodeAt(mesh, column, row + 1)];
    for (const eta of [-GAUSS, GAUSS]) {
      const y = (upper + lower) / 2 + (eta * (lower - upper)) / 2;
      const strip = (widthAt(mesh.section, x, y) * (lower - upper)) / 2;
      area += strip;
      first += strip * y;
      second += strip * y * y;
    }
  }
  const depth = first / area;
  return { xMm: x, area, depth, secondMoment: second - area * depth * depth };
}

const STEPS = 1500;

/** The outline of board and neck at x as makers draw it: depth as a function of the place across. */
function outline(neck: NeckDescription, x: number, top: 'flat' | 'round'): Point[] {
  const width = linearAt(neck.widthMm, x);
  const depth = linearAt(neck.totalThicknessMm, x) - neck.boardThicknessMm;
  const radius = neck.boardRadiusMm === null ? Infinity : linearAt(neck.boardRadiusMm, x);
  const across = Array.from({ length: 2 * STEPS + 1 }, (_, k) => {
    // Closer together at the edges, where the back turns up.
    const angle = (Math.PI * k) / (2 * STEPS);
    return (-width / 2) * Math.cos(angle);
  });
  const meanTop = createSection(neck).topMm(x);
  const upper = across.map((z) => ({ x: z, y: top === 'flat' ? meanTop : sagittaMm(radius, z) }));
  const lower = across.toReversed().map((z) => ({
    x: z,
    y: neck.boardThicknessMm + backDepthMm(z, depth, width, neck.backShoulderMm, neck.backExponent),
  }));
  return [...upper, ...lower];
}

/** The channel as a rectangle, from its stated width and depth. */
function channelOutline(neck: NeckDescription, x: number): Point[] | undefined {
  const { channel } = neck;
  if (channel === null || x < channel.fromMm || x > channel.toMm) return undefined;
  const taper = channel.straight ? 1 : linearAt(neck.widthMm, x) / linearAt(neck.widthMm, neck.lengthMm / 2);
  const half = (channel.widthAtMidMm * taper) / 2;
  const below = linearAt(neck.totalThicknessMm, x) - neck.boardThicknessMm;
  const most = channel.straight ? Infinity : channel.mostShare * below;
  const floor = neck.boardThicknessMm + Math.min(channel.depthMm, most);
  return [
    { x: -half, y: neck.boardThicknessMm },
    { x: half, y: neck.boardThicknessMm },
    { x: half, y: floor },
    { x: -half, y: floor },
  ];
}

function byPolygons(neck: NeckDescription, x: number, top: 'flat' | 'round'): Properties {
  const channel = channelOutline(neck, x);
  return combineProperties([
    [1, polygonProperties(outline(neck, x, top))],
    ...(channel ? [[-1, polygonProperties(channel)] as const] : []),
  ]);
}

describe('matter-js as used here', () => {
  it('gives the handbook values of a rectangle and of half an ellipse', () => {
    const rectangle = polygonProperties([
      { x: -25, y: 3 },
      { x: 25, y: 3 },
      { x: 25, y: 13 },
      { x: -25, y: 13 },
    ]);
    expectNear(rectangle.area, 500, ROUNDING, 'exact');
    expectNear(rectangle.depth, 8, ROUNDING, 'exact');
    expectNear(rectangle.secondMoment, (50 * 10 ** 3) / 12, 1e-9, 'exact');
    const half = Array.from({ length: 2001 }, (_, k) => ({
      x: -25 * Math.cos((Math.PI * k) / 2000),
      y: 12 * Math.sin((Math.PI * k) / 2000),
    })).toReversed();
    // Half an ellipse, a = 25, b = 12: A = πab/2, I = (π/8 − 8/(9π))·a·b³ about its centroid (Roark Table A.1, from memory).
    const ellipse = polygonProperties(half);
    expectNear(ellipse.area, (Math.PI * 25 * 12) / 2, 1e-5, '2000 chords');
    expectNear(ellipse.secondMoment, (Math.PI / 8 - 8 / (9 * Math.PI)) * 25 * 12 ** 3, 1e-5, '2000 chords');
  });
});

describe.each(ALL_NECKS)('the section of %s', (_name, described) => {
  const neck = plainNeck(described);
  const section = createSection(neck);
  // Clear of the heel, and of the rod's anchors.
  const places = [60, 0.35 * neck.jointMm, neck.jointMm - neck.heel!.lengthMm - 30];

  it.each(places)('has the area and second moment of its outline at x = %d mm', (x) => {
    const ours = integrate(section, x, section.topMm(x), section.bottomMm(x), 60_000);
    const reference = byPolygons(neck, x, 'flat');
    expectNear(ours.area, reference.area, 2e-5, '3000 chords, 60 000 strips');
    expectNear(ours.depth, reference.depth, 2e-5, '3000 chords, 60 000 strips');
    expectNear(ours.secondMoment, reference.secondMoment, 5e-5, '3000 chords, 60 000 strips');
  });

  it.each(places)('keeps them under the two Gauss points of each row of the mesh near x = %d mm', (x) => {
    const mesh = createMesh(section);
    const column = mesh.columnXMm.findIndex((at) => at > x);
    const ours = meshProperties(neck, column);
    const reference = byPolygons(neck, ours.xMm, 'flat');
    expectNear(ours.area, reference.area, 0.01, 'five or eight rows through a curved back');
    expectNear(ours.secondMoment, reference.secondMoment, 0.015, 'five or eight rows through a curved back');
  });

  it.each(places)('a flat top of equal area bends nearly as the round one does at x = %d mm', (x) => {
    const flat = byPolygons(neck, x, 'flat');
    const round = byPolygons(neck, x, 'round');
    expectNear(flat.area, round.area, 1e-5, 'equal by construction');
    expectNear(
      flat.secondMoment,
      round.secondMoment,
      0.012,
      'a simplification of the model: the crown is nearer the middle line of the strings',
    );
  });
});

describe('what the section is made of', () => {
  const at = (neck: NeckDescription, x: number, y: number) => {
    createSection(neck).stiffness(x, y, c, 0);
    return [...c] as [number, number, number, number];
  };

  const WOOD: NeckWood = {
    modulusMPa: 13_000,
    depthRatio: 0.065,
    widthRatio: 0.132,
    shearRatio: 0.063,
    poisson: 0.45,
    poissonWidth: 0.42,
    poissonDepthWidth: 0.2955,
  };
  const compliance = (wood: NeckWood) => {
    const [c11, c12, c22, c66] = inPlane(wood);
    const determinant = c11 * c22 - c12 * c12;
    return { s11: c22 / determinant, s12: -c12 / determinant, s22: c11 / determinant, s66: 1 / c66 };
  };

  it('stretches along the grain as if the width were free, and thins and gives in depth as if it were held', () => {
    const { s11, s12, s22, s66 } = compliance(WOOD);
    const { modulusMPa: ex, depthRatio, widthRatio, poisson, poissonWidth, poissonDepthWidth } = WOOD;
    // S′ij = Sij − Si3·Sj3/S33 with S13 = −ν_xz/Ex, S23 = −ν_yz/Ey, S33 = 1/Ez.
    const [ey, ez] = [ex * depthRatio, ex * widthRatio];
    expectNear(s11, 1 / ex, ROUNDING, 'S11 of plane stress');
    expectNear(
      s12,
      -poisson / ex - (poissonWidth / ex) * (poissonDepthWidth / ey) * ez,
      ROUNDING,
      'S12 of plane strain',
    );
    expectNear(s22, 1 / ey - (poissonDepthWidth / ey) ** 2 * ez, ROUNDING, 'S22 of plane strain');
    expectNear(s66, 1 / (0.063 * 13_000), ROUNDING, 'a product');
  });

  it('an isotropic filler has the shear modulus that goes with its E and ν', () => {
    const [f11, f12, , f66] = fillerPlaneStress(2500);
    expectNear((f11 - f12) / 2, f66, ROUNDING, 'G = (c11 − c12)/2');
  });

  it('is plane stress where nothing strains across the width', () => {
    const { s12, s22 } = compliance({ ...WOOD, poissonDepthWidth: 0 });
    expectNear(s12, -0.45 / 13_000, ROUNDING, 'plane stress');
    expectNear(s22, 1 / (0.065 * 13_000), ROUNDING, 'plane stress');
  });

  it('laminates share the chord: symmetric pieces add up to the whole', () => {
    const wood = (modulusMPa: number): NeckWood => ({ ...UNIT, modulusMPa });
    const base = { ...plainNeck(DEFAULT_NECK), channel: null };
    const striped: NeckDescription = {
      ...base,
      neck: [
        { toHalfWidthFraction: 0.3, wood: wood(3) },
        { toHalfWidthFraction: 0.5, wood: wood(1) },
        { toHalfWidthFraction: 1, wood: wood(2) },
      ],
    };
    const x = 150;
    const y = DEFAULT_NECK.boardThicknessMm + 1;
    const width = linearAt(base.widthMm, x);
    expectNear(
      at(striped, x, y)[0],
      width * (0.3 * 3 + 0.2 * 1 + 0.5 * 2),
      ROUNDING,
      'above the shoulder the chord is the width',
    );
    // Deep in the back only the middle piece is left.
    const deep = createSection(base).bottomMm(x) - 0.05;
    const chord = at(base, x, deep)[0];
    expect(chord).toBeLessThan(0.3 * width);
    expectNear(at(striped, x, deep)[0], 3 * chord, ROUNDING, 'one piece');
    // One wood in three pieces is one piece.
    const same: NeckDescription = {
      ...base,
      neck: [0.3, 0.5, 1].map((to) => ({ toHalfWidthFraction: to, wood: UNIT })),
    };
    for (const depth of [y, y + 4, deep])
      expectNear(at(same, x, depth)[0], at(base, x, depth)[0], ROUNDING, 'the same wood');
  });

  it('a channel takes wood away between its ends and above its floor only', () => {
    const straight = plainNeck(DEFAULT_NECK);
    const { straight: _cut, ...tapered } = straight.channel!;
    const neck = { ...straight, channel: tapered };
    const { channel } = neck;
    const bare = { ...neck, channel: null };
    const x = 200;
    const inside = neck.boardThicknessMm + 2;
    const floor = createSection(neck).channelFloorMm(x);
    const width = (channel.widthAtMidMm * linearAt(neck.widthMm, x)) / linearAt(neck.widthMm, neck.lengthMm / 2);
    expectNear(
      at(bare, x, inside)[0] - at(neck, x, inside)[0],
      width,
      ROUNDING,
      'as wide as stated, tapering with the neck',
    );
    expect(at(neck, x, floor + 0.01)).toEqual(at(bare, x, floor + 0.01));
    expect(at(neck, x, neck.boardThicknessMm - 0.01)).toEqual(at(bare, x, neck.boardThicknessMm - 0.01));
    expect(at(neck, channel.toMm + 1, inside)).toEqual(at(bare, channel.toMm + 1, inside));
    // Never deeper than its share of the wood there.
    const deep = createSection({ ...neck, channel: { ...channel, depthMm: 100 } });
    expectNear(
      deep.channelFloorMm(x) - neck.boardThicknessMm,
      0.55 * (linearAt(neck.totalThicknessMm, x) - neck.boardThicknessMm),
      ROUNDING,
      'the rule',
    );
  });

  it('bars add what they are stiffer than the wood they displace', () => {
    const neck = plainNeck({ ...DEFAULT_NECK, channel: null });
    const barred: NeckDescription = { ...neck, bars: { totalWidthMm: 6, depthMm: 9, modulusMPa: 11 } };
    const y = neck.boardThicknessMm + 5;
    expectNear(at(barred, 150, y)[0] - at(neck, 150, y)[0], 6 * (11 - 1), ROUNDING, 'E × width');
    expect(at(barred, 150, neck.boardThicknessMm + 9.01)).toEqual(at(neck, 150, neck.boardThicknessMm + 9.01));
  });

  it('beyond the joint the body backs the board over its full width', () => {
    const neck = plainNeck({ ...DEFAULT_NECK, channel: null });
    const x = neck.jointMm + 20;
    const deep = createSection(neck).bottomMm(x) - 0.5;
    expectNear(at(neck, x, deep)[0], linearAt(neck.widthMm, x), ROUNDING, 'a full rectangle');
  });

  it('a radiused slot follows the board, a flat one does not', () => {
    const section = createSection(DEFAULT_NECK);
    const flat = createSection({ ...DEFAULT_NECK, slot: { ...DEFAULT_NECK.slot, bottom: 'flat' } });
    expectNear(
      section.slotFloorMm(100) - section.topMm(100),
      DEFAULT_NECK.slot.depthMm,
      ROUNDING,
      'below the mean top',
    );
    expectNear(flat.slotFloorMm(100), DEFAULT_NECK.slot.depthMm, ROUNDING, 'below the crown');
  });
});
