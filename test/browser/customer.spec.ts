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
    advised: 1,
  },
  offers: [
    { price: '180', time: 'two days' },
    { price: '240', time: '' },
    { price: '', time: '' },
  ],
};
const PHONE: OpenOptions = { viewport: { width: 390, height: 844 }, touch: true, waitForPicture: false };

function pathOf(shared: Shared, kind = 'customer'): string {
  const link = writeLink(shared);
  if (!link.ok) throw new Error(link.trouble.code);
  return `#${kind}=${link.text}`;
}

/** Waits until everything is on the page: sentences, bands, lines, and solids, one where all choices look alike. */
async function complete({ page }: App, count: number, solids = 1): Promise<void> {
  await expect.poll(() => page.locator('.solids img').count()).toBe(solids);
  await expect.poll(() => page.locator('.lies .strip').count()).toBe(count);
  await page
    .getByText(/of 100 such necks|nearly every such neck/)
    .first()
    .waitFor();
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
    // The one that is advised comes first, in the drawing as in the words.
    expect(await choices.locator('h3').allInnerTexts()).toEqual([
      `${CUSTOMER_WORDS.methods.glue} ${CUSTOMER_WORDS.advised}`,
      CUSTOMER_WORDS.methods.press,
      CUSTOMER_WORDS.methods.both,
    ]);
    const lies = page.locator('.lies > li');
    expect(await lies.locator('h3').allInnerTexts()).toEqual([
      CUSTOMER_WORDS.methods.glue,
      CUSTOMER_WORDS.methods.press,
      CUSTOMER_WORDS.methods.both,
    ]);
    expect(await lies.nth(0).locator('p').innerText()).toBe(CUSTOMER_WORDS.lies.flat);
    expect(await lies.nth(1).locator('p').innerText()).toMatch(/^The middle is 0\.\d\d\u00a0mm higher than the ends/);
    await choices.nth(1).getByText('180').waitFor();
    await choices
      .nth(1)
      .getByText(/^two days\. Nothing has to set/)
      .waitFor();
    expect(await choices.nth(2).getByText(CUSTOMER_WORDS.price, { exact: true }).count()).toBe(0);
    await page
      .getByText(/nine of ten such necks are bent by/)
      .first()
      .waitFor();
    const text = await page.locator('main').innerText();
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(text).not.toMatch(/\b(tang|kerf|relief|back-bow|chamfer|rod|range|hollow)\b/i);

    const [content, frame] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(content).toBe(frame);
    // The slider bends all of them at once.
    const boards = () => page.locator('.lies .board').evaluateAll((all) => all.map((path) => path.getAttribute('d')));
    const before = await boards();
    expect(new Set(before).size).toBe(2);
    await page.getByRole('slider', { name: CUSTOMER_WORDS.moment }).press('ArrowRight');
    await page.getByRole('button', { name: CUSTOMER_WORDS.moments.strung, pressed: true }).waitFor();
    const strung = await boards();
    expect(strung.filter((path, at) => path === before[at])).toEqual([]);
    await page.getByRole('button', { name: 'after three months' }).tap();
    expect(await page.getByRole('slider', { name: CUSTOMER_WORDS.moment }).getAttribute('aria-valuetext')).toBe(
      'after three months',
    );
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
  await complete(app, 2, 2);
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
  expect(await page.locator('.on-paper .strip').count()).toBe(9);
  await app.screenshot('customer/print', { fullPage: true });
  await page.emulateMedia({ media: null, colorScheme: null });
  const paper = await page.pdf({ format: 'A4', margin: { top: '12mm', bottom: '12mm', left: '12mm', right: '12mm' } });
  // One printed page.
  expect(paper.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
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
  expect(await app.page.locator('.lies > li').count()).toBe(3);
  expect(await app.page.locator('.solids').count()).toBe(0);
});

test('what is chosen makes a message that names it, and nothing is sent by the page', async () => {
  const app = await openApp({
    ...PHONE,
    path: pathOf({ ...THREE, page: { ...THREE.page, from: 'Old Mill, +44 20 7946 0018, mill@workshop.example' } }),
  });
  const { page } = app;
  await page.locator('.from a').first().waitFor();
  expect(await page.locator('.from a').evaluateAll((all) => all.map((link) => link.getAttribute('href')))).toEqual([
    'tel:+442079460018',
    'mailto:mill@workshop.example',
  ]);
  await page.getByRole('button', { name: CUSTOMER_WORDS.chooseName(CUSTOMER_WORDS.methods.press), exact: true }).tap();
  const message = await page.getByLabel(CUSTOMER_WORDS.messageLabel).inputValue();
  const [mark] = /[A-Z]{6}-[A-Z]{3}-[A-Z]{3}/.exec(message)!;
  expect(message).toContain('I choose: Frets pressed in');
  expect(message).toContain(`Date: ${new Date().getUTCDate()} `);
  expect(await page.locator('footer').innerText()).toContain(mark);
  const mail = await page.getByRole('link', { name: CUSTOMER_WORDS.mail }).getAttribute('href');
  expect(mail).toMatch(/^mailto:mill@workshop\.example\?subject=/);
  expect(decodeURIComponent(mail!)).toContain(mark);
  expect(await page.getByRole('link', { name: CUSTOMER_WORDS.text }).getAttribute('href')).toMatch(
    /^sms:\+442079460018\?/,
  );
  await app.screenshot('customer/chosen');
  expect(await violations(app)).toEqual([]);
  expect(app.troubles).toEqual([]);
});

test('the letter is read before the page has come', async () => {
  const app = await openApp({
    ...PHONE,
    path: pathOf(THREE),
    prepare: async (page) => {
      await page.route(/\/assets\/(common|customer-[^/]*)-?[^/]*\.js$/, async (route) => {
        if (/\/common-/.test(route.request().url())) return;
        await route.continue();
      });
    },
  });
  await app.page.getByText('For Ada').waitFor();
  await app.page.getByText('I would press them in: <b>simple</b> & easy to undo.').waitFor();
  expect(await app.page.locator('.choice').count()).toBe(0);
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
