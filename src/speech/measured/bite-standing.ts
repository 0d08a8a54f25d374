/** What the bite of a build rests on, in words; nothing where that goes without saying. */
import type { BiteReference } from '../../neck/bite-reference.ts';
import { BITE_STANDING_WORDS } from '../en/pages/bite-standing.ts';
import { formatNumber } from '../quantity.ts';
import type { BiteStanding } from '../../mechanics/bench-log/standing.ts';

/** Standard deviations from the middle to the 5th and the 95th percentile. */
const TO_P95 = 1.6449;

const factorText = (factor: number) => formatNumber(factor, 2);

function summary({ necks, factor, logSpread }: BiteReference): string {
  const [low, high] = [-1, 1].map((side) => factorText(factor * Math.exp(side * TO_P95 * logSpread))) as [
    string,
    string,
  ];
  return BITE_STANDING_WORDS.summary(necks, factorText(factor), low, high);
}

/** In full, with what can be done. @param biteFactor of the build */
export function standingText(standing: BiteStanding, biteFactor: number): string | undefined {
  switch (standing.code) {
    case 'earlier':
      return BITE_STANDING_WORDS.earlier(factorText(biteFactor));
    case 'other-factor':
      return BITE_STANDING_WORDS.otherFactor(factorText(biteFactor), factorText(standing.reference.factor));
    case 'not-accepted':
      return BITE_STANDING_WORDS.notAccepted(summary(standing.reference));
    case 'not-here':
      return BITE_STANDING_WORDS.notHere(summary(standing.reference));
    case 'changed':
      return standing.deleted > 0 ? BITE_STANDING_WORDS.deleted(standing.deleted) : BITE_STANDING_WORDS.edited;
    default:
      return undefined;
  }
}
