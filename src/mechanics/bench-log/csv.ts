/**
 * The bench log as CSV (RFC 4180): one line an entry, the unit of each column in brackets in the header. Lengths are in
 * mm or in inches as the header says, column by column.
 *
 * Text that a spreadsheet would take for a formula is written with an apostrophe before it, and read back without.
 */
import { say } from '../../speech/language.ts';
import Papa from 'papaparse';
import { unguardedText, writeCsv } from '../../neck/csv.ts';
import { MM_PER_INCH, type UnitSystem } from '../../neck/units.ts';
import type { Method } from '../prediction-types.ts';
import { entryProblems, LOG_NUMBERS, problem, type LogEntry, type LogNumber, type LogProblem } from './entry.ts';

export type ReadLog =
  | { readonly ok: true; readonly entries: readonly LogEntry[] }
  | { readonly ok: false; readonly problems: readonly LogProblem[] };

const TEXT_COLUMNS = ['date', 'neck', 'method'] as const;

function headerOf({ name, unit }: LogNumber, system: UnitSystem): string {
  if (unit === '') return name;
  return `${name} (${system === 'inch' ? 'in' : 'mm'})`;
}

/** @param system lengths in mm or in inches. Numbers are written in full: reading gives back the same entries (in mm). */
export function writeLog(entries: readonly LogEntry[], system: UnitSystem = 'metric'): string {
  const scale = (column: LogNumber) => (column.unit === 'mm' && system === 'inch' ? MM_PER_INCH : 1);
  const rows = entries.map((entry) => [
    ...TEXT_COLUMNS.map((id) => entry[id]),
    ...LOG_NUMBERS.map((column) => {
      const value = entry[column.id];
      return value === null ? null : value / scale(column);
    }),
  ]);
  const header = [...TEXT_COLUMNS, ...LOG_NUMBERS.map((column) => headerOf(column, system))];
  return writeCsv(header, rows);
}

/** Where a column of the table stands in a file, and what its values are multiplied by. */
interface Place {
  readonly index: number;
  readonly scale: number;
}

interface Header {
  readonly text: ReadonlyMap<string, number>;
  readonly numbers: ReadonlyMap<LogNumber['id'], Place>;
}

function readHeader(cells: readonly string[]): { readonly header: Header; readonly problems: LogProblem[] } {
  const text = new Map<string, number>();
  const numbers = new Map<LogNumber['id'], Place>();
  const problems: LogProblem[] = [];
  cells.forEach((cell, index) => {
    const [, name = '', unit] = /^(.*?)(?:\s*\(([^()]*)\))?$/s.exec(cell.trim())!;
    const plain = TEXT_COLUMNS.find((id) => id === name.toLowerCase());
    const column = LOG_NUMBERS.find((candidate) => candidate.name === name.toLowerCase());
    if (plain ? text.has(plain) : column && numbers.has(column.id)) {
      problems.push(problem('unknown', 1, name, cell, say`column “${cell}” stands twice in the header.`));
    } else if (plain && unit === undefined) {
      text.set(plain, index);
    } else if (column) {
      const units: readonly (string | undefined)[] = column.unit === 'mm' ? ['mm', 'in'] : [undefined];
      if (units.includes(unit)) numbers.set(column.id, { index, scale: unit === 'in' ? MM_PER_INCH : 1 });
      else {
        const wanted = column.unit === 'mm' ? say`“${name} (mm)” or “${name} (in)”` : say`“${name}” without a unit`;
        problems.push(
          problem('not-an-option', 1, name, cell, say`column “${cell}” has no unit that is known: it takes ${wanted}.`),
        );
      }
    } else {
      problems.push(problem('unknown', 1, cell, cell, say`column “${cell}” is not one that a bench log has.`));
    }
  });
  for (const id of TEXT_COLUMNS) {
    if (!text.has(id))
      problems.push(problem('missing', 1, id, undefined, say`column “${id}” is missing from the header.`));
  }
  const gauge = LOG_NUMBERS.find(({ whenEmpty }) => whenEmpty === undefined)!;
  const named = problems.some(({ column }) => column === gauge.name);
  if (!numbers.has(gauge.id) && !named) {
    problems.push(
      problem('missing', 1, gauge.name, undefined, say`column “${gauge.name} (mm)” is missing from the header.`),
    );
  }
  return { header: { text, numbers }, problems };
}

/** A decimal number with a point; a true minus sign is taken too. NaN for anything else. */
function readNumber(cell: string): number {
  const plain = cell.trim().replace('−', '-');
  return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
}

function readRow(
  cells: readonly string[],
  { text, numbers }: Header,
  row: number,
): { readonly entry?: LogEntry; readonly problems: LogProblem[] } {
  const problems: LogProblem[] = [];
  const textOf = (id: (typeof TEXT_COLUMNS)[number]) => {
    return unguardedText(cells[text.get(id)!] ?? '');
  };
  const values = LOG_NUMBERS.map(({ id, name, unit, min, max, whenEmpty }): [string, number | null] => {
    const place = numbers.get(id);
    const cell = place ? (cells[place.index] ?? '') : '';
    const range = say`${min} to ${max}${unit === '' ? '' : ` ${unit}`}`;
    if (cell.trim() === '') {
      if (whenEmpty !== undefined) return [id, whenEmpty];
      problems.push(problem('missing', row, name, cell, say`${name} is empty; it takes ${range}.`, { min, max, unit }));
      return [id, null];
    }
    const value = readNumber(cell);
    if (Number.isNaN(value)) {
      const sentence = say`${name} is “${cell}”; it takes a number with a decimal point, ${range}.`;
      problems.push(problem('wrong-type', row, name, cell, sentence, { min, max, unit }));
    }
    return [id, value * (place?.scale ?? 1)];
  });
  const entry = {
    date: textOf('date').trim(),
    neck: textOf('neck'),
    method: textOf('method').trim() as Method,
    ...(Object.fromEntries(values) as Omit<LogEntry, 'date' | 'neck' | 'method'>),
  };
  const unreadable = new Set(problems.map(({ column }) => column));
  problems.push(...entryProblems(entry, row).filter(({ column }) => !unreadable.has(column)));
  return problems.length === 0 ? { entry, problems } : { problems };
}

/** Reads a log; nothing in it is corrected, and a file with any problem gives none of its entries. */
export function readLog(text: string): ReadLog {
  const parsed = Papa.parse<string[]>(text, { skipEmptyLines: 'greedy', delimitersToGuess: [',', ';', '\t'] });
  const quotes = parsed.errors.filter(({ type }) => type === 'Quotes');
  if (quotes.length > 0) {
    return {
      ok: false,
      problems: quotes.map(({ row, code }) => {
        const what =
          code === 'MissingQuotes' ? say`a quoted field is not closed` : say`a quoted field goes on after its quotes`;
        return problem('not-csv', row === undefined ? null : row + 1, '', undefined, say`this is not CSV: ${what}.`);
      }),
    };
  }
  const [first, ...rest] = parsed.data;
  if (!first) return { ok: false, problems: [problem('not-csv', null, '', text, say`The file is empty.`)] };
  const { header, problems } = readHeader(first);
  if (problems.length > 0) return { ok: false, problems };
  const rows = rest.map((cells, index) => {
    const row = index + 2;
    if (cells.length > first.length) {
      const sentence = say`it has ${cells.length} cells, the header ${first.length}.`;
      return { problems: [problem('unknown', row, '', cells[first.length], sentence)] };
    }
    return readRow(cells, header, row);
  });
  const wrong = rows.flatMap((row) => row.problems);
  if (wrong.length > 0) return { ok: false, problems: wrong };
  return { ok: true, entries: rows.flatMap((row) => ('entry' in row && row.entry ? [row.entry] : [])) };
}
