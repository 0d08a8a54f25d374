/** One choice beside another, in words: how far they differ, and how often one ends nearer the relief wanted. */
import type { Paired } from '../../mechanics/uncertainty/paired.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { PAIRED_WORDS } from '../en/pages/answers.ts';
import { formatNumber } from '../quantity.ts';
import { movesBandText } from './moves.ts';

const count = (share: number): string => formatNumber(100 * share, 0);

/** "in 83 of 100". */
export const nearerText = ({ nearer }: Paired): string => PAIRED_WORDS.inOfHundred(count(nearer));

/** "It ends nearer the relief wanted than the neck as it is in 83 of 100 such necks." */
export const nearerSentence = ({ nearer }: Paired): string => PAIRED_WORDS.nearerThanNow(count(nearer));

/** "beside the first −0.08 mm to −0.02 mm; nearer the relief wanted in 83 of 100". */
export const besideText = ({ bandMm, nearer }: Paired, system: UnitSystem): string =>
  PAIRED_WORDS.beside(movesBandText(bandMm, system), count(nearer));
