/** Laws that the influence vectors keep whatever the neck: reciprocity, superposition, scaling, limits, convergence. */
import { describe, expect, it } from 'vitest';
import { EMPTY, linearAt, UNCUT, type NeckDescription, type SlotFilling } from '../../src/mechanics/description.ts';
import {
  combineLine,
  combineOpening,
  createNeckModel,
  solveInfluence,
  stringCases,
  type Combination,
  type Influence,
} from '../../src/mechanics/influence.ts';
import { CASES } from '../../src/mechanics/elements/loads.ts';
import { extremeRelief, reliefFromDepth } from '../../src/mechanics/relief.ts';
import { expectNear, expectNothing } from '../expect-near.ts';
import { describeSolidFeCase, solidFeCase } from '../reference/solid-fe-case.ts';
import { ALL_NECKS, DEFAULT_NECK } from './necks.ts';
import { ISOTROPIC, rectangularNeck } from './elements/rectangular.ts';

const STRINGS: Combination = { cases: stringCases(460, 1.7, 0.004)! };

function everyFret(neck: NeckDescription, forceN = 500): Combination {
  return { wedgeN: neck.fretXMm.map(() => forceN) };
}

function bowMm(neck: NeckDescription, influence: Influence, combination: Combination): number {
  const from = neck.fretXMm[0];
  const to = Math.min(neck.jointMm, neck.fretXMm.at(-1)!);
  const relief = reliefFromDepth(influence.stationXMm, combineLine(influence, combination), from, to);
  return extremeRelief(influence.stationXMm, relief, from, to).extremeMm;
}

function withModuli(neck: NeckDescription, factor: number): NeckDescription {
  const stiffer = <W extends { readonly modulusMPa: number }>(wood: W): W => ({
    ...wood,
    modulusMPa: factor * wood.modulusMPa,
  });
  return {
    ...neck,
    board: stiffer(neck.board),
    neck: neck.neck.map((piece) => ({ ...piece, wood: stiffer(piece.wood) })),
    bars: neck.bars && stiffer(neck.bars),
  };
}

describe.each(ALL_NECKS)('%s', (_name, neck) => {
  const model = createNeckModel(neck);
  const empty = solveInfluence(model, EMPTY);
  const uncut = solveInfluence(model, UNCUT);
  const n = empty.slots;

  it('slot i opens under slot j’s wedge as slot j does under slot i’s (Maxwell’s reciprocity)', () => {
    let most = 0;
    let worst = 0;
    for (let i = 0; i < n; i += 1) {
      for (let j = 0; j < n; j += 1) {
        most = Math.max(most, Math.abs(empty.openingMm[i * n + j]));
        worst = Math.max(worst, Math.abs(empty.openingMm[i * n + j] - empty.openingMm[j * n + i]));
      }
    }
    // Rounding: a tolerance of a billionth of the greatest opening.
    expect(worst / most).toBeLessThan(1e-9);
    expect(most).toBeGreaterThan(1e-6);
  });

  it('a wedge opens its own slot, and closes or leaves the others on the free part of the neck', () => {
    for (let i = 0; i < n; i += 1) {
      expect(empty.openingMm[i * n + i]).toBeGreaterThan(0);
      const others = Array.from({ length: n }, (_, j) => j).filter((j) => j !== i);
      for (const j of others) expect(Math.abs(empty.openingMm[i * n + j])).toBeLessThan(empty.openingMm[i * n + i]);
    }
  });

  it('frets bend it backwards, strings forwards, and both less with unsawn slots', () => {
    const frets = bowMm(neck, empty, everyFret(neck));
    const strings = bowMm(neck, empty, STRINGS);
    expect(frets).toBeLessThan(0);
    expect(strings).toBeGreaterThan(0);
    expect(bowMm(neck, uncut, STRINGS)).toBeLessThan(strings);
    expect(bowMm(neck, uncut, STRINGS)).toBeGreaterThan(0);
  });

  it('what fills the slots makes it stiffer, the more of it and the harder it is', () => {
    const filled = (modulusMPa: number, reach: number): SlotFilling => ({ kind: 'filled', modulusMPa, reach });
    const strings = (filling: SlotFilling) => bowMm(neck, solveInfluence(model, filling, 'named'), STRINGS);
    const bows = [EMPTY, filled(500, 0.5), filled(500, 1), filled(5000, 1), filled(50_000, 1)].map(strings);
    for (let k = 1; k < bows.length; k += 1) expect(bows[k]).toBeLessThan(bows[k - 1]);
    expectNear(strings(filled(500, 0)), bows[0], 1e-12, 'a reach of nothing is an empty slot');
  });

  it('twice the moduli, half the bow', () => {
    const stiff = withModuli(neck, 2);
    const influence = solveInfluence(createNeckModel(stiff), EMPTY);
    expectNear(
      bowMm(stiff, influence, everyFret(neck)),
      bowMm(neck, empty, everyFret(neck)) / 2,
      1e-8,
      'linear in 1/E',
    );
    expectNear(bowMm(stiff, influence, STRINGS), bowMm(neck, empty, STRINGS) / 2, 1e-8, 'linear in 1/E');
  });

  it('half the elements change its bow by about 2 % at most', () => {
    const fine = solveInfluence(createNeckModel(neck, 2), EMPTY);
    // 2.24 % of the long neck's bow with or without its bars. Bars that ended with the rows of the mesh once hid 0.8 of it.
    // One more row close below the slots would bring it to 1.6 %, and the other necks from 1.7–2.0 to 1.2–1.4 %, at a quarter
    // more arithmetic (12 rows of elements for 11: unknowns times half bandwidth squared). Beside the solids single frets
    // would come from −2.1 to −1.0 %, strings from −1.3 to −0.8 %, and a full set of frets, the number that is read, from
    // −0.4 to +0.6 %: no nearer, since what the plane model gives too much is cancelled less. Not worth it while a slider
    // waits for the solve.
    const most = neck.bars ? 0.023 : 0.02;
    expectNear(bowMm(neck, fine, everyFret(neck)), bowMm(neck, empty, everyFret(neck)), most, 'mesh convergence');
    expectNear(bowMm(neck, fine, STRINGS), bowMm(neck, empty, STRINGS), 0.02, 'mesh convergence');
  });

  it('named cases solved without the wedges are the same', () => {
    const named = solveInfluence(model, EMPTY, 'named');
    const cases = { pull: 3, couple: -20, slope: 0.1, rodCouple: 7, rodPull: 2, rodCurve: 1, boardStrain: 1e-6 };
    const line = combineLine(named, { cases });
    const scale = Math.max(...line.map(Math.abs));
    combineLine(empty, { cases }).forEach((value, i) =>
      expectNothing(value - line[i], scale, 1e-11, 'blocked otherwise, the same sums'),
    );
    expect(() => combineLine(named, { wedgeN: [1] })).toThrow(/solved without the wedges/);
  });
});

describe('combinations', () => {
  const influence = solveInfluence(createNeckModel(DEFAULT_NECK), EMPTY);

  it('no load, no bow', () => {
    expect(combineLine(influence, {}).every((value) => value === 0)).toBe(true);
    expect(combineLine(influence, everyFret(DEFAULT_NECK, 0)).every((value) => value === 0)).toBe(true);
    expect(combineOpening(influence, { cases: {} }).every((value) => value === 0)).toBe(true);
  });

  it('superpose: one wedge after another and all at once are the same', () => {
    const all = combineLine(influence, everyFret(DEFAULT_NECK, 321));
    const sum = new Float64Array(all.length);
    DEFAULT_NECK.fretXMm.forEach((_, slot) => {
      const wedgeN = DEFAULT_NECK.fretXMm.map((__, other) => (other === slot ? 321 : 0));
      combineLine(influence, { wedgeN }).forEach((value, i) => (sum[i] += value));
    });
    const scale = Math.max(...all.map(Math.abs));
    sum.forEach((value, i) => expectNothing(value - all[i], scale, 1e-12, 'sums in another order'));
  });

  it('the strings are their pull, its lever above the crown and its rise', () => {
    const line = combineLine(influence, { cases: stringCases(300, 2, 0.01)! });
    const [pull, couple, slope] = [{ pull: 1 }, { couple: 1 }, { slope: 1 }].map((cases) =>
      combineLine(influence, { cases }),
    );
    const scale = Math.max(...line.map(Math.abs));
    line.forEach((value, i) =>
      expectNothing(value - 300 * (pull[i] - 2 * couple[i] - 0.01 * slope[i]), scale, 1e-12, 'by definition'),
    );
  });

  it('the straight line of the pull through the section’s own axis does not bend a plain strip', () => {
    const strip = rectangularNeck({
      lengthMm: 504,
      widthMm: 50,
      boardThicknessMm: 6,
      neckThicknessMm: 14,
      board: { modulusMPa: 12_000, ...ISOTROPIC },
      neck: { modulusMPa: 12_000, ...ISOTROPIC },
    });
    const plain = solveInfluence(createNeckModel(strip), UNCUT, 'named');
    // The axis lies 10 mm below the crown: height above it −10.
    const line = combineLine(plain, { cases: stringCases(500, -10, 0)! });
    const bent = combineLine(plain, { cases: stringCases(500, 0, 0)! });
    const swing = (values: Float64Array) => Math.max(...values) - Math.min(...values);
    expectNothing(swing(line), swing(bent), 1e-6, 'Poisson’s contraction only');
  });
});

describe('limits', () => {
  it('a neck a million times as stiff does not move', () => {
    const stiff = withModuli(DEFAULT_NECK, 1e6);
    const bow = bowMm(stiff, solveInfluence(createNeckModel(stiff), EMPTY), STRINGS);
    expectNothing(
      bow,
      bowMm(DEFAULT_NECK, solveInfluence(createNeckModel(DEFAULT_NECK), EMPTY), STRINGS),
      1.0001e-6,
      'scaling with 1/E',
    );
  });

  it('slots filled with wood are about slots never sawn', () => {
    const model = createNeckModel(DEFAULT_NECK);
    const wood = bowMm(
      DEFAULT_NECK,
      solveInfluence(model, { kind: 'filled', modulusMPa: DEFAULT_NECK.board.modulusMPa, reach: 1 }, 'named'),
      STRINGS,
    );
    expectNear(
      wood,
      bowMm(DEFAULT_NECK, solveInfluence(model, UNCUT, 'named'), STRINGS),
      0.01,
      'the filler is isotropic, the board is not',
    );
  });

  it('bending stiffness grows as the third power of the height of a strip', () => {
    const bow = (heightMm: number) => {
      const strip = rectangularNeck({
        lengthMm: 504,
        widthMm: 50,
        boardThicknessMm: 6,
        neckThicknessMm: heightMm - 6,
        board: { modulusMPa: 12_000, ...ISOTROPIC },
        neck: { modulusMPa: 12_000, ...ISOTROPIC },
        fretXMm: [30, 480],
      });
      return bowMm(strip, solveInfluence(createNeckModel(strip), UNCUT, 'named'), { cases: { couple: 1e4 } });
    };
    expectNear(
      bow(20) / bow(10),
      1 / 8,
      1e-4,
      'beam theory; the couple acts at a section’s distance from the straightedge’s ends',
    );
  });

  it('a wedge bends a slotted strip as the hinge of its slot does: an angle at one place', () => {
    const strip = rectangularNeck({
      lengthMm: 400,
      widthMm: 50,
      boardThicknessMm: 6,
      neckThicknessMm: 14,
      board: { modulusMPa: 12_000, ...ISOTROPIC },
      neck: { modulusMPa: 12_000, ...ISOTROPIC },
      fretXMm: [150],
      slotDepthMm: 3,
    });
    const influence = solveInfluence(createNeckModel(strip), EMPTY);
    const line = combineLine(influence, { wedgeN: [1000] });
    const xs = influence.stationXMm;
    const slopes = Array.from(xs.slice(1), (x, i) => (line[i + 1] - line[i]) / (x - xs[i]));
    const left = slopes.filter((_, i) => xs[i + 1] < 110);
    const right = slopes.filter((_, i) => xs[i] > 190);
    const kink = right[0] - left[0];
    expect(kink).toBeGreaterThan(0);
    // Straight on both sides: the wedge is in equilibrium by itself.
    for (const side of [left, right])
      for (const slope of side) expectNothing(slope - side[0], kink, 2e-3, 'Saint-Venant, two heights away');
  });

  it('is steady in x: the reference neck and itself with the board’s end cut off bend alike between the frets', () => {
    const neck = describeSolidFeCase(solidFeCase('A-reference'));
    expectNear(linearAt(neck.widthMm, 0), 43, 1e-9, 'as the file says');
    const shorter = { ...neck, lengthMm: neck.fretXMm.at(-1)! + 6, jointMm: neck.fretXMm.at(-1)! + 6 };
    const bow = (described: NeckDescription) =>
      bowMm(described, solveInfluence(createNeckModel(described), EMPTY), everyFret(neck));
    expectNear(bow(shorter), bow(neck), 5e-3, 'the last slot feels the end of the board');
  });
});

it('load cases are named once', () => {
  expect(new Set(CASES).size).toBe(CASES.length);
});
