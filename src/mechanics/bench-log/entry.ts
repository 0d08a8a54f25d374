/**
 * The bench log: what was measured on real necks, beside what was predicted for them at the time.
 *
 * Relief is that of greatest size under the straightedge, positive hollow, negative humped, like everywhere.
 */
import { say } from '../../speech/language.ts';
import type { Unit } from '../../neck/units.ts';
import { METHODS, type Method } from '../prediction-types.ts';

export interface LogEntry {
  /** yyyy-mm-dd. */
  readonly date: string;
  readonly neck: string;
  readonly method: Method;
  /** Measured with all frets in and no strings, mm; null = not measured. */
  readonly measuredFrettedMm: number | null;
  /** Measured under strings with the rod neutral, mm; null = not measured. */
  readonly measuredStrungMm: number | null;
  /** Standard deviation of what the straightedge and feeler gauges give, mm. */
  readonly gaugeErrorMm: number;
  /** Predicted at the time, mm; null where nothing was measured. */
  readonly predictedFrettedMm: number | null;
  /** The frets' part of it, mm; null = all of it, as on a neck that is straight before fretting. */
  readonly predictedFrettedFretsMm: number | null;
  readonly predictedStrungMm: number | null;
  /** The frets' part of the predicted relief under strings, mm. */
  readonly predictedStrungFretsMm: number | null;
  /** Bite factor that those predictions were made with. */
  readonly biteFactor: number;
  /**
   * Scatter of the prediction for reasons other than the bite: mean and standard deviation of the logarithm of what the
   * frets really do over what is predicted, standard deviation of the same for the strings, and the correlation of the two
   * (both give in proportion to the stiffness of the wood). The band of the neck knows its own (`MethodUncertainty.scatter`).
   */
  readonly fretShift: number;
  readonly fretScatter: number;
  readonly stringScatter: number;
  readonly scatterCorrelation: number;
}

/** Scatter of an ordinary neck of unmeasured wood, from the band of the standard build. */
export const ORDINARY_SCATTER = {
  fretShift: -0.04,
  fretScatter: 0.24,
  stringScatter: 0.15,
  scatterCorrelation: 0.6,
} as const;

/** A number of an entry: one column of the file. */
export interface LogNumber {
  readonly id: Exclude<keyof LogEntry, 'date' | 'neck' | 'method'>;
  /** Name in the file's header, before the unit in brackets. */
  readonly name: string;
  readonly unit: Extract<Unit, 'mm' | ''>;
  readonly min: number;
  readonly max: number;
  /** Value of an empty cell; undefined = the cell must not be empty. */
  readonly whenEmpty: number | null | undefined;
}

const relief = (id: LogNumber['id'], name: string): LogNumber => ({
  id,
  name,
  unit: 'mm',
  min: -5,
  max: 5,
  whenEmpty: null,
});

export const LOG_NUMBERS: readonly LogNumber[] = [
  relief('measuredFrettedMm', 'measured with frets in'),
  relief('measuredStrungMm', 'measured strung'),
  { id: 'gaugeErrorMm', name: 'gauge error', unit: 'mm', min: 0.001, max: 0.5, whenEmpty: undefined },
  relief('predictedFrettedMm', 'predicted with frets in'),
  relief('predictedFrettedFretsMm', 'predicted with frets in, part of the frets'),
  relief('predictedStrungMm', 'predicted strung'),
  relief('predictedStrungFretsMm', 'predicted strung, part of the frets'),
  { id: 'biteFactor', name: 'bite factor used', unit: '', min: 0.05, max: 20, whenEmpty: 1 },
  { id: 'fretShift', name: 'shift of the frets', unit: '', min: -1, max: 1, whenEmpty: ORDINARY_SCATTER.fretShift },
  {
    id: 'fretScatter',
    name: 'scatter of the frets',
    unit: '',
    min: 0.01,
    max: 2,
    whenEmpty: ORDINARY_SCATTER.fretScatter,
  },
  {
    id: 'stringScatter',
    name: 'scatter of the strings',
    unit: '',
    min: 0.01,
    max: 2,
    whenEmpty: ORDINARY_SCATTER.stringScatter,
  },
  {
    id: 'scatterCorrelation',
    name: 'correlation of the two',
    unit: '',
    min: -0.99,
    max: 0.99,
    whenEmpty: ORDINARY_SCATTER.scatterCorrelation,
  },
];

export const MOST_NECK_CHARACTERS = 200;

/** What is wrong with an entry or a file of entries. */
export interface LogProblem {
  readonly code: 'not-csv' | 'missing' | 'unknown' | 'wrong-type' | 'out-of-range' | 'not-an-option';
  /** Line of the file, 1 = the header; of a single entry null. */
  readonly row: number | null;
  /** Name of the column as in the file's header, without the unit. */
  readonly column: string;
  readonly value: unknown;
  readonly min?: number;
  readonly max?: number;
  readonly unit?: Unit;
  /** One plain sentence naming the row, the column, the value, its range and its unit. */
  readonly message: string;
}

const where = (row: number | null) => (row === null ? '' : say`Row ${row}: `);

export function problem(
  code: LogProblem['code'],
  row: number | null,
  column: string,
  value: unknown,
  sentence: string,
  limits: Pick<LogProblem, 'min' | 'max' | 'unit'> = {},
): LogProblem {
  return { code, row, column, value, ...limits, message: `${where(row)}${sentence}` };
}

/** Is it a day that the calendar has, as yyyy-mm-dd? */
export function isDate(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

function numberProblems(entry: LogEntry, row: number | null): LogProblem[] {
  return LOG_NUMBERS.flatMap(({ id, name, unit, min, max, whenEmpty }) => {
    const value = entry[id];
    if (value === null && whenEmpty === null) return [];
    const unitText = unit === '' ? '' : ` ${unit}`;
    const range = say`${min} to ${max}${unitText}`;
    const limits = { min, max, unit };
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      return [
        problem('wrong-type', row, name, value, say`${name} is ${String(value)}; it takes a number, ${range}.`, limits),
      ];
    }
    if (value < min || value > max) {
      return [
        problem('out-of-range', row, name, value, say`${name} is ${value}${unitText}; it takes ${range}.`, limits),
      ];
    }
    return [];
  });
}

/** Everything that is wrong with an entry; empty when it can be used. @param row its line in a file, or null. */
export function entryProblems(entry: LogEntry, row: number | null = null): LogProblem[] {
  const problems: LogProblem[] = [];
  if (!isDate(entry.date)) {
    problems.push(
      problem('wrong-type', row, 'date', entry.date, say`date is “${entry.date}”; it takes a day as yyyy-mm-dd.`),
    );
  }
  if (entry.neck.trim() === '') problems.push(problem('missing', row, 'neck', entry.neck, say`neck has no name.`));
  if (entry.neck.length > MOST_NECK_CHARACTERS) {
    const sentence = say`neck has a name of ${entry.neck.length} characters; it takes at most ${MOST_NECK_CHARACTERS} characters.`;
    problems.push(problem('out-of-range', row, 'neck', entry.neck, sentence, { max: MOST_NECK_CHARACTERS }));
  }
  if (!METHODS.includes(entry.method)) {
    const sentence = say`method is “${String(entry.method)}”; it takes one of: ${METHODS.join(', ')}.`;
    problems.push(problem('not-an-option', row, 'method', entry.method, sentence));
  }
  problems.push(...numberProblems(entry, row));
  if (entry.measuredFrettedMm === null && entry.measuredStrungMm === null) {
    const sentence = say`nothing was measured: it takes “measured with frets in”, “measured strung” or both.`;
    problems.push(problem('missing', row, 'measured with frets in', null, sentence));
  }
  const needs = (measured: number | null, id: LogNumber['id'], why: string) => {
    if (measured === null || entry[id] !== null) return;
    const { name } = LOG_NUMBERS.find((column) => column.id === id)!;
    problems.push(problem('missing', row, name, null, say`${name} is missing; it is needed with “${why}”.`));
  };
  needs(entry.measuredFrettedMm, 'predictedFrettedMm', 'measured with frets in');
  needs(entry.measuredStrungMm, 'predictedStrungMm', 'measured strung');
  needs(entry.measuredStrungMm, 'predictedStrungFretsMm', 'measured strung');
  return problems;
}

/** The entries of both lists, each once, in the order of their dates. */
export function mergeEntries(first: readonly LogEntry[], second: readonly LogEntry[]): LogEntry[] {
  const key = (entry: LogEntry) =>
    JSON.stringify([entry.date, entry.neck, entry.method, ...LOG_NUMBERS.map(({ id }) => entry[id])]);
  const all = new Map([...first, ...second].map((entry) => [key(entry), entry]));
  return [...all.values()].toSorted((a, b) => a.date.localeCompare(b.date));
}
