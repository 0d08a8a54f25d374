/** From what is tapped at the bench to a reading; and from a job to its screens. */
import { describe, expect, test } from 'vitest';
import { MM_PER_INCH } from '../../../src/neck/units.ts';
import { draftAfter, leavesOf, readingOf } from '../../../src/pages/bench/reading-draft.ts';
import { placeIn, screensOf } from '../../../src/pages/bench/screens.ts';
import { MOST_READING_NOTE } from '../../../src/state/jobs/job-document.ts';
import { withRestChange } from '../../../src/state/jobs/job-changes.ts';
import { expectNear } from '../../expect-near.ts';
import { aJob, aReading } from '../../state/jobs/a-job.ts';

const NOW = 1_700_000_000_000;

describe('a reading', () => {
  const draft = draftAfter(6, undefined);

  test('says what is missing, one thing after the other', () => {
    expect(readingOf(draft, NOW)).toBe('size');
    expect(readingOf({ ...draft, sizeMm: 0.1 }, NOW)).toBe('way');
    expect(readingOf({ ...draft, sizeMm: 0.1, way: 'hump', instrument: 'own' }, NOW)).toBe('error');
    const wordy = { ...draft, sizeMm: 0.1, way: 'hump', note: 'x'.repeat(MOST_READING_NOTE + 1) } as const;
    expect(readingOf(wordy, NOW)).toBe('note');
  });

  test('a hump is negative, a hollow positive, and flat has no way', () => {
    const given = { ...draft, sizeMm: 0.1, note: ' damp day ' };
    const shared = { seated: 6, errorMm: 0.02, instrument: 'feelers', note: 'damp day', isSure: false, at: NOW };
    expect(readingOf({ ...given, way: 'hump' }, NOW)).toEqual({ ...shared, measuredMm: -0.1 });
    expect(readingOf({ ...given, way: 'hollow' }, NOW)).toEqual({ ...shared, measuredMm: 0.1 });
    expect(readingOf({ ...given, sizeMm: 0 }, NOW)).toEqual({ ...shared, measuredMm: 0 });
  });

  test('the next one is taken with the same instrument', () => {
    expect(draftAfter(11, aReading(6, -0.1, { instrument: 'own', errorMm: 0.005 }))).toMatchObject({
      seated: 11,
      sizeMm: null,
      way: null,
      instrument: 'own',
      ownErrorMm: 0.005,
    });
  });

  test('leaves are hundredths of a millimetre, or thousandths of an inch', () => {
    expect(leavesOf('metric')).toContain(0.15);
    for (const mm of leavesOf('inch')) {
      const thou = (mm / MM_PER_INCH) * 1000;
      expectNear(thou, Math.round(thou), 1e-12, 'whole thousandths, but for rounding');
    }
  });
});

describe('screens', () => {
  const ids = async (...of: Parameters<typeof aJob>) => screensOf(await aJob(...of)).map(({ id }) => id);

  test('of a press fit: after each quarter the straightedge, and what was read at the end', async () => {
    const all = await ids({ method: 'press' });
    const seating = ['seat-1', 'read-1', 'seat-2', 'read-2', 'seat-3', 'read-3', 'seat-4', 'read-4'];
    expect(all.slice(all.indexOf('seat-1'), all.indexOf('read-4') + 1)).toEqual(seating);
    expect(all.at(0)).toBe('level-board');
    expect(all.at(-1)).toBe('done');
    expect(all).not.toContain('straightedge');
    expect(new Set(all).size).toBe(all.length);
  });

  test.each([
    ['a glue fit', { method: 'glue' }],
    ['a board that is fretted by itself', { workOrder: 'board-first' }],
  ] as const)('of %s: nothing to read', async (_name, change) => {
    const all = await ids(change);
    expect(all.filter((id) => id.startsWith('read-'))).toEqual([]);
    expect(all.filter((id) => id.startsWith('seat-'))).toHaveLength(4);
  });

  test('a place that is gone is the beginning', async () => {
    const screens = screensOf(await aJob());
    expect(placeIn(screens, 'seat-2')).toBe(screens.findIndex(({ id }) => id === 'seat-2'));
    expect(placeIn(screens, 'straightedge')).toBe(0);
  });

  test('a kerf that was changed for the rest is in the numbers of the steps', async () => {
    const job = withRestChange(6, { code: 'kerf', kerfMm: 0.66 }, NOW)(await aJob());
    const gauge = screensOf(job).find(({ id }) => id === 'gauge')!;
    expect(gauge).toMatchObject({ kind: 'step' });
    expect(JSON.stringify(gauge)).toContain('"value":0.66');
  });
});
