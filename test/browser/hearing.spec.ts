/**
 * Hearing a tapped blank: the browser's own microphone, fed with a made-up recording; the same as a file; and what is said
 * where there is no microphone to be had.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { bar, recorded } from '../mechanics/hearing/recordings.ts';
import { root } from '../tools/project.mjs';
import { serveFolder } from '../tools/server.mjs';
import { chooseFiles } from './choose-files.ts';
import { drawWithFingers } from './finger.ts';
import { englishLeft, IN_GERMAN } from './german.ts';
import { DESK, withBrowser, type App, type Open, type OpenOptions } from './harness.ts';
import { launch, openPage, OTHER_MACHINE } from './open-page.ts';
import { wavFile } from './sound-file.ts';
import { violations } from './violations.ts';

/** A maple blank about to be tapped: everything but the tone. At 182.4 Hz it has some 12 GPa. */
const BLANK: Build = {
  ...defaultBuild(),
  neckBlankTest: 'tap',
  neckBlankLengthMm: 750,
  neckBlankWidthMm: 90,
  neckBlankThicknessMm: 25,
  neckBlankMassG: 1180,
  neckBlankFrequencyHz: null,
};

const TAPS = wavFile(recorded({ seed: 1, modes: bar(182.4), taps: 6 }));

const openApp = withBrowser();

function linkTo(build: Build): string {
  const link = writeLink({ builds: [build], page: EMPTY_PAGE });
  if (!link.ok) throw new Error(link.trouble.code);
  return `#neck=${link.text}`;
}

const control = ({ page }: App) => page.locator('[data-parameter="neckBlankFrequencyHz"]');
const dialog = ({ page }: App) => page.locator('dialog.hearing');

/** The dialog, opened from the field. */
async function opened(app: App): Promise<void> {
  // It tells that the link was opened, over what is looked at here.
  await app.page
    .locator('.notices')
    .getByRole('button', { name: /^(Close|Schließen)$/ })
    .click();
  await app.page.locator('details.group').first().locator('summary').click();
  await control(app)
    .getByRole('button', { name: /^(Hear it|Hören)/ })
    .click();
  await dialog(app).waitFor();
}

const openBlank = async (options: OpenOptions, open: Open = openApp): Promise<App> => {
  const app = await open({ ...DESK, ...options, path: linkTo(BLANK) });
  await opened(app);
  return app;
};

const openTaps = (app: App, wav: Buffer = TAPS) =>
  chooseFiles(
    app.page,
    () =>
      dialog(app)
        .getByRole('button', { name: /sound file|Tondatei/ })
        .click(),
    {
      name: 'taps.wav',
      mimeType: 'audio/wav',
      buffer: wav,
    },
  );

describe('by the microphone', () => {
  const folder = mkdtempSync(join(tmpdir(), 'backbow-'));
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serveFolder>>;

  beforeAll(async () => {
    const path = join(folder, 'taps.wav');
    writeFileSync(path, TAPS);
    ({ browser } = await launch([
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-audio-capture=${path}`,
    ]));
    server = await serveFolder(join(root, 'dist'), { port: 0, host: '127.0.0.1' });
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true });
  });

  test('five taps give the first tone, which goes into the field like a typed one', async () => {
    const app = await openBlank({ context: { permissions: ['microphone'] } }, (options) =>
      openPage(browser, server.address, options ?? {}),
    );
    const listening = dialog(app);
    await listening.getByRole('button', { name: 'Listen' }).click();
    await listening.getByRole('meter', { name: 'Loudness' }).waitFor();
    const result = listening.locator('.hearing-result');
    await result.waitFor();
    // It ends by itself once five taps agree.
    await listening.getByRole('button', { name: 'Listen again' }).waitFor();
    const said = await result.innerText();
    const heardHz = Number(/^([\d.]+)\sHz, the first bending tone/.exec(said)?.[1]);
    // The law of the reckoning room; the browser plays the file at its own device's rate.
    expect(Math.abs(heardHz / 182.4 - 1)).toBeLessThan(0.005);
    expect(said).toMatch(/From [5-9] taps, [\d.]+\sHz to [\d.]+\sHz: 0\.\d\d\s% apart\./);
    await app.screenshot('hearing/desk');
    await result.getByRole('button', { name: /^Use/ }).click();
    await listening.waitFor({ state: 'hidden' });
    expect(Number(await control(app).getByRole('textbox').inputValue())).toBe(heardHz);
    await app.page.getByText(/^Measured: 1[123]\.\d\sGPa/).waitFor();
    expect(app.troubles).toEqual([]);
    await app.close();
  });
});

describe('by a file', () => {
  test('on a phone, in German, in the dark: the tone, and one chosen by hand', async () => {
    const app = await openBlank({
      viewport: { width: 390, height: 844 },
      touch: true,
      colourScheme: 'dark',
      context: { locale: 'de-DE' },
    });
    await openTaps(app);
    const result = dialog(app).locator('.hearing-result');
    await result.waitFor();
    expect(await result.innerText()).toMatch(/^182,\d\sHz, der erste Biegeton/);
    expect(await englishLeft(app)).toEqual([]);
    await app.screenshot('hearing/phone-german-dark');
    await result.scrollIntoViewIfNeeded();
    await app.screenshot('hearing/phone-german-dark-below');
    expect(await violations(app, 'dialog')).toEqual([]);
    // A swipe that scrolls the page chooses nothing.
    const { x, y, width, height } = (await dialog(app).locator('.spectrum').boundingBox())!;
    const at = (share: number) => [[x + 0.8 * width, y + share * height] as const];
    const before = await result.innerText();
    await drawWithFingers(app.page, [at(0.8), at(0.6), at(0.4), at(0.1)]);
    expect(await result.innerText()).toBe(before);
    await dialog(app).getByRole('slider', { name: 'Gewählter Ton' }).press('ArrowUp');
    expect(await result.innerText()).toMatch(/^18[23],\d\sHz, von Hand gewählt/);
    await dialog(app)
      .getByRole('button', { name: /^9\d\d,\d\sHz$/ })
      .click();
    expect(await result.innerText()).toMatch(/^9\d\d,\d\sHz, von Hand gewählt\s+Aus 6 Schlägen/);
    expect(app.troubles).toEqual([]);
  });

  test('the line is dragged sideways and catches on tones', async () => {
    const app = await openBlank({});
    await openTaps(app);
    const result = dialog(app).locator('.hearing-result');
    await result.waitFor();
    const before = await result.innerText();
    const { x, y, width, height } = (await dialog(app).locator('.spectrum').boundingBox())!;
    /** Where a frequency stands on the axis from 20 to 4000 Hz. */
    const at = (hz: number) => x + (width / 680) * (10 + (660 * Math.log(hz / 20)) / Math.log(200));
    const { mouse } = app.page;
    await mouse.move(at(300), y + height / 2);
    await mouse.down();
    await mouse.move(at(310), y + height / 2, { steps: 5 });
    await mouse.move(at(184), y + height / 2, { steps: 5 });
    await mouse.up();
    expect(await result.innerText()).toBe(before);
    await mouse.move(at(300), y + height / 2);
    await mouse.down();
    await mouse.move(at(330), y + height / 2, { steps: 5 });
    await mouse.up();
    expect(await result.innerText()).toMatch(/^3[23]\d\.\d\sHz, chosen by hand/);
    await app.screenshot('hearing/by-hand');
    expect(app.troubles).toEqual([]);
  });

  test('what cannot be told is refused with its numbers, and no frequency is offered', async () => {
    const app = await openBlank({});
    await openTaps(app, wavFile(recorded({ seed: 1, modes: bar(182.4, [0, 0.3, 0.2]), taps: 5 })));
    await dialog(app)
      .getByText(/^The blank rings at 49\d\.\d\sHz, most likely its second bending tone/)
      .waitFor();
    expect(await dialog(app).getByRole('button', { name: /^Use/ }).count()).toBe(0);
    await app.screenshot('hearing/refused');
    await openTaps(app, Buffer.from('no sound at all'));
    await dialog(app).getByText('The browser cannot read this sound file.').waitFor();
  });
});

describe('without a microphone', () => {
  test('denied: it says so, and the file remains', async () => {
    const app = await openBlank({
      prepare: async (page) => {
        await page.addInitScript(() => {
          navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
        });
      },
    });
    await dialog(app).getByRole('button', { name: 'Listen' }).click();
    await dialog(app)
      .getByText(/^The browser does not let this page use the microphone/)
      .waitFor();
    expect(
      await dialog(app)
        .getByRole('button', { name: /sound file/ })
        .isEnabled(),
    ).toBe(true);
  });

  test('none plugged in: it says so', async () => {
    const app = await openBlank({ context: { permissions: ['microphone'] } });
    await dialog(app).getByRole('button', { name: 'Listen' }).click();
    await dialog(app)
      .getByText(/^This device offers no microphone/)
      .waitFor();
    expect(await dialog(app).getByRole('button', { name: 'Listen' }).count()).toBe(0);
    expect(
      await dialog(app)
        .getByRole('button', { name: /sound file/ })
        .isEnabled(),
    ).toBe(true);
  });

  test('over plain http from another machine: it says so at once, in German', async () => {
    const own = await serveFolder(join(root, 'dist'), { port: 0, host: '127.0.0.1' });
    const address = new URL(own.address);
    address.hostname = OTHER_MACHINE;
    const app = await openBlank({ ...IN_GERMAN, address: address.href });
    await dialog(app)
      .getByText(/^Ein Mikrofon geben Browser nur Seiten über https/)
      .waitFor();
    expect(await dialog(app).getByRole('button', { name: 'Zuhören' }).count()).toBe(0);
    await own.close();
  });
});
