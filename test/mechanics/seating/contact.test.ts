import fc from 'fast-check';
import { ownWoodsWith } from '../../../src/neck/materials/own-woods.ts';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import {
  contactForce,
  embeddingStrengthMPa,
  gripShare,
  seatedAt,
  steepestNMm,
  studBiteMm,
  wallPressureShare,
  type Contact,
} from '../../../src/mechanics/seating/contact.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { contactsOf, studDiameterMm } from '../../../src/mechanics/seating/wire-contact.ts';
import { expectNear, expectNothing, ROUNDING } from '../../expect-near.ts';

/** Studs 0.18 mm over the kerf that can reach 800 N a wall; the body clears it. */
const STUDS: Contact = {
  studForceN: 800,
  studHeightMm: 0.12,
  studShape: 0,
  embeddingLengthMm: 0.05,
  studInterferenceMm: 0.18,
  bodyInterferenceMm: -0.08,
  bodyStiffnessNMm: 52_000,
  bodyLimitN: 6000,
};
const WITH_BODY: Contact = { ...STUDS, bodyInterferenceMm: 0.03 };

const contact: fc.Arbitrary<Contact> = fc
  .record({
    studForceN: fc.double({ min: 0, max: 3000, noNaN: true }),
    studHeightMm: fc.double({ min: 0, max: 0.4, noNaN: true }),
    studShape: fc.oneof(fc.constantFrom(0, 1, 2), fc.double({ min: 0, max: 3, noNaN: true })),
    embeddingLengthMm: fc.double({ min: 0.002, max: 0.2, noNaN: true }),
    studInterferenceMm: fc.double({ min: -0.2, max: 0.6, noNaN: true }),
    body: fc.double({ min: 0, max: 0.3, noNaN: true }),
    bodyStiffnessNMm: fc.double({ min: 5000, max: 300_000, noNaN: true }),
    bodyLimitN: fc.double({ min: 500, max: 20_000, noNaN: true }),
  })
  .map(({ body, ...rest }) => ({ ...rest, bodyInterferenceMm: rest.studInterferenceMm - body }));

/** Seated at a bite of 0.09 mm and 0.015 mm of the body; nothing has relaxed yet. */
const SEATED = seatedAt(STUDS, 0, 1);

describe('studs', () => {
  it('of one area at any depth, worked by hand: bite 0.09 mm', () => {
    // 800·(1 − e^(−0.09/0.05)) = 800·(1 − 0.165299) = 667.761; slope 800/0.05·0.165299/2 = 1322.39
    const { forceN, stiffnessNMm } = contactForce(STUDS, 0);
    expectNear(forceN, 667.761, 1e-6, 'worked by hand to six digits');
    expectNear(stiffnessNMm, 1322.39, 1e-5, 'worked by hand to six digits');
    expectNear(studBiteMm(STUDS, 0.02), 0.08, ROUNDING, 'half of what is left');
  });

  it.each([
    [1, 'a ridge: 0.09/0.12 = 3/4 of its area', 500.821],
    [2, 'a cone: 9/16', 375.616],
    [0.5, 'between block and ridge: √0.75 = 0.866025', 578.298],
  ])('of shape %d, worked by hand at a bite of 0.09 of 0.12 mm: %s', (studShape, _, force) => {
    expectNear(contactForce({ ...STUDS, studShape }, 0).forceN, force, 2e-6, 'worked by hand to six digits');
  });

  it('bear with their whole area once they are in to their foot', () => {
    const deep = { ...STUDS, studInterferenceMm: 0.3 };
    for (const studShape of [0.5, 1, 2]) expect(contactForce({ ...deep, studShape }, 0)).toEqual(contactForce(deep, 0));
  });

  it('of no height are blocks', () => {
    expect(contactForce({ ...STUDS, studHeightMm: 0, studShape: 1 }, 0)).toEqual(contactForce(STUDS, 0));
  });

  it('unload along the stiffness of the area that they have, never into tension', () => {
    // From a bite of 0.09 (667.761 N) back by 0.02: 667.761 − 16 000·0.02 = 347.761 N
    expectNear(contactForce(STUDS, 0.04, SEATED).forceN, 347.761, 2e-6, 'worked by hand to six digits');
    expectNear(contactForce(STUDS, 0.04, SEATED).stiffnessNMm, 8000, ROUNDING, 'f/δ of the area, two walls in series');
    expect(contactForce(STUDS, 0.1, SEATED)).toEqual({ forceN: 0, stiffnessNMm: 0 });
    expect(contactForce(STUDS, 0.3, SEATED)).toEqual({ forceN: 0, stiffnessNMm: 0 });
    // A ridge 0.09 of 0.12 mm in: 500.821 − 12 000·0.02 = 260.821 N
    const ridge = { ...STUDS, studShape: 1 };
    expectNear(contactForce(ridge, 0.04, seatedAt(ridge, 0, 1)).forceN, 260.821, 3e-6, 'worked by hand');
  });

  it('go on along the curve where they have not been yet', () => {
    // A ridge that has only just bitten, or not at all: its curve is steeper than what its small area gives along the line.
    const ridge = { ...STUDS, studShape: 1 };
    for (const at of [0.17, 0.19])
      expect(contactForce(ridge, 0.1, seatedAt(ridge, at, 1)).forceN).toBe(contactForce(ridge, 0.1).forceN);
    expect(contactForce(STUDS, -0.02, SEATED)).toEqual(contactForce(STUDS, -0.02));
    expectNear(contactForce(STUDS, 0, SEATED).forceN, contactForce(STUDS, 0).forceN, ROUNDING, 'the curves meet');
  });

  it('take up what time has let go along the same stiff line, then go on along the curve', () => {
    const rested = seatedAt(STUDS, 0, 0.8);
    // 0.8·667.761 = 534.209; 0.004 mm deeper: + 16 000·0.004 = 598.209 N, below the curve's 678.099
    expectNear(contactForce(STUDS, 0, rested).forceN, 534.209, 2e-6, 'worked by hand to six digits');
    expectNear(contactForce(STUDS, -0.008, rested).forceN, 598.209, 2e-6, 'worked by hand to six digits');
    // 0.02 mm deeper the line would be at 854 N: the curve gives 800·(1 − e^(−2.2)) = 711.358
    expectNear(contactForce(STUDS, -0.04, rested).forceN, 711.358, 2e-6, 'worked by hand to six digits');
  });

  it('do not reach a wide slot', () => {
    expect(contactForce({ ...STUDS, studInterferenceMm: -0.01 }, 0)).toEqual({ forceN: 0, stiffnessNMm: 0 });
  });
});

describe('the grip of a stud', () => {
  it('is the share of its area times that of the pressure, worked by hand', () => {
    // 0.06 of 0.12 mm of a ridge: half its area; 1 − e^(−1.2) = 0.698806
    const ridge = { studHeightMm: 0.12, studShape: 1, embeddingLengthMm: 0.05 };
    expectNear(gripShare(ridge, 0.06), 0.349403, 2e-6, 'worked by hand to six digits');
    expect(gripShare(ridge, 0)).toBe(0);
    expect(gripShare(ridge, -0.01)).toBe(0);
  });

  it('grows as a ridge goes in by its area and its pressure: the slope, worked by hand', () => {
    // A·f = 800 N; 0.06 of 0.12 mm: 800·½·(0.698806/0.06 + 0.301194/0.05) /2 walls = 3534.13 N/mm
    const half = contactForce({ ...STUDS, studShape: 1, studInterferenceMm: 0.12 }, 0);
    expectNear(half.stiffnessNMm, 3534.13, 2e-6, 'worked by hand to six digits');
  });
});

describe('a seated contact', () => {
  it('has the stiffness of both lines, two walls in series; none where nothing touches', () => {
    // Studs 16 000 N/mm of bite, body 52 000.
    expectNear(seatedAt(WITH_BODY, 0, 0.5).stiffnessNMm, 34_000, ROUNDING, 'worked by hand');
    expect(seatedAt(WITH_BODY, 0.2, 0.5).stiffnessNMm).toBe(0);
  });
});

describe('the body', () => {
  it('adds its wall stiffness until the wall crushes', () => {
    // 0.015 mm a wall: 52 000·0.015 = 780 N beside the studs
    const alone = contactForce(STUDS, 0).forceN;
    expectNear(contactForce(WITH_BODY, 0).forceN, alone + 780, ROUNDING, 'two contacts in parallel');
    expectNear(wallPressureShare(WITH_BODY, 0), 780 / 6000, ROUNDING, 'share of the limit');
    const crushed = { ...WITH_BODY, bodyInterferenceMm: 0.5 };
    expectNear(contactForce(crushed, 0).forceN, alone + 6000, ROUNDING, 'the limit');
    expect(contactForce(crushed, 0).stiffnessNMm).toBe(contactForce(STUDS, 0).stiffnessNMm);
    expect(wallPressureShare(crushed, 0)).toBe(1);
    expect(wallPressureShare(STUDS, 0)).toBe(0);
  });

  it('gives back along its stiffness when the wall has crushed, and takes up again what time has let go', () => {
    const crushed = { ...WITH_BODY, studForceN: 0, bodyInterferenceMm: 0.5 };
    // 0.01 mm of opening: 6000 − 52 000·0.005 = 5740 N
    expectNear(contactForce(crushed, 0.01, seatedAt(crushed, 0, 1)).forceN, 5740, ROUNDING, 'worked by hand');
    const rested = seatedAt(crushed, 0, 0.9);
    // 5400 + 52 000·0.005 = 5660 N, and no more than the limit
    expectNear(contactForce(crushed, -0.01, rested).forceN, 5660, ROUNDING, 'worked by hand');
    expectNear(contactForce(crushed, -0.1, rested).forceN, 6000, ROUNDING, 'the limit');
  });
});

describe('any contact (seed 1401)', () => {
  const opening = fc.double({ min: -0.1, max: 0.7, noNaN: true });

  const left = fc.double({ min: 0, max: 1, noNaN: true });

  it('pushes less the further its slot opens, never pulls, and nowhere more than when first loaded', () => {
    fc.assert(
      fc.property(contact, opening, opening, opening, left, (c, a, b, at, forceLeft) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        for (const seated of [undefined, seatedAt(c, at, forceLeft)]) {
          const [near, far] = [contactForce(c, less, seated), contactForce(c, more, seated)];
          expect(far.forceN).toBeGreaterThanOrEqual(0);
          expect(near.forceN).toBeGreaterThanOrEqual(far.forceN - 1e-9);
          expect(far.forceN).toBeLessThanOrEqual(contactForce(c, more).forceN + 1e-9);
          expect(near.stiffnessNMm).toBeGreaterThanOrEqual(0);
          expect(near.stiffnessNMm).toBeLessThanOrEqual(steepestNMm(c) * (1 + ROUNDING));
        }
        const stood = contactForce(c, at).forceN;
        expectNothing(
          contactForce(c, at, seatedAt(c, at, forceLeft)).forceN - forceLeft * stood,
          Math.max(1, stood),
          1e-9,
          'ρ·F',
        );
      }),
      { seed: 1401, numRuns: 500 },
    );
  });

  it('its slope is that of its force', () => {
    fc.assert(
      fc.property(contact, opening, (c, at) => {
        const step = 1e-6;
        const corners = [
          c.studInterferenceMm,
          c.studInterferenceMm - 2 * c.studHeightMm,
          c.bodyInterferenceMm,
          c.bodyInterferenceMm - (2 * c.bodyLimitN) / c.bodyStiffnessNMm,
        ];
        fc.pre(corners.every((corner) => Math.abs(corner - at) > 10 * step));
        const { stiffnessNMm } = contactForce(c, at);
        fc.pre(stiffnessNMm > 1);
        const numeric = (contactForce(c, at - step).forceN - contactForce(c, at + step).forceN) / (2 * step);
        expectNear(stiffnessNMm, numeric, 1e-5, 'central difference over a millionth of a millimetre');
      }),
      { seed: 1401, numRuns: 300 },
    );
  });
});

describe('from wire and wood', () => {
  it('embedding strength: EN 1995-1-1 eq. 8.32 (row embed-16 of the table), and as used for studs', () => {
    expectNear(embeddingStrengthMPa(0.78, 1010), 0.082 * 0.9922 * 1010, ROUNDING, 'one formula');
    expectNear(studDiameterMm(Math.PI / 4), 1, ROUNDING, 'a circle of diameter 1');
  });

  it('the contact of a fret, worked by hand', () => {
    const build = {
      ...defaultBuild(),
      boardWood: 'own',
      ownWoods: ownWoodsWith({ densityKgM3: 1000 }),
      widthNutMm: 50,
      widthLastFretMm: 50,
      kerfMm: 0.5,
      tangWidthMm: 0.52,
      studWidthMm: 0.8,
      studAreaMm2: 0.5,
      studPitchMm: 2.5,
      studShape: 1.5,
      tangDepthMm: 2,
      slotDepthMm: 3,
      wallStiffnessNMm3: 500,
      biteFactor: 1.2,
    };
    const [first, ...rest] = contactsOf(build, AS_STATED);
    // d = √(4·0.5/π) = 0.797885; f = 0.082·(1 − 0.00797885)·1000 = 81.34573; 1.2·(50/2.5)·0.5·f = 976.1488
    expectNear(first.studForceN, 976.1488, 1e-6, 'worked by hand to seven digits');
    expectNear(first.studInterferenceMm, 0.3, 1e-9, 'a difference');
    expectNear(first.studHeightMm, 0.14, 1e-9, 'half of what stands out of the tang: (0.8 − 0.52)/2');
    expect(first.studShape).toBe(1.5);
    expectNear(first.bodyInterferenceMm, 0.02, 1e-9, 'a difference');
    expectNear(first.bodyStiffnessNMm, 1.2 * 50 * 2 * 500, ROUNDING, 'a product');
    // Own wood: 84.9·(1000/1120)^0.97 MPa
    expectNear(first.bodyLimitN, 1.2 * 50 * 2 * 84.9 * (1000 / 1120) ** 0.97, ROUNDING, 'a product');
    expect(rest).toHaveLength(build.fretCount - 1);
    // A tang deeper than its slot touches only the slot; deviations move what they say.
    expectNear(
      contactsOf({ ...build, slotDepthMm: 1 }, AS_STATED)[0].bodyStiffnessNMm,
      1.2 * 50 * 500,
      ROUNDING,
      'a product',
    );
    const off = contactsOf(build, { ...AS_STATED, kerfMm: 0.01, density: 1.1, studSoftness: 2, studWidthMm: 0.02 })[0];
    expectNear(off.studInterferenceMm, 0.31, 1e-9, 'wider kerf, wider studs');
    expectNear(off.studForceN, 1.1 * first.studForceN, ROUNDING, 'in proportion to the density');
    const other = contactsOf(build, {
      ...AS_STATED,
      studShape: -2,
      studArea: 1.3,
      wallStiffness: 0.5,
      slotDepthMm: -1.5,
    });
    expect(other[0].studShape).toBe(0);
    expectNear(other[0].studForceN, 1.3 * first.studForceN, ROUNDING, 'in proportion to the area');
    expectNear(other[0].bodyStiffnessNMm, 1.2 * 50 * 1.5 * 250, ROUNDING, 'half as stiff, 1.5 mm of slot');
    expectNear(off.embeddingLengthMm, 2 * build.studSoftnessMm, ROUNDING, 'a product');
  });

  it('a region of frets has its own kerf and tang', () => {
    const region = { fromFret: 3, toFret: 5, kerfMm: 0.55, tangWidthMm: 0.53, studWidthMm: 0.84 };
    const contacts = contactsOf({ ...defaultBuild(), regions: [region] }, AS_STATED);
    expectNear(contacts[3].studInterferenceMm, 0.29, 1e-9, 'of the region');
    expectNear(
      contacts[6].studInterferenceMm,
      defaultBuild().studWidthMm - defaultBuild().kerfMm,
      1e-9,
      'of the build',
    );
  });
});
