/**
 * The page in German: chosen by the system or in the menu, on the customer's page, and in what the worker refuses; nothing
 * English is left, nothing is cut off, and the work on the bench outlasts the change. Dialogs and papers: network.spec.ts.
 */
import { describe, expect, test } from 'vitest';
import { GERMAN } from '../../src/speech/de/index.ts';
import { WANTED_WORDS } from '../../src/speech/en/pages/answers.ts';
import { START_WORDS } from '../../src/speech/start-words.ts';
import { PRESETS } from '../tools/presets.ts';
import { LESSONS } from '../../src/pages/lessons/lessons/index.ts';
import { writeLink } from '../../src/state/share/link.ts';
import { EMPTY_PAGE } from '../../src/state/share/shared.ts';
import { answersAreThere, bandsAreThere, englishLeft, IN_GERMAN, openGroups } from './german.ts';
import { withBrowser, type App, type OpenOptions } from './harness.ts';
import { openEverything } from './open-everything.ts';
import { violations } from './violations.ts';
import { draw, IS_LONG } from '../draw.ts';

const openApp = withBrowser();

const PHONE: OpenOptions = { viewport: { width: 390, height: 844 }, touch: true, context: { locale: 'de-DE' } };

/** Words that stand out of their box, or are cut off by it. */
function cutOff({ page }: App): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    for (const element of document.querySelectorAll<HTMLElement>(
      'button, label, summary, dt, dd, h1, h2, h3, p, th, td',
    )) {
      if (!element.checkVisibility() || element.closest('.visually-hidden, .skip, .table-scroll, .chart-table'))
        continue;
      const { scrollWidth, clientWidth } = element;
      if (clientWidth > 0 && scrollWidth > clientWidth + 1) found.push(`${element.className} ${element.textContent}`);
    }
    for (const box of document.querySelectorAll('dialog, main, aside, section, .dialog-body, .workbench')) {
      const tooWide = box.scrollWidth - box.clientWidth;
      if (
        box.checkVisibility() &&
        !box.matches('.table-scroll, .sheet-scroll') &&
        getComputedStyle(box).overflowX !== 'visible' &&
        tooWide > 1
      )
        found.push(`${box.tagName} ${box.className} is ${tooWide} px too wide`);
    }
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth === clientWidth ? found : [`the page is ${scrollWidth - clientWidth} px too wide`, ...found];
  });
}

describe('German by the system', () => {
  test('the whole page speaks it, and nothing English is left', async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    await bandsAreThere(app);
    expect(await page.evaluate(() => [document.documentElement.lang, document.documentElement.dir])).toEqual([
      'de',
      '',
    ]);
    expect(await page.locator('meta[name="description"]').getAttribute('content')).toBe(START_WORDS.de.description);
    expect(await page.locator('[data-figure="fretted"] .figure-value').innerText()).toMatch(/^0,\d\d\u00a0mm$/);
    await openGroups(app);
    await page.getByRole('checkbox', { name: GERMAN.CHART_WORDS.table }).check();
    await page.locator('.checks > button').click();
    await page.getByRole('button', { name: GERMAN.PROJECT_WORDS.menu, exact: true }).click();
    expect(await englishLeft(app)).toEqual([]);
    await page.keyboard.press('Escape');
    const left: string[] = [];
    for (const key of ['2', '3', '4', '5', '6', 'v']) {
      await page.keyboard.press(key);
      await app.settle();
      for (const text of await englishLeft(app)) left.push(`after ${key}: ${text}`);
    }
    expect(left).toEqual([]);
    expect(app.troubles).toEqual([]);
  });

  test('every preset speaks it, with its checks', async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    await openGroups(app);
    const left: string[] = [];
    // The first one lies on the bench already.
    for (const { id } of PRESETS.slice(1, draw(PRESETS.length, 2))) {
      await app.afterChange(() => page.getByRole('combobox', { name: GERMAN.PROJECT_WORDS.presets }).selectOption(id));
      await bandsAreThere(app);
      const more = page.locator('.checks > button[aria-expanded="false"]');
      if (await more.isVisible()) await more.click();
      for (const text of await englishLeft(app)) left.push(`${id}: ${text}`);
    }
    expect(left).toEqual([]);
  });

  const walked = LESSONS.slice(0, draw(LESSONS.length, 2));

  test(`${walked.length} of ${LESSONS.length} lessons speak it from their first steps to their last, with their answers`, async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    const lesson = page.locator('.lesson');
    const button = (name: string) => lesson.getByRole('button', { name, exact: true });
    const left: string[] = [];
    let steps = 0;
    let answers = 0;
    for (const { id } of walked) {
      const { title } = GERMAN.LESSON_TEXTS[id as keyof typeof GERMAN.LESSON_TEXTS];
      await page.keyboard.press('e');
      await page.getByRole('button', { name: GERMAN.LESSON_WORDS.beginName(title), exact: true }).click();
      await lesson.waitFor();
      for (let isLast = false; !isLast; steps += 1) {
        await page.waitForFunction((text) => !document.body.innerText.includes(text), GERMAN.LESSON_WORDS.computing);
        for (const text of await englishLeft(app)) left.push(`${title}: ${text}`);
        if (await button(GERMAN.LESSON_WORDS.skip).isVisible()) {
          await button(GERMAN.LESSON_WORDS.skip).click();
          answers += 1;
          for (const text of await englishLeft(app)) left.push(`${title}, answer: ${text}`);
        }
        isLast = await button(GERMAN.LESSON_WORDS.finish).isVisible();
        await button(isLast ? GERMAN.LESSON_WORDS.finish : GERMAN.LESSON_WORDS.next).click();
      }
      await lesson.waitFor({ state: 'detached' });
    }
    expect(left).toEqual([]);
    expect(steps).toBe(walked.reduce((sum, one) => sum + one.steps.length, 0));
    expect(answers).toBe(walked.flatMap((one) => one.steps).filter(({ ask }) => ask).length);
    expect(app.troubles).toEqual([]);
  });

  test('what cannot be typed is refused in it, numbers with a comma and with a point are taken', async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    const field = page.getByRole('textbox', { name: /^Schlitzbreite/ });
    for (const [typed, shown] of [
      ['0,61', '0,610'],
      ['0.6', '0,600'],
    ] as const) {
      await field.fill(typed);
      await app.afterChange(() => field.press('Enter'));
      expect(await field.inputValue()).toBe(shown);
    }
    await field.fill('9,5');
    await field.press('Enter');
    const refusal = page.locator('.refusal').filter({ hasText: '9,5' });
    await refusal.waitFor();
    expect(await refusal.innerText()).toMatch(/0,3 bis 1,2/);
    expect(await englishLeft(app)).toEqual([]);
  });

  test('what the worker refuses is said in it', async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    await page.getByRole('button', { name: GERMAN.OPENING_WORDS.wanted }).click();
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await app.page.getByRole('button', { name: GERMAN.PROJECT_WORDS.menu, exact: true }).click();
    await page.getByRole('button', { name: GERMAN.OPENING_WORDS.refret }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: GERMAN.REFRET_WORDS.makeRefret }).click();
    await dialog.getByLabel(GERMAN.REFRET_WORDS.stretches).selectOption('5');
    const add = dialog.getByRole('button', { name: GERMAN.REFRET_WORDS.add });
    while (await add.isEnabled()) await add.click();
    // 8 tangs in 5 stretches: 8⁵ combinations.
    await dialog.getByText(/8 Bundfüße in 5 Strecken ergeben 32768 Kombinationen; höchstens 20000/).waitFor();
    expect(await englishLeft(app)).toEqual([]);
  });

  // Names and contrast are asked of the English page in every run, and of the German reader's page below.
  test.runIf(IS_LONG)('the accessibility checker finds nothing', async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    await bandsAreThere(app);
    await openGroups(app);
    await page.getByRole('button', { name: GERMAN.PROJECT_WORDS.menu, exact: true }).click();
    expect(await violations(app)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.keyboard.press('?');
    await page.getByRole('dialog').waitFor();
    expect(await violations(app)).toEqual([]);
  });
});

describe('the choice', () => {
  const language = (app: App) => app.page.evaluate(() => document.documentElement.lang);
  const menu = (app: App, name: string) => app.page.getByRole('button', { name, exact: true }).click();

  test('in the menu changes the page at once and keeps the neck, the steps and the picture, there and back', async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    await app.afterChange(() => page.getByRole('slider', { name: /^Schlitzbreite/ }).press('PageDown'));
    const kerf = () => page.getByRole('slider', { name: /^(Schlitzbreite|Kerf)/ }).getAttribute('aria-valuetext');
    const before = await kerf();
    await page.getByRole('textbox', { name: GERMAN.PROJECT_WORDS.name }).fill('Ahorn für Ada');
    await page.keyboard.press('Enter');
    const mark = () => page.evaluate(() => (document.querySelector<HTMLElement>('.neck-scene canvas')!.id = 'same'));
    await mark();
    let loads = 0;
    page.on('load', () => (loads += 1));

    await menu(app, GERMAN.PROJECT_WORDS.menu);
    const choice = page.getByRole('combobox', { name: 'Sprache' });
    expect(await choice.locator('option').allInnerTexts()).toEqual(['wie das System', 'English', 'Deutsch']);
    expect(
      await choice.locator('option[lang]').evaluateAll((all) => all.map((one) => one.getAttribute('lang'))),
    ).toEqual(['en', 'de']);
    await choice.focus();
    await choice.selectOption('en');
    const again = page.getByRole('combobox', { name: 'Language' });
    await again.waitFor();
    expect(await language(app)).toBe('en');
    expect(await page.locator('meta[name="description"]').getAttribute('content')).toBe(START_WORDS.en.description);
    // The menu is still open and holds the focus; the neck, its steps and the picture are the same.
    expect(await again.evaluate((select) => select === document.activeElement)).toBe(true);
    expect(await page.getByRole('textbox', { name: 'Name of the build' }).inputValue()).toBe('Ahorn für Ada');
    expect((await kerf())?.replace('.', ',')).toBe(before);
    expect(await page.getByRole('img', { name: /Ahorn für Ada/ }).getAttribute('aria-label')).toMatch(/press fit/);
    expect(await page.locator('canvas#same').count()).toBe(1);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: /^Undo/ }).click();
    expect(await page.getByRole('textbox', { name: 'Name of the build' }).inputValue()).not.toBe('Ahorn für Ada');
    await page.getByRole('button', { name: /^Redo/ }).click();

    await menu(app, 'Menu');
    await again.selectOption('system');
    await choice.waitFor();
    expect(await language(app)).toBe('de');
    expect(await kerf()).toBe(before);
    expect(await englishLeft(app)).toEqual([]);
    expect(loads).toBe(0);

    // Another visit finds the choice again, whatever the system says.
    await choice.selectOption('en');
    await again.waitFor();
    await page.reload();
    await menu(app, 'Menu');
    expect(await again.inputValue()).toBe('en');
    expect(app.troubles).toEqual([]);
  });

  test('of the system is followed while a dialog is open, and what is typed in it stays', async () => {
    const app = await openApp(IN_GERMAN);
    const { page } = app;
    await page.keyboard.press('w');
    const relief = page.getByRole('dialog').getByRole('textbox').first();
    await relief.fill('0,3');
    await page.evaluate(() => {
      Object.defineProperty(navigator, 'languages', { get: () => ['en-GB'], configurable: true });
      dispatchEvent(new Event('languagechange'));
    });
    await page.getByRole('dialog').getByRole('heading', { name: WANTED_WORDS.title, exact: true }).waitFor();
    expect(await relief.inputValue()).toBe('0,3');
    expect(await language(app)).toBe('en');
    expect(app.troubles).toEqual([]);
  });

  test('holds until the page is closed where nothing can be kept', async () => {
    const app = await openApp({
      ...IN_GERMAN,
      prepare: async (page) => {
        await page.addInitScript(() => {
          Storage.prototype.setItem = () => {
            throw new DOMException('full', 'QuotaExceededError');
          };
        });
      },
    });
    const { page } = app;
    await menu(app, GERMAN.PROJECT_WORDS.menu);
    await page.getByRole('combobox', { name: 'Sprache' }).selectOption('en');
    await page.getByText('This device does not keep the choice').waitFor();
    expect(await language(app)).toBe('en');
  });

  test('falls back to English with a notice when the German part does not come', async () => {
    const app = await openApp({
      ...IN_GERMAN,
      prepare: async (page) => {
        await page.route('**/assets/de-*.js', (route) => route.fulfill({ status: 404, body: '' }));
      },
    });
    const notice = app.page.getByText(START_WORDS.de.wordsMissing);
    await notice.waitFor();
    expect(await notice.getAttribute('lang')).toBe('de');
    expect(await language(app)).toBe('en');
    await app.page.getByRole('button', { name: 'Menu', exact: true }).waitFor();
  });

  test('English fetches nothing of another language', async () => {
    const fetched: string[] = [];
    await openApp({
      prepare: (page) => Promise.resolve(void page.on('request', (request) => fetched.push(request.url()))),
    });
    expect(fetched.length).toBeGreaterThan(5);
    expect(fetched.filter((url) => /\/de-[\w-]+\.js$/.test(url))).toEqual([]);
  });
});

describe('the customer’s page', () => {
  const { build } = PRESETS[0];
  const link = writeLink({
    builds: (['press', 'glue', 'both'] as const).map((method) => ({ ...build, name: 'No. 7', method })),
    page: { ...EMPTY_PAGE, from: 'Werkstatt', to: 'Ada' },
  });
  const path = `#customer=${link.ok ? link.text : ''}`;
  const complete = async ({ page }: App) => {
    await expect.poll(() => page.locator('.solids img').count()).toBe(1);
    await expect.poll(() => page.locator('.lies .strip').count()).toBe(3);
  };

  test('speaks the reader’s language, on a phone', async () => {
    const app = await openApp({ ...PHONE, path, waitForPicture: false });
    await complete(app);
    expect(await app.page.title()).toBe(GERMAN.CUSTOMER_WORDS.titleMany);
    expect(await englishLeft(app)).toEqual([]);
    expect(await cutOff(app)).toEqual([]);
    const lies = (await app.page.locator('.lies').boundingBox())!;
    expect(lies.x + lies.width).toBeLessThanOrEqual(390);
    expect(await violations(app)).toEqual([]);
    await app.screenshot('language/customer-phone', { fullPage: true });
    expect(app.troubles).toEqual([]);
  });

  test('that cannot be shown says so in it', async () => {
    const app = await openApp({ ...PHONE, path: `${path.slice(0, -9)}`, waitForPicture: false });
    await app.page.getByRole('heading', { name: GERMAN.CUSTOMER_WORDS.notOpened }).waitFor();
    expect((await app.page.locator('main').innerText()).length).toBeGreaterThan(60);
  });

  test('falls back to English with a notice', async () => {
    const app = await openApp({
      ...PHONE,
      path,
      waitForPicture: false,
      prepare: async (page) => {
        await page.route('**/assets/de-*.js', (route) => route.abort());
      },
    });
    await app.page.getByRole('heading', { name: 'Your neck, and what you can choose' }).waitFor();
    expect(await app.page.getByText(START_WORDS.de.wordsMissing).isVisible()).toBe(true);
  });
});

const WINDOWS = [
  ['small-desk', { width: 1000, height: 720 }],
  ['phone', { width: 390, height: 844 }],
  ['desk', { width: 1440, height: 900 }],
] as const;

describe.each(WINDOWS.slice(0, draw(WINDOWS.length, 2)))('German layout, %s', (name, viewport) => {
  test('nothing is cut off or too wide', async () => {
    const app = await openApp({ ...IN_GERMAN, viewport, touch: name === 'phone' });
    await bandsAreThere(app);
    expect(await cutOff(app)).toEqual([]);
    await app.screenshot(`language/${name}`, { fullPage: true });
    const menu = app.page.getByRole('button', { name: GERMAN.PROJECT_WORDS.menu, exact: true });
    // The head of the page is one row, and the menu is in the window.
    const undo = app.page.getByRole('button', { name: /^Rückgängig/ });
    expect((await menu.boundingBox())?.y).toBe((await undo.boundingBox())?.y);
    await menu.click();
    const { x, width } = (await app.page.locator('#bar-menu').boundingBox())!;
    expect([x >= 0, x + width <= viewport.width]).toEqual([true, true]);
    expect(await cutOff(app)).toEqual([]);
    await app.screenshot(`language/${name}-menu`);
    await app.page.keyboard.press('Escape');
    const left: string[] = [];
    if (name === 'small-desk' || !IS_LONG) return;
    await openEverything(app, async (id) => {
      await answersAreThere(app);
      for (const text of await cutOff(app)) left.push(`${id}: ${text}`);
      await app.screenshot(`language/${name}-${id}`);
    });
    expect(left).toEqual([]);
  });
});
