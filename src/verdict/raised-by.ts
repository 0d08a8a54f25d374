/** Advice passes the checks: what a recommendation would newly raise, before it is offered. */
import type { Check, Severity } from '../fretwork/checks/check-types.ts';
import { sawableKerfMm, type Banded, type WantedAnswer } from '../mechanics/inversion/answers.ts';
import { goalMoment, reliefAtGoal } from '../mechanics/inversion/goal.ts';
import type { Predictor } from '../mechanics/predict.ts';
import { METHODS, type Method } from '../mechanics/prediction-types.ts';
import { sampleExtremes } from '../mechanics/uncertainty/band-at.ts';
import { bandOf } from '../mechanics/uncertainty/band.ts';
import type { EstimateOptions, Estimator } from '../mechanics/uncertainty/estimate.ts';
import type { TangAnswer, TangPlanSummary, TangWish } from '../mechanics/seating/refret-answers.ts';
import type { Build } from '../neck/build.ts';
import { checkBuild } from '../neck/schema.ts';
import { checksOf } from './checks.ts';
import type { Reckoned } from './reckoned.ts';

const RANK: Readonly<Record<Severity, number>> = { stop: 0, warn: 1, note: 2 };

/** The same finding, no worse, at the same frets or at all of them. */
function covers(before: Check, { code, variant, severity, frets }: Check): boolean {
  if (before.code !== code || before.variant !== variant || RANK[before.severity] > RANK[severity]) return false;
  if (before.frets.length === 0) return true;
  return frets.length > 0 && frets.every((fret) => before.frets.includes(fret));
}

/** Checks of the changed neck that the neck as it is does not have, or not as severely; worst first. */
export function raisedBy(now: Reckoned, changed: Reckoned): Check[] {
  const before = checksOf(now);
  return checksOf(changed).filter((check) => !before.some((one) => covers(one, check)));
}

type Predicts = Pick<Predictor, 'predict'>;

/** The neck with a change, predicted; undefined where it cannot exist. */
function changedNeck(predictor: Predicts, now: Reckoned, change: Partial<Build>): Reckoned | undefined {
  const build = { ...now.build, ...change };
  return checkBuild(build).ok ? { build, prediction: predictor.predict(build) } : undefined;
}

/** `raisedBy` of a change that has to be predicted first; nothing of one that cannot exist, which is refused anyway. */
export function raisedByChange(predictor: Predicts, now: Reckoned, change: Partial<Build>): Check[] {
  const changed = changedNeck(predictor, now, change);
  return changed ? raisedBy(now, changed) : [];
}

/** Is it offered to be taken? What the checks stop is told, with why, and left to the maker's own hand. */
export function isOffered(raised: readonly Check[]): boolean {
  return raised.every(({ severity }) => severity !== 'stop');
}

/** What seating the same neck in another way would raise: its prediction holds for all of them. */
export function raisedByMethod({ build, prediction }: Reckoned, method: Method): Check[] {
  return raisedBy({ build, prediction }, { build: { ...build, method }, prediction });
}

/** A kerf beside the one that is offered. */
export interface ClearKerf extends Banded {
  readonly kerfMm: number;
  /** Relief with it at the goal's moment, and relief − target, mm. */
  readonly reliefMm: number;
  readonly missMm: number;
}

/** What the kerf that is offered would raise, and the nearest one that raises nothing to heed. */
export interface KerfAdvice {
  /** Empty where no kerf is offered. */
  readonly raised: readonly Check[];
  /** Null where the kerf that is offered raises no stop and no warning, or every kerf of the range does. */
  readonly clear: ClearKerf | null;
}

/** Every way to a wanted relief with what it would raise. */
export interface AdvisedAnswer extends WantedAnswer {
  readonly advice: {
    readonly kerf: Readonly<Record<PressedMethod, KerfAdvice>>;
    readonly methods: Readonly<Record<Method, readonly Check[]>>;
    readonly rod: readonly Check[];
  };
}

type PressedMethod = Exclude<Method, 'glue'>;

/** Kerfs beside the one that is offered are tried in steps of this, mm: finer than saw blades come. */
const KERF_STEP_MM = 0.005;
const UNHEEDED = (checks: readonly Check[]): boolean => checks.every(({ severity }) => severity === 'note');

/**
 * The kerf on either side of the offered one, within the range of the wire, that is nearest to it and raises no stop and no
 * warning; of the two the one with the smaller miss, as the relief never falls with the kerf.
 */
function clearKerf(
  predictor: Predicts,
  now: Reckoned,
  { goal, kerfRange: { leastMm, mostMm } }: Pick<WantedAnswer, 'goal' | 'kerfRange'>,
  method: PressedMethod,
  offeredMm: number,
): Omit<ClearKerf, 'bandMm'> | null {
  const onSide = (stepMm: number) => {
    for (let steps = 1; ; steps += 1) {
      const kerfMm = sawableKerfMm(offeredMm + steps * stepMm);
      if (kerfMm < leastMm || kerfMm > mostMm) return [];
      const changed = changedNeck(predictor, now, { method, kerfMm });
      if (!changed || !UNHEEDED(raisedBy(now, changed))) continue;
      const reliefMm = reliefAtGoal(changed.prediction, method, goal);
      return [{ kerfMm, reliefMm, missMm: reliefMm - goal.reliefMm }];
    }
  };
  const found = [...onSide(-KERF_STEP_MM), ...onSide(KERF_STEP_MM)];
  return found.toSorted((a, b) => Math.abs(a.missMm) - Math.abs(b.missMm))[0] ?? null;
}

/**
 * An answer with what each of its ways would raise among the checks.
 *
 * @param answer to the build in hand
 * @param shouldStop asked between steps; when it says so the result is null
 */
export async function advised(
  predictor: Predicts,
  estimator: Estimator,
  build: Build,
  answer: WantedAnswer,
  options: EstimateOptions = {},
  shouldStop: () => boolean = () => false,
): Promise<AdvisedAnswer | null> {
  const now = { build, prediction: predictor.predict(build) };
  const moment = goalMoment(answer.goal, now.prediction.time);
  const kerf: Partial<Record<PressedMethod, KerfAdvice>> = {};
  for (const method of ['press', 'both'] as const) {
    const offered = answer.kerf?.[method];
    kerf[method] = { raised: [], clear: null };
    if (!offered || offered.status === 'no-effect') continue;
    const kerfMm = sawableKerfMm(offered.kerfMm);
    const raised = raisedByChange(predictor, now, { method, kerfMm });
    const clear = UNHEEDED(raised) ? null : clearKerf(predictor, now, answer, method, kerfMm);
    kerf[method] = { raised, clear: null };
    if (!clear) continue;
    const uncertainty = await estimator.estimate({ ...build, method, kerfMm: clear.kerfMm }, options, shouldStop);
    if (!uncertainty) return null;
    kerf[method] = { raised, clear: { ...clear, bandMm: bandOf(sampleExtremes(uncertainty, method, moment)) } };
  }
  const ofMethod = METHODS.map((method) => [method, raisedByMethod(now, method)] as const);
  const set = { build: { ...build, rodSettingPercent: answer.rod.percent }, prediction: now.prediction };
  return {
    ...answer,
    advice: {
      kerf: kerf as Record<PressedMethod, KerfAdvice>,
      methods: Object.fromEntries(ofMethod) as Record<Method, Check[]>,
      rod: raisedBy(now, set),
    },
  };
}

/** A combination of tangs with what it would raise. */
export interface AdvisedPlan extends TangPlanSummary {
  readonly raised: readonly Check[];
}

export interface AdvisedTangs extends TangAnswer {
  readonly plans: readonly AdvisedPlan[];
}

export function advisedTangs(
  predictor: Predicts,
  build: Build,
  { method }: Pick<TangWish, 'method'>,
  answer: TangAnswer,
): AdvisedTangs {
  const now = { build, prediction: predictor.predict(build) };
  const plans = answer.plans.map((plan) => ({
    ...plan,
    raised: raisedByChange(predictor, now, { method, regions: plan.regions }),
  }));
  return { ...answer, plans };
}
