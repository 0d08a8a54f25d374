/**
 * The page works without a network after one visit, in any folder; a new version waits until it is asked for; and what
 * is kept is whole or not there.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { afterEach, describe, expect, test } from 'vitest';
import { listKeptFiles } from '../../src/app/packaging/offline-files.ts';
import { ownServer, type OwnServer } from './own-server.ts';
import { withBrowser, type App } from './harness.ts';

const openApp = withBrowser();
const servers: OwnServer[] = [];

afterEach(async () => {
  await Promise.all(servers.splice(0).map((server) => server.end()));
});

async function serve(inFolder?: string): Promise<OwnServer> {
  const server = await ownServer(inFolder);
  servers.push(server);
  return server;
}

/** Waits until the page has been kept and is answered from what is kept. */
async function kept({ page }: App): Promise<void> {
  await until(() =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      return registration?.active?.state === 'activated' && navigator.serviceWorker.controller !== null;
    }),
  );
}

const until = (holds: () => Promise<boolean>) => expect.poll(holds).toBe(true);

/** Loads the page again, from whatever answers, and waits for its picture. */
async function reload(app: App): Promise<void> {
  await app.page.reload();
  await app.page.waitForFunction(
    () => (window.backbow?.frames ?? 0) > 0 && (window.backbow?.predictionVersion ?? 0) > 0,
  );
  await app.settle();
}

const asksForNewVersion = ({ page }: App) => page.getByText('A new version of Backbow is ready');
const lookForNewVersion = ({ page }: App) =>
  page.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update();
  });

/** Another version of the page, told apart by its title. */
function retitle(folder: string): void {
  const path = join(folder, 'index.html');
  writeFileSync(path, readFileSync(path, 'utf8').replace('<title>Backbow</title>', '<title>Backbow, newer</title>'));
}

describe('without a network', () => {
  test('after one visit the page opens, computes and draws with its server gone', async () => {
    const server = await serve();
    const app = await openApp({ offline: true, address: server.address });
    await kept(app);
    // The number with the frets in, which needs no band to be there.
    const number = () => app.page.locator('[data-figure="fretted"] .figure-value').innerText();
    const before = await number();
    await server.shut();
    await expect(fetch(server.address)).rejects.toThrow('fetch failed');
    await reload(app);
    expect(await number()).toBe(before);
    await app.page.getByRole('slider', { name: /^Kerf/ }).focus();
    await app.afterChange(() => app.page.keyboard.press('PageDown'));
    expect(await number()).not.toBe(before);
    expect(app.troubles).toEqual([]);
  });

  test('every file of the page is kept, those too that are asked for late', async () => {
    const server = await serve();
    const app = await openApp({ offline: true, address: server.address });
    await kept(app);
    const files = listKeptFiles(server.folder).map(({ address }) => new URL(address, server.address).href);
    expect(files.filter((address) => /\/assets\/.*\.js$/.test(address)).length).toBeGreaterThan(3);
    const inBrowser = await app.page.evaluate(async () => {
      const caches = await window.caches.keys();
      const requests = await Promise.all(caches.map(async (name) => (await window.caches.open(name)).keys()));
      return requests.flat().map((request) => request.url);
    });
    expect(inBrowser.sort()).toEqual(files.sort());
  });

  test('it works in a folder of a server, and keeps its hands off the rest of it', async () => {
    const server = await serve('workshop/tools');
    writeFileSync(join(server.folder, '..', 'other.txt'), 'not ours');
    const app = await openApp({ offline: true, address: server.address, path: 'workshop/tools/' });
    await kept(app);
    expect(await app.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.scope)).toBe(
      `${server.address}workshop/tools/`,
    );
    await app.page.evaluate(() => fetch('../other.txt'));
    const kepts = await app.page.evaluate(async () => {
      const [name = ''] = await caches.keys();
      return (await (await caches.open(name)).keys()).map((request) => request.url);
    });
    expect(kepts.filter((address) => !address.startsWith(`${server.address}workshop/tools/`))).toEqual([]);
    await server.shut();
    await reload(app);
    await app.page.goto(`${server.address}workshop/tools/index.html?from=mail`);
    await app.page.waitForFunction(() => (window.backbow?.frames ?? 0) > 0);
    expect(app.troubles).toEqual([]);
  });
});

describe('a new version', () => {
  test('waits for the person, through reloads too, and keeps the build when it is let in', async () => {
    const server = await serve();
    const app = await openApp({ offline: true, address: server.address });
    await kept(app);
    await app.page.getByRole('slider', { name: /^Kerf/ }).focus();
    await app.afterChange(() => app.page.keyboard.press('PageDown'));
    await app.page.evaluate(() => Object.assign(window, { sameLoad: true }));

    await server.publish(retitle);
    await lookForNewVersion(app);
    await asksForNewVersion(app).waitFor();
    await app.screenshot('offline/new-version');
    // Pressed slowly, as a hand does: the message must not move off from under it, though the slider is left.
    const later = app.page.getByRole('button', { name: 'Later' });
    await later.hover();
    await app.page.mouse.down();
    await app.settle();
    await app.page.mouse.up();
    await asksForNewVersion(app).waitFor({ state: 'hidden' });
    // Nothing has been loaded again: the window still knows what was written into it.
    expect(await app.page.evaluate(() => 'sameLoad' in window)).toBe(true);

    await reload(app);
    expect(await app.page.title()).toBe('Backbow');
    await app.page.getByRole('slider', { name: /^Kerf/ }).focus();
    await app.afterChange(() => app.page.keyboard.press('PageDown'));
    const kerf = await app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext');
    await asksForNewVersion(app).waitFor();
    await app.page.getByRole('button', { name: 'Load the new version' }).click();
    await app.page.waitForFunction(() => document.title === 'Backbow, newer');
    await app.page.waitForFunction(() => (window.backbow?.frames ?? 0) > 0);
    expect(await app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext')).toBe(kerf);
    expect(await asksForNewVersion(app).isVisible()).toBe(false);
    expect(app.troubles).toEqual([]);
  });

  test('let in by one window leaves the other as it is, and tells it', async () => {
    const server = await serve();
    const app = await openApp({ offline: true, address: server.address });
    await kept(app);
    const other = await app.context.newPage();
    await other.goto(server.address);
    await other.waitForFunction(() => (window.backbow?.predictionVersion ?? 0) > 0);
    await other.evaluate(() => Object.assign(window, { sameLoad: true }));
    await server.publish(retitle);
    await lookForNewVersion(app);
    await app.page.getByRole('button', { name: 'Load the new version' }).click();
    await app.page.waitForFunction(() => document.title === 'Backbow, newer');
    await other.getByText('Another window has gone over to a new version').waitFor();
    expect(await other.evaluate(() => 'sameLoad' in window)).toBe(true);
    // Parts of the old version that the other window may still ask for are there, with the server gone.
    await server.shut();
    expect(await other.title()).toBe('Backbow');
    await other.getByRole('button', { name: 'Load the new version' }).click();
    await other.waitForFunction(() => document.title === 'Backbow, newer');
  });

  test('that is only half on the server is left alone', async () => {
    const server = await serve();
    const app = await openApp({ offline: true, address: server.address });
    await kept(app);
    await server.publish(retitle);
    writeFileSync(join(server.folder, 'manifest.webmanifest'), '{}');
    await lookForNewVersion(app).catch(() => undefined);
    const settled = () =>
      app.page.evaluate(async () => {
        const registration = await navigator.serviceWorker.getRegistration();
        return !registration?.installing && !registration?.waiting;
      });
    await until(settled);
    expect(await app.page.evaluate(async () => (await caches.keys()).length)).toBe(1);
    expect(await asksForNewVersion(app).isVisible()).toBe(false);
    await server.shut();
    await reload(app);
    expect(await app.page.title()).toBe('Backbow');
  });
});

test('the page can be installed: its manifest is sound and its icons are what it says', async () => {
  const server = await serve('a/folder');
  const app = await openApp({ offline: true, address: server.address, path: 'a/folder/' });
  const session = await app.context.newCDPSession(app.page);
  const { errors, data = '{}' } = await session.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const manifest = JSON.parse(data) as Record<string, unknown> & {
    icons: { src: string; sizes: string; type: string; purpose: string }[];
  };
  expect(manifest).toMatchObject({ name: 'Backbow', start_url: './', scope: './', display: 'standalone' });
  for (const { src, sizes, type } of manifest.icons) {
    expect(src).not.toMatch(/^\/|:/);
    const file = readFileSync(join(server.folder, src));
    if (type === 'image/svg+xml') continue;
    const { width, height } = PNG.sync.read(file);
    expect(`${width}x${height}`).toBe(sizes);
  }
  // What browsers ask of a page that can be installed: 192 and 512 pixels, and one that may be cut to shape.
  expect(manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`)).toEqual(
    expect.arrayContaining(['192x192 any', '512x512 any', '512x512 maskable']),
  );
  const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
  expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
});
