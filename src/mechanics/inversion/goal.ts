/** What the maker wants: a relief under the strings, at once or settled, with the rod at a setting. */
import type { Build } from '../../neck/build.ts';
import { Refused } from '../refusal.ts';
import type { Method, Moment, Prediction } from '../prediction-types.ts';
import { lineAt } from '../states.ts';

export interface ReliefGoal {
  /** Relief of greatest size under the straightedge, with its sign: positive hollow. */
  readonly reliefMm: number;
  /** On the day of stringing, or once settled (`Build.settleDays` later). */
  readonly when: 'strung' | 'settled';
  /** Rod setting in per cent of its range; 0 = neutral. */
  readonly rodPercent: number;
}

export const LEAST_TARGET_MM = -1;
export const MOST_TARGET_MM = 3;

/** @throws {RangeError} for a relief or a rod setting that cannot be meant. */
export function checkGoal({ reliefMm, rodPercent }: ReliefGoal): void {
  if (!(reliefMm >= LEAST_TARGET_MM && reliefMm <= MOST_TARGET_MM)) {
    throw new Refused({ code: 'relief-beyond-range', reliefMm, leastMm: LEAST_TARGET_MM, mostMm: MOST_TARGET_MM });
  }
  if (!(Math.abs(rodPercent) <= 100)) {
    throw new Refused({ code: 'rod-beyond-range', rodPercent, mostPercent: 100 });
  }
}

/** The moment at which the goal is to be met. */
export function goalMoment(goal: ReliefGoal, time: Pick<Prediction['time'], 'settleDays'>): Moment {
  return { strung: true, days: goal.when === 'strung' ? 0 : time.settleDays, rodPercent: goal.rodPercent };
}

/** Relief that a prediction gives at the goal's moment, mm. */
export function reliefAtGoal(prediction: Prediction, method: Method, goal: ReliefGoal): number {
  return lineAt(prediction, method, goalMoment(goal, prediction.time)).extremeMm;
}

/**
 * How close an answer must come to count as one, mm. Solutions are exact to rounding; only a target inside a jump of the
 * relief of greatest size (a line as humped as it is hollow) misses by more.
 */
export const CLOSE_ENOUGH_MM = 1e-4;

/** The goal that a build itself states: its relief wanted, settled, rod neutral. */
export function goalOf(build: Pick<Build, 'targetReliefMm'>): ReliefGoal {
  return { reliefMm: build.targetReliefMm, when: 'settled', rodPercent: 0 };
}
