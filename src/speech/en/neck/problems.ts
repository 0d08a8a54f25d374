/** Why a neck or a file is refused. */
import type { ImpossibleReason, ValueKind } from '../../../neck/problems.ts';
import type { ListId, ListNumber } from '../../../neck/schema.ts';
import { words } from '../../language.ts';

/** What is typed or listed besides parameters. */
type OtherPlace =
  ListId | 'biteReference' | 'gripReference' | 'name' | 'notes' | 'build' | 'file' | 'format' | 'version';
type EntryPlace = ListNumber | 'wood' | 'like' | 'colour' | 'construction';

export const PLACE_WORDS = words('PLACE_WORDS', {
  name: 'Name of the build',
  notes: 'Notes',
  laminates: 'Neck laminates',
  ownWoods: 'Woods of my own',
  binding: 'Binding lines',
  strings: 'Strings',
  regions: 'Regions of frets',
  startingReliefMm: 'Measured relief per fret',
  biteReference: 'Measurements behind the bite',
  gripReference: 'Measurements behind the grip',
  build: 'Build',
  file: 'Project file',
  format: 'Project file',
  version: 'Project file',
} satisfies Record<OtherPlace, string>);

/** Values in an entry of a list. */
export const ENTRY_WORDS = words('ENTRY_WORDS', {
  diameterMm: 'string diameter',
  coreMm: 'string core diameter',
  pitch: 'pitch as a MIDI note number',
  besidePreviousMm: 'distance from the one before it in its course',
  thicknessMm: 'binding line thickness',
  share: 'share of the width',
  daysIn: 'days that a fret had been in',
  widthMm: 'width of the laminate',
  modulusGPa: 'E along the grain',
  densityKgM3: 'density',
  crushingMPa: 'crushing strength along the grain',
  like: 'wood that it is like',
  fromFret: 'first fret of the region',
  toFret: 'last fret of the region',
  kerfMm: 'kerf in the region',
  tangWidthMm: 'tang body width in the region',
  studWidthMm: 'width over the studs in the region',
  startingReliefMm: 'measured relief',
  wood: 'wood',
  colour: 'colour as #rrggbb',
  construction: 'string construction',
} satisfies Record<EntryPlace, string>);

export const KIND_WORDS = words('KIND_WORDS', {
  'whole-number': 'a whole number',
  number: 'a number',
  text: 'text',
  flag: 'true or false',
  list: 'a list',
  object: 'an object',
} satisfies Record<Exclude<ValueKind, 'other'>, string>);

/** Each is given the quantities of the problem, in their order. */
export const IMPOSSIBLE_WORDS = words('IMPOSSIBLE_WORDS', {
  'cone-narrows': () =>
    'the cone goes on narrowing to the end of the board, where its radius must still be as large as the board is wide',
  'frets-on-board': (frets: string) => `the board has only ${frets} frets`,
  'crowns-too-close': (least: string) =>
    `at this scale length the last two crowns would be less than ${least} apart on the board`,
  'board-under-slot': (thickness: string, least: string) =>
    `the board is ${thickness} thick under the slot at its thinnest, and ${least} must stay`,
  'flat-slot-at-edge': (drop: string) =>
    `a flat cut must still be a slot at the edge of the board, which is ${drop} lower`,
  'crown-covers-slot': () => 'the crown must cover the slot',
  'studs-stand-out': () => 'studs stick out from the tang, so they are at least as wide',
  'crown-covers-studs': () => 'the crown must cover the studs',
  'back-all-along': () => 'board, shoulder and back must fit into it all along the neck',
  'lines-of-binding': (lines: string) => `there are only ${lines} lines of binding`,
  'binding-at-nut': (total: string, most: string) =>
    `The binding lines are ${total} thick together; at this nut they can be at most ${most} per side.`,
  'strings-clear-frets': () => 'the strings must clear the frets',
  'fall-away-beyond': (frets: string) =>
    `some of the ${frets} frets must lie beyond the one where the fall-away starts`,
  'rod-under-board': () => 'the rod must end under the board',
  'one-way-rod': () => 'a one-way rod can only be tightened',
  'wood-under-bar': (least: string) => `${least} of wood must stay under the bar at the nut`,
  'bars-and-channel': () => 'bars and channel can take at most 60 % of the width at the nut',
  'wall-of-bar': (width: string, depth: string) => `walls that thick do not fit in a bar of ${width} by ${depth}`,
  'rods-apart': (least: string) => `at least ${least} of wood must stay between the channels of two rods`,
  'rods-in-neck': (most: string) => `two channels can take at most ${most} across at the nut`,
  'wood-under-channel': (least: string) => `at least ${least} of wood must stay under the channel all along`,
  'channel-at-ends': (curve: string, least: string) =>
    `its ends are shallower than its middle by the curve of the rod, ${curve}, and must be at least ${least} deep`,
  'width-of-piece': (piece: string) =>
    `Piece ${piece} does not fit the others: of laminates of constant width every one but the outermost has a width.`,
  'widths-at-nut': (sum: string, most: string) =>
    `The laminates of constant width take ${sum} together; at the nut there is room for ${most}.`,
  'region-order': (region: string, from: string, to: string, frets: string) =>
    `Region ${region} runs from fret ${from} to fret ${to}; on this neck it can run from a fret to the same or a later one, up to ${frets}.`,
  'region-studs': (region: string, studs: string, tang: string) =>
    `Region ${region} has studs ${studs} wide on a tang of ${tang}; over the studs it is at least as wide as the tang.`,
  'crown-covers-regions': () => 'the crown must cover the slots and studs of every region',
  'reliefs-per-fret': (reliefs: string, frets: string) =>
    `${reliefs} reliefs are listed for ${frets} frets; list one for each fret, or none.`,
  'shares-sum': (sum: string) => `The shares of the neck’s laminates sum to ${sum}; they must sum to 1.`,
  'core-in-string': (string: string, core: string, diameter: string, least: string) =>
    `String ${string} has a core of ${core} in a diameter of ${diameter}; the core must be at least ${least} less.`,
  'course-of-first': () => 'The first string has none before it to be in one course with.',
  'strings-of-course': (string: string, beside: string, least: string) =>
    `String ${string} is ${beside} from the one before it, middle to middle; side by side they touch at ${least}.`,
  'courses-at-nut': (width: string) => `The strings in their courses do not fit side by side on a nut ${width} wide.`,
  'span-on-blank': () => 'the blank must reach over both supports',
} satisfies Record<ImpossibleReason, (...quantities: string[]) => string>);

export const PROBLEM_WORDS = words('PROBLEM_WORDS', {
  entry: (list: string, entry: string) => `${list}, entry ${entry}`,
  entryPart: (list: string, entry: string, part: string) => `${list}, entry ${entry}, ${part}`,
  /** In place of a value that is not there. */
  nothing: 'nothing',
  atLeast: (size: string) => `at least ${size}`,
  atMost: (size: string) => `at most ${size}`,
  tooLow: (label: string, given: string, least: string, reason: string) =>
    `${label} is ${given}; here it can be at least ${least}: ${reason}.`,
  tooHigh: (label: string, given: string, most: string, reason: string) =>
    `${label} is ${given}; here it can be at most ${most}: ${reason}.`,
  /** `path` is the place as files have it. */
  missing: (label: string, path: string) => `${label} (${path}) is missing.`,
  missingOf: (label: string, path: string, range: string) => `${label} (${path}) is missing; it takes ${range}.`,
  takes: (label: string, path: string, given: string, wanted: string) =>
    `${label} (${path}) is ${given}; it takes ${wanted}.`,
  takesKind: (label: string, path: string, given: string, kind: string, range: string) =>
    `${label} (${path}) is ${given}; it takes ${kind}, ${range}.`,
  takesOneOf: (label: string, path: string, given: string, options: string) =>
    `${label} (${path}) is ${given}; it takes one of: ${options}.`,
  takesNot: (label: string, path: string, given: string) => `${label} (${path}) is ${given}, which it does not take.`,
  textSize: (label: string, path: string, size: string, limit: string) =>
    `${label} (${path}) is ${size} characters long; it takes ${limit}.`,
  listSize: (label: string, path: string, size: string, limit: string) =>
    `${label} (${path}) has ${size} entries; it takes ${limit}.`,
  unknown: (path: string) => `${path} is not something a build has.`,
  notABuild: (given: string) => `The build is ${given}; it must be an object.`,
  notJson: (detail: string) => `This is not a project file: it is not JSON (${detail}).`,
  notAProject: (format: string) => `This is not a project file: it has no "format": "${format}".`,
  noVersion: (given: string, latest: string) =>
    `The project file’s version is ${given}; it must be a whole number from 1 to ${latest}.`,
  newerVersion: (given: string, latest: string) =>
    `The project file is version ${given}; this program reads versions 1 to ${latest}. Open it with a newer release.`,
});
