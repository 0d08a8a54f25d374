/** What a link or a file can carry: one build, or two or three to compare, and what the maker says of them. */
import type { Build } from '../../neck/build.ts';
import type { Problem } from '../../neck/problems.ts';

/** Name of the worker that computes the choices of a page. */
export const CHOICES_WORKER = 'choices';

/** Builds that one link can hold. */
export const MOST_SHARED = 3;

/** What the customer's page says beside the numbers. */
export interface PageText {
  /** The workshop and how to reach it, in the maker's words. */
  readonly from: string;
  /** Whom the page is for. */
  readonly to: string;
  readonly note: string;
  /** Index of the build that the maker advises. */
  readonly advised: number | null;
}

export const EMPTY_PAGE: PageText = { from: '', to: '', note: '', advised: null };

/** What the workshop asks for one choice, and how long it takes, in its own words. */
export interface Offer {
  readonly price: string;
  readonly time: string;
}

export const EMPTY_OFFER: Offer = { price: '', time: '' };
/** Longest price and longest time, in characters. */
export const MOST_OFFER = 60;

/** Longest texts, in characters. */
export const PAGE_LIMITS = { from: 200, to: 100, note: 3000 } as const;

export interface Shared {
  /** 1 to 3 checked builds. */
  readonly builds: readonly Build[];
  readonly page: PageText;
  /** One for each build; left out where nothing is said for any. */
  readonly offers?: readonly Offer[];
}

/** Why a link was not opened. */
export type LinkTrouble =
  /** It is of a release that this program does not know yet. */
  | { readonly code: 'newer'; readonly version: number; readonly newest: number }
  /** Characters are missing, changed or not from a link at all. */
  | { readonly code: 'broken' }
  | { readonly code: 'too-long'; readonly length: number; readonly most: number }
  /** The link is whole, and what it holds is not a build. */
  | { readonly code: 'refused'; readonly problems: readonly Problem[] };

export type ReadLink =
  { readonly ok: true; readonly shared: Shared } | { readonly ok: false; readonly trouble: LinkTrouble };
