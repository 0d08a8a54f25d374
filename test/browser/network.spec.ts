/**
 * Nothing leaves the page's own server, whoever asks: page, worker or service worker. What goes to any other host has to
 * pass a proxy of this test, which notes it. And the page's policy forbids what the page does not do anyway. The
 * one walk through all dialogs and papers is this visit, in German, so that it finds words left in English too.
 */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Licence } from '../../src/pages/about/licences/licence.ts';
import { root } from '../tools/project.mjs';
import { answersAreThere, englishLeft, IN_GERMAN, openGroups } from './german.ts';
import { withBrowser, type App, type OpenOptions } from './harness.ts';
import { openEverything } from './open-everything.ts';

const openApp = withBrowser();

/** Notes what is asked of it and lets nothing through. */
const asked: string[] = [];
let proxy: Server;
let proxyAddress = '';

beforeAll(async () => {
  proxy = createServer((request, response) => {
    asked.push(request.url ?? '');
    response.writeHead(502).end();
  });
  proxy.on('connect', (request, socket) => {
    asked.push(request.url ?? '');
    socket.end('HTTP/1.1 502 Bad Gateway\r\n\r\n');
  });
  await new Promise<void>((resolve) => {
    proxy.listen(0, '127.0.0.1', resolve);
  });
  proxyAddress = `http://127.0.0.1:${(proxy.address() as AddressInfo).port}`;
});

afterAll(() => {
  proxy.close();
});

/** Opens the page so that everything for other hosts goes by the proxy. */
const openWatched = (options: OpenOptions = {}): Promise<App> => {
  asked.length = 0;
  // Playwright sends the page's own server through the proxy too, unless told not to.
  const proxied = { ...options.context, proxy: { server: proxyAddress, bypass: 'localhost' } };
  return openApp({ offline: true, ...options, context: proxied });
};

const kept = ({ page }: App) => page.evaluate(async () => (await navigator.serviceWorker.ready).active !== null);

test('the proxy notes what leaves the page’s server', async () => {
  const app = await openWatched();
  await app.page.goto('http://elsewhere.invalid/somewhere').catch(() => undefined);
  expect(asked).toContain('http://elsewhere.invalid/somewhere');
});

/** Notes what the page's policy forbids. */
async function noteForbidden(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const seen: string[] = [];
    Object.assign(window, { forbidden: seen });
    document.addEventListener('securitypolicyviolation', (event) => {
      seen.push(`${event.effectiveDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`);
    });
  });
}

test('a whole visit in German, with all dialogs and papers, asks no other host for anything, does nothing that the policy forbids, and leaves nothing English', async () => {
  const app = await openWatched({ ...IN_GERMAN, prepare: noteForbidden });
  const { page } = app;
  expect(await kept(app)).toBe(true);
  await page.getByRole('slider', { name: /^Schlitzbreite/ }).focus();
  await app.afterChange(() => page.keyboard.press('PageDown'));
  for (const key of ['1', '2', '3', '4', 'l', 'u', 'c']) await page.keyboard.press(key);
  const left: string[] = [];
  const opened = await openEverything(app, async (id) => {
    await answersAreThere(app);
    await openGroups(app);
    for (const text of await englishLeft(app)) left.push(`${id}: ${text}`);
  });
  expect(opened).toEqual(expect.arrayContaining(['library', 'share', 'plan', 'template', 'files', 'lessons', 'help']));
  expect(opened.length).toBeGreaterThan(8);
  await app.settle();
  expect(asked).toEqual([]);
  expect(left).toEqual([]);
  expect(await page.evaluate(() => (window as { forbidden?: string[] }).forbidden)).toEqual([]);
  expect(app.troubles).toEqual([]);
});

describe('the policy', () => {
  /** Does something in the page and tells which directive forbade it. */
  const whatForbids = async (app: App, action: string): Promise<string> =>
    app.page.evaluate(
      (tried) =>
        new Promise<string>((resolve) => {
          document.addEventListener('securitypolicyviolation', (event) => resolve(event.effectiveDirective));
          setTimeout(resolve, 10_000, 'nothing');
          Object.assign(window, { ran: () => resolve('it ran') });
          const actions: Record<string, () => void> = {
            'code made from text': () => {
              const run = Reflect.construct(Function, ['window.ran()']) as () => void;
              run();
            },
            'a script in the page': () => {
              const script = document.createElement('script');
              script.textContent = 'window.ran()';
              document.body.append(script);
            },
            'a handler in an attribute': () => {
              const button = document.createElement('button');
              button.setAttribute('onclick', 'window.ran()');
              document.body.append(button);
              button.click();
            },
            'a script from elsewhere': () => {
              const script = document.createElement('script');
              script.src = 'https://elsewhere.invalid/a.js';
              document.body.append(script);
            },
            'a request to elsewhere': () => void fetch('https://elsewhere.invalid/').catch(() => undefined),
            'a picture from elsewhere': () => {
              const picture = new Image();
              picture.src = 'https://elsewhere.invalid/a.png';
              document.body.append(picture);
            },
            'styles in the page': () => {
              const style = document.createElement('style');
              style.textContent = 'body { color: red }';
              document.body.append(style);
            },
            'a page in the page': () => {
              const frame = document.createElement('iframe');
              frame.src = 'https://elsewhere.invalid/';
              document.body.append(frame);
            },
            'another base': () => {
              const base = document.createElement('base');
              base.href = 'https://elsewhere.invalid/';
              document.head.append(base);
            },
          };
          // Later, because what the test itself evaluates may do more than the page.
          setTimeout(() => {
            try {
              actions[tried]?.();
            } catch {
              // Refused at once.
            }
          });
        }),
      action,
    );

  test.each([
    ['code made from text', 'script-src'],
    ['a script in the page', 'script-src-elem'],
    ['a handler in an attribute', 'script-src-attr'],
    ['a script from elsewhere', 'script-src-elem'],
    ['a request to elsewhere', 'connect-src'],
    ['a picture from elsewhere', 'img-src'],
    ['styles in the page', 'style-src-elem'],
    ['a page in the page', 'frame-src'],
    ['another base', 'base-uri'],
  ])('forbids %s', async (action, directive) => {
    const app = await openApp({ waitForPicture: false });
    expect(await whatForbids(app, action)).toBe(directive);
  });

  test('lets no other page show it in a frame', async () => {
    const app = await openApp({ waitForPicture: false });
    // Another port is another origin, and its page has no policy of its own.
    const other = createServer((_request, response) => {
      response.setHeader('Content-Type', 'text/html').end(`<iframe src="${app.page.url()}"></iframe>`);
    });
    await new Promise((resolve) => other.listen(0, '127.0.0.1', () => resolve(undefined)));
    const framed = await app.page.context().newPage();
    await framed.goto(`http://localhost:${(other.address() as AddressInfo).port}/`);
    const addresses = framed.frames().map((frame) => frame.url());
    await framed.close();
    other.close();
    // What Chromium shows in the place of a page that refuses to be framed.
    expect(addresses.slice(1)).toEqual(['chrome-error://chromewebdata/']);
  });

  test('leaves the page microphone, camera and a screen that stays on, and nothing that it never needs', async () => {
    const app = await openApp({ waitForPicture: false });
    const allowed = await app.page.evaluate(() => {
      const { featurePolicy } = document as unknown as { featurePolicy: { allowedFeatures: () => string[] } };
      return featurePolicy.allowedFeatures();
    });
    expect(allowed).toEqual(expect.arrayContaining(['camera', 'microphone', 'screen-wake-lock']));
    expect(allowed.filter((name) => /^(geolocation|payment|usb|serial|hid|midi|display-capture)$/.test(name))).toEqual(
      [],
    );
    expect(app.troubles).toEqual([]);
  });
});

describe('licences', () => {
  const list = () => JSON.parse(readFileSync(join(root, 'dist', 'licences.json'), 'utf8')) as Licence[];

  test('are all such that the page may be given on with its list', () => {
    // SPDX names of licences that ask for no more than their notice and text: permissive, and the fonts' own.
    const permissive = /^(MIT|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|Zlib|Unlicense|OFL-1\.1)$/;
    expect(list().filter(({ licence }) => !permissive.test(licence))).toEqual([]);
    for (const name of ['react', 'react-dom', 'three', '@react-three/fiber', 'leva', 'zod', 'comlink'])
      expect(list().map((entry) => entry.name)).toContain(name);
    // Both typefaces come by style sheets, the worker's link to the page by the worker's own bundle.
    expect(list().filter(({ licence }) => licence === 'OFL-1.1')).toHaveLength(2);
  });

  test('are shown from the help, with their texts', async () => {
    const app = await openApp();
    await app.page.keyboard.press('?');
    await app.page.getByRole('button', { name: 'Licences …' }).click();
    const dialog = app.page.getByRole('dialog', { name: 'Licences' });
    await dialog.getByText(`Backbow is made with ${list().length} packages`).waitFor();
    await dialog.locator('summary', { hasText: /^three / }).click();
    await dialog.getByText('Permission is hereby granted, free of charge').filter({ visible: true }).waitFor();
    await app.screenshot('offline/licences');
    expect(app.troubles).toEqual([]);
  });
});
