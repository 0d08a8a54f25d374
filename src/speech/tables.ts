/** A table of the plan in words and in the reader's units. */
import { columnQuantity, isCodeColumn, type Cell, type ColumnKey, type Table } from '../fretwork/plan/tables.ts';
import type { UnitSystem } from '../neck/units.ts';
import { formatShort, unitLabel } from './quantity.ts';
import { numberOf } from './quantity-text.ts';
import { MARK_WORDS } from './en/neck/sources.ts';
import { TABLE_WORDS } from './en/fretwork/plan-tables.ts';
import { metalName } from './names.ts';
import { quantityName } from './quantity-names.ts';

/** The name of a column without its unit. */
export function columnName(key: ColumnKey): string {
  return isCodeColumn(key) ? TABLE_WORDS.columns[key] : quantityName(key);
}

/** The unit that the numbers of a column are shown in; empty where they have none. */
export function columnUnit(key: ColumnKey, system: UnitSystem): string {
  const quantity = columnQuantity(key);
  return quantity === undefined ? '' : unitLabel(quantity.unit, system);
}

/** Head of a column with its unit, e.g. "Kerf (mm)". */
export function columnHeader(key: ColumnKey, system: UnitSystem): string {
  const unit = columnUnit(key, system);
  return unit === '' ? columnName(key) : `${columnName(key)} (${unit})`;
}

function codeText(code: string, key: ColumnKey): string {
  if (key === 'metal') return metalName(code);
  if (key === 'figures') return MARK_WORDS[code as keyof typeof MARK_WORDS];
  // Codes that have no word of their own are ids.
  return (TABLE_WORDS.cells as Readonly<Record<string, string>>)[code] ?? code;
}

function valueText(value: number | string, key: ColumnKey, system: UnitSystem): string {
  if (typeof value === 'string') return codeText(value, key);
  // No column of codes has numbers that are shown: the table of checks is a list in words.
  return isCodeColumn(key) ? formatShort(value, 4) : numberOf(key, value, system);
}

/** A cell as text in a unit system; blank for null. */
export function cellText(cell: Cell, key: ColumnKey, system: UnitSystem): string {
  if (cell === null) return '';
  const values: readonly (number | string)[] = typeof cell === 'object' ? cell : [cell];
  return values.map((value) => valueText(value, key, system)).join(' ');
}

/** A table as text, ready to show or to print. */
export function shownTable(
  { columns, rows }: Pick<Table, 'columns' | 'rows'>,
  system: UnitSystem,
): { header: string[]; rows: string[][] } {
  return {
    header: columns.map((key) => columnHeader(key, system)),
    rows: rows.map((row) => row.map((cell, index) => cellText(cell, columns[index], system))),
  };
}
