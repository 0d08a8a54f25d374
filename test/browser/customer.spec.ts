/**
 * The customer's page on a phone and on a desk: pictures, plain sentences, the note, the way to the numbers and back; what
 * cannot be opened says so; on paper it is light.
 */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../tools/presets.ts';
import { CUSTOMER_WORDS } from '../../src/speech/en/pages/customer.ts';
import { writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE, type Shared } from '../../src/state/share/shared.ts';
import { withBrowser, type App, type OpenOptions } from './harness.ts';
import { violations } from './violations.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();

const { build } = PRESETS[0];
const THREE: Shared = {
  builds: (['press', 'glue', 'both'] as const).map((method) => ({ ...build, method })),
  page: {
    from: 'Workshop at the Old Mill, Lower Lane 3',
    to: 'Ada',
    note: 'You play with a light hand and want it low.\nI would press them in: <b>simple</b> & easy to undo.',
    advised: 0,
  },
};
const PHONE: OpenOptions = { viewport: { width: 390, height: 844 }, touch: true, waitForPicture: false };

function pathOf(shared: Shared, kind = 'customer'): string {
  const link = writeLink(shared);
  if (!link.ok) throw new Error(link.trouble.code);
  return `#${kind}=${link.text}`;
}

/** Waits until everything is on the page: sentences, bands, pictures. */
async function complete({ page }: App, count: number): Promise<void> {
  await expect.poll(() => page.locator('.choice img').count()).toBe(count);
  await expect.poll(() => page.getByText(/of 100 such necks|nearly every such neck/).count()).toBe(count);
  await page.evaluate(() => Promise.all(Array.from(document.images, (image) => image.decode())));
}

const SCHEMES = [
  ['light', 'light'],
  ['dark', 'dark'],
] as const;

describe.each(SCHEMES.slice(0, draw(SCHEMES.length, 1)))('on a phone, %s', (_name, colourScheme) => {
  test('three choices are shown in pictures and plain words, and nothing is wider than the window', async () => {
    const app = await openApp({ ...PHONE, colourScheme, path: pathOf(THREE) });
    const { page } = app;
    await complete(app, 3);
    expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe(CUSTOMER_WORDS.titleMany);
    await page.getByText('For Ada').waitFor();
    await page.getByText('I would press them in: <b>simple</b> & easy to undo.').waitFor();
    const choices = page.locator('.choice');
    expect(await choices.locator('h3').allInnerTexts()).toEqual([
      `${CUSTOMER_WORDS.methods.press} ${CUSTOMER_WORDS.advised}`,
      CUSTOMER_WORDS.methods.glue,
      CUSTOMER_WORDS.methods.both,
    ]);
    await choices
      .nth(0)
      .getByText(/All frets together bend the neck backwards by 0\.\d\d\u00a0mm/)
      .waitFor();
    await choices
      .nth(0)
      .getByText(/in nine of ten such necks it is/)
      .waitFor();
    await choices.nth(1).getByText(CUSTOMER_WORDS.bendsNot).waitFor();
    const text = await page.locator('main').innerText();
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(text).not.toMatch(/\b(tang|kerf|relief|back-bow|chamfer)\b/i);

    const [content, frame] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(content).toBe(frame);
    // Pressed and glued necks are drawn bent, the glued one straight.
    const pictures = await page.evaluate(() =>
      Array.from(document.images, (image) => {
        const canvas = document.createElement('canvas');
        [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
        canvas.getContext('2d')!.drawImage(image, 0, 0);
        return canvas.toDataURL();
      }),
    );
    expect(pictures.map((picture) => pictures.indexOf(picture))).toEqual([0, 1, 0]);
    await app.screenshot(`customer/phone-${colourScheme}`, { fullPage: true });
    expect(await violations(app)).toEqual([]);
    expect(app.troubles).toEqual([]);
  });
});

test('the numbers are one tap away, and the way back is the browser’s own', async () => {
  const app = await openApp({
    ...PHONE,
    path: pathOf({ builds: [{ ...build, name: 'For Ada' }], page: THREE.page && { ...THREE.page, advised: null } }),
  });
  const { page } = app;
  await complete(app, 1);
  await page.getByRole('link', { name: CUSTOMER_WORDS.engineering }).tap();
  await page.getByText('Opened “For Ada” from a link.').waitFor();
  expect(await page.getByLabel('Name of the build').inputValue()).toBe('For Ada');
  expect(app.troubles).toEqual([]);
});

test('on a desk, with different necks, by name; the workshop is not loaded, and nothing that it keeps is touched', async () => {
  const app = await openApp({
    viewport: { width: 1280, height: 900 },
    waitForPicture: false,
    path: pathOf({ builds: [PRESETS[0].build, PRESETS[2].build], page: EMPTY_PAGE }),
  });
  await complete(app, 2);
  expect(await app.page.locator('.choice h3').allInnerTexts()).toEqual([PRESETS[0].label, PRESETS[2].label]);
  await app.screenshot('customer/desk', { fullPage: true });
  expect(await app.page.locator('.project-bar').count()).toBe(0);
  expect(
    await app.page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('backbow.neck'))),
  ).toEqual([]);
  expect(app.troubles).toEqual([]);
});

test('on paper it is light, without buttons', async () => {
  const app = await openApp({ ...PHONE, colourScheme: 'dark', path: pathOf(THREE) });
  const { page } = app;
  await complete(app, 3);
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const [ground, ink] = await page.evaluate(() => {
    const style = getComputedStyle(document.body);
    return [style.backgroundColor, getComputedStyle(document.querySelector('main')!).color];
  });
  const brightness = (colour: string) =>
    (colour.match(/[\d.]+/g) ?? []).slice(0, 3).reduce((sum, part) => sum + Number(part), 0);
  expect(brightness(ground)).toBeGreaterThan(700);
  expect(brightness(ink)).toBeLessThan(200);
  expect(await page.getByRole('button', { name: CUSTOMER_WORDS.print }).isVisible()).toBe(false);
  await app.screenshot('customer/print', { fullPage: true });
});

test('without WebGL the words and the numbers are all there', async () => {
  const app = await openApp({
    ...PHONE,
    path: pathOf(THREE),
    prepare: async (page) => {
      await page.addInitScript(() => {
        HTMLCanvasElement.prototype.getContext = () => null;
      });
    },
  });
  await app.page.getByText(CUSTOMER_WORDS.noPicture).waitFor();
  await app.page.getByText(CUSTOMER_WORDS.bendsNot).waitFor();
  expect(await app.page.locator('.choice img, .picture-coming').count()).toBe(0);
});

test.each([
  ['a cut link', () => pathOf(THREE).slice(0, -20), 'It is not whole'],
  ['a newer one', () => pathOf(THREE).replace('=1.', '=9.'), 'newer release'],
])('%s says what is wrong, and leads to the program', async (_what, path, message) => {
  const app = await openApp({ ...PHONE, path: path() });
  await app.page.getByRole('heading', { name: CUSTOMER_WORDS.notOpened }).waitFor();
  await app.page.getByText(message).waitFor();
  await app.page.getByRole('link', { name: CUSTOMER_WORDS.workshop }).tap();
  await app.page.getByLabel('Name of the build').waitFor();
  expect(app.troubles).toEqual([]);
});

test('is composed in the share dialog, with a note that is kept when the dialog is closed', async () => {
  const app = await openApp({ viewport: { width: 1280, height: 900 } });
  const { page } = app;
  await page.keyboard.press('s');
  const dialog = page.getByRole('dialog', { name: 'Share' });
  await dialog.getByRole('radio', { name: 'this neck, seated in different ways' }).check();
  await dialog.getByRole('radio', { name: /a page for the customer/ }).check();
  await dialog.getByLabel(/^From/).fill('Workshop at the Old Mill');
  await dialog.getByLabel('For', { exact: true }).fill('Ada');
  await dialog.getByLabel('Your note').fill('Come by on Thursday.');
  await dialog.getByLabel('You advise').selectOption({ label: CUSTOMER_WORDS.methods.both });
  await dialog.getByRole('button', { name: 'Close' }).click();
  await page.keyboard.press('s');
  expect(await dialog.getByLabel('Your note').inputValue()).toBe('Come by on Thursday.');
  await app.screenshot('customer/compose');
  const [shown] = await Promise.all([
    app.context.waitForEvent('page'),
    dialog.getByRole('link', { name: 'Look at the customer’s page' }).click(),
  ]);
  await shown.getByText('Come by on Thursday.').waitFor();
  await shown.getByText('Workshop at the Old Mill').waitFor();
  expect(await shown.locator('.choice[data-advised] h3').innerText()).toContain(CUSTOMER_WORDS.methods.both);
  expect(app.troubles).toEqual([]);
});
