import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { extremeRelief, reliefFromDepth, rockedGapMm, sampleLine } from '../../src/mechanics/relief.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';

const XS = Float64Array.of(0, 10, 30, 60, 100);

describe('sampling a line', () => {
  it('is linear between stations and goes on straight beyond them', () => {
    const values = [0, 1, 5, 2, 10];
    expect(sampleLine(XS, values, 10)).toBe(1);
    expectNear(sampleLine(XS, values, 20), 3, ROUNDING, 'halfway');
    expectNear(sampleLine(XS, values, 110), 12, ROUNDING, 'the last slope is 0.2');
    expectNear(sampleLine(XS, values, -5), -0.5, ROUNDING, 'the first slope is 0.1');
  });
});

describe('relief (seed 1404)', () => {
  it('is nothing at the ends of the straightedge, and does not see where the neck is held', () => {
    const number = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(fc.array(number, { minLength: 5, maxLength: 5 }), number, number, (depth, lift, tilt) => {
        const relief = reliefFromDepth(XS, depth, 10, 60);
        expectNothing(relief[1], 1, 1e-12, 'under the straightedge');
        expectNothing(relief[3], 1, 1e-12, 'under the straightedge');
        const moved = depth.map((value, i) => value + lift + tilt * XS[i]);
        reliefFromDepth(XS, moved, 10, 60).forEach((value, i) =>
          expectNothing(value - relief[i], 500, 1e-12, 'a rigid motion'),
        );
      }),
      { seed: 1404, numRuns: 200 },
    );
  });

  it('is positive for a hollow, negative for a hump', () => {
    const hollow = [0, 0.1, 0.4, 0.1, 0];
    expectNear(
      extremeRelief(XS, reliefFromDepth(XS, hollow, 0, 100), 0, 100).extremeMm,
      0.4,
      ROUNDING,
      'depth down is positive',
    );
    const hump = hollow.map((value) => -value);
    const found = extremeRelief(XS, reliefFromDepth(XS, hump, 0, 100), 0, 100);
    expectNear(found.extremeMm, -0.4, ROUNDING, 'the mirror image');
    expect(found.extremeXMm).toBe(30);
  });

  it('looks under the straightedge only', () => {
    const line = [9, 0.1, 0.3, 0, -9];
    expectNear(extremeRelief(XS, line, 10, 60).extremeMm, 0.3, ROUNDING, 'the rest lies outside');
    expect(extremeRelief(XS, [0, 0, 0, 0, 0], 10, 60)).toEqual({ extremeMm: 0, extremeXMm: 35 });
  });
});

describe('a straightedge held down at one end', () => {
  it('shows 4·h·(1 − 1/n) at the other end of an even hump of n spaces', () => {
    const [length, hump] = [360, 0.15];
    for (const spaces of [2, 5, 12, 100]) {
      const xMm = Array.from({ length: spaces + 1 }, (_, i) => 20 + (i * length) / spaces);
      const reliefMm = xMm.map((x) => (-4 * hump * (x - 20) * (length - (x - 20))) / length ** 2);
      expectNear(rockedGapMm(xMm, reliefMm), 4 * hump * (1 - 1 / spaces), ROUNDING, `${spaces} spaces`);
    }
  });

  it('touches both ends of a hollow, and leans on one high fret', () => {
    expect(rockedGapMm([0, 10, 20, 30], [0, 0.1, 0.1, 0])).toBe(0);
    // A fret 0.02 mm too high at a third of the way lifts the far end by three times that.
    expectNear(rockedGapMm([0, 10, 20, 30], [0, -0.02, 0, 0]), 0.06, ROUNDING, 'one high fret');
  });
});
