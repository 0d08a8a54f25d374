import { STANDARD_LAW } from '../../../src/mechanics/bench-log/law.ts';
import { describe, expect, it } from 'vitest';
import { byDate, type LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { compareEntries } from '../../../src/mechanics/bench-log/compare.ts';
import { isDate } from '../../../src/mechanics/bench-log/days.ts';
import { entryProblems } from '../../../src/mechanics/bench-log/entry-problems.ts';
import { contentHash, hashOfSet, isId, newId, withContentId } from '../../../src/mechanics/bench-log/identity.ts';
import { ENTRY } from './entries.ts';

const wrong = (change: Partial<LogEntry>) => entryProblems({ ...ENTRY, ...change });

describe('an entry', () => {
  it('is taken as it is when nothing is wrong', () => {
    expect(entryProblems(ENTRY)).toEqual([]);
    expect(wrong({ measuredStrungMm: null, predictedStrungMm: null, predictedStrungFretsMm: null })).toEqual([]);
    expect(wrong({ measuredFrettedMm: null, predictedFrettedMm: null })).toEqual([]);
  });

  it.each([
    [{ gaugeErrorMm: 0 }, { code: 'out-of-range', column: 'gaugeErrorMm', value: 0, min: 0.001, max: 0.5, unit: 'mm' }],
    [{ measuredFrettedMm: 7 }, { code: 'out-of-range', column: 'measuredFrettedMm', value: 7, min: -5, max: 5 }],
    [{ biteFactor: Number.NaN }, { code: 'no-number', column: 'biteFactor', value: 'NaN', min: 0.05, max: 20 }],
    [{ date: '2026-02-30' }, { code: 'not-a-day', column: 'date', value: '2026-02-30' }],
    [{ neck: '  ' }, { code: 'no-name', column: 'neck' }],
    [{ neck: 'n'.repeat(201) }, { code: 'text-too-long', column: 'neck', characters: 201, most: 200 }],
    [{ method: 'nailed' as never }, { code: 'not-an-option', column: 'method', value: 'nailed' }],
    [{ rod: 'tight' as never }, { code: 'not-an-option', column: 'rod', options: ['slack', 'snug'] }],
    [{ id: '12' }, { code: 'not-an-id', column: 'id', value: '12' }],
    [{ humidityPercent: 130 }, { code: 'out-of-range', column: 'humidityPercent', unit: '%' }],
    [{ predictedStrungMm: null }, { code: 'needed-with', column: 'predictedStrungMm', with: 'measuredStrungMm' }],
    [{ predictedStrungFretsMm: null }, { code: 'needed-with', column: 'predictedStrungFretsMm' }],
    [{ measuredFrettedMm: null, measuredStrungMm: null }, { code: 'nothing-measured' }],
  ] as const)('%j is refused, naming column, value and range', (change, problem) => {
    const problems = wrong(change);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ row: null, ...problem });
  });

  it('of a file names its row', () => {
    const [problem] = entryProblems({ ...ENTRY, gaugeErrorMm: 3 }, 7);
    expect(problem).toEqual({
      row: 7,
      code: 'out-of-range',
      column: 'gaugeErrorMm',
      value: 3,
      min: 0.001,
      max: 0.5,
      unit: 'mm',
    });
  });

  it('has a day that the calendar has', () => {
    for (const day of ['2024-02-29', '2026-12-31']) expect(isDate(day)).toBe(true);
    for (const day of ['2025-02-29', '2026-13-01', '2026-1-1', '14.02.2026', '']) expect(isDate(day)).toBe(false);
  });
});

describe('identity', () => {
  it('ids are drawn, never the same, and look like nothing that a spreadsheet mends', () => {
    const ids = new Set(Array.from({ length: 2000 }, newId));
    expect(ids.size).toBe(2000);
    for (const id of ids) {
      expect(isId(id)).toBe(true);
      expect(id).toMatch(/^[b-df-hj-np-tv-xz]{14}$/);
    }
  });

  it('the hash is of what is said: another number, text or day is another, the id and the order of keys are not', () => {
    const hash = contentHash(ENTRY);
    expect(hash).toMatch(/^[0-9a-f]{32}$/);
    const renamed: LogEntry = { ...ENTRY, id: newId() };
    expect(contentHash(renamed)).toBe(hash);
    expect(contentHash(Object.fromEntries(Object.entries(ENTRY).toReversed()) as unknown as LogEntry)).toBe(hash);
    const changes: Partial<LogEntry>[] = [
      { measuredFrettedMm: 0.24 },
      { measuredFrettedMm: null },
      { gaugeErrorMm: 0.021 },
      { neck: 'No. 41' },
      { date: '2026-02-15' },
      { method: 'both' },
      { rod: 'snug' },
      { wire: 'a' },
      { kerfMm: 0.58 },
    ];
    const hashes = [hash, ...changes.map((change) => contentHash({ ...ENTRY, ...change }))];
    expect(new Set(hashes).size).toBe(hashes.length);
    // What 15 digits of a spreadsheet lose says nothing.
    expect(contentHash({ ...ENTRY, measuredFrettedMm: -0.24 + 1e-15 })).toBe(hash);
  });

  it('an entry without an id gets the same one everywhere; another content another', () => {
    const { id: _id, ...content } = ENTRY;
    expect(withContentId(content).id).toBe(withContentId({ ...content }).id);
    expect(withContentId({ ...content, neck: 'B' }).id).not.toBe(withContentId(content).id);
  });

  it('a set has one hash whatever its order, another when one of it changes, goes or comes', () => {
    const list = ['A', 'B', 'C'].map((neck) => withContentId({ ...ENTRY, neck }));
    const hash = hashOfSet(list, STANDARD_LAW);
    expect(hashOfSet(list.toReversed(), STANDARD_LAW)).toBe(hash);
    expect(hashOfSet(list.slice(1), STANDARD_LAW)).not.toBe(hash);
    expect(hashOfSet([{ ...list[0], gaugeErrorMm: 0.03 }, ...list.slice(1)], STANDARD_LAW)).not.toBe(hash);
    expect(hashOfSet([{ ...list[0], id: newId() }, ...list.slice(1)], STANDARD_LAW)).not.toBe(hash);
    expect(hashOfSet(list, { ...STANDARD_LAW, studShape: 2 })).not.toBe(hash);
  });
});

describe('entries that come in', () => {
  const [a, b, c] = ['A', 'B', 'C'].map((neck) => withContentId({ ...ENTRY, neck })) as [LogEntry, LogEntry, LogEntry];

  it('are new, known, or say something else under an id that is there', () => {
    const other = { ...a, gaugeErrorMm: 0.05 };
    expect(compareEntries([a, b], [b, c, other])).toEqual({ fresh: [c], changed: [[a, other]], known: 1 });
  });

  it('that say the same under another id are known', () => {
    expect(compareEntries([a], [{ ...a, id: newId() }])).toEqual({ fresh: [], changed: [], known: 1 });
    const twice = { ...c, id: newId() };
    expect(compareEntries([a], [c, twice])).toEqual({ fresh: [c], changed: [], known: 1 });
  });

  it('stand in the order of their dates', () => {
    const late = { ...a, date: '2026-05-01' };
    const early = { ...b, date: '2025-12-31' };
    expect(byDate([late, c, early])).toEqual([early, c, late]);
  });
});
