/**
 * The rod setting that gives a relief, and the plain statement when no setting does.
 *
 *   e(p) = relief of greatest size of a(x) + (p/100)·k(x);  e(p) = T      a: line with the rod neutral, k: rod at its limit
 *
 * A one-way rod takes 0 … 100 %: its nut only pulls. As a rule that bends the neck backwards, and a neck that is humped, or
 * less hollow than wanted, with the nut loose is beyond it: no turn of the nut removes a back-bow. Where its pull passes
 * above the middle of the wood (a thick neck, a rod that is curved little or much out of it) it bends forward, a little: then
 * it is the neck that is too hollow with the nut loose that is beyond it. Which of the two it is the computed line k tells. And where it bends one
 * stretch backwards and another forwards, the nearest that it comes may lie between its limits.
 */
import type { Method, Prediction, ReliefLine } from '../prediction-types.ts';
import { nutTurn, type NutTurn } from '../rod.ts';
import { describeLine, lineAt } from '../states.ts';
import { checkGoal, CLOSE_ENOUGH_MM, goalMoment, type ReliefGoal } from './goal.ts';
import { extremeOfSum, nearestShare, shareForTarget } from './rod-share.ts';

const ROUNDING_PERCENT = 1e-9;

export interface RodAnswer {
  /**
   * reached          this setting gives the relief
   * no-rod           the neck has none
   * cannot-forward   a one-way rod with its nut loose leaves less relief than wanted, and bends this neck backwards only
   * cannot-backward  the same the other way: it leaves more than wanted, and bends this neck forward only
   * too-weak         at its limit the rod still leaves more relief (or, two-way and backed off, less) than wanted
   * between-shapes   the line is humped as much as it is hollow before it comes to the relief
   * no-nearer        up to this setting it comes nearer to the relief; turned further, it bends another stretch away
   */
  readonly status:
    'reached' | 'no-rod' | 'cannot-forward' | 'cannot-backward' | 'too-weak' | 'between-shapes' | 'no-nearer';
  /** The setting, or the one that comes closest, per cent of the range; plus bends backwards. */
  readonly percent: number;
  /** The setting that it would take, however far beyond the range; null when none does at any size. */
  readonly wantedPercent: number | null;
  /** Share of the range in use, 0 to 1. */
  readonly shareOfRange: number;
  /** The same as turns of the nut. */
  readonly nut: NutTurn;
  /** What a quarter turn adds to the relief of greatest size, with its sign: of the rod's line by itself, mm; 0 without a rod. */
  readonly quarterTurnMm: number;
  /** Relief at that setting, and how far it is from the wanted one (relief − target), mm. */
  readonly reliefMm: number;
  readonly missMm: number;
  /** Relief with the rod neutral, mm. */
  readonly neutralMm: number;
}

/** Is the setting one to use, by itself or as the nearest beside a jump? Any other says why there is none. */
export function isWithinReach({ status }: Pick<RodAnswer, 'status'>): boolean {
  return status === 'reached' || status === 'between-shapes';
}

type RodParts = Pick<Prediction, 'rod' | 'stationXMm' | 'fretXMm' | 'straightedge'>;

/**
 * The setting that gives a relief, or comes closest.
 * @param neutral the line with the rod neutral; @param rodMm what the rod adds at its limit
 */
export function rodSetting(
  parts: RodParts,
  neutral: Pick<ReliefLine, 'reliefMm' | 'extremeMm'>,
  rodMm: Float64Array,
  targetMm: number,
): Pick<RodAnswer, 'status' | 'percent' | 'wantedPercent'> {
  const { rod, stationXMm, fretXMm, straightedge } = parts;
  if (rod.kind === 'none') return { status: 'no-rod', percent: 0, wantedPercent: null };
  const fromXMm = fretXMm[straightedge.fromFret - 1];
  const toXMm = fretXMm[straightedge.toFret - 1];
  const from = stationXMm.findIndex((x) => x >= fromXMm);
  const to = stationXMm.findLastIndex((x) => x <= toXMm);
  const line = { values: neutral.reliefMm };
  const perLimit = { values: rodMm };
  const missAt = (percent: number) => Math.abs(extremeOfSum(line, perLimit, percent / 100, from, to) - targetMm);
  const share = shareForTarget(line, perLimit, from, to, targetMm);
  const wantedPercent = share === undefined ? null : 100 * share;
  // A setting that rounding puts just outside the range is its limit.
  const inRange =
    wantedPercent === null ? Number.NaN : Math.min(Math.max(wantedPercent, rod.leastPercent), rod.mostPercent);
  const isWithin = wantedPercent !== null && Math.abs(inRange - wantedPercent) < ROUNDING_PERCENT;
  if (isWithin && missAt(inRange) <= CLOSE_ENOUGH_MM) return { status: 'reached', percent: inRange, wantedPercent };
  const limits = [rod.leastPercent / 100, rod.mostPercent / 100] as const;
  const nearest = 100 * nearestShare(line, perLimit, from, to, targetMm, limits);
  const gainMm = (percent: number) => missAt(percent) - missAt(nearest);
  if (missAt(nearest) <= CLOSE_ENOUGH_MM) return { status: 'reached', percent: nearest, wantedPercent: nearest };
  if (isWithin && gainMm(inRange) <= CLOSE_ENOUGH_MM)
    return { status: 'between-shapes', percent: inRange, wantedPercent };
  const end = missAt(rod.leastPercent) <= missAt(rod.mostPercent) ? rod.leastPercent : rod.mostPercent;
  if (gainMm(end) > CLOSE_ENOUGH_MM) return { status: 'no-nearer', percent: nearest, wantedPercent: null };
  const atLimitMm = extremeOfSum(line, perLimit, rod.mostPercent / 100, from, to);
  const status = statusBeyond(rod.kind === 'one-way', neutral.extremeMm, atLimitMm, targetMm);
  return { status, percent: end, wantedPercent };
}

/** @param goal its rod setting is not used. @throws {RangeError} for a relief that cannot be meant. */
export function solveRod(prediction: Prediction, method: Method, goal: Omit<ReliefGoal, 'rodPercent'>): RodAnswer {
  checkGoal({ ...goal, rodPercent: 0 });
  const lineWith = (rodPercent: number) =>
    lineAt(prediction, method, goalMoment({ ...goal, rodPercent }, prediction.time));
  const neutral = lineWith(0);
  const { basis, rodTurnsAtLimit } = prediction.methods[method];
  const setting = rodSetting(prediction, neutral, basis.rodMm, goal.reliefMm);
  const { percent } = setting;
  // The very line that everybody else shows: where it is humped as much as it is hollow, rounding chooses the side.
  const { extremeMm } = lineWith(percent);
  return {
    ...setting,
    shareOfRange: Math.abs(percent) / 100,
    nut: nutTurn(prediction, method, percent),
    quarterTurnMm: rodTurnsAtLimit === 0 ? 0 : describeLine(prediction, basis.rodMm).extremeMm / (4 * rodTurnsAtLimit),
    reliefMm: extremeMm,
    missMm: extremeMm - goal.reliefMm,
    neutralMm: neutral.extremeMm,
  };
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
