/** Reach: no accessibility violations, the keyboard, without WebGL, with a broken worker. */
import { describe, expect, test } from 'vitest';
import { DESK, withBrowser, type App } from './harness.ts';
import { violations } from './violations.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();
const PHONE = { viewport: { width: 390, height: 844 }, touch: true };

async function openGroups({ page }: App): Promise<void> {
  const closed = page.locator('details.group:not([open]) > summary');
  for (let left = await closed.count(); left > 0; left -= 1) await closed.first().click();
  expect(await closed.count()).toBe(0);
}

describe('the accessibility checker finds nothing', () => {
  const desk = openApp.shared((open) => open(DESK));
  const phone = openApp.shared((open) => open(PHONE));

  const LOOKS = [
    ['phone, dark', phone, 'dark'],
    ['phone, light', phone, 'light'],
    ['desk, light', desk, 'light'],
    ['desk, dark', desk, 'dark'],
  ] as const;

  // On a desk in every run with everything open.
  test.each(LOOKS.slice(0, draw(LOOKS.length, 1)))('%s', async (_name, openShared, colorScheme) => {
    const app = await openShared();
    await app.page.emulateMedia({ colorScheme });
    await app.settle();
    expect(await violations(app)).toEqual([]);
  });

  const opened = openApp.shared(async (open) => {
    const app = await open(DESK);
    const presets = app.page.getByRole('combobox', { name: 'Start from' });
    await app.afterChange(() => presets.selectOption('set-neck-mahogany'));
    await openGroups(app);
    await app.page.getByRole('checkbox', { name: 'as a table' }).check();
    const more = app.page.locator('.checks > button');
    if (await more.isVisible()) await more.click();
    return app;
  });

  test.each((['light', 'dark'] as const).slice(0, draw(2, 1)))('with everything open, %s', async (colorScheme) => {
    const app = await opened();
    await app.page.emulateMedia({ colorScheme });
    await app.settle();
    expect(await violations(app)).toEqual([]);
    await app.page.keyboard.press('?');
    await app.page.getByRole('dialog').waitFor();
    expect(await violations(app)).toEqual([]);
    await app.page.keyboard.press('Escape');
  });
});

test('the first stop of the Tab key leads past the head to the controls', async () => {
  const app = await openApp(DESK);
  await app.page.keyboard.press('Tab');
  expect(await app.page.locator(':focus').innerText()).toBe('Go to the controls');
  await app.page.keyboard.press('Enter');
  await app.page.keyboard.press('Tab');
  expect(await app.page.evaluate(() => document.activeElement?.closest('#controls') !== null)).toBe(true);
});

test('what the picture shows is said in words, and said again when it changes', async () => {
  const app = await openApp(DESK);
  const said = app.page.locator('output[aria-live]');
  await app.page.getByRole('button', { name: 'strung', exact: true }).click();
  await app.page.waitForFunction(() =>
    /just strung/.test(document.querySelector('output[aria-live]')?.textContent ?? ''),
  );
  expect(await said.innerText()).toMatch(/press fit, just strung: 0\.\d\d\smm relief; bow shown ×40\.$/);
});

test('at twice the size of text nothing is cut off sideways', async () => {
  const app = await openApp({ viewport: { width: 720, height: 450 } });
  const [content, frame] = await app.page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  expect(content).toBe(frame);
});

test('without WebGL the numbers, the chart and the table work, and the page says so', async () => {
  const app = await openApp({
    ...DESK,
    waitForPicture: false,
    prepare: async (page) => {
      await page.addInitScript(() => {
        HTMLCanvasElement.prototype.getContext = () => null;
      });
    },
  });
  await app.page.waitForFunction(() => (window.backbow?.predictionVersion ?? 0) > 0);
  await app.page.getByText('The picture cannot be drawn here').waitFor();
  const number = () => app.page.locator('[data-figure="fretted"] .figure-value').innerText();
  const before = await number();
  await app.page.getByRole('slider', { name: /^Kerf/ }).focus();
  await app.afterChange(() => app.page.keyboard.press('PageDown'));
  expect(await number()).not.toBe(before);
  await app.page.getByRole('checkbox', { name: 'as a table' }).check();
  // The table comes when it is asked for.
  await app.page.locator('.chart-table').waitFor();
  expect(await app.page.locator('.chart-table tbody tr').count()).toBe(22);
  expect(await violations(app)).toEqual([]);
  expect(app.troubles).toEqual([]);
});

test('a worker that breaks is replaced, and the page says so', async () => {
  const app = await openApp({
    ...DESK,
    prepare: async (page) => {
      await page.addInitScript(() => {
        const Native = Worker;
        const made: Worker[] = [];
        (window as { workers?: Worker[] }).workers = made;
        window.Worker = class extends Native {
          constructor(url: string | URL, options?: WorkerOptions) {
            super(url, options);
            made.push(this);
          }
        };
      });
    },
  });
  const before = await app.page.locator('[data-figure="fretted"] .figure-value').innerText();
  // What the browser does when a worker runs out of memory: the worker is gone, and an error event is all that comes.
  await app.page.evaluate(() => {
    const worker = (window as { workers?: Worker[] }).workers!.at(-1)!;
    worker.terminate();
    worker.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' }));
  });
  await app.page.getByText('The calculation broke off and was started again.').waitFor();
  await app.page.getByRole('slider', { name: /^Kerf/ }).focus();
  await app.afterChange(() => app.page.keyboard.press('PageDown'));
  // The first prediction that comes may be the new worker's of the build before.
  await expect.poll(() => app.page.locator('[data-figure="fretted"] .figure-value').innerText()).not.toBe(before);
});
