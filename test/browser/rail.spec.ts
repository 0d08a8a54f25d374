/** The way through the job in a real browser: scrubbed, stepped, played; the picture follows without rendering React. */
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { DESK, differingPixels, withBrowser, type App } from './harness.ts';

const openApp = withBrowser();

const rail = ({ page }: App) => page.getByRole('slider', { name: 'Moment in the job' });
const moment = (app: App) => rail(app).getAttribute('aria-valuetext');
const now = ({ page }: App) => page.locator('.rail-now strong').innerText();

test('scrubbing by key goes from the bare board to the rod, and number and picture follow', async () => {
  const app = await openApp(DESK);
  expect(await moment(app)).toBe('all 22 frets in, no strings');
  const fretted = await app.canvasPicture();

  await rail(app).focus();
  await app.afterFrame(() => app.page.keyboard.press('Home'));
  expect(await moment(app)).toBe('bare board, no frets');
  expect(await now(app)).toBe('flat');
  expect(differingPixels(await app.canvasPicture(), fretted)).toBeGreaterThan(500);

  // Taking the picture hid the slider for a moment, and what is hidden loses the focus.
  await rail(app).focus();
  await app.afterFrame(() => app.page.keyboard.press('ArrowRight'));
  expect(await moment(app)).toBe('1 of 22 frets in');
  await app.afterFrame(() => app.page.keyboard.press('PageUp'));
  expect(await moment(app)).toBe('11 of 22 frets in');
  expect(await now(app)).toMatch(/back-bow$/);

  await app.afterFrame(() => app.page.getByRole('button', { name: 'strung', exact: true }).click());
  expect(await moment(app)).toBe('just strung');
  expect(await now(app)).toMatch(/relief$/);
  await rail(app).focus();
  await app.afterFrame(() => app.page.keyboard.press('End'));
  expect(await moment(app)).toMatch(/^strung for 3\smonths, rod set: ⅛\sturn clockwise \(17\s%\)$/);
  // Nothing had to be computed again for any of it.
  expect((await app.progress()).predictionVersion).toBe(1);
  expect(app.troubles).toEqual([]);
});

test('the number on the rail is the number of the readouts at the same moment', async () => {
  const app = await openApp(DESK);
  const figure = (id: string) =>
    app.page.locator(`[data-figure="${id}"] dd`).evaluate((cell) => {
      const text = (selector: string) => cell.querySelector(selector)?.textContent ?? '';
      return `${text('.figure-value')} ${text('.figure-says strong')}`;
    });
  const plain = (text: string) => text.replaceAll(/\s+/g, ' ');
  expect(plain(await figure('fretted'))).toBe(plain(await now(app)));
  await app.page.getByRole('button', { name: 'strung', exact: true }).click();
  expect(plain(await figure('strung'))).toBe(plain(await now(app)));
});

test('scrubbing the frets in renders no React in the picture', async () => {
  const app = await openApp(DESK);
  const renders = () => app.page.evaluate(() => window.backbow!.sceneRenders);
  const before = await renders();
  expect(before).toBeGreaterThan(0);
  await rail(app).focus();
  for (let step = 0; step < 12; step += 1) await app.afterFrame(() => app.page.keyboard.press('ArrowLeft'));
  expect(await moment(app)).toBe('10 of 22 frets in');
  expect(await renders()).toBe(before);
});

test('playing puts in fret after fret and stops at the end', async () => {
  const app = await openApp(DESK);
  await rail(app).focus();
  await app.page.keyboard.press('Home');
  const seen = await app.page.evaluate(async () => {
    const slider = document.querySelector('input[aria-label="Moment in the job"]')!;
    const texts: string[] = [];
    await new Promise<void>((resolve) => {
      const note = () => {
        const text = slider.getAttribute('aria-valuetext')!;
        if (texts.at(-1) !== text) texts.push(text);
        if (texts.length >= 6) resolve();
      };
      new MutationObserver(note).observe(slider, { attributes: true });
      note();
      [...document.querySelectorAll('button')].find((button) => button.textContent === 'Play')!.click();
    });
    return texts;
  });
  expect(seen).toEqual([
    'bare board, no frets',
    '1 of 22 frets in',
    '2 of 22 frets in',
    '3 of 22 frets in',
    '4 of 22 frets in',
    '5 of 22 frets in',
  ]);
  await app.page.getByRole('button', { name: 'Pause' }).click();
  await app.page.getByRole('button', { name: 'Play', exact: true }).waitFor();
  expect(app.troubles).toEqual([]);
});

test('pointing at the chart names the fret and its bow', async () => {
  const app = await openApp(DESK);
  const tick = app.page.locator('.chart .axis text', { hasText: /^12$/ });
  await tick.scrollIntoViewIfNeeded();
  const box = (await tick.boundingBox())!;
  // With all that lies over it: hiding that would take the chart from under the pointer.
  const picture = async () => PNG.sync.read(await app.page.locator('.picture-frame').screenshot());
  const before = await picture();
  await app.afterFrame(() => app.page.mouse.move(box.x + box.width / 2, box.y - 60));
  // … and lights up in the picture.
  expect(differingPixels(await picture(), before)).toBeGreaterThan(20);
  expect(await app.page.locator('.chart .cursor text').textContent()).toMatch(/^fret 12: 0\.\d\d\smm back-bow$/);
  await app.page.mouse.move(5, 5);
  expect(await app.page.locator('.chart .cursor').isVisible()).toBe(false);
});
