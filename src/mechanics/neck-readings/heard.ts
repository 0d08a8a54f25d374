/**
 * What everything that was measured leaves of a neck: strips, other necks of the bench log, and what was read on the neck
 * itself, heard together (try-strip/grip-posterior.ts).
 *
 *   taken over     bite factor c = median to a hundredth; shape m = median to a hundredth where a strip of the neck's own wire
 *                  tells of it, else as it is
 *
 * The deviates are told from what the build states, so that hearing the same again after taking over gives the same truths.
 */
import type { Build } from '../../neck/build.ts';
import { informs } from '../bench-log/likelihood.ts';
import { asUnmeasured, gripPosterior, type GripPosterior } from '../try-strip/grip-posterior.ts';
import { wireDifferences } from '../try-strip/places.ts';
import type { EstimateOptions, Estimator, Progress } from '../uncertainty/estimate.ts';
import type { ResponseModel } from '../uncertainty/model.ts';
import type { Evidence } from './evidence.ts';
import type { OwnNeck } from './likelihood.ts';
import { READING_KINDS, readingsOf, type ReadingKind } from './readings.ts';

/** The part of a build that measurements give. */
export type TakenGrip = Pick<Build, 'biteFactor' | 'studShape'>;

export interface Heard {
  readonly posterior: GripPosterior;
  readonly taken: TakenGrip;
}

/** Has everything in it nothing to say? */
export function isSilent({ strips, entries, own }: Evidence, build: Pick<Build, 'fretCount'>): boolean {
  return (
    strips.length === 0 &&
    !entries.some(informs) &&
    own.every((entry) => readingsOf(entry, build).readings.length === 0)
  );
}

/** Two digits: what a build is given. */
const toHundredth = (value: number) => Math.round(value * 100) / 100;

export function takenFrom(build: Build, { strips }: Evidence, { bite, studShape }: GripPosterior): TakenGrip {
  const isOwnWire = strips.some(({ strip }) => wireDifferences(strip.wire, build).length === 0);
  return {
    biteFactor: toHundredth(bite.p50),
    studShape: isOwnWire ? toHundredth(studShape.p50) : build.studShape,
  };
}

/** @param model of the neck with an unmeasured grip (`asUnmeasured`) @returns undefined where nothing was read on it */
export function ownNeck(
  build: Build,
  { strips, own }: Evidence,
  model: ResponseModel,
  kinds: readonly ReadingKind[] = READING_KINDS,
): OwnNeck | undefined {
  const read = own.map((entry) => readingsOf(entry, build, kinds)).filter(({ readings }) => readings.length > 0);
  return read.length === 0 ? undefined : { build: asUnmeasured(build, strips), model, read };
}

/** @param own from `ownNeck` */
export function hear(build: Build, evidence: Evidence, own: OwnNeck | undefined, options: EstimateOptions = {}): Heard {
  const { seed, samples } = options;
  const posterior = gripPosterior(build, evidence.strips, evidence.entries, {
    ...(seed === undefined ? {} : { seed }),
    ...(samples === undefined ? {} : { samples }),
    own,
  });
  return { posterior, taken: takenFrom(build, evidence, posterior) };
}

/** The same from the evidence alone: the neck is solved first where something was read on it. */
export function* hearingSteps(
  estimator: Pick<Estimator, 'drawing'>,
  build: Build,
  evidence: Evidence,
): Generator<Progress, Heard> {
  if (evidence.own.length === 0) return hear(build, evidence, undefined);
  const { model } = yield* estimator.drawing(asUnmeasured(build, evidence.strips));
  return hear(build, evidence, ownNeck(build, evidence, model));
}

/** What the band of a build is made with when so much was heard. */
export function narrowedBy({ posterior: { deviates, quarters } }: Heard): EstimateOptions {
  return { grip: deviates, quarters };
}
