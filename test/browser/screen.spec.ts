/** The first screen as DEVELOPERS.md draws it: how much of each window the picture has, and that it stays in sight. */
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { draw } from '../draw.ts';
import { testForEverybody } from './for-everybody.ts';
import { DESK, withBrowser, type App, type Colour, type Open } from './harness.ts';
import { violations } from './violations.ts';

const openApp = withBrowser();

/** The narrow ones have less of it: a neck that runs across them needs no more. */
const WINDOWS = [
  { width: 1024, height: 768, least: 0.45 },
  { width: 390, height: 844, least: 0.28 },
  { width: 1440, height: 900, least: 0.45 },
  { width: 1920, height: 1080, least: 0.45 },
  { width: 820, height: 1180, least: 0.35 },
  { width: 844, height: 390, least: 0.33 },
] as const;
const WIDE = WINDOWS.filter(({ least }) => least === 0.45);
const SOME = WINDOWS.slice(0, draw(WINDOWS.length, 2));
const SOME_WIDE = WIDE.slice(0, draw(WIDE.length, 1));

type Window = Pick<(typeof WINDOWS)[number], 'width' | 'height'>;

async function openIn(open: Open, { width, height }: Window, options: Parameters<Open>[0] = {}): Promise<App> {
  return open({ viewport: { width, height }, touch: width < 992, ...options });
}

/** The part of the window in which a picture is seen, with nothing before it. */
async function shareInSight({ page }: App, selector: string): Promise<number> {
  return page.locator(selector).evaluate((frame) => {
    const { left, top, right, bottom } = frame.getBoundingClientRect();
    const steps = 40;
    let seen = 0;
    for (let i = 0; i < steps; i += 1)
      for (let j = 0; j < steps; j += 1) {
        const [x, y] = [left + ((right - left) * (i + 0.5)) / steps, top + ((bottom - top) * (j + 0.5)) / steps];
        const there = document.elementFromPoint(x, y);
        if (there && (frame.contains(there) || there.matches('dialog'))) seen += 1;
      }
    return ((seen / steps ** 2) * (right - left) * (bottom - top)) / (innerWidth * innerHeight);
  });
}

/** From the first to the last column that holds something else than the ground, as a share of the width. */
function spanOf({ width, height, data }: PNG, ground: Colour): number {
  const holds = (x: number): boolean => {
    for (let y = 0; y < height; y += 1) {
      const at = 4 * (y * width + x);
      if (ground.some((part, index) => Math.abs(data[at + index] - part) > 40)) return true;
    }
    return false;
  };
  const columns = Array.from({ length: width }, (_, x) => x).filter(holds);
  return (columns.at(-1)! - columns[0] + 1) / width;
}

describe('the picture', () => {
  test.each(WINDOWS)('has its share of $width × $height, and the neck spans it', async (window) => {
    const app = await openIn(openApp, window);
    expect(await shareInSight(app, '.picture-frame')).toBeGreaterThanOrEqual(window.least);
    expect(spanOf(await app.canvasPicture(), await app.groundColour())).toBeGreaterThanOrEqual(0.8);
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth)).toBe(window.width);
    expect(app.troubles).toEqual([]);
  });

  test.each(SOME)('stays in sight at $width × $height whatever is scrolled to', async (window) => {
    const app = await openIn(openApp, window);
    const before = await shareInSight(app, '.picture-frame');
    for (const place of ['.chart', '#controls .group:last-child', '.checks']) {
      await app.page
        .locator(place)
        .last()
        .evaluate((element) => element.scrollIntoView({ block: 'start' }));
      expect(await shareInSight(app, '.picture-frame')).toBeGreaterThanOrEqual(before - 0.002);
    }
  });

  test.each(SOME_WIDE)(
    'is as large with all checks read, in every view and with the hints, at $width × $height',
    async (window) => {
      const app = await openIn(openApp, window);
      const size = () => app.page.locator('.picture-frame').boundingBox();
      const before = await size();
      await app.page.locator('.checks > button').click();
      for (const view of ['2', '3', '4', '5', '6']) {
        await app.afterFrame(() => app.page.keyboard.press(view));
        expect(await size()).toEqual(before);
      }
      expect(app.troubles).toEqual([]);
    },
  );
});

describe('in other rooms', () => {
  test.each(SOME_WIDE)('a lesson leaves the picture its share of $width × $height', async (window) => {
    const app = await openIn(openApp, window);
    await app.page.keyboard.press('e');
    await app.page
      .getByRole('button', { name: /^Begin / })
      .first()
      .click();
    await app.page.locator('.lesson').waitFor();
    expect(await shareInSight(app, '.picture-frame')).toBeGreaterThanOrEqual(0.45);
    // The question stands beside it, read from its beginning whatever was scrolled to before.
    await app.page.locator('.side:has(> .lesson)').evaluate((side) => side.scrollTo({ top: side.scrollHeight }));
    await app.page.locator('.lesson').getByRole('button', { name: 'Next' }).click();
    await app.page.locator('.lesson').getByText('Step 2 of').waitFor();
    expect(await app.page.locator('.side:has(> .lesson)').evaluate((side) => side.scrollTop)).toBe(0);
    expect(await shareInSight(app, '.picture-frame')).toBeGreaterThanOrEqual(0.45);
  });

  test.each(SOME_WIDE)('so do the answers, at $width × $height', async (window) => {
    const app = await openIn(openApp, window);
    await app.page.getByRole('button', { name: /^Aim for a relief/ }).click();
    await app.page.getByRole('dialog').locator('.answers').waitFor();
    expect(await shareInSight(app, '.picture-frame')).toBeGreaterThanOrEqual(0.45);
  });

  test.each(SOME_WIDE)('and compared necks have it, whatever is read, at $width × $height', async (window) => {
    const app = await openIn(openApp, window);
    await app.page.keyboard.press('g');
    const picture = app.page.locator('.compare-picture');
    await picture.locator('canvas').first().waitFor();
    await app.page.locator('.compare-differences').waitFor();
    expect(await shareInSight(app, '.compare-picture')).toBeGreaterThanOrEqual(0.45);
    await app.page.locator('.compare-shares').evaluate((element) => element.scrollIntoView());
    expect(await shareInSight(app, '.compare-picture')).toBeGreaterThanOrEqual(0.45);
  });
});

describe('for everybody', () => {
  const first = openApp.shared((open) => open({ ...DESK, firstVisit: true }));
  testForEverybody(first, '.hero');
  testForEverybody(first, '.welcome');

  test('in colours of one’s own a track is seen, and what is pressed is told from what is not', async () => {
    const app = await openApp({ ...DESK, context: { forcedColors: 'active' } });
    const look = (name: string) =>
      app.page.getByRole('button', { name, exact: true }).evaluate((button) => {
        const { backgroundColor, color } = getComputedStyle(button);
        return `${backgroundColor} ${color}`;
      });
    const [pressed, not] = [await look('Whole neck'), await look('Back')];
    expect(pressed).not.toBe(not);
    const track = PNG.sync.read(await app.page.locator('.bow-factor input[type="range"]').screenshot());
    expect(spanOf(track, [track.data[0], track.data[1], track.data[2]])).toBeGreaterThan(0.9);
    expect(await violations(app, '.hero')).toEqual([]);
  });

  test('with more contrast soft words are as dark as all others', async () => {
    const app = await openApp({ ...DESK, context: { contrast: 'more' } });
    const colour = (selector: string) =>
      app.page
        .locator(selector)
        .first()
        .evaluate((element) => getComputedStyle(element).color);
    expect(await colour('.figure-band')).toBe(await colour('.figure-value'));
  });

  test('enlarged four times it is one column that scrolls one way, and nothing stays before what is read', async () => {
    const app = await openApp({ viewport: { width: 320, height: 256 } });
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    await app.page.locator('.checks').evaluate((element) => element.scrollIntoView({ block: 'start' }));
    expect(await shareInSight(app, '.picture-frame')).toBe(0);
    expect(app.troubles).toEqual([]);
  });
});
