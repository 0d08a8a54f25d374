/** The other way round in a real browser: a relief goes in, answers come out, and one of them goes into the build. */
import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { testForEverybody } from './for-everybody.ts';
import { DESK, withBrowser, type App, type Open } from './harness.ts';

const openApp = withBrowser();

async function openWanted(open: Open = openApp): Promise<App> {
  const app = await open(DESK);
  await app.page.keyboard.press('w');
  await answered(app);
  return app;
}

const answered = ({ page }: App) => page.waitForSelector('.wanted .answers:not([data-stale])');
const answer = ({ page }: App, name: string) => page.locator(`[data-answer="${name}"]`);
const dialog = ({ page }: App) => page.getByRole('dialog', { name: 'Aim for a relief' });

describe('a relief that is wanted', () => {
  test('gives a kerf; using it is one step, and brings the neck there', async () => {
    const app = await openWanted();
    expect(await answer(app, 'now').innerText()).toMatch(/too much\..*90 of 100/);
    const use = answer(app, 'kerf-both').getByRole('button');
    const kerf = /Use ([\d.]+)/.exec(await use.innerText())![1];
    await use.focus();
    await app.page.keyboard.press('Enter');
    await answered(app);
    expect(await answer(app, 'now').innerText()).toMatch(/0\.15\smm relief: as wanted\./);
    await app.page.keyboard.press('Escape');
    expect(await app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext')).toBe(
      `${kerf}\u00a0mm`,
    );
    await app.page.keyboard.press('Control+z');
    expect(await app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    expect(await app.page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    expect(app.troubles).toEqual([]);
  });

  test('that no kerf gives is said to be so, with how close it came; the rod and undoing in place', async () => {
    const app = await openWanted();
    const relief = dialog(app).getByLabel('Relief wanted, mm');
    await relief.fill('0.9');
    await relief.press('Enter');
    await answered(app);
    expect(await answer(app, 'kerf-press').innerText()).toMatch(/No kerf gives it\..*too little/s);
    await relief.fill('7');
    await relief.press('Enter');
    expect(await dialog(app).getByRole('alert').filter({ hasText: '7' }).innerText()).toMatch(/0 to 3\smm/);
    await relief.fill('0.15');
    await relief.press('Enter');
    await answered(app);
    await dialog(app)
      .getByRole('button', { name: /^Set the rod: / })
      .click();
    await dialog(app).getByRole('button', { name: 'Undo it' }).click();
    expect(await dialog(app).getByText('It is as it was.').isVisible()).toBe(true);
    await answered(app);
    expect(
      await dialog(app)
        .getByRole('button', { name: /^Set the rod: / })
        .isVisible(),
    ).toBe(true);
  });

  test('gives a table to plane by, as a file', async () => {
    const app = await openWanted();
    const coming = app.page.waitForEvent('download');
    await dialog(app).getByRole('button', { name: 'Save the table as CSV' }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toMatch(/^bolt-on-six-hard-maple-planing-[A-Z]{6}-[A-Z]{3}-[A-Z]{3}\.csv$/);
    const lines = (await readFile(await download.path(), 'utf8')).trim().split('\r\n');
    expect(lines).toHaveLength(23);
    expect(lines[0].split(',').at(-1)).toBe('planeOffMm');
    const shown = await app.page.locator('.planing td[data-column="planeOffMm"]').allInnerTexts();
    // The file holds the value itself, the page its text.
    expect(lines.slice(1).map((line) => Number(line.split(',').at(-1)).toFixed(2))).toEqual(shown);
  });

  test('shows how far the search is while it lasts', async () => {
    const app = await openApp({
      ...DESK,
      prepare: async (page) => {
        await page.addInitScript(() => {
          const shares: number[] = [];
          Object.assign(window, { shares });
          addEventListener('DOMContentLoaded', () =>
            new MutationObserver(() => {
              const bar = document.querySelector<HTMLProgressElement>('.wanted progress');
              if (bar && bar.value !== shares.at(-1)) shares.push(bar.value);
            }).observe(document.body, { subtree: true, childList: true, attributes: true }),
          );
        });
      },
    });
    await app.page.keyboard.press('w');
    await answered(app);
    const shares = await app.page.evaluate(() => (window as unknown as { shares: number[] }).shares);
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBeGreaterThan(0.7);
    expect(await dialog(app).getByRole('progressbar').count()).toBe(0);
    expect(app.troubles).toEqual([]);
  });

  test('can be given up and asked again', async () => {
    const app = await openApp(DESK);
    await app.page.keyboard.press('w');
    await dialog(app).getByRole('button', { name: 'Give up' }).click();
    await dialog(app).getByRole('button', { name: 'Look again' }).click();
    await answered(app);
    expect(app.troubles).toEqual([]);
  });
});

describe('what moves it', () => {
  const moves = ({ page }: App) => page.locator('.moves');
  async function openMoves(): Promise<App> {
    const app = await openWanted();
    await moves(app).locator('summary').click();
    await app.page.waitForSelector('.moves .answers:not([data-stale])');
    return app;
  }

  test('is a table from most to least, each line with its checks; a line goes into the build and back', async () => {
    const app = await openMoves();
    const wider = moves(app).getByRole('row', { name: /^Kerf 0\.600\smm, not 0\.580/ });
    const cells = await wider.getByRole('cell').allInnerTexts();
    expect(cells[0]).toMatch(/^\+0\.0\d\smm$/);
    expect(cells[2]).toMatch(/^(0|\+0\.0\d\smm) to \+0\.0\d\smm$/);
    const narrower = moves(app).getByRole('row', { name: /^Kerf 0\.560/ });
    expect(await narrower.innerText()).toMatch(/Caution: The last levelling/);
    const sizes = (await moves(app).locator('tbody tr td:nth-child(2)').allInnerTexts()).map((text) =>
      Math.abs(Number.parseFloat(text.replace('−', '-'))),
    );
    expect(sizes.length).toBeGreaterThan(10);
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
    await wider.getByRole('button', { name: 'Use this' }).click();
    // The question is another one now: the table is found anew, and counts from the wider kerf.
    await app.page.waitForSelector('.moves .answers:not([data-stale])');
    await moves(app)
      .getByRole('row', { name: /^Kerf 0\.620\smm, not 0\.600/ })
      .waitFor();
    await dialog(app).getByRole('button', { name: 'Undo it' }).click();
    await wider.waitFor();
    expect(app.troubles).toEqual([]);
  });
});

describe('what to measure next', () => {
  const list = ({ page }: App) => page.locator('.to-measure');
  const settled = ({ page }: App) => page.waitForSelector('.to-measure .answers:not([data-stale])');
  async function openList(): Promise<App> {
    const app = await openWanted();
    await list(app).locator('summary').click();
    await settled(app);
    return app;
  }
  const ids = (app: App) =>
    list(app)
      .locator('tbody tr')
      .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['measure']));

  test('is ranked in the minutes of the workshop, which stay; what is done goes, and each line leads to its control', async () => {
    const app = await openList();
    const first = await ids(app);
    expect(first[0]).toBe('fretted');
    expect(first.length).toBeGreaterThan(5);
    const minutes = list(app).locator('[data-measure="fretted"] input');
    await minutes.fill('2400');
    await minutes.press('Enter');
    expect((await ids(app)).at(-1)).toBe('fretted');
    expect(await app.page.evaluate(() => localStorage.getItem('backbow.minutes'))).toBe('{"fretted":2400}');
    await list(app)
      .getByRole('button', { name: /^Count as done: Shape of a stud/ })
      .click();
    const takeBack = list(app).getByRole('button', { name: /^Take back: Shape of a stud/ });
    expect(await takeBack.evaluate((button) => button === document.activeElement)).toBe(true);
    await settled(app);
    expect(await ids(app)).not.toContain('lens');
    await takeBack.click();
    await settled(app);
    expect(await ids(app)).toContain('lens');
    await list(app)
      .getByRole('button', { name: /^Enter it: Board blank/ })
      .click();
    await app.page.waitForFunction(
      () => document.activeElement?.closest<HTMLElement>('[data-parameter]')?.dataset['parameter'] === 'boardBlankTest',
    );
    expect(await app.page.locator('dialog[open]').count()).toBe(0);
    expect(app.troubles).toEqual([]);
  });
});

testForEverybody(openApp.shared(openWanted), '.wanted');
