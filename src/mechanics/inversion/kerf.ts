/**
 * The kerf that gives a relief.
 *
 *   find k with e(k) = T,   k_min ≤ k ≤ k_max       e: predicted relief at the goal's moment, mm; it never falls with k,
 *                                                   since a wider kerf wedges less
 *   k_min = tang body − 0.025 mm    a thousandth of an inch is what repairers press into a slot on purpose to bend a neck
 *                                   (common practice, no source); narrower ruins a neck
 *   k_max = width over the studs    beyond it the fret does not hold; and the crown must cover the slot
 *
 * Bracketed secant steps (Illinois: Dowell & Jarratt 1971), each a prediction with the matrix factors kept; bisection where
 * e jumps. Where slots have kerfs of their own (a refret) only the others change.
 */
import { Refused } from '../refusal.ts';
import type { Build } from '../../neck/build.ts';
import { parameterById } from '../../neck/parameters.ts';
import type { Predictor } from '../predict.ts';
import type { Method } from '../prediction-types.ts';
import { checkGoal, CLOSE_ENOUGH_MM, reliefAtGoal, type ReliefGoal } from './goal.ts';

/** How much narrower than the tang's body a kerf may be, mm. */
export const MOST_BODY_INTERFERENCE_MM = 0.025;

export interface KerfRange {
  readonly leastMm: number;
  readonly mostMm: number;
}

export interface KerfAnswer {
  /**
   * found           this kerf gives the relief
   * too-hollow      even the narrowest kerf that the wire allows leaves more relief than wanted
   * too-humped      even a kerf without bite leaves less relief than wanted
   * between-shapes  the line is humped as much as it is hollow before it comes to the relief: no kerf gives exactly that
   * no-effect       the kerf does not bend this neck: a glue fit, or every slot has a kerf of its own, or crowns levelled
   *                 under strings
   */
  readonly status: 'found' | 'too-hollow' | 'too-humped' | 'between-shapes' | 'no-effect';
  /** The kerf, or the one that comes closest, mm. */
  readonly kerfMm: number;
  /** Relief with it, and how far that is from the wanted one (relief − target), mm. */
  readonly reliefMm: number;
  readonly missMm: number;
  /** Tang body − kerf, mm: above zero the body itself wedges, not only the studs. */
  readonly bodyInterferenceMm: number;
  readonly range: KerfRange;
}

/** The kerfs that the wire of a build allows, mm; the least is above the most when no kerf does. */
export function kerfRange(build: Pick<Build, 'tangWidthMm' | 'studWidthMm' | 'crownWidthMm'>): KerfRange {
  const parameter = parameterById('kerfMm');
  const [least, most] = parameter.kind === 'number' ? [parameter.min, parameter.max] : [0, Infinity];
  return {
    leastMm: Math.max(least, build.tangWidthMm - MOST_BODY_INTERFERENCE_MM),
    mostMm: Math.min(most, build.studWidthMm, build.crownWidthMm - 0.2),
  };
}

/**
 * @param method press or both; for a glue fit the kerf has no effect, and the answer says so.
 * @throws {RangeError} for a goal that cannot be meant, or wire that no kerf fits.
 */
export function solveKerf(
  predictor: Predictor,
  build: Build,
  goal: ReliefGoal,
  method: Method = build.method,
): KerfAnswer {
  checkGoal(goal);
  const range = kerfRange(build);
  if (range.leastMm > range.mostMm) {
    throw new Refused({ code: 'no-kerf-fits', ...range, tangWidthMm: build.tangWidthMm });
  }
  // A press fit feels no filler: leaving it out spares the other methods' solves.
  const base: Build = method === 'press' ? { ...build, glueReachPercent: 0 } : build;
  const reliefOf = (kerfMm: number) => reliefAtGoal(predictor.predict({ ...base, kerfMm }), method, goal);
  const answer = (status: KerfAnswer['status'], kerfMm: number, reliefMm: number): KerfAnswer => ({
    status,
    kerfMm,
    reliefMm,
    missMm: reliefMm - goal.reliefMm,
    bodyInterferenceMm: build.tangWidthMm - kerfMm,
    range,
  });
  if (method === 'glue') return answer('no-effect', build.kerfMm, reliefOf(build.kerfMm));

  const { leastMm, mostMm } = range;
  const tight = reliefOf(leastMm);
  const loose = reliefOf(mostMm);
  if (Math.abs(loose - tight) < NO_EFFECT_MM) return answer('no-effect', build.kerfMm, reliefOf(build.kerfMm));
  if (tight > goal.reliefMm) return answer('too-hollow', leastMm, tight);
  if (loose < goal.reliefMm) return answer('too-humped', mostMm, loose);
  const { x, value } = solveRising(reliefOf, goal.reliefMm, [leastMm, tight], [mostMm, loose]);
  return answer(Math.abs(value - goal.reliefMm) <= CLOSE_ENOUGH_MM ? 'found' : 'between-shapes', x, value);
}

const NO_EFFECT_MM = 1e-7;
const CLOSE_MM = 1e-9;
const MOST_STEPS = 80;

/** Where a function that never falls comes to a target between two points, or the nearer side of the jump there. */
export function solveRising(
  of: (x: number) => number,
  target: number,
  from: readonly [x: number, value: number],
  to: readonly [x: number, value: number],
): { readonly x: number; readonly value: number } {
  let [lowX, lowValue] = from;
  let [highX, highValue] = to;
  let lowWeight = lowValue - target;
  let highWeight = highValue - target;
  let side = 0;
  for (let step = 0; step < MOST_STEPS && highX - lowX > CLOSE_MM; step += 1) {
    if (lowValue === target) return { x: lowX, value: lowValue };
    if (highValue === target) return { x: highX, value: highValue };
    // Secant steps for the first dozen; a jump makes them crawl, so bisection ends it.
    const secant = lowX - (lowWeight * (highX - lowX)) / (highWeight - lowWeight);
    const x = step < 12 && secant > lowX && secant < highX ? secant : (lowX + highX) / 2;
    const value = of(x);
    if (Math.abs(value - target) < CLOSE_MM) return { x, value };
    if (value < target) {
      lowX = x;
      lowValue = value;
      lowWeight = value - target;
      if (side === -1) highWeight /= 2;
      side = -1;
    } else {
      highX = x;
      highValue = value;
      highWeight = value - target;
      if (side === 1) lowWeight /= 2;
      side = 1;
    }
  }
  return target - lowValue < highValue - target ? { x: lowX, value: lowValue } : { x: highX, value: highValue };
}
