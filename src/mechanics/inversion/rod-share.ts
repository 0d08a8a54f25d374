/**
 * The amount p of a line k(x) that, added to a line a(x), brings the relief of greatest size to a target.
 *
 *   e(p) = the value of greatest size, with its sign, of a(x) + p·k(x) under the straightedge;   find e(p) = T
 *
 * Where k has one sign under the straightedge, e falls (k < 0) or rises (k > 0) with p throughout, and p lies between the
 * least and the greatest of (T − a_j)/k_j: bisection between them. Where k changes sign, the settings out to ±`WIDEST` are
 * searched in steps for crossings. e jumps where the line is humped as much as it is hollow: a target inside the jump has no
 * solution. Then p stands at that side of the jump where e is nearer to the target, and e there tells; of several crossings
 * the nearest to the target is taken, and of those that give it the one nearest to zero.
 */

/** Greatest size of p that is searched where k changes sign. */
const WIDEST = 5;
const STEPS = 100;
/** To a millionth of a millionth of the bracket: to the last digit, and turning a share into per cent could cross a jump. */
const BISECTIONS = 40;
/** Relief at the ends of the straightedge is zero but for rounding: no setting moves it. In parts of the largest value. */
const NOTHING = 1e-9;

/** Misses below this are none, mm: of two settings that give the target the smaller one is taken. */
const SAME_MM = 1e-5;

/** A line under the straightedge: `value(j)` for from ≤ j ≤ to. */
export interface SpanLine {
  readonly values: ArrayLike<number>;
  readonly offset?: number;
  readonly stride?: number;
}

function at({ values, offset = 0, stride = 1 }: SpanLine, j: number): number {
  return values[offset + j * stride];
}

/** Value of greatest size, with its sign, of a + p·k for from ≤ j ≤ to. */
export function extremeOfSum(a: SpanLine, k: SpanLine, factor: number, from: number, to: number): number {
  let extreme = 0;
  for (let j = from; j <= to; j += 1) {
    const value = at(a, j) + factor * at(k, j);
    if (Math.abs(value) > Math.abs(extreme)) extreme = value;
  }
  return extreme;
}

/**
 * p, or undefined when no p within reach brings the relief to the target.
 * @param bisections how closely: 20 for a millionth of the bracket.
 */
export function shareForTarget(
  a: SpanLine,
  k: SpanLine,
  from: number,
  to: number,
  target: number,
  bisections: number = BISECTIONS,
): number | undefined {
  let size = 0;
  for (let j = from; j <= to; j += 1) size = Math.max(size, Math.abs(at(k, j)));
  if (size === 0) return undefined;
  let low = Infinity;
  let high = -Infinity;
  let positive = false;
  let negative = false;
  for (let j = from; j <= to; j += 1) {
    const slope = at(k, j);
    if (Math.abs(slope) <= NOTHING * size) continue;
    if (slope > 0) positive = true;
    else negative = true;
    const p = (target - at(a, j)) / slope;
    low = Math.min(low, p);
    high = Math.max(high, p);
  }
  const missAt = (p: number) => extremeOfSum(a, k, p, from, to) - target;
  const over = (p: number) => missAt(p) > 0;
  // At one end of the bracket e is at least T, at the other at most: no need to ask there, where it may just equal T.
  if (positive !== negative) return bisect(missAt, negative, low, high, bisections);
  let found: { readonly p: number; readonly missMm: number } | undefined;
  let before = over(-WIDEST);
  for (let step = 1; step <= 2 * STEPS; step += 1) {
    const after = over(((step - STEPS) / STEPS) * WIDEST);
    if (after === before) continue;
    const p0 = ((step - 1 - STEPS) / STEPS) * WIDEST;
    const p = bisect(missAt, before, p0, p0 + WIDEST / STEPS, bisections);
    before = after;
    const missMm = Math.max(Math.abs(missAt(p)), SAME_MM);
    if (!found || missMm < found.missMm || (missMm === found.missMm && Math.abs(p) < Math.abs(found.p)))
      found = { p, missMm };
  }
  return found?.p;
}

const LOOKS = 200;
const NARROWINGS = 40;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The p between two limits whose e comes nearest to a target. Where k changes sign a rod flattens one place and bends
 * another, and the nearest may lie anywhere between: looked for in steps, then narrowed by golden section beside the best of
 * them. Of equals the one nearest to zero.
 */
export function nearestShare(
  a: SpanLine,
  k: SpanLine,
  from: number,
  to: number,
  target: number,
  [least, most]: readonly [least: number, most: number],
): number {
  let best = { p: Number.NaN, missMm: Infinity };
  const look = (p: number): number => {
    const missMm = Math.abs(extremeOfSum(a, k, p, from, to) - target);
    const nearer = best.missMm - missMm;
    if (nearer > 0 || (nearer === 0 && Math.abs(p) < Math.abs(best.p))) best = { p, missMm };
    return missMm;
  };
  const step = (most - least) / LOOKS;
  for (let i = 0; i <= LOOKS; i += 1) look(i === LOOKS ? most : least + i * step);
  let low = Math.max(least, best.p - step);
  let high = Math.min(most, best.p + step);
  for (let i = 0; i < NARROWINGS; i += 1) {
    const inner = high - GOLDEN * (high - low);
    const outer = low + GOLDEN * (high - low);
    if (look(inner) <= look(outer)) high = outer;
    else low = inner;
  }
  return best.p;
}

/**
 * Where e goes over the target, from above at `from` (or from below) to the other side at `to`: at a jump, that side of it
 * which is nearer to the target.
 */
function bisect(
  missAt: (p: number) => number,
  fromAbove: boolean,
  from: number,
  to: number,
  bisections: number,
): number {
  let low = from;
  let high = to;
  for (let i = 0; i < bisections; i += 1) {
    const middle = (low + high) / 2;
    if (missAt(middle) > 0 === fromAbove) low = middle;
    else high = middle;
  }
  return Math.abs(missAt(low)) < Math.abs(missAt(high)) ? low : high;
}
