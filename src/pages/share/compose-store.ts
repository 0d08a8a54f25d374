/** What is about to be shared. It is kept while the page is open, so that a note is not lost with the dialog. */
import { create } from 'zustand';
import type { Method } from '../../mechanics/prediction-types.ts';
import type { Route } from '../../state/share/address.ts';
import { EMPTY_PAGE, type PageText } from '../../state/share/shared.ts';

export type What = 'build' | 'methods' | 'saved';

interface Compose {
  readonly what: What;
  readonly as: Route['kind'];
  readonly methods: readonly Method[];
  /** Ids in the library, at most two. */
  readonly saved: readonly string[];
  readonly page: PageText;
}

const FROM_KEY = 'backbow.workshop';

/** The workshop's own line is remembered on this device: it is the same in every letter. */
function rememberedFrom(): string {
  try {
    return localStorage.getItem(FROM_KEY) ?? '';
  } catch {
    return '';
  }
}

export const useCompose = create<Compose>(() => ({
  what: 'build',
  as: 'neck',
  methods: ['press', 'glue', 'both'],
  saved: [],
  page: { ...EMPTY_PAGE, from: rememberedFrom() },
}));

/** Takes the workshop's line as the device has it now. */
export function composeFromAgain(): void {
  useCompose.setState(({ page }) => ({ page: { ...page, from: rememberedFrom() } }));
}

export function compose(change: Partial<Compose>): void {
  useCompose.setState(change);
}

export function composePage(change: Partial<PageText>): void {
  useCompose.setState(({ page }) => ({ page: { ...page, ...change } }));
  if (change.from === undefined) return;
  try {
    localStorage.setItem(FROM_KEY, change.from);
  } catch {
    // Storage refused or full: it holds until the page is closed.
  }
}
