/** Moduli from species and from measured blanks. The standards' constants are rows of the table of reference values. */
import { ownWoodsWith } from '../../../src/neck/materials/own-woods.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { describeNeck } from '../../../src/mechanics/describe.ts';
import {
  boardProperties,
  meanModulusMPa,
  measuredModulusMPa,
  modulusFromSagMPa,
  modulusFromTapMPa,
  woodProperties,
} from '../../../src/mechanics/elements/materials.ts';
import { contactsOf } from '../../../src/mechanics/seating/wire-contact.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';
import { edgeTraction, orthotropic, planeModel } from './plane-model.ts';

describe('a tapped bar (ASTM E1876, from memory)', () => {
  it('worked by hand: a maple blank 750 × 90 × 25 mm of 1181 g that rings at 188 Hz', () => {
    // 0.9465·(1181·188²/90)·(750/25)³·(1 + 6.585/900) = 0.9465·463 791.8·27 000·1.0073167 = 1.1939152e10 Pa
    expectNear(modulusFromTapMPa(1181, 188, 750, 90, 25), 11_939.15, 1e-5, 'worked by hand to six digits');
  });

  it('gives the modulus of a bar of known one back: Euler–Bernoulli frequency of a slender bar', () => {
    // f = β²/(2π·L²)·√(E·I/(m/L)), β = 4.730041 (any vibrations textbook)
    const [length, width, thickness, mass, modulus] = [1.2, 0.05, 0.004, 0.16, 12e9];
    const inertia = (width * thickness ** 3) / 12;
    const frequency = (4.730041 ** 2 / (2 * Math.PI * length ** 2)) * Math.sqrt((modulus * inertia) / (mass / length));
    expectNear(
      modulusFromTapMPa(1000 * mass, frequency, 1200, 50, 4),
      12_000,
      2e-4,
      'four digits of the constant; shear 7e-5',
    );
  });
});

describe('a bar bent by a weight', () => {
  it('gives the modulus of the library’s own elements back', () => {
    // Half a slender bar by symmetry: span 600, height 6 mm, thickness 1 mm, 1 N at the middle.
    const [half, height, modulus] = [300, 6, 13_000];
    const xs = Array.from({ length: 61 }, (_, i) => (half * i) / 60);
    const ys = Array.from({ length: 5 }, (_, i) => (height * i) / 4);
    const model = planeModel({ xs, ys, stiffness: () => orthotropic(modulus, 0.13, 0.11, 0.4) });
    // Middle at x = 0: no turning. The support carries half the weight upwards at x = 300.
    const held = new Map<number, number>([[model.node(0, 2).dof + 1, 0]]);
    for (let row = 0; row <= 4; row += 1) held.set(model.node(0, row).dof, 0);
    const forces = edgeTraction(model, 60, ys, () => 0);
    ys.forEach((y, row) => (forces[model.node(60, row).dof + 1] = y * (height - y)));
    const total = forces.reduce((sum, force) => sum + force, 0);
    const u = model.solve(forces, held);
    const sag = u[model.node(60, 2).dof + 1];
    expectNear(
      modulusFromSagMPa(2 * total, 2 * half, 1, height, sag),
      modulus,
      3e-3,
      'shear adds to the deflection: (h/L)²·E/G, one or two thousandths',
    );
  });
});

describe('the blank of a build', () => {
  const build: Build = {
    ...defaultBuild(),
    neckBlankTest: 'tap',
    neckBlankLengthMm: 750,
    neckBlankWidthMm: 90,
    neckBlankThicknessMm: 25,
    neckBlankMassG: 1181,
    neckBlankFrequencyHz: 188,
  };

  it('replaces the species value', () => {
    expect(measuredModulusMPa(defaultBuild(), 'neck')).toBeUndefined();
    expectNear(measuredModulusMPa(build, 'neck')!, 11_939.15, 1e-5, 'as above');
    expectNear(describeNeck(build, AS_STATED).neck[0].wood.modulusMPa, 11_939.15, 1e-5, 'as above');
    expect(measuredModulusMPa(build, 'board')).toBeUndefined();
    const bent: Build = {
      ...defaultBuild(),
      boardBlankTest: 'sag',
      boardBlankWidthMm: 70,
      boardBlankThicknessMm: 9,
      boardBlankSpanMm: 448,
      boardBlankLoadN: 10,
      boardBlankSagMm: 0.4,
    };
    // 10·448³/(4·70·9³·0.4) = 11 012.6
    expectNear(measuredModulusMPa(bent, 'board')!, 11_012.6, 1e-5, 'worked by hand to six digits');
    expectNear(describeNeck(bent, AS_STATED).board.modulusMPa, 11_012.6, 1e-5, 'the board’s');
  });

  it('gives laminates one modulus together, each its share', () => {
    const laminates = [
      { wood: 'wenge', share: 0.5 },
      { wood: 'sugar-maple', share: 0.5 },
    ];
    const neck = describeNeck({ ...build, laminates }, AS_STATED).neck;
    const species = laminates.map(({ wood }) => woodProperties(wood, build).modulusMPa);
    expectNear(neck[0].wood.modulusMPa / neck[1].wood.modulusMPa, species[0] / species[1], ROUNDING, 'in proportion');
    expectNear((neck[0].wood.modulusMPa + neck[1].wood.modulusMPa) / 2, 11_939.15, 1e-5, 'the measured mean');
    expectNear(meanModulusMPa({ ...build, laminates }), (species[0] + species[1]) / 2, ROUNDING, 'a mean');
  });

  it('deviations of the moduli multiply', () => {
    const off = describeNeck(build, {
      ...AS_STATED,
      boardModulus: 1.2,
      neckModulus: 0.8,
      acrossGrain: 1.1,
      slotDepthMm: 0.2,
    });
    const stated = describeNeck(build, AS_STATED);
    expectNear(off.board.modulusMPa, 1.2 * stated.board.modulusMPa, ROUNDING, 'a product');
    expectNear(off.neck[0].wood.modulusMPa, 0.8 * stated.neck[0].wood.modulusMPa, ROUNDING, 'a product');
    for (const ratio of ['depthRatio', 'widthRatio', 'shearRatio'] as const)
      expectNear(off.board[ratio], 1.1 * stated.board[ratio], ROUNDING, 'a product');
    expect(off.neck[0].wood.depthRatio).toBe(stated.neck[0].wood.depthRatio);
    expectNear(off.slot.depthMm, stated.slot.depthMm + 0.2, ROUNDING, 'a sum');
  });
});

describe('how a board is sawn', () => {
  it('decides which way through it is which', () => {
    const flat = describeNeck({ ...defaultBuild(), boardWood: 'sugar-maple', boardSawn: 'flat' }, AS_STATED).board;
    const quarter = describeNeck(
      { ...defaultBuild(), boardWood: 'sugar-maple', boardSawn: 'quarter' },
      AS_STATED,
    ).board;
    // Wood Handbook Table 5-1, sugar maple: E_R 0.132, G_LR 0.111; E_T 0.065, G_LT 0.063.
    expect([flat.depthRatio, flat.shearRatio]).toEqual([0.132, 0.111]);
    expect([quarter.depthRatio, quarter.shearRatio]).toEqual([0.065, 0.063]);
  });
});

describe('the maker’s own wood (seed 1406)', () => {
  it('is as entered, and crushes about as woods of its density do', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 30, noNaN: true }),
        fc.double({ min: 350, max: 1200, noNaN: true }),
        (ownModulusGPa, ownDensityKgM3) => {
          const wood = woodProperties('own', {
            ownWoods: ownWoodsWith({ modulusGPa: ownModulusGPa, densityKgM3: ownDensityKgM3 }),
            woodValues: 'printed',
          });
          expectNear(wood.modulusMPa, 1000 * ownModulusGPa, ROUNDING, 'a unit');
          expect(wood.densityKgM3).toBe(ownDensityKgM3);
          expect(wood.ratiosAssumed).toBe(true);
          expect(wood.crushingMPa).toBeGreaterThan(20);
          expect(wood.crushingMPa).toBeLessThan(110);
        },
      ),
      { seed: 1406, numRuns: 50 },
    );
  });

  it('lies by sugar maple where it is as dense: the regression beside the table', () => {
    // Sugar maple: 705.6 kg/m³, 54.0 MPa (GTR-190 Table 5-3a)
    expectNear(
      woodProperties('own', { ownWoods: ownWoodsWith({ densityKgM3: 705.6 }), woodValues: 'printed' }).crushingMPa,
      54.0,
      0.1,
      'a regression over species',
    );
  });
});

describe('a tapped board', () => {
  it('brings its own density to the bite of the studs: twice the mass bites twice as hard', () => {
    // 560 × 70 × 9 mm = 352.8 cm³; 282.24 g make 800 kg/m³.
    const tapped = {
      ...defaultBuild(),
      boardBlankTest: 'tap' as const,
      boardBlankLengthMm: 560,
      boardBlankWidthMm: 70,
      boardBlankThicknessMm: 9,
    };
    expectNear(
      boardProperties({ ...tapped, boardBlankMassG: 282.24 }).densityKgM3,
      800,
      1e-12,
      'the same product twice',
    );
    const force = (mass: number) => contactsOf({ ...tapped, boardBlankMassG: mass }, AS_STATED)[0].studForceN;
    expectNear(force(560) / force(280), 2, 1e-12, 'the embedding rule is linear in density');
  });
});
