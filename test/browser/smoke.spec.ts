/**
 * The built page opens, draws a neck and says nothing went wrong, at the size of a desk and of a phone.
 */
import { expect, test } from 'vitest';
import { shareUnlike, withBrowser, type OpenOptions } from './harness.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();

const SIZES: [string, OpenOptions][] = [
  ['desk-light', { viewport: { width: 1440, height: 900 } }],
  ['phone-light', { viewport: { width: 390, height: 844 }, touch: true }],
  ['desk-dark', { viewport: { width: 1440, height: 900 }, colourScheme: 'dark' }],
];

test.each(SIZES.slice(0, draw(SIZES.length, 2)))(
  '%s: a neck is drawn, without errors and without leaving the host',
  async (name, options) => {
    const app = await openApp({ ...options, smooth: true });
    await app.screenshot(`smoke/${name}`);
    const drawn = shareUnlike(await app.canvasPicture(), await app.groundColour());
    // A neck seen whole covers between a fiftieth and nine tenths of the picture: it is neither blank nor filled.
    expect(drawn).toBeGreaterThan(0.02);
    expect(drawn).toBeLessThan(0.9);
    expect(app.troubles).toEqual([]);
  },
);

test('the page is no wider than its window', async () => {
  const app = await openApp({ viewport: { width: 390, height: 844 }, touch: true });
  const [content, frame] = await app.page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  expect(content).toBe(frame);
});
