/** Latest moment that a date can be made of, ms since 1970 (ECMA-262, Time Values and Time Range). */
const LATEST_MS = 8.64e15;

/** Is it a moment that can be shown as a date? */
export const isMoment = (value: unknown): value is number => typeof value === 'number' && Math.abs(value) <= LATEST_MS;
