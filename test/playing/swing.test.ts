/** The swing of a plucked string against a Fourier sum and against the motion of a string integrated in time. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundDepth, idealDepth, PARTIALS, pluckHeightMm, TURNING_SHARE } from '../../src/playing/swing.ts';
import { expectNear } from '../expect-near.ts';
import { lowestByFourier, lowestInTime } from './plucked-string.ts';

const PLACES = [0.05, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 0.95];

describe('a pluck', () => {
  // Two straight lengths of string at small angles: F = T·(a/q + a/(ℓ − q)); Fletcher & Rossing 2.9 (from memory).
  test('pulls the string into a triangle that holds its force', () => {
    const a = pluckHeightMm(1.3, 120, 580, 70);
    expectNear(70 * (a / 120 + a / 460), 1.3, 1e-12, 'equilibrium of forces at the corner');
  });

  test.each([
    [1, 0, 600, 70],
    [1, 600, 600, 70],
    [1, -3, 600, 70],
    [1, Number.NaN, 600, 70],
  ])('of %d N at %d mm of %d mm is refused', (force, pluck, length, tension) => {
    expect(() => pluckHeightMm(force, pluck, length, tension)).toThrow('between its ends');
  });

  test('of a slack string is refused', () => {
    expect(() => pluckHeightMm(1, 100, 600, 0)).toThrow('more than 0 N');
  });
});

describe('the lowest line of an ideal string', () => {
  test.each([0.1, 0.2, 0.25, 0.5, 0.7])('pulled away at %d of its length is the triangle turned end for end', (p) => {
    const summed = lowestByFourier(p, PLACES, 'away');
    PLACES.forEach((u, i) =>
      expectNear(
        idealDepth(u, p, 'away'),
        summed[i] ?? 0,
        0.01,
        '400 partials round the corner off, 1/(400·π²·p·(1 − p))',
      ),
    );
  });

  test.each([0.1, 0.25, 0.5])('pushed towards the board at %d is where it starts', (p) => {
    const summed = lowestByFourier(p, PLACES, 'towards');
    PLACES.forEach((u, i) => expectNear(idealDepth(u, p, 'towards'), summed[i] ?? 0, 0.01, 'as above'));
  });

  test('is two thirds of the pluck at mid-string when plucked at a quarter', () => {
    expectNear(idealDepth(0.5, 0.25, 'away'), 2 / 3, 1e-12, 'geometry of the triangle');
  });

  test('is symmetric, and the same either way, for a pluck at the middle', () => {
    for (const u of PLACES) {
      expectNear(idealDepth(u, 0.5, 'away'), idealDepth(1 - u, 0.5, 'away'), 1e-12, 'symmetry');
      expectNear(idealDepth(u, 0.5, 'away'), idealDepth(u, 0.5, 'towards'), 1e-12, 'symmetry');
    }
  });

  test('keeps its share where the string is plucked along the board', () => {
    expectNear(idealDepth(0.1, 0.1, 'along'), TURNING_SHARE, 1e-12, 'the corner of the deeper of both triangles');
  });
});

describe('the bound of the partials', () => {
  test('is 0.94 of the pluck at mid-string when plucked at a quarter', () => {
    // Σ over odd n of 2·|sin(nπ/4)|/(n²π²·3/16) = (32/(3π²))·(1/√2)·π²/8 = 4/(3·√2), all partials.
    expectNear(boundDepth(0.5, 0.25, 'away'), 4 / (3 * Math.SQRT2), 0.01, `${PARTIALS} partials of all`);
  });

  test('lies outside the ideal line, seed 41', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        (u, p) => {
          for (const direction of ['away', 'towards', 'along'] as const)
            expect(boundDepth(u, p, direction)).toBeGreaterThanOrEqual(idealDepth(u, p, direction));
        },
      ),
      { seed: 41, numRuns: 300 },
    );
  });

  test.each([
    ['thin steel', 0.0005],
    ['a thick wound string', 0.005],
    ['a bar', 0.1],
  ])('contains the motion of a stiff string, %s', (_name, stiffness) => {
    for (const p of [0.12, 0.2, 0.5]) {
      const { places, depth } = lowestInTime(p, stiffness, 'away');
      places.forEach((u, i) => expect(depth[i] ?? 0).toBeLessThanOrEqual(boundDepth(u, p, 'away') + 1e-3));
    }
  });

  test('and without stiffness the motion in time keeps to the ideal line', () => {
    const { places, depth } = lowestInTime(0.2, 0, 'away');
    places.forEach((u, i) =>
      expectNear(
        depth[i] ?? 0,
        idealDepth(u, 0.2, 'away'),
        0.02,
        '120 pieces of string, corner rounded by half a piece',
      ),
    );
  });
});
