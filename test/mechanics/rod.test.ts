import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { EMPTY, UNCUT, type NeckDescription } from '../../src/mechanics/description.ts';
import {
  combineLine,
  createNeckModel,
  rodWork,
  solveInfluence,
  type Combination,
} from '../../src/mechanics/influence.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';
import { nutTurn, predictRod, proofLoadN, rodCases, turnsAtLimit } from '../../src/mechanics/rod.ts';
import { createSection } from '../../src/mechanics/elements/section.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';
import { neckWith } from './necks.ts';
import { ISOTROPIC, rectangularNeck } from './elements/rectangular.ts';

const rodOf = (change: Partial<Build>) => predictRod({ ...defaultBuild(), ...change });

describe('what to do with the nut', () => {
  const of = {
    rod: { torqueAtLimitNm: 4 },
    methods: { press: { rodTurnsAtLimit: 1.5 } },
  } as unknown as Parameters<typeof nutTurn>[0];

  it.each([
    [40, { turns: 0.6, way: 'clockwise', torqueNm: 1.6 }],
    [-20, { turns: 0.3, way: 'anticlockwise', torqueNm: 0.8 }],
    [0, { turns: 0, way: 'none', torqueNm: 0 }],
  ] as const)('at %d % of its range: turns, way and torque in proportion, worked by hand', (percent, wanted) => {
    const { turns, torqueNm, ...turn } = nutTurn(of, 'press', percent);
    expect(turn).toEqual({ percent, way: wanted.way, torqueAtLimitNm: 4 });
    expectNothing(turns - wanted.turns, 1, ROUNDING, 'of 1.5 turns');
    expectNothing(torqueNm - wanted.torqueNm, 1, ROUNDING, 'of 4 N·m');
  });
});

describe('the pull that a rod can take', () => {
  it.each([
    // T/(K·d): 2 N·m on M5 is 2000 N; 0.75 × 4400 = 3300 N, 0.75 × 8230 = 6172.5, 0.75 × 6230 = 4672.5, 0.75 × 11 600 = 8700
    ['M5', '4.8', 2, 2000, 'wrench'],
    ['M5', '4.8', 4, 3300, 'thread'],
    ['M5', '8.8', 6, 6000, 'wrench'],
    ['M6', '4.8', 6, 4672.5, 'thread'],
    ['M6', '8.8', 6, 5000, 'wrench'],
  ] as const)(
    '%s of class %s at %d N·m: %d N, limited by the %s',
    (rodThread, rodClass, wrenchTorqueNm, limitN, limitedBy) => {
      const rod = rodOf({ rodThread, rodClass, wrenchTorqueNm });
      expectNear(rod.limitN, limitN, ROUNDING, 'worked by hand');
      expect(rod.limitedBy).toBe(limitedBy);
      expect(rod.limitN).toBeLessThanOrEqual(0.75 * proofLoadN(rodThread, rodClass) + 1e-9);
    },
  );

  it('none has nothing to give', () => {
    expect(rodOf({ rodKind: 'none' })).toEqual({
      kind: 'none',
      limitN: 0,
      limitedBy: 'none',
      leastPercent: 0,
      mostPercent: 0,
      torqueAtLimitNm: 0,
    });
  });

  it('a one-way rod only pulls one way, a two-way rod both', () => {
    expect(rodOf({ rodKind: 'one-way' })).toMatchObject({ leastPercent: 0, mostPercent: 100 });
    expect(rodOf({ rodKind: 'two-way' })).toMatchObject({ leastPercent: -100, mostPercent: 100 });
  });

  it('torque at the limit is the wrench’s, or what the thread bears', () => {
    expectNear(rodOf({ wrenchTorqueNm: 2, rodThread: 'M5', rodClass: '4.8' }).torqueAtLimitNm, 2, ROUNDING, 'as given');
    // 0.75 × 4400 N × 0.2 × 5 mm
    expectNear(
      rodOf({ wrenchTorqueNm: 4, rodThread: 'M5', rodClass: '4.8' }).torqueAtLimitNm,
      3.3,
      ROUNDING,
      'by hand',
    );
  });

  it('turns of a nut in rigid wood, worked by hand', () => {
    const build = { ...defaultBuild(), rodStartMm: 5, rodEndMm: 365, rodThread: 'M5', wrenchTorqueNm: 2 } as const;
    const turns = (kind: 'one-way' | 'two-way', workNmm: number, pitchMm?: number) =>
      turnsAtLimit({ ...build, rodKind: kind }, { kind, limitN: 2000 }, workNmm, pitchMm);
    // 2000 N on 360 mm of M5 (14.2 mm², pitch 0.8): 2000·360/(205 000·14.2) = 0.24734 mm = 0.30917 turns
    expectNear(turns('one-way', 0), 0.30917, 2e-5, 'worked by hand to five digits');
    expectNear(turns('two-way', 0), 0.61834, 2e-5, 'two bars, one pulled, one pushed');
    // Wood that lets the anchors come 0.4 mm together: half a turn more.
    expectNear(turns('one-way', 800), 0.80917, 2e-5, 'worked by hand to five digits');
    expectNear(turns('one-way', 800, 1.6), 0.80917 / 2, 2e-5, 'a double thread');
    expect(turnsAtLimit({ ...build, rodKind: 'none' }, { kind: 'none', limitN: 0 }, 0)).toBe(0);
  });
});

describe('its loads at the limit, worked by hand', () => {
  const build = {
    ...defaultBuild(),
    rodStartMm: 5,
    rodEndMm: 385,
    rodCurveMm: 3,
    rodSpacingMm: 6,
    wrenchTorqueNm: 2,
    rodThread: 'M5' as const,
  };

  it('two-way: 2000 N times 6 mm between its bars', () => {
    const two = { ...build, rodKind: 'two-way' as const };
    expect(rodCases(two, predictRod(two), createSection(neckWith(two)))).toEqual({ rodCouple: 12_000 });
  });

  it('one-way: its middle on the floor of the channel, its anchors higher by its curve', () => {
    const one = { ...build, rodKind: 'one-way' as const, boardThicknessMm: 6, channelDepthMm: 7 };
    // Floor at 6 + 7 = 13 mm, axis of the M5 bar 2.5 above it, anchors 3 mm higher: 7.5 mm below the crown.
    const cases = rodCases(one, predictRod(one), createSection(neckWith(one)));
    expectNear(cases.rodPull!, 2000, ROUNDING, 'the limit');
    expectNear(cases.rodCouple!, 2000 * 7.5, ROUNDING, 'worked by hand');
    expectNear(cases.rodCurve!, 2000 * 3, ROUNDING, 'worked by hand');
  });
});

describe('what it does to a neck', () => {
  function bow(neck: NeckDescription, combination: Combination): number {
    const influence = solveInfluence(createNeckModel(neck), EMPTY, 'named');
    const from = neck.fretXMm[0];
    const relief = reliefFromDepth(influence.stationXMm, combineLine(influence, combination), from, neck.jointMm);
    return extremeRelief(influence.stationXMm, relief, from, neck.jointMm).extremeMm;
  }
  function atLimit(change: Partial<Build>): number {
    const build = { ...defaultBuild(), ...change };
    const neck = neckWith(change);
    return bow(neck, { cases: rodCases(build, predictRod(build), createSection(neck)) });
  }

  it('both kinds bend it backwards', () => {
    expect(atLimit({ rodKind: 'two-way' })).toBeLessThan(-0.05);
    expect(atLimit({ rodKind: 'one-way' })).toBeLessThan(-0.05);
    expect(
      rodCases({ ...defaultBuild(), rodKind: 'none' }, rodOf({ rodKind: 'none' }), createSection(neckWith({}))),
    ).toEqual({});
  });

  it('more distance between the bars, or more curve, bends it more', () => {
    expect(atLimit({ rodKind: 'two-way', rodSpacingMm: 8 })).toBeLessThan(
      atLimit({ rodKind: 'two-way', rodSpacingMm: 6 }),
    );
    expect(atLimit({ rodKind: 'one-way', rodCurveMm: 4 })).not.toBe(atLimit({ rodKind: 'one-way', rodCurveMm: 2 }));
  });
});

describe('on a plain strip, beside beam theory', () => {
  const HEIGHT = 20;
  const WIDTH = 50;
  const MODULUS = 12_000;
  const STIFFNESS = (MODULUS * WIDTH * HEIGHT ** 3) / 12;
  const [START, END] = [48, 456];
  const strip: NeckDescription = {
    ...rectangularNeck({
      lengthMm: 504,
      widthMm: WIDTH,
      boardThicknessMm: 6,
      neckThicknessMm: HEIGHT - 6,
      board: { modulusMPa: MODULUS, ...ISOTROPIC },
      neck: { modulusMPa: MODULUS, ...ISOTROPIC },
    }),
    rod: { startMm: START, endMm: END },
  };
  const influence = solveInfluence(createNeckModel(strip), UNCUT, 'named');
  const offset = (cases: NonNullable<Combination['cases']>) => {
    const relief = reliefFromDepth(influence.stationXMm, combineLine(influence, { cases }), START, END);
    return extremeRelief(influence.stationXMm, relief, START, END).extremeMm;
  };
  const span = END - START;

  it('a couple between the anchors: M·L²/(8·E·I)', () => {
    expectNear(
      Math.abs(offset({ rodCouple: 1e4 })),
      (1e4 * span ** 2) / (8 * STIFFNESS),
      5e-3,
      'the anchors’ sections are disturbed',
    );
  });

  it('a straight bar on a line below the axis is its pull times its lever', () => {
    const depth = 15;
    const lever = depth - HEIGHT / 2;
    const straight = offset({ rodPull: 1000, rodCouple: 1000 * depth });
    expectNear(
      Math.abs(straight),
      (1000 * lever * span ** 2) / (8 * STIFFNESS),
      5e-3,
      'the anchors’ sections are disturbed',
    );
    expect(Math.sign(straight)).toBe(Math.sign(offset({ rodCouple: 1 })));
  });

  it('a bar along the axis does not bend it', () => {
    expectNothing(
      offset({ rodPull: 1000, rodCouple: 1000 * (HEIGHT / 2) }),
      offset({ rodPull: 1000 }) === 0 ? 1 : Math.abs(offset({ rodPull: 1000 })),
      2e-3,
      'pull through the centroid',
    );
  });

  it('a curved bar: its moment is its pull times the depth of its curve, 5·P·c·L²/(48·E·I) at mid-span, and shear', () => {
    // M(x) = P·4c·s(1 − s): bending of a parabolic moment (Roark Table 8.1, from memory), and its shear M/(k·G·A), k = 5/6.
    const shear = (1000 * 3) / ((5 / 6) * ISOTROPIC.shearRatio * MODULUS * WIDTH * HEIGHT);
    const bending = (5 * 1000 * 3 * span ** 2) / (48 * STIFFNESS);
    expectNear(Math.abs(offset({ rodCurve: 1000 * 3 })), bending + shear, 2e-3, 'chords between columns');
    expect(Math.sign(offset({ rodCurve: 1 }))).toBe(Math.sign(offset({ rodCouple: 1 })));
  });

  it('how far the wood gives: M·L/(E·I) for a couple, P·L/(E·A) + P·e²·L/(E·I) for a straight bar e off the axis', () => {
    // Beam theory; the anchors' loads spread into the section over about its depth, twice.
    expectNear(
      rodWork(influence, { rodCouple: 1e4 }),
      (1e8 * span) / STIFFNESS,
      0.02,
      'the anchors’ sections are disturbed',
    );
    const [pull, depth] = [1000, 15];
    const axial = (pull ** 2 * span) / (MODULUS * WIDTH * HEIGHT);
    const bending = ((pull * (depth - HEIGHT / 2)) ** 2 * span) / STIFFNESS;
    expectNear(
      rodWork(influence, { rodPull: pull, rodCouple: pull * depth }),
      axial + bending,
      0.03,
      'the anchors’ sections are disturbed',
    );
  });
});
