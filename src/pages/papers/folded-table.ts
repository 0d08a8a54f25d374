/** A table as it is shown: what is the same in every row is said once above it, and columns without content are left out. */
import type { UnitSystem } from '../../neck/units.ts';
import { unitLabel } from '../../speech/quantity.ts';
import { columnHeader, shownTable, type Table } from '../../fretwork/plan/tables.ts';

export interface ShownColumn {
  readonly id: string;
  readonly header: string;
  /** Numbers line up on the right, words on the left; blanks are boxes to write in. */
  readonly kind: 'number' | 'words' | 'blank';
}

export interface FoldedTable {
  readonly id: Table['id'];
  readonly title: string;
  readonly columns: readonly ShownColumn[];
  readonly rows: readonly (readonly string[])[];
  /** What is alike for all rows, with its unit. */
  readonly common: readonly { readonly label: string; readonly text: string }[];
}

/** Column that is filled in by hand. */
const BLANK = 'measured';

/**
 * @param keep ids of columns that stay even when all their rows are alike; the first column always does
 * @param without ids of columns to leave out
 */
export function foldTable(
  table: Table,
  system: UnitSystem,
  { keep = [], without = [] }: { readonly keep?: readonly string[]; readonly without?: readonly string[] } = {},
): FoldedTable {
  const { rows } = shownTable(table, system);
  const columns: (ShownColumn & { readonly index: number })[] = [];
  const common: { label: string; text: string }[] = [];
  for (const [index, column] of table.columns.entries()) {
    if (without.includes(column.id)) continue;
    const numeric = table.rows.some((row) => typeof row[index] === 'number');
    const isBlank = column.id === BLANK;
    const stays = index === 0 || isBlank || keep.includes(column.id);
    const texts = rows.map((row) => row[index]!);
    if (!stays && texts.every((text) => text === '')) continue;
    if (!stays && rows.length > 1 && texts.every((text) => text === texts[0])) {
      const unit = numeric && column.unit !== undefined ? unitLabel(column.unit, system) : '';
      common.push({ label: column.label, text: unit === '' ? texts[0]! : `${texts[0]!}\u00a0${unit}` });
      continue;
    }
    const header = columnHeader(column, system);
    columns.push({ id: column.id, header, index, kind: isBlank ? 'blank' : numeric ? 'number' : 'words' });
  }
  return {
    id: table.id,
    title: table.title,
    columns: columns.map(({ id, header, kind }) => ({ id, header, kind })),
    rows: rows.map((row) => columns.map(({ index }) => row[index]!)),
    common,
  };
}
