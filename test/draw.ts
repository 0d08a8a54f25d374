/**
 * How much is drawn: `npm test` holds every law on a short draw, `npm run test:all` on the long one (DRAW=long).
 *
 * Mutation shows the same test hundreds of faults, and draws a tenth of the short draw (DRAW=few). What is drawn short
 * begins with the same seed as what is drawn long, so a short draw is the head of the long one.
 */
export const IS_LONG = process.env['DRAW'] === 'long';
const IS_FEW = process.env['DRAW'] === 'few';

/** @returns how many to draw: the whole number, or the short one where there is little time */
export function draw(long: number, short = Math.ceil(long / 5)): number {
  if (IS_LONG) return long;
  return IS_FEW ? Math.ceil(short / 10) : short;
}
