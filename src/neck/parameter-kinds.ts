import type { Unit } from './units.ts';

/** The groups of controls, in the order of the work. */
export const GROUPS = [
  'neck',
  'board',
  'wire',
  'slots',
  'seating',
  'edges',
  'strings',
  'rod',
  'time',
  'existing',
  'assumptions',
] as const;

export type GroupId = (typeof GROUPS)[number];

/** Where a default and its range come from. */
export type ParameterSource =
  /** common practice, no source */
  | 'practice'
  /** an assumption that the bench log corrects */
  | 'assumed'
  | 'own-measurement'
  | 'bench-log'
  /** the equation of the back in mechanics/MODEL.md */
  | 'profile'
  /** ASTM E1876 for the bar in bending, the beam formula for the weight */
  | 'blank-tests'
  /** the publications at the head of woods.ts */
  | 'wood-tables'
  /** Wood Handbook FPL-GTR-190, Table 5-1 */
  | 'elastic-ratios'
  /** Wood Handbook, ch. 4 */
  | 'moisture'
  /** Wood Handbook, from memory; an assumption that the bench log corrects */
  | 'relaxation'
  /** the sources in metals.ts */
  | 'alloy-data'
  /** the publications at the head of glues.ts */
  | 'glue-table'
  | 'iso-898'
  /** McKenzie & Karpovich 1968 */
  | 'friction';

interface Common<Id extends string> {
  readonly id: Id;
  readonly group: GroupId;
  readonly source: ParameterSource;
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
  /** It is null while nobody has measured it. */
  readonly measured?: true;
}

/** A number that somebody has to measure. */
export type MeasuredParameter<Id extends string = string> = NumberParameter<Id> & { readonly measured: true };

export interface ChoiceParameter<Id extends string = string, Value extends string = string> extends Common<Id> {
  readonly kind: 'choice';
  readonly options: readonly Value[];
  readonly default: Value;
}

export interface FlagParameter<Id extends string = string> extends Common<Id> {
  readonly kind: 'flag';
  readonly default: boolean;
}

export type Parameter = NumberParameter | ChoiceParameter | FlagParameter;
