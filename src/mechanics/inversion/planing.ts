/**
 * The other way to the line: how much to plane off the board at each fret before fretting (pre-camber).
 *
 *   target     t(x) = 4·T·s·(1 − s),  s = (x − x₁)/(x_e − x₁)      a bow of constant curvature of depth T under the
 *                                                                  straightedge; in line with it beyond the joint
 *   planed     p_i = α + β·x_i − (r_i − t_i) ≥ 0                     r: predicted fret-top line at the goal's moment
 *
 * Taking p off the board at a fret lowers its top by p, so the tops come out at t plus a straight line, which a straightedge
 * does not see. Of all straight lines the one whose deepest cut is least is taken (and of those the one with the least wood
 * in all). It runs along two frets of the upper or of the lower hull of r − t: all n(n − 1)/2 slopes are tried.
 *
 * The thicknesses of the build are those after planing: the few tenths that come off are not taken off its stiffness.
 */
import type { Method, Prediction, ReliefLine } from '../prediction-types.ts';
import { reliefFromDepth, sampleLine } from '../relief.ts';
import { describeLine, lineAt } from '../states.ts';
import { checkGoal, goalMoment, type ReliefGoal } from './goal.ts';

export interface PlaningRow {
  readonly fret: number;
  readonly xMm: number;
  /** Relief predicted there on a board planed straight, and the relief wanted there. */
  readonly predictedMm: number;
  readonly wantedMm: number;
  /** How much to plane off, ≥ 0. */
  readonly planeOffMm: number;
}

export interface PlaningPlan {
  readonly rows: readonly PlaningRow[];
  readonly mostMm: number;
  /** Relief of the fret tops after planing, at the goal's moment. */
  readonly reliefMm: number;
}

/** The wanted line at x, mm. */
export function wantedLineMm(
  prediction: Pick<Prediction, 'fretXMm' | 'straightedge'>,
  targetMm: number,
  xMm: number,
): number {
  const { fromFret, toFret } = prediction.straightedge;
  const from = prediction.fretXMm[fromFret - 1];
  const s = (xMm - from) / (prediction.fretXMm[toFret - 1] - from);
  return s <= 0 || s >= 1 ? 0 : 4 * targetMm * s * (1 - s);
}

/** @throws {RangeError} for a goal that cannot be meant. */
export function planPlaning(prediction: Prediction, method: Method, goal: ReliefGoal): PlaningPlan {
  checkGoal(goal);
  const line = lineAt(prediction, method, goalMoment(goal, prediction.time));
  const { fretXMm, stationXMm } = prediction;
  const predicted = fretXMm.map((x) => sampleLine(stationXMm, line.reliefMm, x));
  const wanted = fretXMm.map((x) => wantedLineMm(prediction, goal.reliefMm, x));
  const planed = leastAbove(
    fretXMm,
    predicted.map((relief, i) => relief - wanted[i]),
  );
  const rows = fretXMm.map((xMm, i) => ({
    fret: i + 1,
    xMm,
    predictedMm: predicted[i],
    wantedMm: wanted[i],
    planeOffMm: planed[i],
  }));
  return {
    rows,
    mostMm: Math.max(...planed),
    reliefMm: lineAfterPlaning(prediction, line, rows).extremeMm,
  };
}

/** The fret-top line of a neck whose board was planed, where `line` is that of a board planed straight. */
export function lineAfterPlaning(
  prediction: Prediction,
  line: ReliefLine,
  rows: readonly Pick<PlaningRow, 'planeOffMm'>[],
): ReliefLine {
  const { fretXMm, stationXMm, straightedge } = prediction;
  const off = rows.map((row) => row.planeOffMm);
  const depth = stationXMm.map((x, i) => line.reliefMm[i] + sampleLine(fretXMm, off, x));
  const from = fretXMm[straightedge.fromFret - 1];
  const to = fretXMm[straightedge.toFret - 1];
  return describeLine(prediction, reliefFromDepth(stationXMm, depth, from, to));
}

/** α + β·x_i − q_i ≥ 0 with the least greatest value, and of those the least sum. */
function leastAbove(x: readonly number[], q: readonly number[]): number[] {
  let best: number[] | undefined;
  let leastDeep = Infinity;
  let leastSum = Infinity;
  for (let a = 0; a < x.length; a += 1) {
    for (let b = a + 1; b < x.length; b += 1) {
      const slope = (q[b] - q[a]) / (x[b] - x[a]);
      const turned = x.map((xi, i) => q[i] - slope * xi);
      const top = Math.max(...turned);
      const cuts = turned.map((value) => top - value);
      const deep = Math.max(...cuts);
      const sum = cuts.reduce((total, cut) => total + cut, 0);
      if (deep > leastDeep + TIE_MM || (deep > leastDeep - TIE_MM && sum >= leastSum)) continue;
      best = cuts;
      leastDeep = deep;
      leastSum = sum;
    }
  }
  return best!;
}

const TIE_MM = 1e-9;
