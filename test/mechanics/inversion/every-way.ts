/** Every way to a wanted relief at once, for one build: what tests and the bench ask for. */
import type { Build } from '../../../src/neck/build.ts';
import type { Predictor } from '../../../src/mechanics/predict.ts';
import { checkGoal, goalOf, type ReliefGoal } from '../../../src/mechanics/inversion/goal.ts';
import { solveKerf, type KerfAnswer } from '../../../src/mechanics/inversion/kerf.ts';
import { rankMethods, type MethodAnswer } from '../../../src/mechanics/inversion/methods.ts';
import { planPlaning, type PlaningPlan } from '../../../src/mechanics/inversion/planing.ts';
import { solveRod, type RodAnswer } from '../../../src/mechanics/inversion/rod.ts';

export interface TargetAnswer {
  readonly goal: ReliefGoal;
  /** Relief at the goal's moment as the build is, mm. */
  readonly reliefMm: number;
  /** The kerf for a press fit, and for press and glue. */
  readonly kerf: { readonly press: KerfAnswer; readonly both: KerfAnswer };
  /** All methods as the build is, the closest first. */
  readonly methods: readonly MethodAnswer[];
  /** For the build's own method. */
  readonly rod: RodAnswer;
  readonly planing: PlaningPlan;
}

/** @throws {RangeError} for a goal that cannot be meant, or wire that no kerf fits. */
export function solveTarget(predictor: Predictor, build: Build, goal: ReliefGoal = goalOf(build)): TargetAnswer {
  checkGoal(goal);
  const prediction = predictor.predict(build);
  const methods = rankMethods(prediction, goal);
  const own = methods.find(({ method }) => method === build.method)!;
  return {
    goal,
    reliefMm: own.reliefMm,
    kerf: {
      press: solveKerf(predictor, build, goal, 'press'),
      both: solveKerf(predictor, build, goal, 'both'),
    },
    methods,
    rod: solveRod(prediction, build.method, goal),
    planing: planPlaning(prediction, build.method, goal),
  };
}
