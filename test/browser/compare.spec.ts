/** Comparing in the page: opened by its key, numbers as in the library, choosing and copying as one step that undo takes back. */
import { readFile } from 'node:fs/promises';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../tools/presets.ts';
import { METHODS } from '../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../src/mechanics/relief.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHOD_WORDS } from '../../src/speech/en/workshop/workshop.ts';
import { bowText } from '../../src/speech/bow.ts';
import { routeOf } from '../../src/state/share/address.ts';
import { readLink, writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { DESK, differingPixels, shareUnlike, withBrowser, writePicture, type App } from './harness.ts';
import { IS_LONG } from '../draw.ts';

const openApp = withBrowser();
const first = PRESETS[0].build;
const dialog = (app: App) => app.page.getByRole('dialog', { name: 'Compare' });

async function open(app: App): Promise<void> {
  await app.page.keyboard.press('g');
  await dialog(app).getByRole('table', { name: 'What differs, and why' }).waitFor();
}

/** Until every band of the table has come. */
async function bandsHere(app: App): Promise<void> {
  await app.page.waitForFunction(() => {
    const table = document.querySelector('.compare-differences');
    return table !== null && !table.textContent.includes('band …');
  });
}

const cells = (app: App, row: string) =>
  dialog(app).locator(`tbody[data-row="${row}"] .compare-value`).allTextContents();
const method = (app: App) => app.page.locator('.legend input[type=radio]:checked').first().getAttribute('value');

test('three ways of one neck: one picture, numbers of the library, reasons; the moment moves all', async () => {
  const app = await openApp(DESK);
  await open(app);
  await bandsHere(app);
  const { methods } = createPredictor().predict(first);
  for (const state of ['fretted', 'strung', 'settled'] as const) {
    expect(await cells(app, state)).toEqual(METHODS.map((each) => bowText(methods[each][state].extremeMm, 'metric')));
  }
  const percent = (100 * methods.press.extraFlexibility).toFixed(0);
  await dialog(app).getByText(`Empty slots: ${percent}\u00a0% more flexible under the strings`).waitFor();
  const canvas = dialog(app).locator('canvas').first();
  await canvas.waitFor();
  await app.settle();
  const picture = await app.canvasPicture('.compare-picture canvas');
  // Three necks cover a good part of the picture; an empty one has none of it.
  expect(shareUnlike(picture, await app.groundColour())).toBeGreaterThan(0.03);
  await app.screenshot('compare/three-ways');
  await dialog(app).getByRole('button', { name: 'Whole neck' }).click();
  await app.settle();
  await app.screenshot('compare/three-ways-whole');

  const moment = dialog(app).getByRole('slider', { name: 'Moment in the job' });
  await moment.press('Home');
  expect(await cells(app, 'now')).toEqual(['flat', 'flat', 'flat']);
  await moment.press('End');
  expect(await cells(app, 'now')).toEqual(METHODS.map((each) => bowText(methods[each].rodSet.extremeMm, 'metric')));
  await dialog(app).getByText('What differs, and why').scrollIntoViewIfNeeded();
  await app.screenshot('compare/table');
  expect(app.troubles).toEqual([]);
});

test('pointing at the chart points at the fret in the picture, and the other way round', async () => {
  // A window in which picture and chart are in sight together.
  const app = await openApp({ viewport: { width: 1440, height: 900 } });
  const { page } = app;
  await open(app);
  await dialog(app).locator('canvas').first().waitFor();
  await dialog(app).getByRole('button', { name: 'Whole neck' }).click();
  await app.settle();
  const chart = dialog(app).locator('.compare-chart .chart-box svg');
  const box = (await chart.boundingBox())!;
  const atFrets = () => dialog(app).locator('.at-fret').allTextContents();
  expect(await atFrets()).toEqual(['', '', '']);
  // As it is: hiding what lies around the picture would take the drawing away from under the pointer.
  const picture = async () => PNG.sync.read(await dialog(app).locator('.compare-picture').screenshot());
  const before = await picture();
  await app.afterFrame(() => page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.5));
  const said = await atFrets();
  const fret = Number(/^fret (\d+): /.exec(said[0])![1]);
  // Every neck says its own bow there.
  const { methods, fretXMm, stationXMm } = createPredictor().predict(first);
  const reliefs = METHODS.map((each) => sampleLine(stationXMm, methods[each].fretted.reliefMm, fretXMm[fret - 1]));
  expect(said).toEqual(reliefs.map((relief) => `fret ${fret}: ${bowText(relief, 'metric')}`));
  expect(await dialog(app).locator('.compare-chart .cursor text').textContent()).toBe(`fret ${fret}`);
  expect(await dialog(app).locator('.compare-chart .cursor circle').count()).toBe(3);
  expect(differingPixels(before, await picture())).toBeGreaterThan(200);
  await app.screenshot('compare/hover');

  await page.mouse.move(2, 2);
  expect(await atFrets()).toEqual(['', '', '']);
  // Somewhere over the first neck: look for a fret that answers.
  const place = (await dialog(app).locator('.compare-picture canvas').first().boundingBox())!;
  for (let step = 1; step < 40 && (await atFrets())[0] === ''; step += 1) {
    await page.mouse.move(place.x + place.width * 0.45, place.y + (place.height * step) / 40);
  }
  expect((await atFrets())[0]).toMatch(/^fret \d+: /);
  expect(app.troubles).toEqual([]);
});

test.runIf(IS_LONG)('the chart is saved as a drawing that stands by itself', async () => {
  const app = await openApp({ ...DESK, colourScheme: 'dark' });
  await open(app);
  await bandsHere(app);
  const waiting = app.page.waitForEvent('download');
  await dialog(app).getByRole('button', { name: 'save SVG' }).click();
  const download = await waiting;
  expect(download.suggestedFilename()).toBe('press-fit-glue-fit-press-and-glue-comparison.svg');
  const text = await readFile(await download.path(), 'utf8');
  for (const each of METHODS) expect(text).toContain(METHOD_WORDS[each].label);
  expect(text).toContain('all 22 frets in, no strings');
  expect(text).not.toMatch(/var\(|light-dark|\sclass=|\sstyle=|\sdata-/);
  const picture = await app.context.newPage();
  await picture.setContent(
    `<body style="margin:0"><img alt="" src="data:image/svg+xml;base64,${Buffer.from(text).toString('base64')}"></body>`,
  );
  await picture.waitForFunction(() => document.querySelector('img')!.naturalWidth > 0);
  writePicture('compare/saved', await picture.locator('img').screenshot());
  expect(await app.page.locator('.saved-chart').count()).toBe(0);
  expect(app.troubles).toEqual([]);
});

test('choosing one as the build is one step, and undo takes it back', async () => {
  const app = await openApp(DESK);
  await open(app);
  expect(await method(app)).toBe('press');
  await app.afterChange(() => dialog(app).getByRole('button', { name: 'Choose glue fit as the build' }).click());
  expect(await method(app)).toBe('glue');
  await app.afterChange(() => dialog(app).getByRole('button', { name: /^Undo/ }).click());
  expect(await method(app)).toBe('press');
  expect(await dialog(app).getByRole('columnheader').allTextContents()).toEqual([
    'press fit',
    'glue fit',
    'press and glue',
  ]);
  await dialog(app).getByRole('button', { name: 'Swap glue fit with the first' }).click();
  expect(await dialog(app).getByRole('columnheader').first().textContent()).toBe('glue fit');
  expect(app.troubles).toEqual([]);
});

test('any two necks: settings are copied in one step, by keyboard alone', async () => {
  const app = await openApp({ ...DESK, colourScheme: 'dark' });
  await open(app);
  await dialog(app).getByLabel('Second neck').selectOption({ label: PRESETS[1].label });
  await dialog(app).getByLabel('Third neck').selectOption({ label: 'none' });
  await bandsHere(app);
  await app.settle();
  await app.screenshot('compare/two-dark');
  const summary = dialog(app).getByText('Settings that differ');
  await summary.focus();
  await app.page.keyboard.press('Enter');
  const copy = dialog(app).getByRole('button', {
    name: `Copy “The strings” from ${PRESETS[1].label}`,
  });
  const others = dialog(app).getByRole('button', {
    name: `Copy “The slots” from ${PRESETS[1].label}`,
  });
  await others.focus();
  await app.afterChange(() => app.page.keyboard.press('Enter'));
  await others.waitFor({ state: 'detached' });
  await summary.scrollIntoViewIfNeeded();
  await app.screenshot('compare/settings-dark');
  await app.afterChange(() =>
    dialog(app)
      .getByRole('button', { name: /^Undo: Copy The slots/ })
      .click(),
  );
  await others.waitFor();
  expect(await copy.count()).toBeLessThanOrEqual(1);
  await app.page.keyboard.press('Escape');
  await dialog(app).waitFor({ state: 'detached' });
  expect(app.troubles).toEqual([]);
});

test('ways of seating follow the bench, what is kept says of when it is, and the link is that of what is shown', async () => {
  const app = await openApp(DESK);
  await app.context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(app);
  await bandsHere(app);
  const before = await cells(app, 'fretted');
  await dialog(app).getByRole('button', { name: 'Keep glue fit as it is' }).click();
  await app.page.keyboard.press('Escape');
  await dialog(app).waitFor({ state: 'detached' });
  const kerf = app.page.getByRole('slider', { name: /^Kerf/ });
  for (let step = 0; step < 4; step += 1) await app.afterChange(() => kerf.press('ArrowUp'));
  await open(app);
  await bandsHere(app);
  await app.settle();
  await app.screenshot('compare/kept');
  await dialog(app).getByText('Share this comparison').click();
  await dialog(app).getByRole('button', { name: 'Copy the link' }).click();
  await dialog(app).getByText('The link is copied.').waitFor();
  const address = await app.page.evaluate(() => navigator.clipboard.readText());
  const read = readLink(routeOf(new URL(address).hash)!.link);
  if (!read.ok) throw new Error(read.trouble.code);
  const { builds } = read.shared;
  const wide = builds[0].kerfMm;
  expect(wide).toBeGreaterThan(first.kerfMm);
  expect(builds.map(({ method: way, kerfMm }) => [way, kerfMm])).toEqual([
    ['press', wide],
    ['glue', first.kerfMm],
    ['both', wide],
  ]);
  const predictor = createPredictor();
  const shown = builds.map((build) => {
    const { methods } = predictor.predict(build);
    return bowText(methods[build.method].fretted.extremeMm, 'metric');
  });
  expect(await cells(app, 'fretted')).toEqual(shown);
  expect(shown[0]).not.toBe(before[0]);
  const headers = await dialog(app).getByRole('columnheader').allTextContents();
  expect(headers[1]).toMatch(/, as of \d\d:\d\d$/);
  await dialog(app)
    .getByRole('button', { name: /^Keep .* as of .* as it is$/ })
    .click();
  await bandsHere(app);
  expect(await dialog(app).getByRole('columnheader').allTextContents()).toEqual([
    'press fit',
    'glue fit',
    'press and glue',
  ]);
  expect(app.troubles).toEqual([]);
});

test('on a phone nothing goes over the edge, and a comparison that came by link opens', async () => {
  const builds = METHODS.map((each): Build => ({ ...PRESETS[1].build, method: each }));
  const link = writeLink({ builds, page: EMPTY_PAGE });
  if (!link.ok) throw new Error(link.trouble.code);
  const app = await openApp({ viewport: { width: 390, height: 844 }, touch: true, path: `#neck=${link.text}` });
  await app.page.getByRole('button', { name: 'Compare them' }).click();
  await bandsHere(app);
  expect(await dialog(app).getByRole('columnheader').allTextContents()).toEqual([
    'press fit',
    'glue fit',
    'press and glue',
  ]);
  const wide = await dialog(app).evaluate((element) => element.scrollWidth - element.clientWidth);
  expect(wide).toBe(0);
  await app.settle();
  await app.screenshot('compare/phone');
  await dialog(app)
    .getByRole('heading', { name: 'What differs, and why' })
    .evaluate((element) => element.scrollIntoView());
  await app.screenshot('compare/phone-table');
  await dialog(app).getByText('Share this comparison').click();
  const address = await dialog(app).getByLabel('Link', { exact: true }).last().inputValue();
  expect(address).toContain('#neck=1.');
  // The customer's page has a link and a code of its own, in two steps.
  await dialog(app).getByText('A page for the customer').click();
  const [customer] = await dialog(app).getByLabel('Link', { exact: true }).all();
  expect(await customer.inputValue()).toContain('#customer=1.');
  await dialog(app).getByRole('button', { name: 'QR code' }).first().click();
  await dialog(app).getByRole('img', { name: 'QR code of the link' }).waitFor();
  const priced = dialog(app).getByRole('group', { name: 'Frets glued in' }).getByLabel('Price');
  const plain = await customer.inputValue();
  await priced.fill('240');
  expect(await customer.inputValue()).not.toBe(plain);
  expect(app.troubles).toEqual([]);
});

test.runIf(IS_LONG)('without WebGL chart and table stand all the same', async () => {
  const app = await openApp({
    waitForPicture: false,
    prepare: async (page) => {
      await page.addInitScript(() => {
        const original = HTMLCanvasElement.prototype.getContext;
        HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
          return kind.startsWith('webgl')
            ? null
            : (original as (...all: unknown[]) => unknown).call(this, kind, ...rest);
        } as typeof original;
      });
    },
  });
  await app.page.waitForFunction(
    () => ((window as { backbow?: { predictionVersion: number } }).backbow?.predictionVersion ?? 0) > 0,
  );
  await open(app);
  await bandsHere(app);
  await dialog(app).getByText('The picture cannot be drawn here.').waitFor();
  await dialog(app)
    .getByRole('img', { name: /^Lines of the fret tops/ })
    .waitFor();
  expect((await cells(app, 'fretted')).length).toBe(3);
  await app.screenshot('compare/no-webgl');
});
