/** Quantities as people read them: in their units, with the decimal sign of their language. */
import { fileDigits, filedValue } from '../neck/quantities.ts';
import { displayDigits, displayUnit, toDisplay, type ShownUnit, type Unit, type UnitSystem } from '../neck/units.ts';
import { NUMBER_SIGNS, RANGE_WORDS, UNIT_WORDS } from './en/neck/quantity.ts';

function isWord(unit: ShownUnit): unit is 'day' | '% MC' {
  return unit === 'day' || unit === '% MC';
}

/** What stands after numbers of a unit, and over columns of them: "mm", "in", "days"; empty for a bare number. */
export function unitLabel(unit: Unit, system: UnitSystem): string {
  const { symbol } = displayUnit(unit, system);
  return isWord(symbol) ? UNIT_WORDS[symbol] : symbol;
}

/** The decimal sign of the page's language in place of the point, in a text that holds plain numbers. */
export function withDecimalSign(text: string): string {
  return NUMBER_SIGNS.decimal === '.' ? text : text.replace(/(\d)\.(?=\d)/g, `$1${NUMBER_SIGNS.decimal}`);
}

/** A number with a fixed number of digits, a true minus sign, and never "−0.00". */
export function formatNumber(value: number, digits: number): string {
  const fixed = Math.abs(value).toFixed(digits);
  const shown = withDecimalSign(fixed);
  return value < 0 && Number(fixed) !== 0 ? `−${shown}` : shown;
}

/** A number with the digits it has, no more than `most` after the point. */
export function formatShort(value: number, most: number): string {
  const fixed = Math.abs(value).toFixed(most);
  const shown = withDecimalSign(String(Number(fixed)));
  return value < 0 && Number(fixed) !== 0 ? `−${shown}` : shown;
}

/** The size of a file, "3.1 MB"; never less than it is. */
export const megabytes = (bytes: number): string => withUnit(formatShort(Math.ceil(bytes / 1e5) / 10, 1), 'MB');

/** A shown number with the label of its unit, kept together. */
export function withUnit(shown: string, label: string): string {
  if (label === '') return shown;
  return label === '°' ? `${shown}°` : `${shown}\u00a0${label}`;
}

/**
 * The displayed number of a stored one, without its unit: that of the value which files hold, unless more digits are asked
 * for than files have.
 */
export function shownNumber(value: number, unit: Unit, metricDigits: number, system: UnitSystem): string {
  const held = metricDigits < fileDigits(unit) ? filedValue(value, unit) : value;
  return formatNumber(toDisplay(held, unit, system), displayDigits(metricDigits, unit, system));
}

/**
 * A number with its unit, as text: `formatQuantity(0.291, 'mm', 2, 'metric')` → "0.29 mm".
 * @param metricDigits digits after the point in the stored unit; the inch display adds its own.
 */
export function formatQuantity(value: number, unit: Unit, metricDigits: number, system: UnitSystem): string {
  const shown = shownNumber(value, unit, metricDigits, system);
  return withUnit(shown, labelAfter(shown, unit, system));
}

/** What stands after a number as it is shown: "day" after 1, "days" after all others. */
export function labelAfter(shown: string, unit: Unit, system: UnitSystem): string {
  return unit === 'day' && shown === '1' ? UNIT_WORDS.oneDay : unitLabel(unit, system);
}

/** "0.3 to 1.2 mm", of ends that are texts already. */
export function formatRange(low: string, high: string, label: string): string {
  return RANGE_WORDS.range(low, withUnit(high, label));
}
