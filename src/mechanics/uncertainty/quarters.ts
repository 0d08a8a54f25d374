/**
 * Frets whose grip differs from one quarter to the next: each quarter has a factor of its own on what its frets do.
 *
 *   ψ_g,q = ψ_g·exp(a_q)      a_q one for each sample and quarter
 */
import type { Draws } from './sampling.ts';

export interface QuarterGrips {
  /** Fret numbers of each quarter; every fret is in one. */
  readonly frets: readonly (readonly number[])[];
  /** a_q, one array for each quarter. */
  readonly logs: readonly Float64Array[];
}

/** The samples with each quarter's own grip. */
export function withQuarters(draws: Draws, quarters: QuarterGrips | undefined): Draws {
  if (!quarters) return draws;
  const count = quarters.frets.length;
  const factors = quarters.logs.map((log) => log.map(Math.exp));
  const kindOfFret = Int32Array.from(draws.kindOfFret, (kind) => kind * count);
  quarters.frets.forEach((frets, quarter) => frets.forEach((fret) => (kindOfFret[fret - 1] += quarter)));
  const methods = Object.fromEntries(
    Object.entries(draws.methods).map(([method, lines]) => {
      const wedgeFactors = lines.wedgeFactors.flatMap((kind) =>
        factors.map((factor) => kind.map((force, i) => force * factor[i])),
      );
      return [method, { ...lines, wedgeFactors }];
    }),
  ) as unknown as Draws['methods'];
  const shares = quarters.frets.map((frets) => frets.length / draws.kindOfFret.length);
  const meanForceN = draws.meanForceN.map(
    (force, i) => force * factors.reduce((sum, factor, quarter) => sum + shares[quarter] * factor[i], 0),
  );
  const statedWedges = draws.statedWedges.flatMap((stated) => quarters.frets.map(() => stated));
  return { ...draws, kindOfFret, methods, meanForceN, statedWedges };
}
