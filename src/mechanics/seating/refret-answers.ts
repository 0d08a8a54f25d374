/**
 * The best combinations of tangs for a refret (refret.ts) as plain data for the page: what each reaches, how sure that is, and
 * what it does to the slots. In steps between which it can be given up.
 */
import type { Build, FretRegion } from '../../neck/build.ts';
import { checkGoal, goalMoment, reliefAtGoal, type ReliefGoal } from '../inversion/goal.ts';
import type { Predictor } from '../predict.ts';
import type { Method } from '../prediction-types.ts';
import { chooseTangs, equalStretches, type Stretch, type TangChoice } from './refret.ts';
import { sampleExtremes } from '../uncertainty/band-at.ts';
import { bandOf, type Band } from '../uncertainty/band.ts';
import type { EstimateOptions, Estimator, Progress } from '../uncertainty/estimate.ts';

export interface TangWish {
  readonly method: Exclude<Method, 'glue'>;
  readonly goal: ReliefGoal;
  /** Number of stretches, nut to body. */
  readonly stretches: number;
  readonly choices: readonly TangChoice[];
}

/** What one stretch of a plan does to its slots. */
export interface StretchForces extends Stretch {
  readonly tang: TangChoice;
  readonly leastForceN: number;
  readonly mostForceN: number;
  /** Pressure on the walls over the board's crushing strength, the greatest of the stretch; 1 = the walls crush. */
  readonly wallPressureShare: number;
}

export interface TangPlanSummary {
  readonly regions: readonly FretRegion[];
  readonly stretches: readonly StretchForces[];
  readonly reliefMm: number;
  readonly bandMm: Band;
  /** Largest distance of the fret tops from the wanted line up to the body joint, mm. */
  readonly missMm: number;
}

export interface TangAnswer {
  /** Relief at the goal's moment with the tangs as they are, mm. */
  readonly reliefMm: number;
  readonly plans: readonly TangPlanSummary[];
}

/**
 * @param shouldStop asked between steps; when it says so the answer is null.
 * @param onProgress told the share of the bands that is done, 0 to 1, never falling.
 * @throws {RangeError} for a wish that cannot be meant (goal, stretches, tangs, too many combinations).
 */
export async function answerTangs(
  predictor: Predictor,
  estimator: Estimator,
  build: Build,
  wish: TangWish,
  options: EstimateOptions = {},
  shouldStop: () => boolean = () => false,
  onProgress: (share: number) => void = () => undefined,
): Promise<TangAnswer | null> {
  const { method, goal } = wish;
  checkGoal(goal);
  const asItIs = predictor.predict(build);
  const moment = goalMoment(goal, asItIs.time);
  const stretches = equalStretches(build.fretCount, wish.stretches);
  const found = chooseTangs(predictor, build, method, moment, goal.reliefMm, stretches, wish.choices);
  const plans: TangPlanSummary[] = [];
  for (const { tangs, regions, prediction, reliefMm, missMm } of found) {
    const within = ({ done, total }: Progress) => onProgress((plans.length + done / total) / found.length);
    const uncertainty = await estimator.estimate({ ...build, regions }, options, shouldStop, undefined, within);
    if (!uncertainty) return null;
    const { wedgeForceN, wallPressureShare } = prediction.methods[method];
    plans.push({
      regions,
      reliefMm,
      missMm,
      bandMm: bandOf(sampleExtremes(uncertainty, method, moment)),
      stretches: stretches.map(({ fromFret, toFret }, index) => {
        const forces = wedgeForceN.slice(fromFret - 1, toFret);
        return {
          fromFret,
          toFret,
          tang: tangs[index],
          leastForceN: Math.min(...forces),
          mostForceN: Math.max(...forces),
          wallPressureShare: Math.max(...wallPressureShare.slice(fromFret - 1, toFret)),
        };
      }),
    });
  }
  return { reliefMm: reliefAtGoal(asItIs, method, goal), plans };
}
