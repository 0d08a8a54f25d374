/**
 * The papers: the plan on the screen and as a bench sheet on paper, the template at full size, the files. PDFs are
 * Chromium's own; their pictures are left in test/output.
 */
import { WebIO } from '@gltf-transform/core';
import { unzipSync } from 'fflate';
import { validateBytes } from 'gltf-validator';
import jsQR from 'jsqr';
import { readFile } from 'node:fs/promises';
import Papa from 'papaparse';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { fretPositionMm } from '../../src/neck/neck-shape.ts';
import { readProject } from '../../src/neck/file.ts';
import { PRESETS } from '../tools/presets.ts';
import { PROGRAM_VERSION } from '../../src/neck/version.ts';
import { stampOf, stampText } from '../../src/verdict/stamp.ts';
import { readLink } from '../../src/state/share/link.ts';
import { readPdf } from '../pages/papers/pdf-lines.ts';
import { DESK, withBrowser, type App, type Open, type OpenOptions } from './harness.ts';
import { violations } from './violations.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();

const BUILD = PRESETS[0].build;
const STAMP = stampText(stampOf(BUILD));
const BOUND = PRESETS.find(({ id }) => id === 'set-neck-mahogany')!;

/** Opens one of the papers at once, and waits until it stands there with its bands. */
async function openSheet(
  sheet: 'plan' | 'template' | 'files',
  options: OpenOptions = {},
  open: Open = openApp,
): Promise<App> {
  const app = await open({
    viewport: { width: 1280, height: 900 },
    path: `#/${sheet}`,
    waitForPicture: false,
    ...options,
  });
  await app.page.locator('#sheet-title').waitFor();
  if (sheet === 'plan') await app.page.getByText('Most of the band comes from').waitFor();
  return app;
}

const plan = openApp.shared((open) => openSheet('plan', {}, open));
const template = openApp.shared((open) => openSheet('template', {}, open));
const files = openApp.shared((open) => openSheet('files', {}, open));

async function download(app: App, button: RegExp | string): Promise<{ name: string; bytes: Buffer }> {
  const coming = app.page.waitForEvent('download');
  await app.page.getByRole('button', { name: button }).first().click();
  const file = await coming;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

test('opens by button, by key and by address; leaves by its button, by Escape and by going back', async () => {
  const app = await openApp(DESK);
  const { page } = app;
  const title = page.getByRole('heading', { level: 1, name: BUILD.name });
  await page.getByRole('button', { name: 'Plan and sheet' }).click();
  await title.waitFor();
  expect(new URL(page.url()).hash).toBe('#/plan');
  expect(await page.title()).toBe(`${BUILD.name} – Plan and bench sheet – Backbow`);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('sheet-title');
  await page.getByRole('button', { name: 'Back to the neck' }).click();
  await title.waitFor({ state: 'detached' });
  expect(await page.title()).toBe('Backbow');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Plan and sheet');

  await page.keyboard.press('f');
  await title.waitFor();
  await page.keyboard.press('Escape');
  await title.waitFor({ state: 'detached' });

  await page.keyboard.press('k');
  await page.getByRole('heading', { level: 1, name: 'Cutting template' }).waitFor();
  await page.getByRole('link', { name: 'Files' }).click();
  await page.getByRole('heading', { level: 1, name: 'Files to take along' }).waitFor();
  await page.goBack();
  await page.getByRole('heading', { level: 1, name: 'Cutting template' }).waitFor();
  expect(app.troubles).toEqual([]);
});

test('what belongs to the picture does not answer to keys over a paper; undo does, and the sheet follows', async () => {
  const app = await openApp(DESK);
  const { page } = app;
  const kerf = page.locator('#sheet-record').getByText('in this plan');
  await app.afterChange(() => page.getByRole('slider', { name: /^Kerf/ }).press('ArrowUp'));
  await page.keyboard.press('f');
  expect(await kerf.textContent()).toContain('0.585');
  await page.keyboard.press('3');
  await app.afterChange(() => page.keyboard.press('Control+z'));
  await expect.poll(() => kerf.textContent()).toContain('0.580');
  await page.keyboard.press('Escape');
  expect(await page.getByRole('button', { name: 'Whole neck' }).getAttribute('aria-pressed')).toBe('true');
});

const phone = openApp.shared((open) => openSheet('plan', { viewport: { width: 390, height: 844 }, touch: true }, open));

const LOOKS = [
  ['phone-dark', phone, 'dark'],
  ['desk-light', plan, 'light'],
  ['desk-dark', plan, 'dark'],
  ['phone-light', phone, 'light'],
] as const;

test.each(LOOKS.slice(0, draw(LOOKS.length, 1)))(
  '%s: every paper can be read, by everybody',
  async (name, openShared, colorScheme) => {
    const app = await openShared();
    await app.page.emulateMedia({ colorScheme });
    // The plan last: it is what the page stood at.
    for (const sheet of ['template', 'files', 'plan'] as const) {
      await app.page.evaluate((hash) => void (location.hash = hash), `#/${sheet}`);
      await app.page.locator(`.${sheet === 'plan' ? 'sheet' : sheet}`).waitFor();
      await app.screenshot(`sheets/${sheet}-${name}`, { fullPage: true });
      const [content, frame] = await app.page.evaluate(() => [
        document.documentElement.scrollWidth,
        document.documentElement.clientWidth,
      ]);
      expect([sheet, content]).toEqual([sheet, frame]);
      expect(await violations(app)).toEqual([]);
    }
    expect(app.troubles).toEqual([]);
  },
);

test('a table that is wider than the phone scrolls by key, its first column in view', async () => {
  const app = await phone();
  const region = app.page.getByRole('region', { name: 'Slots, scrolls sideways' });
  const left = () =>
    region
      .locator('tbody th')
      .first()
      .evaluate((cell) => cell.getBoundingClientRect().left);
  const before = await left();
  await region.focus();
  await app.page.keyboard.press('ArrowRight');
  await expect.poll(() => region.evaluate((element) => element.scrollLeft)).toBeGreaterThan(0);
  expect(Math.abs((await left()) - before)).toBeLessThan(1.5);
});

test('on the phone a part is found from the list at the top', async () => {
  const app = await phone();
  await app.page
    .getByRole('navigation', { name: 'On this sheet' })
    .getByRole('button', { name: 'Levelling budget' })
    .click();
  const top = () => app.page.locator('#sheet-levelling').evaluate((part) => part.getBoundingClientRect().top);
  await expect.poll(top).toBeLessThan(400);
  expect(new URL(app.page.url()).hash).toBe('#/plan');
});

const PAPERS = [
  ['A4', 210, 297],
  ['Letter', 215.9, 279.4],
] as const;

describe('the bench sheet on paper', () => {
  test.each(PAPERS)('%s: some pages, each of that size', async (format, widthMm, heightMm) => {
    const app = await plan();
    const pages = readPdf(await app.page.pdf({ format, preferCSSPageSize: false }));
    expect(pages.length).toBeGreaterThanOrEqual(6);
    expect(pages.length).toBeLessThanOrEqual(11);
    for (const page of pages) {
      // Chromium rounds a page up to whole pixels of a 96th of an inch, and its margins with it.
      expect(Math.abs(page.widthMm - widthMm)).toBeLessThan(0.4);
      expect(Math.abs(page.heightMm - heightMm)).toBeLessThan(0.4);
    }
  });

  test('black on white, whatever the screen shows; only what is for the eye of the screen is left out', async () => {
    const app = await plan();
    await app.page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await app.screenshot('sheets/plan-print', { fullPage: true });
    const seen = await app.page.evaluate(() => {
      const style = (selector: string) => getComputedStyle(document.querySelector(selector)!);
      const shown = (selector: string) => document.querySelector<HTMLElement>(selector)!.getClientRects().length > 0;
      return {
        ink: style('.sheet-section p').color,
        ground: style('.sheets').backgroundColor,
        bar: shown('.sheets-bar'),
        contents: shown('.sheet-contents'),
        workbench: shown('.workbench'),
        blanks: shown('.sheet-blanks'),
        measured: shown('.table-expected .cell-blank'),
        head: style('.table-slots thead').display,
        row: style('.table-slots tbody tr').breakInside,
        slots: style('.table-slots').breakInside,
      };
    });
    await app.page.emulateMedia({ media: null, colorScheme: 'light' });
    expect(seen).toEqual({
      ink: 'rgb(0, 0, 0)',
      ground: 'rgb(255, 255, 255)',
      bar: false,
      contents: false,
      workbench: false,
      blanks: true,
      measured: true,
      head: 'table-header-group',
      row: 'avoid',
      slots: 'avoid',
    });
  });

  test('a sheet that is printed before its bands are known says what to reckon with instead', async () => {
    const app = await openApp({
      viewport: { width: 1280, height: 900 },
      path: '#/plan',
      waitForPicture: false,
      // The worker answers the prediction and never the bands.
      prepare: async (page) => {
        await page.addInitScript(() => {
          const { postMessage } = Worker.prototype;
          Worker.prototype.postMessage = function (this: Worker, message: unknown, ...rest: unknown[]) {
            if (JSON.stringify(message).includes('"estimate"')) return;
            Reflect.apply(postMessage, this, [message, ...rest]);
          };
        });
      },
    });
    await app.page.getByText('The bands are being computed.').waitFor();
    await app.page.emulateMedia({ media: 'print' });
    await app.page.getByText('No band could be computed').waitFor();
    expect(await app.page.getByText('The bands are being computed.').isVisible()).toBe(false);
    expect(await app.page.locator('.table-expected th').allTextContents()).not.toContain('Band, 5 to 95 %');
  });

  test('name, version and date stand at the head of every page', async () => {
    const app = await plan();
    const rules = await app.page.evaluate(() =>
      document.adoptedStyleSheets.flatMap((sheet) => [...sheet.cssRules].map((rule) => rule.cssText)).join('\n'),
    );
    const today = await app.page.evaluate(() => new Date().toISOString().slice(0, 10));
    expect(rules).toContain(`"${BUILD.name} – Bench sheet"`);
    expect(rules).toContain(`"Backbow ${PROGRAM_VERSION}, ${today}, stamp ${STAMP}"`);
    expect(rules).toContain('counter(pages)');
  });

  test('the code opens the same build, to the last value', async () => {
    const app = await openApp({ viewport: { width: 1280, height: 900 } });
    await app.afterChange(() => app.page.getByLabel('Start from').selectOption(BOUND.id));
    await app.page.keyboard.press('f');
    const link = app.page.locator('.qr-link');
    await link.waitFor();
    await app.page.emulateMedia({ media: 'print' });
    const picture = PNG.sync.read(await link.locator('svg').screenshot());
    // 36 mm on paper are 136 CSS pixels: a phone sees it sharper than this screenshot at one pixel per pixel.
    expect(picture.width).toBeGreaterThan(120);
    const path = await link.getAttribute('href');
    // The page's policy lets no style in from outside.
    await link.evaluate((element) => (element as HTMLElement).style.setProperty('inline-size', '600px', 'important'));
    const large = PNG.sync.read(await link.locator('svg').screenshot());
    expect(large.width).toBeGreaterThan(500);
    const read = jsQR(new Uint8ClampedArray(large.data), large.width, large.height);
    expect(read?.data).toBe(path);
    const shared = readLink(new URL(path!).hash.replace('#neck=', ''));
    expect(shared.ok && shared.shared.builds).toEqual([BOUND.build]);
  });
});

describe('tables as CSV', () => {
  test('hold the values themselves under their keys, whatever the units of the page, and are named after the build', async () => {
    const app = await plan();
    const column = async (units: 'inch' | 'metric') => {
      await app.page.locator('.sheets-bar select').selectOption(units);
      const { name, bytes } = await download(app, 'Save “Slots” as CSV');
      expect(name).toBe(`bolt-on-six-hard-maple-slots-${STAMP}.csv`);
      const { data, errors } = Papa.parse<string[]>(bytes.toString('utf8').replace('\uFEFF', ''), {
        skipEmptyLines: true,
      });
      expect(errors).toEqual([]);
      const at = data[0].indexOf('fretXMm');
      return data.slice(1).map((row) => row[at]);
    };
    const inInches = await column('inch');
    const inMm = await column('metric');
    expect(inInches).toEqual(inMm);
    const shown = await app.page.locator('.table-slots td[data-column="fretXMm"]').allTextContents();
    expect(inMm.map((value) => Number(value).toFixed(2))).toEqual(shown);
    expect(shown).toHaveLength(BUILD.fretCount);
  });

  test('all of them come in one ZIP file', async () => {
    const app = await files();
    const { name, bytes } = await download(app, /All tables in one ZIP/);
    expect(name).toBe(`bolt-on-six-hard-maple-tables-${STAMP}.zip`);
    const names = Object.keys(unzipSync(bytes)).map((file) => file.replace('bolt-on-six-hard-maple-', ''));
    expect(names).toEqual(
      ['slots', 'wire', 'cutting', 'seating', 'quarters', 'levelling', 'setUp', 'playing', 'metals', 'checks'].map(
        (id) => `${id}-${STAMP}.csv`,
      ),
    );
  });
});

describe('the template', () => {
  const within = (actual: number, wanted: number) =>
    expect(Math.abs(actual - wanted), `${actual} for ${wanted}`).toBeLessThan(0.01);

  test.each([
    ['a4', 297, 210],
    ['letter', 279.4, 215.9],
  ] as const)('%s: what the browser prints measures back to 0.01 mm', async (paper, lengthMm, heightMm) => {
    const app = await template();
    await app.page.getByRole('combobox', { name: /^Paper/ }).selectOption(paper);
    await expect
      .poll(() =>
        app.page
          .locator('.template-pages img')
          .evaluateAll((pages) => pages.every((page) => (page as HTMLImageElement).complete)),
      )
      .toBe(true);
    await app.screenshot(`sheets/template-${paper}`);
    const pages = readPdf(await app.page.pdf({ preferCSSPageSize: true }));
    expect(pages).toHaveLength(await app.page.locator('.template-pages img').count());
    let slots = 0;
    let origin = 0;
    for (const page of pages) {
      expect(Math.abs(page.widthMm - lengthMm)).toBeLessThan(0.4);
      expect(Math.abs(page.heightMm - heightMm)).toBeLessThan(0.4);
      const level = page.lines.filter(({ y1, y2 }) => Math.abs(y1 - y2) < 1e-6).map(({ x1, x2 }) => Math.abs(x2 - x1));
      within(
        level.find((length) => length > 99 && length < 101)!,
        100,
      );
      within(
        level.find((length) => length > 101 && length < 103)!,
        101.6,
      );
      const upright = page.lines
        .filter(({ x1, x2, y1, y2 }) => Math.abs(x1 - x2) < 1e-6 && Math.abs(y1 - y2) > 30)
        .map(({ x1 }) => x1)
        .sort((a, b) => a - b);
      if (slots === 0) {
        // The nut is the first line; on the pages that follow, positions are counted from the first slot of the page.
        origin = upright[0]!;
        for (const x of upright.slice(1)) within(x - origin, fretPositionMm(BUILD.scaleLengthMm, (slots += 1)));
        continue;
      }
      // Slots in the overlap stand on both pages; the end of the board is the last line.
      const ends = upright.slice(0, -1);
      const first = BUILD.fretCount - ends.length + 1;
      for (const [index, x] of ends.entries()) {
        within(
          x - ends[0],
          fretPositionMm(BUILD.scaleLengthMm, first + index) - fretPositionMm(BUILD.scaleLengthMm, first),
        );
      }
      slots = BUILD.fretCount;
    }
    expect(slots).toBe(BUILD.fretCount);
  });

  test('is saved as one drawing in millimetres', async () => {
    const app = await template();
    const { name, bytes } = await download(app, 'Save as one SVG');
    expect(name).toBe('bolt-on-six-hard-maple-template.svg');
    const svg = bytes.toString('utf8');
    expect(/width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 \1 \2"/.test(svg)).toBe(true);
    expect(svg).toContain(`Backbow ${PROGRAM_VERSION}`);
    // Well-formed for the browser's own parser.
    const faults = await app.page.evaluate(
      (text) => new DOMParser().parseFromString(text, 'image/svg+xml').querySelectorAll('parsererror').length,
      svg,
    );
    expect(faults).toBe(0);
  });
});

describe('the 3D file', () => {
  test('is the neck as shown, with factor and moment in it; the validator finds nothing wrong', async () => {
    const app = await openApp(DESK);
    await app.page.keyboard.press('[');
    await app.page.keyboard.press('.');
    await app.page.keyboard.press('d');
    const { name, bytes } = await download(app, /3D file/);
    expect(name).toBe('bolt-on-six-hard-maple-neck.glb');
    const report = await validateBytes(new Uint8Array(bytes), { maxIssues: 0 });
    expect(report.issues.messages).toEqual([]);
    const { json } = await new WebIO().binaryToJSON(new Uint8Array(bytes));
    expect(json.asset.generator).toBe(`Backbow ${PROGRAM_VERSION}`);
    expect(json.asset.extras).toMatchObject({
      program: 'Backbow',
      programVersion: PROGRAM_VERSION,
      stamp: STAMP,
      build: BUILD.name,
      bowFactor: 30,
      phase: 'strung',
      strung: true,
      lengthUnit: 'metre',
    });
    expect(json.nodes?.map((node) => node.name)).toContain('Strings');
  });

  test('a neck with some frets in has just those, and no strings', async () => {
    const app = await openApp(DESK);
    for (let step = 0; step < 4; step += 1) await app.page.keyboard.press(',');
    await app.page.keyboard.press('d');
    const { bytes } = await download(app, /3D file/);
    const { json } = await new WebIO().binaryToJSON(new Uint8Array(bytes));
    expect(json.asset.extras).toMatchObject({ fretsIn: BUILD.fretCount - 4, phase: 'frets', strung: false });
    expect(json.nodes?.map((node) => node.name)).not.toContain('Strings');
  });
});

describe('the picture', () => {
  test('is saved large from the page of files, even when that was opened first, with factor, scale and version', async () => {
    const app = await openSheet('files');
    await expect.poll(async () => (await app.progress()).frames).toBeGreaterThan(0);
    const { name, bytes } = await download(app, /Picture, as PNG/);
    expect(name).toBe('bolt-on-six-hard-maple-picture.png');
    const picture = PNG.sync.read(bytes);
    expect([picture.width, picture.height]).toEqual([2400, 1500]);
    /** Share of pixels in a box that are much darker than the ground. */
    const ink = (left: number, top: number, right: number, bottom: number) => {
      let dark = 0;
      for (let y = top; y < bottom; y += 1) {
        for (let x = left; x < right; x += 1) if (picture.data[4 * (y * picture.width + x)] < 120) dark += 1;
      }
      return dark / ((right - left) * (bottom - top));
    };
    // Lower left the factor, lower right the bar and below it name and version; between them nothing.
    expect(ink(20, 1380, 220, 1420)).toBeGreaterThan(0.02);
    expect(ink(1940, 1380, 2380, 1440)).toBeGreaterThan(0.02);
    expect(ink(2030, 1445, 2380, 1485)).toBeGreaterThan(0.02);
    expect(ink(1000, 1380, 1400, 1485)).toBe(0);
    expect(app.troubles).toEqual([]);
  });

  test('without WebGL the page says why there is none, and everything else is saved all the same', async () => {
    const app = await openSheet('files', {
      prepare: async (page) => {
        await page.addInitScript(() => {
          HTMLCanvasElement.prototype.getContext = () => null;
        });
      },
    });
    await app.page.getByRole('button', { name: /Picture, as PNG/ }).click();
    await app.page.getByText('Picture, as PNG could not be made').waitFor();
    expect((await download(app, /3D file/)).bytes.length).toBeGreaterThan(100_000);
  });
});

test('the project file saved here opens again as the same build', async () => {
  const app = await files();
  const { bytes } = await download(app, /Project file/);
  const read = readProject(bytes.toString('utf8'));
  expect(read.ok && read.build).toEqual(BUILD);
});
