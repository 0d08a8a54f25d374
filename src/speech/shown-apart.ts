/**
 * A value beside a limit that it breaks, so that people see that it does: 0.0297 mm beside 0.0300 mm, never 0.030 mm
 * beside 0.030 mm. Both have the same digits, as many more than usual as it takes until they differ.
 */
import type { Unit, UnitSystem } from '../neck/units.ts';
import { formatQuantity } from './quantity.ts';

/** Beyond these two numbers are the same to every check: sums of decimals differ by more. */
const MOST_DIGITS = 12;

/** @param digits digits after the point that the quantity usually deserves, in its stored unit */
export function shownApart(
  value: number,
  limit: number,
  unit: Unit,
  digits: number,
  system: UnitSystem,
): { readonly value: string; readonly limit: string } {
  for (let more = digits; ; more += 1) {
    const shown = {
      value: formatQuantity(value, unit, more, system),
      limit: formatQuantity(limit, unit, more, system),
    };
    if (shown.value !== shown.limit || value === limit || more >= MOST_DIGITS) return shown;
  }
}
