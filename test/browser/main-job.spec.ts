/**
 * The main job in a real browser: a neck is drawn, a slider moves, number, line and picture follow; project files go in
 * and out; what is wrong is said and leaves the build as it was.
 */
import { readFile, writeFile, mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { readProject, writeProject } from '../../src/neck/file.ts';
import { root } from '../tools/project.mjs';
import { chooseFiles } from './choose-files.ts';
import { DESK, differingPixels, shareUnlike, withBrowser, type App } from './harness.ts';
import { IS_LONG, draw } from '../draw.ts';

const openApp = withBrowser();

const kerf = ({ page }: App) => page.getByRole('slider', { name: /^Kerf/ });
const figure = ({ page }: App, id: string) => page.locator(`[data-figure="${id}"] .figure-value`).innerText();
const chosenLine = ({ page }: App) => page.locator('path.fret-line[data-chosen]').getAttribute('d');
const hump = async (app: App) => Number.parseFloat(await figure(app, 'fretted'));

/** Waits until the bands of what is shown have been computed. */
async function bandsAreIn({ page }: App): Promise<void> {
  await page.waitForFunction(() => {
    const bands = [...document.querySelectorAll('.figure-band')];
    return bands.length > 0 && bands.every((band) => !band.textContent?.includes('…'));
  });
}

/** Writes a file to open. */
async function fileWith(name: string, text: string): Promise<string> {
  const folder = join(root, 'test', 'output', 'files');
  await mkdir(folder, { recursive: true });
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

async function openFile({ page }: App, path: string): Promise<void> {
  await page.getByRole('button', { name: 'Menu' }).click();
  await chooseFiles(page, () => page.getByRole('button', { name: 'Open …' }).click(), path);
}

describe('the kerf', () => {
  test('by keyboard changes the number, the line and the picture; undo brings all of it back', async () => {
    const app = await openApp(DESK);
    await bandsAreIn(app);
    const before = { number: await hump(app), line: await chosenLine(app), picture: await app.canvasPicture() };
    expect(shareUnlike(before.picture, await app.groundColour())).toBeGreaterThan(0.02);

    await kerf(app).focus();
    await app.afterChange(() => app.page.keyboard.press('PageDown'));
    expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.530\u00a0mm');
    // A narrower kerf bites harder: more back-bow.
    expect(await hump(app)).toBeGreaterThan(before.number);
    expect(await chosenLine(app)).not.toBe(before.line);
    expect(differingPixels(await app.canvasPicture(), before.picture)).toBeGreaterThan(100);

    await app.afterChange(() => app.page.keyboard.press('Control+z'));
    await bandsAreIn(app);
    expect(await hump(app)).toBe(before.number);
    expect(await chosenLine(app)).toBe(before.line);
    expect(app.troubles).toEqual([]);
  });

  test('by dragging is one step to undo', async () => {
    const app = await openApp(DESK);
    const box = (await kerf(app).boundingBox())!;
    const at = (share: number) => [box.x + box.width * share, box.y + box.height / 2] as const;
    await app.page.mouse.move(...at(0.32));
    await app.page.mouse.down();
    await app.afterChange(async () => {
      for (const share of [0.34, 0.38, 0.42, 0.46]) await app.page.mouse.move(...at(share));
    });
    await app.page.mouse.up();
    expect(await kerf(app).getAttribute('aria-valuetext')).not.toBe('0.580\u00a0mm');
    await app.afterChange(() => app.page.getByRole('button', { name: 'Undo: Kerf' }).click());
    expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    expect(await app.page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  test('typed out of range is refused with its range; the build stays', async () => {
    const app = await openApp(DESK);
    const field = app.page.getByRole('textbox', { name: /^Kerf/ });
    await field.fill('3');
    await field.press('Enter');
    const message = app.page.locator('[data-parameter="kerfMm"] [role="alert"]');
    expect(await message.innerText()).toBe(
      'Kerf cannot be 3.000\u00a0mm: it takes 0.3 to 1.2\u00a0mm. 0.580\u00a0mm is kept.',
    );
    expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
  });
});

describe('a project file', () => {
  test('that is no good gives its message and leaves the build as it was', async () => {
    const app = await openApp(DESK);
    await kerf(app).focus();
    await app.afterChange(() => app.page.keyboard.press('ArrowUp'));
    const before = await figure(app, 'fretted');
    const bad = { ...defaultBuild(), kerfMm: 7, name: '<img src=x onerror=alert(1)>' };
    const cases: [string, string, RegExp][] = [
      ['range.json', writeProject(bad), /Kerf.*7.*0\.3 to 1\.2\smm/],
      ['broken.json', '{"format":', /not JSON/],
      ['other.json', '{"format":"something else"}', /not a project file/],
      ['newer.json', '{"format":"backbow project","version":99,"build":{}}', /version 99/],
    ];
    for (const [name, text, message] of cases) {
      await openFile(app, await fileWith(name, text));
      const alert = app.page.getByRole('alert').filter({ hasText: name });
      await alert.waitFor();
      expect(await alert.innerText()).toMatch(/your build is unchanged/);
      expect(await alert.innerText()).toMatch(message);
    }
    expect(await figure(app, 'fretted')).toBe(before);
    expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.585\u00a0mm');
    expect(app.troubles).toEqual([]);
  });

  test('that is good is opened as one step; saving writes what is there', async () => {
    const app = await openApp(DESK);
    const build = { ...defaultBuild(), name: 'Bench neck <7>', kerfMm: 0.55, fretCount: 19, bodyJointFret: 14 };
    const path = await fileWith('good.json', writeProject(build));
    await app.afterChange(() => openFile(app, path));
    expect(await app.page.getByRole('textbox', { name: 'Name of the build' }).inputValue()).toBe(build.name);
    expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.550\u00a0mm');

    const download = app.page.waitForEvent('download');
    await app.page.getByRole('button', { name: 'Menu' }).click();
    await app.page.getByRole('button', { name: 'Save', exact: true }).click();
    const saved = await download;
    expect(saved.suggestedFilename()).toBe('bench-neck-7.backbow.json');
    expect(readProject(await readFile(await saved.path(), 'utf8'))).toEqual({ ok: true, build });

    await app.afterChange(() => app.page.getByRole('button', { name: 'Undo: Open a project' }).click());
    expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    expect(app.troubles).toEqual([]);
  });
});

test('units switch everywhere at once and change no value', async () => {
  const app = await openApp(DESK);
  await app.page.keyboard.press('u');
  for (const id of ['fretted', 'strung', 'settled']) expect(await figure(app, id)).toMatch(/^0\.\d{3}\sin$/);
  expect(await figure(app, 'pull')).toMatch(/lbf$/);
  expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.0228\u00a0in');
  await app.page.keyboard.press('u');
  expect(await kerf(app).getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
  expect((await app.progress()).predictionVersion).toBe(1);
});

test(`every method and ${IS_LONG ? 'every preset' : 'the first presets'} can be chosen`, async () => {
  const app = await openApp(DESK);
  await app.afterChange(() => app.page.getByRole('radio', { name: 'glue fit' }).check());
  expect(await app.page.locator('[data-figure="fretted"] strong').innerText()).toBe('flat');
  const presets = app.page.getByRole('combobox', { name: 'Start from' });
  const ids = await presets
    .locator('option:not([disabled])')
    .evaluateAll((all) => all.map((option) => (option as HTMLOptionElement).value));
  expect(ids.length).toBeGreaterThanOrEqual(6);
  for (const id of ids.slice(0, draw(ids.length, 3))) {
    await app.afterChange(() => presets.selectOption(id));
    for (const shown of ['fretted', 'strung', 'settled', 'force', 'pull']) {
      expect(await figure(app, shown)).toMatch(/^\d+(\.\d+)?\s(mm|N)$/);
    }
  }
  expect(app.troubles).toEqual([]);
});
