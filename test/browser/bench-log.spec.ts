/** The bench log in a real browser: entered, kept, brought out and in, and taken over into the build. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../tools/project.mjs';
import { chooseFiles } from './choose-files.ts';
import { testForEverybody } from './for-everybody.ts';
import { DESK, withBrowser, type App, type Open, type OpenOptions } from './harness.ts';

const openApp = withBrowser();

const dialog = ({ page }: App) => page.getByRole('dialog', { name: 'Bench log' });
const rows = (app: App) => dialog(app).getByRole('region', { name: 'The necks measured' }).locator('tbody tr');

async function openLog(options: OpenOptions = DESK, open: Open = openApp): Promise<App> {
  const app = await open(options);
  await app.page.keyboard.press('j');
  await dialog(app).getByRole('button', { name: 'Enter it' }).waitFor();
  return app;
}

async function enter(app: App, neck: string, fretted: string, strung = ''): Promise<void> {
  await dialog(app).getByLabel('Neck', { exact: true }).fill(neck);
  await dialog(app)
    .getByLabel(/^Measured with frets in/)
    .fill(fretted);
  await dialog(app)
    .getByLabel(/^Measured strung/)
    .fill(strung);
  await dialog(app)
    .getByLabel(/^Measured strung/)
    .press('Enter');
  await dialog(app).getByText(`${neck} is in the log.`).waitFor();
}

/** The band of the first number, once it is there. */
async function bandOf({ page }: App): Promise<[number, number]> {
  await page.waitForFunction(
    () => !(document.querySelector('[data-figure="fretted"] .figure-band')?.textContent ?? '…').includes('…'),
  );
  const text = await page.locator('[data-figure="fretted"] .figure-band').innerText();
  const [low, high] = text.split(' to ').map((part) => Number.parseFloat(part));
  return [low!, high!];
}

describe('measured necks', () => {
  test('are kept, and make the bands of the build narrower once they are used', async () => {
    const app = await openLog();
    await enter(app, 'Number 11', '-0.25', '0.06');
    await enter(app, 'Number 12', '-0.27');
    await enter(app, 'Number 13', '-0.26');
    expect(await rows(app).count()).toBe(3);
    await dialog(app)
      .getByText(/^After 3 necks/)
      .waitFor();
    await dialog(app).locator('[data-state="fretted"]').waitFor();
    const take = dialog(app).getByRole('button', { name: /^Use [\d.]+ in this build/ });
    const factor = /[\d.]+/.exec(await take.innerText())![0];
    await app.page.keyboard.press('Escape');
    const [low, high] = await bandOf(app);
    await app.page.keyboard.press('j');
    await app.afterChange(() => take.click());
    await dialog(app).getByText(`This build uses it: bite factor ${factor}`).waitFor();
    await app.page.keyboard.press('Escape');
    const [lower, higher] = await bandOf(app);
    // In ratio: a harder bite shifts the whole band as well.
    expect(Math.log(higher / lower)).toBeLessThan(0.8 * Math.log(high / low));

    // One undo brings the wide band back; after a reload the log and what was taken from it are still there.
    await app.afterChange(() => app.page.keyboard.press('Control+z'));
    expect(await bandOf(app)).toEqual([low, high]);
    await app.afterChange(() => app.page.keyboard.press('Control+Shift+z'));
    await bandOf(app);
    await app.page.reload();
    await app.page.waitForFunction(() => ((window as { backbow?: { frames: number } }).backbow?.frames ?? 0) > 0);
    expect(await bandOf(app)).toEqual([lower, higher]);
    await app.page.keyboard.press('j');
    await rows(app).first().waitFor();
    expect(await rows(app).count()).toBe(3);
    expect(app.troubles).toEqual([]);
  });

  test('are changed, deleted and brought back', async () => {
    const app = await openLog();
    await enter(app, 'Number 11', '-0.25');
    await dialog(app)
      .getByRole('button', { name: /^Change the entry of Number 11/ })
      .click();
    await dialog(app)
      .getByLabel(/^Measured with frets in/)
      .fill('-0.30');
    await dialog(app).getByRole('button', { name: 'Keep the change' }).click();
    await dialog(app).getByText('The entry of Number 11 is changed.').waitFor();
    expect(await rows(app).innerText()).toContain('0.30\u00a0mm back-bow');
    await dialog(app)
      .getByRole('button', { name: /^Delete the entry of Number 11/ })
      .click();
    await dialog(app).getByText('No neck has been measured yet.').waitFor();
    await dialog(app).getByRole('button', { name: 'Undo', exact: true }).click();
    await rows(app).first().waitFor();
  });

  test('go out and in as CSV; what is wrong in a file is said row by row', async () => {
    const app = await openLog();
    await enter(app, 'Number 11', '-0.25');
    const coming = app.page.waitForEvent('download');
    await dialog(app).getByRole('button', { name: 'Save as CSV' }).click();
    const text = await readFile((await (await coming).path())!, 'utf8');
    expect(text).toContain('measured with frets in (mm)');

    const folder = join(root, 'test', 'output', 'files');
    await mkdir(folder, { recursive: true });
    const bring = async (name: string, content: string) => {
      await writeFile(join(folder, name), content);
      const button = dialog(app).getByRole('button', { name: 'Bring in a CSV file …' });
      await chooseFiles(app.page, () => button.click(), join(folder, name));
    };
    await bring('log.csv', text.replaceAll('Number 11', 'Number 14'));
    await dialog(app).getByText('One entry was added.').waitFor();
    expect(await rows(app).count()).toBe(2);
    await bring('wrong.csv', text.replace(/\d{4}-\d\d-\d\d/, 'yesterday').replace('-0.25', '-25'));
    await dialog(app).getByText('“wrong.csv” was not brought in').waitFor();
    expect(
      await dialog(app)
        .getByText(/Row 2: date is “yesterday”/)
        .isVisible(),
    ).toBe(true);
    expect(
      await dialog(app)
        .getByText(/Row 2: measured with frets in is -25 mm; it takes -5 to 5 mm/)
        .isVisible(),
    ).toBe(true);
    expect(await rows(app).count()).toBe(2);
  });

  test('live as long as the page where the browser keeps nothing, and that is said', async () => {
    const app = await openLog({
      ...DESK,
      prepare: async (page) => {
        await page.addInitScript(() => {
          Object.defineProperty(window, 'indexedDB', { get: () => undefined });
        });
      },
    });
    expect(
      await dialog(app)
        .getByText(/keeps nothing for this page/)
        .isVisible(),
    ).toBe(true);
    await enter(app, 'Number 11', '-0.25');
    expect(await rows(app).count()).toBe(1);
  });
});

testForEverybody(
  openApp.shared(async (open) => {
    const app = await openLog(DESK, open);
    await enter(app, 'Number 11', '-0.25', '0.05');
    await dialog(app).locator('[data-state="fretted"]').waitFor();
    return app;
  }),
  '.bench-log',
);
