/**
 * A table of the plan as CSV: keys at the head, values in the units of their keys, codes as they are. It holds what was
 * computed, in no language.
 */
import { filedExactly, filedQuantity } from '../../neck/quantities.ts';
import { writeCsv, type CsvValue } from '../../neck/csv.ts';
import { isCodeColumn, type Cell, type ColumnKey, type Table } from './tables.ts';

function field(cell: Cell, key: ColumnKey): CsvValue {
  if (cell === null || typeof cell === 'string') return cell;
  const filed = (value: number | string) =>
    typeof value === 'string' ? value : isCodeColumn(key) ? filedExactly(value) : filedQuantity(key, value);
  return typeof cell === 'number' ? filed(cell) : cell.map(filed).join(' ');
}

export function tableCsv({ columns, rows }: Pick<Table, 'columns' | 'rows'>): string {
  return writeCsv(
    columns,
    rows.map((row) => row.map((cell, index) => field(cell, columns[index]))),
  );
}
