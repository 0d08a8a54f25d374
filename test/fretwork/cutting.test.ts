import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cuttingPlan, fewestBins, type Piece } from '../../src/fretwork/plan/cutting.ts';
import { firstFitDecreasing } from './first-fit.ts';
import { expectNear, ROUNDING } from './near.ts';

const piecesOf = (lengths: readonly number[]): Piece[] =>
  lengths.map((lengthMm, index) => ({ fret: index + 1, lengthMm }));

/** Fewest sticks by dynamic programming over all subsets: exact, and nothing like the plan's own method. */
function fewestByAllSubsets(lengths: readonly number[], stick: number, loss: number): number {
  const all = 1 << lengths.length;
  // best[s] = [sticks, length used in the last one]: the least in that order for the pieces in s.
  const best: [number, number][] = Array.from({ length: all }, () => [Infinity, Infinity]);
  best[0] = [0, Infinity];
  for (let set = 0; set < all; set += 1) {
    for (const [index, length] of lengths.entries()) {
      if (set & (1 << index)) continue;
      const [sticks, used] = best[set];
      const fits = used + loss + length <= stick + 1e-9;
      const next: [number, number] = fits ? [sticks, used + loss + length] : [sticks + 1, length];
      const target = best[set | (1 << index)];
      if (next[0] < target[0] || (next[0] === target[0] && next[1] < target[1])) best[set | (1 << index)] = next;
    }
  }
  return best[all - 1][0];
}

describe('a cutting plan worked by hand', () => {
  it('finds two sticks where first-fit decreasing takes three', () => {
    // Sticks of 10, no loss. First-fit decreasing: 4+4, 3+3+3, then 3: three sticks. Better: 4+3+3 and 4+3+3.
    const pieces = piecesOf([4, 4, 3, 3, 3, 3]);
    expect(firstFitDecreasing(pieces, 10, 0)).toBe(3);
    const plan = cuttingPlan(pieces, 10, 0);
    expect(plan.sticks.map((stick) => stick.pieces.map((piece) => piece.lengthMm))).toEqual([
      [4, 3, 3],
      [4, 3, 3],
    ]);
    expect([plan.fewestPossible, plan.provenFewest, plan.wasteMm]).toEqual([2, true, 0]);
  });

  it('counts one cut less than pieces', () => {
    // 3·33 + 2·0.5 = 100: three pieces of 33 fit a stick of 100 with half a millimetre lost at each of two cuts.
    const three = cuttingPlan(piecesOf([33, 33, 33]), 100, 0.5);
    expect(three.sticks).toHaveLength(1);
    expect(three.sticks[0].leftMm).toBeLessThan(1e-9);
    // With 0.6 mm lost, 99 + 1.2 = 100.2 does not fit.
    expect(cuttingPlan(piecesOf([33, 33, 33]), 100, 0.6).sticks).toHaveLength(2);
  });

  it('says what is left of each stick', () => {
    // 60 + 0.5 + 50 = 110.5 of 120 leaves 9.5; 45 of 120 leaves 75.
    const plan = cuttingPlan(piecesOf([60, 50, 45]), 120, 0.5);
    expect(plan.sticks.map((stick) => stick.leftMm)).toEqual([9.5, 75]);
    expect(plan.wasteMm).toBe(2 * 120 - 155);
  });
});

describe('bad input', () => {
  it.each([
    [[70], 60, 0, /piece for fret 1 is 70.00 mm; a stick of 60 mm/],
    [[0], 60, 0, /piece for fret 1 is 0.00 mm/],
    [[Number.NaN], 60, 0, /NaN/],
    [[10], 0, 0, /stick length is 0 mm; it must be more than 0 mm/],
    [[10], Infinity, 0, /stick length is Infinity/],
    [[10], 60, -1, /loss at a cut is -1 mm; it must be 0 mm or more/],
  ])('%j from %d mm, loss %d', (lengths, stick, loss, message) => {
    expect(() => cuttingPlan(piecesOf(lengths), stick, loss)).toThrow(message);
  });

  it('needs no stick for no piece', () => {
    const plan = cuttingPlan([], 260, 0.5);
    expect([plan.sticks.length, plan.wasteMm, plan.provenFewest]).toEqual([0, 0, true]);
  });
});

describe('lower bound', () => {
  it('sees pieces that cannot share a stick', () => {
    // Five pieces of 6 in sticks of 10: the length alone asks for 3 sticks, but no two share one.
    expect(fewestBins([6, 6, 6, 6, 6], 10)).toBe(5);
    expect(fewestBins([5, 5, 5, 5], 10)).toBe(2);
    expect(fewestBins([], 10)).toBe(0);
  });
});

describe('properties', () => {
  const lengths = fc.array(fc.double({ min: 5, max: 100, noNaN: true }), { minLength: 1, maxLength: 10 });
  const loss = fc.double({ min: 0, max: 3, noNaN: true });

  it('uses exactly as few sticks as an exhaustive search (seed 6201)', () => {
    fc.assert(
      fc.property(lengths, fc.double({ min: 100, max: 300, noNaN: true }), loss, (given, stick, lost) => {
        const plan = cuttingPlan(piecesOf(given), stick, lost);
        expect(plan.sticks.length).toBe(fewestByAllSubsets(given, stick, lost));
        expect(plan.provenFewest).toBe(true);
      }),
      { seed: 6201, numRuns: 400 },
    );
  });

  it('does so for whole numbers with many equal pieces (seed 6202)', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 2, max: 9 }), { minLength: 1, maxLength: 11 }), (given) => {
        const plan = cuttingPlan(piecesOf(given), 12, 0);
        expect(plan.sticks.length).toBe(fewestByAllSubsets(given, 12, 0));
      }),
      { seed: 6202, numRuns: 400 },
    );
  });

  it('cuts every piece once, fits every stick, and is never worse than first-fit decreasing (seed 6203)', () => {
    const many = fc.array(fc.double({ min: 30, max: 90, noNaN: true }), { minLength: 1, maxLength: 45 });
    fc.assert(
      fc.property(many, fc.double({ min: 90, max: 700, noNaN: true }), loss, (given, stick, lost) => {
        const pieces = piecesOf(given);
        const plan = cuttingPlan(pieces, stick, lost);
        expect(plan.sticks.length).toBeLessThanOrEqual(firstFitDecreasing(pieces, stick, lost));
        expect(plan.sticks.length).toBeGreaterThanOrEqual(plan.fewestPossible);
        expect(plan.fewestPossible).toBeGreaterThanOrEqual(Math.ceil(plan.piecesMm / stick - 1e-9));
        const cut = plan.sticks.flatMap((s) => s.pieces.map((piece) => piece.fret)).sort((a, b) => a - b);
        expect(cut).toEqual(pieces.map((piece) => piece.fret));
        for (const { pieces: on, leftMm } of plan.sticks) {
          const used = on.reduce((sum, piece) => sum + piece.lengthMm, 0) + (on.length - 1) * lost;
          expect(used).toBeLessThanOrEqual(stick + 1e-6);
          expect(Math.abs(stick - used - leftMm)).toBeLessThan(1e-6);
        }
        expectNear(plan.wasteMm + plan.piecesMm, plan.sticks.length * stick, ROUNDING, 'sum of lengths');
      }),
      { seed: 6203, numRuns: 200 },
    );
  });
});
