/**
 * Starts Chromium, opens the page in it, waits for its pictures, looks at their pixels, and notes everything that went wrong
 * meanwhile. For tests there is `withBrowser` of harness.ts around it.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import pixelmatch from 'pixelmatch';
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { ensureChromium } from '../tools/chromium.mjs';
import { root } from '../tools/project.mjs';

/**
 * Parts of the browser that tests do without. Of this flag the last one counts, so that what the driver itself leaves out
 * for the sake of tests stands here again.
 */
const WITHOUT = [
  // The browser's own address bar prepares two pages for each page that is opened: a third of the processor's time.
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxFullPopup',
  // The driver's.
  'AimEnabled',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
];

/** The machine that serves, as others in the workshop call it. */
export const OTHER_MACHINE = 'bench.test';

/** Flags for Debian's Chromium run by root without a screen and without talking to anybody. */
const FLAGS = [
  '--headless',
  // A name of this machine that the browser takes for another one's, to which plain HTTP is not secure.
  `--host-resolver-rules=MAP ${OTHER_MACHINE} 127.0.0.1`,
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // The browser asks its maker how to fill fields; it is the page that is watched here, so it asks nobody.
  '--autofill-server-url=http://localhost:9/',
  // WebGL is drawn by the processor here; the page around it is sooner painted by it directly than by way of WebGL's driver.
  '--disable-gpu-rasterization',
  `--disable-features=${WITHOUT.join(',')}`,
];

/** Software renderers, the faster first, each with what its name must contain: a missing driver falls back silently. */
const RENDERERS = [
  { name: /llvmpipe/i, flags: ['--use-gl=angle', '--use-angle=gl-egl', '--ignore-gpu-blocklist'] },
  { name: /swiftshader/i, flags: ['--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'] },
] as const;

/** How long a page may take to show a picture on a slow, busy machine, ms. */
export const PATIENCE_MS = 120_000;

/** `npm test` makes no pictures that nobody looks at: they take as long as a test in ten. */
const WITH_PICTURES = process.env['PICTURES'] !== 'none';

/** What the page says about itself. */
export interface Progress {
  frames: number;
  predictionVersion: number;
}

/** How to open the page. */
export interface OpenOptions {
  /** Size in CSS pixels; 1000 × 700 when not given. */
  viewport?: { width: number; height: number };
  colourScheme?: 'light' | 'dark';
  /** Whether the page is asked to keep still; it is unless told otherwise, so that cameras jump. */
  reducedMotion?: boolean;
  /** A server of the test's own, in place of the one that serves the page to all tests of the file. */
  address?: string;
  /** What follows the address of the page: a folder, a query, a fragment. */
  path?: string;
  /**
   * Whether the picture has smooth edges; not unless told otherwise. They are a wish that a browser may refuse, and take
   * as much of a processor that draws by itself as all the rest of the picture.
   */
  smooth?: boolean;
  /** A touch screen. */
  touch?: boolean;
  /** Further settings of the browser's context. */
  context?: BrowserContextOptions;
  /** Done before the page is opened, such as taking WebGL away. */
  prepare?: (page: Page, context: BrowserContext) => Promise<void>;
  /** Whether to wait for the first picture; true unless told otherwise. */
  waitForPicture?: boolean;
  /**
   * Whether the page may keep itself for use without a network; false unless told otherwise, since every page opened here
   * is a first visit, on which the browser would fetch all of its files again while the test is at work.
   */
  offline?: boolean;
  /** Whether this is somebody's first visit, who is welcomed; false unless told otherwise. */
  firstVisit?: boolean;
}

/** A colour as red, green and blue, 0 to 255. */
export type Colour = readonly [number, number, number];

/** One page that is open. */
export interface App {
  page: Page;
  context: BrowserContext;
  /** Errors on the console, uncaught errors, failed requests and requests to other hosts, in the order they came. */
  troubles: string[];
  /** Warnings on the console. */
  warnings: string[];
  /** How far the page is; zeros while it has not said. */
  progress(): Promise<Progress>;
  /** Does something and waits until a new prediction has been shown. */
  afterChange(action: () => Promise<unknown>): Promise<void>;
  /** Does something and waits until a new picture has been drawn. */
  afterFrame(action: () => Promise<unknown>): Promise<void>;
  /** Waits until no more pictures come. */
  settle(): Promise<void>;
  /** The picture on a canvas, without anything that lies over it. */
  canvasPicture(selector?: string): Promise<PNG>;
  /** The colour of the page's ground. */
  groundColour(): Promise<Colour>;
  /** Writes what the window shows to `test/output/<name>.png`, for people to look at; not where `PICTURES` is `none`. */
  screenshot(name: string, options?: { fullPage?: boolean }): Promise<void>;
  close(): Promise<void>;
}

/**
 * The part of a picture whose pixels differ from a colour.
 *
 * @param picture - the picture
 * @param colour - usually the ground
 * @param tolerance - how far any of red, green and blue may be off, of 255
 * @returns 0 for a blank picture to 1
 */
export function shareUnlike(picture: PNG, colour: Colour, tolerance = 12): number {
  let unlike = 0;
  for (let at = 0; at < picture.data.length; at += 4)
    if (colour.some((part, index) => Math.abs((picture.data[at + index] ?? 0) - part) > tolerance)) unlike += 1;
  return unlike / (picture.width * picture.height);
}

/**
 * How many pixels of two pictures of one size differ visibly.
 *
 * @throws Error when the sizes differ
 */
export function differingPixels(one: PNG, other: PNG): number {
  return pixelmatch(one.data, other.data, undefined, one.width, one.height, { threshold: 0.1 });
}

/** Writes a picture to `test/output/<name>.png` and returns its path. */
export function writePicture(name: string, picture: Buffer | PNG): string {
  const path = join(root, 'test', 'output', `${name}.png`);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, Buffer.isBuffer(picture) ? picture : PNG.sync.write(picture));
  return path;
}

/** The name of the renderer that WebGL really uses; empty when there is no WebGL. */
async function rendererOf(browser: Browser): Promise<string> {
  const page = await browser.newPage();
  const name = await page.evaluate(() => {
    const gl = document.createElement('canvas').getContext('webgl2');
    const details = gl?.getExtension('WEBGL_debug_renderer_info');
    return gl && details ? String(gl.getParameter(details.UNMASKED_RENDERER_WEBGL)) : '';
  });
  await page.close();
  return name;
}

/**
 * Starts the browser with the fastest renderer that draws here.
 *
 * @param further - flags of one test's own browser
 * @throws Error when there is no Chromium, or neither renderer draws
 */
export async function launch(further: readonly string[] = []): Promise<{ browser: Browser; renderer: string }> {
  const executablePath = await ensureChromium();
  if (!executablePath) throw new Error('There is no Chromium; what to install is said above.');
  const seen: string[] = [];
  for (const { name, flags } of RENDERERS) {
    const browser = await chromium.launch({ executablePath, args: [...FLAGS, ...flags, ...further] });
    const renderer = await rendererOf(browser);
    if (name.test(renderer)) return { browser, renderer };
    seen.push(renderer || 'none');
    await browser.close();
  }
  throw new Error(`Neither llvmpipe nor SwiftShader draws; WebGL reports: ${seen.join(', ')}`);
}

/** Notes what goes wrong in a page. */
function watch(page: Page, address: string): { troubles: string[]; warnings: string[] } {
  const troubles: string[] = [];
  const warnings: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(`console: ${message.text()}`);
    else if (message.type() === 'warning') warnings.push(message.text());
  });
  page.on('pageerror', (error) => troubles.push(`uncaught: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(data|blob):/.test(url)) troubles.push(`request to another host: ${url}`);
  });
  page.on('requestfailed', (request) => {
    const reason = request.failure()?.errorText ?? '';
    // The page itself gives up requests when it is left or when a later one replaces them.
    if (reason !== 'net::ERR_ABORTED') troubles.push(`request failed: ${request.url()} ${reason}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) troubles.push(`answer ${response.status()}: ${response.url()}`);
  });
  return { troubles, warnings };
}

/** Refuses the page smooth edges, as browsers may. */
function refuseSmoothEdges(): void {
  const plain = HTMLCanvasElement.prototype.getContext;
  HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, wish?: object) {
    return Reflect.apply(plain, this, [kind, kind === 'webgl2' ? { ...wish, antialias: false } : wish]) as never;
  };
}

/** Opens the page in a fresh context: no storage, no history. */
export async function openPage(browser: Browser, address: string, options: OpenOptions): Promise<App> {
  const context = await browser.newContext({
    viewport: options.viewport ?? { width: 1000, height: 700 },
    deviceScaleFactor: 1,
    colorScheme: options.colourScheme ?? 'light',
    reducedMotion: (options.reducedMotion ?? true) ? 'reduce' : 'no-preference',
    hasTouch: options.touch ?? false,
    isMobile: options.touch ?? false,
    locale: 'en-GB',
    timezoneId: 'UTC',
    serviceWorkers: options.offline ? 'allow' : 'block',
    ...options.context,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  const { troubles, warnings } = watch(page, address);
  if (!options.firstVisit) {
    await context.addInitScript(() => {
      try {
        localStorage.setItem('backbow.welcomed', '1');
      } catch {
        // A page without storage welcomes nobody.
      }
    });
  }
  if (!options.smooth) await context.addInitScript(refuseSmoothEdges);
  await options.prepare?.(page, context);
  await page.goto(new URL(options.path ?? '', address).href);

  const progress = (): Promise<Progress> =>
    page.evaluate(() => {
      const said = (window as { backbow?: Progress }).backbow;
      return { frames: said?.frames ?? 0, predictionVersion: said?.predictionVersion ?? 0 };
    });

  /** Waits until something the page counts has passed a number. */
  const waitBeyond = async (what: keyof Progress, count: number): Promise<void> => {
    try {
      await page.waitForFunction(([name, least]) => ((window as { backbow?: Progress }).backbow?.[name] ?? 0) > least, [
        what,
        count,
      ] as const);
    } catch (cause) {
      throw new Error(`${what} stayed at ${count}. ${troubles.join('; ') || 'The page reports no error.'}`, { cause });
    }
  };

  const settle = async (): Promise<void> => {
    for (let before = -1, now = (await progress()).frames; before !== now; now = (await progress()).frames) {
      before = now;
      // Two turns of the browser's own clock without a new picture: nothing was waiting to be drawn.
      await page.evaluate(
        () =>
          new Promise<void>((resolve) => {
            requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve, 50)));
          }),
      );
    }
  };

  const app: App = {
    page,
    context,
    troubles,
    warnings,
    progress,
    settle,
    async afterChange(action) {
      const before = await progress();
      await action();
      await waitBeyond('predictionVersion', before.predictionVersion);
      await settle();
    },
    async afterFrame(action) {
      const before = await progress();
      await action();
      await waitBeyond('frames', before.frames);
      await settle();
    },
    async canvasPicture(selector = 'canvas') {
      // The page's policy refuses styles that are written into it; a sheet that is adopted is no such style.
      const sheet = await page.evaluateHandle(() => {
        const alone = new CSSStyleSheet();
        alone.replaceSync('body * { visibility: hidden !important } canvas { visibility: visible !important }');
        document.adoptedStyleSheets.push(alone);
        return alone;
      });
      try {
        return PNG.sync.read(await page.locator(selector).first().screenshot());
      } finally {
        await sheet.evaluate((alone) => {
          document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== alone);
        });
      }
    },
    async groundColour() {
      const [red = 0, green = 0, blue = 0] = await page.evaluate(() => {
        const pixel = document.createElement('canvas').getContext('2d');
        if (!pixel) return [];
        for (const element of [document.documentElement, document.body]) {
          pixel.fillStyle = getComputedStyle(element).backgroundColor;
          pixel.fillRect(0, 0, 1, 1);
        }
        return [...pixel.getImageData(0, 0, 1, 1).data];
      });
      return [red, green, blue];
    },
    async screenshot(name, { fullPage = false } = {}) {
      if (!WITH_PICTURES) return;
      writePicture(name, await page.screenshot({ fullPage }));
    },
    close: () => context.close(),
  };
  if (options.waitForPicture ?? true) {
    await waitBeyond('frames', 0);
    await waitBeyond('predictionVersion', 0);
    await settle();
  }
  return app;
}
