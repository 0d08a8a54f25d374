import type { BlankPart, ParameterId } from '../../neck/parameters.ts';
import type { QuantityKey } from '../../neck/quantities.ts';
import type { Unit } from '../../neck/units.ts';
import type { Basis } from '../facts.ts';

/** stop = it cannot be made so, or it will do damage; warn = trouble is likely; note = bear in mind. */
export type Severity = 'stop' | 'warn' | 'note';

/** Checks of the verdict alone: where this model is known to disagree with practice (verdict/known-limits.ts). */
export type LimitCode = 'limit-stiff-neck' | 'limit-pressed-settled';

export type CheckCode =
  | LimitCode
  | 'no-bite'
  | 'weak-bite'
  | 'too-tight'
  | 'body-wedges'
  | 'loose-glue-fit'
  | 'soft-glue'
  | 'earlier-grip'
  | 'earlier-woods'
  | 'earlier-ends'
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
  | 'binding-harmed'
  | 'string-near-end'
  | 'studs-overlap'
  | 'bend-too-flat'
  | 'bend-too-tight'
  | 'little-oversize'
  | 'short-grain-at-end'
  | 'clamps-too-weak'
  | 'strung-too-soon'
  | 'nickel'
  | 'nickel-strings'
  | 'string-near-breaking'
  | 'strings-below-frets'
  | 'strings-too-close'
  | 'blank-incomplete'
  | 'blank-span'
  | 'blank-sags-far'
  | 'blank-implausible'
  | 'blank-unlikely'
  | 'back-bow-no-rod'
  | 'forward-bow-no-rod'
  | 'rod-near-limit'
  | 'rod-lies-high'
  | 'rod-without-room'
  | 'channel-too-deep'
  | 'no-rod'
  | 'crown-too-low'
  | 'last-levelling'
  | 'dust'
  | 'dust-sensitising'
  | 'glue'
  | 'heat'
  | 'listed-wood';

/** What more than its code says why a check speaks up. */
export interface CheckVariants {
  /** What comes of it: nothing but more bow; more than rod or kerf bring back; the board may split; it does not go in. */
  readonly 'body-wedges': 'bears' | 'bow' | 'split' | 'force';
  /** A straight channel leaves thin wood; one that tapers is taken no deeper than the limit. */
  readonly 'channel-too-deep': 'thin' | 'capped';
  /** By what the glue is cleaned off with; by the water in it; by the heat that a neck is pressed with. */
  readonly 'binding-harmed': 'solvent' | 'water' | 'heat';
  readonly 'blank-incomplete': BlankPart;
  readonly 'blank-span': BlankPart;
  readonly 'blank-sags-far': BlankPart;
  readonly 'blank-implausible': BlankPart;
  readonly 'blank-unlikely': BlankPart;
  /** The rod is slack and can only make it worse; it pulls above the middle of the wood, a little; it pushes all it may. */
  readonly 'back-bow-no-rod': 'slack' | 'high' | 'pushing';
  readonly 'forward-bow-no-rod': 'high' | 'pulling';
}

export type CheckVariant = CheckVariants[keyof CheckVariants];

/** The numbers of a check; all null where it is not about a number. */
export interface Measure {
  /** What was measured. */
  readonly quantity: QuantityKey | null;
  /** What was found, and what it may be at least or at most. */
  readonly value: number | null;
  readonly limit: number | null;
  readonly limitKind: 'least' | 'most' | null;
  readonly unit: Unit;
}

/** A finding as data; what it says in words is in speech/en/checks.ts, by its code. */
export interface Check extends Measure, Basis {
  readonly code: CheckCode;
  /** For the codes in `CheckVariants`; null for all others. */
  readonly variant: CheckVariant | null;
  readonly severity: Severity;
  /** What to change, or the list of the build that is meant. */
  readonly parameter: ParameterId | 'strings' | 'binding';
  /** Frets that it concerns; empty = the whole neck. */
  readonly frets: readonly number[];
  /** Ids of the woods, of the glue or of the constructions of strings that it names. */
  readonly about: readonly string[];
}
