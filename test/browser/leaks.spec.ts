/** The page after many changes holds as much on the graphics processor as before them. */
import { expect, test } from 'vitest';
import { SCENE_VIEWS } from '../../src/scene/types.ts';
import { withBrowser, type App } from './harness.ts';
import { countGpuObjects, gpuObjects } from './gpu-objects.ts';
import { changeMany, openGroups, SHAPING, sliderOf } from './many-changes.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();
/** Every view once, and back to the first. */
async function lookRound(app: App): Promise<void> {
  const views = app.page.locator('.views button');
  expect(await views.count()).toBe(SCENE_VIEWS.length);
  for (let view = SCENE_VIEWS.length - 1; view >= 0; view -= 1)
    await app.afterFrame(() => views.nth(view).dispatchEvent('click'));
}

const held = async (app: App) => {
  const { geometries, textures, programs } = (await app.page.evaluate(() => window.backbow!.stats()))!;
  return { geometries, textures, programs, gpu: await gpuObjects(app.page) };
};

/** How often each parameter goes there and back in each half. */
const ROUNDS = draw(7, 1);
/** Halves, with every view between them. */
const HALVES = draw(2, 1);

test(`${ROUNDS * 2 * HALVES * SHAPING.length} changes of eight parameters, with every view between, leave nothing behind`, async () => {
  const app = await openApp({ viewport: { width: 400, height: 500 }, prepare: countGpuObjects });
  await openGroups(app.page);
  const values = () => Promise.all(SHAPING.map(({ id }) => sliderOf(app.page, id).getAttribute('aria-valuetext')));
  const first = await values();
  // Whatever is made once (a buffer for cut faces, a program a material) is made in the first round.
  await lookRound(app);
  await changeMany(app.page, SHAPING, 2 * SHAPING.length);
  await lookRound(app);
  await app.settle();
  const before = await held(app);
  expect(before.geometries).toBeGreaterThan(0);
  expect(before.gpu.buffers).toBeGreaterThan(before.geometries);

  for (let half = 0; half < HALVES; half += 1) {
    await changeMany(app.page, SHAPING, ROUNDS * 2 * SHAPING.length);
    await lookRound(app);
  }
  await app.settle();
  expect(await values()).toEqual(first);
  expect(await held(app)).toEqual(before);
  expect(app.troubles).toEqual([]);
}, 600_000);
