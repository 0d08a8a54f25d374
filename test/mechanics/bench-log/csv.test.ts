import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLog, writeLog } from '../../../src/mechanics/bench-log/csv.ts';
import { entryProblems, LOG_NUMBERS, type LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { expectNear } from '../../expect-near.ts';
import { ENTRY } from './entries.ts';

const problemsOf = (text: string) => {
  const read = readLog(text);
  return read.ok ? [] : read.problems;
};

/** A file with some columns only, all other cells empty. */
const file = (header: string, ...rows: string[]) => [header, ...rows].join('\r\n');
const SHORT = 'date,neck,method,measured with frets in (mm),gauge error (mm),predicted with frets in (mm)';

describe('writing', () => {
  it('has the units in the header, and one line an entry', () => {
    const [header, row, rest] = writeLog([ENTRY]).split('\r\n');
    expect(header).toContain('date,neck,method,measured with frets in (mm),measured strung (mm),gauge error (mm)');
    expect(header).toContain('bite factor used,');
    expect(row).toMatch(/^2026-02-14,"No\. 41, walnut board",press,-0\.24,0\.05,0\.02,-0\.21,,0\.11,-0\.18,1,/);
    expect(rest).toBe('');
  });

  it('does not hand formulas to a spreadsheet', () => {
    const text = writeLog([{ ...ENTRY, neck: '=1+1' }]);
    expect(text).toContain(",'=1+1,");
    const read = readLog(text);
    expect(read.ok && read.entries[0]!.neck).toBe('=1+1');
  });
});

describe('there and back (seed 5201)', () => {
  const range = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0);
  const entries = fc.array(
    fc
      .record({
        date: fc.date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true }),
        neck: fc
          .oneof(
            fc.string({ minLength: 1, maxLength: 30, unit: 'grapheme' }),
            fc.constantFrom("'=a", "''+x", 'a "b", c', '-3\n4'),
          )
          .filter((name) => name.trim() !== ''),
        method: fc.constantFrom('press', 'glue', 'both'),
        ...Object.fromEntries(
          LOG_NUMBERS.map(({ id, min, max, whenEmpty }) => [
            id,
            whenEmpty === null && id.endsWith('FretsMm') ? fc.option(range(min, max)) : range(min, max),
          ]),
        ),
      })
      .map((value) => ({ ...value, date: value.date.toISOString().slice(0, 10) }) as unknown as LogEntry)
      .filter((entry) => entryProblems(entry).length === 0),
  );

  it('gives the same entries in mm', () => {
    fc.assert(
      fc.property(entries, (list) => {
        const read = readLog(writeLog(list));
        expect(read).toEqual({ ok: true, entries: list });
      }),
      { seed: 5201 },
    );
  });

  it('gives the same entries by way of inches, to rounding', () => {
    const text = writeLog([ENTRY], 'inch');
    expect(text).toContain('gauge error (in)');
    const read = readLog(text);
    const [entry] = read.ok ? read.entries : [];
    const filled = LOG_NUMBERS.filter(({ id }) => ENTRY[id] !== null);
    for (const { id } of filled) expectNear(entry![id]!, ENTRY[id]!, 1e-14, 'divided and multiplied by 25.4');
    expect(LOG_NUMBERS.filter(({ id }) => entry![id] !== null)).toEqual(filled);
  });
});

describe('reading', () => {
  it('takes a short file, any order, semicolons, a byte order mark, a true minus sign and empty lines', () => {
    const text = `\ufeffneck;method;date;Gauge error (mm);predicted with frets in (in);measured with frets in (mm)\n\nA;press;2026-01-05;0.02;−0.01;−0.3\n`;
    const read = readLog(text);
    expect(read.ok && read.entries[0]).toMatchObject({
      neck: 'A',
      measuredFrettedMm: -0.3,
      measuredStrungMm: null,
      predictedFrettedMm: -0.254,
      biteFactor: 1,
      fretScatter: 0.24,
    });
  });

  it.each([
    ['', 'not-csv', null, '', /file is empty/],
    [file(SHORT, '2026-01-05,"A,press,-0.2,0.02,-0.2'), 'not-csv', 2, '', /not CSV/],
    [
      file('date,neck,method', '2026-01-05,A,press'),
      'missing',
      1,
      'gauge error',
      /column “gauge error \(mm\)” is missing/,
    ],
    [file(`${SHORT},colour`), 'unknown', 1, 'colour', /column “colour” is not one that a bench log has/],
    [file(SHORT.replace('error (mm)', 'error')), 'not-an-option', 1, 'gauge error', /has no unit that is known/],
    [file(SHORT.replace('error (mm)', 'error (cm)')), 'not-an-option', 1, 'gauge error', /“gauge error \(mm\)” or/],
    [file(`${SHORT},neck`), 'unknown', 1, 'neck', /stands twice/],
    [file(SHORT.replace('neck', 'customer')), 'unknown', 1, 'customer', /is not one/],
    [file(SHORT, '2026-01-05,A,press,-0.2,0.02,-0.2,9'), 'unknown', 2, '', /has 7 cells, the header 6/],
    [
      file(SHORT, '2026-01-05,A,press,"-0,2",0.02,-0.2'),
      'wrong-type',
      2,
      'measured with frets in',
      /“-0,2”; it takes a number with a decimal point, -5 to 5 mm/,
    ],
    [
      file(SHORT, '2026-01-05,A,press,-0.2,0.02,-0.2', '2026-01-06,B,press,-0.2,,-0.2'),
      'missing',
      3,
      'gauge error',
      /Row 3: gauge error is empty; it takes 0\.001 to 0\.5 mm/,
    ],
    [file(SHORT, '2026-01-05,A,glued,-0.2,0.02,-0.2'), 'not-an-option', 2, 'method', /“glued”/],
    [
      file(SHORT, '2026-01-05,A,press,-12,0.02,-0.2'),
      'out-of-range',
      2,
      'measured with frets in',
      /Row 2: .* is -12 mm; it takes -5 to 5 mm/,
    ],
    [file(SHORT, '2026-01-05,A,press,,0.02,-0.2'), 'missing', 2, 'measured with frets in', /nothing was measured/],
  ])('refuses %j', (text, code, row, column, message) => {
    const problems = problemsOf(text);
    expect(problems[0]).toMatchObject({ code, row, column });
    expect(problems[0]!.message).toMatch(message);
  });

  it('gives all problems of a file, and none of its entries', () => {
    const read = readLog(file(SHORT, '2026-01-05,A,press,-0.2,0.02,-0.2', 'soon,,press,x,0.02,-0.2'));
    expect(read).not.toHaveProperty('entries');
    expect(
      problemsOf(file(SHORT, '2026-01-05,A,press,-0.2,0.02,-0.2', 'soon,,press,x,0.02,-0.2')).map((p) => p.column),
    ).toEqual(['measured with frets in', 'date', 'neck']);
  });
});
