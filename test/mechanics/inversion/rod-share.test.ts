import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { extremeOfSum, nearestShare, shareForTarget } from '../../../src/mechanics/inversion/rod-share.ts';
import { expectNear } from '../../expect-near.ts';

const POINTS = 15;
const LAST = POINTS - 1;
const bow = Float64Array.from({ length: POINTS }, (_, j) => Math.sin((Math.PI * j) / LAST));

describe('the amount of a line', () => {
  it('of one shape is a division', () => {
    const line = { values: bow.map((value) => 0.3 * value) };
    const rod = { values: bow.map((value) => -0.5 * value) };
    // 0.3 − 0.5 p = T.
    for (const target of [0.25, 0.1, -0.05, -0.4]) {
      expectNear(shareForTarget(line, rod, 0, LAST, target)!, (0.3 - target) / 0.5, 1e-9, 'bisection');
    }
    expectNear(shareForTarget(line, { values: bow }, 0, LAST, 0.7)!, 0.4, 1e-9, 'a line that bends forward');
  });

  it('brings lines of any shape to the target, or to the jump across it (seed 5301)', () => {
    const height = fc.integer({ min: -300, max: 300 }).map((micrometres) => micrometres / 1000);
    const heights = fc.array(height, { minLength: POINTS, maxLength: POINTS });
    fc.assert(
      fc.property(heights, height, fc.boolean(), (values, target, forward) => {
        const line = { values };
        const rod = { values: bow.map((value) => (forward ? value : -value)) };
        const p = shareForTarget(line, rod, 1, LAST - 1, target)!;
        const at = (factor: number) => extremeOfSum(line, rod, factor, 1, LAST - 1);
        const step = 1e-6;
        const sides = [at(p - step), at(p + step)].toSorted((a, b) => a - b);
        // Either side of p lies either side of the target: a crossing or a jump, nothing nearer is left out.
        expect(sides[0]).toBeLessThanOrEqual(target + 1e-9);
        expect(sides[1]).toBeGreaterThanOrEqual(target - 1e-9);
      }),
      { seed: 5301 },
    );
  });

  it('finds the smaller of two settings where the rod bends both ways at once', () => {
    const mixed = { values: Float64Array.from({ length: POINTS }, (_, j) => (j < 5 ? 0.2 : -0.5)) };
    const flat = { values: new Float64Array(POINTS).fill(0.3) };
    const p = shareForTarget(flat, mixed, 0, LAST, 0.35)!;
    // 0.3 + 0.2 p = 0.35 at the first five points gives 0.25; 0.3 − 0.5 p = 0.35 at the others −0.1.
    expectNear(p, -0.1, 1e-9, 'bisection');
  });

  it('nearest to a target that is never met lies where one place sinks as another rises', () => {
    const dipping = { values: Float64Array.from({ length: POINTS }, (_, j) => (j < 7 ? 0.4 : 0.3)) };
    const mixed = { values: Float64Array.from({ length: POINTS }, (_, j) => (j < 7 ? -0.2 : 0.3)) };
    const nearest = (target: number, limits: readonly [number, number]) =>
      nearestShare(dipping, mixed, 0, LAST, target, limits);
    // 0.4 − 0.2 p and 0.3 + 0.3 p: both 0.36 at p = 0.2, and more on either side.
    expectNear(nearest(0, [0, 1]), 0.2, 1e-6, 'golden section');
    expect(nearest(0, [0, 0.1])).toBe(0.1);
    expect(nearest(0, [0.5, 1])).toBe(0.5);
    expectNear(nearest(0.39, [0, 1]), 0.05, 1e-6, 'a crossing; the other lies at 0.3');
  });

  it('knows when there is none', () => {
    const nothing = { values: new Float64Array(POINTS) };
    expect(shareForTarget({ values: bow }, nothing, 0, LAST, 0.1)).toBeUndefined();
    const both = { values: Float64Array.from({ length: POINTS }, (_, j) => (j < 7 ? 1 : -1)) };
    // e(p) = ±(1 + |p|): nothing in between.
    expect(shareForTarget({ values: new Float64Array(POINTS).fill(1) }, both, 0, LAST, 0.2)).toBeUndefined();
  });
});
