/** What of a goal is said in words, here and in the refret helper. */
import type { UnitSystem } from '../../../neck/units.ts';
import { THINNEST_FEELER_MM } from '../../../fretwork/checks/limits.ts';
import type { Band } from '../../../mechanics/uncertainty/band.ts';
import { BOW_WORDS } from '../../../speech/en/workshop/bow.ts';
import { bowBandText, bowKind, bowSize } from '../../../speech/bow.ts';
import { WANTED_WORDS } from '../../../speech/en/pages/answers.ts';

/** "as wanted", "0.09 mm too much", "0.09 mm too little". @param missMm reached less wanted */
export function missText(missMm: number, system: UnitSystem): string {
  const kind = bowKind(missMm, system);
  if (kind === 'flat') return WANTED_WORDS.exact;
  const size = bowSize(missMm, system);
  return kind === 'relief' ? WANTED_WORDS.tooMuch(size) : WANTED_WORDS.tooLittle(size);
}

/**
 * How an answer reads whose line is humped as much as it is hollow before it comes to the relief wanted. That line is also
 * the flattest of them all, so one who wanted it flat, or nearly, has all there is to be had.
 */
export type Between = 'as-wanted' | 'flattest' | 'between';

export function betweenOf(goalMm: number, missMm: number, system: UnitSystem): Between {
  if (bowKind(missMm, system) === 'flat') return 'as-wanted';
  return Math.abs(goalMm) < THINNEST_FEELER_MM ? 'flattest' : 'between';
}

/** "0.03 mm back-bow to 0.31 mm relief", "0.03 to 0.31 mm relief". */
export function bandText({ p05, p95 }: Pick<Band, 'p05' | 'p95'>, system: UnitSystem): string {
  const kinds = [bowKind(p05, system), bowKind(p95, system)].filter((kind) => kind !== 'flat');
  const text = bowBandText(p05, p95, system);
  if (kinds.length === 0 || kinds.length !== kinds.filter((kind) => kind === kinds[0]).length) return text;
  return `${text} ${BOW_WORDS[kinds[0]]}`;
}
