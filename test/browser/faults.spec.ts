/**
 * When something breaks under the page: the worker, the graphics, the storage, the clock; and text that wants to be more
 * than text. The page goes on, says what happened, and the build is what it was.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { writeProject } from '../../src/neck/file.ts';
import { addressOf } from '../../src/state/share/address.ts';
import { writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { dice } from '../faults/walk.ts';
import { root } from '../tools/project.mjs';
import { chooseFiles } from './choose-files.ts';
import { DESK, shareUnlike, withBrowser, type App, type OpenOptions } from './harness.ts';
import { IS_LONG, draw } from '../draw.ts';

const openApp = withBrowser();

const kerf = ({ page }: App) => page.getByRole('slider', { name: /^Kerf/ });
const kerfText = (app: App) => kerf(app).getAttribute('aria-valuetext');
const fretted = ({ page }: App) => page.locator('[data-figure="fretted"] .figure-value').innerText();
const line = ({ page }: App) => page.locator('path.fret-line[data-chosen]').getAttribute('d');

async function pressKerf(app: App, key = 'PageDown'): Promise<void> {
  await kerf(app).focus();
  await app.page.keyboard.press(key);
}

/** Waits for a prediction, on pages that draw no picture. */
async function predicted({ page }: App, beyond = 0): Promise<void> {
  await page.waitForFunction((count) => (window.backbow?.predictionVersion ?? 0) > count, beyond);
}

describe('the worker', () => {
  const solver = ({ page }: App) => page.workers().find((worker) => worker.url().includes('solver.worker'))!;
  const restarted = ({ page }: App) => page.getByText('The calculation broke off and was started again');

  test('that crashes is replaced, the page says so, and the numbers are those of the build', async () => {
    const app = await openApp(DESK);
    const { predictionVersion } = await app.progress();
    await solver(app).evaluate(() => {
      setTimeout(() => {
        throw new Error('the test ends this worker');
      });
    });
    await pressKerf(app);
    await restarted(app).waitFor();
    await predicted(app, predictionVersion);
    await app.settle();
    expect(await kerfText(app)).toBe('0.530\u00a0mm');
    // The same as on a page where nothing went wrong.
    const other = await openApp(DESK);
    await other.afterChange(() => pressKerf(other));
    const figures = ({ page }: App) => page.locator('.figure-value').allInnerTexts();
    await expect.poll(() => figures(app)).not.toContain('…');
    await expect.poll(() => figures(other)).toEqual(await figures(app));
    expect(app.troubles.filter((trouble) => !trouble.includes('the test ends this worker'))).toEqual([]);
  });

  test('that hangs in the middle of a solve is taken for lost, and replaced', async () => {
    const app = await openApp({ ...DESK, prepare: (page) => page.clock.install() });
    const { predictionVersion } = await app.progress();
    // It never answers again.
    void solver(app)
      .evaluate(() => {
        for (;;);
      })
      .catch(() => undefined);
    await pressKerf(app);
    await app.page.clock.fastForward(31_000);
    await restarted(app).waitFor();
    await predicted(app, predictionVersion);
    expect(await kerfText(app)).toBe('0.530\u00a0mm');
    expect(app.troubles).toEqual([]);
  });

  test('that is lost for good takes the numbers of the neck before along, on every surface', async () => {
    const app = await openApp(DESK);
    const { page } = app;
    await page.locator('.figure-band').first().waitFor();
    const before = await fretted(app);
    expect(Number.parseFloat(before)).toBeGreaterThan(0);
    // From now on no worker starts, and the one there is breaks off.
    await page.route('**/solver.worker-*.js', (route) => route.fulfill({ status: 404, body: '' }));
    await solver(app).evaluate(() => {
      setTimeout(() => {
        throw new Error('the test ends this worker');
      });
    });
    await pressKerf(app);
    await page.getByText('This neck could not be computed').waitFor();
    expect(await page.locator('.figure-value').count()).toBe(0);
    await page.locator('.figures').getByText('not computed').first().waitFor();
    await page.getByRole('region', { name: 'Checks' }).getByText('Not checked').waitFor();
    expect(await page.getByText('No problems found').count()).toBe(0);
    expect(await page.locator('path.fret-line, .method-bow, .rail-now strong').count()).toBe(0);
    await page.locator('.rail-now').getByText('not computed').waitFor();
    await page.locator('.picture').getByText('Drawn without its bow').waitFor();
    await app.screenshot('faults/not-computed');
    expect(await page.locator('main').first().innerText()).not.toContain(before);

    // The papers promise nothing; what needs no calculation is still there.
    for (const paper of ['plan', 'template', 'files']) {
      await page.evaluate((name) => {
        location.hash = `#/${name}`;
      }, paper);
      await page.locator('.sheets-state').getByText('Not computed').waitFor();
      expect(await page.getByText('being computed').count()).toBe(0);
      await app.screenshot(`faults/not-computed-${paper}`);
    }
    expect(await page.getByRole('button', { name: /Save .*[Pp]roject/ }).count()).toBe(1);
    await page.evaluate(() => {
      location.hash = '';
    });
    await page.setViewportSize({ width: 390, height: 844 });
    await app.screenshot('faults/not-computed-phone');
  });

  test('that cannot run at all is given up with a reason; undo and controls still work', async () => {
    const app = await openApp({
      ...DESK,
      waitForPicture: false,
      prepare: async (page) => {
        await page.route('**/solver.worker-*.js', (route) => route.fulfill({ status: 404, body: '' }));
      },
    });
    await app.page.getByText('This neck could not be computed: the calculation stopped several times').waitFor();
    await pressKerf(app);
    await app.page.keyboard.press('Control+z');
    expect(await kerfText(app)).toBe('0.580\u00a0mm');
  });
});

describe('the graphics', () => {
  test('lost are told about and come back by themselves, with the picture as it was', async () => {
    const app = await openApp(DESK);
    const before = shareUnlike(await app.canvasPicture(), await app.groundColour());
    await app.page.evaluate(() => {
      const gl = document.querySelector('canvas')!.getContext('webgl2')!;
      const extension = gl.getExtension('WEBGL_lose_context')!;
      Object.assign(window, { restore: () => extension.restoreContext() });
      extension.loseContext();
    });
    const notice = app.page.getByText('The graphics of this device were interrupted');
    await notice.waitFor();
    const { predictionVersion } = await app.progress();
    await pressKerf(app);
    await predicted(app, predictionVersion);
    expect(await kerfText(app)).toBe('0.530\u00a0mm');
    await app.afterFrame(() => app.page.evaluate(() => (window as unknown as { restore: () => void }).restore()));
    await notice.waitFor({ state: 'hidden' });
    const after = shareUnlike(await app.canvasPicture(), await app.groundColour());
    await app.screenshot('faults/restored');
    // The neck covers the same part of the picture, to a fifth of it: the bow has changed a little.
    expect(Math.abs(after / before - 1)).toBeLessThan(0.2);
    expect(app.troubles).toEqual([]);
  });

  // In every run in access.spec.ts.
  test.runIf(IS_LONG)('missing altogether leave numbers, chart, table and papers', async () => {
    const app = await openApp({
      ...DESK,
      waitForPicture: false,
      prepare: async (page) => {
        await page.addInitScript(() => {
          const plain = HTMLCanvasElement.prototype.getContext;
          HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, options?: unknown) {
            return kind.startsWith('webgl') ? null : (plain.call(this, kind, options) as never);
          } as typeof plain;
        });
      },
    });
    await predicted(app);
    await app.page.getByText('This browser offers no WebGL, so the neck cannot be drawn').waitFor();
    const [number, drawn] = [await fretted(app), await line(app)];
    expect(Number.parseFloat(number)).toBeGreaterThan(0);
    await pressKerf(app);
    await predicted(app, 1);
    await app.page.waitForFunction(
      (before) => document.querySelector('path.fret-line[data-chosen]')?.getAttribute('d') !== before,
      drawn,
    );
    await app.screenshot('faults/no-webgl');
    await app.page.keyboard.press('.');
    await app.page.evaluate(() => {
      location.hash = '#/plan';
    });
    await app.page.getByRole('table').first().waitFor();
    expect(await app.page.locator('main').first().innerText()).not.toMatch(/NaN|undefined/);
    expect(app.troubles).toEqual([]);
  });
});

describe('a part of the page that cannot be fetched', () => {
  /** The server has lost the files of a name. */
  const without = (pattern: string): OpenOptions => ({
    ...DESK,
    waitForPicture: false,
    prepare: (page) => page.route(pattern, (route) => route.fulfill({ status: 404, body: '' })).then(() => undefined),
  });
  const missing = ({ page }: App) =>
    page.getByRole('alert').filter({ hasText: 'A part of the page could not be fetched' });

  test('such as the controls, says so in its place; numbers, chart and picture go on', async () => {
    // Two files are called so; the controls themselves are the one with the style library in it.
    const folder = join(root, 'dist', 'assets');
    const name = readdirSync(folder).find(
      (file) => file.startsWith('controls-') && readFileSync(join(folder, file), 'utf8').includes('sxs.internal'),
    );
    const app = await openApp(without(`**/assets/${name}`));
    await missing(app).waitFor();
    await predicted(app);
    expect(Number.parseFloat(await fretted(app))).toBeGreaterThan(0);
    await app.page.keyboard.press('m');
    await predicted(app, 1);
    await app.screenshot('faults/no-controls');
    expect(await app.page.getByRole('button', { name: 'Load the page again' }).isVisible()).toBe(true);
  });

  test('such as a dialog, says so over the page', async () => {
    const app = await openApp(without('**/assets/licences-dialog-*.js'));
    await predicted(app);
    await app.page.keyboard.press('?');
    await app.page.getByRole('button', { name: 'Licences …' }).click();
    await missing(app).waitFor();
    await app.screenshot('faults/no-dialog');
    await pressKerf(app);
    await predicted(app, 1);
    expect(await kerfText(app)).toBe('0.530\u00a0mm');
  });

  test('such as what reads links, keeps the link in the address', async () => {
    const written = writeLink({ builds: [defaultBuild()], page: EMPTY_PAGE });
    const link = written.ok ? written.text : '';
    const app = await openApp({ ...without('**/assets/open-link-*.js'), path: addressOf('', { kind: 'neck', link }) });
    await app.page.getByText('A part of the page could not be fetched').waitFor();
    expect(await app.page.evaluate(() => location.hash)).toContain(link);
    await predicted(app);
  });

  test('such as the workshop itself, is told in plain words', async () => {
    const app = await openApp(without('**/assets/workshop-*.js'));
    await app.page.getByText('Backbow could not be fetched whole').waitFor();
    expect(await app.page.locator('body').innerText()).toContain('Load the page again');
  });
});

describe('the storage', () => {
  const REFUSALS: [string, () => void, RegExp][] = [
    [
      'refused',
      () => {
        for (const name of ['localStorage', 'sessionStorage', 'indexedDB'] as const)
          Object.defineProperty(window, name, {
            get: () => {
              throw new DOMException('blocked', 'SecurityError');
            },
          });
      },
      /keeps nothing for this page/,
    ],
    [
      'full',
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('no room', 'QuotaExceededError');
        };
      },
      /no room left on this device/,
    ],
  ];

  test.each(REFUSALS.slice(0, draw(REFUSALS.length, 1)))(
    '%s is told about once, and nothing else is lost',
    async (_name, refuse, words) => {
      const app = await openApp({ ...DESK, prepare: async (page) => void (await page.addInitScript(refuse)) });
      await app.afterChange(() => pressKerf(app));
      await app.page.getByText(words).waitFor();
      await app.afterChange(() => pressKerf(app));
      expect(await app.page.getByText(words).count()).toBe(1);
      expect(await kerfText(app)).toBe('0.480\u00a0mm');
      await app.page.keyboard.press('u');
      expect(await kerfText(app)).toMatch(/in$/);
      await app.page.keyboard.press('i');
      await app.page.getByRole('dialog').waitFor();
      expect(await app.page.getByRole('dialog').innerText()).not.toMatch(/NaN|undefined/);
      expect(app.troubles).toEqual([]);
    },
  );
});

describe('the clock', () => {
  const TIMES = [['1970-01-01T00:00:00Z'], ['2262-04-11T23:47:16Z']] as const;

  test.each(TIMES.slice(0, draw(TIMES.length, 1)))('standing at %s changes nothing but dates', async (time) => {
    const app = await openApp({
      ...DESK,
      prepare: (page) => page.clock.setFixedTime(new Date(time)),
    });
    await app.afterChange(() => pressKerf(app));
    expect(await kerfText(app)).toBe('0.530\u00a0mm');
    await app.page.reload();
    await predicted(app);
    // What was on the bench comes back whatever its date is.
    await app.page.waitForFunction(() => document.querySelector('[aria-valuetext="0.530\u00a0mm"]') !== null);
    await app.page.keyboard.press('i');
    await app.page.getByRole('dialog').waitFor();
    await app.page.keyboard.press('Escape');
    await app.page.evaluate(() => {
      location.hash = '#/plan';
    });
    await app.page.getByRole('table').first().waitFor();
    expect(await app.page.locator('body').innerText()).not.toMatch(/NaN|Invalid Date|undefined/);
    expect(app.troubles).toEqual([]);
  });
});

describe('text that wants to be more than text', () => {
  const NAME = '<img src=x onerror="window.hacked=1"><script>window.hacked=1</script>\u202Egnp.kcen\u202C & "\'`';
  const NOTES = `${'<b onmouseover="window.hacked=1">notes</b> {{7*7}} ${7*7} '.repeat(180)}`.slice(0, 10_000);
  const hostile = { ...defaultBuild(), name: NAME, notes: NOTES };

  /** The page has made nothing of it. */
  async function expectPlain(app: App): Promise<void> {
    expect(await app.page.evaluate(() => 'hacked' in window)).toBe(false);
    expect(await app.page.locator('img[src="x"], b[onmouseover], script:not([src])').count()).toBe(0);
    const [content, frame] = await app.page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(content).toBe(frame);
  }

  test('stays text in the name, the notices, the papers, the library and the shared link', async () => {
    const app = await openApp(DESK);
    const file = {
      name: '<img src=x onerror=1>.json',
      mimeType: 'application/json',
      buffer: Buffer.from(writeProject(hostile)),
    };
    await app.afterChange(() => chooseFiles(app.page, () => app.page.keyboard.press('Control+o'), file));
    expect(await app.page.getByRole('textbox', { name: 'Name of the build' }).inputValue()).toBe(NAME);
    await app.page.locator('.notices').getByText('<script>').waitFor();
    await expectPlain(app);
    await app.screenshot('faults/hostile');

    for (const paper of ['plan', 'template', 'files']) {
      await app.page.evaluate((name) => {
        location.hash = `#/${name}`;
      }, paper);
      await app.page.getByText('onerror=').first().waitFor();
      await app.settle();
      await app.screenshot(`faults/hostile-${paper}`);
      await expectPlain(app);
    }
    expect(app.troubles).toEqual([]);
  });

  test.each(['neck', 'customer'] as const)('stays text in a %s link', async (kind) => {
    const written = writeLink({
      builds: [hostile],
      page: { ...EMPTY_PAGE, from: NAME.slice(0, 200), to: '\u202Erevers', note: NOTES.slice(0, 3000) },
    });
    const link = written.ok ? written.text : '';
    const app = await openApp({ ...DESK, waitForPicture: false, path: addressOf('', { kind, link }) });
    await app.page.getByText('onerror=').or(app.page.locator('input[value*="onerror="]')).first().waitFor();
    await expectPlain(app);
    await app.screenshot(`faults/hostile-link-${kind}`);
    expect(app.troubles).toEqual([]);
  });

  test('of ten thousand characters without a space breaks no line of the layout', async () => {
    const long = { ...defaultBuild(), name: 'W'.repeat(200), notes: 'M'.repeat(10_000) };
    const written = writeLink({ builds: [long], page: EMPTY_PAGE });
    const link = written.ok ? written.text : '';
    const app = await openApp({
      viewport: { width: 390, height: 844 },
      touch: true,
      path: addressOf('', { kind: 'neck', link }),
    });
    await expectPlain(app);
    await app.screenshot('faults/long-name');
    await app.page.evaluate(() => {
      location.hash = '#/plan';
    });
    await app.page.getByRole('table').first().waitFor();
    await expectPlain(app);
    await app.screenshot('faults/long-name-plan');
    expect(app.troubles).toEqual([]);
  });
});

const WALK = draw(200, 40);

test(`a random walk over the page with the keyboard: ${WALK} steps (seed 8301)`, async () => {
  const app = await openApp(DESK);
  const at = dice(8301);
  // Keys that ask for a file, print, or leave the page are not part of the walk.
  const KEYS = [
    'ArrowUp ArrowDown ArrowLeft ArrowRight PageUp PageDown Home End Shift+ArrowUp',
    'm . , n b ] [ t l r a c u p 1 2 3 4 5 6 ? -',
    'Control+z Control+Shift+z Escape Enter Space',
  ].flatMap((keys) => keys.split(' '));
  for (let step = 0; step < WALK; step += 1) {
    const moves = at.whole(0, 4);
    for (let move = 0; move < moves; move += 1) await app.page.keyboard.press(at.share() < 0.8 ? 'Tab' : 'Shift+Tab');
    const focused = await app.page.evaluate(() => {
      const element = document.activeElement;
      return `${element?.tagName} ${element?.getAttribute('type') ?? ''} ${element?.getAttribute('download') ?? ''} ${element?.textContent?.slice(0, 40) ?? ''}`;
    });
    const key = at.of(KEYS);
    const isPress = key === 'Enter' || key === 'Space';
    // Buttons and links that open files, save them or print lead out of the page.
    if (isPress && /^A |Open|Save|file|Print|print|Download|Choose/.test(focused)) continue;
    await app.page.keyboard.press(key);
    if (step % 20 !== 19) continue;
    await app.settle();
    const text = await app.page.locator('body').innerText();
    expect(text, `step ${step}, ${key} on ${focused}`).not.toMatch(/NaN|undefined|\[object|Infinity/);
    expect(app.troubles, `step ${step}, ${key} on ${focused}`).toEqual([]);
  }
  await app.screenshot('faults/walk');
});
