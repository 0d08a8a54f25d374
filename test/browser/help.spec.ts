/** Help: words of the trade with their drawings, and a first visit that can be ignored. */
import { expect, test } from 'vitest';
import { TERMS } from '../../src/pages/about/glossary/terms.ts';
import { DESK, withBrowser } from './harness.ts';

const openApp = withBrowser();

test('the glossary shows every word with a drawing, and finds one', async () => {
  const app = await openApp({ viewport: { width: 1280, height: 860 } });
  await app.page.keyboard.press('y');
  const dialog = app.page.getByRole('dialog', { name: 'Words of the trade' });
  await dialog.waitFor();
  expect(await dialog.locator('.term-drawing').count()).toBe(TERMS.length);
  await app.screenshot('help/glossary');
  await app.page.mouse.move(640, 500);
  await app.page.mouse.wheel(0, 760);
  await app.screenshot('help/glossary-2');
  await app.page.mouse.wheel(0, 760);
  await app.screenshot('help/glossary-3');
  await dialog.getByLabel('Find a word').fill('kerf');
  expect(await dialog.locator('[data-term]').first().getAttribute('data-term')).toBe('kerf');
  await dialog.getByLabel('Find a word').fill('xyzzy');
  await dialog.getByText('No word with “xyzzy”.').waitFor();
  expect(app.troubles).toEqual([]);
});

test('in the dark, on a phone', async () => {
  const app = await openApp({ viewport: { width: 390, height: 844 }, touch: true, colourScheme: 'dark' });
  await app.page.keyboard.press('y');
  await app.page.getByRole('dialog').waitFor();
  await app.screenshot('help/glossary-phone');
  expect(await app.page.locator('dialog[open]').evaluate((dialog) => dialog.scrollWidth <= dialog.clientWidth)).toBe(
    true,
  );
});

test('on a first visit a neck is chosen by its picture, three things are said, and the verdict answers', async () => {
  const app = await openApp({ ...DESK, firstVisit: true });
  const { page } = app;
  const welcome = page.getByRole('region', { name: 'Welcome' });
  const verdict = () => page.locator('.hero .verdict-line').innerText();
  await welcome.waitFor();
  const first = await verdict();
  // Each neck has a picture of its own, and none of them has to be opened first.
  const pictures = await welcome.locator('.first-necks svg').evaluateAll((all) => all.map((svg) => svg.innerHTML));
  expect(new Set(pictures).size).toBe(pictures.length);
  await app.afterChange(() => welcome.getByRole('button', { name: /^Set-neck six/ }).click());
  expect(await verdict()).not.toBe(first);
  const kerf = welcome.getByLabel(/^Your saw/);
  await kerf.fill('0.55');
  await app.afterChange(() => kerf.press('Enter'));
  await app.afterChange(() => welcome.getByLabel('How they go in').selectOption('press'));
  expect(await verdict()).toMatch(/^Saw 0\.550\smm, .* press in, about /);
  expect(await welcome.isVisible()).toBe(true);
  // What cannot be is refused where it was typed.
  await kerf.fill('7');
  await kerf.press('Enter');
  expect(await welcome.getByRole('alert').allInnerTexts()).toContainEqual(expect.stringMatching(/0\.550\smm/));
  // Whoever comes back is not bothered.
  await page.reload();
  await page.getByRole('slider', { name: /^Kerf/ }).waitFor();
  expect(await welcome.count()).toBe(0);
  expect(app.troubles).toEqual([]);
});

test('a first visit is welcomed; the welcome goes with the first change elsewhere, and does not come again', async () => {
  const app = await openApp({ ...DESK, firstVisit: true });
  const welcome = app.page.getByRole('region', { name: 'Welcome' });
  await welcome.waitFor();
  await app.screenshot('help/welcome');
  await app.afterChange(() => app.page.getByRole('slider', { name: /^Kerf/ }).press('ArrowUp'));
  expect(await welcome.count()).toBe(0);
  await app.page.reload();
  await app.page.getByRole('slider', { name: /^Kerf/ }).waitFor();
  expect(await welcome.count()).toBe(0);
  expect(app.troubles).toEqual([]);
});

test('on a phone the welcome leaves room for the picture, and leads to the lessons', async () => {
  const app = await openApp({ viewport: { width: 390, height: 844 }, touch: true, firstVisit: true });
  await app.screenshot('help/welcome-phone');
  const picture = (await app.page.locator('.picture-frame').boundingBox())!;
  expect(picture.y + picture.height).toBeLessThan(844);
  await app.page.getByRole('button', { name: 'Begin with a lesson' }).tap();
  await app.page.getByRole('dialog', { name: 'Lessons' }).waitFor();
  expect(await app.page.getByRole('region', { name: 'Welcome' }).count()).toBe(0);
});
