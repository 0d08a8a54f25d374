/** Tables as files for spreadsheets, read back by papaparse. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { planTables, shownTable, type Table } from '../../../src/fretwork/plan/tables.ts';
import { csvFileName, csvText, safeText } from '../../../src/pages/papers/csv-file.ts';
import { sheetPlan } from '../../../src/verdict/sheet-plan.ts';
import { solutionOf } from '../../verdict/solution.ts';

const wordsTable = (texts: readonly string[]): Table => ({
  id: 'checks',
  title: 'Words',
  columns: [{ id: 'words', label: 'Words' }],
  rows: texts.map((text) => [text]),
});

/** What a spreadsheet takes for a formula: OWASP, CSV Injection (from memory). */
const FORMULA = /^[=+\-@\t\r]/;

function read(csv: string): string[][] {
  expect(csv.startsWith('\uFEFF')).toBe(true);
  const { data, errors } = Papa.parse<string[]>(csv.slice(1), { delimiter: ',', skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

test.each(PRESETS.map(({ id, build }) => [id, build] as const))(
  '%s: every table reads back as it is shown',
  (_id, build) => {
    for (const system of ['metric', 'inch'] as const) {
      for (const table of planTables(sheetPlan(solutionOf(build)).plan)) {
        const { header, rows } = shownTable(table, system);
        const [headerRead, ...rowsRead] = read(csvText(table, system));
        expect(headerRead).toEqual(header);
        // In the file a minus is the sign on the keyboard, so that it counts as a number.
        const plain = (cell: string) => (/^−[\d.]+$/.test(cell) ? cell.replace('−', '-') : cell);
        expect(rowsRead.map((row) => row.map(plain))).toEqual(rows.map((row) => row.map(plain)));
      }
    }
  },
);

test('lengths and forces stand in the units of the page, and the header says which', () => {
  const tables = planTables(sheetPlan(solutionOf(PRESETS[0].build)).plan);
  const table = (id: string) => tables.find((candidate) => candidate.id === id)!;
  const column = (id: string, header: string, system: 'metric' | 'inch') => {
    const [headers, ...rows] = read(csvText(table(id), system));
    expect(headers).toContain(header);
    return rows.map((row) => Number(row[headers.indexOf(header)]));
  };
  const mm = column('slots', 'From the nut (mm)', 'metric');
  const inches = column('slots', 'From the nut (in)', 'inch');
  // Printed to 0.01 mm and 0.001 in: 0.005 mm + 0.0127 mm at worst, on 36 mm and more.
  for (const [index, value] of mm.entries()) expect(Math.abs((inches[index] * 25.4) / value - 1)).toBeLessThan(5e-4);
  const newtons = column('seating', 'Seating force (N)', 'metric');
  const pounds = column('seating', 'Seating force (lbf)', 'inch');
  // Printed to 1 N and 1 lbf of more than 100 lbf: half a pound in a hundred.
  for (const [index, value] of newtons.entries()) {
    expect(Math.abs((pounds[index] * 4.4482216152605) / value - 1)).toBeLessThan(6e-3);
  }
});

test('no word is run as a formula, every word can be read back, numbers stay numbers (seed 4180)', () => {
  const start = fc.constantFrom('=', '+', '-', '@', '\t', '\r', '', 'a', "'");
  const words = fc.array(
    fc.tuple(start, fc.string({ maxLength: 12 })).map(([first, rest]) => first + rest),
    { minLength: 1, maxLength: 5 },
  );
  fc.assert(
    fc.property(words, (texts) => {
      const data = Papa.parse<string[]>(csvText(wordsTable(texts), 'metric').slice(1, -2), {
        newline: '\r\n',
        delimiter: ',',
      }).data.slice(1);
      for (const [index, text] of texts.entries()) {
        const [cell] = data[index];
        expect(FORMULA.test(cell)).toBe(false);
        expect(cell).toBe(FORMULA.test(text) ? `'${text}` : text);
      }
    }),
    { seed: 4180, numRuns: 400 },
  );
  const numbers: Table = {
    id: 'quarters',
    title: 'Numbers',
    columns: [{ id: 'bow', label: 'Bow', unit: 'mm', digits: 2 }],
    rows: [[-0.21], [0], [0.4]],
  };
  expect(read(csvText(numbers, 'metric')).slice(1)).toEqual([['-0.21'], ['0.00'], ['0.40']]);
  expect(safeText('=HYPERLINK("x")')).toBe('\'=HYPERLINK("x")');
});

test('a table is named after the build and itself', () => {
  expect(csvFileName({ name: 'Nº 12 – Zoë’s “neck”' }, { id: 'slots' })).toBe('no-12-zoe-s-neck-slots.csv');
});
