/** Entries at random, over everything that an entry can say. */
import fc from 'fast-check';
import {
  LOG_NUMBERS,
  MOST_TEXT_CHARACTERS,
  NUT_WAYS,
  ROD_STATES,
  SEATING_ORDERS,
  STRAIGHTEDGE_ON,
  STRINGS_STATES,
  type LogEntry,
} from '../../../src/mechanics/bench-log/entry.ts';
import { contentProblems } from '../../../src/mechanics/bench-log/entry-problems.ts';
import { withContentId } from '../../../src/mechanics/bench-log/identity.ts';

/** What some reading says nothing without: all of it is there, so that readings may come as they will. */
const GOES_WITH_A_READING =
  /^(predicted(Fretted|StrungFrets|Strung|Pull|Rod|Quarter\d)Mm|dialFret|dialErrorMm|rodTurns)$/;

/** Any number of the range, as exact as a double is, or as a gauge is read. */
const range = (min: number, max: number) =>
  fc.oneof(
    fc.double({ min, max, noNaN: true }).map((value) => value + 0),
    fc.double({ min, max, noNaN: true }).map((value) => Math.min(max, Math.max(min, Number(value.toFixed(2)) + 0))),
  );

const NAMES = ["'=a", "''+x", 'a "b", c', '-3\n4', 'a;=1+1', "a; '=1", 'b\t-2', '1,5', '2026-01-02', '№ 7 ½', '"'];
const text = fc
  .oneof(fc.string({ maxLength: 30, unit: 'grapheme' }), fc.constantFrom(...NAMES))
  .filter((name) => name.length <= MOST_TEXT_CHARACTERS);

export const arbitraryEntry: fc.Arbitrary<LogEntry> = fc
  .record({
    date: fc
      .date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10)),
    neck: text.filter((name) => name.trim() !== ''),
    method: fc.constantFrom('press', 'glue', 'both'),
    wire: text,
    blade: text,
    wood: text,
    workshop: text,
    instrument: text,
    rod: fc.constantFrom(...ROD_STATES),
    straightedgeOn: fc.constantFrom(...STRAIGHTEDGE_ON),
    rodWay: fc.constantFrom(...NUT_WAYS),
    rodStrings: fc.constantFrom(...STRINGS_STATES),
    seatingOrder: fc.constantFrom(...SEATING_ORDERS),
    ...Object.fromEntries(
      LOG_NUMBERS.map(({ id, min, max, whenEmpty, isWhole }) => {
        const value = isWhole ? fc.integer({ min, max }) : range(min, max);
        return [id, whenEmpty === null && !GOES_WITH_A_READING.test(id) ? fc.option(value) : value];
      }),
    ),
  })
  .map((value) => value as unknown as Omit<LogEntry, 'id'>)
  .filter((entry) => contentProblems(entry).length === 0)
  .map(withContentId);

/** Lists in which every entry is there once. */
export const arbitraryEntries: fc.Arbitrary<LogEntry[]> = fc.uniqueArray(arbitraryEntry, { selector: ({ id }) => id });
