/** The picture by itself in a real browser: every view, the camera by mouse, touch and keyboard, export, nothing leaked. */
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { build as bundle } from 'vite';
import { beforeAll, describe, expect, test } from 'vitest';
import { SCENE_VIEWS } from '../../src/scene/types.ts';
import { root } from '../tools/project.mjs';
import { differingPixels, shareUnlike, withBrowser, type App } from './harness.ts';
import { drawWithFingers } from './finger.ts';
import type { SceneControl } from './scene-page/page.tsx';
import { draw, IS_LONG } from '../draw.ts';

declare global {
  interface Window {
    scene: SceneControl;
  }
}

const folder = join(root, 'test', 'output', 'scene-page');
const GROUND = [0xf4, 0xef, 0xe4] as const;

beforeAll(async () => {
  await bundle({
    root: join(root, 'test', 'browser', 'scene-page'),
    base: './',
    configFile: false,
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true, target: 'es2023', chunkSizeWarningLimit: 3000 },
  });
});

const WINDOW = { viewport: { width: 720, height: 450 } } as const;

const openApp = withBrowser(folder);
const open = (options: Parameters<typeof openApp>[0] = {}): Promise<App> => openApp({ ...WINDOW, ...options });
/** For tests that leave the picture as it was at first, which they see for themselves. */
const standing = openApp.shared((openShared) => openShared(WINDOW));
/** The whole window: the picture fills it. */
const picture = async (app: App): Promise<PNG> => PNG.sync.read(await app.page.screenshot());

describe('views', () => {
  test.each(IS_LONG ? [0, 1, 5] : [5])(
    'preset %i: each view shows something of its own, without trouble',
    async (preset) => {
      const app = await open();
      await app.afterFrame(() => app.page.evaluate((which) => window.scene.show(which), preset));
      const seen: PNG[] = [];
      for (const view of SCENE_VIEWS) {
        await app.afterFrame(() =>
          app.page.evaluate(
            (next) =>
              window.scene.set({
                view: next,
                shows: { strings: true, straightedge: next === 'edge', rod: false, arrows: false },
              }),
            view,
          ),
        );
        const drawn = await picture(app);
        await app.screenshot(`scene-${preset}-${view}`);
        expect(shareUnlike(drawn, GROUND)).toBeGreaterThan(0.03);
        for (const other of seen) expect(differingPixels(drawn, other)).toBeGreaterThan(2000);
        seen.push(drawn);
      }
      expect(app.troubles).toEqual([]);
    },
  );

  test('the ground of the picture is the ground of the page', async () => {
    const app = await standing();
    const drawn = await picture(app);
    expect([...drawn.data.subarray(0, 3)]).toEqual([...GROUND]);
  });

  test('what is shown beside the neck changes the picture, and hiding it brings the picture back', async () => {
    const app = await standing();
    const none = { strings: false, straightedge: false, rod: false, arrows: false };
    const before = await picture(app);
    for (const key of ['strings', 'straightedge', 'rod', 'arrows'] as const) {
      await app.afterFrame(() => app.page.evaluate((shows) => window.scene.set({ shows }), { ...none, [key]: true }));
      expect(differingPixels(await picture(app), before)).toBeGreaterThan(100);
    }
    await app.afterFrame(() => app.page.evaluate((shows) => window.scene.set({ shows }), none));
    expect(differingPixels(await picture(app), before)).toBe(0);
  });

  test('a lifted fret, and all of them, show; compared necks share the picture', async () => {
    const app = await standing();
    const before = await picture(app);
    await app.afterFrame(() => app.page.evaluate(() => window.scene.set({ lift: 1, liftedFret: 7 })));
    const one = await picture(app);
    expect(differingPixels(one, before)).toBeGreaterThan(50);
    await app.afterFrame(() => app.page.evaluate(() => window.scene.set({ liftedFret: 'all' })));
    expect(differingPixels(await picture(app), one)).toBeGreaterThan(300);
    await app.afterFrame(() => app.page.evaluate(() => window.scene.set({ lift: 0, liftedFret: null })));
    expect(differingPixels(await picture(app), before)).toBe(0);
    await app.afterFrame(() =>
      app.page.evaluate(() => {
        const { build, lineSource } = window.scene.props();
        window.scene.set({
          name: 'this one',
          compare: [{ build: { ...build, method: 'glue' }, lineSource, label: 'glued', prediction: null }],
        });
      }),
    );
    expect(differingPixels(await picture(app), before)).toBeGreaterThan(2000);
    await app.afterFrame(() => app.page.evaluate(() => window.scene.set({ compare: [] })));
    expect(differingPixels(await picture(app), before)).toBe(0);
    expect(app.troubles).toEqual([]);
  });
});

describe('scrubbing the line', () => {
  test('draws a picture a step, renders no React and makes no new buffers', async () => {
    const app = await open();
    await app.afterFrame(() => app.page.evaluate(() => window.scene.bow(-0.3, 40)));
    const [renders, stats, start] = await Promise.all([
      app.page.evaluate(() => window.scene.renders()),
      app.page.evaluate(() => window.scene.stats()),
      app.progress(),
    ]);
    const before = await picture(app);
    await app.page.evaluate(async () => {
      for (let step = 1; step <= 40; step++) {
        window.scene.bow(-0.3 + step * 0.02, 40);
        await new Promise(requestAnimationFrame);
      }
    });
    await app.settle();
    const after = await app.page.evaluate(() => window.scene.stats());
    expect(await app.page.evaluate(() => window.scene.renders())).toBe(renders);
    expect((await app.progress()).frames - start.frames).toBeGreaterThanOrEqual(20);
    expect(after?.geometries).toBe(stats?.geometries);
    expect(differingPixels(await picture(app), before)).toBeGreaterThan(300);
  });

  test('the factor is written in the picture', async () => {
    const app = await open();
    const corner = async (factor: number): Promise<PNG> => {
      await app.afterFrame(() => app.page.evaluate((by) => window.scene.bow(0, by), factor));
      const whole = await picture(app);
      const part = new PNG({ width: 200, height: 60 });
      PNG.bitblt(whole, part, 0, whole.height - 60, 200, 60, 0, 0);
      return part;
    };
    // A neck without any bow looks the same at every factor, but for what is written.
    const forty = await corner(40);
    expect(differingPixels(await corner(41), forty)).toBeGreaterThan(5);
    expect(differingPixels(await corner(40), forty)).toBe(0);
  });
});

describe('the camera', () => {
  test('keys turn, move and zoom; Home brings the view back', async () => {
    const app = await standing();
    const home = await picture(app);
    await app.page.getByRole('img', { name: 'The neck' }).focus();
    for (const key of ['ArrowRight', 'ArrowUp', 'Shift+ArrowLeft', '+', '-']) {
      const before = await picture(app);
      await app.afterFrame(() => app.page.keyboard.press(key));
      expect(differingPixels(await picture(app), before)).toBeGreaterThan(200);
    }
    await app.afterFrame(() => app.page.keyboard.press('Home'));
    // The focus ring is not part of the picture.
    expect(differingPixels(await picture(app), home)).toBe(0);
  });

  test('dragging turns, the wheel zooms, a double click fits', async () => {
    const app = await standing();
    await app.page.mouse.move(700, 20);
    await app.settle();
    const home = await picture(app);
    await app.page.mouse.move(300, 60);
    await app.page.mouse.down();
    await app.afterFrame(() => app.page.mouse.move(380, 90, { steps: 4 }));
    await app.page.mouse.up();
    await app.page.mouse.move(700, 20);
    await app.settle();
    const turned = await picture(app);
    expect(differingPixels(turned, home)).toBeGreaterThan(500);
    await app.afterFrame(() => app.page.mouse.wheel(0, 300));
    expect(differingPixels(await picture(app), turned)).toBeGreaterThan(500);
    await app.afterFrame(() => app.page.mouse.dblclick(700, 20));
    expect(differingPixels(await picture(app), home)).toBe(0);
  });

  test('one finger is the page’s, two turn the neck', async () => {
    const app = await open({ touch: true, viewport: { width: 390, height: 700 } });
    await app.page.evaluate(() => document.documentElement.classList.add('tall'));
    await app.settle();
    const home = await picture(app);
    await drawWithFingers(
      app.page,
      [300, 280, 250, 220].map((y) => [[200, y]]),
    );
    await expect.poll(() => app.page.evaluate(() => window.scrollY)).toBeGreaterThan(20);
    await app.page.evaluate(() => window.scrollTo(0, 0));
    await app.settle();
    expect(differingPixels(await picture(app), home)).toBe(0);
    await app.afterFrame(() =>
      drawWithFingers(
        app.page,
        [0, 10, 25, 40].map((by) => [
          [150 + by, 200],
          [230 + by, 200],
        ]),
      ),
    );
    expect(differingPixels(await picture(app), home)).toBeGreaterThan(300);
    expect(await app.page.evaluate(() => window.scrollY)).toBe(0);
  });

  test('it travels to a view, and jumps when reduced motion is asked for', async () => {
    const app = await open();
    const jump = await app.progress();
    await app.afterFrame(() => app.page.evaluate(() => window.scene.set({ view: 'back' })));
    expect((await app.progress()).frames - jump.frames).toBeLessThanOrEqual(3);
    const jumped = await picture(app);
    await app.afterFrame(() => app.page.evaluate(() => window.scene.set({ view: 'neck' })));
    const travel = await app.progress();
    await app.afterFrame(() => app.page.evaluate(() => window.scene.set({ view: 'back', reducedMotion: false })));
    await app.settle();
    expect((await app.progress()).frames - travel.frames).toBeGreaterThan(3);
    expect(differingPixels(await picture(app), jumped)).toBe(0);
  });
});

test('frets tell themselves to the pointer, from the nut to the body, and can be picked', async () => {
  const app = await open();
  // Along the neck as it lies in the picture: where it is not ground, in the middle between its edges.
  const drawn = await picture(app);
  const places: [number, number][] = [];
  for (let x = 110; x < 640; x += 4) {
    const ys = Array.from({ length: drawn.height - 120 }, (_, y) => y).filter((y) => {
      const at = (y * drawn.width + x) * 4;
      // The board is the darkest thing in the picture.
      return drawn.data[at] + drawn.data[at + 1] + drawn.data[at + 2] < 260;
    });
    if (ys.length > 3) places.push([x, ys[Math.floor(ys.length / 2)]]);
  }
  expect(places.length).toBeGreaterThan(60);
  for (const [x, y] of places) await app.page.mouse.move(x, y);
  const hovered = await app.page.evaluate(() => window.scene.callbacks.hovered);
  const numbers = hovered.filter((fret): fret is number => fret !== null);
  expect(numbers.length).toBeGreaterThan(8);
  for (let i = 1; i < numbers.length; i++) expect(numbers[i]).toBeGreaterThanOrEqual(numbers[i - 1]);
  const last = numbers.at(-1);
  await app.page.mouse.down();
  await app.page.mouse.up();
  const picked = await app.page.evaluate(() => window.scene.callbacks.picked);
  expect(picked).toEqual([last]);
});

test('compared necks are pointed at as well, and the fret lights up on all of them', async () => {
  const app = await open();
  await app.afterFrame(() =>
    app.page.evaluate(() => {
      const { build, lineSource } = window.scene.props();
      const other = { build: { ...build, method: 'glue' as const }, lineSource, label: 'glued', prediction: null };
      window.scene.set({ view: 'edge', name: 'pressed', compare: [other] });
    }),
  );
  const { width, height } = app.page.viewportSize()!;
  /** Heights at which a fret answers, down one column of the picture; the rows of one neck follow each other. */
  const answers: { fret: number; y: number }[] = [];
  for (let y = 4; y < height; y += 4) {
    await app.page.mouse.move(width / 2, y);
    const fret = await app.page.evaluate(() => window.scene.callbacks.hovered.at(-1) ?? null);
    if (fret !== null) answers.push({ fret, y });
  }
  const starts = answers.filter(({ y }, at) => at === 0 || y - answers[at - 1].y > 8);
  expect(starts).toHaveLength(2);
  expect(new Set(answers.map(({ fret }) => fret)).size).toBe(1);
  await app.page.mouse.move(2, 2);
  await app.settle();
  const before = await picture(app);
  await app.afterFrame(() => app.page.evaluate((fret) => window.scene.set({ hoveredFret: fret }), answers[0].fret));
  const after = await picture(app);
  /** The part of the canvas around one of the necks. */
  const around = (whole: PNG, y: number): PNG => {
    const part = new PNG({ width: whole.width, height: 24 });
    PNG.bitblt(whole, part, 0, Math.max(0, y - 12), whole.width, 24, 0, 0);
    return part;
  };
  for (const { y } of starts) expect(differingPixels(around(before, y + 8), around(after, y + 8))).toBeGreaterThan(3);
});

test('the exported picture has the size asked for, the neck, the factor and the caption', async () => {
  const app = await standing();
  const before = await picture(app);
  const bytes = await app.page.evaluate(() => window.scene.png(1200, 700));
  const exported = PNG.sync.read(Buffer.from(bytes));
  expect([exported.width, exported.height]).toEqual([1200, 700]);
  expect(shareUnlike(exported, GROUND)).toBeGreaterThan(0.03);
  const part = (x: number): number => {
    const corner = new PNG({ width: 200, height: 60 });
    PNG.bitblt(exported, corner, x, 640, 200, 60, 0, 0);
    return shareUnlike(corner, GROUND);
  };
  expect(part(0)).toBeGreaterThan(0.01);
  expect(part(1000)).toBeGreaterThan(0.01);
  await app.settle();
  await app.page.evaluate(() => window.scene.fit());
  await app.settle();
  expect(differingPixels(await picture(app), before)).toBe(0);
});

test('a lost context says so and comes back', async () => {
  const app = await open();
  const before = await picture(app);
  await app.page.evaluate(async () => {
    const canvas = document.querySelector('#picture canvas') as HTMLCanvasElement;
    const lose = canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context');
    lose?.loseContext();
    await new Promise((resolve) => setTimeout(resolve, 100));
    lose?.restoreContext();
  });
  await app.page.waitForFunction(() => window.scene.callbacks.unavailable.at(-1) === null);
  await app.settle();
  const said = await app.page.evaluate(() => window.scene.callbacks.unavailable);
  expect(said).toHaveLength(2);
  expect(said[0]).toBe('contextLost');
  expect(differingPixels(await picture(app), before)).toBe(0);
});

test(`${draw(1000, 80)} changes leave nothing behind`, async () => {
  const app = await open({ viewport: { width: 240, height: 160 } });
  const run = async (count: number) => {
    await app.page.evaluate(async (times) => {
      const views = ['neck', 'slot', 'end', 'edge', 'fret', 'back'] as const;
      for (let i = 0; i < times; i++) {
        window.scene.reshape(i % 6, {
          fretCount: 20 + (i % 3),
          kerfMm: 0.55 + (i % 5) / 100,
          bindingLineCount: i % 3,
          linesSawnThrough: 0,
          bodyJointFret: 14,
        });
        window.scene.set({ view: views[i % 6], lift: i % 2, liftedFret: i % 4 === 0 ? 'all' : 5 });
        if (i % 5 === 0) await new Promise(requestAnimationFrame);
      }
      window.scene.show(0);
      window.scene.set({ view: 'neck', lift: 0, liftedFret: null });
    }, count);
    // A busy machine draws later than the next turn of the browser's clock.
    await app.settle();
    const stats = await app.page.evaluate(() => window.scene.stats());
    if (!stats || stats.geometries === 0) throw new Error('The picture is not there: nothing can be counted.');
    return { geometries: stats.geometries, textures: stats.textures, programs: stats.programs };
  };
  // Whatever is made once (a buffer for cut faces, a program a material) is made in these first rounds.
  for (const view of SCENE_VIEWS.toReversed())
    await app.afterFrame(() => app.page.evaluate((next) => window.scene.set({ view: next }), view));
  const before = await run(30);
  expect(await run(draw(1000, 80))).toEqual(before);
  expect(app.troubles).toEqual([]);
});
