/**
 * Drives the built page in Chromium: serves dist, starts the browser, opens the page, waits for its pictures, looks at
 * their pixels, and notes everything that went wrong meanwhile.
 *
 * Use it like this:
 *
 * ```ts
 * const openApp = withBrowser();
 *
 * test('…', async () => {
 *   const app = await openApp({ viewport: { width: 1440, height: 900 } });
 *   await app.afterChange(() => app.page.getByLabel('…').press('ArrowUp'));
 *   expect(app.troubles).toEqual([]);
 * });
 * ```
 *
 * Tests that only look at the page share one: `const desk = openApp.shared((open) => open(DESK));`.
 *
 * The page tells how far it is in `window.backbow = { frames, predictionVersion }`: pictures drawn so far, and a number
 * that grows with every prediction shown. Nothing here waits for a fixed time in place of those.
 */
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { root } from '../tools/project.mjs';
import { serveFolder } from '../tools/server.mjs';
import { launch, openPage, PATIENCE_MS, type App, type OpenOptions } from './open-page.ts';

export {
  differingPixels,
  shareUnlike,
  writePicture,
  type App,
  type Colour,
  type OpenOptions,
  type Progress,
} from './open-page.ts';

/**
 * A window in which everything of the workshop stands side by side, and no larger: here WebGL is drawn by the processor, so
 * that each picture costs by its pixels. Tests of layout and looks open windows of their own.
 */
export const DESK = { viewport: { width: 1240, height: 840 } } as const;

/** Opens the page in a fresh context: no storage, no history. */
export type Open = (options?: OpenOptions) => Promise<App>;

/** Opens the page; it is closed after its test. */
export interface OpenApp extends Open {
  /**
   * One page for several tests: opening it costs more than most tests do in it. It is kept for the next test as long as it
   * stands as it did at first, by its address and its words; after a test that failed, was told of troubles or left it
   * otherwise, it is opened anew. Tests that turn the camera, fill storages or count what the page has done open their own.
   *
   * @param opening - opens the page, with what it is given, and brings it to where the tests begin
   */
  shared(opening: (open: Open) => Promise<App>): () => Promise<App>;
}

/** What a page looks like to somebody who reads it: where it is and every word of it. */
function standing({ page }: App): Promise<string> {
  return page.evaluate(() => `${location.href}\n${document.body.innerText}`);
}

let launched: ReturnType<typeof launch> | undefined;

/** One browser for all files that share this process: it ends with it. Each page has a context of its own. */
async function browserOfProcess(): Promise<Browser> {
  const known = await launched;
  if (known?.browser.isConnected()) return known.browser;
  launched = launch();
  const { browser, renderer } = await launched;
  console.log(`drawn by ${renderer}`);
  return browser;
}

/**
 * Serves the page to all tests of the file that calls this, in one browser.
 *
 * @param folder - another folder to serve in place of the built page
 */
export function withBrowser(folder?: string): OpenApp {
  let browser: Browser | undefined;
  let server: Awaited<ReturnType<typeof serveFolder>> | undefined;
  const opened: App[] = [];

  beforeAll(async () => {
    server = await serveFolder(folder ?? join(root, 'dist'), { port: 0, host: '127.0.0.1' });
    browser = await browserOfProcess();
  }, PATIENCE_MS * 2);

  afterEach(async () => {
    await Promise.all(opened.splice(0).map((app) => app.close()));
  });

  afterAll(async () => {
    // What is still open is shared, or of a test that was given up.
    await Promise.all(browser?.contexts().map((context) => context.close()) ?? []);
    await server?.close();
  });

  async function open(options: OpenOptions = {}): Promise<App> {
    if (!browser || !server) throw new Error('The browser has not started yet: open pages inside tests.');
    return openPage(browser, options.address ?? server.address, options);
  }

  async function openApp(options?: OpenOptions): Promise<App> {
    const app = await open(options);
    opened.push(app);
    return app;
  }

  function shared(opening: (open: Open) => Promise<App>): () => Promise<App> {
    let kept: { readonly app: App; readonly stood: string } | undefined;
    afterEach(async ({ task }) => {
      if (!kept) return;
      const { app, stood } = kept;
      if (task.result?.state !== 'fail' && app.troubles.length === 0 && (await standing(app)) === stood) return;
      kept = undefined;
      await app.close();
    });
    return async () => {
      if (!kept) {
        const app = await opening(open);
        kept = { app, stood: await standing(app) };
      }
      return kept.app;
    };
  }

  return Object.assign(openApp, { shared });
}
