/** Problems of the bench log in words: row, column, value, range and unit, in the reader's units. */
import { expect, test } from 'vitest';
import type { LogProblem } from '../../src/mechanics/bench-log/entry-problems.ts';
import { readLog } from '../../src/mechanics/bench-log/read-csv.ts';
import { logProblemText, logProblemTexts } from '../../src/speech/measured/log-problems.ts';

const said = (problem: LogProblem, system: 'metric' | 'inch' = 'metric') =>
  logProblemText(problem, system).replaceAll('\u00a0', ' ');
const RELIEF = { column: 'measuredFrettedMm', min: -5, max: 5, unit: 'mm' } as const;

test.each<[LogProblem, string]>([
  [
    { row: 2, code: 'out-of-range', value: -12, ...RELIEF },
    'Row 2: “measured with frets in” is −12 mm; it takes −5 to 5 mm.',
  ],
  [
    { row: 1204, code: 'no-number', value: 'a hair', ...RELIEF },
    'Row 1,204: “measured with frets in” is “a hair”; it takes a number, −5 to 5 mm.',
  ],
  [
    { row: 3, code: 'empty', column: 'gaugeErrorMm', min: 0.001, max: 0.5, unit: 'mm' },
    'Row 3: “gauge error” is empty; it takes 0.001 to 0.5 mm.',
  ],
  [
    { row: 2, code: 'column-unit', cell: 'gauge error', column: 'gaugeErrorMm' },
    'Row 2: column “gauge error” has the wrong unit: it takes “gauge error (mm)” or “gauge error (in)”.',
  ],
  [
    { row: null, code: 'too-many-rows', most: 100_000 },
    'The file has more than 100,000 entries, the most that a log takes.',
  ],
  [
    { row: null, code: 'file-too-large', bytes: 70_100_000, mostBytes: 64_000_000 },
    'The file has 70.1 MB; a bench log has at most 64 MB.',
  ],
])('%j', (problem, sentence) => {
  expect(said(problem)).toBe(sentence);
});

test('in inches for whoever reads inches', () => {
  expect(said({ row: 2, code: 'out-of-range', value: -12.7, ...RELIEF }, 'inch')).toBe(
    'Row 2: “measured with frets in” is −0.5 in; it takes −0.1968 to 0.1968 in.',
  );
});

test('a long piece of a file does not drown the sentence', () => {
  expect(said({ row: 1, code: 'column-unknown', cell: 'x'.repeat(5000) }).length).toBeLessThan(120);
});

test('many problems are listed as far as is wanted, the others counted', () => {
  const header = 'date,neck,method,measured with frets in (mm),gauge error (mm),predicted with frets in (mm)';
  const rows = Array.from({ length: 230 }, () => '2026-13-01,A,press,-0.2,0.02,-0.2');
  const read = readLog([header, ...rows].join('\n'));
  if (read.ok) throw new Error('the thirteenth month is refused');
  const lines = logProblemTexts(read.problems, read.count, 12, 'metric');
  expect(lines).toHaveLength(13);
  expect(lines[0]).toMatch(/^Row 2: “date” is “2026-13-01”/);
  expect(lines.at(-1)).toBe('and 218 more');
});
