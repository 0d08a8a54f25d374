import type { ParameterId } from '../../neck/parameters.ts';
import type { Unit } from '../../neck/units.ts';
import type { Mark } from '../facts.ts';

/** stop = it cannot be made so, or it will do damage; warn = trouble is likely; note = bear in mind. */
export type Severity = 'stop' | 'warn' | 'note';

export type CheckCode =
  | 'no-bite'
  | 'weak-bite'
  | 'too-tight'
  | 'body-wedges'
  | 'loose-glue-fit'
  | 'slot-too-shallow'
  | 'slot-shallow-at-edge'
  | 'little-air'
  | 'slot-deeper-than-needed'
  | 'little-board-left'
  | 'board-edge-thin'
  | 'chamfer-too-wide'
  | 'no-chamfer'
  | 'slot-shows'
  | 'shelf-short'
  | 'tight-nip'
  | 'string-near-end'
  | 'studs-overlap'
  | 'bend-too-flat'
  | 'bend-too-tight'
  | 'little-oversize'
  | 'short-grain-at-end'
  | 'strung-too-soon'
  | 'nickel'
  | 'string-near-breaking'
  | 'blank-implausible'
  | 'back-bow-no-rod'
  | 'forward-bow-no-rod'
  | 'rod-near-limit'
  | 'rod-lies-high'
  | 'channel-too-deep'
  | 'no-rod'
  | 'crown-too-low'
  | 'last-levelling'
  | 'dust'
  | 'dust-sensitising'
  | 'glue'
  | 'listed-wood';

export interface Check {
  readonly code: CheckCode;
  readonly severity: Severity;
  /** What to change, or the list of the build that is meant. */
  readonly parameter: ParameterId | 'strings' | 'binding';
  /** What was found, and what it may be at least or at most; null where it is not a number. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly limitKind: 'least' | 'most' | null;
  readonly unit: Unit;
  /** Digits after the point in the stored unit. */
  readonly digits: number;
  /** Frets that it concerns; empty = the whole neck. */
  readonly frets: readonly number[];
  /** What goes wrong, and what to do, in plain sentences without numbers of their own. */
  readonly reason: string;
  readonly remedy: string;
  /** Where the limit comes from. */
  readonly source: string;
  readonly mark: Mark;
}
