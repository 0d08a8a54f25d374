/** The table with our side filled in: what the test asserts and the validation page shows. */
import { agrees, differenceOf, MARKS, SUBJECTS, type Comparison, type Mark, type Row } from './row.ts';

export interface ComparisonResult {
  readonly label: string;
  readonly reference: string;
  readonly ours: string;
  readonly unit: string;
  readonly difference: string;
  readonly tolerance: string;
  readonly why: string;
  readonly verdict: 'agrees' | 'differs';
}

export interface StatementResult {
  readonly says: string;
  readonly seen: string;
  readonly verdict: 'holds' | 'does not hold';
  /** Why it does not hold. */
  readonly because: string;
  /** Known limit of the model that it stands on; empty where there is none. */
  readonly limit: string;
}

export interface RowResult {
  readonly id: string;
  readonly kind: Row['kind'];
  readonly subject: string;
  readonly quantity: string;
  readonly inputs: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
  /** Practice: as it is said. */
  readonly printed: string;
  readonly comparisons: readonly ComparisonResult[];
  readonly statements: readonly StatementResult[];
}

export interface ValidationResults {
  readonly about: string;
  readonly marks: Readonly<Record<Mark, string>>;
  readonly subjects: readonly string[];
  readonly rows: readonly RowResult[];
}

/** Below this a relative difference is rounding, and its digits would change from one machine to the next. */
const ROUNDING = 1e-8;

/** Five digits, or as many as the reference is printed with: few enough to come out the same everywhere. */
function ourDigits(value: number, printed: string): string {
  const digits = Math.max(5, printed.replace(/e.*$/i, '').replace(/^[^1-9]*/, '').replace(/\D/g, '').length);
  const text = Math.abs(value) !== 0 && Math.abs(value) < 1e-3 ? value.toExponential(digits - 1) : String(Number(value.toPrecision(digits)));
  return text.replace(/^-/, '−').replace(/\.?0+e-/, 'e-').replace('e-', 'e−');
}

function percent(share: number): string {
  return `${Number((100 * share).toPrecision(2))} %`.replace('-', '−');
}

function describeDifference(comparison: Comparison, difference: number): string {
  if (Math.abs(difference) < ROUNDING) return typeof comparison.reference === 'number' ? 'none' : 'inside';
  return percent(difference);
}

function describeTolerance(tolerance: number): string {
  if (tolerance === 0) return 'none';
  return tolerance < 1e-5 ? tolerance.toExponential(0).replace('e-', 'e−') : percent(tolerance);
}

function compare(comparison: Comparison): ComparisonResult {
  const ours = comparison.ours();
  return {
    label: comparison.label ?? '',
    reference: comparison.printed,
    ours: ourDigits(ours, comparison.printed),
    unit: comparison.unit === '-' ? '' : comparison.unit,
    difference: describeDifference(comparison, differenceOf(comparison, ours)),
    tolerance: describeTolerance(comparison.tolerance),
    why: comparison.why,
    verdict: agrees(comparison, ours) ? 'agrees' : 'differs',
  };
}

export function resultOf(row: Row): RowResult {
  return {
    id: row.id,
    kind: row.kind,
    subject: row.subject,
    quantity: row.quantity,
    inputs: row.inputs,
    source: row.source,
    mark: row.mark,
    note: row.note ?? '',
    printed: row.kind === 'practice' ? row.printed : '',
    comparisons: row.kind === 'practice' ? [] : row.comparisons.map(compare),
    statements:
      row.kind !== 'practice'
        ? []
        : row.statements.map(({ says, judge, doesNotHoldBecause, limit }) => {
            const { holds, seen } = judge();
            return { says, seen, verdict: holds ? 'holds' : 'does not hold', because: doesNotHoldBecause ?? '', limit: limit ?? '' };
          }),
  };
}

export function resultsOf(rows: readonly Row[]): ValidationResults {
  return {
    about:
      'Made by the test run from the table in test/reference. Verification: are the equations solved right? Validation: do they describe real necks? Practice: do the results look like what makers see?',
    marks: MARKS,
    subjects: SUBJECTS,
    rows: rows.map(resultOf),
  };
}
