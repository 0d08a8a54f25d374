/** From what is typed to an entry of the log, or to the reasons why not; the log as a file. */
import { describe, expect, test } from 'vitest';
import { BYTE_ORDER_MARK } from '../../../src/neck/csv.ts';
import { writeLog } from '../../../src/mechanics/bench-log/csv.ts';
import { ORDINARY_SCATTER } from '../../../src/mechanics/bench-log/entry.ts';
import type { PredictedPart } from '../../../src/mechanics/bench-log/predicted.ts';
import { draftText, entryOf, type EntryDraft } from '../../../src/pages/log/entry-draft.ts';
import { freshEntries } from '../../../src/pages/log/log-file.ts';
import { expectNear } from '../../expect-near.ts';
import { entry } from '../../state/bench-log/entries.ts';

const PREDICTED: PredictedPart = {
  predictedFrettedMm: -0.21,
  predictedFrettedFretsMm: -0.21,
  predictedStrungMm: 0.11,
  predictedStrungFretsMm: -0.2,
  biteFactor: 1,
  ...ORDINARY_SCATTER,
};
const DRAFT: EntryDraft = {
  date: '2026-05-04',
  neck: 'Number 12',
  method: 'press',
  measuredFrettedMm: '-0.28',
  measuredStrungMm: '',
  gaugeErrorMm: '0.02',
  days: '0',
};
const made = (change: Partial<EntryDraft>, system: 'metric' | 'inch' = 'metric') =>
  entryOf({ ...DRAFT, ...change }, () => PREDICTED, system);
const problems = (change: Partial<EntryDraft>, system: 'metric' | 'inch' = 'metric') => {
  const result = made(change, system);
  return result.ok ? [] : result.problems;
};

describe('an entry that is typed', () => {
  test('keeps what was predicted for what was measured, and nothing for what was not', () => {
    const result = made({});
    expect(result).toMatchObject({
      ok: true,
      entry: { measuredFrettedMm: -0.28, predictedFrettedMm: -0.21, measuredStrungMm: null, predictedStrungMm: null },
    });
  });

  test('takes a true minus, a comma, a unit of its own, and inches', () => {
    const fretted = (text: string, system: 'metric' | 'inch' = 'metric') => {
      const result = made({ measuredFrettedMm: text, ...(system === 'inch' ? { gaugeErrorMm: '0.001' } : {}) }, system);
      if (!result.ok) throw new Error(result.problems.join(' '));
      return result.entry.measuredFrettedMm!;
    };
    expect(fretted('−0,28')).toBe(-0.28);
    expectNear(fretted('-11 thou'), -0.2794, 1e-9, '1 in = 25.4 mm exactly');
    expectNear(fretted('-0.011', 'inch'), -0.2794, 1e-9, '1 in = 25.4 mm exactly');
  });

  test('asks for the days since stringing at which a strung neck was measured', () => {
    const days: number[] = [];
    entryOf({ ...DRAFT, measuredStrungMm: '0.1', days: '14' }, (at) => (days.push(at), PREDICTED), 'metric');
    expect(days).toEqual([14]);
    expect(problems({ measuredStrungMm: '0.1', days: '' }).join(' ')).toMatch(/days since it was strung is empty/);
  });

  test.each([
    [
      'no number',
      { measuredFrettedMm: 'a hair' },
      /“a hair” is no number for measured with frets in: it takes −5 to 5/,
    ],
    ['far too much', { measuredFrettedMm: '7' }, /7\.00\u00a0mm for measured with frets in: it takes −5 to 5/],
    ['no gauge error', { gaugeErrorMm: '' }, /is empty; it takes 0\.001 to 0\.5/],
    ['nothing measured', { measuredFrettedMm: '' }, /nothing was measured/],
    ['no day', { date: '' }, /takes a day/],
    ['no name', { neck: ' ' }, /no name/],
  ])('is refused with the reason: %s', (_why, change, message) => {
    expect(problems(change).join(' ')).toMatch(message);
  });

  test('says ranges in inches to whoever reads inches', () => {
    expect(problems({ measuredFrettedMm: '1', gaugeErrorMm: '0.001' }, 'inch').join(' ')).toMatch(
      /1\.0000\u00a0in .*−0\.1968 to 0\.1968\u00a0in/,
    );
  });

  test('goes back into the form as it was typed', () => {
    expect([draftText('measuredFrettedMm', -0.28, 'metric'), draftText('measuredStrungMm', null, 'metric')]).toEqual([
      '−0.28',
      '',
    ]);
  });
});

describe('the log as a file', () => {
  test('comes back from a file with the mark that spreadsheets want', () => {
    const file = BYTE_ORDER_MARK + writeLog([entry('A'), entry('Ä, second')]);
    expect(freshEntries(file, 'log.csv', [], 'metric')).toEqual({ ok: true, fresh: [entry('A'), entry('Ä, second')] });
  });

  test('brings in only what is not there yet', () => {
    const file = writeLog([entry('A'), entry('B'), entry('B')]);
    expect(freshEntries(file, 'log.csv', [entry('A')], 'metric')).toEqual({ ok: true, fresh: [entry('B')] });
  });

  test('is refused row by row, and not at endless length', () => {
    const rows = Array.from({ length: 30 }, () => '2026-13-01,A,press,-0.2,0.02,-0.2');
    const text = [
      'date,neck,method,measured with frets in (mm),gauge error (mm),predicted with frets in (mm)',
      ...rows,
    ];
    const refused = freshEntries(text.join('\n'), 'log.csv', [], 'metric');
    expect(refused).toMatchObject({ ok: false, file: 'log.csv' });
    const lines = refused.ok ? [] : refused.lines;
    expect(lines).toHaveLength(13);
    expect(lines[0]).toMatch(/^Row 2: date is “2026-13-01”/);
    expect(lines.at(-1)).toBe('and 18 more');
  });
});
