/** What a neck is known to be wrong about, and nickel, where people read it: page, phone, German, inches, the printed sheet. */
import { expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { writeLink } from '../../src/state/share/link.ts';
import { PRESETS } from '../tools/presets.ts';
import { withBrowser, type App, type OpenOptions } from './harness.ts';

const openApp = withBrowser();
const THICK = PRESETS.find(({ id }) => id === 'thick-five-piece')!.build;
const NICKEL: Build = { ...PRESETS[0].build, nickelSensitivePlayer: true, wireMetal: 'copper-tin-iron' };

async function openNeck(build: Build, options: OpenOptions): Promise<App> {
  const link = writeLink({ builds: [build], page: EMPTY_PAGE });
  if (!link.ok) throw new Error(link.trouble.code);
  return openApp({ ...options, path: `#neck=${link.text}` });
}

const closed = (app: App) => app.page.locator('.checks > ul').innerText();

test('a thick laminated neck says it before anything is opened, and in full with the checks', async () => {
  const app = await openNeck(THICK, { viewport: { width: 1440, height: 900 } });
  expect(await closed(app)).toMatch(/Known limit\s+This neck may stay back-bowed for weeks\./);
  await app.screenshot('limits/thick-wide');
  await app.page.locator('.checks > button').click();
  expect(await app.page.locator('[data-check="limit-stiff-neck"]').innerText()).toMatch(
    /First day under strings: 0\.05/,
  );
  await app.screenshot('limits/thick-wide-open');
  expect(app.troubles).toEqual([]);
});

test('on a phone, in German, in the dark', async () => {
  const app = await openNeck(THICK, {
    viewport: { width: 390, height: 844 },
    touch: true,
    colourScheme: 'dark',
    context: { locale: 'de-DE' },
  });
  expect(await closed(app)).toMatch(/Bekannte Grenze\s+Dieser Hals kann wochenlang rückgebogen bleiben\./);
  await app.page.locator('.checks > button').click();
  await app.page.locator('.checks').scrollIntoViewIfNeeded();
  await app.screenshot('limits/thick-phone-german');
});

test('the printed sheet says it too', async () => {
  const app = await openNeck(THICK, { viewport: { width: 1280, height: 900 } });
  await app.page.evaluate(() => void (location.hash = '#/plan'));
  await app.page.locator('#sheet-title').waitFor();
  await app.page.emulateMedia({ media: 'print' });
  const checks = app.page.locator('#checks, .sheet-checks').first();
  await checks.waitFor();
  await checks.scrollIntoViewIfNeeded();
  expect(await app.page.locator('.sheet-checks').innerText()).toMatch(/Known limit/);
  await app.screenshot('limits/thick-sheet');
});

test('a player who is sensitive to nickel is told of the strings, and other necks of no limit', async () => {
  const app = await openNeck(NICKEL, {
    viewport: { width: 1440, height: 900 },
    prepare: async (page) => {
      await page.addInitScript(() => localStorage.setItem('backbow.preferences', '{"unitSystem":"inch"}'));
    },
  });
  await app.page.locator('.checks > button').click();
  expect(await app.page.locator('[data-check="nickel-strings"]').innerText()).toMatch(/nickel-plated wrap/);
  expect(await app.page.locator('[data-check="nickel"]').count()).toBe(0);
  expect(await app.page.locator('[data-check^="limit-"]').count()).toBe(0);
  await app.screenshot('limits/nickel-wide-inches');
});
