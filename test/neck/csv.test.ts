/** The one writer of CSV, read back by papaparse. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { guardedText, unguardedText, writeCsv } from '../../src/neck/csv.ts';

/** What a spreadsheet takes for a formula: OWASP, CSV Injection (from memory). */
const FORMULA = /^[=+\-@\t\r]/;

const read = (csv: string) => Papa.parse<string[]>(csv.slice(0, -2), { newline: '\r\n', delimiter: ',' }).data;

test('quotes commas, quotes and line ends; every record ends in CRLF (seed 7001)', () => {
  const text = fc.string({ unit: fc.constantFrom('a', ',', '"', '\r', '\n', ' ', 'é', ';') });
  const rows = fc.array(fc.tuple(text, text), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(rows, (given) => {
      const csv = writeCsv(['A "quoted", label', 'B'], given);
      expect(csv.endsWith('\r\n')).toBe(true);
      expect(read(csv).map((row) => row.map(unguardedText))).toEqual([['A "quoted", label', 'B'], ...given]);
    }),
    { seed: 7001, numRuns: 300 },
  );
});

test('no word is run as a formula, every word can be read back, numbers stay numbers (seed 4180)', () => {
  const start = fc.constantFrom('=', '+', '-', '@', '\t', '\r', '', 'a', "'", "'=");
  const words = fc.array(
    fc.tuple(start, fc.string({ maxLength: 12 })).map(([first, rest]) => first + rest),
    { minLength: 1, maxLength: 5 },
  );
  fc.assert(
    fc.property(words, (texts) => {
      const rows = read(
        writeCsv(
          ['words', 'fixed'],
          texts.map((text) => [text, 'x']),
        ),
      ).slice(1);
      for (const [index, text] of texts.entries()) {
        const cell = rows[index][0];
        expect(FORMULA.test(cell)).toBe(false);
        expect(unguardedText(cell)).toBe(text);
      }
    }),
    { seed: 4180, numRuns: 400 },
  );
  expect(writeCsv(['bow'], [[-0.21], [0], [null], [0.4]])).toBe('bow\r\n-0.21\r\n0\r\n\r\n0.4\r\n');
  expect(guardedText('=HYPERLINK("x")')).toBe('\'=HYPERLINK("x")');
});

test('nor behind a semicolon, as a German spreadsheet parts the file; every text can be read back (seed 4181)', () => {
  expect(writeCsv(['neck'], [['a;=1+1']])).toBe('neck\r\n"a;\'=1+1"\r\n');
  const text = fc.string({
    maxLength: 20,
    unit: fc.constantFrom(';', '=', "'", '-', '+', '\t', '\r', '\n', ' ', 'a', '@', ','),
  });
  fc.assert(
    fc.property(text, (given) => {
      const guarded = guardedText(given);
      expect(unguardedText(guarded)).toBe(given);
      // Parted as roughly as can be: at every semicolon, tab and line end, quoted or not.
      for (const cell of guarded.split(/[;\t\r\n]/)) expect(/^\s*[=+\-@]/.test(cell)).toBe(false);
    }),
    { seed: 4181, numRuns: 3000 },
  );
});

test('a number that is none is refused with where it stands, not written', () => {
  expect(() =>
    writeCsv(
      ['fret', 'kerfMm'],
      [
        [1, 0.58],
        [2, Number.NaN],
      ],
    ),
  ).toThrow('kerfMm is NaN in row 2');
  expect(() => writeCsv(['bendToRadiusMm'], [[Infinity]])).toThrow(RangeError);
});
