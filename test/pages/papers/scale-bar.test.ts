import fc from 'fast-check';
import { PerspectiveCamera, Vector3 } from 'three';
import { expect, test } from 'vitest';
import { createDirector } from '../../../src/scene/camera/director.ts';
import { pixelsPerMm, scaleBarOf } from '../../../src/scene/overlay/scale-bar.ts';

test('pixels per mm are those of the camera itself, at the point that it looks at', () => {
  const orbit = { target: [230, -10, 4] as const, azimuth: -0.4, elevation: 0.6, distance: 1400, field: 0.35 };
  const camera = new PerspectiveCamera();
  createDirector(orbit, () => undefined).apply(camera, 1.6, 0);
  const height = 900;
  // One millimetre to the right of the target, in the plane of the picture, by three's own projection.
  const right = new Vector3(1, 0, 0).applyQuaternion(camera.quaternion);
  const place = (point: Vector3) => point.project(camera).x * 1.6 * (height / 2);
  const [a, b] = [place(new Vector3(...orbit.target)), place(new Vector3(...orbit.target).add(right))];
  // Both are plain projections in double precision.
  expect(Math.abs((b - a) / pixelsPerMm(orbit, height) - 1)).toBeLessThan(1e-9);
});

test.each([
  [2.1, 260, 'metric', 100, '100\u00a0mm'],
  [2.1, 419, 'metric', 100, '100\u00a0mm'],
  [2.1, 420, 'metric', 200, '200\u00a0mm'],
  [90, 260, 'metric', 2, '2\u00a0mm'],
  [600, 260, 'metric', 0.2, '0.2\u00a0mm'],
  [2.1, 260, 'inch', 2 * 25.4, '2\u00a0in'],
  [90, 260, 'inch', 0.1 * 25.4, '0.1\u00a0in'],
] as const)('%d px per mm over %d px, %s: %d mm', (scale, most, units, lengthMm, label) => {
  const bar = scaleBarOf(scale, most, units);
  expect(Math.abs(bar.lengthMm / lengthMm - 1)).toBeLessThan(1e-12);
  expect(bar.label).toBe(label);
});

test('the bar fits and is at least two fifths of the room, and its label says its length (seed 61)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 3000, noNaN: true }),
      fc.integer({ min: 60, max: 600 }),
      fc.constantFrom('metric' as const, 'inch' as const),
      (scale, most, units) => {
        const { lengthMm, label } = scaleBarOf(scale, most, units);
        // From 2 to 5 the step is 2.5 times, the largest.
        expect(lengthMm * scale).toBeLessThanOrEqual(most * (1 + 1e-6));
        expect(lengthMm * scale).toBeGreaterThan((most / 2.5) * (1 - 1e-6));
        const said = Number.parseFloat(label) * (units === 'inch' ? 25.4 : 1);
        expect(Math.abs(said / lengthMm - 1)).toBeLessThan(1e-9);
      },
    ),
    { seed: 61 },
  );
});

test('refuses a scale that is none', () => {
  expect(() => scaleBarOf(0, 100, 'metric')).toThrow(RangeError);
  expect(() => scaleBarOf(Number.NaN, 100, 'metric')).toThrow(RangeError);
});
