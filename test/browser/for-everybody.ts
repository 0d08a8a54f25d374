/** What every dialog owes to everybody. */
import { expect, test } from 'vitest';
import { DESK, type App } from './harness.ts';
import { violations } from './violations.ts';
import { draw } from '../draw.ts';

/**
 * Tests that a part of the page has names, contrast and room, dark as narrow as a phone, and in the long draw light on a
 * desk.
 *
 * @param shared - the page with that part in it
 * @param within - selector of the part
 */
export function testForEverybody(shared: () => Promise<App>, within: string): void {
  const looks = [
    ['as narrow as a phone, in the dark', { width: 390, height: 844 }, 'dark'],
    ['on a desk', DESK.viewport, 'light'],
  ] as const;

  test.each(looks.slice(0, draw(looks.length, 1)))(
    'everything has a name, enough contrast and room %s',
    async (_where, viewport, colorScheme) => {
      const app = await shared();
      await app.page.setViewportSize(viewport);
      await app.page.emulateMedia({ colorScheme });
      await app.settle();
      expect(await violations(app, within)).toEqual([]);
      const wide = await app.page.locator(within).evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth);
      expect(wide).toBeLessThanOrEqual(0);
    },
  );
}
