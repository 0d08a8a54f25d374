/** Which way of seating comes closest to a relief, with everything else as it is. */
import { METHODS, type Method, type Prediction } from '../prediction-types.ts';
import { checkGoal, CLOSE_ENOUGH_MM, reliefAtGoal, type ReliefGoal } from './goal.ts';
import { solveRod, type RodAnswer } from './rod.ts';

export interface MethodAnswer {
  readonly method: Method;
  /** Relief at the goal's moment with the goal's rod setting, and how far it is from the wanted one (relief − target), mm. */
  readonly reliefMm: number;
  readonly missMm: number;
  /** Does it give the relief as it is? */
  readonly meets: boolean;
  /** What the rod would have to do to give it. */
  readonly rod: RodAnswer;
}

/** All methods, the closest first. @throws {RangeError} for a goal that cannot be meant. */
export function rankMethods(prediction: Prediction, goal: ReliefGoal): MethodAnswer[] {
  checkGoal(goal);
  return METHODS.map((method): MethodAnswer => {
    const reliefMm = reliefAtGoal(prediction, method, goal);
    const missMm = reliefMm - goal.reliefMm;
    const meets = Math.abs(missMm) <= CLOSE_ENOUGH_MM;
    return { method, reliefMm, missMm, meets, rod: solveRod(prediction, method, goal) };
  }).toSorted((a, b) => Math.abs(a.missMm) - Math.abs(b.missMm));
}
