/**
 * Units. Inside the program: mm, N, MPa, rad, days (see mechanics/MODEL.md). Conversion happens here, at the
 * edges of the program, and nowhere else.
 *
 * Sources: 1 in = 25.4 mm exactly and 1 lbf = 4.4482216152605 N exactly (international yard and pound, 1959;
 * standard gravity 9.80665 m/s², ISO 80000-3/-4).
 */
import { words } from '../speech/language.ts';

/** The unit in which a quantity is stored. */
export type Unit =
  | 'mm'
  | 'mm²'
  | 'mm³'
  | 'N'
  | 'MPa'
  | 'GPa'
  | 'N/mm³'
  | 'N·m'
  | 'kg/m³'
  | '°'
  | '%'
  | '% MC'
  | 'Hz'
  | 'g'
  | 'day'
  | 'h'
  | 'min'
  | 'µm'
  | '';

/** Which system the maker reads lengths and forces in. */
export type UnitSystem = 'metric' | 'inch';

export interface DisplayUnit {
  /** What stands after the number. */
  readonly label: string;
  /** Displayed value = stored value × factor. */
  readonly factor: number;
  /** Digits after the point to add to (or take from) those of the metric display. */
  readonly extraDigits: number;
}

export const MM_PER_INCH = 25.4;
export const N_PER_POUND_FORCE = 4.4482216152605;

const INCH: Partial<Record<Unit, DisplayUnit>> = {
  mm: { label: 'in', factor: 1 / MM_PER_INCH, extraDigits: 1 },
  'mm²': { label: 'in²', factor: 1 / MM_PER_INCH ** 2, extraDigits: 3 },
  'mm³': { label: 'in³', factor: 1 / MM_PER_INCH ** 3, extraDigits: 4 },
  N: { label: 'lbf', factor: 1 / N_PER_POUND_FORCE, extraDigits: 0 },
  µm: { label: 'thou', factor: 1 / 25.4, extraDigits: 1 },
};

/** Units that are words, as the language of the page has them; symbols are the same in every language. */
export const UNIT_WORDS = words('UNIT_WORDS', { day: 'day', '% MC': '% MC' });

/** The display unit of a stored unit in a system; a unit without an inch counterpart is shown as stored. */
export function displayUnit(unit: Unit, system: UnitSystem): DisplayUnit {
  const inch = system === 'inch' ? INCH[unit] : undefined;
  return inch ?? { label: unit === 'day' || unit === '% MC' ? UNIT_WORDS[unit] : unit, factor: 1, extraDigits: 0 };
}

/** Stored value → displayed value. */
export function toDisplay(value: number, unit: Unit, system: UnitSystem): number {
  return value * displayUnit(unit, system).factor;
}

/** Displayed value → stored value. */
export function fromDisplay(value: number, unit: Unit, system: UnitSystem): number {
  return value / displayUnit(unit, system).factor;
}

/** Digits after the point for a quantity that deserves `metricDigits` of them in its stored unit. */
export function displayDigits(metricDigits: number, unit: Unit, system: UnitSystem): number {
  return Math.max(0, metricDigits + displayUnit(unit, system).extraDigits);
}

/**
 * A number with its unit, as text: `formatQuantity(0.291, 'mm', 2, 'metric')` → "0.29 mm".
 * @param metricDigits digits after the point in the stored unit; the inch display adds its own.
 */
export function formatQuantity(value: number, unit: Unit, metricDigits: number, system: UnitSystem): string {
  const shown = formatNumber(toDisplay(value, unit, system), displayDigits(metricDigits, unit, system));
  const label = displayUnit(unit, system).label;
  if (label === '') return shown;
  return label === '°' ? `${shown}°` : `${shown}\u00a0${label}`;
}

/** How the language of the page writes numbers. */
export const NUMBER_SIGNS = words('NUMBER_SIGNS', { decimal: '.' });

/** The decimal sign of the page's language in place of the point, in a text that holds plain numbers. */
export function withDecimalSign(text: string): string {
  return NUMBER_SIGNS.decimal === '.' ? text : text.replace(/(\d)\.(?=\d)/g, `$1${NUMBER_SIGNS.decimal}`);
}

/** A plain number with a fixed number of digits, a true minus sign, and never "−0.00". */
export function formatNumber(value: number, digits: number): string {
  const fixed = Math.abs(value).toFixed(digits);
  const shown = withDecimalSign(fixed);
  return value < 0 && Number(fixed) !== 0 ? `−${shown}` : shown;
}
