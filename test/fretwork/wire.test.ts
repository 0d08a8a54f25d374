import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fretPositionMm } from '../../src/neck/neck-shape.ts';
import { fretEnds } from '../../src/fretwork/ends.ts';
import { wireOrder, wirePieces } from '../../src/fretwork/wire.ts';
import { validBuild } from './arbitrary-build.ts';
import { BOUND_CONICAL, FLAT_CUT_TIGHT, UNBOUND_FLAT } from './boards.ts';
import { firstFitDecreasing } from './first-fit.ts';
import { BY_HAND, expectNear, ROUNDING } from './near.ts';

const HAND = 'worked by hand to five decimals';

describe('worked by hand', () => {
  it('unbound flat board, fret 12', () => {
    // arc = width 51.66667; cut + 2·2 = 55.66667; filed − 2·0.1 = 51.46667; the tang runs to the edges
    const piece = wirePieces(UNBOUND_FLAT)[11];
    expectNear(piece.arcMm, 51.66667, BY_HAND, HAND);
    expectNear(piece.cutMm, 55.66667, BY_HAND, HAND);
    expectNear(piece.filedMm, 51.46667, BY_HAND, HAND);
    expectNear(piece.tangMm, 51.66667, BY_HAND, HAND);
    expect([piece.nipMm, piece.shelfMm]).toEqual([0, 0]);
  });

  it('bound conical board, fret 12', () => {
    // arc 2·359.64587·asin(26.36527/359.64587) = 719.29174·0.0733748 = 52.77789; cut 56.77789
    // nip 4.00499 at each end (ends.test.ts): tang 56.77789 − 2·4.00499 = 48.76789
    // filed: foot at 26.26527: 719.29174·asin(0.0730309) = 52.57735
    const piece = wirePieces(BOUND_CONICAL)[11];
    expectNear(piece.arcMm, 52.77789, BY_HAND, HAND);
    expectNear(piece.cutMm, 56.77789, BY_HAND, HAND);
    expectNear(piece.tangMm, 48.7679, BY_HAND, HAND);
    expectNear(piece.filedMm, 52.57735, BY_HAND, HAND);
    expectNear(piece.shelfMm, 1.4, BY_HAND, HAND);
  });

  it('straight cut on a tight radius, fret 12: the arc does not mind how the slot is cut', () => {
    const piece = wirePieces(FLAT_CUT_TIGHT)[11];
    expectNear(piece.arcMm, 58.08007, BY_HAND, 'ends.test.ts');
    expectNear(piece.cutMm, 62.08007, BY_HAND, HAND);
  });

  it('wire for the unbound flat board', () => {
    // Widths sum to 24·43 + 13/487.5·Σx. Σx = 650·(24 − Σ rⁿ), r = 2^(−1/12):
    //   Σ rⁿ = r·(1 − 1/4)/(1 − r) = 0.9438743·0.75/0.0561257 = 12.612865; Σx = 650·11.387135 = 7401.6375
    //   24·43 + 0.0266667·7401.6375 = 1032 + 197.3770 = 1229.3770; + 24·4 oversize = 1325.3770
    const order = wireOrder(UNBOUND_FLAT);
    expectNear(order.fretsMm, 1325.377, 1e-6, 'worked by hand to three decimals');
    // 10 % of 24 is 2.4, so 3 whole spares of the longest: 56 + 4 = 60. Loss 27·0.5 = 13.5.
    expect(order.spareFrets).toBe(3);
    expectNear(order.totalMm, 1325.377 + 3 * 60 + 13.5, 1e-6, 'worked by hand to three decimals');
    // From 260 mm: pieces of 47.7 to 60; five pieces fit a stick only below 52 on average. Length alone: 1518.9/260.5 → 6.
    expect(order.sticks!.plan.fewestPossible).toBeGreaterThanOrEqual(6);
    expect(order.sticks!.toOrder).toBe(order.sticks!.plan.sticks.length);
    expect(order.coil).toBeUndefined();
  });

  it('wire from a coil', () => {
    // 1518.877 mm on a circle of 2π·150 = 942.478 mm: 1.61158 turns
    const order = wireOrder({ ...UNBOUND_FLAT, wireForm: 'coil', coilRadiusMm: 150 });
    expect(order.sticks).toBeUndefined();
    expectNear(order.coil!.turns, 1.61158, 4e-6, HAND);
  });
});

it('refuses sticks shorter than the longest fret, naming it', () => {
  expect(() => wireOrder({ ...BOUND_CONICAL, widthLastFretMm: 80, stickLengthMm: 60 })).toThrow(
    /piece for fret \d+ is \d+\.\d\d mm; a stick of 60 mm/,
  );
});

describe('properties (seed 6301)', () => {
  it('arc ≥ chord, closed by its own formula; nip and tang make up the piece', () => {
    fc.assert(
      fc.property(validBuild, (build) => {
        const ends = fretEnds(build);
        for (const [index, piece] of wirePieces(build, ends).entries()) {
          const end = ends[index];
          const chord = 2 * end.boardHalfMm;
          expect(piece.arcMm).toBeGreaterThanOrEqual(chord - 1e-9);
          // Chord of an arc of angle A/R: 2·R·sin(A/2R).
          if (end.radiusMm !== Infinity) {
            expectNear(2 * end.radiusMm * Math.sin(piece.arcMm / (2 * end.radiusMm)), chord, ROUNDING, 'inverse');
          }
          if (!end.slotOpen) expectNear(piece.tangMm + 2 * piece.nipMm, piece.cutMm, ROUNDING, 'sum');
          expect(piece.filedMm).toBeLessThanOrEqual(piece.arcMm);
          expectNear(end.xMm, fretPositionMm(build.scaleLengthMm, piece.fret), ROUNDING, 'same formula');
        }
      }),
      { seed: 6301, numRuns: 100 },
    );
  });

  it('never orders more sticks than first-fit decreasing, nor less wire than the frets take', () => {
    fc.assert(
      fc.property(validBuild, (build) => {
        const order = wireOrder({ ...build, wireForm: 'stick' });
        const plan = order.sticks!.plan;
        const cut = plan.sticks.flatMap((stick) => stick.pieces);
        expect(cut).toHaveLength(build.fretCount + order.spareFrets);
        expect(cut.filter((piece) => piece.spare)).toHaveLength(order.spareFrets);
        expect(plan.sticks.length).toBeLessThanOrEqual(firstFitDecreasing(cut, build.stickLengthMm, build.cutLossMm));
        expect(order.sticks!.toOrder * build.stickLengthMm).toBeGreaterThan(order.fretsMm);
        expect(order.spareFrets).toBeGreaterThanOrEqual((build.fretCount * build.wireSparePercent) / 100);
      }),
      { seed: 6301, numRuns: 60 },
    );
  });
});
