/** Necks that just buzzed, as a device keeps them: what speaks for the strength, what comes back from a backup. */
import { describe, expect, test } from 'vitest';
import type { BuzzMatch } from '../../../src/playing/buzz-match.ts';
import {
  acceptedAs,
  MATCHES_KEY,
  matchRecordOf,
  readableMatches,
  standingMatches,
  withMatch,
  withoutMatch,
  textOfMatches,
} from '../../../src/state/matches/match-store.ts';
import { matchesPart } from '../../../src/state/backup/matches-part.ts';
import { matchOf } from '../../playing/matches.ts';
import { textStorage } from '../library/memory.ts';

const match = (id: string, change: Partial<BuzzMatch> = {}) => matchOf({ id, ...change });
const EMPTY = matchRecordOf(null)!;
const TWO = withMatch(withMatch(EMPTY, match('one')), match('two'));

describe('the record', () => {
  test('is written and read back, the newest first', () => {
    const texts = textStorage();
    texts.setItem(MATCHES_KEY, textOfMatches(TWO));
    const read = matchRecordOf(texts.getItem(MATCHES_KEY))!;
    expect(readableMatches(read)).toEqual([match('two'), match('one')]);
  });

  test('of a newer release, or of something else, is not taken for one', () => {
    expect(matchRecordOf('{"version":2,"matches":[],"accepted":[]}')).toBeNull();
    expect(matchRecordOf('no JSON')).toBeNull();
    expect(matchRecordOf('{"version":1}')).toBeNull();
  });

  test('keeps what it cannot read', () => {
    const record = { ...TWO, matches: [...TWO.matches, { id: 'later', unheard: true }] };
    expect(readableMatches(record)).toHaveLength(2);
    expect(withoutMatch(record, 'one').matches).toEqual([match('two'), { id: 'later', unheard: true }]);
  });
});

describe('what speaks for the strength', () => {
  test('is nothing until it is accepted, and nothing again when that is taken back', () => {
    expect(standingMatches(TWO)).toEqual([]);
    const accepted = acceptedAs(TWO, true);
    expect(standingMatches(accepted).map(({ id }) => id)).toEqual(['two', 'one']);
    expect(standingMatches(acceptedAs(accepted, false))).toEqual([]);
  });

  test('is not a reading that came in since, nor one that says something else now', () => {
    const accepted = acceptedAs(TWO, true);
    expect(standingMatches(withMatch(accepted, match('three')))).toHaveLength(2);
    const other = { ...accepted, matches: [match('one', { reliefMm: 0.3 }), match('two')] };
    expect(standingMatches(other).map(({ id }) => id)).toEqual(['two']);
    expect(standingMatches(withoutMatch(accepted, 'two')).map(({ id }) => id)).toEqual(['one']);
  });
});

describe('in a backup', () => {
  test('they come to another device, are not accepted there, and can be taken back', async () => {
    const [from, to] = [textStorage(), textStorage()];
    from.setItem(MATCHES_KEY, textOfMatches(acceptedAs(TWO, true)));
    to.setItem(MATCHES_KEY, textOfMatches(withMatch(EMPTY, match('one', { reliefMm: 0.1 }))));
    const saved = await matchesPart(() => from).save();
    expect(saved).toMatchObject({ count: 2, leftOut: 0, trouble: null });
    const checked = matchesPart(() => to).check(JSON.parse(JSON.stringify(saved.value)));
    if (!checked.ok) throw new Error(checked.fault.code);
    expect(await checked.foresee()).toMatchObject({ fresh: 1, stays: 1, known: 0 });
    const { takeBack } = await checked.add();
    const record = () => matchRecordOf(to.getItem(MATCHES_KEY))!;
    expect(readableMatches(record()).map(({ id, reliefMm }) => [id, reliefMm])).toEqual([
      ['two', 0.2],
      ['one', 0.1],
    ]);
    expect(standingMatches(record())).toEqual([]);
    await takeBack();
    expect(readableMatches(record()).map(({ id }) => id)).toEqual(['one']);
  });

  test('of a newer release they stay where they are', async () => {
    const texts = textStorage();
    texts.setItem(MATCHES_KEY, '{"version":9}');
    expect(await matchesPart(() => texts).save()).toMatchObject({ count: 0, trouble: 'newer' });
    expect(matchesPart(() => texts).check([{ id: 'x' }])).toMatchObject({ ok: false, fault: { code: 'wrong-kind' } });
  });
});
