/**
 * Levelling: how much of each crown the file takes to bring all tops onto one line, and what is left.
 *
 *   height of a top            h_i = target_i − relief_i                   above the wanted line; relief as in mechanics, hollow positive
 *   levelling line             L(x) = a + b·x ≤ h_i at every fret, chosen so that Σ (h_i − L(x_i)) is least
 *   taken off                  r_i = h_i − L(x_i) + u
 *   crown left                 c − r_i
 *   levellings left            ⌊(crown left − least crown)/v⌋
 *
 * u = spent on unevenness, crowning and polishing, c = crown height as bought, v = what a later levelling takes; all mm.
 * The sum is least where L is highest at the mean of x, and the highest line under all points there is the edge of their
 * lower convex hull that spans the mean: an exact solution, no iteration.
 * Source: geometry (lower hull: Andrew 1979, monotone chain). Assumed: the file rides on a true straight line (or on the
 * wanted relief, if the neck is held in it), and every fret is levelled, those over the body too.
 */
import type { Build } from '../neck/build.ts';

/**
 * What a later levelling takes off: the grooves that the strings have worn, and the filing and polishing after them, mm.
 * Common practice, no source: a tenth or two, so that a set of frets is levelled two or three times in its life.
 */
export const LATER_LEVELLING_MM = 0.15;

export interface CrownBudget {
  readonly fret: number;
  /** Height of the fret's top above the levelling line, without the unevenness. */
  readonly aboveLineMm: number;
  /** Taken off in all. */
  readonly removedMm: number;
  readonly crownLeftMm: number;
  /** How many later levellings it can take before it is too low. */
  readonly levellingsLeft: number;
}

export interface LevellingLine {
  /** Height at x = 0 (the nut), mm, and slope. */
  readonly atNutMm: number;
  readonly slope: number;
}

/** The highest line under all points at the mean of their x. @throws {RangeError} on lengths that differ or fewer than 2 points. */
export function levellingLine(xMm: readonly number[], heightMm: readonly number[]): LevellingLine {
  if (xMm.length !== heightMm.length || xMm.length < 2) {
    throw new RangeError(`${xMm.length} positions and ${heightMm.length} heights; there must be as many, at least 2`);
  }
  const hull: [number, number][] = [];
  for (const [index, x] of xMm.entries()) {
    const h = heightMm[index];
    while (hull.length >= 2) {
      const [x1, h1] = hull.at(-1)!;
      const [x0, h0] = hull.at(-2)!;
      if ((x1 - x0) * (h - h0) - (h1 - h0) * (x - x0) > 0) break;
      hull.pop();
    }
    hull.push([x, h]);
  }
  const mean = xMm.reduce((sum, x) => sum + x, 0) / xMm.length;
  const after = Math.max(
    1,
    hull.findIndex(([x]) => x >= mean),
  );
  const [x0, h0] = hull[after - 1];
  const [x1, h1] = hull[after];
  const slope = (h1 - h0) / (x1 - x0);
  return { atNutMm: h0 - slope * x0, slope };
}

/**
 * Crown budget of every fret.
 * @param fretXMm positions, ascending, mm
 * @param reliefMm relief of each fret's top in the state in which the frets are levelled, hollow positive, mm
 * @param targetReliefMm the line to level to, the same way; a straight line when omitted
 */
export function crownBudget(
  build: Pick<Build, 'crownHeightMm' | 'levellingLossMm' | 'leastCrownMm'>,
  fretXMm: readonly number[],
  reliefMm: readonly number[],
  targetReliefMm: readonly number[] = fretXMm.map(() => 0),
): CrownBudget[] {
  if (targetReliefMm.length !== reliefMm.length) {
    throw new RangeError(`${reliefMm.length} reliefs and ${targetReliefMm.length} targets; there must be as many`);
  }
  const heights = reliefMm.map((relief, index) => targetReliefMm[index] - relief);
  const line = levellingLine(fretXMm, heights);
  return heights.map((height, index): CrownBudget => {
    const aboveLineMm = Math.max(0, height - line.atNutMm - line.slope * fretXMm[index]);
    const removedMm = aboveLineMm + build.levellingLossMm;
    const crownLeftMm = build.crownHeightMm - removedMm;
    const spare = crownLeftMm - build.leastCrownMm;
    return {
      fret: index + 1,
      aboveLineMm,
      removedMm,
      crownLeftMm,
      levellingsLeft: spare < 0 ? 0 : Math.floor(spare / LATER_LEVELLING_MM + 1e-9),
    };
  });
}
