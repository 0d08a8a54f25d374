/** What is wrong with an entry of the bench log or with a file of them, as data; speech/log-problems.ts words it. */
import type { Unit } from '../../neck/units.ts';
import { isId } from './identity.ts';
import { isDate } from './days.ts';
import {
  LOG_NUMBERS,
  LOG_TEXTS,
  MOST_TEXT_CHARACTERS,
  type EntryContent,
  type LogColumn,
  type LogEntry,
  type LogNumber,
  type LogText,
} from './entry.ts';

export interface Limits {
  readonly min: number;
  readonly max: number;
  readonly unit: Unit;
}

interface At<Column extends LogColumn = LogColumn> {
  readonly column: Column;
}

export type EntryFault =
  | ({ readonly code: 'not-a-day'; readonly value: string } & At<'date'>)
  | ({ readonly code: 'no-name' } & At<'neck'>)
  | ({ readonly code: 'text-too-long'; readonly characters: number; readonly most: number } & At)
  | ({ readonly code: 'not-an-option'; readonly value: string; readonly options: readonly string[] } & At)
  | ({ readonly code: 'not-an-id'; readonly value: string } & At<'id'>)
  | ({ readonly code: 'no-number'; readonly value: string } & Limits & At<LogNumber['id']>)
  | ({ readonly code: 'out-of-range'; readonly value: number } & Limits & At<LogNumber['id']>)
  | ({ readonly code: 'empty' } & Limits & At<LogNumber['id']>)
  | ({ readonly code: 'nothing-measured' } & At<'measuredFrettedMm'>)
  /** A prediction is missing that belongs to a reading. */
  | ({ readonly code: 'needed-with'; readonly with: LogNumber['id'] } & At<LogNumber['id']>);

export type FileFault =
  | { readonly code: 'file-empty' }
  | { readonly code: 'file-too-large'; readonly bytes: number; readonly mostBytes: number }
  | { readonly code: 'too-many-rows'; readonly most: number }
  /** Bytes that are no text in an encoding that is read. */
  | { readonly code: 'not-text' }
  | { readonly code: 'quotes-open' }
  | { readonly code: 'quotes-go-on' }
  | { readonly code: 'column-twice'; readonly cell: string }
  | { readonly code: 'column-unknown'; readonly cell: string }
  | { readonly code: 'column-unit'; readonly cell: string; readonly column: LogNumber['id'] }
  | { readonly code: 'column-missing'; readonly column: LogColumn }
  | { readonly code: 'cell-without-column'; readonly cell: string }
  /** A date with slashes, and nothing in the file tells day from month. */
  | { readonly code: 'day-or-month'; readonly value: string }
  /** The id of an earlier row of the file, which says something else. */
  | { readonly code: 'same-id'; readonly id: string; readonly otherRow: number };

/** `row` counts from 1, the header, as a spreadsheet shows them; of a single entry or a whole file it is null. */
export type LogProblem = { readonly row: number | null } & (EntryFault | FileFault);

export function limitsOf({ min, max, unit }: LogNumber): Limits {
  return { min, max, unit };
}

/** A value of a kind that has no place there, as it is shown. */
function given(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number'
    ? String(value)
    : (JSON.stringify(value) ?? typeof value);
}

function numberFault(entry: EntryContent, column: LogNumber): EntryFault | undefined {
  const value: unknown = entry[column.id];
  const at = { column: column.id, ...limitsOf(column) };
  if (value === null) return column.whenEmpty === null ? undefined : { code: 'empty', ...at };
  if (typeof value !== 'number' || !Number.isFinite(value)) return { code: 'no-number', value: given(value), ...at };
  if (column.isWhole && !Number.isInteger(value)) return { code: 'no-number', value: given(value), ...at };
  return value < column.min || value > column.max ? { code: 'out-of-range', value, ...at } : undefined;
}

function textFault(entry: EntryContent, { id, options }: LogText): EntryFault | undefined {
  if (id === 'id') return undefined;
  const value: unknown = entry[id];
  const text = given(value);
  if (options) {
    return options.includes(text) && text === value
      ? undefined
      : { code: 'not-an-option', column: id, value: text, options };
  }
  if (id === 'date') return isDate(text) ? undefined : { code: 'not-a-day', column: id, value: text };
  if (id === 'neck' && text.trim() === '') return { code: 'no-name', column: id };
  const characters = text.length;
  return characters > MOST_TEXT_CHARACTERS || text !== value
    ? { code: 'text-too-long', column: id, characters, most: MOST_TEXT_CHARACTERS }
    : undefined;
}

/** Everything that can be measured. */
export const MEASURED = [
  'measuredFrettedMm',
  'measuredStrungMm',
  'measuredPullMm',
  'measuredRodMm',
  'measuredQuarter1Mm',
  'measuredQuarter2Mm',
  'measuredQuarter3Mm',
] as const satisfies readonly LogNumber['id'][];

/** What a reading says nothing without. */
const NEEDS: readonly (readonly [LogNumber['id'], LogNumber['id']])[] = [
  ['measuredFrettedMm', 'predictedFrettedMm'],
  ['measuredStrungMm', 'predictedStrungMm'],
  ['measuredStrungMm', 'predictedStrungFretsMm'],
  ['measuredPullMm', 'predictedPullMm'],
  ['measuredPullMm', 'dialFret'],
  ['measuredPullMm', 'dialErrorMm'],
  ['measuredRodMm', 'predictedRodMm'],
  ['measuredRodMm', 'rodTurns'],
  ['measuredRodMm', 'dialFret'],
  ['measuredRodMm', 'dialErrorMm'],
  ['measuredQuarter1Mm', 'predictedQuarter1Mm'],
  ['measuredQuarter2Mm', 'predictedQuarter2Mm'],
  ['measuredQuarter3Mm', 'predictedQuarter3Mm'],
];

function missingPredictions(entry: EntryContent): EntryFault[] {
  if (MEASURED.every((id) => entry[id] === null)) {
    return [{ code: 'nothing-measured', column: 'measuredFrettedMm' }];
  }
  return NEEDS.filter(([measured, predicted]) => entry[measured] !== null && entry[predicted] === null).map(
    ([measured, column]) => ({ code: 'needed-with', column, with: measured }),
  );
}

/** What is wrong with what an entry says. @param row its row in a file, or null */
export function contentProblems(entry: EntryContent, row: number | null = null): LogProblem[] {
  const faults = [
    ...LOG_TEXTS.map((column) => textFault(entry, column)),
    ...LOG_NUMBERS.map((column) => numberFault(entry, column)),
    ...missingPredictions(entry),
  ];
  return faults.filter((fault) => fault !== undefined).map((fault) => ({ row, ...fault }));
}

export function idProblems(id: unknown, row: number | null = null): LogProblem[] {
  return isId(id) ? [] : [{ row, code: 'not-an-id', column: 'id', value: given(id) }];
}

/** Everything that is wrong with an entry; empty when it can be used. */
export function entryProblems(entry: LogEntry, row: number | null = null): LogProblem[] {
  return [...contentProblems(entry, row), ...idProblems(entry.id, row)];
}
