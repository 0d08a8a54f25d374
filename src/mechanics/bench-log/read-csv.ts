/**
 * Reads a bench log from CSV: as it was written, or as a spreadsheet saved it again, English or German: semicolons, decimal
 * commas, 14.02.2026, a line `sep=;`, a byte order mark. Nothing in it is corrected, and a file with any problem gives none
 * of its entries. The work grows in proportion to the file.
 *
 * Rows are counted as a spreadsheet shows them: the header is row 1, an empty row counts, a quoted line end does not. The
 * line `sep=;` is not shown there, and does not count.
 */
import Papa from 'papaparse';
import { unguardedText } from '../../neck/csv.ts';
import { textOfBytes } from '../../neck/text-of-bytes.ts';
import { mmOfInches, plainNumber } from './csv-numbers.ts';
import { dayOf, slashOrder, type SlashOrder } from './days.ts';
import { LOG_NUMBERS, LOG_TEXTS, type LogColumn, type LogEntry, type LogNumber, type LogText } from './entry.ts';
import { contentProblems, idProblems, limitsOf, type LogProblem } from './entry-problems.ts';
import { contentHash, withContentId } from './identity.ts';

export type ReadLog =
  | { readonly ok: true; readonly entries: readonly LogEntry[] }
  /** @property count of all problems; the first of them are listed */
  | { readonly ok: false; readonly problems: readonly LogProblem[]; readonly count: number };

/** Entries that a file may hold. */
export const MOST_ROWS = 100_000;
/** Size that a file may have, bytes: room for so many rows. */
export const MOST_LOG_BYTES = 64_000_000;
/** Problems that are listed. */
const MOST_PROBLEMS = 100;
const DELIMITERS = [',', ';', '\t'] as const;

const refused = (...problems: readonly LogProblem[]): ReadLog => ({ ok: false, problems, count: problems.length });

/** Where a column of lengths or bare numbers stands, and whether it is in inches. */
interface Place {
  readonly index: number;
  readonly inches: boolean;
}

interface Header {
  readonly texts: ReadonlyMap<LogText['id'], number>;
  readonly numbers: ReadonlyMap<LogNumber['id'], Place>;
  /** Cells of the header, up to the last that is not blank. */
  readonly width: number;
}

const UNITS: Readonly<Record<LogNumber['unit'], readonly (string | undefined)[]>> = {
  mm: ['mm', 'in'],
  '%': ['%'],
  day: ['days'],
  '': [undefined],
};

interface HeaderCell {
  readonly column: LogText | LogNumber | undefined;
  readonly unit: string | undefined;
}

function headerCell(cell: string): HeaderCell {
  const [, name = '', unit] = /^(.*?)(?:\s*\(([^()]*)\))?$/s.exec(cell.trim())!;
  const wanted = name.toLowerCase();
  const column = [...LOG_TEXTS, ...LOG_NUMBERS].find((candidate) => candidate.name === wanted);
  return { column, unit };
}

const isNumber = (column: LogText | LogNumber): column is LogNumber => 'unit' in column;

function headerFault(cell: string, { column, unit }: HeaderCell, seen: ReadonlySet<LogColumn>): LogProblem | undefined {
  if (!column || (!isNumber(column) && unit !== undefined)) return { row: 1, code: 'column-unknown', cell };
  if (seen.has(column.id)) return { row: 1, code: 'column-twice', cell };
  if (isNumber(column) && !UNITS[column.unit].includes(unit)) {
    return { row: 1, code: 'column-unit', cell, column: column.id };
  }
  return undefined;
}

function readHeader(cells: readonly string[]): { readonly header: Header; readonly problems: LogProblem[] } {
  const texts = new Map<LogText['id'], number>();
  const numbers = new Map<LogNumber['id'], Place>();
  const seen = new Set<LogColumn>();
  const problems: LogProblem[] = [];
  let width = 0;
  for (const [index, cell] of cells.entries()) {
    if (cell.trim() === '') continue;
    width = index + 1;
    const found = headerCell(cell);
    const fault = headerFault(cell, found, seen);
    if (fault) problems.push(fault);
    const { column, unit } = found;
    if (!column) continue;
    seen.add(column.id);
    if (isNumber(column)) numbers.set(column.id, { index, inches: unit === 'in' });
    else texts.set(column.id, index);
  }
  for (const { id, whenEmpty } of [...LOG_TEXTS, ...LOG_NUMBERS]) {
    if (whenEmpty === undefined && !seen.has(id)) problems.push({ row: 1, code: 'column-missing', column: id });
  }
  return { header: { texts, numbers, width }, problems };
}

/** The character that parts the cells: the one by which most columns of a log are found in the header. */
function delimiterOf(text: string): string {
  const known = (delimiter: string) =>
    (Papa.parse<string[]>(text, { delimiter, preview: 1 }).data[0] ?? []).filter((cell) => headerCell(cell).column)
      .length;
  const found = DELIMITERS.map((delimiter): [string, number] => [delimiter, known(delimiter)]);
  return found.reduce((best, other) => (other[1] > best[1] ? other : best))[0];
}

/** Takes off the byte order mark, and the line that tells a spreadsheet what parts the cells. */
function withoutPreamble(text: string): { readonly table: string; readonly delimiter: string | undefined } {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const line = /^(?:sep=(.)|"sep=(.)")[^\S\r\n]*(?:\r\n|\r|\n)/i.exec(plain);
  return line
    ? { table: plain.slice(line[0].length), delimiter: line[1] ?? line[2] }
    : { table: plain, delimiter: undefined };
}

interface Row {
  readonly entry?: LogEntry;
  readonly problems: readonly LogProblem[];
}

function textCell({ id, whenEmpty, options }: LogText, cells: readonly string[], { texts }: Header): string {
  const index = texts.get(id);
  const cell = index === undefined ? '' : (cells[index] ?? '');
  const isOwnWord = !options && id !== 'date' && id !== 'id';
  const text = isOwnWord ? unguardedText(cell) : cell.trim();
  return text === '' && whenEmpty !== undefined ? whenEmpty : text;
}

function numberCell(column: LogNumber, cells: readonly string[], { numbers }: Header, row: number) {
  const place = numbers.get(column.id);
  const cell = place ? (cells[place.index] ?? '') : '';
  const at = { row, column: column.id, ...limitsOf(column) };
  if (cell.trim() === '') {
    if (column.whenEmpty !== undefined) return { value: column.whenEmpty };
    return { value: null, problem: { code: 'empty', ...at } satisfies LogProblem };
  }
  const plain = plainNumber(cell);
  if (plain === undefined)
    return { value: null, problem: { code: 'no-number', value: cell, ...at } satisfies LogProblem };
  return { value: place!.inches ? mmOfInches(plain) : Number(plain) };
}

function readRow(cells: readonly string[], header: Header, row: number, order: SlashOrder): Row {
  const extra = cells.find((cell, index) => index >= header.width && cell.trim() !== '');
  if (extra !== undefined) return { problems: [{ row, code: 'cell-without-column', cell: extra }] };
  const problems: LogProblem[] = [];
  const values: Record<string, string | number | null> = {};
  for (const column of LOG_TEXTS) values[column.id] = textCell(column, cells, header);
  const day = dayOf(values['date'] as string, order);
  if (day === null) problems.push({ row, code: 'day-or-month', value: values['date'] as string });
  else values['date'] = day;
  for (const column of LOG_NUMBERS) {
    const { value, problem } = numberCell(column, cells, header, row);
    values[column.id] = value;
    if (problem) problems.push(problem);
  }
  // What could not be read is told once.
  const told = new Set<LogColumn>(problems.flatMap((problem) => ('column' in problem ? [problem.column] : ['date'])));
  const { id, ...content } = values as unknown as LogEntry;
  const found = [...contentProblems(content, row), ...(id === '' ? [] : idProblems(id, row))];
  problems.push(...found.filter((problem) => !('column' in problem) || !told.has(problem.column)));
  if (problems.length > 0) return { problems };
  return { entry: id === '' ? withContentId(content) : { ...content, id }, problems };
}

/** Records of a table with the row that a spreadsheet shows each in; empty rows are left out. */
function filledRows(records: readonly (readonly string[])[]): [number, readonly string[]][] {
  return records
    .map((cells, index): [number, readonly string[]] => [index + 1, cells])
    .filter(([, cells]) => cells.some((cell) => cell.trim() !== ''));
}

function quoteProblems(errors: readonly Papa.ParseError[]): LogProblem[] {
  return errors
    .filter(({ type }) => type === 'Quotes')
    .map(({ row, code }) => ({
      row: row === undefined ? null : row + 1,
      code: code === 'MissingQuotes' ? 'quotes-open' : 'quotes-go-on',
    }));
}

/** Entries of a file, each once. An id that two rows have, saying different things, is a problem of the second. */
function gather(rows: Iterable<Row & { readonly row: number }>): ReadLog {
  const problems: LogProblem[] = [];
  let count = 0;
  const byId = new Map<string, { readonly entry: LogEntry; readonly row: number }>();
  const note = (found: readonly LogProblem[]) => {
    count += found.length;
    problems.push(...found.slice(0, MOST_PROBLEMS - problems.length));
  };
  for (const { entry, problems: found, row } of rows) {
    note(found);
    if (!entry) continue;
    const other = byId.get(entry.id);
    if (!other) byId.set(entry.id, { entry, row });
    else if (contentHash(other.entry) !== contentHash(entry)) {
      note([{ row, code: 'same-id', id: entry.id, otherRow: other.row }]);
    }
  }
  if (count > 0) return { ok: false, problems, count };
  return { ok: true, entries: [...byId.values()].map(({ entry }) => entry) };
}

const TOLD_EVERY = 500;

/** @param told how far it is, 0 to 1, from time to time */
export function readLog(text: string, told: (share: number) => void = () => undefined): ReadLog {
  const { table, delimiter } = withoutPreamble(text);
  const parsed = Papa.parse<string[]>(table, { delimiter: delimiter ?? delimiterOf(table) });
  const quotes = quoteProblems(parsed.errors);
  if (quotes.length > 0) return { ok: false, problems: quotes.slice(0, MOST_PROBLEMS), count: quotes.length };
  const [first, ...rest] = filledRows(parsed.data);
  if (!first) return refused({ row: null, code: 'file-empty' });
  if (rest.length > MOST_ROWS) return refused({ row: null, code: 'too-many-rows', most: MOST_ROWS });
  const { header, problems } = readHeader(first[1]);
  if (problems.length > 0) {
    return refused(...problems.map((problem) => ({ ...problem, row: first[0] })));
  }
  const dates = header.texts.get('date')!;
  const order = slashOrder(rest.map(([, cells]) => cells[dates] ?? ''));
  const rows = function* () {
    for (const [index, [row, cells]] of rest.entries()) {
      if (index % TOLD_EVERY === 0) told(index / rest.length);
      yield { ...readRow(cells, header, row, order), row };
    }
  };
  return gather(rows());
}

/**
 * Reads a log from the bytes of a file: UTF-8 or UTF-16, or else the one-byte code of Western Europe in which a German
 * spreadsheet saves (windows-1252, WHATWG Encoding Standard).
 */
export function readLogBytes(bytes: Uint8Array, told?: (share: number) => void): ReadLog {
  if (bytes.length > MOST_LOG_BYTES) {
    return refused({ row: null, code: 'file-too-large', bytes: bytes.length, mostBytes: MOST_LOG_BYTES });
  }
  const read = textOfBytes(bytes);
  if (read.ok) return readLog(read.text, told);
  // A table holds no zero bytes: what does is no text of one byte a character.
  if (read.code !== 'not-utf-8' || bytes.includes(0)) return refused({ row: null, code: 'not-text' });
  return readLog(new TextDecoder('windows-1252').decode(bytes), told);
}
