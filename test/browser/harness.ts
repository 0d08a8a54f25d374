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

/**
 * Serves the page and keeps one browser for all tests of the file that calls this; each page is closed after its test.
 *
 * @param folder - another folder to serve in place of the built page
 * @returns opens the page in a fresh context: no storage, no history
 */
export function withBrowser(folder?: string): (options?: OpenOptions) => Promise<App> {
  let browser: Browser | undefined;
  let server: Awaited<ReturnType<typeof serveFolder>> | undefined;
  const opened: App[] = [];

  beforeAll(async () => {
    server = await serveFolder(folder ?? join(root, 'dist'), { port: 0, host: '127.0.0.1' });
    const launched = await launch();
    browser = launched.browser;
    console.log(`drawn by ${launched.renderer}`);
  }, PATIENCE_MS * 2);

  afterEach(async () => {
    await Promise.all(opened.splice(0).map((app) => app.close()));
  });

  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });

  return async (options = {}) => {
    if (!browser || !server) throw new Error('The browser has not started yet: open pages inside tests.');
    const app = await openPage(browser, options.address ?? server.address, options);
    opened.push(app);
    return app;
  };
}
