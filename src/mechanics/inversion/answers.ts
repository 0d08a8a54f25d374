/**
 * Every way to a wanted relief together with how sure it is: the answers of solve.ts, each with the 5–95 % band of the
 * relief that the neck then has at the goal's moment. In steps between which it can be given up.
 *
 * After planing, sample i has the line a_i(x) + p(x), p(x) what was planed off (planing.ts) against the straightedge; its
 * relief is that of greatest size of the sum. The board's stiffness is that of the board after planing.
 */
import type { Build } from '../../neck/build.ts';
import type { Predictor } from '../predict.ts';
import type { Method, Moment, Prediction } from '../prediction-types.ts';
import { sampleLine } from '../relief.ts';
import { sampleExtremes, sampleLines } from '../uncertainty/band-at.ts';
import { bandOf, type Band } from '../uncertainty/band.ts';
import { paired, type Paired } from '../uncertainty/paired.ts';
import type { EstimateOptions, Estimator, Progress } from '../uncertainty/estimate.ts';
import type { Uncertainty } from '../uncertainty/types.ts';
import { checkGoal, goalMoment, reliefAtGoal, type ReliefGoal } from './goal.ts';
import { kerfRange, solveKerf, type KerfAnswer, type KerfRange } from './kerf.ts';
import { rankMethods, type MethodAnswer } from './methods.ts';
import { planPlaning, type PlaningPlan } from './planing.ts';
import { solveRod, type RodAnswer } from './rod.ts';

/** Relief at the goal's moment: 90 of 100 such necks lie within. */
export interface Banded {
  readonly bandMm: Band;
}

/** Beside the neck as it is: the band of the difference, and how often it ends nearer the relief wanted. */
export interface Compared extends Banded {
  readonly paired: Paired;
}

export interface WantedAnswer {
  readonly goal: ReliefGoal;
  /** Relief at the goal's moment as the build is, mm. */
  readonly reliefMm: number;
  readonly bandMm: Band;
  /** For both ways of pressing; null where no kerf fits the wire at all. */
  readonly kerf: Readonly<Record<'press' | 'both', KerfAnswer & Compared>> | null;
  /** The kerfs that the wire allows; the least is above the most where none does. */
  readonly kerfRange: KerfRange;
  /** All methods as the build is, the closest first. */
  readonly methods: readonly (MethodAnswer & Compared)[];
  /** For the build's own method; the band at the setting that is given. */
  readonly rod: RodAnswer & Compared;
  readonly planing: PlaningPlan & Compared;
}

/** A kerf as it can be sawn and said, mm: to a thousandth. */
export function sawableKerfMm(kerfMm: number): number {
  return Math.round(kerfMm * 1000) / 1000;
}

/** The relief of the fret-top line of every sample on a planed board, mm. */
export function planedSamples(
  uncertainty: Uncertainty,
  prediction: Prediction,
  method: Method,
  moment: Moment,
  plan: PlaningPlan,
): Float64Array {
  const { samples, spanFrom, spanTo, xMm } = uncertainty;
  const { fretXMm, straightedge } = prediction;
  const lines = sampleLines(uncertainty, method, moment);
  const planedMm = plan.rows.map((row) => row.planeOffMm);
  const [from, to] = [straightedge.fromFret, straightedge.toFret].map((fret) => fret - 1) as [number, number];
  /** What planing adds to the relief at x: its depth below the straight line between the ends of the straightedge. */
  const added = Array.from(xMm, (x) => {
    const share = (x - fretXMm[from]) / (fretXMm[to] - fretXMm[from]);
    return sampleLine(fretXMm, planedMm, x) - (planedMm[from] + (planedMm[to] - planedMm[from]) * share);
  });
  const extremes = new Float64Array(samples);
  for (let point = spanFrom; point <= spanTo; point += 1) {
    for (let i = 0; i < samples; i += 1) {
      const relief = lines[point * samples + i] + added[point];
      if (Math.abs(relief) > Math.abs(extremes[i])) extremes[i] = relief;
    }
  }
  return extremes;
}

/** What a band costs beside the search for a kerf, about: both take as long as their predictions. */
const BAND_WEIGHT = 3;
const KERF_WEIGHT = 1;
const WHOLE_WEIGHT = 3 * BAND_WEIGHT + 2 * KERF_WEIGHT;

/** Parts of the work, each with its weight, told as a share of the whole. */
function shareOfWork(onProgress: (share: number) => void) {
  let before = 0;
  return {
    /** How far the part in hand is. */
    within: (weight: number) => (progress: Progress) =>
      onProgress((before + (weight * progress.done) / progress.total) / WHOLE_WEIGHT),
    finished: (weight: number) => {
      before += weight;
      onProgress(before / WHOLE_WEIGHT);
    },
  };
}

/**
 * @param shouldStop asked between steps; when it says so the answer is null.
 * @param onProgress told the share of the work that is done, 0 to 1, never falling.
 * @throws {RangeError} for a goal that cannot be meant.
 */
export async function answerWanted(
  predictor: Predictor,
  estimator: Estimator,
  build: Build,
  goal: ReliefGoal,
  options: EstimateOptions = {},
  shouldStop: () => boolean = () => false,
  onProgress: (share: number) => void = () => undefined,
): Promise<WantedAnswer | null> {
  checkGoal(goal);
  const work = shareOfWork(onProgress);
  const estimate = async (of: Build) => {
    const found = await estimator.estimate(of, options, shouldStop, undefined, work.within(BAND_WEIGHT));
    work.finished(BAND_WEIGHT);
    return found;
  };
  const prediction = predictor.predict(build);
  const moment = goalMoment(goal, prediction.time);
  const uncertainty = await estimate(build);
  if (!uncertainty) return null;

  const asItIs = sampleExtremes(uncertainty, build.method, moment);
  const compared = (samples: Float64Array): Compared => ({
    paired: paired(asItIs, samples, goal.reliefMm),
    // The band puts the samples in another order.
    bandMm: bandOf(samples.slice()),
  });
  const range = kerfRange(build);
  const solved: Partial<Record<'press' | 'both', KerfAnswer & Compared>> = {};
  for (const method of ['press', 'both'] as const) {
    if (range.leastMm > range.mostMm) break;
    const answer = solveKerf(predictor, build, goal, method);
    work.finished(KERF_WEIGHT);
    const kerfMm = sawableKerfMm(answer.kerfMm);
    const there =
      answer.status === 'no-effect' || kerfMm === build.kerfMm ? uncertainty : await estimate({ ...build, kerfMm });
    if (!there) return null;
    solved[method] = { ...answer, ...compared(sampleExtremes(there, method, moment)) };
  }

  onProgress(1);
  const rod = solveRod(prediction, build.method, goal);
  const planing = planPlaning(prediction, build.method, goal);
  return {
    goal,
    reliefMm: reliefAtGoal(prediction, build.method, goal),
    bandMm: bandOf(asItIs.slice()),
    kerf: solved.press && solved.both ? { press: solved.press, both: solved.both } : null,
    kerfRange: range,
    methods: rankMethods(prediction, goal).map((answer) => ({
      ...answer,
      ...compared(sampleExtremes(uncertainty, answer.method, moment)),
    })),
    rod: {
      ...rod,
      ...compared(sampleExtremes(uncertainty, build.method, { ...moment, rodPercent: rod.percent })),
    },
    planing: { ...planing, ...compared(planedSamples(uncertainty, prediction, build.method, moment, planing)) },
  };
}
