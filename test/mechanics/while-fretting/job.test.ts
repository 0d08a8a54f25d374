/** What is in, what is to come, and what was read between. */
import { describe, expect, test } from 'vitest';
import { defaultBuild, slotAndTang } from '../../../src/neck/build.ts';
import { seatingSequence } from '../../../src/fretwork/plan/seating-order.ts';
import { inOrder, readNeckOf, splitAt, withRest } from '../../../src/mechanics/while-fretting/job.ts';

const NECK = defaultBuild();
const at = (seated: number, measuredMm: number) => ({ seated, measuredMm, errorMm: 0.02 });

describe('a job while its frets go in', () => {
  test('frets that are in and those to come are all frets, in the order of seating', () => {
    const { seated, rest } = splitAt(NECK, 7);
    expect(seated).toHaveLength(7);
    expect([...seated, ...rest]).toEqual(seatingSequence(NECK));
  });

  test('of two readings after the same fret the later one counts, whatever the order they came in', () => {
    expect(inOrder([at(11, -0.1), at(5, -0.04), at(11, -0.12)])).toEqual([at(5, -0.04), at(11, -0.12)]);
  });

  test('every fret is in one group: those between readings, and those to come', () => {
    const { quarters, readings } = readNeckOf(NECK, [at(5, -0.04), at(8, -0.06)]);
    expect(quarters!.map((frets) => frets.length)).toEqual([5, 3, NECK.fretCount - 8]);
    expect(quarters!.flat()).toEqual(seatingSequence(NECK));
    expect(readings).toHaveLength(2);
  });

  test('with all frets in there are none to come', () => {
    expect(readNeckOf(NECK, [at(NECK.fretCount, -0.15)]).quarters).toEqual([seatingSequence(NECK)]);
  });

  test('a reading of the bare board tells nothing of the frets', () => {
    expect(readNeckOf(NECK, [at(0, 0)]).readings).toEqual([]);
  });

  test('the rest is seated otherwise, what is in stays as it is, and later changes go before earlier ones', () => {
    const { seated, rest } = splitAt(NECK, 7);
    const wider = withRest(NECK, rest, { code: 'kerf', kerfMm: 0.64 });
    const fatter = withRest(wider, rest.slice(4), { code: 'wire', tangWidthMm: 0.5, studWidthMm: 0.82 });
    for (const fret of seated) expect(slotAndTang(fatter, fret)).toMatchObject({ kerfMm: NECK.kerfMm });
    for (const fret of rest) expect(slotAndTang(fatter, fret)).toMatchObject({ kerfMm: 0.64 });
    expect(slotAndTang(fatter, rest[3])).toMatchObject({ studWidthMm: NECK.studWidthMm });
    expect(slotAndTang(fatter, rest[4])).toMatchObject({ studWidthMm: 0.82, tangWidthMm: 0.5 });
    expect(withRest(NECK, rest, { code: 'go-on' })).toBe(NECK);
  });
});
