/** Days as the log keeps them, yyyy-mm-dd, and as spreadsheets write them. */

/** Is it a day that the calendar has, as yyyy-mm-dd? */
export function isDate(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

/** How the dates with slashes of a file are meant; undefined = nothing in it tells. */
export type SlashOrder = 'day-first' | 'month-first' | undefined;

const SLASHES = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;
const DOTS = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/;

/** @param cells all dates of a file: one that can only be meant one way tells of the others */
export function slashOrder(cells: Iterable<string>): SlashOrder {
  let dayFirst = false;
  let monthFirst = false;
  for (const cell of cells) {
    const [, first, second] = SLASHES.exec(cell.trim()) ?? [];
    if (first === undefined) continue;
    if (Number(first) > 12) dayFirst = true;
    if (Number(second) > 12) monthFirst = true;
  }
  if (dayFirst === monthFirst) return undefined;
  return dayFirst ? 'day-first' : 'month-first';
}

const joined = (year: string, month: string, day: string) =>
  `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;

/**
 * A cell as yyyy-mm-dd: from itself, from 14.02.2026 or from 14/02/2026 and 2/14/2026.
 * @returns the cell as it is when it is none of these; null for slashes that can be meant either way
 */
export function dayOf(cell: string, order: SlashOrder): string | null {
  const text = cell.trim();
  const dots = DOTS.exec(text);
  if (dots) return joined(dots[3], dots[2], dots[1]);
  const slashes = SLASHES.exec(text);
  if (!slashes) return text;
  const [, first, second, year] = slashes as unknown as [string, string, string, string];
  if (first === second) return joined(year, first, second);
  if (order === undefined) return null;
  return order === 'day-first' ? joined(year, second, first) : joined(year, first, second);
}
