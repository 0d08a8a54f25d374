import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { extremeRelief, reliefFromDepth, sampleLine } from '../../src/mechanics/relief.ts';
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
