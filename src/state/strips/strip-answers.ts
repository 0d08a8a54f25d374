/** What a worker answers about try strips: before one is sawn, and about its readings. */
import type { Build } from '../../neck/build.ts';
import { createPredictor, type Predictor } from '../../mechanics/predict.ts';
import { designSteps, type StripDesign, type StripPlan } from '../../mechanics/try-strip/design.ts';
import type { StripContent } from '../../mechanics/try-strip/document.ts';
import { stripQuestions, type StripQuestion } from '../../mechanics/try-strip/predicted.ts';
import { runSteps } from '../../mechanics/steps.ts';
import { stripModel } from '../../mechanics/try-strip/strip-model.ts';
import { spreadsOf } from '../../mechanics/uncertainty/inputs.ts';
import { MODEL_STEPS, modelSteps } from '../../mechanics/uncertainty/model.ts';

export async function stripAhead(
  predictor: Predictor,
  build: Build,
  plan: StripPlan,
  isStale: () => boolean,
  told: (share: number) => void = () => undefined,
): Promise<StripDesign | null> {
  const solving = modelSteps(build, spreadsOf(build), predictor, createPredictor());
  let steps = 0;
  const solved = await runSteps(solving, isStale, () => told((steps += 1) / (2 * MODEL_STEPS)));
  if (!solved) return null;
  const method = build.method === 'glue' ? 'press' : build.method;
  const designing = designSteps(build, solved.value, plan, method);
  const designed = await runSteps(designing, isStale, ({ done, total }) => told(0.5 + done / (2 * total)));
  return designed && designed.value;
}

export function stripAsked(build: Build, strip: StripContent, ownBoard: boolean): StripQuestion[] {
  return stripQuestions(stripModel(strip, build, ownBoard));
}
