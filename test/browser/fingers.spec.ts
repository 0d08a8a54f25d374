/**
 * Fingers on the phone's page: whatever scrolls it changes nothing, a thumb follows a sideways drag, a stepper steps, and
 * everything that is pressed is large enough.
 */
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { drawWithFingers, type Fingers } from './finger.ts';
import { withBrowser, type App } from './harness.ts';
import { openGroups } from './many-changes.ts';
import { draw, IS_LONG } from '../draw.ts';

const openApp = withBrowser();
const PHONE = { viewport: { width: 390, height: 844 }, touch: true } as const;

/** Whatever can be pressed, dragged or typed in. */
const CONTROLS =
  'button, select, input, textarea, summary, a[href], [role="img"], svg[role="img"], .slider, [data-handle]';

/** Every value that the page shows or holds in a control, and what it can undo. */
function values(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('input, select, textarea, button, details, .rail-now, .lesson')].map(
      (element) => {
        if (element instanceof HTMLInputElement) return `${element.value} ${element.checked}`;
        if (element instanceof HTMLSelectElement || element instanceof HTMLTextAreaElement) return element.value;
        if (element instanceof HTMLDetailsElement) return String(element.open);
        if (element instanceof HTMLButtonElement)
          return `${element.textContent} ${element.ariaPressed} ${element.ariaExpanded} ${element.disabled}`;
        return element.textContent;
      },
    ),
  );
}

/** Of the controls of a page every so many in a short draw: odd, so that it goes up and down and aslant all the same. */
const STRIDE = 11;

/** The middle of what can be seen of every control, after the page was scrolled to it. */
async function swipeOverEach(
  page: Page,
  within: string,
  by: readonly number[],
): Promise<{ tried: number; scrolled: number }> {
  const all = await page
    .locator(within)
    .evaluateHandle((part, controls) => [...part.querySelectorAll(controls)], CONTROLS);
  const count = await all.evaluate((elements) => elements.length);
  let [tried, scrolled] = [0, 0];
  for (let index = 0; index < count; index += IS_LONG ? 1 : STRIDE) {
    const place = await all.evaluate((elements, at) => {
      const element = elements[at];
      element.scrollIntoView({ block: 'center' });
      const { left, top, width, height } = element.getBoundingClientRect();
      const [x, y] = [left + width / 2, top + height / 2];
      const isSeen = width > 1 && height > 1 && x > 0 && x < innerWidth && y > 0 && y < innerHeight;
      return isSeen ? [x, y, scrollY] : null;
    }, index);
    if (!place) continue;
    const [x, y, before] = place as [number, number, number];
    // One after the other upwards, downwards and aslant.
    const lean = by[index % by.length];
    const way = index % 2 === 0 ? -1 : 1;
    await drawWithFingers(
      page,
      [0, 12, 40, 90, 160].map((far) => [[x + lean * far, Math.max(1, Math.min(843, y + way * far))]]),
    );
    tried += 1;
    if (Math.abs((await page.evaluate(() => scrollY)) - before) > 20) scrolled += 1;
  }
  return { tried, scrolled };
}

/** A neck on which every list of the page has entries. */
async function openAll(app: App): Promise<void> {
  const { page } = app;
  await openGroups(page);
  const set = async (parameter: string, value: string) => {
    const field = page.locator(`[data-parameter="${parameter}"]`).locator('select, input').first();
    if (value === 'on') await field.check();
    else await field.selectOption(value);
  };
  await set('climateOn', 'on');
  await set('job', 'refret');
  await page.locator('[data-parameter="bindingLineCount"] .stepper').last().click();
  await page.getByLabel('Neck made of').selectOption('2');
  await page.locator('.list-editor button', { hasText: 'Add' }).last().click();
  await app.settle();
}

describe('a swipe that scrolls the page changes no value', () => {
  test('begun on any control of the workshop, with every group open', async () => {
    const app = await openApp(PHONE);
    await openAll(app);
    const before = await values(app.page);
    const { tried, scrolled } = await swipeOverEach(app.page, '.workbench', [0, 0.25, -0.4]);
    console.log(`${tried} controls swiped over, the page went along with ${scrolled}`);
    expect(tried).toBeGreaterThan(draw(200, 18));
    expect(scrolled).toBeGreaterThan(tried * 0.9);
    expect(await values(app.page)).toEqual(before);
    expect(app.troubles).toEqual([]);
  });

  test('begun on the thumb of the kerf, where it leans sideways at first', async () => {
    const app = await openApp(PHONE);
    const kerf = kerfSlider(app.page);
    const before = await values(app.page);
    for (const path of [
      [
        [0, 0],
        [12, -10],
        [14, -60],
        [15, -160],
      ],
      [
        [0, 0],
        [4, -14],
        [60, -60],
        [120, -120],
      ],
    ] as const) {
      const [x, y] = await thumbOf(kerf);
      await drawWithFingers(
        app.page,
        path.map(([across, along]) => [[x + across, y + along]]),
      );
    }
    expect(await kerf.getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    expect(await values(app.page)).toEqual(before);
  });

  test('begun in the drawing of a guessed line', async () => {
    const app = await openApp(PHONE);
    const { page } = app;
    await page.keyboard.press('e');
    await page.getByRole('button', { name: 'Begin “Why the strings make it flat”' }).tap();
    const panel = page.locator('.lesson');
    for (let step = 0; step < 2; step += 1) await panel.getByRole('button', { name: 'Next' }).tap();
    await page.locator('.line-drawing').waitFor();
    const before = await values(page);
    const { tried } = await swipeOverEach(page, '.lesson', [0, 0.3]);
    expect(tried).toBeGreaterThan(draw(5, 0));
    expect(await values(page)).toEqual(before);
    // A handle that was pressed first follows.
    const grip = page.locator('.line-drawing .grip').nth(1);
    await grip.scrollIntoViewIfNeeded();
    await grip.tap();
    const box = (await grip.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const scrolled = await page.evaluate(() => scrollY);
    await drawWithFingers(
      page,
      [0, 10, 20, 30].map((up) => [[x, y - up]]),
    );
    expect(await panel.getByRole('slider').nth(1).getAttribute('aria-valuetext')).toMatch(/^0\.\d\d\u00a0mm back-bow$/);
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    const drawn = await panel.getByRole('slider').nth(1).inputValue();
    await panel.getByRole('button', { name: 'Raise the line near fret' }).tap();
    const raised = Number(await panel.getByRole('slider').nth(1).inputValue()) - Number(drawn);
    // To the digits that a guess has.
    expect(raised.toFixed(4)).toBe('0.0100');
  });
});

const kerfSlider = (page: Page) => page.getByRole('slider', { name: /^Kerf/ });

/** The middle of the thumb, px of the window, after the page was scrolled to it. */
async function thumbOf(slider: Locator): Promise<[number, number]> {
  return slider.evaluate((element) => {
    const input = element as HTMLInputElement;
    input.scrollIntoView({ block: 'center' });
    const { left, top, width, height } = input.getBoundingClientRect();
    const thumb = Number.parseFloat(getComputedStyle(input).getPropertyValue('--thumb'));
    const share = (Number(input.value) - Number(input.min)) / (Number(input.max) - Number(input.min));
    return [left + thumb / 2 + share * (width - thumb), top + height / 2];
  });
}

describe('a slider under a finger', () => {
  test('follows a sideways drag of its thumb, as one step to undo', async () => {
    const app = await openApp(PHONE);
    const kerf = kerfSlider(app.page);
    const [x, y] = await thumbOf(kerf);
    const { y: top } = (await kerf.boundingBox())!;
    const across = (far: number): Fingers => [[x + far, y + far / 20]];
    await app.afterChange(() => drawWithFingers(app.page, [0, 10, 20, 30, 40, 50].map(across)));
    const value = Number(await kerf.inputValue());
    // 40 px beyond the 10 px that told a drag from a tap, of a track of 358 less 24 px for 0.9 mm.
    expect(value).toBeGreaterThan(0.58 + (0.9 * 30) / 334);
    expect(value).toBeLessThan(0.58 + (0.9 * 50) / 334);
    // What stands above it may grow or shrink with the numbers: the slider stays under the finger.
    expect(Math.abs((await kerf.boundingBox())!.y - top)).toBeLessThan(2);
    const undo = app.page.locator('.bar-steps button').first();
    await app.afterChange(() => undo.tap());
    expect(await kerf.getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    expect(await undo.isDisabled()).toBe(true);
  });

  const changed = openApp.shared(async (open) => {
    const app = await open(PHONE);
    await app.afterChange(() => kerfSlider(app.page).press('ArrowUp'));
    return app;
  });

  test.each([
    ['a tap on its track', [0.9]],
    ['two taps on its thumb', [0.31, 0.31]],
    ['a sideways swipe along its track', [0.6, 0.7, 0.8, 0.95]],
  ])('takes nothing from %s', async (what, shares) => {
    const app = await changed();
    const kerf = kerfSlider(app.page);
    const before = await kerf.inputValue();
    await thumbOf(kerf);
    const box = (await kerf.boundingBox())!;
    const at = (share: number): Fingers => [[box.x + share * box.width, box.y + box.height / 2]];
    if (what.includes('tap')) for (const share of shares) await drawWithFingers(app.page, [at(share)]);
    else await drawWithFingers(app.page, shares.map(at));
    await app.settle();
    expect(await kerf.inputValue()).toBe(before);
  });

  test('has steppers: a hundredth of kerf for each tap, one undo step; held, they repeat as one', async () => {
    const app = await openApp(PHONE);
    const { page } = app;
    const kerf = kerfSlider(page);
    const more = page.getByRole('button', { name: 'Kerf: 0.010\u00a0mm more' });
    const undo = page.locator('.bar-steps button').first();
    await app.afterChange(() => more.tap());
    expect(await kerf.getAttribute('aria-valuetext')).toBe('0.590\u00a0mm');
    await app.afterChange(() => page.getByRole('button', { name: 'Kerf: 0.010\u00a0mm less' }).tap());
    expect(await kerf.getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    for (let step = 0; step < 2; step += 1) await app.afterChange(() => undo.tap());
    expect(await undo.isDisabled()).toBe(true);

    await more.scrollIntoViewIfNeeded();
    const box = (await more.boundingBox())!;
    const finger = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    const client = await page.context().newCDPSession(page);
    await client.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [finger] });
    await page.waitForFunction(
      (input) => Number((input as HTMLInputElement).value) > 0.605,
      await kerf.elementHandle(),
    );
    await client.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    const held = await kerf.inputValue();
    expect(Number(held)).toBeGreaterThanOrEqual(0.61);
    await app.settle();
    expect(await kerf.inputValue()).toBe(held);
    await app.afterChange(() => undo.tap());
    expect(await kerf.getAttribute('aria-valuetext')).toBe('0.580\u00a0mm');
    expect(await undo.isDisabled()).toBe(true);
  });
});

/** What is smaller than a finger needs, with what it measures, px. */
function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const pressed = [
      ...document.querySelectorAll<HTMLElement>('button, select, summary, a[href], textarea, input, [role="button"]'),
    ].filter(
      (element) => element.checkVisibility({ visibilityProperty: true }) && !element.closest('.visually-hidden'),
    );
    return pressed.flatMap((element) => {
      // A box to tick is pressed by its words too, and a slider by all around its thumb.
      const around =
        element instanceof HTMLInputElement && ['checkbox', 'radio'].includes(element.type)
          ? (element.closest('label') ?? element.labels?.[0] ?? element)
          : (element.closest('.slider') ?? element);
      const { width, height } = around.getBoundingClientRect();
      const isHidden = width <= 1 || height <= 1;
      if (isHidden || (width >= least && height >= least)) return [];
      const name = element.ariaLabel ?? (element.textContent || element.id);
      return [`${element.tagName.toLowerCase()} “${name}” ${Math.round(width)} × ${Math.round(height)}`];
    });
  }, 44);
}

describe('whatever is pressed is 44 px each way', () => {
  test('on the page of the phone, with every group and the menu open', async () => {
    const app = await openApp(PHONE);
    await openAll(app);
    expect(await tooSmall(app.page)).toEqual([]);
    await app.page.getByRole('button', { name: 'Menu' }).tap();
    expect(await tooSmall(app.page)).toEqual([]);
    const [content, frame] = await app.page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    expect(content).toBe(frame);
  });
});
