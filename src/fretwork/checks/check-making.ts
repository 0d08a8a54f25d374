/** Small parts from which the checks are put together. */
import { say } from '../../speech/language.ts';
import type { Unit } from '../../neck/units.ts';
import type { Check, CheckCode, Severity } from './check-types.ts';

export type Measure = Pick<Check, 'value' | 'limit' | 'limitKind' | 'unit' | 'digits'>;
export type Basis = Pick<Check, 'source' | 'mark'>;

export const PRACTICE: Basis = { source: say`common practice, no source`, mark: 'practice' };
export const GEOMETRY: Basis = { source: say`geometry of this build`, mark: 'calc' };

/** The value should have been at least the limit. */
export function atLeast(limit: number, value: number, unit: Unit = 'mm', digits = 2): Measure {
  return { value, limit, limitKind: 'least', unit, digits };
}

/** The value should have been at most the limit. */
export function atMost(limit: number, value: number, unit: Unit = 'mm', digits = 2): Measure {
  return { value, limit, limitKind: 'most', unit, digits };
}

export const NO_MEASURE: Measure = { value: null, limit: null, limitKind: null, unit: '', digits: 0 };

export function check(
  code: CheckCode,
  severity: Severity,
  parameter: Check['parameter'],
  measure: Measure,
  basis: Basis,
  words: Pick<Check, 'reason' | 'remedy'>,
  frets: readonly number[] = [],
): Check {
  return { code, severity, parameter, ...measure, frets, ...words, ...basis };
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
