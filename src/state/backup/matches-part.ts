/** Necks that just buzzed, in a backup. One that says something else here stays as it is; what is accepted here stays so. */
import { buzzMatchOf, matchHash } from '../../playing/buzz-match.ts';
import type { TextStorage } from '../journal/journal.ts';
import { changedMatches, MATCHES_FORM, MATCHES_KEY, MOST_MATCHES, textOfMatches } from '../matches/match-store.ts';
import type { Part } from './part.ts';
import { textPart } from './text-part.ts';

export const matchesPart = (texts: () => TextStorage): Part =>
  textPart(
    {
      id: 'matches',
      most: MOST_MATCHES,
      form: MATCHES_FORM,
      read: buzzMatchOf,
      idOf: ({ id }) => id,
      hash: matchHash,
      changed: changedMatches,
    },
    { texts, key: MATCHES_KEY, textOf: textOfMatches },
  );
