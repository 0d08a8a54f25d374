/** A number parameter as it is shown and stepped in a unit system. */
import type { NumberParameter } from '../neck/parameter-kinds.ts';
import { displayDigits, displayUnit, fromDisplay, MM_PER_INCH, toDisplay, type UnitSystem } from '../neck/units.ts';
import { formatNumber, formatRange, unitLabel, withDecimalSign, withUnit } from './quantity.ts';

/** What the scale of a control needs to know; every number parameter has it. */
export type Scaled = Pick<NumberParameter, 'unit' | 'min' | 'max' | 'step' | 'digits' | 'integer'>;

export interface DisplayScale {
  /** Unit after the number; empty for a bare number. */
  readonly unitLabel: string;
  /** Digits after the point. */
  readonly digits: number;
  /** One arrow-key step, in displayed units. */
  readonly step: number;
  readonly toShown: (stored: number) => number;
  readonly toStored: (shown: number) => number;
}

/** Beyond these digits a stored number is noise of the conversion. */
const STORED_DIGITS = 9;

function clean(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}

/** The number of the series 1, 2, 5 that lies nearest on a log scale. */
export function niceStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  const candidates = [1, 2, 5, 10].map((mantissa) => mantissa * power);
  const distance = (value: number) => Math.abs(Math.log(value / step));
  const nearest = candidates.reduce((best, value) => (distance(value) < distance(best) ? value : best));
  return Number(nearest.toPrecision(3));
}

/** Digits after the point that a step needs: 2 for 0.25. */
function decimalsOf(step: number): number {
  const text = step.toFixed(STORED_DIGITS).replace(/0+$/, '');
  return text.length - text.indexOf('.') - 1;
}

export function displayScale(parameter: Scaled, system: UnitSystem): DisplayScale {
  const { unit } = parameter;
  const { factor } = displayUnit(unit, system);
  const step = factor === 1 ? parameter.step : niceStep(parameter.step * factor);
  const enough = decimalsOf(step);
  const digits = parameter.integer ? 0 : Math.max(displayDigits(parameter.digits, unit, system), enough);
  return {
    unitLabel: unitLabel(unit, system),
    digits,
    step,
    toShown: (stored) => toDisplay(stored, unit, system),
    toStored: (shown) => clean(fromDisplay(shown, unit, system), STORED_DIGITS),
  };
}

/** Digits after the point that a stored value has been given: one typed finer than the step shows what was typed. */
export function digitsGiven(stored: number, scale: DisplayScale, system: UnitSystem): number {
  const shown = scale.toShown(stored);
  // A converted value is rounded.
  const finer = system === 'metric' ? [0, 1, 2, 3] : [0];
  const digits = finer.map((more) => scale.digits + more).find((d) => Math.abs(clean(shown, d) - shown) < 1e-9);
  return digits ?? scale.digits;
}

/** A stored value as text, with the digits that it has been given but no noise, and without its unit. */
export function numberText(stored: number, scale: DisplayScale, system: UnitSystem): string {
  return formatNumber(scale.toShown(stored), digitsGiven(stored, scale, system));
}

/** A stored value as text with its unit. */
export function quantityText(stored: number, scale: DisplayScale, system: UnitSystem): string {
  return withUnit(numberText(stored, scale, system), scale.unitLabel);
}

/** A limit as text: it keeps its own digits, and is rounded inwards so that what is printed is itself allowed. */
export function limitText(stored: number, kind: 'min' | 'max', scale: DisplayScale, system: UnitSystem): string {
  const shown = scale.toShown(stored);
  const power = 10 ** (scale.digits + (system === 'metric' ? 3 : 0));
  const inwards = kind === 'min' ? Math.ceil(shown * power - 1e-6) : Math.floor(shown * power + 1e-6);
  return withDecimalSign(String(inwards / power).replace('-', '−'));
}

/** "0.3 to 1.2 mm". */
export function rangeText(low: number, high: number, scale: DisplayScale, system: UnitSystem): string {
  return formatRange(limitText(low, 'min', scale, system), limitText(high, 'max', scale, system), scale.unitLabel);
}

/**
 * The value one step further, on the grid of displayed numbers, never past the limits.
 * @param steps how many arrow steps; 0.1 is the finer step
 */
export function stepped(parameter: Scaled, stored: number, steps: number, system: UnitSystem): number {
  const scale = displayScale(parameter, system);
  const fine = parameter.integer ? Math.sign(steps) * Math.max(1, Math.abs(Math.round(steps))) : steps;
  const digits = Math.min(STORED_DIGITS, scale.digits + (Number.isInteger(fine) ? 0 : 1));
  const next = clean(scale.toShown(stored) + fine * scale.step, digits);
  return withinLimits(parameter, scale.toStored(next));
}

/** A slider position as a value on the grid of steps. */
export function snapped(parameter: Scaled, stored: number, system: UnitSystem): number {
  const scale = displayScale(parameter, system);
  const shown = clean(Math.round(scale.toShown(stored) / scale.step) * scale.step, STORED_DIGITS);
  return withinLimits(parameter, scale.toStored(shown));
}

function withinLimits({ min, max }: Scaled, stored: number): number {
  return Math.min(max, Math.max(min, stored));
}

const FRACTION = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;
const SUFFIXES: Readonly<Record<string, number>> = {
  mm: 1,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
  '″': MM_PER_INCH,
  inch: MM_PER_INCH,
  thou: MM_PER_INCH / 1000,
};

/** Does a typed number begin with a sign, whatever that is written with? */
export function hasSign(text: string): boolean {
  return /^[-+−–—±﹣－＋]/.test(text.trim());
}

/**
 * Reads what was typed. Lengths may carry a unit of their own (0.58 mm, 0.023", 23 thou) and inches a fraction (1 5/8).
 * @returns the stored value, or undefined when it is no number
 */
export function parseTyped(text: string, parameter: Scaled, system: UnitSystem): number | undefined {
  const scale = displayScale(parameter, system);
  const trimmed = text
    .trim()
    .replaceAll('−', '-')
    .replace(/\u00a0/g, ' ');
  const match = /^([+-]?)\s*([\d.,/ -]*\d[\d.,]*|[.,]\d+)\s*([^\d\s.,/]*[a-z²³/°%"″]*.*)?$/i.exec(trimmed);
  if (!match) return undefined;
  const [, sign, digits, rawSuffix] = match;
  const suffix = (rawSuffix ?? '').trim();
  const magnitude = readMagnitude(digits.trim());
  if (magnitude === undefined) return undefined;
  const number = sign === '-' ? -magnitude : magnitude;
  if (suffix === '' || suffix === scale.unitLabel) return scale.toStored(number);
  const lengthFactor = parameter.unit === 'mm' ? SUFFIXES[suffix.toLowerCase()] : undefined;
  if (lengthFactor !== undefined) return clean(number * lengthFactor, STORED_DIGITS);
  return suffix === parameter.unit ? number : undefined;
}

function readMagnitude(digits: string): number | undefined {
  const fraction = FRACTION.exec(digits);
  if (fraction) {
    const [, whole, top, bottom] = fraction;
    return Number(bottom) === 0 ? undefined : Number(whole ?? 0) + Number(top) / Number(bottom);
  }
  // A comma is a decimal sign when it is the only sign in the number.
  const plain = /^\d*,\d+$/.test(digits) ? digits.replace(',', '.') : digits;
  return /^(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : undefined;
}
