/**
 * The least change with which a neck comes out as wanted after all: another blade, as near as may be to the one that it has;
 * else deeper or shallower slots; else another way of seating. Only what the checks let pass: with it nothing stops the neck,
 * and it raises no warning.
 */
import type { Predictor } from '../../mechanics/predict.ts';
import { kerfRange } from '../../mechanics/inversion/kerf.ts';
import { sawableKerfMm } from '../../mechanics/inversion/answers.ts';
import { METHODS } from '../../mechanics/prediction-types.ts';
import { nextTask } from '../../mechanics/steps.ts';
import type { Build } from '../../neck/build.ts';
import { checkBuild } from '../../neck/schema.ts';
import { raisedBy } from '../raised-by.ts';
import type { Reckoned } from '../reckoned.ts';
import { verdictOf } from './verdict.ts';

export type LeastChange =
  | { readonly kind: 'value'; readonly parameter: 'kerfMm' | 'slotDepthMm'; readonly from: number; readonly to: number }
  | { readonly kind: 'method'; readonly method: Build['method'] };

/** Steps in which blades are looked through, mm: as fine as a blade's kerf is known (common practice, no source). */
const KERF_STEP_MM = 0.01;
const DEPTH_STEP_MM = 0.1;
const MOST_DEEPER_MM = 1;

/** Values to both sides of one, the nearest first. */
function around(from: number, step: number, least: number, most: number): number[] {
  const values: number[] = [];
  for (let away = step; from - away >= least - 1e-9 || from + away <= most + 1e-9; away += step)
    values.push(...[from - away, from + away].filter((value) => value >= least - 1e-9 && value <= most + 1e-9));
  return values.map(sawableKerfMm);
}

/** What is tried, the least first. */
export function changesOf(build: Build): LeastChange[] {
  const { kerfMm, slotDepthMm, method } = build;
  const range = kerfRange(build);
  // The slots of an old neck have the kerf that they have.
  const blades =
    method === 'glue' || build.job === 'refret' ? [] : around(kerfMm, KERF_STEP_MM, range.leastMm, range.mostMm);
  const depths = around(slotDepthMm, DEPTH_STEP_MM, slotDepthMm - MOST_DEEPER_MM, slotDepthMm + MOST_DEEPER_MM);
  return [
    ...blades.map((to): LeastChange => ({ kind: 'value', parameter: 'kerfMm', from: kerfMm, to })),
    ...depths.map((to): LeastChange => ({ kind: 'value', parameter: 'slotDepthMm', from: slotDepthMm, to })),
    ...METHODS.filter((other) => other !== method).map((other): LeastChange => ({ kind: 'method', method: other })),
  ];
}

/** What a change makes of the build. */
export function changeOf(change: LeastChange): Partial<Build> {
  return change.kind === 'method' ? { method: change.method } : { [change.parameter]: change.to };
}

/** Does the neck come out as wanted with it, and does it raise nothing to heed? */
export function helps(predictor: Pick<Predictor, 'predict'>, now: Reckoned, change: LeastChange): boolean {
  const checked = checkBuild({ ...now.build, ...changeOf(change) });
  if (!checked.ok) return false;
  const changed = { build: checked.build, prediction: predictor.predict(checked.build) };
  return verdictOf(changed).obstacle === null && raisedBy(now, changed).every(({ severity }) => severity === 'note');
}

/** How it ended: with a change, with none that helps, or not at all, since something newer was asked. */
export type LeastChangeFound = { readonly change: LeastChange | null };

/** Steps without a pause for whatever else was asked meanwhile. */
const STEPS_AT_ONCE = 4;

/** @param shouldStop asked between steps; when it says so the result is null */
export async function leastChange(
  predictor: Pick<Predictor, 'predict'>,
  now: Reckoned,
  shouldStop: () => boolean = () => false,
): Promise<LeastChangeFound | null> {
  for (const [index, change] of changesOf(now.build).entries()) {
    if (index % STEPS_AT_ONCE === 0) {
      await nextTask();
      if (shouldStop()) return null;
    }
    if (helps(predictor, now, change)) return { change };
  }
  return { change: null };
}
