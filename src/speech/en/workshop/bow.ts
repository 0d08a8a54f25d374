/** How a bow is called: "back-bow" and "relief", never a bare sign. */
import { words } from '../../language.ts';

export type BowKind = 'back-bow' | 'relief' | 'flat';

export const BOW_WORDS: Readonly<Record<BowKind, string>> = words('BOW_WORDS', {
  'back-bow': 'back-bow',
  relief: 'relief',
  flat: 'flat',
});

/** What the word means, for those who do not say it every day. */
export const BOW_MEANING: Readonly<Record<BowKind, string>> = words('BOW_MEANING', {
  'back-bow': 'a hump',
  relief: 'a hollow',
  flat: 'no hump, no hollow',
});

/** A bow that is entered: which way, then how much. */
export const BOW_ENTRY_WORDS = words('BOW_ENTRY_WORDS', {
  hump: 'hump',
  hollow: 'hollow',
  wayOf: (what: string) => `${what}: hump or hollow`,
  whichWay: (size: string) => `${size}: is it a hump or a hollow?`,
  noSign: 'Choose hump or hollow; the size takes no sign.',
});
