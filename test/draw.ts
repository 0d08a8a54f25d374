/**
 * How much is drawn: `npm test` holds every law on a short draw, `npm run test:all` on the long one (DRAW=long).
 *
 * What is drawn short begins with the same seed as what is drawn long, so a short draw is the head of the long one.
 */
export const IS_LONG = process.env['DRAW'] === 'long';

/** @returns how many to draw: the whole number, or the short one where there is little time */
export function draw(long: number, short = Math.ceil(long / 5)): number {
  return IS_LONG ? long : short;
}
