/** Which known set and tuning a list of strings is, and what choosing another one makes of it. */
import { LIST_NUMBERS } from '../../../neck/schema.ts';
import {
  PAIR_MM,
  STRING_SETS,
  stringsOf,
  suits,
  tuned,
  TUNINGS,
  type StringSet,
  type StringSetId,
  type StringSpec,
  type Tuning,
} from '../../../neck/strings.ts';

export function setOf(strings: readonly StringSpec[]): StringSet<StringSetId> | undefined {
  return STRING_SETS.find(
    (set) =>
      set.strings.length === strings.length &&
      set.strings.every((known, index) => {
        const string = strings[index];
        return (
          known.construction === string.construction &&
          known.diameterMm === string.diameterMm &&
          known.coreMm === string.coreMm &&
          (known.besidePreviousMm === undefined) === (string.besidePreviousMm === undefined)
        );
      }),
  );
}

export function tuningOf(strings: readonly StringSpec[]): Tuning | undefined {
  return TUNINGS.find(
    (tuning) =>
      tuning.pitches.length === strings.length &&
      tuning.pitches.every((pitch, index) => pitch === strings[index].pitch),
  );
}

/**
 * The strings of a set. The tuning stays where the set suits it; otherwise they get the one that the set is made for.
 * @throws {RangeError} on an unknown set
 */
export function withSet(strings: readonly StringSpec[], setId: string): StringSpec[] {
  const set = STRING_SETS.find((known) => known.id === setId);
  if (!set) throw new RangeError(`string set "${setId}" is not known`);
  if (!suits(set, strings)) return stringsOf(set.id, set.tuning);
  return set.strings.map((string, index) => tuned(string, strings[index].pitch));
}

/** Least air between them, mm. */
const LEAST_AIR_MM = 0.3;

/** The same strings in courses of two, or each by itself. */
export function withPairs(strings: readonly StringSpec[], paired: boolean): StringSpec[] {
  return strings.map(({ besidePreviousMm: _beside, ...string }, index) => {
    if (!paired || index % 2 === 0) return string;
    const touch = (strings[index - 1].diameterMm + string.diameterMm) / 2;
    return { ...string, besidePreviousMm: Math.max(PAIR_MM, Number((touch + LEAST_AIR_MM).toFixed(2))) };
  });
}

/** The same strings in another tuning. @throws {RangeError} when it is unknown or of another number of strings */
export function withTuning(strings: readonly StringSpec[], tuningId: string): StringSpec[] {
  const tuning = TUNINGS.find((known) => known.id === tuningId);
  if (!tuning || tuning.pitches.length !== strings.length) {
    throw new RangeError(`tuning "${tuningId}" is not one of ${strings.length} strings`);
  }
  return strings.map((string, index) => ({ ...string, pitch: tuning.pitches[index] }));
}

const FOURTH = 5;

/** A string a fourth below the lowest one, a third thicker for a like pull, inside the allowed range. */
export function lowerString(strings: readonly StringSpec[]): StringSpec {
  const { besidePreviousMm: _beside, ...lowest } = strings.at(-1)!;
  const grown = (mm: number, most: number) => Math.min(most, Number((mm * 2 ** (FOURTH / 12)).toFixed(3)));
  return {
    ...lowest,
    diameterMm: grown(lowest.diameterMm, LIST_NUMBERS.diameterMm.max),
    coreMm: grown(lowest.coreMm, LIST_NUMBERS.coreMm.max - 0.1),
    pitch: Math.max(LIST_NUMBERS.pitch.min, lowest.pitch - FOURTH),
  };
}
