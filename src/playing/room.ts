/**
 * The room that a swinging string has over the frets beyond the fretted one.
 *
 *   clearance at fret i, fretted at n       c = t_n + (y_L − t_n)·u − t_i − a·d(u, p)        u = (x_i − x_n)/(L − x_n), p = q/(L − x_n)
 *
 * t the tops under the string, y_L its height at the saddle (set-up.ts), a the height of the pluck and d the depth of the
 * swing (swing.ts); n = 0 is the open string, which starts at the nut. Less than nothing = it buzzes. The hand stays where
 * it is: q is the same for every note, but never beyond the middle of what speaks.
 */
import type { SetUp, StringScale } from './set-up.ts';
import { boundDepth, idealDepth, pluckHeightMm, type PluckDirection } from './swing.ts';

/** How a player plucks. */
export interface Playing {
  /** Force that the string is let go with, N. */
  readonly forceN: number;
  /** Distance of the pluck from the saddle, mm. */
  readonly pluckMm: number;
  readonly direction: PluckDirection;
}

/** Soft, medium and hard playing, N: a start, common practice, no source; a maker sets their own by necks that just buzz. */
export const STRENGTHS_N = { soft: 0.5, medium: 1, hard: 2 } as const;

/** The room of one note. */
export interface NoteRoom {
  /** Least clearance over the frets beyond, and the fret that has it, with the ideal string. */
  readonly leastMm: number;
  readonly atFret: number;
  /** The same within the bound of the partials: stiffness can take it no further. */
  readonly boundMm: number;
  /** Force at which the ideal string just touches; Infinity where no pluck makes it touch. */
  readonly buzzForceN: number;
}

/** Room of every string (from the treble side to the bass side) and note (0 = open … the last but one fret). */
export type RoomChart = readonly (readonly NoteRoom[])[];

/** Where the note is plucked: the hand stays, but not beyond the middle of a short string. */
export function pluckOfNoteMm(pluckMm: number, lengthMm: number): number {
  return Math.min(pluckMm, lengthMm / 2);
}

/** What strings of one scale have in common: for a note, the places of the frets beyond and the depth of the swing there. */
interface NoteShape {
  readonly lengthMm: number;
  readonly pluckMm: number;
  readonly share: Float64Array;
  readonly ideal: Float64Array;
  readonly bound: Float64Array;
}

function shapeOf(scale: StringScale, note: number, playing: Playing): NoteShape {
  const { fretXMm } = scale;
  const from = note === 0 ? 0 : (fretXMm[note - 1] ?? Number.NaN);
  const lengthMm = scale.lengthMm - from;
  const pluckMm = pluckOfNoteMm(playing.pluckMm, lengthMm);
  const p = pluckMm / lengthMm;
  const share = Float64Array.from(fretXMm.slice(note), (x) => (x - from) / lengthMm);
  return {
    lengthMm,
    pluckMm,
    share,
    ideal: share.map((u) => idealDepth(u, p, playing.direction)),
    bound: share.map((u) => boundDepth(u, p, playing.direction)),
  };
}

/** Notes that have a fret beyond them, from the open string on. */
function notesOf({ fretXMm }: StringScale): number[] {
  return fretXMm.map((_, index) => index);
}

/** One place where a note may touch a fret beyond the fretted one. */
export interface Place {
  /** 0 = the highest string. */
  readonly string: number;
  /** 0 = open. */
  readonly note: number;
  readonly fret: number;
  /** Share of the speaking length from the fretted fret to this one. */
  readonly share: number;
  /** Room under the string at rest, mm. */
  readonly gapMm: number;
  /** Depth that the ideal string, and one within the bound of its partials, swings here for each newton, mm. */
  readonly idealMmN: number;
  readonly boundMmN: number;
}

/** Tells of every string, note and fret beyond it. The place that is handed over is used again for the next. */
export function eachPlace(setUp: SetUp, playing: Playing, visit: (place: Place) => void): void {
  let scale: StringScale | undefined;
  let shapes: readonly NoteShape[] = [];
  const place = { string: 0, note: 0, fret: 0, share: 0, gapMm: 0, idealMmN: 0, boundMmN: 0 };
  setUp.strings.forEach((string, index) => {
    place.string = index;
    if (string.scale !== scale) {
      scale = string.scale;
      shapes = notesOf(scale).map((note) => shapeOf(string.scale, note, playing));
    }
    shapes.forEach((shape, note) => {
      place.note = note;
      const start = note === 0 ? string.atNutMm : (string.topMm[note - 1] ?? Number.NaN);
      const unit = pluckHeightMm(1, shape.pluckMm, shape.lengthMm, string.tensionN);
      for (let i = 0; i < shape.share.length; i += 1) {
        const u = shape.share[i] ?? 0;
        place.fret = note + i + 1;
        place.share = u;
        place.gapMm = start + (string.atSaddleMm - start) * u - (string.topMm[note + i] ?? 0);
        place.idealMmN = unit * (shape.ideal[i] ?? 0);
        place.boundMmN = unit * (shape.bound[i] ?? 0);
        visit(place);
      }
    });
  });
}

/** The room of every string and note of a set-up. */
export function roomChart(setUp: SetUp, playing: Playing): RoomChart {
  const chart = setUp.strings.map(({ scale }) =>
    notesOf(scale).map((note) => ({ leastMm: Infinity, atFret: note + 1, boundMm: Infinity, buzzForceN: Infinity })),
  );
  eachPlace(setUp, playing, ({ string, note, fret, gapMm, idealMmN, boundMmN }) => {
    const room = chart[string]?.[note];
    if (room === undefined) return;
    const clearance = gapMm - playing.forceN * idealMmN;
    if (clearance < room.leastMm) [room.leastMm, room.atFret] = [clearance, fret];
    room.boundMm = Math.min(room.boundMm, gapMm - playing.forceN * boundMmN);
    if (idealMmN > 0) room.buzzForceN = Math.min(room.buzzForceN, Math.max(0, gapMm) / idealMmN);
  });
  return chart;
}

/** Where a string buzzes first: the least room of all notes. */
export interface LeastRoom extends NoteRoom {
  /** 0 = the highest string. */
  readonly string: number;
  /** 0 = open. */
  readonly note: number;
}

/** @throws {RangeError} on a chart without strings or frets. */
export function leastRoom(chart: RoomChart): LeastRoom {
  const all = chart.flatMap((notes, string) => notes.map((room, note): LeastRoom => ({ ...room, string, note })));
  const first = all[0];
  if (first === undefined) throw new RangeError('no strings or no frets; there must be at least one of each');
  return all.reduce((least, room) => (room.leastMm < least.leastMm ? room : least), first);
}
