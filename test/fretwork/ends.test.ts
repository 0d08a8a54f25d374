import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcMm } from '../../src/fretwork/arc.ts';
import { bevelPoint, fretEnd, fretEnds } from '../../src/fretwork/ends.ts';
import { validBuild } from './arbitrary-build.ts';
import { BOUND_CONICAL, FLAT_CUT_TIGHT, UNBOUND_FLAT } from './boards.ts';
import { BY_HAND, expectNear, ROUNDING } from './near.ts';

const HAND = 'worked by hand to five decimals';

describe('worked by hand: unbound flat board, fret 12', () => {
  // x = 650/2 = 325; last fret 650·(1 − 1/4) = 487.5; width 43 + 13·325/487.5 = 43 + 8.66667 = 51.66667; half 25.83333
  const end = fretEnd(UNBOUND_FLAT, 12);

  it('lets slot and tang run out to the edge', () => {
    expectNear(end.xMm, 325, ROUNDING, 'exact');
    expectNear(end.boardHalfMm, 25.83333, BY_HAND, HAND);
    expect(end.lines).toEqual([]);
    expect(end.slotOpen).toBe(true);
    expect(end.slotHalfMm).toBe(end.boardHalfMm);
    expect(end.tangHalfMm).toBe(end.boardHalfMm);
    expect(end.nipMm).toBe(0);
    expect(end.nipFiledMm).toBe(0);
    expect(end.shelfMm).toBe(0);
    expect(end.overhangMm).toBe(2);
  });

  it('files the crown back by its inset and bevel', () => {
    // foot 25.83333 − 0.1 = 25.73333; bevel 1.2·tan 32° = 1.2·0.624869 = 0.74984; top 24.98349
    expectNear(end.crownFootHalfMm, 25.73333, BY_HAND, HAND);
    expectNear(end.bevelLossMm, 0.74984, BY_HAND, HAND);
    expectNear(end.crownTopHalfMm, 24.98349, BY_HAND, HAND);
    // The foot stops 0.1 short of the edge, and so does what is left of the slot under it.
    expectNear(end.slotUncoveredMm, 0.1, ROUNDING * 1e3, 'difference of two half widths');
  });
});

describe('worked by hand: three lines, two sawn through, conical, fret 12', () => {
  // x = 314; last fret 628·(1 − 2^(−22/12)) = 628·(1 − 0.2806155) = 451.77346; share 314/451.77346 = 0.6950386
  // width 43 + 14·0.6950386 = 52.73054, half 26.36527; radius 254 + 152·0.6950386 = 359.64587
  // lines 0.5 + 0.5 + 1.5 = 2.5: wood to 23.86527; the saw goes through 0.5 + 0.5, one line of 1.5 stays whole
  const end = fretEnd(BOUND_CONICAL, 12);

  it('saws two lines and leaves the third whole', () => {
    expectNear(end.boardHalfMm, 26.36527, BY_HAND, HAND);
    expectNear(end.radiusMm, 359.64587, BY_HAND, HAND);
    expectNear(end.woodHalfMm, 23.86527, BY_HAND, HAND);
    expect(end.lines.map((line) => line.sawn)).toEqual([true, true, false]);
    expectNear(end.lines[1].outerMm, 24.86527, BY_HAND, HAND);
    expect(end.lines[2].outerMm).toBe(end.boardHalfMm);
    expect([end.linesSawn, end.linesWhole, end.slotOpen]).toEqual([2, 1, false]);
    expectNear(end.slotHalfMm, 24.86527, BY_HAND, HAND); // 26.36527 − 1.5
  });

  it('nips the tang by the line left whole, the clearance and the oversize', () => {
    // tang 24.86527 − 0.5 = 24.36527. Flat, the nip would be 1.5 + 0.5 + 2 = 4.0; along the arc
    // 359.64587·(asin(26.36527/359.64587) − asin(24.36527/359.64587)) + 2 = 26.38894 − 24.38395 + 2 = 4.00499
    expectNear(end.tangHalfMm, 24.36527, BY_HAND, HAND);
    expectNear(end.nipMm, 4.005, BY_HAND, HAND);
    // After filing the crown reaches 0.1 less far and the oversize is gone: arc(26.26527) − 24.38395 = 1.90472
    expectNear(end.nipFiledMm, 1.90472, BY_HAND, HAND);
  });

  it('rests the crown on the line left whole', () => {
    expectNear(end.shelfMm, 1.4, BY_HAND, '26.36527 − 0.1 − 24.86527');
    expect(end.slotUncoveredMm).toBe(0);
  });

  it('bevels from the vertical, so the leaning end of the crown loses more than a level one', () => {
    // foot 26.26527 at asin(26.26527/359.64587) = 4.18809°; sin(36.18809°) = 0.590438;
    // ·359.64587/360.84587 = 0.588474 → 36.04882°; θ = 4.04882°; top 360.84587·sin 4.04882° = 25.47807; loss 0.78720
    expectNear(end.crownTopHalfMm, 25.47807, BY_HAND, HAND);
    expectNear(end.bevelLossMm, 0.7872, BY_HAND, HAND);
  });
});

describe('worked by hand: straight cut on a tight radius, fret 12', () => {
  it('has the width and the arc of the board', () => {
    // x = 325; last 650·(1 − 2^(−20/12)) = 445.26283; share 0.7299060; width 52 + 8·0.7299060 = 57.83925; half 28.91962
    const end = fretEnd(FLAT_CUT_TIGHT, 12);
    expectNear(end.boardHalfMm, 28.91962, BY_HAND, HAND);
    // arc 2·184·asin(28.91962/184) = 368·0.1578263 = 58.08007
    expectNear(2 * arcMm(end.radiusMm, end.boardHalfMm), 58.08007, BY_HAND, HAND);
    expect(end.nipMm).toBe(0);
  });
});

describe('edge cases', () => {
  it('opens the slot when every line is sawn through, whatever the count says', () => {
    for (const linesSawnThrough of [3, 5]) {
      const end = fretEnd({ ...BOUND_CONICAL, linesSawnThrough }, 1);
      expect([end.slotOpen, end.linesSawn, end.linesWhole, end.nipMm]).toEqual([true, 3, 0, 0]);
      expect(end.lines.every((line) => line.sawn)).toBe(true);
      expect(end.slotHalfMm).toBe(end.boardHalfMm);
    }
  });

  it('stops the slot at the wood when no line is sawn', () => {
    const end = fretEnd({ ...BOUND_CONICAL, linesSawnThrough: 0 }, 3);
    expectNear(end.slotHalfMm, end.woodHalfMm, ROUNDING, 'same sum in another order');
    expect(end.linesWhole).toBe(3);
  });

  it('ignores lines that are listed but not in use', () => {
    expect(fretEnd({ ...UNBOUND_FLAT, binding: BOUND_CONICAL.binding, linesSawnThrough: 2 }, 1).lines).toEqual([]);
  });

  it('shows the slot when the filed end stops short of it', () => {
    const end = fretEnd({ ...BOUND_CONICAL, bindingLineCount: 1, linesSawnThrough: 0, endInsetMm: 0.8 }, 5);
    // One line of 0.5 left whole: the crown stops 0.8 short of the edge, 0.3 short of the slot's end.
    expect(end.shelfMm).toBe(0);
    expectNear(end.slotUncoveredMm, 0.3, 1e-9, 'difference of two half widths');
  });

  it('refuses a fret that is not there', () => {
    expect(() => fretEnd(UNBOUND_FLAT, 25)).toThrow(/fret 25 .*1 to 24/);
    expect(() => fretEnd(UNBOUND_FLAT, 0)).toThrow(RangeError);
    expect(() => fretEnd(UNBOUND_FLAT, 1.5)).toThrow(RangeError);
  });

  it('refuses binding wider than the board, naming it', () => {
    const wide = BOUND_CONICAL.binding.map((line) => ({ ...line, thicknessMm: 9 }));
    expect(() => fretEnd({ ...BOUND_CONICAL, binding: wide }, 1)).toThrow(/27 mm per side is too wide at fret 1/);
  });

  it('refuses a bevel that leaves nothing of the crown', () => {
    expect(() => fretEnd({ ...UNBOUND_FLAT, endBevelDegrees: 89 }, 1)).toThrow(/bevel of 89°/);
  });
});

describe('closed forms', () => {
  it('the bevel plane passes through foot and top', () => {
    for (const radiusMm of [150, 305, 1200, 1e7]) {
      const foot = 27;
      const height = 1.3;
      const { halfMm, onBoardHalfMm } = bevelPoint(radiusMm, foot, height, 35);
      const rise = Math.sqrt((radiusMm + height) ** 2 - halfMm ** 2) - Math.sqrt(radiusMm ** 2 - foot ** 2);
      expectNear((foot - halfMm) / rise, Math.tan((35 * Math.PI) / 180), 1e-8, 'square roots of 1e14 at the largest R');
      expectNear(onBoardHalfMm / halfMm, radiusMm / (radiusMm + height), ROUNDING, 'same angle, two circles');
    }
  });

  it('a very large radius is a flat board', () => {
    const flat = bevelPoint(Infinity, 25, 1.2, 30);
    expectNear(bevelPoint(1e9, 25, 1.2, 30).halfMm, flat.halfMm, 1e-7, 'first order in 1/R');
    expectNear(flat.halfMm, 25 - 1.2 / Math.sqrt(3), ROUNDING, 'tan 30° = 1/√3');
  });

  it('30° of a circle is a sixth of π radii', () => {
    expectNear(arcMm(200, 100), (200 * Math.PI) / 6, ROUNDING, 'asin 1/2 = π/6');
    expect(arcMm(Infinity, 31)).toBe(31);
    expect(() => arcMm(20, 21)).toThrow(/half width 21 mm .* radius of 20 mm/);
  });
});

describe('properties (seed 6101)', () => {
  it('keeps wood ≤ slot ≤ board, tang inside the slot, crown top inside its foot, and the lines contiguous', () => {
    fc.assert(
      fc.property(validBuild, (build) => {
        for (const end of fretEnds(build)) {
          expect(end.slotHalfMm).toBeGreaterThanOrEqual(end.woodHalfMm - 1e-9);
          expect(end.slotHalfMm).toBeLessThanOrEqual(end.boardHalfMm);
          expect(end.tangHalfMm).toBeLessThanOrEqual(end.slotHalfMm);
          expect(end.tangHalfMm).toBeGreaterThan(0);
          expect(end.crownTopHalfMm).toBeLessThan(end.crownFootHalfMm);
          expect(end.linesSawn + end.linesWhole).toBe(build.bindingLineCount);
          expect(end.nipMm > 0).toBe(end.linesWhole > 0);
          // Shelf and uncovered slot are two sides of one distance.
          const reach = end.crownFootHalfMm - end.slotHalfMm;
          expect(Math.abs(end.shelfMm - end.slotUncoveredMm - reach)).toBeLessThan(1e-12);
          for (const [index, line] of end.lines.entries()) {
            expect(line.innerMm).toBe(end.lines[index - 1]?.outerMm ?? end.woodHalfMm);
            expect(Math.abs(line.outerMm - line.innerMm - line.thicknessMm)).toBeLessThan(1e-9);
          }
        }
      }),
      { seed: 6101, numRuns: 150 },
    );
  });
});
