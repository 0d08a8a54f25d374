/** Reads the tables of published values beside this file: comma-separated, `#` starts a comment line, no quoting. */
import { readFileSync } from 'node:fs';

export type CsvRow = Readonly<Record<string, string>>;

/** @throws {Error} when a line has more or fewer cells than the header. */
export function parseCsv(text: string, name: string): CsvRow[] {
  const lines = text
    .split('\n')
    .map((line, index) => ({ line: line.trimEnd(), number: index + 1 }))
    .filter(({ line }) => line !== '' && !line.startsWith('#'));
  const [head, ...body] = lines;
  if (!head) throw new Error(`${name} has no header`);
  const columns = head.line.split(',');
  return body.map(({ line, number }) => {
    const cells = line.split(',');
    if (cells.length !== columns.length) {
      throw new Error(`${name}:${number} has ${cells.length} cells; the header has ${columns.length}`);
    }
    return Object.fromEntries(columns.map((column, index) => [column, cells[index]]));
  });
}

/** A table of this folder, by its file name. */
export function readCsv(name: string): CsvRow[] {
  return parseCsv(readFileSync(new URL(name, import.meta.url), 'utf8'), name);
}
