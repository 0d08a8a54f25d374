/**
 * Draws the icons that the manifest names from public/icons/backbow.svg, with Chromium. Run it after changing the drawing:
 *
 *     node test/tools/icons.mjs
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';
import { root } from './project.mjs';

const folder = join(root, 'public', 'icons');
const drawing = readFileSync(join(folder, 'backbow.svg'), 'utf8');
const GROUND = '#f4efe4';
/** Where the system cuts the icon to a shape of its own, the ground runs to the edge and the drawing keeps to the middle. */
const ICONS = [
  { name: 'icon-192', size: 192, share: 1, ground: 'transparent' },
  { name: 'icon-512', size: 512, share: 1, ground: 'transparent' },
  { name: 'icon-maskable-512', size: 512, share: 0.78, ground: GROUND },
  { name: 'icon-touch-180', size: 180, share: 0.9, ground: GROUND },
];

const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});
for (const { name, size, share, ground } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const side = Math.round(size * share);
  await page.setContent(
    `<style>html { background: ${ground} } body { margin: 0; display: grid; place-content: center; height: 100vh }
     svg { width: ${side}px; height: ${side}px; display: block }</style>${drawing}`,
  );
  await page.screenshot({ path: join(folder, `${name}.png`), omitBackground: true });
  await page.close();
}
await browser.close();
