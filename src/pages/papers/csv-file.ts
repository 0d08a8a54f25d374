/** A table as a CSV file for spreadsheets and scripts. */
import type { Build } from '../../neck/build.ts';
import { BYTE_ORDER_MARK } from '../../neck/csv.ts';
import { tableCsv } from '../../fretwork/plan/csv.ts';
import type { Table } from '../../fretwork/plan/tables.ts';
import { fileName } from '../../kit/file-name.ts';

export function csvText(table: Pick<Table, 'columns' | 'rows'>): string {
  return BYTE_ORDER_MARK + tableCsv(table);
}

/** A table has no room for more than its columns: the stamp of its numbers stands in the name. */
export function csvFileName(build: Pick<Build, 'name'>, table: { readonly id: string }, stamp: string): string {
  return fileName(build.name, `${table.id}-${stamp}.csv`);
}
