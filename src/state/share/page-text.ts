/** Checks the texts of a customer's page that came from outside. */
import { EMPTY_PAGE, PAGE_LIMITS, type PageText } from './shared.ts';

/**
 * @param value what a link or a file held; undefined is a page without texts
 * @param builds number of builds beside it
 * @returns null when it is no such page
 */
export function checkPage(value: unknown, builds: number): PageText | null {
  if (value === undefined) return EMPTY_PAGE;
  if (typeof value !== 'object' || value === null) return null;
  const { from, to, note, advised, ...rest } = value as Record<string, unknown>;
  if (Object.keys(rest).length > 0) return null;
  const isText = (text: unknown, most: number): text is string => typeof text === 'string' && text.length <= most;
  if (!isText(from, PAGE_LIMITS.from) || !isText(to, PAGE_LIMITS.to) || !isText(note, PAGE_LIMITS.note)) return null;
  const isIndex = typeof advised === 'number' && Number.isInteger(advised) && advised >= 0 && advised < builds;
  if (advised !== null && !isIndex) return null;
  return { from, to, note, advised };
}
