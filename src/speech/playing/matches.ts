/** Why a reading of a neck that just buzzes cannot be, in words. */
import type { MatchRefusal } from '../../playing/own-strength.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { MATCH_WORDS } from '../en/workshop/matches.ts';
import { textOf } from '../quantity-text.ts';

export function matchRefusalText(refusal: MatchRefusal, system: UnitSystem): string {
  switch (refusal.code) {
    case 'not-beyond':
      return MATCH_WORDS.notBeyond;
    case 'too-unsure':
      return MATCH_WORDS.tooUnsure;
    case 'lies-on':
      return MATCH_WORDS.liesOn(textOf('stringRoomMm', -refusal.roomMm, system));
    case 'other-first':
      return MATCH_WORDS.otherFirst(
        refusal.fret,
        textOf('ownForceN', refusal.forceN, system),
        textOf('ownForceN', refusal.wouldTakeN, system),
      );
  }
}
