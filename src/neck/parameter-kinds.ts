import { sayText } from '../speech/language.ts';
import type { Unit } from './units.ts';

/** The groups of controls, in the order of the work. */
const NAMED_GROUPS = [
  { id: 'neck', label: 'The neck' },
  { id: 'board', label: 'The board' },
  { id: 'wire', label: 'The wire' },
  { id: 'slots', label: 'The slots' },
  { id: 'seating', label: 'How they go in' },
  { id: 'edges', label: 'Edges and binding' },
  { id: 'strings', label: 'The strings' },
  { id: 'rod', label: 'Rod and bars' },
  { id: 'time', label: 'Time and climate' },
  { id: 'existing', label: 'A neck that exists' },
  { id: 'assumptions', label: 'Assumptions' },
] as const;

export const GROUPS = NAMED_GROUPS.map((group) => ({ ...group, label: sayText(group.label) }));

export type GroupId = (typeof GROUPS)[number]['id'];

interface Common<Id extends string> {
  readonly id: Id;
  readonly group: GroupId;
  /** Name as the maker says it, without the unit. */
  readonly label: string;
  /** What it is and what it changes, in one or two plain sentences. */
  readonly hint: string;
  /** Where the default and the range come from. */
  readonly source: string;
  /** Show the control only when all of these parameters have one of these values. */
  readonly when?: Readonly<Record<string, readonly (string | boolean)[]>>;
}

export interface NumberParameter<Id extends string = string> extends Common<Id> {
  readonly kind: 'number';
  readonly unit: Unit;
  readonly min: number;
  readonly max: number;
  /** One arrow-key step; Shift is a tenth of it, Page ten times. */
  readonly step: number;
  /** Digits after the point in the stored unit. */
  readonly digits: number;
  readonly default: number;
  /** What is usual; outside is allowed. */
  readonly typical: readonly [number, number];
  readonly integer?: true;
}

export interface ChoiceParameter<Id extends string = string, Value extends string = string> extends Common<Id> {
  readonly kind: 'choice';
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly default: Value;
}

export interface FlagParameter<Id extends string = string> extends Common<Id> {
  readonly kind: 'flag';
  readonly default: boolean;
}

export type Parameter = NumberParameter | ChoiceParameter | FlagParameter;
