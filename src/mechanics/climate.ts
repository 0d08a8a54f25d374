/**
 * Climate: board and neck swell along the grain by different amounts and bend the neck like a two-layer strip.
 *
 *   free strain of the board against the neck   ε = α·(ΔMC_board − ΔMC_neck)
 *   α = 0.005 % per 1 % MC: longitudinal shrinkage of 0.1–0.2 % from green to oven-dry (Wood Handbook ch. 4) over 30 %
 *   gives 0.003–0.007 % per 1 %.
 */
export const LONGITUDINAL_STRAIN_PER_PERCENT = 5e-5;

/** Free strain of the board against the neck for changes of moisture content in % MC. */
export function mismatchStrain(boardChangePercent: number, neckChangePercent: number): number {
  return LONGITUDINAL_STRAIN_PER_PERCENT * (boardChangePercent - neckChangePercent);
}
