export { expectNear, ROUNDING } from '../expect-near.ts';

/** Tolerance for values worked by hand to five decimals of a millimetre. */
export const BY_HAND = 2e-5;
