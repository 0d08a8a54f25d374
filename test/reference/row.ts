/**
 * The table of reference values: what drives both the tests and the validation page.
 *
 * Verification asks whether the equations are solved right (published formulas and values, other programs); validation
 * whether they describe real necks (measurements); practice whether the results look like what makers see.
 */
import type { KnownLimitId } from '../../src/verdict/known-limits.ts';
import { readCsv, type CsvRow } from './csv.ts';

/** Where a reference comes from: see `MARKS`. */
export type Mark = 'src' | 'src+calc' | 'mem' | 'calc' | 'practice' | 'assume';

export const MARKS: Readonly<Record<Mark, string>> = {
  src: 'read in a copy of the named source',
  'src+calc': 'computed from a formula that was read in a copy of the named source',
  mem: 'quoted from memory of the named source',
  calc: 'computed from the stated formula, apart from the library',
  practice: 'common practice, no source',
  assume: 'an engineering assumption',
};

/** One number of ours beside one reference. */
export interface Comparison {
  /** Tells the comparisons of one row apart. */
  readonly label?: string;
  /** As the source prints it. */
  readonly printed: string;
  /** The printed number, or the range that it gives. */
  readonly reference: number | readonly [least: number, most: number];
  readonly unit: string;
  /** Relative; for a range, how far outside it is still accepted. */
  readonly tolerance: number;
  /** Where the tolerance comes from. */
  readonly why: string;
  readonly ours: () => number;
}

interface RowHead {
  readonly id: string;
  readonly subject: Subject;
  readonly quantity: string;
  readonly inputs: string;
  readonly source: string;
  readonly mark: Mark;
  /** What there is to say about the comparison. */
  readonly note?: string;
}

export interface ValueRow extends RowHead {
  readonly kind: 'verification' | 'validation';
  readonly comparisons: readonly Comparison[];
}

/** Something that can be true or not, with the numbers that decide it. */
export interface Statement {
  readonly says: string;
  readonly judge: () => { readonly holds: boolean; readonly seen: string };
  /** Left out when it holds. Where it does not hold, why: the disagreement stays in the table. */
  readonly doesNotHoldBecause?: string;
  /** The known limit of the model that it is judged by; it must be on the list while the statement does not hold. */
  readonly limit?: KnownLimitId;
}

export interface PracticeRow extends RowHead {
  readonly kind: 'practice';
  /** As it is said. */
  readonly printed: string;
  readonly statements: readonly Statement[];
}

export type Row = ValueRow | PracticeRow;

export const SUBJECTS = [
  'Fret positions',
  'Solid finite elements',
  'Slots',
  'Section and beam',
  'Woods',
  'Seating',
  'Strings',
  'Playing',
  'Rod',
  'Time',
  'Climate',
  'Wire',
  'Practice',
] as const;
export type Subject = (typeof SUBJECTS)[number];

const CHECKS = readCsv('checks.csv');

export const CHECK_IDS: readonly string[] = CHECKS.map((check) => check['id']);

/** The parts of a row that stand in checks.csv, as printed there. @throws {Error} when it has no such row. */
export function printedCheck(id: string): RowHead & { readonly printed: string; readonly unit: string; readonly tolerance: string } {
  const check: CsvRow | undefined = CHECKS.find((row) => row['id'] === id);
  if (!check) throw new Error(`checks.csv has no row "${id}"`);
  const mark = check['mark'];
  if (!(mark in MARKS)) throw new Error(`checks.csv, row "${id}": mark "${mark}" is not known`);
  return {
    id,
    subject: 'Practice',
    quantity: check['quantity'],
    inputs: check['inputs'],
    source: check['source'],
    mark: mark as Mark,
    printed: check['value'],
    unit: check['unit'],
    tolerance: check['tolerance'],
  };
}

/** The numbers of a printed cell such as "0.17; 0.40; 0.65", each with the text it was printed as. */
export function printedNumbers(cell: string): { readonly printed: string; readonly value: number }[] {
  return cell.split(';').map((part) => {
    const printed = part.trim();
    const value = Number(printed);
    if (printed === '' || !Number.isFinite(value)) throw new Error(`"${printed}" in "${cell}" is not a number`);
    return { printed, value };
  });
}

/** The ranges of a printed cell such as "1.80-1.82; 2.29-2.32". */
export function printedRanges(cell: string): { readonly printed: string; readonly range: readonly [number, number] }[] {
  return cell.split(';').map((part) => {
    const printed = part.trim();
    const [least, most, ...more] = printed.split('-').map(Number);
    if (least === undefined || most === undefined || more.length > 0 || !(least <= most)) {
      throw new Error(`"${printed}" in "${cell}" is not a range`);
    }
    return { printed, range: [least, most] };
  });
}

/** Half a unit of the last digit that is printed, relative. */
export function halfDigit(printed: string): number {
  const digits = /\.(\d+)/.exec(printed)?.[1]?.length ?? 0;
  const exponent = Number(/e([-+]?\d+)$/i.exec(printed)?.[1] ?? 0);
  return (0.5 * 10 ** (exponent - digits)) / Math.abs(Number(printed));
}

/**
 * A row of checks.csv: one comparison for each number it prints.
 * @param ours one function for each number; @param labels likewise, where there are several.
 * @param tolerance relative, with its reason; left out: the tolerance that stands in the row, in its unit.
 */
export function rowFromCheck(
  id: string,
  subject: Subject,
  ours: readonly (() => number)[],
  more: { labels?: readonly string[]; tolerance?: readonly [relative: number, why: string]; note?: string } = {},
): ValueRow {
  const { printed, unit, tolerance, ...head } = printedCheck(id);
  const numbers = printedNumbers(printed);
  if (numbers.length !== ours.length) throw new Error(`row "${id}" prints ${numbers.length} numbers, not ${ours.length}`);
  const absolute = tolerance === 'exact' ? 0 : Number(tolerance);
  if (!more.tolerance && !(absolute >= 0)) throw new Error(`row "${id}" needs a tolerance: "${tolerance}" is none`);
  return {
    ...head,
    subject,
    kind: 'verification',
    ...(more.note === undefined ? {} : { note: more.note }),
    comparisons: numbers.map((number, index) => ({
      ...(more.labels ? { label: more.labels[index] } : {}),
      printed: number.printed,
      reference: number.value,
      unit,
      tolerance: more.tolerance?.[0] ?? (number.value === 0 ? absolute : absolute / Math.abs(number.value)),
      why: more.tolerance?.[1] ?? (tolerance === 'exact' ? 'exact' : `±${tolerance}, as given with the value`),
      ours: ours[index],
    })),
  };
}

/** Difference of ours from the reference: relative, or absolute when the reference is 0; from a range to its nearer end. */
export function differenceOf(comparison: Comparison, ours: number): number {
  const { reference } = comparison;
  const nearest = typeof reference === 'number' ? reference : Math.min(Math.max(ours, reference[0]), reference[1]);
  return nearest === 0 ? ours : (ours - nearest) / Math.abs(nearest);
}

export function agrees(comparison: Comparison, ours: number): boolean {
  return Math.abs(differenceOf(comparison, ours)) <= comparison.tolerance;
}
