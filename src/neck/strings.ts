/**
 * Strings as data: gauges, construction, pitch. Sets are known by their gauge numbers only.
 * Gauges in inches are converted exactly (1 in = 25.4 mm). Core diameters of wound strings are common practice, no
 * source: about 0.45 of the outer diameter for steel, more for the floss core of wound nylon.
 */
import { sayText, words } from '../speech/language.ts';

/** Concert pitch, ISO 16. */
export const NOMINAL_A4_HZ = 440;

export const CONSTRUCTIONS = ['steel-plain', 'steel-wound', 'bronze-wound', 'nylon-plain', 'nylon-wound'] as const;
export type StringConstruction = (typeof CONSTRUCTIONS)[number];

export interface StringSpec {
  readonly construction: StringConstruction;
  /** Outer diameter. */
  readonly diameterMm: number;
  /** Core diameter of a wound string; ignored for a plain one. */
  readonly coreMm: number;
  /** Open pitch as a MIDI note number (69 = A4 = 440 Hz, ISO 16). */
  readonly pitch: number;
}

export const CONSTRUCTION_LABELS: Readonly<Record<StringConstruction, string>> = words('CONSTRUCTION_LABELS', {
  'steel-plain': 'plain steel',
  'steel-wound': 'steel, nickel-plated wrap',
  'bronze-wound': 'steel, bronze wrap',
  'nylon-plain': 'plain nylon',
  'nylon-wound': 'nylon floss, copper wrap',
});

export interface StringSet {
  readonly id: string;
  readonly label: string;
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

const SETS: readonly StringSet[] = [
  { id: 'six-9-42', label: 'six, 9–42', strings: [plain(9), plain(11), plain(16), wound(24), wound(32), wound(42)] },
  { id: 'six-10-46', label: 'six, 10–46', strings: [plain(10), plain(13), plain(17), wound(26), wound(36), wound(46)] },
  { id: 'six-11-49', label: 'six, 11–49', strings: [plain(11), plain(14), plain(18), wound(28), wound(38), wound(49)] },
  {
    id: 'six-12-53',
    label: 'six, bronze 12–53',
    strings: [plain(12), plain(16), bronze(24), bronze(32), bronze(42), bronze(53)],
  },
  {
    id: 'seven-10-59',
    label: 'seven, 10–59',
    strings: [plain(10), plain(13), plain(17), wound(26), wound(36), wound(46), wound(59)],
  },
  {
    id: 'nylon-28-43',
    label: 'six nylon, 28–43',
    strings: [
      nylon(0.711),
      nylon(0.818),
      nylon(1.024),
      flossed(0.737, 0.48),
      flossed(0.889, 0.51),
      flossed(1.092, 0.58),
    ],
  },
  { id: 'four-45-105', label: 'four, 45–105', strings: [wound(45), wound(65), wound(85), wound(105)] },
  { id: 'five-45-130', label: 'five, 45–130', strings: [wound(45), wound(65), wound(85), wound(105), wound(130)] },
];

export const STRING_SETS: readonly StringSet[] = SETS.map((set) => ({ ...set, label: sayText(set.label) }));

export interface Tuning {
  readonly id: string;
  readonly label: string;
  /** MIDI note numbers from the highest string to the lowest. */
  readonly pitches: readonly number[];
}

const NAMED_TUNINGS: readonly Tuning[] = [
  { id: 'six-standard', label: 'E A D G B E', pitches: [64, 59, 55, 50, 45, 40] },
  { id: 'six-half-down', label: 'a half step down', pitches: [63, 58, 54, 49, 44, 39] },
  { id: 'six-whole-down', label: 'a whole step down', pitches: [62, 57, 53, 48, 43, 38] },
  { id: 'six-drop-d', label: 'D A D G B E', pitches: [64, 59, 55, 50, 45, 38] },
  { id: 'six-dadgad', label: 'D A D G A D', pitches: [62, 57, 55, 50, 45, 38] },
  { id: 'seven-standard', label: 'B E A D G B E', pitches: [64, 59, 55, 50, 45, 40, 35] },
  { id: 'four-low', label: 'low E A D G', pitches: [43, 38, 33, 28] },
  { id: 'four-low-drop-d', label: 'low D A D G', pitches: [43, 38, 33, 26] },
  { id: 'five-low', label: 'low B E A D G', pitches: [43, 38, 33, 28, 23] },
];

export const TUNINGS: readonly Tuning[] = NAMED_TUNINGS.map((tuning) => ({ ...tuning, label: sayText(tuning.label) }));

/** Strings of a set in a tuning with the same number of strings. @throws {RangeError} on unknown ids or a mismatch. */
export function stringsOf(setId: string, tuningId: string): StringSpec[] {
  const set = STRING_SETS.find((candidate) => candidate.id === setId);
  const tuning = TUNINGS.find((candidate) => candidate.id === tuningId);
  if (!set) throw new RangeError(`string set "${setId}" is not known`);
  if (!tuning) throw new RangeError(`tuning "${tuningId}" is not known`);
  if (set.strings.length !== tuning.pitches.length) {
    throw new RangeError(
      `string set "${set.label}" has ${set.strings.length} strings, tuning "${tuning.label}" ${tuning.pitches.length}`,
    );
  }
  return set.strings.map((string, index) => ({ ...string, pitch: tuning.pitches[index] as number }));
}

/** Note names from C on, as the language has them. */
export const NOTE_NAMES = words('NOTE_NAMES', ['C', 'C♯', 'D', 'E♭', 'E', 'F', 'F♯', 'G', 'A♭', 'A', 'B♭', 'B']);

/** Scientific pitch name of a MIDI note number, e.g. 64 → "E4". */
export function pitchName(pitch: number): string {
  return `${NOTE_NAMES[((pitch % 12) + 12) % 12]}${Math.floor(pitch / 12) - 1}`;
}
