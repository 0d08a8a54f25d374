import type { QuantityKey } from '../neck/quantities.ts';

/** One number out of several of its kind. */
export type Statistic = 'least' | 'greatest' | 'mean';

/** A number of a step; its unit and digits are those of its key. */
export interface StepQuantity {
  readonly key: QuantityKey;
  readonly value: number;
  /** Which of the values that differ from fret to fret; absent where all are alike to the digits shown. */
  readonly which?: Statistic;
  /** Place in a list, 1 the first. */
  readonly index?: number;
}
