/**
 * A fretting job at the bench, by touch: the whole of it on a phone whose network is gone, with a crash in the middle; and on a
 * tablet with what the workshop has in its drawer.
 */
import { readFileSync } from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { englishLeft } from './german.ts';
import { ownServer, type OwnServer } from './own-server.ts';
import { withBrowser, type App } from './harness.ts';
import { testForEverybody } from './for-everybody.ts';
import { violations } from './violations.ts';

const openApp = withBrowser();
const servers: OwnServer[] = [];
afterEach(async () => {
  await Promise.all(servers.splice(0).map((server) => server.end()));
});

/** An answer solves half a dozen necks in a worker. */
const heading = ({ page }: App) => page.locator('#bench-title');
const verdict = ({ page }: App) => page.locator('.bench-verdict');
const readings = ({ page }: App) => page.locator('.bench-readings li');

async function kept({ page }: App): Promise<void> {
  const isKept = () =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      return registration?.active?.state === 'activated' && navigator.serviceWorker.controller !== null;
    });
  await expect.poll(isKept).toBe(true);
}

/** From the menu of the workshop to the first step. */
async function started(app: App, words: { readonly menu: RegExp; readonly bench: RegExp; readonly start: RegExp }) {
  const { page } = app;
  await page.getByRole('button', { name: words.menu }).tap();
  await page.getByRole('button', { name: words.bench }).tap();
  const start = page.getByRole('button', { name: words.start });
  await expect.poll(() => start.isEnabled()).toBe(true);
  await start.tap();
  await page.locator('.bench-job').waitFor();
}

/** Turns the leaf until a screen of that kind is open, and tells the titles that were passed. */
async function turnedTo({ page }: App, next: RegExp, id: string): Promise<string[]> {
  const titles: string[] = [];
  const at = page.locator('.bench-place select');
  while ((await at.inputValue()) !== id) {
    const before = await at.inputValue();
    titles.push(await page.locator('#bench-title').innerText());
    await page.getByRole('button', { name: next }).tap();
    await expect.poll(() => at.inputValue()).not.toBe(before);
  }
  return titles;
}

/** What is too small for a glove, or stands over the edge. */
function badTargets({ page }: App): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.bench :is(button, select, summary, label:has(> input))')]
      .filter((element) => element.checkVisibility())
      .flatMap((element) => {
        const { width, height, left, right } = element.getBoundingClientRect();
        const isBad = width < 48 || height < 48 || left < 0 || right > innerWidth;
        return isBad ? [`${element.innerText || element.tagName}: ${width} × ${height}, ${left} to ${right}`] : [];
      }),
  );
}

const fits = ({ page }: App) => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);

const begin = openApp.shared(async (open) => {
  const app = await open();
  await app.page.keyboard.press('o');
  await app.page.locator('.bench-stock summary').click();
  await app.page.locator('.bench-start .bench-main:enabled').waitFor();
  return app;
});
testForEverybody(begin, '.bench');

test('a whole job on a phone without network, with a crash in the middle: nothing is lost', async () => {
  const server = await ownServer();
  servers.push(server);
  const app = await openApp({
    address: server.address,
    offline: true,
    viewport: { width: 390, height: 844 },
    touch: true,
  });
  const { page } = app;
  await kept(app);
  await server.shut();
  await started(app, { menu: /^Menu/, bench: /^At the bench/, start: /^Start with this neck/ });
  const before = await turnedTo(app, /^Next/, 'seat-1');
  expect(before).toContain('Saw the slots');
  expect(await badTargets(app)).toEqual([]);
  expect(await page.locator('.bench-frets').innerText()).toMatch(/^1\s+5\s+9/);
  await turnedTo(app, /^Next/, 'read-1');
  expect(await badTargets(app)).toEqual([]);
  expect(await fits(app)).toBe(true);

  // A size has no sign, and waits for its way.
  await page.getByRole('button', { name: 'Leaf 0.05' }).tap();
  await page.getByRole('button', { name: 'Enter the reading' }).tap();
  await page.getByText('Choose hump or hollow.').waitFor();
  await page.getByRole('radio', { name: 'hump' }).check();
  await page.getByRole('button', { name: 'Enter the reading' }).tap();
  // It is kept before anything is made of it: the page is gone while the answer is being worked out.
  await expect.poll(() => readings(app).count()).toBe(1);
  await page.reload();
  await page.locator('.bench-job').waitFor();
  expect(await heading(app).innerText()).toBe('Straightedge on, 6 frets in');
  expect(await readings(app).first().innerText()).toMatch(/^0\.05\smm hump with 6 frets in/);
  await expect.poll(() => verdict(app).innerText()).toBe('Go on.');
  expect(await page.locator('.bench-outcome').first().innerText()).toMatch(
    /Strung and settled: .*\d of 100 such necks/s,
  );
  expect(await violations(app, '.bench')).toEqual([]);
  await app.screenshot('bench/phone-answer', { fullPage: true });

  // What was entered last is taken back by its key too, and read again.
  await page.keyboard.press('Control+z');
  await expect.poll(() => readings(app).count()).toBe(0);
  await page.getByRole('radio', { name: 'hump' }).check();
  await page.getByRole('button', { name: 'Leaf 0.05' }).tap();
  await page.getByRole('button', { name: 'Enter the reading' }).tap();
  await expect.poll(() => readings(app).count()).toBe(1);

  // Ten times what it should be: asked about, and kept until it is corrected.
  await turnedTo(app, /^Next/, 'read-2');
  await page.getByRole('radio', { name: 'hump' }).check();
  await page.getByRole('button', { name: 'Leaf 1.00' }).tap();
  await page.getByRole('button', { name: 'Enter the reading' }).tap();
  await page.getByText(/^1\.00\smm hump\? Expected was/).waitFor();
  expect(await verdict(app).count()).toBe(0);
  await page.getByRole('button', { name: 'Correct it' }).tap();
  await expect.poll(() => readings(app).count()).toBe(0);
  // The last entry was its removal: that, too, is taken back.
  await page.getByRole('button', { name: 'Undo: the reading removed' }).tap();
  await expect.poll(() => readings(app).count()).toBe(1);
  await page.getByRole('button', { name: 'Undo: the last reading' }).tap();
  await expect.poll(() => readings(app).count()).toBe(0);
  const size = page.getByRole('textbox', { name: /^Or type the size/ });
  await page.getByRole('radio', { name: 'hump' }).check();
  await size.fill('0.09');
  await page.getByRole('button', { name: 'Enter the reading' }).tap();
  await verdict(app).waitFor();

  await turnedTo(app, /^Next/, 'done');
  expect(await page.locator('.bench-table').innerText()).toMatch(/0\.09\smm hump/);
  await page.getByRole('button', { name: 'Readings to the bench log' }).tap();
  await page.getByText('The readings are in the bench log.').first().waitFor();
  await page.getByRole('button', { name: 'Finish the job' }).tap();
  await page.getByText(/^Finished /).waitFor();
  await page.getByRole('button', { name: 'Undo: job finished' }).tap();
  await page.getByRole('button', { name: 'Finish the job' }).tap();
  await page.getByText(/^Finished /).waitFor();
  await app.screenshot('bench/phone-done', { fullPage: true });

  await page.reload();
  await page.getByRole('button', { name: 'All jobs' }).tap();
  await page.getByRole('heading', { name: 'Finished jobs' }).waitFor();
  expect(await page.locator('.bench-jobs li').innerText()).toContain('2 readings');
  await page.getByRole('button', { name: '‹ Neck' }).tap();
  await page.getByRole('button', { name: /^Menu/ }).tap();
  await page
    .locator('#bar-menu')
    .getByRole('button', { name: /^Bench log/ })
    .tap();
  await page.locator('dialog.bench-log tbody tr').first().waitFor();
  expect(app.troubles).toEqual([]);
});

test('on a tablet, in German, in the dark: studs that bite hard are answered with what is in the drawer', async () => {
  const app = await openApp({
    viewport: { width: 820, height: 1180 },
    touch: true,
    colourScheme: 'dark',
    context: { locale: 'de-DE' },
  });
  const { page } = app;
  await page.getByRole('button', { name: /^Menü/ }).tap();
  await page.getByRole('button', { name: /^An der Werkbank/ }).tap();
  await page.getByText('Sägeblätter und Bunddraht der Werkstatt').tap();
  await page.getByRole('button', { name: 'Sägeblatt hinzufügen' }).tap();
  await page.getByRole('textbox', { name: 'Name' }).fill('Zugsäge, grob');
  const kerf = page.getByRole('textbox', { name: /^Schlitzbreite/ });
  await kerf.fill('0,68');
  await kerf.press('Enter');
  await page.getByText('Zugsäge, grob ist geändert.').waitFor();
  expect(await badTargets(app)).toEqual([]);
  expect(await englishLeft(app)).toEqual([]);
  await app.screenshot('bench/tablet-stock', { fullPage: true });
  const start = page.getByRole('button', { name: 'Mit diesem Hals beginnen' });
  await expect.poll(() => start.isEnabled()).toBe(true);
  await start.tap();
  await page.locator('.bench-job').waitFor();
  await page.locator('.bench-place select').selectOption('read-1');
  await page.getByRole('radio', { name: 'Buckel' }).check();
  await page.getByRole('button', { name: 'Blatt 0,15' }).tap();
  await page.getByRole('button', { name: 'Messung eintragen' }).tap();
  const keep = page.getByRole('button', { name: 'Es stimmt, behalten' });
  await keep.or(verdict(app)).waitFor();
  if (await keep.isVisible()) await keep.tap();
  await expect.poll(() => verdict(app).innerText()).toMatch(/^Halt: /);
  const drawer = page.locator('.bench-outcome', { hasText: /auf 0,680\smm \(Zugsäge, grob\) öffnen/ });
  await drawer.waitFor();
  expect(await englishLeft(app)).toEqual([]);
  expect(await fits(app)).toBe(true);
  await app.screenshot('bench/tablet-answer', { fullPage: true });
  await drawer.getByRole('button', { name: /^So machen/ }).tap();
  await page.getByText(/^Diese Schlitze zuerst auf 0,680\smm öffnen: 3, 7, 11/).waitFor();
  expect(await englishLeft(app)).toEqual([]);
  await page.getByRole('button', { name: 'Rückgängig: die Änderung für den Rest' }).tap();
  await expect.poll(() => page.locator('.bench-change').count()).toBe(0);
  await app.screenshot('bench/tablet-seat', { fullPage: true });
  expect(app.troubles).toEqual([]);
});

test('from the desk to a phone and back as a file; what was entered on both is kept', async () => {
  const desk = await openApp({ viewport: { width: 1440, height: 900 } });
  const phone = await openApp({ viewport: { width: 390, height: 844 }, touch: true });
  const saved = async ({ page }: App): Promise<string> => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: /^Save the job .* as a file/ }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/-job\.backbow-job\.json$/);
    return readFileSync(await download.path(), 'utf8');
  };
  const opened = async ({ page }: App, text: string, told: RegExp): Promise<void> => {
    const choosing = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open a job from a file' }).click();
    await (await choosing).setFiles({ name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.getByText(told).waitFor();
  };
  const enter = async (app: App, leaf: string): Promise<void> => {
    const { page } = app;
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.locator('.bench-place select').selectOption('read-1');
    await page.getByRole('radio', { name: 'hump' }).check();
    await page.getByRole('button', { name: `Leaf ${leaf}` }).click();
    const before = await readings(app).count();
    await page.getByRole('button', { name: 'Enter the reading' }).click();
    await expect.poll(() => readings(app).count()).toBe(before + 1);
    await page.getByRole('button', { name: 'All jobs' }).click();
  };

  await desk.page.keyboard.press('o');
  const start = desk.page.getByRole('button', { name: 'Start with this neck' });
  await expect.poll(() => start.isEnabled()).toBe(true);
  await start.click();
  await desk.page.getByRole('button', { name: 'All jobs' }).click();
  const first = await saved(desk);
  await desk.page.getByText(/^Saved as .*job\.json/).waitFor();

  await phone.page.getByRole('button', { name: /^Menu/ }).tap();
  await phone.page.getByRole('button', { name: /^At the bench/ }).tap();
  await opened(phone, first.slice(0, -30), /^It is damaged or cut short/);
  await opened(phone, first, /is on this device now/);
  expect(await badTargets(phone)).toEqual([]);
  expect(await fits(phone)).toBe(true);
  await phone.screenshot('bench/phone-from-file', { fullPage: true });
  await enter(phone, '0.05');
  const second = await saved(phone);

  await opened(desk, second, /is now as far as it was on the other device/);
  const jobs = desk.page.locator('.bench-jobs li');
  await expect.poll(() => jobs.allInnerTexts()).toEqual([expect.stringContaining('one reading')]);
  await desk.screenshot('bench/desk-from-file');
  await desk.page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => jobs.allInnerTexts()).toEqual([expect.stringContaining('no reading yet')]);
  await enter(desk, '0.10');
  await opened(desk, second, /is here as a job of its own/);
  expect(await jobs.count()).toBe(2);
  expect([...desk.troubles, ...phone.troubles]).toEqual([]);
});
