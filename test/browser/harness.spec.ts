/**
 * The harness itself, on a page made for it: it must notice what it is there to notice.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { afterAll, describe, expect, test } from 'vitest';
import { differingPixels, shareUnlike, withBrowser, type App } from './harness.ts';

/** A page with a red quarter drawn by WebGL under a note, and buttons that change it or go wrong. */
const PAGE = `<!doctype html><html lang="en"><title>page</title>
<link rel="stylesheet" href="page.css">
<canvas width="200" height="200"></canvas><p>A note that lies over the picture</p>
<button id="draw">draw</button><button id="predict">predict</button><button id="wrong">wrong</button>
<script src="page.js"></script>`;

/** In files of their own, as the policy of the server asks for. */
const STYLE = `body { margin: 0; background: rgb(240, 230, 220) } canvas { display: block } p { position: absolute; top: 0 }`;

const SCRIPT = `  const gl = document.querySelector('canvas').getContext('webgl2');
  let size = 100;
  window.backbow = { frames: 0, predictionVersion: 1 };
  function draw() {
    gl.enable(gl.SCISSOR_TEST);
    gl.scissor(0, 0, size, 100);
    gl.clearColor(1, 0, 0, 1);
    gl.clear(gl.COLOR_BUFFER_BIT);
    window.backbow.frames += 1;
  }
  requestAnimationFrame(draw);
  document.querySelector('#draw').onclick = () => { size = 200; requestAnimationFrame(draw); };
  document.querySelector('#predict').onclick = () => setTimeout(() => {
    window.backbow.predictionVersion += 1;
    requestAnimationFrame(draw);
  }, 100);
  document.querySelector('#wrong').onclick = () => {
    console.error('said so');
    fetch('missing.json');
    fetch('http://elsewhere.invalid/').catch(() => undefined);
    setTimeout(() => { throw new Error('not caught'); });
  };
`;

const folder = mkdtempSync(join(tmpdir(), 'backbow-'));
writeFileSync(join(folder, 'index.html'), PAGE);
writeFileSync(join(folder, 'page.css'), STYLE);
writeFileSync(join(folder, 'page.js'), SCRIPT);
writeFileSync(join(folder, 'favicon.ico'), '');
const openApp = withBrowser(folder);

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('it sees what WebGL draws, without what lies over it', async () => {
  const app = await openApp({ viewport: { width: 300, height: 300 } });
  expect(await app.progress()).toEqual({ frames: 1, predictionVersion: 1 });
  const ground = await app.groundColour();
  expect(ground).toEqual([240, 230, 220]);
  const before = await app.canvasPicture();
  expect([before.width, before.height]).toEqual([200, 200]);
  // Exact: 100 × 100 of 200 × 200 pixels are red and nothing is antialiased.
  expect(shareUnlike(before, ground)).toBe(0.25);
  await app.afterFrame(() => app.page.click('#draw'));
  const after = await app.canvasPicture();
  expect(shareUnlike(after, ground)).toBe(0.5);
  expect(differingPixels(before, after)).toBe(10_000);
  expect(app.troubles).toEqual([]);
});

test('it waits for a new prediction', async () => {
  const app = await openApp();
  await app.afterChange(() => app.page.click('#predict'));
  expect(await app.progress()).toMatchObject({ predictionVersion: 2 });
});

test('it notes errors, missing files and requests to other hosts', async () => {
  const app = await openApp();
  await app.page.click('#wrong');
  // They come in any order.
  for (const trouble of [
    /uncaught: not caught/,
    /Connecting to 'http:\/\/elsewhere\.invalid\/' violates/,
    /console: said so/,
    /answer 404: .*missing\.json/,
  ])
    await expect.poll(() => app.troubles.join('\n')).toMatch(trouble);
  // The policy stops what a script asks for; a link is followed, and noticed.
  await app.page.evaluate(() => {
    location.href = 'http://elsewhere.invalid/';
  });
  for (const trouble of [
    /request to another host: http:\/\/elsewhere\.invalid\//,
    /request failed: http:\/\/elsewhere\.invalid\//,
  ])
    await expect.poll(() => app.troubles.join('\n')).toMatch(trouble);
});

test('it says so when nothing happens', async () => {
  const app = await openApp();
  app.context.setDefaultTimeout(500);
  await expect(app.afterChange(() => Promise.resolve())).rejects.toThrow('predictionVersion stayed at 1');
});

describe('a shared page', () => {
  const shared = openApp.shared((open) => open());
  const seen: App[] = [];

  test('is opened by the first test that asks for it', async () => {
    const app = await shared();
    await app.afterFrame(() => app.page.click('#draw'));
    expect(await app.progress()).toMatchObject({ frames: 2 });
    seen.push(app);
  });

  test('is the same for the next, and within a test', async () => {
    expect(await shared()).toBe(seen[0]);
    expect(await shared()).toBe(seen[0]);
    await seen[0].page.evaluate(() => document.querySelector('p')!.append(', and something else'));
  });

  test('is opened anew after a test that left it otherwise', async () => {
    const app = await shared();
    expect(app).not.toBe(seen[0]);
    expect(seen[0].page.isClosed()).toBe(true);
    expect(await app.page.innerText('p')).toBe('A note that lies over the picture');
    await app.page.click('#wrong');
    await expect.poll(() => app.troubles.join()).toContain('not caught');
    seen.push(app);
  });

  test('is opened anew after one that was told of troubles', async () => {
    const app = await shared();
    expect(seen).not.toContain(app);
    expect(app.troubles).toEqual([]);
    seen.push(app);
  });

  test.fails('(a test that fails)', () => {
    expect(seen).toEqual([]);
  });

  test('is opened anew after one that failed', async () => {
    expect(seen).not.toContain(await shared());
  });
});

test('a blank picture is blank', () => {
  const blank = new PNG({ width: 4, height: 4 });
  blank.data.fill(200);
  expect(shareUnlike(blank, [200, 200, 200])).toBe(0);
  expect(shareUnlike(blank, [200, 213, 200])).toBe(1);
});
