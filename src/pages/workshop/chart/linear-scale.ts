/**
 * A straight scale of a drawing, and where its ticks go: round numbers, 1, 2 or 5 times a power of ten apart. Our own,
 * because the library's brings colours, number formats and interpolation of everything, most of a chart's weight.
 */
type Ends = readonly [from: number, to: number];

export interface LinearScale {
  (value: number): number;
  invert(px: number): number;
  domain(): Ends;
  range(): Ends;
}

/** From one range onto another; of a range that is a point everything lies in the middle. */
export function linearScale(domain: Ends, range: Ends): LinearScale {
  const onto = (value: number, [a, b]: Ends, [c, d]: Ends) => {
    const share = a === b ? 0.5 : (value - a) / (b - a);
    return c * (1 - share) + d * share;
  };
  return Object.assign((value: number) => onto(value, domain, range), {
    invert: (px: number) => onto(px, range, domain),
    domain: () => domain,
    range: () => range,
  });
}

/** About so many round numbers from one end to the other, both counted, rising. */
export function ticksBetween(low: number, high: number, count: number): number[] {
  if (!(high > low)) return [];
  const rough = (high - low) / count;
  const power = Math.floor(Math.log10(rough));
  const over = rough / 10 ** power;
  // From one step to the next at their geometric means.
  const times = over >= Math.sqrt(50) ? 10 : over >= Math.sqrt(10) ? 5 : over >= Math.SQRT2 ? 2 : 1;
  // Below one, whole numbers are divided: 3/10 is 0.3, and 3 × 0.1 is not.
  const at = (n: number) => (power < 0 ? (n * times) / 10 ** -power : n * times * 10 ** power);
  let [first, last] = [Math.round(low / at(1)), Math.round(high / at(1))];
  if (at(first) < low) first += 1;
  if (at(last) > high) last -= 1;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => at(first + index) + 0);
}
