/** The value of each quantity, by its key, as `predict` and the CSV files hold it: what every other surface is held to. */
import Papa from 'papaparse';
import { tableCsv } from '../../src/fretwork/plan/csv.ts';
import { planTables, type ColumnKey } from '../../src/fretwork/plan/tables.ts';
import type { QuantityKey } from '../../src/neck/quantities.ts';
import { predictionReport } from '../../src/verdict/report.ts';
import { sheetPlan, type SheetPlan } from '../../src/verdict/sheet-plan.ts';
import type { Known } from './house.ts';

type Report = ReturnType<typeof predictionReport>;
export type ReportedMethod = Report['methods']['press'];

/** A CSV file read back, column by column: fields as they stand in it. */
export type CsvTable = ReadonlyMap<ColumnKey, readonly string[]>;

export interface Truth extends Known {
  readonly report: Report;
  readonly chosen: ReportedMethod;
  readonly sheet: SheetPlan;
  readonly csv: ReadonlyMap<string, CsvTable>;
}

function readBack(text: string): CsvTable {
  const [header, ...rows] = Papa.parse<string[]>(text, { skipEmptyLines: true }).data;
  return new Map(header.map((key, index) => [key as ColumnKey, rows.map((row) => row[index])]));
}

export function truthOf(known: Known): Truth {
  const report = predictionReport(known, known.uncertainty ?? undefined);
  const sheet = sheetPlan(known, known.uncertainty);
  const csv = new Map(planTables(sheet.plan).map((table) => [table.id as string, readBack(tableCsv(table))]));
  // As a script reads it: through JSON.
  const told = JSON.parse(JSON.stringify(report)) as Report;
  return { ...known, report: told, chosen: told.methods[known.build.method], sheet, csv };
}

/** Numbers of a column of a CSV file; fields that are codes or blank are left out. */
export function csvNumbers({ csv }: Truth, table: string, key: QuantityKey): number[] {
  const fields = csv.get(table)?.get(key) ?? [];
  return fields.filter((field) => field !== '').map(Number);
}
