/** What a device remembers of the lessons: each thing once, what is newer left alone, in a backup and back. */
import { describe, expect, test } from 'vitest';
import { lessonsPart } from '../../../src/state/backup/lessons-part.ts';
import {
  improvementOf,
  progressEntryOf,
  progressId,
  type GuessEntry,
  type ProgressEntry,
} from '../../../src/state/lessons/progress-entry.ts';
import {
  changedProgress,
  MOST_PROGRESS,
  PROGRESS_KEY,
  readableProgress,
} from '../../../src/state/lessons/progress-store.ts';
import { textStorage } from '../library/memory.ts';

const at = (minute: number) => `2026-05-04T10:${String(minute).padStart(2, '0')}:00.000Z`;
const guess = (minute: number, off: number): GuessEntry => ({
  kind: 'guess',
  lesson: 'strings',
  step: 'pull',
  at: at(minute),
  guess: 1 + off,
  truth: 1,
  scale: 2,
});
const ended: ProgressEntry = { kind: 'ended', lesson: 'strings', at: at(0) };
const achieved: ProgressEntry = { kind: 'achieved', lesson: 'strings', step: 'yours', at: at(1) };

describe('an entry', () => {
  test.each([ended, achieved, guess(2, 0.1)])('is read as it was written: %o', (entry) => {
    expect(progressEntryOf(JSON.parse(JSON.stringify(entry)))).toEqual(entry);
  });

  test.each([
    { ...ended, at: 'yesterday' },
    { ...ended, mark: 1 },
    { ...achieved, step: '' },
    { ...guess(2, 0), scale: 0 },
    { ...guess(2, 0), truth: null },
    { kind: 'mark', lesson: 'strings', at: at(0) },
    null,
  ])('that is none is not taken: %o', (value) => {
    expect(progressEntryOf(value)).toBeNull();
  });
});

describe('guesses', () => {
  test('fewer than six say nothing; of more the first stand beside the last, by the middle of each', () => {
    expect(improvementOf([0, 1, 2, 3, 4].map((minute) => guess(minute, 0.4)))).toBeNull();
    // Worked by hand: |1 + off − 1|/2 is 0.4, 0.3, 0.2 and then 0.1, 0.05, 0.02.
    const offs = [0.8, -0.6, 0.4, 0.2, -0.1, 0.04];
    const found = improvementOf([ended, ...offs.map((off, minute) => guess(minute, off)).toReversed()])!;
    expect(found.count).toBe(3);
    expect([found.firstShare, found.lastShare].map((share) => share.toFixed(4))).toEqual(['0.3000', '0.0500']);
  });
});

describe('the record', () => {
  test('holds each thing once, as it was at first, and what a later release wrote', () => {
    const later = { kind: 'badge', lesson: 'strings' };
    const record = changedProgress({ entries: [later, ended] }, [], [{ ...ended, at: at(9) }, achieved]);
    expect(record.entries).toEqual([later, ended, achieved]);
    expect(changedProgress(record, [ended], []).entries).toEqual([later, achieved]);
  });

  test('that is full lets the oldest guesses go, never what was achieved', () => {
    const guesses = Array.from({ length: MOST_PROGRESS }, (_, k) => ({ ...guess(0, 0), step: `s${k}` }));
    const { entries } = changedProgress({ entries: [achieved, ...guesses.slice(1)] }, [], [ended, guesses[0]]);
    expect(entries.length).toBe(MOST_PROGRESS);
    expect(entries[0]).toEqual(achieved);
    expect(entries[1]).toEqual(guesses[3]);
  });

  test('goes into a backup and comes back beside what is here; taken back it is as it was', async () => {
    const from = textStorage();
    from.setItem(PROGRESS_KEY, JSON.stringify({ version: 1, entries: [ended, achieved, { kind: 'badge' }] }));
    const saved = await lessonsPart(() => from).save();
    expect(saved).toMatchObject({ count: 2, leftOut: 1, trouble: null });
    const to = textStorage();
    const before = JSON.stringify({ version: 1, entries: [{ ...ended, at: at(5) }] });
    to.setItem(PROGRESS_KEY, before);
    const checked = lessonsPart(() => to).check(JSON.parse(JSON.stringify(saved.value)));
    if (!checked.ok) throw new Error(checked.fault.code);
    expect(await checked.foresee()).toMatchObject({ fresh: 1, stays: 0, known: 1 });
    const { takeBack } = await checked.add();
    const entries = (JSON.parse(to.getItem(PROGRESS_KEY)!) as { entries: unknown[] }).entries;
    expect(readableProgress({ entries }).map(progressId)).toEqual([ended, achieved].map(progressId));
    await takeBack();
    expect(to.getItem(PROGRESS_KEY)).toBe(before);
  });

  test('of a newer release is not written over', async () => {
    const texts = textStorage();
    texts.setItem(PROGRESS_KEY, JSON.stringify({ version: 2, entries: [] }));
    expect(await lessonsPart(() => texts).save()).toMatchObject({ count: 0, trouble: 'newer' });
  });
});
