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
