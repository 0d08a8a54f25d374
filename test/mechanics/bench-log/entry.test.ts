import { describe, expect, it } from 'vitest';
import { entryProblems, isDate, mergeEntries, type LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { ENTRY } from './entries.ts';

const wrong = (change: Partial<LogEntry>) => entryProblems({ ...ENTRY, ...change });

describe('an entry', () => {
  it('is taken as it is when nothing is wrong', () => {
    expect(entryProblems(ENTRY)).toEqual([]);
    expect(wrong({ measuredStrungMm: null, predictedStrungMm: null, predictedStrungFretsMm: null })).toEqual([]);
    expect(wrong({ measuredFrettedMm: null, predictedFrettedMm: null })).toEqual([]);
  });

  it.each([
    [{ gaugeErrorMm: 0 }, 'out-of-range', 'gauge error', /gauge error is 0 mm; it takes 0\.001 to 0\.5 mm/],
    [{ measuredFrettedMm: 7 }, 'out-of-range', 'measured with frets in', /is 7 mm; it takes -5 to 5 mm/],
    [{ biteFactor: Number.NaN }, 'wrong-type', 'bite factor used', /is NaN; it takes a number, 0\.05 to 20\./],
    [{ date: '2026-02-30' }, 'wrong-type', 'date', /“2026-02-30”; it takes a day as yyyy-mm-dd/],
    [{ neck: '  ' }, 'missing', 'neck', /neck has no name/],
    [{ neck: 'n'.repeat(201) }, 'out-of-range', 'neck', /name of 201 characters; it takes at most 200/],
    [{ method: 'nailed' as never }, 'not-an-option', 'method', /“nailed”; it takes one of: press, glue, both/],
    [{ predictedStrungMm: null }, 'missing', 'predicted strung', /needed with “measured strung”/],
    [{ predictedStrungFretsMm: null }, 'missing', 'predicted strung, part of the frets', /needed with/],
    [{ measuredFrettedMm: null, measuredStrungMm: null }, 'missing', 'measured with frets in', /nothing was measured/],
  ] as const)('%j is refused, naming column, value and range', (change, code, column, message) => {
    const problems = wrong(change as Partial<LogEntry>);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ code, column, row: null });
    expect(problems[0]!.message).toMatch(message);
  });

  it('of a file names its row', () => {
    const [problem] = entryProblems({ ...ENTRY, gaugeErrorMm: 3 }, 7);
    expect(problem).toMatchObject({ row: 7, value: 3, min: 0.001, max: 0.5, unit: 'mm' });
    expect(problem!.message).toMatch(/^Row 7: gauge error is 3 mm/);
  });

  it('has a day that the calendar has', () => {
    for (const day of ['2024-02-29', '2026-12-31']) expect(isDate(day)).toBe(true);
    for (const day of ['2025-02-29', '2026-13-01', '2026-1-1', '14.02.2026', '']) expect(isDate(day)).toBe(false);
  });
});

it('lists are merged without doubles, by date', () => {
  const later = { ...ENTRY, date: '2026-05-01', neck: 'No. 42' };
  const corrected = { ...ENTRY, measuredFrettedMm: -0.25 };
  expect(mergeEntries([later, ENTRY], [{ ...ENTRY }, corrected])).toEqual([ENTRY, corrected, later]);
});
