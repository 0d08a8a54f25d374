import { expect } from 'vitest';

/** Relative comparison; `why` says where the tolerance comes from and is shown when it fails. */
export function expectNear(actual: number, expected: number, relative: number, why: string): void {
  const error = Math.abs(actual - expected);
  const allowed = relative * Math.abs(expected);
  expect(error, `${actual} should be ${expected} within ${relative} of it (${why})`).toBeLessThanOrEqual(allowed);
}

/** What should vanish, measured against the size of what it is made of. */
export function expectNothing(actual: number, scale: number, relative: number, why: string): void {
  expect(scale, `a scale to measure nothing against (${why})`).toBeGreaterThan(0);
  expect(
    Math.abs(actual),
    `${actual} should be nothing beside ${scale}, within ${relative} of it (${why})`,
  ).toBeLessThanOrEqual(relative * scale);
}

/** Tolerance for a few sums and products in double precision. */
export const ROUNDING = 1e-10;
