/**
 * A value beside a limit that it breaks, so that people see that it does: 0.0297 mm beside 0.0300 mm, never 0.030 mm
 * beside 0.030 mm. Each is what the one formatter makes of it; both have the same digits, so that rounding keeps their
 * order, and as many more than usual as it takes until they differ.
 */
import { quantityOf, type QuantityKey } from '../neck/quantities.ts';
import type { UnitSystem } from '../neck/units.ts';
import { formatNumber, formatQuantity, labelAfter, withUnit } from './quantity.ts';
import { givenNumber } from './quantity-text.ts';
import { digitsGiven, displayScale } from './scale.ts';

/** Beyond these two numbers are the same to every check: sums of decimals differ by more. */
const MOST_DIGITS = 12;

/** Digits that two values of a quantity deserve together, and how such a value is written with a number of digits. */
function writing(quantity: QuantityKey, values: readonly number[], system: UnitSystem) {
  const parameter = givenNumber(quantity);
  if (!parameter) {
    const { unit, digits } = quantityOf(quantity);
    return { digits, write: (value: number, shown: number) => formatQuantity(value, unit, shown, system) };
  }
  const scale = displayScale(parameter, system);
  const digits = Math.max(...values.map((value) => digitsGiven(value, scale, system)));
  const write = (value: number, shown: number) => {
    const number = formatNumber(scale.toShown(value), shown);
    return withUnit(number, labelAfter(number, parameter.unit, system));
  };
  return { digits, write };
}

/** @throws {RangeError} when no quantity has that key */
export function shownApart(
  quantity: QuantityKey,
  value: number,
  limit: number,
  system: UnitSystem,
): { readonly value: string; readonly limit: string } {
  const { digits, write } = writing(quantity, [value, limit], system);
  for (let more = digits; ; more += 1) {
    const shown = { value: write(value, more), limit: write(limit, more) };
    if (shown.value !== shown.limit || value === limit || more >= MOST_DIGITS) return shown;
  }
}
