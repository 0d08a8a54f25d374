/** The results of the checks as a page of the program, and the relief against time. */
import { describe, expect, test } from 'vitest';
import { testForEverybody } from './for-everybody.ts';
import { DESK, withBrowser, type App, type OpenOptions } from './harness.ts';
import { violations } from './violations.ts';
import { draw } from '../draw.ts';

const openApp = withBrowser();
const PHONE: OpenOptions = { viewport: { width: 390, height: 844 }, colourScheme: 'dark' };

const dialog = ({ page }: App) => page.getByRole('dialog', { name: 'Accuracy and proof' });

describe('how well it computes', () => {
  test('opens from the help, says what disagrees and that no neck was measured, and leads to what is simplified', async () => {
    const app = await openApp(DESK);
    await app.page.keyboard.press('?');
    await app.page.getByRole('button', { name: 'Accuracy and proof …' }).click();
    await dialog(app).locator('[data-kind="verification"]').waitFor();
    expect(await dialog(app).locator('[data-kind="verification"]').innerText()).toMatch(/\d+ of \d+ comparisons/);
    expect(await dialog(app).locator('[data-kind="validation"]').innerText()).toContain('no measured neck');
    expect(await dialog(app).locator('.proof-bad > li').count()).toBeGreaterThan(0);
    const strings = dialog(app).locator('summary', { hasText: 'Strings' });
    await strings.focus();
    await app.page.keyboard.press('Enter');
    expect(await dialog(app).locator('details[open] .proof-row').count()).toBeGreaterThan(0);
    await dialog(app).getByRole('button', { name: 'What is simplified in the model, and what that costs' }).click();
    const heading = dialog(app).getByRole('heading', { name: 'What is simplified, and what it costs' });
    expect(await heading.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(app.troubles).toEqual([]);
  });

  test('says so when the results are missing, and can try again', async () => {
    const app = await openApp({
      ...DESK,
      prepare: async (page) => {
        await page.route('**/validation.json', (route) => route.abort());
      },
    });
    await app.page.keyboard.press('q');
    await dialog(app)
      .getByText(/could not be fetched/)
      .waitFor();
    await app.page.unroute('**/validation.json');
    await dialog(app).getByRole('button', { name: 'Try again' }).click();
    await dialog(app).locator('[data-kind="verification"]').waitFor();
    expect(await dialog(app).getByRole('alert').count()).toBe(0);
  });

  testForEverybody(
    openApp.shared(async (open) => {
      const app = await open(DESK);
      await app.page.keyboard.press('q');
      await dialog(app).locator('[data-kind="practice"]').waitFor();
      await dialog(app).locator('.proof-note').first().waitFor();
      await dialog(app).locator('details').first().locator('summary').click();
      return app;
    }),
    '.proof',
  );
});

describe('where a number comes from', () => {
  test('opens on its figure, with the number, its band and the equations; any other can be chosen', async () => {
    const app = await openApp(PHONE);
    const { page } = app;
    await page.getByRole('button', { name: 'Wedge force per fret' }).click();
    const origin = page.getByRole('dialog', { name: 'Where a number comes from' });
    const shown = await page.locator('[data-figure="force"] .figure-value').innerText();
    await origin.getByText(shown).waitFor();
    await origin.locator('pre', { hasText: 'A(β) = A·min(1, β/H)^m' }).waitFor();
    expect(await violations(app, '.origin')).toEqual([]);
    await origin.getByLabel('Number').selectOption('stringPullN');
    await origin.getByRole('heading', { name: 'The model, 10. Strings' }).waitFor();
    await app.screenshot('proof/origin');
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Wedge force per fret');
    expect(app.troubles).toEqual([]);
  });
});

describe('relief against time', () => {
  test('replaces the line by the key, marks the moment on the rail, and has a table', async () => {
    const app = await openApp(DESK);
    await app.page.keyboard.press('v');
    const chart = app.page.locator('svg.course');
    await chart.waitFor();
    expect(await chart.getAttribute('aria-label')).toMatch(
      /on the day of stringing, .* after 3 months, .* after ten years/,
    );
    expect(await chart.locator('.course-now').count()).toBe(0);
    await app.page.keyboard.press('.');
    await app.page.keyboard.press('.');
    expect(await chart.locator('.course-now text').textContent()).toBe('strung for an hour');
    await chart.locator('.band').waitFor({ state: 'attached' });
    await app.page.getByLabel('as a table').check();
    expect(await app.page.locator('.chart-table tbody tr').count()).toBe(7);
    await app.page.keyboard.press('v');
    await app.page.locator('.chart-table caption').filter({ hasText: 'straightedge' }).waitFor();
    expect(app.troubles).toEqual([]);
  });

  const WINDOWS: [string, OpenOptions][] = [
    ['on a dark phone', PHONE],
    ['on a desk', DESK],
  ];

  test.each(WINDOWS.slice(0, draw(WINDOWS.length, 1)))('has names and contrast %s', async (_where, options) => {
    const app = await openApp(options);
    await app.page.keyboard.press('v');
    await app.page.locator('svg.course .band').waitFor({ state: 'attached' });
    expect(await violations(app, '.chart')).toEqual([]);
  });
});
