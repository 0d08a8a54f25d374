/**
 * A table as a CSV file for spreadsheets. Words that a spreadsheet would run as a formula (they begin with =, +, −, @, a
 * tab or a carriage return) get an apostrophe before them, which spreadsheets take as "this is text"; numbers stay numbers.
 * Source: OWASP, CSV Injection (from memory).
 */
import type { Build } from '../../neck/build.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { BYTE_ORDER_MARK, toCsv } from '../../fretwork/plan/csv.ts';
import type { Cell, Table } from '../../fretwork/plan/tables.ts';
import { fileName } from '../../kit/file-name.ts';

const LOOKS_LIKE_FORMULA = /^[=+\-@\t\r]/;

export function safeText(text: string): string {
  return LOOKS_LIKE_FORMULA.test(text) ? `'${text}` : text;
}

const safeCell = (cell: Cell): Cell => (typeof cell === 'string' ? safeText(cell) : cell);

export function csvText(table: Pick<Table, 'columns' | 'rows'>, system: UnitSystem): string {
  const columns = table.columns.map((column) => ({ ...column, label: safeText(column.label) }));
  return BYTE_ORDER_MARK + toCsv({ ...table, columns, rows: table.rows.map((row) => row.map(safeCell)) }, system);
}

export function csvFileName(build: Pick<Build, 'name'>, table: Pick<Table, 'id'>): string {
  return fileName(build.name, `${table.id}.csv`);
}
