import type { Unit } from '../neck/units.ts';

/** A number that is shown beside words, in the unit in which it is stored. */
export interface Quantity {
  readonly label: string;
  readonly value: number;
  readonly unit: Unit;
  /** Digits after the point in the stored unit. */
  readonly digits: number;
}
