/**
 * Half-widths of the wood, of the sawn part of the slot, and of the lines of binding.
 *
 *   half-width of wood and the inner m lines   h_m(x) = w(x)/2 − Σ_{i>m} t_i
 *
 * w board width at x, t_i thickness of line i counted from the wood outwards; mm.
 */
import { bindingInUse, type Build } from '../build/build.ts';
import { boardWidthMm } from '../build/neck-shape.ts';

/** Half-width of the board out to the outside of line `line` (0 = the wood alone), mm. */
export function halfWidthToLineMm(build: Build, line: number, xMm: number): number {
  const outer = bindingInUse(build).slice(line);
  return boardWidthMm(build, xMm) / 2 - outer.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
}

/** How many of the lines in use the saw passes through. */
export function sawnLines(build: Build): number {
  return Math.min(build.linesSawnThrough, build.bindingLineCount);
}
