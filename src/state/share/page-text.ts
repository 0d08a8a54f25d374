/** Checks the texts of a customer's page that came from outside. */
import { EMPTY_PAGE, MOST_OFFER, PAGE_LIMITS, type Offer, type PageText } from './shared.ts';

/** Are its texts short enough? Longer ones would make a link that cannot be opened. */
export function fitsPage({ from, to, note }: Pick<PageText, 'from' | 'to' | 'note'>): boolean {
  return from.length <= PAGE_LIMITS.from && to.length <= PAGE_LIMITS.to && note.length <= PAGE_LIMITS.note;
}

const isOffer = (value: unknown): value is Offer => {
  if (typeof value !== 'object' || value === null) return false;
  const { price, time, ...rest } = value as Record<string, unknown>;
  return (
    Object.keys(rest).length === 0 &&
    [price, time].every((text) => typeof text === 'string' && text.length <= MOST_OFFER)
  );
};

export const fitsOffers = (offers: readonly Offer[] = []): boolean => offers.every(isOffer);

/** Is anything said in them? */
export const saysAnything = (offers: readonly Offer[] = []): boolean =>
  offers.some(({ price, time }) => price !== '' || time !== '');

/**
 * @param value what a link or a file held; undefined where nothing is said
 * @param builds number of builds beside it
 * @returns null when it is no offer for each build
 */
export function checkOffers(value: unknown, builds: number): { readonly offers?: readonly Offer[] } | null {
  if (value === undefined) return {};
  return Array.isArray(value) && value.length === builds && value.every(isOffer) ? { offers: value } : null;
}

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
  if (typeof from !== 'string' || typeof to !== 'string' || typeof note !== 'string') return null;
  if (!fitsPage({ from, to, note })) return null;
  const isIndex = typeof advised === 'number' && Number.isInteger(advised) && advised >= 0 && advised < builds;
  if (advised !== null && !isIndex) return null;
  return { from, to, note, advised };
}
