/**
 * Comma-separated values, RFC 4180: records end in CRLF; a field that holds a comma, a quote or a line end is quoted, and
 * quotes inside it are doubled. Numbers are written with a point whatever the language. The one writer of the house.
 *
 * Text that a spreadsheet would run as a formula (it begins with =, +, −, @, a tab or a carriage return) gets an apostrophe
 * before it, which spreadsheets take as "this is text"; numbers stay numbers. Source: OWASP, CSV Injection (from memory).
 * A German spreadsheet parts a file at its semicolons and knows no quotes in mid-field: what would be a formula behind a
 * semicolon, a tab or a line end within a text is guarded there too.
 */
import Papa from 'papaparse';

/** What would begin a formula, apostrophes before it included, so that reading takes off what writing put on. */
const FORMULA = /(?<=^\s*|[;\t\r\n]\s*)(?='*[=+\-@])|^(?='*[\t\r])/g;
const GUARDED = /(?<=^\s*|[;\t\r\n]\s*)'(?='*[=+\-@])|^'(?='*[\t\r])/g;

/** Mark that tells spreadsheets that a file is UTF-8; put it before the text when writing a file for them. */
export const BYTE_ORDER_MARK = '\uFEFF';

/** A number in decimal digits of its own, more of them than a double prints. */
export interface Decimal {
  readonly decimal: string;
}

/** null = an empty field. */
export type CsvValue = string | number | Decimal | null;

/** @throws {RangeError} for a number that is not finite, naming where it stands. */
export function writeCsv(header: readonly string[], rows: readonly (readonly CsvValue[])[]): string {
  for (const [row, values] of rows.entries()) {
    for (const [column, value] of values.entries()) {
      if (typeof value === 'number' && !Number.isFinite(value)) {
        throw new RangeError(`${header[column]} is ${value} in row ${row + 1}; a file takes finite numbers`);
      }
    }
  }
  const guarded = [header, ...rows].map((record) =>
    record.map((value) => {
      if (typeof value === 'string') return guardedText(value);
      return typeof value === 'object' && value !== null ? value.decimal : value;
    }),
  );
  const quotes = (value: unknown) => typeof value === 'string' && /[;\t]/.test(value);
  return `${Papa.unparse(guarded, { newline: '\r\n', quotes })}\r\n`;
}

/** A text as it is written: what would run as a formula has an apostrophe before it. */
export function guardedText(text: string): string {
  return text.replace(FORMULA, "'");
}

/** A text as it was before it was written. */
export function unguardedText(text: string): string {
  return text.replace(GUARDED, '');
}
