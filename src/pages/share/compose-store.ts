/** What is about to be shared. It is kept while the page is open, so that a note is not lost with the dialog. */
import { create } from 'zustand';
import type { Build } from '../../neck/build.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import type { Route } from '../../state/share/address.ts';
import { EMPTY_OFFER, EMPTY_PAGE, type Offer, type PageText } from '../../state/share/shared.ts';
import { choiceLabels } from '../customer/labels.ts';

export type What = 'build' | 'methods' | 'saved';

/** What is said of one choice belongs to its neck and way of seating, so that it never comes to stand beside another. */
export interface Letter extends Omit<PageText, 'advised'> {
  /** Key of the choice that is advised. */
  readonly advised: string | null;
  /** By the key of the choice. */
  readonly offers: Readonly<Record<string, Offer>>;
}

interface Compose {
  readonly what: What;
  readonly as: Route['kind'];
  readonly methods: readonly Method[];
  /** Ids in the library, at most two. */
  readonly saved: readonly string[];
  readonly letter: Letter;
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
  letter: { ...EMPTY_PAGE, from: rememberedFrom(), advised: null, offers: {} },
}));

/** Takes the workshop's line as the device has it now. */
export function composeFromAgain(): void {
  useCompose.setState(({ letter }) => ({ letter: { ...letter, from: rememberedFrom() } }));
}

export function compose(change: Partial<Compose>): void {
  useCompose.setState(change);
}

export function composeLetter(change: Partial<Letter>): void {
  useCompose.setState(({ letter }) => ({ letter: { ...letter, ...change } }));
  if (change.from === undefined) return;
  try {
    localStorage.setItem(FROM_KEY, change.from);
  } catch {
    // Storage refused or full: it holds until the page is closed.
  }
}

/** One key for each choice: the neck's name, and what the choice is called beside the others. */
export function choiceKeys(builds: readonly Build[]): string[] {
  const labels = choiceLabels(builds);
  return builds.map(({ name, method }, index) => [name, method, labels[index]].join('\n'));
}

export function composeOffer(key: string, change: Partial<Offer>): void {
  const { offers } = useCompose.getState().letter;
  composeLetter({ offers: { ...offers, [key]: { ...EMPTY_OFFER, ...offers[key], ...change } } });
}
