/** What a worker answers about try strips: before one is sawn, about its readings, and what they leave of a neck's bands. */
import type { Build } from '../../neck/build.ts';
import { createPredictor, type Predictor } from '../../mechanics/predict.ts';
import { designSteps, type StripDesign, type StripPlan } from '../../mechanics/try-strip/design.ts';
import type { StripContent } from '../../mechanics/try-strip/document.ts';
import { gripPosterior, type GripPosterior } from '../../mechanics/try-strip/grip-posterior.ts';
import type { StripEvidence } from '../../mechanics/try-strip/places.ts';
import { stripQuestions, type StripQuestion } from '../../mechanics/try-strip/predicted.ts';
import { stripModel } from '../../mechanics/try-strip/strip-model.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import type { Estimator } from '../../mechanics/uncertainty/estimate.ts';
import { spreadsOf } from '../../mechanics/uncertainty/inputs.ts';
import { MODEL_STEPS, modelSteps } from '../../mechanics/uncertainty/model.ts';
import type { BAND_STATES } from './states.ts';

export type StateBands = Readonly<Record<(typeof BAND_STATES)[number], Band>>;

export interface StripBands {
  readonly posterior: Omit<GripPosterior, 'deviates'>;
  /** Undefined for a glue fit, which does not bite. */
  readonly bands: { readonly without: StateBands; readonly with: StateBands } | undefined;
}

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

/** The bands of the build with the bite as nobody has measured it, and with what the strips say. */
export async function stripBands(
  estimator: Estimator,
  build: Build,
  strips: readonly StripEvidence[],
  isStale: () => boolean,
  told: (share: number) => void = () => undefined,
): Promise<StripBands | null> {
  const neck: Build = { ...build, biteFactor: 1 };
  const { deviates, ...posterior } = gripPosterior(neck, strips);
  told(0.1);
  if (build.method === 'glue') return { posterior, bands: undefined };
  const bandsOf = async (from: number, grip?: typeof deviates): Promise<StateBands | undefined> => {
    const progress = ({ done, total }: { done: number; total: number }) => told(from + (0.45 * done) / total);
    const found = await estimator.estimate(neck, grip ? { grip } : {}, isStale, breathe, progress);
    return found?.methods[build.method];
  };
  const without = await bandsOf(0.1);
  const narrowed = without && (await bandsOf(0.55, deviates));
  if (!without || !narrowed) return null;
  const only = ({ fretted, strung, settled }: StateBands): StateBands => ({ fretted, strung, settled });
  return { posterior, bands: { without: only(without), with: only(narrowed) } };
}
