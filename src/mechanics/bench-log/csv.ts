/**
 * The bench log as CSV (RFC 4180): one line an entry, the unit of each column in brackets in the header. Lengths are in
 * mm or in inches as the header says, column by column. What was written is read back as the same entries (read-csv.ts).
 */
import { writeCsv } from '../../neck/csv.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { inchesText } from './csv-numbers.ts';
import { FIRST_TEXTS, LAST_TEXTS, LOG_NUMBERS, type LogEntry, type LogNumber } from './entry.ts';

function headerOf({ name, unit }: LogNumber, system: UnitSystem): string {
  if (unit === '') return name;
  return `${name} (${unit === 'mm' && system === 'inch' ? 'in' : unit === 'day' ? 'days' : unit})`;
}

/** @param system lengths in mm or in inches, in as many digits as it takes to read back the same */
export function writeLog(entries: readonly LogEntry[], system: UnitSystem = 'metric'): string {
  const number = ({ id, unit }: LogNumber, entry: LogEntry) => {
    const value = entry[id];
    return value !== null && unit === 'mm' && system === 'inch' ? { decimal: inchesText(value) } : value;
  };
  const rows = entries.map((entry) => [
    ...FIRST_TEXTS.map(({ id }) => entry[id]),
    ...LOG_NUMBERS.map((column) => number(column, entry)),
    ...LAST_TEXTS.map(({ id }) => entry[id]),
  ]);
  const name = ({ name }: { readonly name: string }) => name;
  const header = [
    ...FIRST_TEXTS.map(name),
    ...LOG_NUMBERS.map((column) => headerOf(column, system)),
    ...LAST_TEXTS.map(name),
  ];
  return writeCsv(header, rows);
}
