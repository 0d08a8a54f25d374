/** The log as a file: there and back in either unit and as spreadsheets of either language save it, and what is refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BYTE_ORDER_MARK } from '../../../src/neck/csv.ts';
import { writeLog } from '../../../src/mechanics/bench-log/csv.ts';
import { mmOfInches, inchesText } from '../../../src/mechanics/bench-log/csv-numbers.ts';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { contentHash } from '../../../src/mechanics/bench-log/identity.ts';
import { MOST_ROWS, readLog, readLogBytes } from '../../../src/mechanics/bench-log/read-csv.ts';
import { arbitraryEntries, arbitraryEntry } from './arbitrary-entries.ts';
import { ENTRY } from './entries.ts';
import { savedAgain } from './spreadsheet.ts';
import { draw } from '../../draw.ts';

const problemsOf = (text: string) => {
  const read = readLog(text);
  return read.ok ? [] : read.problems;
};
const entriesOf = (text: string): readonly LogEntry[] => {
  const read = readLog(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.entries;
};

/** A file with some columns only, all other cells empty. */
const file = (header: string, ...rows: string[]) => [header, ...rows].join('\r\n');
const SHORT = 'date,neck,method,measured with frets in (mm),gauge error (mm),predicted with frets in (mm)';

describe('writing', () => {
  it('has the units in the header, and one line an entry', () => {
    const [header, row, rest] = writeLog([ENTRY]).split('\r\n');
    expect(header).toContain('date,neck,method,measured with frets in (mm),measured strung (mm),gauge error (mm)');
    expect(header).toContain('bite factor used,');
    expect(header).toMatch(/,instrument,nut turned,strings while turned,order of seating,id$/);
    expect(row).toMatch(/^2026-02-14,"No\. 41, walnut board",press,-0\.24,0\.05,0\.02,-0\.21,,0\.11,-0\.18,1,/);
    expect(row).toMatch(/,slack,frets,,clockwise,on,spread,bcdfghjklmnpqr$/);
    expect(rest).toBe('');
  });

  it('does not hand formulas to a spreadsheet, nor to one that parts the file at semicolons', () => {
    const text = writeLog([{ ...ENTRY, neck: '=1+1', wire: 'a;=1+1' }]);
    expect(text).toContain(",'=1+1,");
    expect(text).toContain(`,"a;'=1+1",`);
    expect(entriesOf(text)[0]).toMatchObject({ neck: '=1+1', wire: 'a;=1+1' });
  });
});

describe('there and back', () => {
  it.each(['metric', 'inch'] as const)(`${draw(1000)} entries are the same again, %s (seed 5201)`, (system) => {
    fc.assert(
      fc.property(arbitraryEntry, (entry) => {
        expect(entriesOf(writeLog([entry], system))).toEqual([entry]);
      }),
      { seed: 5201, numRuns: draw(1000) },
    );
  });

  it.each(['metric', 'inch'] as const)('lists of them are the same again, in their order, %s (seed 5202)', (system) => {
    fc.assert(
      fc.property(arbitraryEntries, (list) => {
        expect(readLog(writeLog(list, system))).toEqual({ ok: true, entries: list });
      }),
      { seed: 5202 },
    );
  });

  it.each(
    (['metric', 'inch'] as const).flatMap((system) =>
      (['German', 'British', 'American'] as const).map((country) => [system, country] as const),
    ),
  )(`${draw(1000)} entries saved again by a spreadsheet say the same, %s, %s (seed 5203)`, (system, country) => {
    // A day past the twelfth tells day from month to whoever writes slashes.
    const telling = { ...ENTRY, date: '2026-02-28' };
    fc.assert(
      fc.property(arbitraryEntry, (entry) => {
        const [, read] = entriesOf(savedAgain(writeLog([telling, entry], system), country));
        expect(read.id).toBe(entry.id);
        expect(contentHash(read)).toBe(contentHash(entry));
      }),
      { seed: 5203, numRuns: draw(1000) },
    );
  });

  it('what a gauge gives comes back from a spreadsheet to the last digit, from inches too (seed 5204)', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), (thousandths) => {
        const value = thousandths / 1000;
        const text = inchesText(value);
        expect(mmOfInches(String(Number(Number(text).toPrecision(15))))).toBe(value);
      }),
      { seed: 5204, numRuns: draw(2000) },
    );
  });

  it('a length in inches has no more digits than it takes', () => {
    expect([25.4, -0.254, 0.02, 0].map(inchesText)).toEqual(['1', '-0.01', '0.000787401574803', '0']);
    expect(mmOfInches('0.011')).toBe(0.2794);
    // Found by the law above: as many digits as a spreadsheet keeps would say exactly this, and be read as 0.001.
    expect(mmOfInches(inchesText(0.0010000000000000005))).toBe(0.0010000000000000005);
    // Inch and millimetre: 1 in = 25.4 mm exactly (International yard and pound, 1959).
    expect(mmOfInches('39.37007874015748031496062992125984251968503937')).toBe(1000);
  });
});

describe('reading', () => {
  it('takes a short file, any order, semicolons, a byte order mark, a true minus sign and empty lines', () => {
    const text = `\ufeffneck;method;date;Gauge error (mm);predicted with frets in (in);measured with frets in (mm)\n\nA;press;2026-01-05;0.02;−0.01;−0.3\n`;
    expect(entriesOf(text)[0]).toMatchObject({
      neck: 'A',
      measuredFrettedMm: -0.3,
      measuredStrungMm: null,
      predictedFrettedMm: -0.254,
      biteFactor: 1,
      fretScatter: 0.3,
      rod: 'slack',
    });
  });

  const german = [
    'neck;method;date;gauge error (mm);predicted with frets in, part of the frets (mm);predicted with frets in (mm);measured with frets in (mm);;',
    '"Nº 1; Ahorn";press;05.01.2026;0,02;-0,2;-0,21;-0,3;;',
    ';;;;;;;;',
    'Zwei;both;5.1.2026;0,02;;-0,21;−0,25;;',
  ].join('\r\n');

  it.each([
    ['as it is', german],
    ['with a line that tells the delimiter', `sep=;\r\n${german}`],
    ['with that line quoted', `"sep=;"\r\n${german}`],
    ['with a byte order mark before it', `\ufeffsep=;\n${german}`],
  ])('takes what a German spreadsheet saves, %s', (_how, text) => {
    expect(entriesOf(text)).toMatchObject([
      {
        neck: 'Nº 1; Ahorn',
        date: '2026-01-05',
        measuredFrettedMm: -0.3,
        gaugeErrorMm: 0.02,
        predictedFrettedFretsMm: -0.2,
      },
      { neck: 'Zwei', date: '2026-01-05', method: 'both', measuredFrettedMm: -0.25, predictedFrettedFretsMm: null },
    ]);
  });

  it('takes bytes in UTF-8, in UTF-16 of both orders, and in the one-byte code of Western Europe', () => {
    const utf16 = (swap: boolean) => {
      const bytes = new Uint8Array(
        Uint16Array.from((BYTE_ORDER_MARK + german).split(''), (c) => c.charCodeAt(0)).buffer,
      );
      return swap ? bytes.map((_, at) => bytes[at ^ 1]) : bytes;
    };
    const latin = Uint8Array.from(german.replace('−', '-'), (c) => c.charCodeAt(0));
    const files = [new TextEncoder().encode(german), utf16(false), utf16(true), latin];
    const read = files.map((bytes) => readLogBytes(bytes));
    for (const each of read) expect(each.ok && each.entries[0].neck).toBe('Nº 1; Ahorn');
    expect(new Set(read.map((each) => JSON.stringify(each))).size).toBe(1);
    expect(readLogBytes(Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0xff, 0xfe]))).toMatchObject({
      problems: [{ code: 'not-text' }],
    });
  });

  it('tells day from month by the other rows, and asks where none tells', () => {
    const rows = (...dates: string[]) => file(SHORT, ...dates.map((date, at) => `${date},N${at},press,-0.2,0.02,-0.2`));
    const days = (text: string) => entriesOf(text).map(({ date }) => date);
    expect(days(rows('03/04/2026', '28/04/2026'))).toEqual(['2026-04-03', '2026-04-28']);
    expect(days(rows('3/4/2026', '4/28/2026'))).toEqual(['2026-03-04', '2026-04-28']);
    expect(days(rows('5/5/2026'))).toEqual(['2026-05-05']);
    expect(problemsOf(rows('2026-01-01', '03/04/2026'))).toEqual([
      { row: 3, code: 'day-or-month', value: '03/04/2026' },
    ]);
    // Both ways in one file: nothing can be told.
    expect(problemsOf(rows('13/04/2026', '4/28/2026', '03/04/2026')).map(({ code }) => code)).toContain('day-or-month');
  });

  it('counts rows as the spreadsheet shows them: header, empty rows, line ends within a cell', () => {
    const text = file(
      SHORT,
      '2026-01-05,"two\r\nlines\r\nand a third",press,-0.2,0.02,-0.2',
      '',
      ',,,,,',
      '2026-01-06,B,press,-0.2,,-0.2',
      '2026-13-06,C,press,-0.2,0.02,-0.2',
    );
    const shown = [
      { row: 5, code: 'empty', column: 'gaugeErrorMm' },
      { row: 6, code: 'not-a-day', column: 'date' },
    ];
    expect(problemsOf(text)).toMatchObject(shown);
    // Not shown by a spreadsheet, not counted.
    expect(problemsOf(`sep=,\r\n${text}`)).toMatchObject(shown);
    // Header further down.
    expect(problemsOf(`\r\n\r\n${text}`)).toMatchObject([{ row: 7 }, { row: 8 }]);
  });

  it.each([
    ['', { code: 'file-empty', row: null }],
    [file(SHORT, '2026-01-05,"A,press,-0.2,0.02,-0.2'), { code: 'quotes-open', row: 2 }],
    [file(SHORT, '2026-01-05,"A"b,press,-0.2,0.02,-0.2'), { code: 'quotes-go-on', row: 2 }],
    [file('date,neck,method', '2026-01-05,A,press'), { code: 'column-missing', row: 1, column: 'gaugeErrorMm' }],
    [file(`${SHORT},colour`), { code: 'column-unknown', row: 1, cell: 'colour' }],
    [file(SHORT.replace('error (mm)', 'error')), { code: 'column-unit', row: 1, column: 'gaugeErrorMm' }],
    [file(SHORT.replace('error (mm)', 'error (cm)')), { code: 'column-unit', row: 1, cell: 'gauge error (cm)' }],
    [file(`${SHORT},neck`), { code: 'column-twice', row: 1, cell: 'neck' }],
    [file(SHORT.replace('neck', 'customer')), { code: 'column-unknown', row: 1, cell: 'customer' }],
    [file(SHORT, '2026-01-05,A,press,-0.2,0.02,-0.2,9'), { code: 'cell-without-column', row: 2, cell: '9' }],
    [
      file(SHORT, '2026-01-05,A,press,"-0,2,1",0.02,-0.2'),
      { code: 'no-number', row: 2, column: 'measuredFrettedMm', value: '-0,2,1', min: -5, max: 5, unit: 'mm' },
    ],
    [file(SHORT, '2026-01-05,A,press,"1.000,5",0.02,-0.2'), { code: 'no-number', row: 2 }],
    [
      file(SHORT, '2026-01-05,A,press,-0.2,0.02,-0.2', '2026-01-06,B,press,-0.2,,-0.2'),
      { code: 'empty', row: 3, column: 'gaugeErrorMm', min: 0.001, max: 0.5, unit: 'mm' },
    ],
    [
      file(SHORT, '2026-01-05,A,glued,-0.2,0.02,-0.2'),
      { code: 'not-an-option', row: 2, value: 'glued', options: ['press', 'glue', 'both'] },
    ],
    [
      file(SHORT, '2026-01-05,A,press,-12,0.02,-0.2'),
      { code: 'out-of-range', row: 2, column: 'measuredFrettedMm', value: -12, min: -5, max: 5, unit: 'mm' },
    ],
    [file(SHORT, '2026-01-05,A,press,,0.02,-0.2'), { code: 'nothing-measured', row: 2 }],
    [file(`${SHORT},id`, '2026-01-05,A,press,-0.2,0.02,-0.2,7'), { code: 'not-an-id', row: 2, value: '7' }],
    [
      file(
        `${SHORT},id`,
        '2026-01-05,A,press,-0.2,0.02,-0.2,bcdfghjklmnpqr',
        '2026-01-05,A,press,-0.3,0.02,-0.2,bcdfghjklmnpqr',
      ),
      { code: 'same-id', row: 3, id: 'bcdfghjklmnpqr', otherRow: 2 },
    ],
  ])('refuses %j', (text, problem) => {
    expect(problemsOf(text)[0]).toMatchObject(problem);
  });

  it('gives all problems of a file, and none of its entries; of very many the first hundred and their number', () => {
    const text = file(SHORT, '2026-01-05,A,press,-0.2,0.02,-0.2', 'soon,,press,x,0.02,-0.2');
    const read = readLog(text);
    expect(read).not.toHaveProperty('entries');
    expect(problemsOf(text).map((problem) => 'column' in problem && problem.column)).toEqual([
      'measuredFrettedMm',
      'date',
      'neck',
    ]);
    const many = readLog(file(SHORT, ...Array.from({ length: 3000 }, () => 'soon,A,press,-0.2,0.02,-0.2')));
    expect(many).toMatchObject({ ok: false, count: 3000 });
    expect(many.ok ? 0 : many.problems.length).toBe(100);
  });

  it('a row that is there twice is read once', () => {
    const row = '2026-01-05,A,press,-0.2,0.02,-0.2';
    expect(entriesOf(file(SHORT, row, row))).toHaveLength(1);
  });
});

describe('many rows', () => {
  const MANY_ROWS = draw(MOST_ROWS);
  const row = (n: number) => `2026-01-05,N ${n},press,-0.2,0.02,-0.2`;
  const rows = (count: number) => file(SHORT, ...Array.from({ length: count }, (_, n) => row(n)));

  it(`${MANY_ROWS} are read, every one, and the reading tells how far it is`, () => {
    const told: number[] = [];
    const read = readLog(rows(MANY_ROWS), (share) => told.push(share));
    expect(read.ok && read.entries.length).toBe(MANY_ROWS);
    expect(told.length).toBeGreaterThan(MANY_ROWS / 1000);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
  }, 120_000);

  it('more are refused before any is looked at', () => {
    expect(problemsOf(rows(MOST_ROWS + 1))).toEqual([{ row: null, code: 'too-many-rows', most: MOST_ROWS }]);
  }, 60_000);
});
