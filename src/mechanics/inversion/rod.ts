/**
 * The rod setting that gives a relief, and the plain statement when no setting does.
 *
 *   e(p) = relief of greatest size of a(x) + (p/100)·k(x);  e(p) = T      a: line with the rod neutral, k: rod at its limit
 *
 * A one-way rod takes 0 … 100 %: its nut only pulls. As a rule that bends the neck backwards, and a neck that is humped, or
 * less hollow than wanted, with the nut loose is beyond it: no turn of the nut removes a back-bow. Where its pull passes
 * above the middle of the wood (a thick neck, a rod that is curved little or much out of it) it bends forward, a little: then
 * it is the neck that is too hollow with the nut loose that is beyond it. Which of the two it is the computed line k tells.
 */
import type { Method, Prediction } from '../prediction-types.ts';
import { describeLine, lineAt } from '../states.ts';
import { checkGoal, CLOSE_ENOUGH_MM, goalMoment, type ReliefGoal } from './goal.ts';
import { extremeOfSum, shareForTarget } from './rod-share.ts';

const ROUNDING_PERCENT = 1e-9;

export interface RodAnswer {
  /**
   * reached          this setting gives the relief
   * no-rod           the neck has none
   * cannot-forward   a one-way rod with its nut loose leaves less relief than wanted, and bends this neck backwards only
   * cannot-backward  the same the other way: it leaves more than wanted, and bends this neck forward only
   * too-weak         at its limit the rod still leaves more relief (or, two-way and backed off, less) than wanted
   * between-shapes   the line is humped as much as it is hollow before it comes to the relief
   */
  readonly status: 'reached' | 'no-rod' | 'cannot-forward' | 'cannot-backward' | 'too-weak' | 'between-shapes';
  /** The setting, or the one that comes closest, per cent of the range; plus bends backwards. */
  readonly percent: number;
  /** The setting that it would take, however far beyond the range; null when none does at any size. */
  readonly wantedPercent: number | null;
  /** Share of the range in use, 0 to 1. */
  readonly shareOfRange: number;
  /** Turns of the nut from slack; null where they cannot be computed. */
  readonly turns: number | null;
  /** Relief at that setting, and how far it is from the wanted one (relief − target), mm. */
  readonly reliefMm: number;
  readonly missMm: number;
  /** Relief with the rod neutral, mm. */
  readonly neutralMm: number;
}

/** @param goal its rod setting is not used. @throws {RangeError} for a relief that cannot be meant. */
export function solveRod(prediction: Prediction, method: Method, goal: Omit<ReliefGoal, 'rodPercent'>): RodAnswer {
  checkGoal({ ...goal, rodPercent: 0 });
  const { rod, stationXMm, fretXMm, straightedge } = prediction;
  const neutral = lineAt(prediction, method, goalMoment({ ...goal, rodPercent: 0 }, prediction.time));
  const { rodMm } = prediction.methods[method].basis;
  const fromXMm = fretXMm[straightedge.fromFret - 1]!;
  const toXMm = fretXMm[straightedge.toFret - 1]!;
  const from = stationXMm.findIndex((x) => x >= fromXMm);
  const to = stationXMm.findLastIndex((x) => x <= toXMm);
  const line = { values: neutral.reliefMm };
  const perLimit = { values: rodMm };
  const answer = (status: RodAnswer['status'], percent: number, wantedPercent: number | null): RodAnswer => {
    const reliefMm = describeLine(
      prediction,
      neutral.reliefMm.map((value, i) => value + (percent / 100) * rodMm[i]!),
    ).extremeMm;
    return {
      status,
      percent,
      wantedPercent,
      shareOfRange: Math.abs(percent) / 100,
      turns: rod.turnsAtLimit === null ? null : (rod.turnsAtLimit * Math.abs(percent)) / 100,
      reliefMm,
      missMm: reliefMm - goal.reliefMm,
      neutralMm: neutral.extremeMm,
    };
  };
  if (rod.kind === 'none') return answer('no-rod', 0, null);

  const share = shareForTarget(line, perLimit, from, to, goal.reliefMm);
  const wanted = share === undefined ? null : 100 * share;
  // A setting that rounding puts just outside the range is its limit.
  const inRange = wanted === null ? Number.NaN : Math.min(Math.max(wanted, rod.leastPercent), rod.mostPercent);
  if (wanted !== null && Math.abs(inRange - wanted) < ROUNDING_PERCENT) {
    const found = answer('reached', inRange, wanted);
    return Math.abs(found.missMm) <= CLOSE_ENOUGH_MM ? found : { ...found, status: 'between-shapes' };
  }
  const missAt = (percent: number) => Math.abs(extremeOfSum(line, perLimit, percent / 100, from, to) - goal.reliefMm);
  const closest = missAt(rod.leastPercent) <= missAt(rod.mostPercent) ? rod.leastPercent : rod.mostPercent;
  const atLimitMm = extremeOfSum(line, perLimit, rod.mostPercent / 100, from, to);
  return answer(statusBeyond(rod.kind === 'one-way', neutral.extremeMm, atLimitMm, goal.reliefMm), closest, wanted);
}

/** Why a relief is out of reach: a rod that only pulls may bend the neck the other way, and any may be too weak. */
function statusBeyond(
  isOneWay: boolean,
  neutralMm: number,
  atLimitMm: number,
  targetMm: number,
): Extract<RodAnswer['status'], 'cannot-forward' | 'cannot-backward' | 'too-weak'> {
  if (!isOneWay) return 'too-weak';
  if (targetMm > neutralMm && atLimitMm <= neutralMm) return 'cannot-forward';
  if (targetMm < neutralMm && atLimitMm >= neutralMm) return 'cannot-backward';
  return 'too-weak';
}

/** Which way a setting bends the neck, by the computed relief; undefined when it moves nothing. */
export function rodBends({ reliefMm, neutralMm }: Pick<RodAnswer, 'reliefMm' | 'neutralMm'>) {
  if (Math.abs(reliefMm - neutralMm) < CLOSE_ENOUGH_MM) return undefined;
  return reliefMm < neutralMm ? 'backward' : 'forward';
}
