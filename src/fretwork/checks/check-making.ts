/** Small parts from which the checks are put together. */
import { quantityOf, type QuantityKey } from '../../neck/quantities.ts';
import { basedOn, type Basis } from '../facts.ts';
import type { Check, CheckCode, Measure, Severity } from './check-types.ts';

/** Sums of decimals differ by this much from what they stand for: 0.76 − 0.46 is not less than 0.3. */
const SLACK = 1e-9;

/** Is the value below the limit by more than rounding? */
export function below(value: number, limit: number): boolean {
  return value < limit - SLACK;
}

/** Is the value above the limit by more than rounding? */
export function above(value: number, limit: number): boolean {
  return value > limit + SLACK;
}

export const PRACTICE = basedOn('practice');
export const GEOMETRY = basedOn('geometry');

function measure(quantity: QuantityKey, limit: number, value: number, limitKind: 'least' | 'most'): Measure {
  return { quantity, value, limit, limitKind, unit: quantityOf(quantity).unit };
}

/** The value should have been at least the limit. */
export function atLeast(quantity: QuantityKey, limit: number, value: number): Measure {
  return measure(quantity, limit, value, 'least');
}

/** The value should have been at most the limit. */
export function atMost(quantity: QuantityKey, limit: number, value: number): Measure {
  return measure(quantity, limit, value, 'most');
}

export const NO_MEASURE: Measure = {
  quantity: null,
  value: null,
  limit: null,
  limitKind: null,
  unit: '',
};

export function check(
  code: CheckCode,
  severity: Severity,
  parameter: Check['parameter'],
  found: Measure,
  basis: Basis,
  more: Partial<Pick<Check, 'frets' | 'variant' | 'about'>> = {},
): Check {
  return { code, severity, parameter, ...found, frets: [], variant: null, about: [], ...more, ...basis };
}

/** Frets that a condition holds for, and the greatest or least of their values; undefined when it holds for none. */
export function worst<Row extends { readonly fret: number }>(
  rows: readonly Row[],
  holds: (row: Row) => boolean,
  value: (row: Row) => number,
  kind: 'least' | 'greatest',
): { readonly frets: readonly number[]; readonly value: number } | undefined {
  const bad = rows.filter(holds);
  if (bad.length === 0) return undefined;
  const values = bad.map(value);
  return { frets: bad.map((row) => row.fret), value: kind === 'least' ? Math.min(...values) : Math.max(...values) };
}
