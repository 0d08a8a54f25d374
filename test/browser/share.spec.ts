/**
 * Sharing in the page: a link carries the neck into another browser, a bad one changes nothing, and the QR code says what
 * the link says.
 */
import jsQR from 'jsqr';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../tools/presets.ts';
import { routeOf } from '../../src/state/share/address.ts';
import { writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { withBrowser, type App } from './harness.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();

function linkOf(builds: readonly Build[]): string {
  const link = writeLink({ builds, page: EMPTY_PAGE });
  if (!link.ok) throw new Error(link.trouble.code);
  return link.text;
}

const name = (app: App) => app.page.getByLabel('Name of the build').inputValue();
const kerf = (app: App) => app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext');

async function openShare(app: App): Promise<void> {
  await app.page.keyboard.press('s');
  await app.page.getByRole('dialog', { name: 'Share' }).waitFor();
}

test('a link made in one browser opens the same neck in another', async () => {
  const first = await openApp({ viewport: { width: 1280, height: 860 } });
  await first.page.getByLabel('Name of the build').fill('Link across the road');
  await first.page.keyboard.press('Enter');
  await first.page.keyboard.press('Escape');
  await openShare(first);
  await first.page.getByRole('button', { name: 'QR code' }).click();
  await first.screenshot('share/dialog');
  const address = await first.page.getByLabel('Link', { exact: true }).inputValue();
  expect(address).toContain('#neck=1.');

  const code = PNG.sync.read(await first.page.getByRole('img', { name: 'QR code of the link' }).screenshot());
  const read = jsQR(new Uint8ClampedArray(code.data), code.width, code.height);
  expect(read?.data).toBe(address);

  const second = await openApp({ path: new URL(address).hash });
  expect(await name(second)).toBe('Link across the road');
  expect(new URL(second.page.url()).hash).toBe('');
  await second.page.getByText('Opened “Link across the road” from a link.').waitFor();
  expect([...first.troubles, ...second.troubles]).toEqual([]);
});

test('a link pasted into an open page is one step that undo takes back', async () => {
  const app = await openApp();
  const before = await name(app);
  const link = linkOf([{ ...PRESETS[1].build, name: 'Pasted', kerfMm: 0.61 }]);
  await app.afterChange(() => app.page.evaluate((hash) => void (location.hash = hash), `#neck=${link}`));
  expect(await name(app)).toBe('Pasted');
  await app.afterChange(() => app.page.keyboard.press('Control+z'));
  expect(await name(app)).toBe(before);
});

const NO_LINKS = [
  ['a cut link', () => linkOf([PRESETS[2].build]).slice(0, -9), 'It is not whole'],
  ['a far too long one', () => `1.${'A'.repeat(40_000)}`, 'at most 32000 are read'],
  ['a newer link', () => `2${linkOf([PRESETS[2].build]).slice(1)}`, 'newer release'],
  ['somebody’s text', () => '<img src=x onerror=alert(1)>', 'It is not whole'],
] as const;

test.each(NO_LINKS.slice(0, draw(NO_LINKS.length, 2)))(
  '%s gives its message and leaves the build as it was',
  async (_what, link, message) => {
    const app = await openApp();
    const before = [await name(app), await kerf(app)];
    await app.page.evaluate((hash) => void (location.hash = hash), `#neck=${link()}`);
    const alert = app.page.getByRole('alert');
    await alert.getByText(/^The link was not opened; your build is unchanged\./).waitFor();
    expect(await alert.textContent()).toContain(message);
    expect([await name(app), await kerf(app)]).toEqual(before);
    expect(await app.page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
    // It may be all that its receiver has: it stays in the address and can be copied.
    const address = app.page.url();
    expect(routeOf(new URL(address).hash)?.link).toBe(routeOf(`#neck=${link()}`)?.link);
    expect(await alert.getByRole('textbox', { name: 'Copy the link' }).inputValue()).toBe(address);
    await alert.getByRole('button', { name: 'Copy the link' }).click();
    await alert.getByText(/Copied\.|The text is marked/).waitFor();
  },
);

test('a comparison by link lists its necks and opens the one that is chosen', async () => {
  const builds = (['press', 'glue', 'both'] as const).map((method) => ({
    ...PRESETS[1].build,
    name: 'Three ways',
    method,
  }));
  const app = await openApp({ path: `#neck=${linkOf(builds)}`, viewport: { width: 390, height: 844 }, touch: true });
  const dialog = app.page.getByRole('dialog', { name: 'Necks that came together' });
  expect(await dialog.getByRole('listitem').count()).toBe(3);
  await app.screenshot('share/received-phone');
  await app.afterChange(() => dialog.getByRole('button', { name: 'Open “Three ways, glue fit”' }).click());
  expect(await app.page.getByRole('radio', { name: 'glue fit' }).isChecked()).toBe(true);
});

test('copying falls back to marking the link where a page may not copy', async () => {
  const app = await openApp({
    prepare: async (page) => {
      await page.addInitScript(() => {
        Object.defineProperty(navigator, 'clipboard', { value: undefined });
        document.execCommand = () => false;
      });
    },
  });
  await openShare(app);
  await app.page.getByRole('button', { name: 'Copy the link' }).click();
  await app.page.getByText('This browser does not let a page copy.').waitFor();
  const [marked, whole] = await app.page.evaluate(() => {
    const field = document.activeElement as HTMLInputElement;
    return [field.value.slice(field.selectionStart ?? 0, field.selectionEnd ?? 0), field.value];
  });
  expect(marked).toBe(whole);
  expect(whole).toContain('#neck=1.');
});
