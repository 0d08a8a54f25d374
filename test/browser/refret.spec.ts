/** Tangs for a refret in a real browser. */
import { describe, expect, test } from 'vitest';
import { testForEverybody } from './for-everybody.ts';
import { DESK, withBrowser, type App, type Open } from './harness.ts';

const openApp = withBrowser();

const dialog = ({ page }: App) => page.getByRole('dialog', { name: 'Tangs for a refret' });
const answered = ({ page }: App) => page.waitForSelector('.refret .answers:not([data-stale])');

async function openRefret(open: Open = openApp): Promise<App> {
  const app = await open(DESK);
  await app.page.keyboard.press('x');
  await dialog(app).getByRole('button', { name: 'Make it a refret' }).click();
  await answered(app);
  return app;
}

describe('tangs for a refret', () => {
  test('the best combination goes into the build as one step', async () => {
    const app = await openRefret();
    const best = dialog(app).locator('[data-plan="1"]');
    const reached = /It comes to (.+?):/.exec(await best.innerText())![1];
    expect(await best.locator('tbody tr').count()).toBe(3);
    await best.getByRole('button', { name: 'Use this combination' }).click();
    await dialog(app).getByText(`With the tangs as the build has them: ${reached}.`).waitFor();
    await answered(app);
    expect(await dialog(app).locator('[data-plan="1"]').innerText()).toContain('The build has these tangs.');
    await dialog(app).getByRole('button', { name: 'Undo it' }).click();
    await answered(app);
    expect(await dialog(app).getByText('The build has these tangs.').count()).toBe(0);
    expect(app.troubles).toEqual([]);
  });

  test('a body far wider than the kerf is warned of; a tang that cannot be is named', async () => {
    const app = await openRefret();
    for (
      let left = await dialog(app)
        .getByRole('button', { name: /^Remove tang/ })
        .count();
      left > 1;
      left -= 1
    ) {
      await dialog(app).getByRole('button', { name: 'Remove tang 2' }).click();
    }
    const fill = async (name: string, value: string) => {
      await dialog(app).getByLabel(name).fill(value);
      await dialog(app).getByLabel(name).press('Enter');
    };
    await fill('Tang 1, Body', '0.88');
    expect(await dialog(app).getByRole('alert').filter({ hasText: 'wider in its body' }).isVisible()).toBe(true);
    await fill('Tang 1, Over the studs', '0.9');
    await answered(app);
    await dialog(app).locator('.plan-warning').first().waitFor();
    expect((await dialog(app).locator('.plan-warning').allInnerTexts()).join(' ')).toMatch(
      /crush|presses on the walls|Stop:/,
    );
  });
});

testForEverybody(openApp.shared(openRefret), '.refret');
