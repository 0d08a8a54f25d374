/**
 * The library and the bench in a real browser: kept necks survive a reload, two windows keep each other's, storage that
 * fails is told in plain words and harms nothing.
 */
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../tools/presets.ts';
import { readCollection, writeCollection } from '../../src/state/share/file.ts';
import { chooseFiles } from './choose-files.ts';
import { withBrowser, type App } from './harness.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();

const name = (page: Page) => page.getByLabel('Name of the build').inputValue();

async function call(page: Page, text: string): Promise<void> {
  await page.getByLabel('Name of the build').fill(text);
  await page.keyboard.press('Enter');
}

async function openLibrary(page: Page) {
  await page.keyboard.press('i');
  const dialog = page.getByRole('dialog', { name: 'Library' });
  await dialog.waitFor();
  await dialog.getByText(/is being read/).waitFor({ state: 'detached' });
  return dialog;
}

const titles = async (page: Page) => page.locator('.neck-card h3').allInnerTexts();

/** Reloads and waits for the first numbers. */
async function reload({ page }: App): Promise<void> {
  await page.reload();
  await page.waitForFunction(
    () => ((window as { backbow?: { predictionVersion: number } }).backbow?.predictionVersion ?? 0) > 0,
  );
}

/** What the passing messages lie over, of all that is to be read on the page or in the dialog that is open. */
const lyingOver = (page: Page) =>
  page.evaluate(() => {
    const notices = document.querySelector('.notices')!;
    const dialog = document.querySelector('dialog[open]');
    const at = notices.getBoundingClientRect();
    return [...(dialog ?? document).querySelectorAll('p, button, label, h2, h3, svg, canvas, td, th')]
      .filter((element) => !notices.contains(element) && !element.closest('.hint'))
      .filter((element) => {
        const { left, right, top, bottom, width } = element.getBoundingClientRect();
        // What is scrolled out of its list or its dialog is not in sight.
        const seen = (element.closest('.groups') ?? dialog ?? document.documentElement).getBoundingClientRect();
        const across = Math.min(right, at.right, seen.right) - Math.max(left, at.left, seen.left);
        const along = Math.min(bottom, at.bottom, seen.bottom) - Math.max(top, at.top, seen.top);
        return width > 0 && across > 0 && along > 0;
      })
      .map((element) => `${element.tagName} ${element.textContent.slice(0, 30)}`);
  });

describe('a passing message', () => {
  test.each([
    [1440, 900],
    [1024, 768],
  ])('lies over nothing at %d × %d, on the page or in a dialog', async (width, height) => {
    const { page, ...app } = await openApp({ viewport: { width, height } });
    await page.keyboard.press('Control+Shift+s');
    await page.getByText('is kept in the library.').waitFor();
    await app.settle();
    expect(await lyingOver(page)).toEqual([]);
    await openLibrary(page);
    await page.locator('dialog .notices').getByText('is kept in the library.').waitFor();
    await app.settle();
    await app.screenshot(`library/message-${width}`);
    expect(await lyingOver(page)).toEqual([]);
  });
});

describe('the library', () => {
  test('keeps a neck with its picture; open, duplicate, rename, delete and undo work; all of it survives a reload', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 860 } });
    const { page } = app;
    await call(page, 'First neck');
    const picture = () => page.locator('.picture-frame').screenshot();
    await app.settle();
    const before = await picture();
    await page.keyboard.press('Control+Shift+s');
    await page.getByText('“First neck” is kept in the library.').waitFor();
    // Taking the small picture must not touch the one on the page.
    await page.getByRole('button', { name: 'Close' }).click();
    await app.settle();
    expect((await picture()).equals(before)).toBe(true);

    let dialog = await openLibrary(page);
    await dialog.getByText('“First neck” is kept as it is on the bench.').waitFor();
    const small = dialog.getByRole('img', { name: 'Picture of “First neck”' });
    expect(await small.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight])).toEqual([400, 225]);

    await dialog.getByRole('button', { name: 'Duplicate “First neck”' }).click();
    await dialog.getByText('The copy is called “First neck (2)”.').waitFor();
    await dialog.getByRole('button', { name: 'Rename “First neck (2)”' }).click();
    const field = dialog.getByLabel('New name of “First neck (2)”');
    await field.fill('   ');
    await field.press('Enter');
    await dialog.getByText('A name has at least one character.').waitFor();
    await field.fill('<b>Second</b> & neck');
    await field.press('Enter');
    await dialog.getByRole('heading', { name: '<b>Second</b> & neck' }).waitFor();
    await dialog.getByRole('button', { name: 'Delete “First neck”' }).click();
    await dialog.getByText('“First neck” is deleted.').waitFor();
    expect(await titles(page)).toEqual(['<b>Second</b> & neck']);
    await dialog.getByRole('button', { name: 'Undo' }).click();
    await dialog.getByText('“First neck” is back.').waitFor();
    expect((await titles(page)).length).toBe(2);
    await app.screenshot('library/wide');

    await reload(app);
    dialog = await openLibrary(page);
    expect(new Set(await titles(page))).toEqual(new Set(['First neck', '<b>Second</b> & neck']));
    await dialog.getByRole('button', { name: 'Open “<b>Second</b> & neck”' }).click();
    await dialog.waitFor({ state: 'detached' });
    expect(await name(page)).toBe('<b>Second</b> & neck');
    expect(app.troubles).toEqual([]);
  });

  test('a name with an unclosed mark of direction does not turn the words around it', async () => {
    const app = await openApp();
    const hostile = '\u2069\u202Egnp.kcen';
    await call(app.page, hostile);
    await app.page.keyboard.press('Control+Shift+s');
    const notice = app.page.locator('.notice p', { hasText: 'is kept in the library.' });
    await notice.waitFor();
    // Where the browser puts every character of the sentence around the name, in the order of the text.
    const places = await notice.evaluate((paragraph) => {
      const text = paragraph.firstChild as Text;
      const around = [
        0,
        ...Array.from(text.data.slice(text.data.lastIndexOf('”')), (_, at) => text.data.lastIndexOf('”') + at),
      ];
      return around.map((at) => {
        const range = document.createRange();
        range.setStart(text, at);
        range.setEnd(text, at + 1);
        return range.getBoundingClientRect().left;
      });
    });
    expect(places.length).toBeGreaterThan(20);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(await name(app.page)).toBe(hostile);
    expect(app.troubles).toEqual([]);
  });

  test('goes out as one file and comes in elsewhere, with a report of what was refused', async () => {
    const first = await openApp();
    await call(first.page, 'To take along');
    await first.page.keyboard.press('Control+Shift+s');
    await first.page.getByText('is kept in the library').waitFor();
    const dialog = await openLibrary(first.page);
    const download = first.page.waitForEvent('download');
    await dialog.getByRole('button', { name: 'Save all as a file' }).click();
    const text = await readFile(await (await download).path(), 'utf8');
    const read = readCollection(text);
    expect(read).toMatchObject({ ok: true, builds: [{ build: { name: 'To take along' } }], refused: [] });

    const data = JSON.parse(writeCollection(PRESETS.map(({ build }) => ({ build, changedAt: null })))) as {
      builds: { project: { build: Record<string, unknown> } }[];
    };
    data.builds[1].project.build['kerfMm'] = 70;
    const second = await openApp({ viewport: { width: 390, height: 844 }, touch: true });
    const there = await openLibrary(second.page);
    const button = there.getByRole('button', { name: 'Bring in from a file …' });
    const file = { name: 'necks.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(data)) };
    await chooseFiles(second.page, () => button.click(), file);
    await there.getByText(`${PRESETS.length - 1} necks were added.`).waitFor();
    await there.getByText(/Not added: “Set-neck six, mahogany, bound ebony”\. Kerf \(kerfMm\) is 70/).waitFor();
    expect((await titles(second.page)).length).toBe(PRESETS.length - 1);
    await second.screenshot('library/phone');
    expect([...first.troubles, ...second.troubles]).toEqual([]);
  });

  test('two windows see each other’s necks and do not write over each other', async () => {
    const one = await openApp();
    await call(one.page, 'Shared');
    await one.page.keyboard.press('Control+Shift+s');
    await one.page.getByText('“Shared” is kept').waitFor();
    const two = await one.context.newPage();
    await two.goto(one.page.url());
    await two.waitForFunction(
      () => ((window as { backbow?: { predictionVersion: number } }).backbow?.predictionVersion ?? 0) > 0,
    );
    const dialog = await openLibrary(two);
    await dialog.getByRole('button', { name: 'Open “Shared”' }).click();
    await dialog.waitFor({ state: 'detached' });

    await call(one.page, 'Shared, by one');
    await one.page.keyboard.press('Control+Shift+s');
    await one.page.getByText('“Shared, by one” is kept').waitFor();
    await call(two, 'Shared, by two');
    await two.keyboard.press('Control+Shift+s');
    await two.getByText('Another window has changed this neck meanwhile.').waitFor();
    await openLibrary(two);
    expect(new Set(await titles(two))).toEqual(new Set(['Shared, by one', 'Shared, by two']));
    // The first window hears of it without being asked.
    await openLibrary(one.page);
    await one.page.locator('.neck-card', { hasText: 'Shared, by two' }).waitFor();
  });
});

describe('the bench', () => {
  test('is as it was after a reload, with a notice; undo starts afresh', async () => {
    const app = await openApp();
    await app.afterChange(() => app.page.getByRole('slider', { name: /^Kerf/ }).press('ArrowUp'));
    await call(app.page, 'Half done');
    const kerf = await app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext');
    await reload(app);
    await app.page.getByText('“Half done” is back on the bench as you left it').waitFor();
    expect(await app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext')).toBe(kerf);
    await app.afterChange(() => app.page.keyboard.press('Control+z'));
    expect(await name(app.page)).toBe(PRESETS[0].label);
  });

  test('comes back in a new window after the old one broke down', async () => {
    const app = await openApp();
    await call(app.page, 'Before the crash');
    await expect
      .poll(() =>
        app.page.evaluate(() => Object.values(localStorage).some((text) => String(text).includes('Before the crash'))),
      )
      .toBe(true);
    const address = app.page.url();
    const crashed = app.page.waitForEvent('crash');
    // The page's process is killed: nothing of it can run any more.
    void app.page.goto('chrome://crash').catch(() => undefined);
    await crashed;
    const next = await app.context.newPage();
    await next.goto(address);
    await next.getByText('“Before the crash” is back on the bench as you left it').waitFor();
  });
});

describe('storage that fails', () => {
  const FAILURES: [string, string, string, string][] = [
    [
      'a full device',
      'QuotaExceededError',
      'There is no room left on this device. Nothing was changed.',
      'There is no room left on this device to keep the neck on the bench.',
    ],
    [
      'a browser that keeps nothing',
      'SecurityError',
      'This browser keeps nothing for this page: a private window, or storage is blocked. Save necks as files instead.',
      'This browser keeps nothing for this page: a private window, or storage is blocked. When the page is closed',
    ],
  ];

  // The other one in every run in faults.spec.ts.
  test.each(FAILURES.slice(0, draw(FAILURES.length, 1)))(
    '%s is told in plain words, and everything else works',
    async (_what, error, library, bench) => {
      const app = await openApp({
        prepare: async (page) => {
          await page.addInitScript((errorName) => {
            const fail = (): never => {
              throw new DOMException('simulated', errorName);
            };
            Storage.prototype.setItem = fail;
            IDBObjectStore.prototype.put = fail;
            if (errorName === 'SecurityError') {
              IDBFactory.prototype.open = fail;
              Object.defineProperty(window, 'localStorage', { get: fail });
              Object.defineProperty(window, 'sessionStorage', { get: fail });
            }
          }, error);
        },
      });
      await call(app.page, 'Nowhere to go');
      await app.page.getByText(bench).waitFor();
      await app.page.keyboard.press('Control+Shift+s');
      await app.page.getByRole('alert').getByText(library).waitFor();
      const dialog = await openLibrary(app.page);
      await dialog.getByRole('button', { name: 'Keep “Nowhere to go”' }).click();
      await dialog.getByRole('alert').getByText(library).waitFor();
      // Once, and in its place: the passing message that said the same has gone.
      expect(await app.page.getByText(library).count()).toBe(1);
      expect(await dialog.locator('.notice', { hasText: library }).count()).toBe(0);
      await app.screenshot(`library/${error}`);
      // Other passing messages have a button of that name too.
      await dialog.locator('header').getByRole('button', { name: 'Close' }).click();
      const download = app.page.waitForEvent('download');
      await app.page.keyboard.press('Control+s');
      expect(await readFile(await (await download).path(), 'utf8')).toContain('Nowhere to go');
      expect(await name(app.page)).toBe('Nowhere to go');
      expect(app.troubles).toEqual([]);
    },
  );

  test('records of another kind are left where they are', async () => {
    const app = await openApp();
    await app.page.keyboard.press('Control+Shift+s');
    await app.page.getByText('is kept in the library').waitFor();
    await app.page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const open = indexedDB.open('backbow-library');
          open.onerror = () => reject(new Error('not opened'));
          open.onsuccess = () => {
            const table = open.result.transaction('necks', 'readwrite').objectStore('necks');
            table.put({ from: 'the future' }, 'strange');
            table.put({ id: 'half', name: 'Half a neck', changedAt: 1, project: '{"format":' }, 'half');
            table.transaction.oncomplete = () => {
              open.result.close();
              resolve();
            };
          };
        }),
    );
    const dialog = await openLibrary(app.page);
    await dialog.getByText('One record is of a kind that this release does not know.').waitFor();
    const half = dialog.getByRole('listitem').filter({ hasText: 'Half a neck' });
    await half.getByText(/This neck cannot be read:/).waitFor();
    const download = app.page.waitForEvent('download');
    await half.getByRole('button', { name: 'Save what is stored of “Half a neck”' }).click();
    expect(await readFile(await (await download).path(), 'utf8')).toBe('{"format":');
  });
});
