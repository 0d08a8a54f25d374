import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fretEnds } from '../../src/fretwork/ends.ts';
import { seatAt, seatGroups, workingKerfMm } from '../../src/neck/kerf.ts';
import { slotDepthAtMm } from '../../src/neck/glue-reach.ts';
import { chamferLimitMm, slots } from '../../src/fretwork/slots.ts';
import { validBuild } from './arbitrary-build.ts';
import { BOUND_CONICAL, FLAT_CUT_TIGHT, UNBOUND_FLAT } from './boards.ts';
import { BY_HAND, expectNear, ROUNDING } from './near.ts';

const HAND = 'worked by hand to five decimals';

describe('published positions (reference rows fret-1, fret-7, fret-12, fret-24)', () => {
  // Twelve-tone equal temperament on a 650 mm scale; fret 1 is 1/17.8172 of the scale (Fletcher & Rossing, from memory).
  const rows = slots(UNBOUND_FLAT);

  it.each([
    ['fret-1', 1, 36.482, 1e-5, 'printed to 0.001 mm'],
    ['fret-7', 7, 216.177, 3e-6, 'printed to 0.001 mm'],
    ['fret-12', 12, 325, 1e-12, 'exact'],
    ['fret-24', 24, 487.5, 1e-12, 'exact'],
  ])('%s', (_, fret, xMm, relative, why) => {
    expectNear(rows[fret - 1].xMm, xMm, relative, why);
  });

  it('the first fret is one part in 17.817 of the scale', () => {
    expectNear(650 / rows[0].xMm, 17.8172, 3e-6, 'printed to four decimals');
  });

  it('counts back from the last fret and from the fret before', () => {
    expectNear(rows[11].fromLastFretMm, 487.5 - 325, ROUNDING, 'exact');
    expect(rows[23].fromLastFretMm).toBe(0);
    expect(rows[0].fromPreviousMm).toBe(rows[0].xMm);
    expectNear(rows[1].fromPreviousMm, rows[1].xMm - rows[0].xMm, ROUNDING, 'same difference');
  });
});

describe('worked by hand', () => {
  it('unbound flat board: 3.0 mm deep in 6 mm', () => {
    const row = slots(UNBOUND_FLAT)[11];
    expectNear(row.depthNeededMm, 2.4, ROUNDING, 'tang 2.0 + air 0.4');
    expectNear(row.airAtTangEndMm, 1, ROUNDING, '3.0 − 2.0');
    expectNear(row.leftAtCentreMm, 3, ROUNDING, '6.0 − 3.0');
    expectNear(row.leftLeastMm, 3, ROUNDING, 'flat: the same everywhere');
    expectNear(row.edgeThicknessMm, 6, ROUNDING, 'flat');
    expectNear(row.chamferLimitMm, 0.91, ROUNDING, '(2.40 − 0.58)/2');
    expectNear(row.lengthMm, 51.66667, BY_HAND, HAND);
    expect(row.open).toBe(true);
    expect(row.radiusMm).toBe(Infinity);
  });

  it('bound conical board: the floor follows the radius, so the edge is thinner', () => {
    // fret 12: R = 359.64587, slot to z = 24.86527: drop = 359.64587 − √(359.64587² − 24.86527²)
    //        = 359.64587 − √(129345.15 − 618.28) = 359.64587 − 358.78527 = 0.86060
    // left at centre 6.5 − 3.0 = 3.5; at the slot's end 3.5 − 0.86060 = 2.63940
    // edge of the board z = 26.36527: drop 0.96771, 6.5 − 0.96771 = 5.53229
    const row = slots(BOUND_CONICAL)[11];
    expectNear(row.leftAtCentreMm, 3.5, ROUNDING, 'exact');
    expectNear(row.leftLeastMm, 2.6394, BY_HAND, HAND);
    expectNear(row.edgeThicknessMm, 5.53229, BY_HAND, HAND);
    expectNear(row.depthNeededMm, 2.4, ROUNDING, 'follows the radius: 2.0 + 0.4');
    expectNear(row.depthAtEndMm, 3, ROUNDING, 'follows the radius');
    expectNear(row.lengthMm, 49.73054, BY_HAND, '2·24.86527');
  });

  it('straight cut, 184 mm radius: the edge needs the sagitta more', () => {
    // fret 12: half width 28.91962: drop = 28.91962²/(184 + √(184² − 28.91962²))
    //        = 836.3446/(184 + √(33856 − 836.3446)) = 836.3446/(184 + 181.71311) = 2.28689
    // needed at the centre 2.0 + 0.4 + 2.28689 = 4.68689; with 4.7: at the edge 4.7 − 2.28689 = 2.41311, air 0.41311
    // left 7 − 4.7 = 2.3 everywhere
    const row = slots(FLAT_CUT_TIGHT)[11];
    expectNear(row.depthNeededMm, 4.68689, BY_HAND, HAND);
    expectNear(row.depthAtEndMm, 2.41311, BY_HAND, HAND);
    expectNear(row.airAtTangEndMm, 0.41311, 3 * BY_HAND, 'small difference of hand-worked values');
    expectNear(row.airAtCentreMm, 2.7, ROUNDING, '4.7 − 2.0');
    expectNear(row.leftAtCentreMm, 2.3, ROUNDING, '7 − 4.7');
    expectNear(row.leftLeastMm, 2.3, ROUNDING, 'flat floor over a flat underside');
  });
});

describe('closed forms', () => {
  it('3-4-5: a radius of 5 over a half width of 3 drops by 1', () => {
    expectNear(slotDepthAtMm({ slotBottom: 'flat', slotDepthMm: 4 }, 5, 3), 3, ROUNDING, '4 − (5 − √(25 − 9))');
    expect(slotDepthAtMm({ slotBottom: 'radiused', slotDepthMm: 4 }, 5, 3)).toBe(4);
    expect(slotDepthAtMm({ slotBottom: 'flat', slotDepthMm: 4 }, Infinity, 3)).toBe(4);
  });

  it('a glue fit is sawn to the width over the studs, the others to the kerf', () => {
    const build = { ...UNBOUND_FLAT, kerfMm: 0.58, studWidthMm: 0.76 };
    expect(workingKerfMm(build, 'press')).toBe(0.58);
    expect(workingKerfMm(build, 'both')).toBe(0.58);
    expect(workingKerfMm(build, 'glue')).toBe(0.76);
    expect(workingKerfMm({ ...build, kerfMm: 0.8 }, 'glue')).toBe(0.8);
    expectNear(chamferLimitMm({ ...build, method: 'glue' }, 1), 0.82, ROUNDING, '(2.40 − 0.76)/2');
  });
});

describe('regions of frets with slots or tangs of their own', () => {
  const build = {
    ...UNBOUND_FLAT,
    method: 'press' as const,
    regions: [
      { fromFret: 3, toFret: 8, kerfMm: 0.64, tangWidthMm: 0.54, studWidthMm: 0.8 },
      { fromFret: 8, toFret: 9, kerfMm: 0.7, tangWidthMm: 0.5, studWidthMm: 0.9 },
    ],
  };

  it('the last region that holds a fret decides its slot, its chamfer and its group', () => {
    const rows = slots(build);
    expect([2, 3, 8, 9, 10].map((fret) => rows[fret - 1].kerfMm)).toEqual([0.58, 0.64, 0.7, 0.7, 0.58]);
    expectNear(rows[7].chamferLimitMm, 0.85, ROUNDING, '(2.40 − 0.70)/2');
    expect(seatAt({ ...build, method: 'glue' }, 4)).toEqual({ kerfMm: 0.8, tangWidthMm: 0.54, studWidthMm: 0.8 });
    const groups = seatGroups(build);
    expect(groups.map((group) => group.frets.length)).toEqual([17, 5, 2]);
    expect(groups[1].frets).toEqual([3, 4, 5, 6, 7]);
  });
});

describe('properties (seed 6102)', () => {
  it('the depth needed just clears the tang with the air wanted', () => {
    fc.assert(
      fc.property(validBuild, (build) => {
        const deepEnough = Math.max(...slots(build).map((slot) => slot.depthNeededMm));
        const rows = slots({ ...build, slotDepthMm: deepEnough });
        const least = Math.min(...rows.flatMap((row) => [row.airAtCentreMm, row.airAtTangEndMm]));
        expect(Math.abs(least - build.slotClearanceMm)).toBeLessThan(1e-9);
      }),
      { seed: 6102, numRuns: 100 },
    );
  });

  it('what is left below is never more at the edge than at the centre, and depth and rest make up the board', () => {
    fc.assert(
      fc.property(validBuild, (build) => {
        const ends = fretEnds(build);
        for (const [index, row] of slots(build, ends).entries()) {
          expect(row.leftLeastMm).toBeLessThanOrEqual(row.leftAtCentreMm);
          expect(row.leftLeastMm).toBeGreaterThan(0);
          expect(Math.abs(row.depthMm + row.leftAtCentreMm - build.boardThicknessMm)).toBeLessThan(1e-9);
          expect(row.lengthMm).toBeLessThanOrEqual(row.boardWidthMm);
          expect(row.open).toBe(ends[index].slotOpen);
        }
      }),
      { seed: 6102, numRuns: 100 },
    );
  });
});
