/** @vitest-environment happy-dom */
/** What is on the bench survives a reload and a crash; tabs keep their own; a device that refuses is told about. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { writeProject } from '../../../src/neck/file.ts';
import { createJournal, MOST_LEFT, TOLD_AT_ONCE } from '../../../src/state/journal/journal.ts';
import { latestOf, MOST_STANDINGS, readStanding, type NeckRecord } from '../../../src/state/journal/record.ts';
import { always, device, type Page } from './device.ts';
import { textStorage } from '../library/memory.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const STANDARD = PRESETS[0].label;

function nameIn(record: NeckRecord): string {
  const read = readStanding(latestOf(record));
  return read.ok ? read.build.name : '';
}

const place = ({ store }: Page, name: string) => store.getState().replaceBuild({ ...PRESETS[1].build, name }, 'Open');

const leftNames = async ({ keeper }: Page) => (await keeper.left()).map(({ record }) => nameIn(record));

describe.each([
  ['a secure address', true],
  ['plain HTTP', false],
])('the bench on %s', (_where, isSecure) => {
  test('is as it was after a reload, with a notice, and undo starts afresh', async () => {
    const here = device(isSecure);
    const tab = here.newTab();
    const before = await here.page(tab);
    before.change('Half done');
    before.close();
    const after = await here.page(tab);
    expect(after.name()).toBe('Half done');
    expect(after.notices()[0]).toContain('“Half done” is back on the bench as you left it');
    after.store.getState().undo();
    expect(after.name()).toBe(STANDARD);
    expect(await leftNames(after)).toEqual(['Half done']);
    after.close();
  });

  test('is as it was in a new window after the last one was closed, and moves along', async () => {
    const here = device(isSecure);
    const before = await here.page(here.newTab());
    before.change('Half done');
    before.close();
    const after = await here.page(here.newTab());
    expect(after.name()).toBe('Half done');
    expect(createJournal(here.local).all().map(nameIn)).toEqual(['Half done']);
    expect(await leftNames(after)).toEqual([]);
    after.close();
  });

  test('says nothing and restores nothing where nothing was changed', async () => {
    const here = device(isSecure);
    const tab = here.newTab();
    (await here.page(tab)).close();
    const after = await here.page(tab);
    expect(after.notices()).toEqual([]);
    expect(after.store.getState().history.past).toEqual([]);
    expect(here.local().length).toBe(0);
    after.close();
  });

  test('is written a moment after a change, without waiting for the page to close', async () => {
    const here = device(isSecure);
    const page = await here.page(here.newTab());
    page.change('Written');
    vi.advanceTimersByTime(1000);
    expect(createJournal(here.local).all().map(nameIn)).toEqual(['Written']);
    page.close();
  });

  test('does not take what another open window has in hand', async () => {
    const here = device(isSecure);
    const [firstTab, secondTab] = [here.newTab(), here.newTab()];
    const first = await here.page(firstTab);
    first.change('In hand');
    vi.advanceTimersByTime(1000);
    const second = await here.page(secondTab);
    expect(second.name()).toBe(STANDARD);
    expect(await leftNames(second)).toEqual([]);
    second.change('Second');
    second.close();
    first.close();
    const [firstAgain, secondAgain] = [await here.page(firstTab), await here.page(secondTab)];
    expect([firstAgain.name(), secondAgain.name()]).toEqual(['In hand', 'Second']);
    firstAgain.close();
    secondAgain.close();
  });

  test('of a duplicated tab goes on as a copy: neither tab sees what the other does', async () => {
    const here = device(isSecure);
    const tab = here.newTab();
    const one = await here.page(tab);
    one.change('Original');
    vi.advanceTimersByTime(1000);
    const copyTab = here.duplicate(tab);
    const copy = await here.page(copyTab);
    expect(copy.name()).toBe('Original');
    copy.change('Copy');
    vi.advanceTimersByTime(1000);
    one.store.getState().change({ kerfMm: 0.61 }, 'Kerf');
    copy.close();
    one.close();
    const [oneAgain, copyAgain] = [await here.page(tab), await here.page(copyTab)];
    expect([oneAgain.name(), oneAgain.store.getState().build.kerfMm]).toEqual(['Original', 0.61]);
    expect(copyAgain.name()).toBe('Copy');
    oneAgain.close();
    copyAgain.close();
  });

  test('leaves others’ work alone when a link is about to be opened', async () => {
    const here = device(isSecure);
    const one = await here.page(here.newTab());
    one.change('Waiting');
    one.close();
    const two = await here.page(here.newTab(), false);
    expect(two.name()).toBe(STANDARD);
    expect(await leftNames(two)).toEqual(['Waiting']);
    two.close();
  });

  test('leaves each neck that another one replaced where it is found after a reload, with what replaced it', async () => {
    const here = device(isSecure);
    const tab = here.newTab();
    const page = await here.page(tab);
    page.change('First');
    place(page, 'Second');
    page.store.getState().change({ kerfMm: 0.61 }, 'Kerf');
    place(page, 'Third');
    page.kill();
    const after = await here.page(tab);
    expect(after.name()).toBe('Third');
    const left = await after.keeper.left();
    expect(left.map(({ record }) => [nameIn(record), record.left?.for])).toEqual(
      expect.arrayContaining([
        ['First', 'Second'],
        ['Second', 'Third'],
      ]),
    );
    after.close();
  });

  test('takes a neck that undo brings back out of the necks that were left, and leaves the other one there', async () => {
    const here = device(isSecure);
    const page = await here.page(here.newTab());
    page.change('First');
    place(page, 'Second');
    expect(await leftNames(page)).toEqual(['First']);
    page.store.getState().undo();
    expect(await leftNames(page)).toEqual(['Second']);
    page.store.getState().redo();
    expect(await leftNames(page)).toEqual(['First']);
    page.close();
  });

  test('keeps how a neck came, how work on it paused, and how it is', async () => {
    const here = device(isSecure);
    const tab = here.newTab();
    let page = await here.page(tab);
    place(page, 'Came');
    for (const name of ['Changed', 'Changed at once', 'Paused']) {
      page.change(name);
      vi.advanceTimersByTime(1000);
    }
    here.wait(3600_000);
    page.change('An hour later');
    page.close();
    page = await here.page(tab);
    page.change('After a reload');
    vi.advanceTimersByTime(1000);
    const names = page.keeper
      .current()!
      .standings.map(readStanding)
      .map((read) => read.ok && read.build.name);
    expect(names).toEqual(['Came', 'Paused', 'An hour later', 'After a reload']);
    for (let at = 0; at < 20; at += 1) {
      here.wait(3600_000);
      page.change(`Hour ${at}`);
      vi.advanceTimersByTime(1000);
    }
    const { standings } = page.keeper.current()!;
    expect(standings.length).toBe(MOST_STANDINGS);
    expect(readStanding(standings[0])).toMatchObject({ build: { name: 'Came' } });
    page.close();
  });

  test('forgets presets that nobody touched', async () => {
    const here = device(isSecure);
    const tab = here.newTab();
    const page = await here.page(tab);
    for (const { build } of PRESETS) page.store.getState().replaceBuild(build, 'Start from');
    expect(await leftNames(page)).toEqual([]);
    page.close();
    const after = await here.page(tab);
    expect(after.name()).toBe(PRESETS.at(-1)!.label);
    after.close();
  });

  test('lets the oldest of very many go, and only after it was told', async () => {
    const here = device(isSecure);
    const page = await here.page(here.newTab());
    const told = () => page.notices().filter((text) => text.startsWith('Many necks')).length;
    const counts: number[] = [];
    const wentUntold: number[] = [];
    for (let at = 0; at < MOST_LEFT + 15; at += 1) {
      place(page, `Neck ${at}`);
      // Those that were left, and the one on the bench.
      counts.push(here.local().length - 1);
      if (counts.at(-1)! < at && told() === 0) wentUntold.push(at);
    }
    expect(wentUntold).toEqual([]);
    expect(page.store.getState().notices.at(-1)!.details.length).toBe(TOLD_AT_ONCE);
    expect(Math.max(...counts)).toBe(MOST_LEFT);
    const left = await leftNames(page);
    expect([left.length, left.includes('Neck 13'), left.includes('Neck 14')]).toEqual([MOST_LEFT, false, true]);
    page.close();
  });
});

test('after a crash on plain HTTP a new window does not guess: it says where to look', async () => {
  const here = device(false);
  const one = await here.page(here.newTab());
  one.change('Crashed');
  vi.advanceTimersByTime(1000);
  one.kill();
  const two = await here.page(here.newTab());
  expect(two.name()).toBe(STANDARD);
  expect(two.notices()).toEqual([expect.stringContaining('Left on the bench')]);
  expect((await two.keeper.left()).map(({ record, mayBeOpen }) => [nameIn(record), mayBeOpen])).toEqual([
    ['Crashed', true],
  ]);
  two.close();
});

test('after a crash on a secure address a new window brings the neck back', async () => {
  const here = device(true);
  const one = await here.page(here.newTab());
  one.change('Crashed');
  vi.advanceTimersByTime(1000);
  one.kill();
  const two = await here.page(here.newTab());
  expect(two.name()).toBe('Crashed');
  two.close();
});

test('a lesson on the bench is no neck of its own', async () => {
  const here = device(true);
  const page = await here.page(here.newTab());
  page.change('Mine');
  const { beginLesson, placeLessonBuild, endLesson } = page.store.getState();
  beginLesson('any');
  placeLessonBuild({ ...PRESETS[1].build, name: 'Lesson' });
  vi.advanceTimersByTime(1000);
  expect(createJournal(here.local).all().map(nameIn)).toEqual(['Mine']);
  endLesson();
  expect(await leftNames(page)).toEqual([]);
  page.close();
});

test('what an earlier release kept comes back once', async () => {
  const here = device(true);
  here
    .local()
    .setItem(
      'backbow.draft.abc',
      JSON.stringify({ savedAt: 5, project: writeProject({ ...PRESETS[2].build, name: 'Old' }) }),
    );
  const page = await here.page(here.newTab());
  expect(page.name()).toBe('Old');
  expect(here.local().getItem('backbow.draft.abc')).toBeNull();
  expect(createJournal(here.local).all().map(nameIn)).toEqual(['Old']);
  page.close();
});

describe('a device', () => {
  test('that is full is told about once, and the page goes on', async () => {
    const here = device(true, always(textStorage(100)));
    const one = await here.page(here.newTab());
    one.change('Too much');
    vi.advanceTimersByTime(1000);
    one.change('Still too much');
    vi.advanceTimersByTime(1000);
    expect(one.notices()).toEqual([expect.stringContaining('There is no room left on this device')]);
    expect(one.name()).toBe('Still too much');
    one.close();
  });

  test('that is full lets go what it told of before, and how a neck was before how it is', async () => {
    const kept = textStorage(20_000);
    const here = device(true, always(kept));
    const page = await here.page(here.newTab());
    for (let at = 0; at < 3; at += 1) place(page, `Neck ${at}`);
    const journal = createJournal(here.local);
    const [oldest] = journal
      .all()
      .filter(({ left }) => left !== null)
      .toReversed();
    journal.write({ ...oldest, toldAt: 1 });
    for (let at = 0; at < 30; at += 1) {
      here.wait(3600_000);
      page.change(`Hour ${at}`);
      vi.advanceTimersByTime(1000);
    }
    expect(journal.read(oldest.id)).toBeNull();
    expect(nameIn(journal.read(page.keeper.current()!.id)!)).toBe('Hour 29');
    expect(page.notices()).toEqual([]);
    page.close();
  });

  test('that keeps nothing is told about, and what was replaced is found as long as the page is open', async () => {
    const here = device(true, () => {
      throw Object.assign(new Error('The operation is insecure.'), { name: 'SecurityError' });
    });
    const one = await here.page(here.newTab());
    one.change('Private');
    place(one, 'Other');
    expect(await leftNames(one)).toEqual(['Private']);
    one.close();
    expect(one.notices()).toEqual([expect.stringContaining('This browser keeps nothing for this page')]);
  });
});
