/** A table as it is shown: what is the same in every row is said once above it, and columns without content are left out. */
import type { UnitSystem } from '../../neck/units.ts';
import { isForHand, type ColumnKey, type Table } from '../../fretwork/plan/tables.ts';
import { columnHeader, columnName, columnUnit, shownTable } from '../../speech/tables.ts';

export interface ShownColumn {
  readonly id: string;
  readonly header: string;
  /** Numbers line up on the right, words on the left; blanks are boxes to write in. */
  readonly kind: 'number' | 'words' | 'blank';
}

export interface FoldedTable {
  readonly id: Table['id'];
  readonly columns: readonly ShownColumn[];
  readonly rows: readonly (readonly string[])[];
  /** What is alike for all rows, with its unit. */
  readonly common: readonly { readonly label: string; readonly text: string }[];
}

/**
 * @param keep columns that stay even when all their rows are alike; the first column always does
 * @param without columns to leave out
 */
export function foldTable(
  table: Table,
  system: UnitSystem,
  { keep = [], without = [] }: { readonly keep?: readonly ColumnKey[]; readonly without?: readonly ColumnKey[] } = {},
): FoldedTable {
  const { rows } = shownTable(table, system);
  const columns: (ShownColumn & { readonly index: number })[] = [];
  const common: { label: string; text: string }[] = [];
  for (const [index, key] of table.columns.entries()) {
    if (without.includes(key)) continue;
    const numeric = table.rows.some((row) => typeof row[index] === 'number');
    const isBlank = isForHand(key);
    const stays = index === 0 || isBlank || keep.includes(key);
    const texts = rows.map((row) => row[index]);
    if (!stays && texts.every((text) => text === '')) continue;
    if (!stays && rows.length > 1 && texts.every((text) => text === texts[0])) {
      const unit = numeric ? columnUnit(key, system) : '';
      common.push({ label: columnName(key), text: unit === '' ? texts[0] : `${texts[0]}\u00a0${unit}` });
      continue;
    }
    const header = columnHeader(key, system);
    columns.push({ id: key, header, index, kind: isBlank ? 'blank' : numeric ? 'number' : 'words' });
  }
  return {
    id: table.id,
    columns: columns.map(({ id, header, kind }) => ({ id, header, kind })),
    rows: rows.map((row) => columns.map(({ index }) => row[index])),
    common,
  };
}
