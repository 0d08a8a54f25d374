/**
 * Is a reading far from what everything before it lets expect, and what would it mean? It is asked about before it counts, never
 * refused: it may be right.
 *
 *   far       outside what holds 99 of 100 such necks, widened by twice the instrument's error
 *   meaning   how many times as hard as expected the studs would have to bite, to the bow of the bare board
 */
import type { Evidence } from '../neck-readings/evidence.ts';
import { extremeRelief } from '../relief.ts';
import { asUnmeasured, gripPosterior } from '../try-strip/grip-posterior.ts';
import { informs } from '../bench-log/likelihood.ts';
import { sampleExtremes } from '../uncertainty/band-at.ts';
import { bandOf, type Band } from '../uncertainty/band.ts';
import type { Estimator } from '../uncertainty/estimate.ts';
import type { ResponseModel } from '../uncertainty/model.ts';
import { drawSamples } from '../uncertainty/sampling.ts';
import { withQuarters } from '../uncertainty/quarters.ts';
import type { FrettingJob } from './advice.ts';
import { ownInJob } from './heard-in-job.ts';
import { splitAt, type BowReading } from './job.ts';

export interface FrettingQuestion {
  readonly measuredMm: number;
  readonly expectedMm: Band;
  /** Null where no bite of the studs leads there. */
  readonly biteTimes: number | null;
}

const TAIL = 0.005;
const ERRORS = 2;
const SAMPLES = 1000;
const SEED = 1;

const quantile = (sorted: Float64Array, share: number): number => sorted[Math.round(share * (sorted.length - 1))];

/** @returns null where there is nothing to ask */
export function* questionSteps(
  estimator: Pick<Estimator, 'drawing'>,
  { build, readings, evidence }: Pick<FrettingJob, 'build' | 'readings' | 'evidence'>,
  reading: BowReading,
): Generator<unknown, FrettingQuestion | null> {
  const { model } = yield* estimator.drawing(asUnmeasured(build, evidence.strips));
  const earlier = readings.filter(({ seated }) => seated > 0 && seated < reading.seated);
  const known = hearing(build, evidence, earlier, model);
  yield;
  const draws = withQuarters(drawSamples(model, SEED, SAMPLES, known?.deviates), known?.quarters);
  const { seated: fretsIn } = splitAt(build, reading.seated);
  const expected = sampleExtremes(draws, build.method, { strung: false, days: 0, rodPercent: 0, fretsIn });
  const sorted = expected.toSorted();
  const room = ERRORS * reading.errorMm;
  const [low, high] = [quantile(sorted, TAIL) - room, quantile(sorted, 1 - TAIL) + room];
  if (reading.measuredMm >= low && reading.measuredMm <= high) return null;
  const expectedMm = bandOf(expected);
  const bare = bareBowMm(model);
  const times = (reading.measuredMm - bare) / (expectedMm.p50 - bare);
  return { measuredMm: reading.measuredMm, expectedMm, biteTimes: Number.isFinite(times) && times > 0 ? times : null };
}

function hearing(
  build: FrettingJob['build'],
  evidence: Evidence,
  readings: readonly BowReading[],
  model: ResponseModel,
) {
  const { strips, entries } = evidence;
  const own = ownInJob(build, evidence, readings, model);
  const isSilent = own === undefined && strips.length === 0 && !entries.some(informs);
  if (isSilent) return undefined;
  return gripPosterior(asUnmeasured(build, strips), strips, entries, { seed: SEED, samples: SAMPLES, own });
}

/** Relief of greatest size under the straightedge before any fret is in, mm. */
function bareBowMm({ xMm, startingMm, spanFrom, spanTo }: ResponseModel): number {
  return extremeRelief(xMm, startingMm, xMm[spanFrom], xMm[spanTo]).extremeMm;
}
