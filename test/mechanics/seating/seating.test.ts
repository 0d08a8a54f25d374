import fc from 'fast-check';
import { all, create, type BigNumber } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { contactForce, seatedAt, type Contact } from '../../../src/mechanics/seating/contact.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { EMPTY } from '../../../src/mechanics/description.ts';
import { createNeckModel, solveInfluence } from '../../../src/mechanics/influence.ts';
import { seat } from '../../../src/mechanics/seating/seating.ts';
import { contactsOf } from '../../../src/mechanics/seating/wire-contact.ts';
import { expectNear, expectNothing, ROUNDING } from '../../expect-near.ts';
import { DEFAULT_NECK } from '../necks.ts';

const BODY: Contact = {
  studForceN: 0,
  studHeightMm: 0,
  studShape: 0,
  embeddingLengthMm: 0.05,
  studInterferenceMm: 0,
  bodyInterferenceMm: 0.025,
  bodyStiffnessNMm: 52_000,
  bodyLimitN: 1e9,
};

const { openingMm, slots } = solveInfluence(createNeckModel(DEFAULT_NECK), EMPTY);
const FLEXIBILITY = openingMm.slice(0, slots * slots);

function forcesOf(change: Partial<Build>): number[] {
  return [...seat(contactsOf({ ...defaultBuild(), ...change }, AS_STATED), FLEXIBILITY).forceN];
}

describe('one slot, worked by hand', () => {
  it('an elastic body against an elastic slot: two springs', () => {
    // F = k·(i − C·F)/2 → F = (k·i/2)/(1 + k·C/2) = 650/(1 + 26 000·20e-6) = 650/1.52 = 427.632 N
    const { forceN, openingMm: opening, stiffnessNMm } = seat([BODY], Float64Array.of(20e-6));
    expectNear(forceN[0], 427.6316, 1e-6, 'worked by hand to seven digits');
    expectNear(opening[0], 427.6316 * 20e-6, 1e-6, 'flexibility × force');
    expectNear(stiffnessNMm[0], 26_000, ROUNDING, 'two walls in series');
  });

  it('a slot opened by other loads takes that much less', () => {
    // F = k·(i − o − C·F)/2 with o = 0.01: 390/1.52 = 256.579 N
    expectNear(seat([BODY], Float64Array.of(20e-6), [0.01]).forceN[0], 256.5789, 1e-6, 'worked by hand');
    expect(seat([BODY], Float64Array.of(20e-6), [0.03]).forceN[0]).toBe(0);
  });

  it('a crushing wall holds its limit', () => {
    expectNear(seat([{ ...BODY, bodyLimitN: 300 }], Float64Array.of(20e-6)).forceN[0], 300, ROUNDING, 'the limit');
  });

  it('studs: the root found by bisection apart from the library', () => {
    const studs: Contact = { ...BODY, studForceN: 820, studInterferenceMm: 0.18, bodyInterferenceMm: -0.1 };
    const left = (force: number) => 820 * (1 - Math.exp(-(0.18 - 20e-6 * force) / 2 / 0.05)) - force;
    let [low, high] = [0, 820];
    for (let step = 0; step < 100; step += 1) {
      const middle = (low + high) / 2;
      if (left(middle) > 0) low = middle;
      else high = middle;
    }
    expectNear(seat([studs], Float64Array.of(20e-6)).forceN[0], low, 1e-9, 'two ways to one root');
  });
});

describe('the frets of a neck', () => {
  it('every tang fits its slot: force and opening agree with contact and flexibility', () => {
    const contacts = contactsOf({ ...defaultBuild(), tangWidthMm: 0.59 }, AS_STATED);
    const { forceN, openingMm: opening } = seat(contacts, FLEXIBILITY);
    contacts.forEach((contact, i) => {
      const expected = Array.from({ length: slots }, (_, j) => FLEXIBILITY[i * slots + j] * forceN[j]).reduce(
        (a, b) => a + b,
        0,
      );
      expectNear(opening[i], expected, 1e-9, 'a sum of products');
      expectNear(forceN[i], contactForce(contact, opening[i]).forceN, 1e-8, 'settled to 1e-8 N');
    });
  });

  it('does not depend on where the search begins', () => {
    const contacts = contactsOf(defaultBuild(), AS_STATED);
    const fresh = seat(contacts, FLEXIBILITY);
    const late = seat(contacts, FLEXIBILITY, undefined, undefined, new Float64Array(slots).fill(2000));
    fresh.forceN.forEach((force, i) => expectNear(late.forceN[i], force, 1e-8, 'one root, settled to 1e-8 N'));
  });

  it('a wider kerf bites less at every fret, down to nothing', () => {
    const kerfs = [0.4, 0.48, 0.5, 0.54, 0.58, 0.64, 0.7, 0.75];
    const forces = kerfs.map((kerfMm) => forcesOf({ kerfMm }));
    for (let k = 1; k < kerfs.length; k += 1)
      forces[k].forEach((force, i) => expect(force).toBeLessThan(forces[k - 1][i]));
    expect(forcesOf({ kerfMm: 0.76 }).every((force) => force === 0)).toBe(true);
    expect(forcesOf({ kerfMm: 0.9 }).every((force) => force === 0)).toBe(true);
  });

  it('a denser board, more studs and bigger ones push harder; a softer curve and a sharper stud less', () => {
    const sum = (change: Partial<Build>) => forcesOf(change).reduce((a, b) => a + b, 0);
    const standard = sum({});
    expect(sum({ boardWood: 'ebony-african' })).toBeGreaterThan(standard);
    expect(sum({ boardWood: 'black-walnut' })).toBeLessThan(standard);
    expect(sum({ studPitchMm: 2 })).toBeGreaterThan(standard);
    expect(sum({ studAreaMm2: 0.6 })).toBeGreaterThan(standard);
    expect(sum({ studSoftnessMm: 0.1 })).toBeLessThan(standard);
    expect(sum({ studShape: 2 })).toBeLessThan(standard);
    expect(sum({ studShape: 0 })).toBeGreaterThan(standard);
    expect(sum({ biteFactor: 1.3 })).toBeGreaterThan(standard);
  });

  it('a fret pressed after its neighbours meets slots they have hardly moved (each by itself is close to all together)', () => {
    const contacts = contactsOf(defaultBuild(), AS_STATED);
    const together = seat(contacts, FLEXIBILITY).forceN;
    contacts.forEach((contact, i) => {
      const alone = seat([contact], Float64Array.of(FLEXIBILITY[i * slots + i])).forceN[0];
      expectNear(
        alone,
        together[i],
        0.06,
        'the neighbours’ wedges close a slot by up to a third of its own opening where frets stand close',
      );
      // They close it, so it bites at least as hard.
      expect(together[i]).toBeGreaterThanOrEqual(alone * 0.999);
    });
  });
});

describe('a neck as soft as jelly, whose strings close its slots by metres on tangs as hard as steel', () => {
  const hard: Contact = { ...BODY, bodyStiffnessNMm: 800_000, bodyInterferenceMm: 0.29 };
  // Every tang bears elastically, so that the forces solve Σ_j C_ij·F_j + 2·F_i/k = b − o: worked with 40 digits.
  const { bignumber, lusolve, matrix } = create(all, { number: 'BigNumber', precision: 40 });

  it.each([1e6, 1e7, 1e8])('%d times as soft as wood: forces as of a solution of 40 digits', (soft) => {
    const flexibility = FLEXIBILITY.map((mmPerN) => soft * mmPerN);
    const other = Float64Array.from({ length: slots }, (_, i) => {
      const row = flexibility.subarray(i * slots, (i + 1) * slots);
      return -row.reduce((sum, mmPerN, j) => sum + mmPerN * (150 + ((7 * j) % 11)), 0);
    });
    const exact = lusolve(
      matrix(
        Array.from({ length: slots }, (_, i) =>
          Array.from({ length: slots }, (__, j) =>
            bignumber(flexibility[i * slots + j]).plus(i === j ? bignumber(2).div(hard.bodyStiffnessNMm) : 0),
          ),
        ),
      ),
      matrix(Array.from(other, (mm) => [bignumber(hard.bodyInterferenceMm).minus(mm)])),
    ).toArray() as BigNumber[][];
    const { forceN } = seat(Array<Contact>(slots).fill(hard), flexibility, other);
    forceN.forEach((force, i) => {
      expect(force).toBeGreaterThan(100);
      expectNear(
        force,
        Number(exact[i][0]),
        1e-8,
        'what rounding of metres leaves of a contact of 400 N in a thousandth',
      );
    });
  });
});

describe('any frets (seed 1402)', () => {
  it('settle', () => {
    const contact = fc.record({
      studForceN: fc.double({ min: 0, max: 4000, noNaN: true }),
      studHeightMm: fc.double({ min: 0, max: 0.4, noNaN: true }),
      studShape: fc.double({ min: 0, max: 3, noNaN: true }),
      embeddingLengthMm: fc.double({ min: 0.002, max: 0.2, noNaN: true }),
      studInterferenceMm: fc.double({ min: -0.3, max: 1, noNaN: true }),
      bodyInterferenceMm: fc.double({ min: -0.5, max: 0.6, noNaN: true }),
      bodyStiffnessNMm: fc.double({ min: 2000, max: 500_000, noNaN: true }),
      bodyLimitN: fc.double({ min: 100, max: 40_000, noNaN: true }),
    });
    const opening = fc.array(fc.double({ min: -0.05, max: 0.05, noNaN: true }), { minLength: slots, maxLength: slots });
    fc.assert(
      fc.property(fc.array(contact, { minLength: slots, maxLength: slots }), opening, (contacts, other) => {
        const { forceN, openingMm: reached } = seat(contacts, FLEXIBILITY, other);
        const most = Math.max(1, ...forceN);
        contacts.forEach((one, i) =>
          expectNothing(forceN[i] - contactForce(one, reached[i]).forceN, most, 1e-8, 'settled'),
        );
      }),
      { seed: 1402, numRuns: 100 },
    );
  });

  it('settle at the ends of every range, on necks from steel to rubber', () => {
    const contact = fc.record({
      studForceN: fc.constantFrom(0, 10, 1000, 40_000),
      studHeightMm: fc.constantFrom(0, 0.001, 0.13, 0.5),
      studShape: fc.constantFrom(0, 0.05, 1, 3),
      embeddingLengthMm: fc.constantFrom(0.002, 0.017, 0.2),
      studInterferenceMm: fc.constantFrom(-0.1, 0, 0.01, 0.2, 1),
      bodyInterferenceMm: fc.constantFrom(-0.1, 0, 0.001, 0.02, 0.4),
      bodyStiffnessNMm: fc.constantFrom(100, 50_000, 3e6),
      bodyLimitN: fc.constantFrom(10, 3000, 200_000),
    });
    const opening = fc.constantFrom(-0.05, 0, 0.02, 0.5);
    const softness = fc.constantFrom(1e-4, 1, 100, 1e4, 1e6);
    const frets = <Value>(of: fc.Arbitrary<Value>) => fc.array(of, { minLength: slots, maxLength: slots });
    fc.assert(
      fc.property(softness, frets(contact), frets(opening), frets(fc.nat(4)), (soft, contacts, other, unloads) => {
        const flexibility = FLEXIBILITY.map((mmPerN) => soft * mmPerN);
        const fresh = seat(contacts, flexibility);
        const seated = contacts.map((one, i) => seatedAt(one, fresh.openingMm[i], unloads[i] / 4));
        const loaded = seat(contacts, flexibility, other, seated, fresh.forceN);
        contacts.forEach((one, i) => {
          const held = contactForce(one, loaded.openingMm[i], seated[i]).forceN;
          expectNothing(loaded.forceN[i] - held, Math.max(1, held), 1e-6, 'settled to the millionth of a newton');
        });
      }),
      { seed: 1402, numRuns: 300 },
    );
  });
});
