/**
 * Tables as comma-separated values, RFC 4180: records end in CRLF; a field that holds a comma, a quote or a line end is
 * quoted, and quotes inside it are doubled. One header record with the units; a point for the decimals whatever the locale.
 */
import type { UnitSystem } from '../../neck/units.ts';
import { cellText, columnHeader, type Cell, type Table } from './tables.ts';

function field(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Machines read the ASCII minus and the point only; words keep theirs. */
function plainNumber(cell: Cell, text: string): string {
  return typeof cell === 'string' ? text : text.replaceAll('−', '-').replace(/(\d),(?=\d)/g, '$1.');
}

const record = (fields: readonly string[]) => `${fields.map(field).join(',')}\r\n`;

/** Mark that tells spreadsheets that a file is UTF-8; put it before the text when writing a file for them. */
export const BYTE_ORDER_MARK = '\uFEFF';

export function toCsv(table: Pick<Table, 'columns' | 'rows'>, system: UnitSystem): string {
  const header = table.columns.map((column) => columnHeader(column, system));
  const rows = table.rows.map((row) =>
    record(row.map((cell, index) => plainNumber(cell, cellText(cell, table.columns[index]!, system)))),
  );
  return record(header) + rows.join('');
}
