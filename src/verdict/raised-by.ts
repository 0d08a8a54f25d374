/** Advice passes the checks: what a recommendation would newly raise, before it is offered. */
import type { Check, Severity } from '../fretwork/checks/check-types.ts';
import { sawableKerfMm, type WantedAnswer } from '../mechanics/inversion/answers.ts';
import type { Predictor } from '../mechanics/predict.ts';
import { METHODS, type Method } from '../mechanics/prediction-types.ts';
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

/** `raisedBy` of a change that has to be predicted first; nothing of one that cannot exist, which is refused anyway. */
function raisedByChange(predictor: Pick<Predictor, 'predict'>, now: Reckoned, change: Partial<Build>): Check[] {
  const build = { ...now.build, ...change };
  return checkBuild(build).ok ? raisedBy(now, { build, prediction: predictor.predict(build) }) : [];
}

/** What seating the same neck in another way would raise: its prediction holds for all of them. */
export function raisedByMethod({ build, prediction }: Reckoned, method: Method): Check[] {
  return raisedBy({ build, prediction }, { build: { ...build, method }, prediction });
}

/** Every way to a wanted relief with what it would raise. */
export interface AdvisedAnswer extends WantedAnswer {
  readonly raised: {
    /** By the kerf that is offered; empty where none is. */
    readonly kerf: Readonly<Record<'press' | 'both', readonly Check[]>>;
    readonly methods: Readonly<Record<Method, readonly Check[]>>;
    readonly rod: readonly Check[];
  };
}

/** @param answer to the build in hand */
export function advised(predictor: Pick<Predictor, 'predict'>, build: Build, answer: WantedAnswer): AdvisedAnswer {
  const now = { build, prediction: predictor.predict(build) };
  const ofKerf = (method: 'press' | 'both') => {
    const kerf = answer.kerf?.[method];
    if (!kerf || kerf.status === 'no-effect') return [];
    return raisedByChange(predictor, now, { method, kerfMm: sawableKerfMm(kerf.kerfMm) });
  };
  const ofMethod = METHODS.map((method) => [method, raisedByMethod(now, method)] as const);
  const set = { build: { ...build, rodSettingPercent: answer.rod.percent }, prediction: now.prediction };
  return {
    ...answer,
    raised: {
      kerf: { press: ofKerf('press'), both: ofKerf('both') },
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
  predictor: Pick<Predictor, 'predict'>,
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
