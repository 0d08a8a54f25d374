/** Opens every dialog and every paper of the page by its key, one after the other, and closes it again. */
import { expect } from 'vitest';
import { ACTIONS } from '../../src/pages/workshop/actions/table.ts';
import type { App } from './harness.ts';

/** Keys that open something: those of the project and of the page, without the ones that ask for files or switch units. */
const OPENING = ACTIONS.filter(
  ({ id, group, keys }) =>
    (group === 'project' || group === 'page') &&
    !['open', 'save', 'keep', 'units'].includes(id) &&
    keys[0]?.length === 1,
);

/**
 * @param meanwhile done while each is open
 * @returns the ids of the actions that opened something
 */
export async function openEverything(
  { page, settle }: App,
  meanwhile: (id: string) => Promise<void> = () => Promise.resolve(),
): Promise<string[]> {
  const opened: string[] = [];
  const dialog = page.locator('dialog[open]');
  for (const { id, keys } of OPENING) {
    await page.keyboard.press(keys[0].toLowerCase());
    await expect
      .poll(async () => (await dialog.count()) > 0 || (await page.evaluate(() => location.hash)) !== '', {
        timeout: 60_000,
        message: `${id} opens nothing`,
      })
      .toBe(true);
    await settle();
    await meanwhile(id);
    opened.push(id);
    if ((await dialog.count()) > 0) {
      await page.keyboard.press('Escape');
      await dialog.waitFor({ state: 'hidden' });
    } else await page.goBack();
    await expect.poll(() => page.evaluate(() => location.hash)).toBe('');
  }
  return opened;
}
