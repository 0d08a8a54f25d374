/** What a worker answers about try strips: before one is sawn, and about its readings. */
import type { Build } from '../../neck/build.ts';
import { createPredictor, type Predictor } from '../../mechanics/predict.ts';
import { designSteps, type StripDesign, type StripPlan } from '../../mechanics/try-strip/design.ts';
import type { StripContent } from '../../mechanics/try-strip/document.ts';
import { stripQuestions, type StripQuestion } from '../../mechanics/try-strip/predicted.ts';
import { stripModel } from '../../mechanics/try-strip/strip-model.ts';
import { spreadsOf } from '../../mechanics/uncertainty/inputs.ts';
import { MODEL_STEPS, modelSteps } from '../../mechanics/uncertainty/model.ts';

/** Messages to a worker arrive between tasks only. */
const breathe = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, 0);
  });

export async function stripAhead(
  predictor: Predictor,
  build: Build,
  plan: StripPlan,
  isStale: () => boolean,
  told: (share: number) => void = () => undefined,
): Promise<StripDesign | null> {
  const solving = modelSteps(build, spreadsOf(build), predictor, createPredictor());
  let steps = 0;
  let solved = solving.next();
  while (!solved.done) {
    steps += 1;
    told(steps / (2 * MODEL_STEPS));
    await breathe();
    if (isStale()) return null;
    solved = solving.next();
  }
  const method = build.method === 'glue' ? 'press' : build.method;
  const designing = designSteps(build, solved.value, plan, method);
  for (;;) {
    const step = designing.next();
    if (step.done) return step.value;
    told(0.5 + step.value.done / (2 * step.value.total));
    await breathe();
    if (isStale()) return null;
  }
}

export function stripAsked(build: Build, strip: StripContent, ownBoard: boolean): StripQuestion[] {
  return stripQuestions(stripModel(strip, build, ownBoard));
}
