/**
 * A table of the plan as CSV: keys at the head, values in the units of their keys, codes as they are. It holds what was
 * computed, in no language.
 */
import { filedValue } from '../../neck/quantities.ts';
import { writeCsv, type CsvValue } from '../../neck/csv.ts';
import { columnQuantity, type Cell, type ColumnKey, type Table } from './tables.ts';

function field(cell: Cell, key: ColumnKey): CsvValue {
  if (cell === null || typeof cell === 'string') return cell;
  const filed = (value: number | string) =>
    typeof value === 'string' ? value : filedValue(value, columnQuantity(key)?.unit ?? 'mm');
  return typeof cell === 'number' ? filed(cell) : cell.map(filed).join(' ');
}

export function tableCsv({ columns, rows }: Pick<Table, 'columns' | 'rows'>): string {
  return writeCsv(
    columns,
    rows.map((row) => row.map((cell, index) => field(cell, columns[index]!))),
  );
}
