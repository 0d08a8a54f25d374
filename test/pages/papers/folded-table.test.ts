import { expect, test } from 'vitest';
import type { Table } from '../../../src/fretwork/plan/tables.ts';
import { foldTable } from '../../../src/pages/papers/folded-table.ts';

const TABLE: Table = {
  id: 'slots',
  columns: ['fret', 'fretXMm', 'kerfMm', 'slotEnds', 'glueVolumeMm3', 'crownMeasuredMm'],
  rows: [
    [1, 36.366, 0.58, 'open', null, null],
    [2, 70.696, 0.58, 'open', null, null],
  ],
};

test('says once what is alike in all rows, with its unit; leaves empty columns out; keeps what is filled in by hand', () => {
  const folded = foldTable(TABLE, 'metric');
  expect(folded.columns.map(({ id, kind }) => [id, kind])).toEqual([
    ['fret', 'number'],
    ['fretXMm', 'number'],
    ['crownMeasuredMm', 'blank'],
  ]);
  expect(folded.rows).toEqual([
    ['1', '36.37', ''],
    ['2', '70.70', ''],
  ]);
  expect(folded.common).toEqual([
    { label: 'Kerf', text: '0.580\u00a0mm' },
    { label: 'Slot ends', text: 'open' },
  ]);
  expect(folded.columns[1].header).toBe('From the nut (mm)');
});

test('speaks in inches', () => {
  const folded = foldTable(TABLE, 'inch');
  expect(folded.rows[0][1]).toBe('1.432');
  expect(folded.common[0].text).toBe('0.0228\u00a0in');
});

test('keeps what it is asked to keep and drops what it is asked to drop', () => {
  const folded = foldTable(TABLE, 'metric', { keep: ['kerfMm'], without: ['slotEnds', 'crownMeasuredMm'] });
  expect(folded.columns.map(({ id }) => id)).toEqual(['fret', 'fretXMm', 'kerfMm']);
  expect(folded.common).toEqual([]);
});

test('one row is not folded away: there is nothing that it is like', () => {
  const folded = foldTable({ ...TABLE, rows: TABLE.rows.slice(0, 1) }, 'metric');
  expect(folded.columns.map(({ id }) => id)).toEqual(['fret', 'fretXMm', 'kerfMm', 'slotEnds', 'crownMeasuredMm']);
});

test('values that differ by less than what is printed count as alike', () => {
  const rows = TABLE.rows.map(([fret, x, , ends, glue, measured], index) => [
    fret,
    x,
    0.58 + 1e-7 * index,
    ends,
    glue,
    measured,
  ]);
  expect(foldTable({ ...TABLE, rows }, 'metric').common[0]).toEqual({ label: 'Kerf', text: '0.580\u00a0mm' });
});
