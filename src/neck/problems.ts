/** Errors as data: what is wrong, with which value, and what would be right. Speech puts them into words. */
import type { ParameterId } from './parameters.ts';
import type { Unit } from './units.ts';

/** A number with its unit, as the program keeps it. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

/** The kind of value that a place takes. */
export type ValueKind = 'whole-number' | 'number' | 'text' | 'flag' | 'list' | 'object' | 'other';

/** Why a value that is in its own range cannot be in this build; the quantities of the problem belong to it. */
export type ImpossibleReason =
  | 'cone-narrows'
  | 'frets-on-board'
  | 'crowns-too-close'
  | 'board-under-slot'
  | 'flat-slot-at-edge'
  | 'crown-covers-slot'
  | 'studs-stand-out'
  | 'crown-covers-studs'
  | 'back-all-along'
  | 'lines-of-binding'
  | 'binding-at-nut'
  | 'strings-clear-frets'
  | 'fall-away-beyond'
  | 'rod-under-board'
  | 'one-way-rod'
  | 'wood-under-bar'
  | 'bars-and-channel'
  | 'wall-of-bar'
  | 'rods-apart'
  | 'rods-in-neck'
  | 'wood-under-channel'
  | 'channel-at-ends'
  | 'width-of-piece'
  | 'widths-at-nut'
  | 'region-order'
  | 'region-studs'
  | 'crown-covers-regions'
  | 'reliefs-per-fret'
  | 'shares-sum'
  | 'core-in-string'
  | 'course-of-first'
  | 'strings-of-course'
  | 'courses-at-nut'
  | 'span-on-blank';

interface Place {
  /** Parameter id, or the path of a list entry such as "strings.2.diameterMm"; "build" or "file" for the whole. */
  readonly parameter: ParameterId | (string & {});
  readonly value: unknown;
}

/** The range that a number takes, where one is known. */
export interface Limits {
  readonly min?: number;
  readonly max?: number;
  readonly unit?: Unit;
}

export type Problem = Place &
  Limits &
  (
    | { readonly code: 'not-json'; readonly detail: string }
    | { readonly code: 'missing' | 'unknown' | 'out-of-range' }
    /** It is none, or its version is none: with the latest that this program reads. */
    | { readonly code: 'not-a-project' | 'newer-version'; readonly latest: number }
    | { readonly code: 'wrong-type'; readonly wants: ValueKind }
    /** Characters of a text, entries of a list; the limits count them. */
    | { readonly code: 'wrong-size'; readonly of: 'text' | 'list'; readonly size: number }
    | { readonly code: 'not-an-option'; readonly options: readonly string[] }
    | { readonly code: 'impossible'; readonly reason: ImpossibleReason; readonly quantities: readonly Quantity[] }
  );

export type ProblemCode = Problem['code'];
