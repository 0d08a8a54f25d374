/** Tables as files for spreadsheets, read back by papaparse. */
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { planTables } from '../../../src/fretwork/plan/tables.ts';
import { csvFileName, csvText } from '../../../src/pages/papers/csv-file.ts';
import { sheetPlan } from '../../../src/verdict/sheet-plan.ts';
import { solutionOf } from '../../verdict/solution.ts';

test.each(PRESETS.map(({ id, build }) => [id, build] as const))(
  '%s: every table is the file of its keys and values, with the mark that spreadsheets want',
  (_id, build) => {
    for (const table of planTables(sheetPlan(solutionOf(build)).plan)) {
      const file = csvText(table);
      expect(file.startsWith('\uFEFF')).toBe(true);
      const { data, errors } = Papa.parse<string[]>(file.slice(1), { delimiter: ',', skipEmptyLines: true });
      expect(errors).toEqual([]);
      expect(data[0]).toEqual(table.columns);
      expect(data).toHaveLength(table.rows.length + 1);
      // No cell is a sentence: what a file says is the same in every language.
      for (const row of data) for (const cell of row) expect(cell).not.toMatch(/[.,;:!?] |[.!?]$/);
    }
  },
);

test('a table is named after the build and itself', () => {
  expect(csvFileName({ name: 'Nº 12 – Zoë’s “neck”' }, { id: 'slots' }, 'HGKDRT-BXQ-PLM')).toBe(
    'no-12-zoe-s-neck-slots-HGKDRT-BXQ-PLM.csv',
  );
});
