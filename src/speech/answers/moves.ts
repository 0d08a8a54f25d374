/** What can be done otherwise with a neck, and how far it moves the bow, in words. */
import type { Band } from '../../mechanics/uncertainty/band.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { Lever } from '../../verdict/what-moves.ts';
import { changeText } from '../bow.ts';
import { STRING_SET_WORDS } from '../en/neck/necks.ts';
import { MOVES_WORDS, WANTED_WORDS } from '../en/pages/answers.ts';
import { METHOD_WORDS } from '../en/workshop/workshop.ts';
import { parameterName } from '../names.ts';
import { formatRange } from '../quantity.ts';
import { numberOf, textOf } from '../quantity-text.ts';
import { turnsText } from '../rod.ts';

/** "Kerf 0.56 mm, not 0.58", "Neck 1 mm thicker", "Seating: press and glue". */
export function leverText(lever: Lever, system: UnitSystem): string {
  switch (lever.kind) {
    case 'value': {
      const { parameter, from, to } = lever;
      return MOVES_WORDS.instead(
        parameterName(parameter),
        textOf(parameter, to, system),
        numberOf(parameter, from, system),
      );
    }
    case 'method':
      return WANTED_WORDS.stepMethod(METHOD_WORDS[lever.method].label);
    case 'thickness': {
      const size = textOf('thicknessFret1Mm', Math.abs(lever.byMm), system);
      return lever.byMm > 0 ? MOVES_WORDS.thicker(size) : MOVES_WORDS.thinner(size);
    }
    case 'strings':
      return MOVES_WORDS.strings(STRING_SET_WORDS[lever.set]);
    case 'nut':
      return (lever.tighten ? MOVES_WORDS.rodBack : MOVES_WORDS.rodForward)(turnsText(lever.turns));
  }
}

/** "+0.02 mm" is hollower. */
export const moveText = (mm: number, system: UnitSystem): string => changeText(mm, system) || MOVES_WORDS.nothing;

/** "−0.04 mm to −0.01 mm". */
export const movesBandText = ({ p05, p95 }: Band, system: UnitSystem): string =>
  formatRange(moveText(p05, system), moveText(p95, system), '');
