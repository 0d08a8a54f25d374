import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { fretPositionsMm } from '../../src/neck/neck-shape.ts';
import { crownBudget, levellingLine } from '../../src/fretwork/levelling.ts';
import { expectNear } from './near.ts';

const BUILD = { ...defaultBuild(), crownHeightMm: 1.2, levellingLossMm: 0.05, leastCrownMm: 0.8 };

describe('worked by hand', () => {
  it('a hump in the middle: the middle is filed, the ends only cleaned', () => {
    // Tops at 0, 100, 200 with reliefs 0, −0.2, 0: heights 0, 0.2, 0. Line through the ends: 0.
    // taken off 0.05, 0.25, 0.05; left 1.15, 0.95, 1.15; later levellings of 0.15 each: (1.15 − 0.8)/0.15 = 2.3, (0.95 − 0.8)/0.15 = 1
    const rows = crownBudget(BUILD, [0, 100, 200], [0, -0.2, 0]);
    const removed = [0.05, 0.25, 0.05];
    for (const [index, row] of rows.entries()) {
      expectNear(row.removedMm, removed[index], 1e-12, 'exact decimals');
      expectNear(row.crownLeftMm, 1.2 - removed[index], 1e-12, 'exact decimals');
    }
    expect(rows.map((row) => row.levellingsLeft)).toEqual([2, 1, 2]);
  });

  it('a hollow: the ends are filed down to the middle', () => {
    // Reliefs 0, 0.2, 0: heights 0, −0.2, 0; the least filing lies on one side of the middle or spreads over both:
    // any line through (100, −0.2) under both ends takes 0.2 + 0.2 − … = 0.4 in all.
    const rows = crownBudget(BUILD, [0, 100, 200], [0, 0.2, 0]);
    const taken = rows.reduce((sum, row) => sum + row.aboveLineMm, 0);
    expectNear(taken, 0.4, 1e-12, 'exact decimals');
    expect(rows[1].aboveLineMm).toBeLessThan(1e-12);
  });

  it('levelled to the relief that is there, nothing but the unevenness goes', () => {
    const relief = [0, 0.12, 0.15, 0.08, 0];
    const rows = crownBudget(BUILD, [0, 90, 180, 270, 360], relief, relief);
    for (const row of rows) expectNear(row.removedMm, 0.05, 1e-12, 'zero heights');
  });

  it('the last fret filed lower on purpose: it alone loses more', () => {
    const rows = crownBudget(BUILD, [0, 100, 200, 300], [0, 0, 0, 0], [0, 0, 0, 0.25]);
    const removed = [0.05, 0.05, 0.05, 0.3];
    for (const [index, row] of rows.entries()) expectNear(row.removedMm, removed[index], 1e-12, 'exact decimals');
  });

  it('says when nothing is left', () => {
    const rows = crownBudget({ ...BUILD, crownHeightMm: 0.9 }, [0, 100, 200], [0, -0.2, 0]);
    expect(rows.map((row) => row.levellingsLeft)).toEqual([0, 0, 0]);
    expectNear(rows[1].crownLeftMm, 0.65, 1e-12, '0.9 − 0.25');
    // 1.2 − 0.8 = 0.4 of crown, spent by the tenth and a half: makers count on two or three in all (common practice).
    expect(crownBudget({ ...BUILD, levellingLossMm: 0 }, [0, 1], [0, 0])[0].levellingsLeft).toBe(2);
  });

  it('refuses lists that do not match', () => {
    expect(() => crownBudget(BUILD, [0, 1, 2], [0, 1])).toThrow(/3 positions|2 reliefs/);
    expect(() => crownBudget(BUILD, [0, 1], [0, 1], [0])).toThrow(/2 reliefs and 1 targets/);
    expect(() => levellingLine([5], [0])).toThrow(/1 positions and 1 heights/);
  });
});

describe('properties (seed 6601)', () => {
  const heights = fc.array(fc.double({ min: -0.6, max: 0.6, noNaN: true }), { minLength: 2, maxLength: 24 });

  it('the line lies under every top and touches two of them; no line through any two tops files less', () => {
    fc.assert(
      fc.property(heights, (height) => {
        const x = fretPositionsMm(650, height.length);
        const line = levellingLine(x, height);
        const above = x.map((xi, i) => height[i] - line.atNutMm - line.slope * xi);
        for (const gap of above) expect(gap).toBeGreaterThan(-1e-12);
        expect(above.filter((gap) => gap < 1e-12).length).toBeGreaterThanOrEqual(2);
        const total = above.reduce((sum, gap) => sum + gap, 0);
        // The best line touches two tops (a corner of the linear programme), so trying every pair is exhaustive.
        let least = Infinity;
        for (let i = 0; i < x.length; i += 1) {
          for (let j = i + 1; j < x.length; j += 1) {
            const slope = (height[j] - height[i]) / (x[j] - x[i]);
            const gaps = x.map((xk, k) => height[k] - height[i] - slope * (xk - x[i]));
            if (gaps.every((gap) => gap > -1e-12))
              least = Math.min(
                least,
                gaps.reduce((sum, gap) => sum + gap, 0),
              );
          }
        }
        expect(Math.abs(total - least)).toBeLessThan(1e-9);
      }),
      { seed: 6601, numRuns: 200 },
    );
  });

  it('a tilt or a lift of the whole neck changes nothing', () => {
    fc.assert(
      fc.property(heights, fc.double({ min: -0.01, max: 0.01, noNaN: true }), (relief, tilt) => {
        const x = fretPositionsMm(650, relief.length);
        const plain = crownBudget(BUILD, x, relief);
        const tilted = crownBudget(
          BUILD,
          x,
          relief.map((r, i) => r + 0.3 + tilt * x[i]),
        );
        for (const [i, row] of plain.entries())
          expect(Math.abs(row.removedMm - tilted[i].removedMm)).toBeLessThan(1e-9);
      }),
      { seed: 6601, numRuns: 100 },
    );
  });
});
