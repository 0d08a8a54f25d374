/** The accessibility checker: axe-core, with all of its rules. */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/**
 * What the checker finds, each with its rule, its element and why.
 *
 * @param within - selector of a part of the page; the whole of it when not given
 */
export async function violations({ page }: { readonly page: Page }, within?: string): Promise<string[]> {
  // The page has no frames, for whose sake the checker would open another page each time; and only what it finds is put
  // into words. Together a third of its time.
  const checker = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  if (within) checker.include(within);
  const found = await checker.analyze();
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary}`),
  );
}
