/** The picture's own tools in a real browser: toggles reach it and say their state, hovering tells, resizing never blanks. */
import { describe, expect, test } from 'vitest';
import { DESK, differingPixels, shareUnlike, withBrowser, type App } from './harness.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();

const toggle = ({ page }: App, name: string) => page.getByRole('button', { name, exact: true });

describe('what is also shown', () => {
  const shared = openApp.shared((open) => open(DESK));

  test.each([
    ['Show the rod', 'r'],
    ['Show the forces', 'a'],
    ['Lift the fret out', 'l'],
  ])('%s is seen in the picture, says its state, and goes again', async (name, key) => {
    const app = await shared();
    const picture = () => app.page.locator('.neck-scene').screenshot();
    const before = await app.canvasPicture();
    const inked = await picture();
    expect(await toggle(app, name).getAttribute('aria-pressed')).toBe('false');
    await app.afterFrame(() => toggle(app, name).click());
    expect(await toggle(app, name).getAttribute('aria-pressed')).toBe('true');
    // Forces are written over the picture, the others are part of it.
    const isSeen =
      key === 'a' ? !(await picture()).equals(inked) : differingPixels(await app.canvasPicture(), before) > 50;
    expect(isSeen).toBe(true);
    await app.afterFrame(() => app.page.keyboard.press(key));
    expect(await toggle(app, name).getAttribute('aria-pressed')).toBe('false');
    expect(differingPixels(await app.canvasPicture(), before)).toBe(0);
    expect(app.troubles).toEqual([]);
  });

  test('the stress colours the cut across a slot; rod and forces are not offered where they are not drawn', async () => {
    const app = await shared();
    const stress = 'Show the stress in the wood (slot cut open)';
    expect(await toggle(app, stress).count()).toBe(0);
    await app.afterFrame(() => app.page.keyboard.press('2'));
    expect(await toggle(app, 'Show the rod').count()).toBe(0);
    const plain = await app.canvasPicture();
    const coloured = async () => differingPixels(await app.canvasPicture(), plain);
    await app.afterFrame(() => toggle(app, stress).click());
    await expect.poll(coloured).toBeGreaterThan(2000);
    expect(await toggle(app, stress).getAttribute('aria-pressed')).toBe('true');
    await app.screenshot('picture/stress');
    await app.afterFrame(() => toggle(app, stress).click());
    expect(await coloured()).toBe(0);
    expect(app.troubles).toEqual([]);
  });
});

test('pointing at a fret tells of it in the picture and marks it in the chart', async () => {
  const app = await openApp(DESK);
  const scene = app.page.locator('.neck-scene');
  const box = (await scene.boundingBox())!;
  const cursor = app.page.locator('.chart .cursor text');
  const before = await scene.screenshot();
  for (let share = 0.3; share < 0.7; share += 0.02) {
    await app.page.mouse.move(box.x + share * box.width, box.y + (0.51 - 0.76 * (share - 0.3)) * box.height);
    await app.settle();
    if (await cursor.isVisible()) break;
  }
  expect(await cursor.innerText().catch(() => cursor.textContent())).toMatch(/^fret \d+: /);
  expect((await scene.screenshot()).equals(before)).toBe(false);
  await app.screenshot('picture/hover');
});

test('the picture is there after every change of its size, however fast they come', async () => {
  const app = await openApp(DESK);
  const ground = await app.groundColour();
  for (let turn = 0; turn < draw(12, 5); turn += 1) {
    await app.page.setViewportSize({ width: 1440 - 37 * turn, height: 900 - 13 * (turn % 5) });
    expect(shareUnlike(await app.canvasPicture(), ground)).toBeGreaterThan(0.02);
  }
});

test('a resize while the picture is being loaded does not leave it blank', async () => {
  const app = await openApp({ ...DESK, waitForPicture: false });
  for (let turn = 0; turn < 20; turn += 1) {
    await app.page.setViewportSize({ width: 1440 - (turn % 4) * 60, height: 900 - (turn % 3) * 30 });
    if ((await app.progress()).frames > 3) break;
    await app.page.waitForTimeout(60);
  }
  await app.page.waitForFunction(() => (window.backbow?.frames ?? 0) > 0);
  await app.settle();
  expect(shareUnlike(await app.canvasPicture(), await app.groundColour())).toBeGreaterThan(0.02);
  expect(app.troubles).toEqual([]);
});

test('a canvas of a new size is drawn before the page shows it', async () => {
  const app = await openApp(DESK);
  const framesAt = await app.page.evaluate(
    () =>
      new Promise<number[]>((resolve) => {
        const frame = document.querySelector<HTMLElement>('.picture-frame')!;
        const seen: number[] = [];
        // Observed after the picture's own observer, so it is told after it, in the same turn and before the page is shown.
        const observer = new ResizeObserver(() => {
          seen.push(window.backbow!.frames);
          if (seen.length === 2) {
            observer.disconnect();
            resolve(seen);
          } else frame.style.blockSize = `${frame.clientHeight - 40}px`;
        });
        observer.observe(frame.querySelector('.neck-scene > div')!);
      }),
  );
  expect(framesAt[1]).toBeGreaterThan(framesAt[0]);
});

describe('the bar', () => {
  const shared = openApp.shared((open) => open({ viewport: { width: 1280, height: 720 } }));

  test.each([1180, 1280, 1440].slice(0, draw(3, 1)))(
    'is one row at %i px, and nothing of it is cut off',
    async (width) => {
      const app = await shared();
      await app.page.setViewportSize({ width, height: 720 });
      const boxes = await app.page
        .locator('.project-bar > *, .bar-daily > *')
        .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
      const middle = boxes[0].top + boxes[0].height / 2;
      for (const box of boxes) {
        expect(box.top).toBeLessThan(middle);
        expect(box.bottom).toBeGreaterThan(middle);
        expect(box.right).toBeLessThanOrEqual(width);
      }
      await app.screenshot(`picture/bar-${width}`);
    },
  );

  test('has a menu that opens and closes by keyboard and holds what the bar does not', async () => {
    const app = await shared();
    await app.page.setViewportSize({ width: 1280, height: 720 });
    const menu = app.page.getByRole('button', { name: 'Menu' });
    expect(await app.page.getByRole('button', { name: 'Save', exact: true }).isVisible()).toBe(false);
    await menu.focus();
    await app.page.keyboard.press('Enter');
    expect(await menu.getAttribute('aria-expanded')).toBe('true');
    for (const name of ['Open …', 'Save', 'Licences …', 'Help and keys']) {
      expect(await app.page.getByRole('button', { name, exact: true }).isVisible()).toBe(true);
    }
    await app.page.getByRole('combobox', { name: 'Units' }).selectOption('inch');
    expect(await app.page.locator('[data-figure="fretted"] .figure-value').innerText()).toMatch(/in$/);
    await app.page.keyboard.press('Escape');
    expect(await menu.getAttribute('aria-expanded')).toBe('false');
    expect(await menu.evaluate((button) => button === document.activeElement)).toBe(true);
  });
});

test('the chart is saved as a drawing that stands by itself', async () => {
  const app = await openApp({ ...DESK, colourScheme: 'dark' });
  const waiting = app.page.waitForEvent('download');
  await app.page.getByRole('button', { name: 'save SVG' }).click();
  const download = await waiting;
  expect(download.suggestedFilename()).toBe('bolt-on-six-hard-maple-line.svg');
  const { readFile } = await import('node:fs/promises');
  const text = await readFile(await download.path(), 'utf8');
  expect(text).toContain('Bolt-on six, hard maple');
  expect(text).toContain('>mm<');
  expect(text).not.toMatch(/var\(|light-dark|\sclass=|\sstyle=|\sdata-/);
  // Light paper, whatever the page is: ink on it is dark.
  expect(text).toMatch(/<rect[^>]*fill="rgb\(244, 239, 228\)"/);
  const picture = await app.context.newPage();
  await picture.setContent(
    `<body style="margin:0"><img alt="" src="data:image/svg+xml;base64,${Buffer.from(text).toString('base64')}"></body>`,
  );
  await picture.waitForFunction(() => document.querySelector('img')!.naturalWidth > 0);
  expect(await picture.locator('img').evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBe(960);
  // Nothing of it stays behind in the page.
  expect(await app.page.locator('.saved-chart').count()).toBe(0);
  expect(app.troubles).toEqual([]);
});

test('under a held thumb neck and numbers follow at once, and the verdict when it rests', async () => {
  const app = await openApp(DESK);
  const { page } = app;
  const saw = page.locator('.hero [data-clause="saw"]');
  const [picture, said] = [await app.canvasPicture(), await saw.innerText()];
  const number = await page.locator('[data-figure="fretted"]').innerText();
  const slider = page.locator('[data-parameter="kerfMm"] input[type="range"]');
  const place = await slider.evaluate((element) => {
    const input = element as HTMLInputElement;
    const { left, top, width, height } = input.getBoundingClientRect();
    const thumb = Number.parseFloat(getComputedStyle(input).getPropertyValue('--thumb'));
    const share = (Number(input.value) - Number(input.min)) / (Number(input.max) - Number(input.min));
    return [left + thumb / 2 + share * (width - thumb), top + height / 2] as const;
  });
  await page.mouse.move(...place);
  await page.mouse.down();
  await app.afterChange(() => page.mouse.move(place[0] + 25, place[1]));
  expect(differingPixels(await app.canvasPicture(), picture)).toBeGreaterThan(50);
  expect(await page.locator('[data-figure="fretted"]').innerText()).not.toBe(number);
  await expect.poll(() => saw.innerText()).not.toBe(said);
  await page.mouse.up();
  const kerf = (await slider.getAttribute('aria-valuetext'))!;
  await expect.poll(() => saw.innerText()).toContain(kerf);
  expect(app.troubles).toEqual([]);
});
