/**
 * Units. Inside the program: mm, N, MPa, rad, days (see mechanics/MODEL.md). Conversion happens here, at the
 * edges of the program, and nowhere else.
 *
 * Sources: 1 in = 25.4 mm exactly and 1 lbf = 4.4482216152605 N exactly (international yard and pound, 1959;
 * standard gravity 9.80665 m/s², ISO 80000-3/-4).
 */

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

/** What a number is shown in: its own unit or its counterpart in inches. */
export type ShownUnit = Unit | 'in' | 'in²' | 'in³' | 'lbf' | 'thou';

export interface DisplayUnit {
  /** What stands after the number; speech has words for those that are no symbols (`unitLabel`). */
  readonly symbol: ShownUnit;
  /** Displayed value = stored value × factor. */
  readonly factor: number;
  /** Digits after the point to add to (or take from) those of the metric display. */
  readonly extraDigits: number;
}

export const MM_PER_INCH = 25.4;
export const N_PER_POUND_FORCE = 4.4482216152605;
/** Standard gravity (ISO 80000-3). */
export const N_PER_KG = 9.80665;

const INCH: Partial<Record<Unit, DisplayUnit>> = {
  mm: { symbol: 'in', factor: 1 / MM_PER_INCH, extraDigits: 1 },
  'mm²': { symbol: 'in²', factor: 1 / MM_PER_INCH ** 2, extraDigits: 3 },
  'mm³': { symbol: 'in³', factor: 1 / MM_PER_INCH ** 3, extraDigits: 4 },
  N: { symbol: 'lbf', factor: 1 / N_PER_POUND_FORCE, extraDigits: 0 },
  µm: { symbol: 'thou', factor: 1 / 25.4, extraDigits: 1 },
};

/** The display unit of a stored unit in a system; a unit without an inch counterpart is shown as stored. */
export function displayUnit(unit: Unit, system: UnitSystem): DisplayUnit {
  const inch = system === 'inch' ? INCH[unit] : undefined;
  return inch ?? { symbol: unit, factor: 1, extraDigits: 0 };
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
