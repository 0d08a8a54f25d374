/** A blank that is measured: empty until somebody has measured it, and of no effect until all of it is measured. */
import { describe, expect, it, test } from 'vitest';
import { blankIds, blankOf, BLANK_PARTS, choosingTest, countedTest, spanProblem } from '../../src/neck/blanks.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { readProject, writeProject } from '../../src/neck/file.ts';
import { checkBuild } from '../../src/neck/schema.ts';

const chosen = (part: 'neck' | 'board', test_: 'tap' | 'sag', build: Build = defaultBuild()): Build => ({
  ...build,
  ...choosingTest(build, part, test_),
});

describe.each(BLANK_PARTS)('the blank of the %s', (part) => {
  it.each(['tap', 'sag'] as const)('%s: starts with every field empty, and is of no effect', (how) => {
    const build = chosen(part, how);
    expect(build[`${part}BlankTest`]).toBe(how);
    expect(blankIds(part, how).map((id) => build[id])).toEqual(blankIds(part, how).map(() => null));
    expect(blankOf(build, part)).toEqual({ state: 'incomplete', test: how, missing: blankIds(part, how) });
    expect(countedTest(build, part)).toBe('none');
    expect(checkBuild(build).ok).toBe(true);
  });

  it('a file holds what is not measured yet, and brings it back', () => {
    const build = { ...chosen(part, 'sag'), [`${part}BlankWidthMm`]: 61.5 };
    const read = readProject(writeProject(build));
    expect(read).toEqual({ ok: true, build });
    expect(blankOf(build, part)).toMatchObject({ state: 'incomplete', missing: { length: 5 } });
  });

  it('what was entered stays when the test is switched off and on, or to the other one', () => {
    const entered = { ...chosen(part, 'sag'), [`${part}BlankWidthMm`]: 61.5, [`${part}BlankLengthMm`]: 601 } as Build;
    const off = { ...entered, ...choosingTest(entered, part, 'none') };
    const on = chosen(part, 'tap', off);
    for (const build of [off, on, chosen(part, 'tap', entered)]) {
      expect([build[`${part}BlankWidthMm`], build[`${part}BlankLengthMm`]]).toEqual([61.5, 601]);
    }
    expect(on[`${part}BlankThicknessMm`]).toBeNull();
  });

  it('counts when the last number is there', () => {
    let build = chosen(part, 'tap');
    for (const id of blankIds(part, 'tap')) {
      expect(countedTest(build, part)).toBe('none');
      build = { ...build, [id]: defaultBuild()[id] };
    }
    expect(countedTest(build, part)).toBe('tap');
  });
});

test('a number of the other test may be missing', () => {
  const build = { ...defaultBuild(), neckBlankTest: 'tap' as const, neckBlankSagMm: null };
  expect(blankOf(build, 'neck')).toMatchObject({ state: 'whole', test: 'tap' });
});

test('only numbers of a blank may be empty', () => {
  const refused = checkBuild({ ...defaultBuild(), kerfMm: null });
  expect(refused).toMatchObject({ ok: false, problems: [{ parameter: 'kerfMm', code: 'wrong-type' }] });
});

test('a span longer than the blank is a problem of whichever is entered', () => {
  const build = { ...defaultBuild(), neckBlankTest: 'sag' as const, neckBlankLengthMm: 500, neckBlankSpanMm: 500.5 };
  expect(spanProblem(build, 'neckBlankSpanMm')).toMatchObject({ value: 500.5, max: 500, unit: 'mm' });
  expect(spanProblem(build, 'neckBlankLengthMm')).toMatchObject({ value: 500, min: 500.5 });
  expect(spanProblem({ ...build, neckBlankSpanMm: 500 }, 'neckBlankSpanMm')).toBeUndefined();
  expect(spanProblem({ ...build, neckBlankSpanMm: null }, 'neckBlankLengthMm')).toBeUndefined();
  expect(spanProblem({ ...build, neckBlankTest: 'tap' }, 'neckBlankSpanMm')).toBeUndefined();
  // Files of earlier releases may hold one; they open.
  expect(checkBuild(build).ok).toBe(true);
});
