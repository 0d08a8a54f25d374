/**
 * The lines of binding along an edge, counted from the wood outwards.
 *
 *   half-width of wood and the inner m lines   h_m(x) = w(x)/2 − Σ_{i>m} t_i
 *
 * w board width at x, t_i thickness of line i; mm.
 */
import { bindingInUse, type Build } from '../neck/build.ts';

/** Thickness of the lines outside line `line` (0 = all of them), mm. */
export function bindingFromLineMm(build: Build, line: number): number {
  return bindingInUse(build)
    .slice(line)
    .reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
}
