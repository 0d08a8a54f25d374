/** How close an answer comes, in words; the planing table as a file. */
import { describe, expect, test } from 'vitest';
import { bandText, missText } from '../../../src/pages/answers/wanted/goal.ts';
import { settingText, torqueText, turnsText } from '../../../src/speech/rod.ts';
import { planingTable } from '../../../src/pages/answers/wanted/planing-table.ts';
import { shownTable } from '../../../src/speech/tables.ts';
import { csvText } from '../../../src/pages/papers/csv-file.ts';
import { usualTangs } from '../../../src/pages/answers/refret/refret-dialog.tsx';

describe('words', () => {
  test('a miss says which way, and nothing of what no gauge sees', () => {
    expect(missText(0.09, 'metric')).toBe('0.09\u00a0mm too much');
    expect(missText(-0.09, 'metric')).toBe('0.09\u00a0mm too little');
    expect(missText(0.0004, 'metric')).toBe('as wanted');
    expect(missText(-0.1, 'inch')).toBe('0.004\u00a0in too little');
  });

  test('a band names both ends where it goes from a hump to a hollow, and once where it does not', () => {
    expect(bandText({ p05: -0.1, p95: 0.2 }, 'metric')).toBe('0.10\u00a0mm back-bow to 0.20\u00a0mm relief');
    expect(bandText({ p05: 0.1, p95: 0.2 }, 'metric')).toBe('0.10 to 0.20\u00a0mm relief');
    expect(bandText({ p05: -0.2, p95: -0.1 }, 'metric')).toBe('0.10 to 0.20\u00a0mm back-bow');
    expect(bandText({ p05: 0, p95: 0.2 }, 'metric')).toBe('0.00 to 0.20\u00a0mm relief');
    expect(bandText({ p05: -0.001, p95: 0.001 }, 'metric')).toBe('flat');
  });

  test('a rod setting is said as a hand sets it, everywhere to the eighth of a turn and the per cent', () => {
    const nut = { percent: 10.3354, turns: 0.3874, way: 'clockwise', torqueNm: 0.4, torqueAtLimitNm: 4 } as const;
    expect(settingText(nut)).toBe('⅜\u00a0turn clockwise (10\u00a0%)');
    expect(settingText({ ...nut, percent: -12.04, turns: 1.49, way: 'anticlockwise' })).toBe(
      '1½\u00a0turns anticlockwise (−12\u00a0%)',
    );
    expect(turnsText(1.01)).toBe('1\u00a0turn');
    expect(turnsText(1.99)).toBe('2\u00a0turns');
    expect(turnsText(0.05)).toBe('less than ⅛\u00a0turn');
    expect(settingText({ ...nut, percent: 0, turns: 0, way: 'none' })).toBe('nut snug, not turned');
    expect(torqueText(nut)).toContain('0.4\u00a0N·m');
  });
});

test('the planing table is a CSV file with the key of each quantity in its header', () => {
  const table = planingTable({
    rows: [
      { fret: 1, xMm: 36.37, predictedMm: 0, wantedMm: 0, planeOffMm: 0.118 },
      { fret: 2, xMm: 70.7, predictedMm: -0.08, wantedMm: 0.05, planeOffMm: 0 },
    ],
  });
  expect(csvText(table).replace('\uFEFF', '').split('\r\n')).toEqual([
    'fret,fretXMm,lineReliefMm,wantedLineReliefMm,planeOffMm',
    '1,36.37,0,0,0.118',
    '2,70.7,-0.08,0.05,0',
    '',
  ]);
});

test('and on the page it is in the units of the page', () => {
  const table = planingTable({ rows: [{ fret: 1, xMm: 36.37, predictedMm: 0, wantedMm: 0, planeOffMm: 0.118 }] });
  expect(shownTable(table, 'metric')).toEqual({
    header: ['Fret', 'From the nut (mm)', 'Relief, board planed straight (mm)', 'Relief wanted (mm)', 'Plane off (mm)'],
    rows: [['1', '36.37', '0.00', '0.00', '0.12']],
  });
  expect(shownTable(table, 'inch').rows).toEqual([['1', '1.432', '0.000', '0.000', '0.005']]);
});

test('tangs to begin with: the one of the build, and some about the kerf that the build takes', () => {
  const tangs = usualTangs({ kerfMm: 0.58, tangWidthMm: 0.5, studWidthMm: 0.76 });
  expect(tangs[0]).toEqual({ tangWidthMm: 0.5, studWidthMm: 0.76 });
  expect(tangs).toContainEqual({ tangWidthMm: 0.605, studWidthMm: 0.865 });
  // 0.3 mm is the thinnest tang of the table.
  for (const { tangWidthMm, studWidthMm } of usualTangs({ kerfMm: 0.3, tangWidthMm: 0.3, studWidthMm: 0.5 })) {
    expect(tangWidthMm).toBeGreaterThanOrEqual(0.3);
    expect(studWidthMm).toBeGreaterThanOrEqual(tangWidthMm);
  }
});
