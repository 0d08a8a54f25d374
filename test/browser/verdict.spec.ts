/** The verdict above the picture: the numbers of the page in one line, and what to change where it cannot come out as wanted. */
import { expect, test } from 'vitest';
import { DESK, withBrowser, type App } from './harness.ts';

const openApp = withBrowser();

const clause = ({ page }: App, id: string) => page.locator(`.hero [data-clause="${id}"]`);
const figure = ({ page }: App, id: string) => page.locator(`[data-figure="${id}"] .figure-value`).innerText();

test('says the numbers of the page, follows the kerf, and opens what they rest on', async () => {
  const app = await openApp(DESK);
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  const holds = async () => {
    const said = plain(await clause(app, 'expect').innerText());
    for (const id of ['fretted', 'settled']) expect(said).toContain(plain(await figure(app, id)));
    // What a number can say shortly, a sentence says in words.
    const turns = plain(await figure(app, 'rod')).replace(/<\s/, 'less than ');
    expect(plain(await clause(app, 'rod').innerText())).toContain(turns);
  };
  await holds();
  const before = await clause(app, 'expect').innerText();
  await app.page.getByRole('slider', { name: /^Kerf/ }).focus();
  await app.afterChange(() => app.page.keyboard.press('PageDown'));
  await holds();
  expect(await clause(app, 'expect').innerText()).not.toBe(before);
  expect(await clause(app, 'saw').innerText()).toContain(
    (await app.page.getByRole('slider', { name: /^Kerf/ }).getAttribute('aria-valuetext'))!,
  );
  // The band comes later, and with it what decides.
  await app.page.locator('[data-clause="decides"]').waitFor();
  expect(await clause(app, 'expect').innerText()).toMatch(/90 % sure: /);
  await clause(app, 'rod').click();
  await app.page.getByRole('dialog', { name: 'Where a number comes from' }).waitFor();
  expect(app.troubles).toEqual([]);
});

test('says first that it cannot come out as wanted, with a change that helps; taking it is one step', async () => {
  const app = await openApp(DESK);
  const group = app.page.locator('#controls summary');
  for (const name of ['Rod and bars', 'Time and climate']) await group.filter({ hasText: name }).click();
  await app.afterChange(() => app.page.locator('[data-parameter="rodKind"] select').selectOption('one-way'));
  expect(await clause(app, 'not').count()).toBe(0);
  const relief = app.page.locator('[data-parameter="targetReliefMm"] input[type="text"]');
  await relief.fill('0.28');
  await app.afterChange(() => relief.press('Enter'));
  expect(await clause(app, 'not').innerText()).toMatch(/^It will not come out as wanted: /);
  const change = app.page.locator('.hero [data-change="value"]');
  expect(await change.innerText()).toMatch(/^Least change that helps: saw 0\.\d+\smm, not 0\.580\./);
  await app.afterChange(() => change.getByRole('button', { name: 'Take it over' }).click());
  expect(await clause(app, 'not').count()).toBe(0);
  await expect.poll(() => app.page.locator('[data-spoken]').innerText()).toMatch(/^Rod: |^Leave the rod/);
  await app.afterChange(() => app.page.keyboard.press('Control+z'));
  expect(await clause(app, 'not').count()).toBe(1);
  expect(app.troubles).toEqual([]);
});

test('keeps to itself what a learner is asked', async () => {
  const app = await openApp(DESK);
  await app.page.keyboard.press('e');
  await app.page.getByRole('button', { name: 'Begin “One fret and twenty-four”' }).click();
  const next = app.page.locator('.lesson').getByRole('button', { name: 'Next' });
  while ((await app.page.locator('.workbench[data-guessing]').count()) === 0) await next.click();
  expect(await clause(app, 'expect').isVisible()).toBe(false);
});
