/** The stamp of a sheet, typed beside the neck on the bench: the same, or different and in what. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../tools/presets.ts';
import { stampOf, stampText } from '../../src/verdict/stamp.ts';
import { DESK, withBrowser } from './harness.ts';
import { violations } from './violations.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();
const { build } = PRESETS[0];
const STAMP = stampText(stampOf(build));

const WINDOWS = [
  ['phone', { viewport: { width: 390, height: 844 }, touch: true, colourScheme: 'dark' }],
  ['wide', { viewport: { width: 1440, height: 900 } }],
] as const;

describe.each(WINDOWS.slice(0, draw(WINDOWS.length, 1)))('%s', (size, options) => {
  test('the same, no stamp, and the stamp of a neck that nobody here knows', async () => {
    const app = await openApp({ path: '#/plan', waitForPicture: false, ...options });
    const { page } = app;
    await page.locator('.sheet-meta', { hasText: STAMP }).waitFor();
    await page.getByText('Check a sheet in hand').click();
    const field = page.getByLabel('Stamp of the sheet');
    const check = async (text: string, said: string) => {
      await field.fill(text);
      await field.press('Enter');
      await page.locator('.check-stamp output').getByText(said).waitFor();
    };
    await check(STAMP.toLowerCase().replaceAll('-', ' '), 'The same');
    await check('ABC', 'This is no stamp');
    await check(stampText({ ...stampOf(build), build: 'BBBBBB' }), 'no neck on this device has that stamp');
    await page.locator('.check-stamp').scrollIntoViewIfNeeded();
    await app.screenshot(`stamp-${size}`);
    expect(await violations(app)).toEqual([]);
    expect(app.troubles).toEqual([]);
  });
});

test('an earlier standing of the neck is found again, also after a reload, and what differs is listed', async () => {
  const app = await openApp({ ...DESK, context: { locale: 'de-DE' } });
  const { page } = app;
  await app.afterChange(() => page.getByRole('slider', { name: /^Schlitzbreite/ }).press('ArrowRight'));
  const kerf = await page.getByRole('slider', { name: /^Schlitzbreite/ }).getAttribute('aria-valuetext');
  const check = async () => {
    await page.getByText('Ein vorliegendes Blatt prüfen').click();
    const field = page.getByLabel('Stempel des Blatts');
    await field.fill(STAMP);
    await field.press('Enter');
    const row = page.locator('.check-stamp tbody tr');
    await row.waitFor();
    expect(await row.locator('th, td').allInnerTexts()).toEqual(['Schlitzbreite', '0,580\u00a0mm', kerf]);
  };
  await page.getByRole('button', { name: 'Plan und Blatt' }).click();
  await check();
  await app.screenshot('stamp-earlier');
  await page.reload();
  await check();
  expect(app.troubles).toEqual([]);
});
