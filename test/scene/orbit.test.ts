import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axes, between, fitted, panned, positionOf, turned, zoomed, type Orbit } from '../../src/scene/camera/orbit.ts';
import { expectNear } from '../expect-near.ts';

const start: Orbit = { target: [10, 20, 30], azimuth: 0.4, elevation: 0.5, distance: 100, field: 0.4 };

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, k) => sum + value * b[k], 0);

/** Place in the picture, −1…1 each way, of a point seen from an orbit. */
function seen(orbit: Orbit, aspect: number, point: readonly number[]): [number, number] {
  const { right, up, back } = axes(orbit);
  const eye = positionOf(orbit);
  const from = point.map((value, k) => value - eye[k]);
  const depth = -dot(from, back);
  const tan = Math.tan(orbit.field / 2);
  return [dot(from, right) / (depth * tan * aspect), dot(from, up) / (depth * tan)];
}

test('the axes are square to each other and look at the target', () => {
  const { right, up, back } = axes(start);
  for (const [a, b] of [
    [right, up],
    [up, back],
    [back, right],
  ]) {
    expect(Math.abs(dot(a, b))).toBeLessThan(1e-12);
  }
  expect(seen(start, 1.5, start.target).every((value) => Math.abs(value) < 1e-12)).toBe(true);
});

test('turning stops short of the poles', () => {
  expect(turned(start, 0, 10).elevation).toBeLessThan(Math.PI / 2);
  expect(turned(start, 0, -10).elevation).toBeGreaterThan(-Math.PI / 2);
});

test('zooming in and out again comes back', () => {
  expectNear(zoomed(zoomed(start, 1.3), 1 / 1.3).distance, 100, 1e-12, 'rounding');
});

test('panning by half the height puts the old target at the lower edge', () => {
  const [x, y] = seen(panned(start, 0, 0.5), 1, start.target);
  expect(Math.abs(x)).toBeLessThan(1e-12);
  expectNear(y, -1, 1e-12, 'rounding');
});

test('on the way it starts and ends where it should, and turns the short way', () => {
  const to: Orbit = { ...start, azimuth: start.azimuth + 2 * Math.PI - 0.2, distance: 300 };
  expect(between(start, to, 0)).toBe(start);
  expect(between(start, to, 1)).toBe(to);
  expectNear(between(start, to, 0.5).azimuth, start.azimuth - 0.1, 1e-9, 'rounding');
  expectNear(between(start, to, 0.5).distance, Math.sqrt(100 * 300), 1e-9, 'half way of a ratio');
});

describe('fitting', () => {
  test('everything is inside the margins and touches two of them across from each other, seed 4711', () => {
    const number = fc.double({ min: -200, max: 200, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number, number, number), { minLength: 4, maxLength: 12 }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -1.4, max: 1.4, noNaN: true }),
        fc.double({ min: 0.4, max: 2.5, noNaN: true }),
        (points, azimuth, elevation, aspect) => {
          const margins = { left: 0.1, right: 0.05, top: 0.08, bottom: 0.2 };
          const orbit = fitted({ ...start, azimuth, elevation }, points.flat(), aspect, margins);
          const { back } = axes(orbit);
          const eye = dot(positionOf(orbit), back);
          const near = eye - Math.max(...points.map((point) => dot(point, back)));
          const places = points.map((point) => seen(orbit, aspect, point));
          const xs = places.map(([x]) => x);
          const ys = places.map(([, y]) => y);
          const spare = [
            Math.min(...xs) - (-1 + 0.2),
            1 - 0.1 - Math.max(...xs),
            Math.min(...ys) - (-1 + 0.4),
            1 - 0.16 - Math.max(...ys),
          ];
          for (const gap of spare) expect(gap).toBeGreaterThan(-1e-6);
          // As near as it can be, unless a point would come too close to the eye.
          const touches = Math.min(spare[0] + spare[1], spare[2] + spare[3]) < 1e-6;
          expect(touches || near < 4.001).toBe(true);
        },
      ),
      { seed: 4711, numRuns: 300 },
    );
  });
});
