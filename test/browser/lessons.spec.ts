/**
 * A lesson from beginning to end in a real browser: by keyboard on a desk, by finger on a tablet and on a phone; the
 * numbers are covered while a guess is asked for, and the person's own neck comes back.
 */
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { LESSONS } from '../../src/pages/lessons/lessons/index.ts';
import { LESSON_TEXTS } from '../../src/speech/en/pages/lesson-texts.ts';
import { drawWithFingers } from './finger.ts';
import { DESK, withBrowser, type App } from './harness.ts';
import { IS_LONG } from '../draw.ts';

const openApp = withBrowser();

const lesson = (page: Page): Locator => page.locator('.lesson');
const name = (page: Page) => page.getByLabel('Name of the build').inputValue();
const numbersShown = (page: Page) => page.locator('.readouts .figure-value').first().isVisible();

async function begin({ page }: App, title: string): Promise<void> {
  await page.keyboard.press('e');
  await page.getByRole('button', { name: `Begin “${title}”` }).click();
  await lesson(page).waitFor();
}

/** Presses Tab until a control has the focus. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  for (let presses = 0; presses < 160; presses += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('the control is not reached by Tab');
}

async function pressOn(page: Page, control: Locator, key = 'Enter'): Promise<void> {
  await tabTo(page, control);
  await page.keyboard.press(key);
}

test('by keyboard alone, from the list to the end; the own neck comes back', async () => {
  const app = await openApp(DESK);
  const { page } = app;
  await page.getByLabel('Name of the build').fill('My own neck');
  await page.keyboard.press('Enter');
  await app.afterChange(() => page.getByRole('slider', { name: /^Kerf/ }).press('ArrowUp'));
  const kerf = await page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext');

  await page.keyboard.press('e');
  await page.getByRole('dialog', { name: 'Lessons' }).waitFor();
  await app.screenshot('lessons/list');
  await pressOn(page, page.getByRole('button', { name: 'Begin “One fret and twenty-four”' }));
  const panel = lesson(page);
  await panel.getByText('Step 1 of 5').waitFor();
  // The new step is where the reader is.
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('A bare board');
  const next = panel.getByRole('button', { name: 'Next' });
  const steps = LESSON_TEXTS['one-and-all'].steps;

  await pressOn(page, next);
  await panel.getByRole('heading', { name: steps.one.title }).waitFor();
  expect(await numbersShown(page)).toBe(false);
  await panel.getByText('The numbers and the line are covered while you guess.').waitFor();
  const slider = panel.getByRole('slider', { name: 'Your guess' });
  await tabTo(page, slider);
  for (let presses = 0; presses < 5; presses += 1) await page.keyboard.press('ArrowLeft');
  expect(await slider.getAttribute('aria-valuetext')).toBe('0.05\u00a0mm back-bow');
  await pressOn(page, panel.getByRole('button', { name: 'Show what is computed' }));
  await panel.getByText(/You said 0\.05\u00a0mm back-bow; computed 0\.\d\d\u00a0mm back-bow\./).waitFor();
  expect(await numbersShown(page)).toBe(true);

  await pressOn(page, next);
  await panel.getByRole('heading', { name: steps.all.title }).waitFor();
  const handle = panel.getByRole('slider', { name: /Height of the line near fret 7/ });
  await tabTo(page, handle);
  await page.keyboard.press('PageUp');
  await app.screenshot('lessons/guess-line');
  await pressOn(page, panel.getByRole('button', { name: 'Show what is computed' }));
  await panel.getByText(/You drew 0\.\d\d\u00a0mm back-bow; computed 0\.\d\d\u00a0mm back-bow\./).waitFor();
  await panel.getByText(/5 to 95 of 100 such necks: 0\.\d\d to 0\.\d\d\u00a0mm/).waitFor();
  await app.settle();
  await app.screenshot('lessons/answer-line');

  // Back and on again: the guess is still there.
  await pressOn(page, panel.getByRole('button', { name: 'Back' }));
  await panel.getByRole('heading', { name: steps.one.title }).waitFor();
  expect(await panel.getByRole('slider', { name: 'Your guess' }).getAttribute('aria-valuetext')).toBe(
    '0.05\u00a0mm back-bow',
  );
  await pressOn(page, next);
  await pressOn(page, next);
  await panel.getByRole('heading', { name: steps.inside.title }).waitFor();
  await pressOn(page, panel.getByRole('button', { name: 'Show it without a guess' }));
  await panel.getByText(/Computed: \d+\u00a0N\./).waitFor();
  await app.settle();
  await app.screenshot('lessons/inside');
  await pressOn(page, next);
  await panel.getByRole('heading', { name: steps.yours.title }).waitFor();

  // The task has its control beside it; what else is changed is named, and can be set back.
  const task = panel.getByRole('slider', { name: /^Kerf/ });
  expect(await panel.locator('.held [data-met]').count()).toBe(1);
  const lessonKerf = await task.getAttribute('aria-valuetext');
  const depth = page.getByRole('slider', { name: /^Depth of slot|^Slot depth/ }).first();
  await app.afterChange(() => depth.press('ArrowUp'));
  await panel.getByText(/^Something else was changed too: /).waitFor();
  await app.afterChange(() => panel.getByRole('button', { name: 'Set it back' }).click());
  for (let presses = 0; presses < 14 && (await panel.locator('.goal[data-achieved]').count()) === 0; presses += 1)
    await app.afterChange(() => task.press('ArrowUp'));
  await panel.getByText('Done, and by your own hand.').waitFor();
  await app.settle();
  await app.screenshot('lessons/task-done');
  // Undo takes back what was changed here.
  await app.afterChange(() => page.keyboard.press('Control+z'));
  expect(await task.getAttribute('aria-valuetext')).not.toBe(lessonKerf);
  await panel.getByRole('button', { name: 'Next lesson: Press, glue, both' }).waitFor();

  await pressOn(page, panel.getByRole('button', { name: 'Finish' }));
  await page.getByText('Your neck is back on the bench as you left it.').waitFor();
  expect([await name(page), await page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext')]).toEqual([
    'My own neck',
    kerf,
  ]);
  await app.afterChange(() => page.keyboard.press('Control+z'));
  expect(await page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext')).not.toBe(kerf);
  // The list remembers, after a reload too.
  await page.reload();
  await page.waitForFunction(() => (window.backbow?.predictionVersion ?? 0) > 0);
  await page.keyboard.press('e');
  const done = page.locator('.lesson-list [data-done]', { hasText: 'gone through · task done' });
  await done.waitFor();
  // It is forgotten when that is wanted, and comes back as long as the list is open.
  await page.getByRole('button', { name: 'Forget my guesses and what is done' }).click();
  await page.getByText('Nothing is kept of the lessons any more.').waitFor();
  expect(await done.count()).toBe(0);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await done.waitFor();
  expect(app.troubles).toEqual([]);
});

test('on a tablet the line is drawn with a finger', async () => {
  const app = await openApp({ viewport: { width: 820, height: 1180 }, touch: true });
  const { page } = app;
  await begin(app, 'Why the strings make it flat');
  const panel = lesson(page);
  await panel.getByRole('button', { name: 'Next' }).tap();
  await panel.getByRole('button', { name: 'Next' }).tap();
  // A handle that was pressed first follows; anywhere else the finger scrolls the page.
  const grip = panel.locator('.line-drawing .grip').nth(1);
  await grip.scrollIntoViewIfNeeded();
  await grip.tap();
  const box = (await grip.boundingBox())!;
  await drawWithFingers(
    page,
    [0, 10, 20, 30].map((up) => [[box.x + box.width / 2, box.y + box.height / 2 - up]]),
  );
  const middle = panel.getByRole('slider').nth(1);
  expect(await middle.getAttribute('aria-valuetext')).toMatch(/^0\.\d\d\u00a0mm back-bow$/);
  await app.screenshot('lessons/tablet');
  await panel.getByRole('button', { name: 'Show what is computed' }).tap();
  await panel.getByText(/You drew/).waitFor();
  expect(app.troubles).toEqual([]);
});

test('on a phone, in the dark, the two refrets are pulled; what is drawn and what is computed is said', async () => {
  const app = await openApp({ viewport: { width: 390, height: 844 }, touch: true, colourScheme: 'dark' });
  const { page } = app;
  await begin(app, 'The chamfer and the next refret');
  const panel = lesson(page);
  for (let step = 0; step < 3; step += 1) await panel.getByRole('button', { name: 'Next' }).tap();
  const pull = panel.getByRole('slider', { name: 'Pull both frets' });
  await panel.getByText('Chips: drawn for illustration.').waitFor();
  expect(await panel.locator('.chip').count()).toBe(0);
  await pull.press('End');
  // Two chips, both on the side with the sharp edges.
  expect(await panel.locator('.chip').count()).toBe(2);
  expect(await panel.locator('figure').first().locator('.chip').count()).toBe(2);
  await app.screenshot('lessons/phone-dark', { fullPage: true });
  const [content, frame] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  expect(content).toBe(frame);
  expect(app.troubles).toEqual([]);
});

test('a reload in the middle of a lesson brings back the own neck', async () => {
  const app = await openApp();
  const { page } = app;
  await page.getByLabel('Name of the build').fill('Mine');
  await page.keyboard.press('Enter');
  await begin(app, 'Press, glue, both');
  await lesson(page).getByRole('button', { name: 'Next' }).click();
  expect(await name(page)).not.toBe('Mine');
  await page.reload();
  await page.getByText('“Mine” is back on the bench as you left it').waitFor();
  expect(await name(page)).toBe('Mine');
  expect(await lesson(page).count()).toBe(0);
});

test('going on with the lesson’s neck is one step that undo takes back', async () => {
  const app = await openApp();
  const { page } = app;
  const before = await name(page);
  await begin(app, 'Nipping the tang over binding');
  const panel = lesson(page);
  for (let step = 0; step < 4; step += 1) await panel.getByRole('button', { name: 'Next' }).click();
  // What would do the task is not offered.
  await page.locator('.hero [data-clause="not"]').waitFor();
  expect(await page.locator('.hero [data-change]').count()).toBe(0);
  await app.screenshot('lessons/nipping');
  await panel.getByRole('button', { name: 'Go on with the lesson’s neck' }).click();
  expect(await name(page)).toBe('Set-neck six, mahogany, bound ebony');
  await app.afterChange(() => page.keyboard.press('Control+z'));
  expect(await name(page)).toBe(before);
});

// In German they are all walked through in every run (language.spec.ts).
test.runIf(IS_LONG)('every lesson can be gone through by its buttons alone, without an error', async () => {
  const app = await openApp({ viewport: { width: 1280, height: 800 } });
  for (const { id, steps } of LESSONS) {
    await begin(app, LESSON_TEXTS[id as keyof typeof LESSON_TEXTS].title);
    const panel = lesson(app.page);
    for (const step of steps) {
      await panel.getByRole('heading', { level: 3 }).waitFor();
      if (step.ask) {
        await panel.getByRole('button', { name: 'Show it without a guess' }).click();
        await panel
          .locator('.answer')
          .filter({ hasText: /\.$|\. / })
          .waitFor();
      }
      expect(await panel.locator('.lesson-step').innerText()).not.toMatch(/\{|\}|NaN|undefined|–\.|…/);
      await panel.getByRole('button', { name: step === steps.at(-1) ? 'Finish' : 'Next' }).click();
    }
  }
  expect(app.troubles).toEqual([]);
});
