/** A maker's own strength in words, and why a reading of a neck that just buzzes cannot be. */
import type { MatchRefusal, OwnStrength } from '../../playing/own-strength.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { MATCH_WORDS } from '../en/workshop/matches.ts';
import { textOf } from '../quantity-text.ts';

/** "3 readings together: 1.30 N, 90 % sure: 1.10 to 1.60 N." */
export function ownStrengthText({ matches, forceN, p05N, p95N }: OwnStrength, system: UnitSystem): string {
  const force = (value: number) => textOf('ownForceN', value, system);
  return MATCH_WORDS.joined(matches, force(forceN), force(p05N), force(p95N));
}

export function matchRefusalText(refusal: MatchRefusal, system: UnitSystem): string {
  switch (refusal.code) {
    case 'not-beyond':
      return MATCH_WORDS.notBeyond;
    case 'too-unsure':
      return MATCH_WORDS.tooUnsure;
    case 'lies-on':
      // What rounds to nothing is not too low.
      if (textOf('stringRoomMm', -refusal.roomMm, system) === textOf('stringRoomMm', 0, system))
        return MATCH_WORDS.justLiesOn;
      return MATCH_WORDS.liesOn(textOf('stringRoomMm', -refusal.roomMm, system));
    case 'other-first':
      return MATCH_WORDS.otherFirst(
        refusal.fret,
        textOf('ownForceN', refusal.forceN, system),
        textOf('ownForceN', refusal.wouldTakeN, system),
      );
  }
}
