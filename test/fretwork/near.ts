import { expect } from 'vitest';

/** Relative comparison; `why` says where the tolerance comes from and is shown when it fails. */
export function expectNear(actual: number, expected: number, relative: number, why: string): void {
  const error = Math.abs(actual - expected);
  const allowed = relative * Math.abs(expected);
  expect(error, `${actual} should be ${expected} within ${relative} of it (${why})`).toBeLessThanOrEqual(allowed);
}

/** Tolerance for sums and differences of a few hundred millimetres in double precision. */
export const ROUNDING = 1e-10;
/** Tolerance for values worked by hand to five decimals of a millimetre. */
export const BY_HAND = 2e-5;
