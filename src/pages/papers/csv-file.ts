/** A table as a CSV file for spreadsheets and scripts. */
import type { Build } from '../../neck/build.ts';
import { BYTE_ORDER_MARK } from '../../neck/csv.ts';
import { tableCsv } from '../../fretwork/plan/csv.ts';
import type { Table } from '../../fretwork/plan/tables.ts';
import { fileName } from '../../kit/file-name.ts';

export function csvText(table: Pick<Table, 'columns' | 'rows'>): string {
  return BYTE_ORDER_MARK + tableCsv(table);
}

export function csvFileName(build: Pick<Build, 'name'>, table: Pick<Table, 'id'>): string {
  return fileName(build.name, `${table.id}.csv`);
}
