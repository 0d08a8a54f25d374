/** What a worker answers about everything that was measured for a neck: what each of it leaves of the neck's bands. */
import type { Build } from '../../neck/build.ts';
import { NO_EVIDENCE, type Evidence } from '../../mechanics/neck-readings/evidence.ts';
import {
  hear,
  hearingSteps,
  isSilent,
  narrowedBy,
  ownNeck,
  type TakenGrip,
} from '../../mechanics/neck-readings/heard.ts';
import type { OwnNeck } from '../../mechanics/neck-readings/likelihood.ts';
import { READING_KINDS, type ReadingKind } from '../../mechanics/neck-readings/readings.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import { nextTask, runSteps } from '../../mechanics/steps.ts';
import { asUnmeasured, type GripPosterior } from '../../mechanics/try-strip/grip-posterior.ts';
import { sampleExtremes } from '../../mechanics/uncertainty/band-at.ts';
import { bandOf, type Band } from '../../mechanics/uncertainty/band.ts';
import {
  STANDARD_SAMPLES,
  STANDARD_SEED,
  type EstimateOptions,
  type Estimator,
  type Progress,
} from '../../mechanics/uncertainty/estimate.ts';
import type { ResponseModel } from '../../mechanics/uncertainty/model.ts';
import { withQuarters } from '../../mechanics/uncertainty/quarters.ts';
import { drawSamples } from '../../mechanics/uncertainty/sampling.ts';
import type { BAND_STATES } from './states.ts';

type StateBands = Readonly<Record<(typeof BAND_STATES)[number], Band>>;

export interface NeckBands {
  readonly posterior: Omit<GripPosterior, 'deviates' | 'quarters'>;
  /** What the build would take over. */
  readonly taken: TakenGrip;
  readonly before: StateBands;
  /** What was read on the neck. */
  readonly kinds: readonly ReadingKind[];
  /** What each kind of reading on the neck would leave by itself, where there are several. */
  readonly each: readonly { readonly kind: ReadingKind; readonly bands: StateBands }[];
  /** With the grip taken over: the bands of the page then. */
  readonly after: StateBands;
}

/** The bands of a neck that is solved, with what is known of it. */
function bandsOf(model: ResponseModel, method: Method, { grip, quarters }: EstimateOptions = {}): StateBands {
  const draws = withQuarters(drawSamples(model, STANDARD_SEED, STANDARD_SAMPLES, grip), quarters);
  const at = (strung: boolean, days: number) => bandOf(sampleExtremes(draws, method, { strung, days, rodPercent: 0 }));
  return { fretted: at(false, 0), strung: at(true, 0), settled: at(true, model.time.settleDays) };
}

/** The kinds of readings of a neck. */
function kindsIn(own: OwnNeck | undefined): ReadingKind[] {
  const kinds = new Set(own?.read.flatMap(({ readings }) => readings.map(({ kind }) => kind)));
  return READING_KINDS.filter((kind) => kinds.has(kind));
}

/** Null when something newer came, or where nothing speaks. */
export async function neckBands(
  estimator: Estimator,
  build: Build,
  evidence: Evidence,
  isStale: () => boolean,
  told: (share: number) => void = () => undefined,
): Promise<NeckBands | null> {
  if (isSilent(evidence, build)) return null;
  const { method } = build;
  const unmeasured = asUnmeasured(build, evidence.strips);
  const tellOf =
    (from: number, part: number) =>
    ({ done, total }: Progress) =>
      told(from + (part * done) / total);
  const solved = await runSteps(estimator.drawing(unmeasured), isStale, tellOf(0, 0.4));
  if (!solved) return null;
  const { model } = solved.value;
  const own = ownNeck(build, evidence, model);
  const before = bandsOf(model, method);
  const kinds = kindsIn(own);
  const each: { kind: ReadingKind; bands: StateBands }[] = [];
  for (const kind of kinds.length > 1 ? kinds : []) {
    await nextTask();
    if (isStale()) return null;
    const alone = { ...NO_EVIDENCE, own: evidence.own };
    const heard = hear(unmeasured, alone, ownNeck(unmeasured, alone, model, [kind]));
    each.push({ kind, bands: bandsOf(model, method, narrowedBy(heard)) });
  }
  await nextTask();
  const heard = hear(unmeasured, evidence, own);
  const taken: Build = { ...build, ...heard.taken };
  const narrowed = narrowedBy(hear(taken, evidence, own));
  const after = await estimator.estimate(taken, narrowed, isStale, nextTask, tellOf(0.6, 0.4));
  if (!after) return null;
  const { fretted, strung, settled } = after.methods[method];
  const { deviates: _deviates, quarters: _quarters, ...posterior } = heard.posterior;
  return { posterior, taken: heard.taken, before, kinds, each, after: { fretted, strung, settled } };
}

let kept: { readonly key: string; readonly options: EstimateOptions } | undefined;

/** What everything that was measured leaves of a build's inputs; the last is kept. Null when something newer came. */
export async function heardOptions(
  estimator: Estimator,
  build: Build,
  evidence: Evidence,
  isStale: () => boolean,
): Promise<EstimateOptions | null> {
  if (isSilent(evidence, build)) return {};
  const key = JSON.stringify([build, evidence]);
  if (kept?.key === key) return kept.options;
  const heard = await runSteps(hearingSteps(estimator, build, evidence), isStale);
  if (!heard) return null;
  const options = narrowedBy(heard.value);
  kept = { key, options };
  return options;
}
