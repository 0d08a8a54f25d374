/** What the grip of a build rests on, where it comes from strips or from what was read on the neck; in full. */
import type { GripReference } from '../../neck/bite-reference.ts';
import type { GripStanding } from '../../mechanics/bench-log/standing.ts';
import { GRIP_STANDING_WORDS } from '../en/pages/grip-standing.ts';
import { formatNumber } from '../quantity.ts';

const factorText = (factor: number) => formatNumber(factor, 2);

function gripSummary({ measured, biteFactor, biteLow, biteHigh }: GripReference): string {
  return GRIP_STANDING_WORDS.summary(measured, factorText(biteFactor), factorText(biteLow), factorText(biteHigh));
}

/** In full, where the grip comes from strips or from what was read on the neck. */
export function gripStandingText(standing: GripStanding, reference: GripReference): string | undefined {
  switch (standing.code) {
    case 'other-grip':
      return GRIP_STANDING_WORDS.otherGrip(gripSummary(reference));
    case 'not-accepted':
      return GRIP_STANDING_WORDS.notAccepted(gripSummary(reference));
    case 'not-here':
      return GRIP_STANDING_WORDS.notHere(gripSummary(reference));
    case 'changed':
      return GRIP_STANDING_WORDS.changed(standing.gone, standing.edited);
    case 'in-use':
      return standing.isOther ? GRIP_STANDING_WORDS.otherNeck : undefined;
    case 'reading':
      return undefined;
  }
}
