/** The strength that readings of necks that just buzz leave, and that of this device. */
import type { BuzzMatch } from '../../playing/buzz-match.ts';
import { joinedStrength, matchForce, type OwnStrength } from '../../playing/own-strength.ts';
import { pluckFromSaddleMm } from '../../verdict/string-room.ts';
import { keptMatches, matchRecordOf, standingMatches } from './match-store.ts';

/** What readings leave together; those that cannot be are left out. */
export function strengthOf(matches: readonly BuzzMatch[]): OwnStrength | null {
  return joinedStrength(
    matches.flatMap((match) => {
      const answer = matchForce(match, pluckFromSaddleMm(match.neck));
      return answer.ok ? [answer] : [];
    }),
  );
}

/** Of the accepted readings in the record's text; null where none speaks. */
export function strengthIn(text: string | null): OwnStrength | null {
  const record = matchRecordOf(text);
  return record && strengthOf(standingMatches(record));
}

/** What this device plays with, besides soft, medium and hard. */
export const keptStrength = (): OwnStrength | null => strengthIn(keptMatches());
