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
}

export interface StringSet<Id extends string = string> {
  readonly id: Id;
  /** From the highest string to the lowest. */
  readonly strings: readonly Omit<StringSpec, 'pitch'>[];
}

const thou = (thousandths: number): number => Number(((thousandths * 25.4) / 1000).toFixed(4));
const plain = (t: number) => ({ construction: 'steel-plain' as const, diameterMm: thou(t), coreMm: thou(t) });
const wound = (t: number, construction: StringConstruction = 'steel-wound', share = 0.45) => ({
  construction,
  diameterMm: thou(t),
  coreMm: Number((thou(t) * share).toFixed(4)),
});
const bronze = (t: number) => wound(t, 'bronze-wound');
const nylon = (mm: number) => ({ construction: 'nylon-plain' as const, diameterMm: mm, coreMm: mm });
const flossed = (mm: number, coreMm: number) => ({ construction: 'nylon-wound' as const, diameterMm: mm, coreMm });

const SETS = [
  { id: 'six-9-42', strings: [plain(9), plain(11), plain(16), wound(24), wound(32), wound(42)] },
  { id: 'six-10-46', strings: [plain(10), plain(13), plain(17), wound(26), wound(36), wound(46)] },
  { id: 'six-11-49', strings: [plain(11), plain(14), plain(18), wound(28), wound(38), wound(49)] },
  {
    id: 'six-12-53',

    strings: [plain(12), plain(16), bronze(24), bronze(32), bronze(42), bronze(53)],
  },
  {
    id: 'seven-10-59',

    strings: [plain(10), plain(13), plain(17), wound(26), wound(36), wound(46), wound(59)],
  },
  {
    id: 'nylon-28-43',

    strings: [
      nylon(0.711),
      nylon(0.818),
      nylon(1.024),
      flossed(0.737, 0.48),
      flossed(0.889, 0.51),
      flossed(1.092, 0.58),
    ],
  },
  { id: 'four-45-105', strings: [wound(45), wound(65), wound(85), wound(105)] },
  { id: 'five-45-130', strings: [wound(45), wound(65), wound(85), wound(105), wound(130)] },
] as const satisfies readonly StringSet[];

export type StringSetId = (typeof SETS)[number]['id'];

export const STRING_SETS: readonly StringSet<StringSetId>[] = SETS;

export interface Tuning<Id extends string = string> {
  readonly id: Id;
  /** MIDI note numbers from the highest string to the lowest. */
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
] as const satisfies readonly Tuning[];

export type TuningId = (typeof TUNING_ROWS)[number]['id'];

export const TUNINGS: readonly Tuning<TuningId>[] = TUNING_ROWS;

/** Strings of a set in a tuning with the same number of strings. @throws {RangeError} on unknown ids or a mismatch. */
export function stringsOf(setId: string, tuningId: string): StringSpec[] {
  const set = STRING_SETS.find((candidate) => candidate.id === setId);
  const tuning = TUNINGS.find((candidate) => candidate.id === tuningId);
  if (!set) throw new RangeError(`string set "${setId}" is not known`);
  if (!tuning) throw new RangeError(`tuning "${tuningId}" is not known`);
  if (set.strings.length !== tuning.pitches.length) {
    throw new RangeError(
      `string set "${setId}" has ${set.strings.length} strings, tuning "${tuningId}" ${tuning.pitches.length}`,
    );
  }
  return set.strings.map((string, index) => ({ ...string, pitch: tuning.pitches[index] }));
}
