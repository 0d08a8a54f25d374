/** Bench logs as spreadsheets, editors and accidents leave them. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { writeLog } from '../../src/mechanics/bench-log/csv.ts';
import { entryProblems } from '../../src/mechanics/bench-log/entry-problems.ts';
import { readLog, type ReadLog } from '../../src/mechanics/bench-log/read-csv.ts';
import { logProblemText } from '../../src/speech/measured/log-problems.ts';
import { bitePosterior } from '../../src/mechanics/bench-log/posterior.ts';
import { ENTRY } from '../mechanics/bench-log/entries.ts';
import { hold, holdFinite } from '../sweep/invariant.ts';
import { damaged, HOSTILE_TEXTS, hostileText } from './hostile.ts';
import { RUNS } from './runs.ts';
import { draw } from '../draw.ts';

const ENTRIES = [
  ENTRY,
  { ...ENTRY, id: 'cdfghjklmnpqrs', neck: 'No. 42, "the long one", ebony', measuredStrungMm: null, date: '2026-03-01' },
  { ...ENTRY, id: 'dfghjklmnpqrst', neck: 'Nº 43\nsecond try', method: 'both' as const, biteFactor: 1.2 },
];
const LOGS = (['metric', 'inch'] as const).map((system) => writeLog(ENTRIES, system));

/** What was read is entries that are sound, or there is a reason in words. */
function holdHonest(read: ReadLog): void {
  if (!read.ok) {
    hold(read.problems.length > 0, () => 'refused without a reason');
    for (const problem of read.problems) {
      // What the file itself says stands in quotes, and may say anything.
      const text = logProblemText(problem, 'inch').replace(/“[^”]*”/g, '“”');
      hold(text.length > 5 && !/undefined|NaN\b.*takes|\[object/.test(text), () => `no sentence: “${text}”`);
    }
    return;
  }
  for (const entry of read.entries) {
    hold(entryProblems(entry).length === 0, () => 'an entry with problems was taken');
    holdFinite(entry, 'entry');
  }
  // What was read is written and read again as it is; as JSON, because the sign of a zero means nothing.
  const again = JSON.stringify(readLog(writeLog(read.entries)));
  hold(again === JSON.stringify(read), () => 'written and read again it is another');
}

describe('bench logs', () => {
  test(`with characters lost, doubled or exchanged (seed ${RUNS.csvText.seed})`, () => {
    fc.assert(
      fc.property(fc.oneof(fc.constantFrom(...LOGS).chain(damaged), hostileText), (text) => holdHonest(readLog(text))),
      RUNS.csvText,
    );
  });

  test(`with cells of another kind, and what they teach stays a number (seed ${RUNS.csvCells.seed})`, () => {
    const cell = fc.oneof(
      fc.constantFrom(...HOSTILE_TEXTS, '0.05', '−0.2', '1e-3', '0,05', '5', '-5', '0.02 mm', '2026-02-30', '"'),
      fc.double({ noNaN: true }).map(String),
    );
    const rows = LOGS[0].trimEnd().split('\r\n').slice(0, 2);
    const harmed = fc
      .array(fc.tuple(fc.nat({ max: 1 }), fc.nat({ max: 28 }), cell), { minLength: 1, maxLength: 3 })
      .map((harms) => {
        const cells = rows.map((row) => Papa.parse<string[]>(row).data[0]);
        for (const [row, column, text] of harms) cells[row][column] = text;
        return Papa.unparse(cells);
      });
    let taken = 0;
    fc.assert(
      fc.property(harmed, (text) => {
        const read = readLog(text);
        holdHonest(read);
        if (!read.ok) return;
        taken += 1;
        holdFinite(bitePosterior(read.entries), 'posterior');
      }),
      RUNS.csvCells,
    );
    expect(taken).toBeGreaterThan(draw(40));
  });

  test('with a line break in the header are refused like any other header', () => {
    // Found by the fuzz (seed 8121): the cell was looked at line by line.
    expect(readLog('"date\nneck",method\r\n1,2')).toMatchObject({
      ok: false,
      problems: [{ code: 'column-unknown' }, {}, {}, {}],
    });
  });
});
