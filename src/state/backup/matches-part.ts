/** Necks that just buzzed, in a backup. One that says something else here stays as it is; what is accepted here stays so. */
import { buzzMatchOf, matchHash, type BuzzMatch } from '../../playing/buzz-match.ts';
import { troubleOf } from '../device/trouble.ts';
import type { TextStorage } from '../journal/journal.ts';
import {
  MATCHES_KEY,
  matchRecordOf,
  MOST_MATCHES,
  readableMatches,
  withMatch,
  withoutMatch,
  writeMatches,
  type MatchRecord,
} from '../matches/match-store.ts';
import { checkedList, EMPTY_TALLY, NewerRecord, type Part, type Tally } from './part.ts';

function compared(record: MatchRecord, coming: readonly BuzzMatch[]) {
  const here = new Map(readableMatches(record).map((match) => [match.id, matchHash(match)]));
  const fresh = coming.filter(({ id }) => !here.has(id));
  const stays = coming.filter((match) => here.has(match.id) && here.get(match.id) !== matchHash(match)).length;
  const tally: Tally = { ...EMPTY_TALLY, fresh: fresh.length, stays, known: coming.length - fresh.length - stays };
  return { fresh, tally };
}

export function matchesPart(texts: () => TextStorage): Part {
  function now(): MatchRecord {
    const record = matchRecordOf(texts().getItem(MATCHES_KEY));
    if (!record) throw new NewerRecord();
    return record;
  }

  async function add(coming: readonly BuzzMatch[]) {
    const record = now();
    const { fresh, tally } = compared(record, coming);
    if (fresh.length > 0) writeMatches(texts(), fresh.reduce(withMatch, record));
    const takeBack = async () => {
      const later = now();
      const hashes = new Map(readableMatches(later).map((match) => [match.id, matchHash(match)]));
      const untouched = fresh.filter((match) => hashes.get(match.id) === matchHash(match));
      if (untouched.length > 0)
        writeMatches(
          texts(),
          untouched.reduce((left, { id }) => withoutMatch(left, id), later),
        );
    };
    return { tally, takeBack };
  }

  return {
    id: 'matches',
    places: [MATCHES_KEY],
    save: async () => {
      try {
        const record = now();
        const value = readableMatches(record).toReversed();
        return { value, count: value.length, leftOut: record.matches.length - value.length, trouble: null };
      } catch (error) {
        return { value: [], count: 0, leftOut: 0, trouble: error instanceof NewerRecord ? 'newer' : troubleOf(error) };
      }
    },
    check: (value) =>
      checkedList<BuzzMatch>(value, {
        part: 'matches',
        most: MOST_MATCHES,
        read: buzzMatchOf,
        idOf: ({ id }) => id,
        foresee: async (items) => compared(now(), items).tally,
        add,
      }),
  };
}
