/**
 * Strings as data: gauges, construction, pitch. Sets are known by their gauge numbers only.
 * Gauges in inches are converted exactly (1 in = 25.4 mm). Core diameters of wound strings are common practice, no
 * source: about 0.45 of the outer diameter for steel, more for the floss core of wound nylon.
 */
import type { NickelOf } from './metals.ts';
import { sourced, type Sourced } from './sources.ts';

/** Concert pitch, ISO 16. */
export const NOMINAL_A4_HZ = 440;

export interface Construction<Id extends string = string> {
  readonly id: Id;
  /** Of what the finger touches: the wrap of a wound string and its plating, the wire of a plain one. */
  readonly nickel: Sourced<NickelOf>;
}

/** Plain steel is bare or tinned; bronze is copper with tin or zinc; the wrap on nylon is silvered copper. */
const CONSTRUCTION_ROWS = [
  { id: 'steel-plain', nickel: sourced('none', 'string-sweat') },
  { id: 'steel-wound', nickel: sourced('released', 'string-sweat') },
  { id: 'bronze-wound', nickel: sourced('none', 'alloy-standard') },
  { id: 'nylon-plain', nickel: sourced('none', 'practice') },
  { id: 'nylon-wound', nickel: sourced('none', 'practice') },
] as const satisfies readonly Construction[];

export type StringConstruction = (typeof CONSTRUCTION_ROWS)[number]['id'];

export const CONSTRUCTIONS: readonly Construction<StringConstruction>[] = CONSTRUCTION_ROWS;
export const CONSTRUCTION_IDS: readonly StringConstruction[] = CONSTRUCTION_ROWS.map(({ id }) => id);

/** Constructions of these strings that give nickel off to the finger, each once. */
export function nickelConstructions(strings: readonly Pick<StringSpec, 'construction'>[]): StringConstruction[] {
  const strung = new Set(strings.map(({ construction }) => construction));
  return CONSTRUCTIONS.filter(({ id, nickel }) => nickel.is !== 'none' && strung.has(id)).map(({ id }) => id);
}

export interface StringSpec {
  readonly construction: StringConstruction;
  /** Outer diameter. */
  readonly diameterMm: number;
  /** Core diameter of a wound string; ignored for a plain one. */
  readonly coreMm: number;
  /** Open pitch as a MIDI note number (69 = A4 = 440 Hz, ISO 16). */
  readonly pitch: number;
  /** From its middle to the middle of the string before it, where both are one course; absent where it is none with it. */
  readonly besidePreviousMm?: number;
}

/** Do any of them share a course? */
export const areInCourses = (strings: readonly Pick<StringSpec, 'besidePreviousMm'>[]): boolean =>
  strings.some(({ besidePreviousMm }) => besidePreviousMm !== undefined);

/** Strings by their courses, from the treble side on; a string that stands by itself is a course of one. */
export function coursesOf(strings: readonly StringSpec[]): (readonly [StringSpec, ...StringSpec[]])[] {
  const courses: [StringSpec, ...StringSpec[]][] = [];
  for (const string of strings) {
    if (string.besidePreviousMm === undefined || courses.length === 0) courses.push([string]);
    else courses[courses.length - 1].push(string);
  }
  return courses;
}

export interface StringSet<Id extends string = string> {
  readonly id: Id;
  /** What it is made for. */
  readonly tuning: TuningId;
  /** From the treble side to the bass side. */
  readonly strings: readonly Omit<StringSpec, 'pitch'>[];
}

const thou = (thousandths: number): number => Number(((thousandths * 25.4) / 1000).toFixed(4));
const plain = (t: number) => ({ construction: 'steel-plain' as const, diameterMm: thou(t), coreMm: thou(t) });
const wound = (t: number, construction: StringConstruction = 'steel-wound', share = 0.45) => ({
  construction,
  diameterMm: thou(t),
  coreMm: Number((thou(t) * share).toFixed(4)),
});
const bronze = (t: number, share?: number) => wound(t, 'bronze-wound', share);
const nylon = (mm: number) => ({ construction: 'nylon-plain' as const, diameterMm: mm, coreMm: mm });
const flossed = (mm: number, coreMm: number) => ({ construction: 'nylon-wound' as const, diameterMm: mm, coreMm });

/** Middle to middle of the two strings of a course (common practice, no source). */
export const PAIR_MM = 2.3;
/** Each second string in one course with the one before it. */
function paired<const S extends StringSet['strings'][number]>(strings: readonly S[]) {
  return strings.map((string, index) => (index % 2 === 0 ? string : { ...string, besidePreviousMm: PAIR_MM }));
}

const SIX_NYLON = [
  nylon(0.711),
  nylon(0.818),
  nylon(1.024),
  flossed(0.737, 0.48),
  flossed(0.889, 0.51),
  flossed(1.092, 0.58),
] as const;

/** Gauges are common practice, no source; a test holds the pull of each to what such strings are made for. */
const SETS = [
  {
    id: 'six-9-42',
    tuning: 'six-standard',
    strings: [plain(9), plain(11), plain(16), wound(24), wound(32), wound(42)],
  },
  {
    id: 'six-10-46',
    tuning: 'six-standard',
    strings: [plain(10), plain(13), plain(17), wound(26), wound(36), wound(46)],
  },
  {
    id: 'six-11-49',
    tuning: 'six-standard',
    strings: [plain(11), plain(14), plain(18), wound(28), wound(38), wound(49)],
  },
  {
    id: 'six-12-53',
    tuning: 'six-standard',
    strings: [plain(12), plain(16), bronze(24), bronze(32), bronze(42), bronze(53)],
  },
  {
    id: 'six-14-68',
    tuning: 'six-baritone',
    strings: [plain(14), plain(18), wound(26), wound(38), wound(50), wound(68)],
  },
  {
    id: 'seven-10-59',
    tuning: 'seven-standard',
    strings: [plain(10), plain(13), plain(17), wound(26), wound(36), wound(46), wound(59)],
  },
  {
    id: 'eight-10-74',
    tuning: 'eight-standard',
    strings: [plain(10), plain(13), plain(17), wound(26), wound(36), wound(46), wound(59), wound(74)],
  },
  {
    id: 'nine-9-90',
    tuning: 'nine-standard',
    strings: [plain(9), plain(11), plain(16), wound(24), wound(32), wound(42), wound(54), wound(70), wound(90)],
  },
  {
    id: 'twelve-10-47',
    tuning: 'twelve-standard',
    strings: paired([
      plain(10),
      plain(10),
      plain(14),
      plain(14),
      plain(9),
      bronze(23, 0.55),
      plain(12),
      bronze(30),
      plain(18),
      bronze(39),
      bronze(27),
      bronze(47),
    ]),
  },
  { id: 'nylon-28-43', tuning: 'six-standard', strings: SIX_NYLON },
  {
    id: 'ten-nylon',
    tuning: 'ten-bourdons',
    strings: [...SIX_NYLON, flossed(1.14, 0.6), flossed(1.19, 0.61), flossed(1.24, 0.62), flossed(1.35, 0.65)],
  },
  {
    id: 'eleven-nylon',
    tuning: 'eleven-bourdons',
    strings: [
      ...SIX_NYLON,
      flossed(1.14, 0.6),
      flossed(1.19, 0.61),
      flossed(1.24, 0.62),
      flossed(1.35, 0.65),
      flossed(1.45, 0.68),
    ],
  },
  { id: 'four-nylon-22-35', tuning: 'four-small', strings: [nylon(0.559), nylon(0.711), nylon(0.889), nylon(0.61)] },
  {
    id: 'eight-10-38',
    tuning: 'eight-fifths',
    strings: paired([plain(10), plain(10), plain(14), plain(14), bronze(24), bronze(24), bronze(38), bronze(38)]),
  },
  { id: 'four-45-105', tuning: 'four-low', strings: [wound(45), wound(65), wound(85), wound(105)] },
  { id: 'five-45-130', tuning: 'five-low', strings: [wound(45), wound(65), wound(85), wound(105), wound(130)] },
  {
    id: 'six-32-130',
    tuning: 'six-low',
    strings: [wound(32), wound(45), wound(65), wound(85), wound(105), wound(130)],
  },
] as const satisfies readonly StringSet[];

export type StringSetId = (typeof SETS)[number]['id'];

export const STRING_SETS: readonly StringSet<StringSetId>[] = SETS;

export interface Tuning<Id extends string = string> {
  readonly id: Id;
  /** MIDI note numbers from the treble side to the bass side. */
  readonly pitches: readonly number[];
}

const TUNING_ROWS = [
  { id: 'six-standard', pitches: [64, 59, 55, 50, 45, 40] },
  { id: 'six-half-down', pitches: [63, 58, 54, 49, 44, 39] },
  { id: 'six-whole-down', pitches: [62, 57, 53, 48, 43, 38] },
  { id: 'six-drop-d', pitches: [64, 59, 55, 50, 45, 38] },
  { id: 'six-dadgad', pitches: [62, 57, 55, 50, 45, 38] },
  { id: 'seven-standard', pitches: [64, 59, 55, 50, 45, 40, 35] },
  { id: 'four-low', pitches: [43, 38, 33, 28] },
  { id: 'four-low-drop-d', pitches: [43, 38, 33, 26] },
  { id: 'five-low', pitches: [43, 38, 33, 28, 23] },
  { id: 'six-baritone', pitches: [59, 54, 50, 45, 40, 35] },
  { id: 'six-low', pitches: [48, 43, 38, 33, 28, 23] },
  { id: 'eight-standard', pitches: [64, 59, 55, 50, 45, 40, 35, 30] },
  { id: 'nine-standard', pitches: [64, 59, 55, 50, 45, 40, 35, 30, 25] },
  { id: 'twelve-standard', pitches: [64, 64, 59, 59, 67, 55, 62, 50, 57, 45, 52, 40] },
  { id: 'ten-bourdons', pitches: [64, 59, 55, 50, 45, 40, 38, 36, 35, 33] },
  { id: 'eleven-bourdons', pitches: [64, 59, 55, 50, 45, 40, 38, 36, 35, 33, 31] },
  { id: 'four-small', pitches: [69, 64, 60, 67] },
  { id: 'eight-fifths', pitches: [76, 76, 69, 69, 62, 62, 55, 55] },
] as const satisfies readonly Tuning[];

export type TuningId = (typeof TUNING_ROWS)[number]['id'];

export const TUNINGS: readonly Tuning<TuningId>[] = TUNING_ROWS;

/** @throws {RangeError} when no tuning has that id. */
function tuningOf(id: string): Tuning {
  const tuning = TUNINGS.find((candidate) => candidate.id === id);
  if (!tuning) throw new RangeError(`tuning "${id}" is not known`);
  return tuning;
}

/** A string of a set at a pitch; its keys stand as the schema has them. */
export function tuned({ besidePreviousMm, ...string }: StringSet['strings'][number], pitch: number): StringSpec {
  return { ...string, pitch, ...(besidePreviousMm === undefined ? {} : { besidePreviousMm }) };
}

/** Strings of a set in a tuning with the same number of strings. @throws {RangeError} on unknown ids or a mismatch. */
export function stringsOf(setId: string, tuningId: string): StringSpec[] {
  const set = STRING_SETS.find((candidate) => candidate.id === setId);
  if (!set) throw new RangeError(`string set "${setId}" is not known`);
  const tuning = tuningOf(tuningId);
  if (set.strings.length !== tuning.pitches.length) {
    throw new RangeError(
      `string set "${setId}" has ${set.strings.length} strings, tuning "${tuningId}" ${tuning.pitches.length}`,
    );
  }
  return set.strings.map((string, index) => tuned(string, tuning.pitches[index]));
}

/** How far a note may lie from the one that a string is made for, half steps: dropped and slackened tunings do. */
const OTHER_TUNING = 3;

/** Can strings tuned so be changed for those of a set? As many, in the same courses, each made for about its note. */
export function suits(set: StringSet, strings: readonly StringSpec[]): boolean {
  const { pitches } = tuningOf(set.tuning);
  return (
    set.strings.length === strings.length &&
    strings.every(
      ({ pitch, besidePreviousMm }, index) =>
        Math.abs(pitch - pitches[index]) <= OTHER_TUNING &&
        (besidePreviousMm === undefined) === (set.strings[index].besidePreviousMm === undefined),
    )
  );
}
