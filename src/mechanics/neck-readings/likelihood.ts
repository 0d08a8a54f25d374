/**
 * How likely what was read on a neck is with the deviates of many samples.
 *
 *   y = μ_i·(1 + e) + g          μ_i what sample i would show (expected.ts); g ~ N(0, σ²) of the instrument
 *   e    bow 3 %, strings √(3² + 4²) %, rod √(3² + 15²) %          spreads.ts; anew for each reading
 *
 * A bow on a neck whose bow before the frets was measured has the error of that gauge as well.
 */
import { INPUTS, GAUGE_ERROR_MM } from '../uncertainty/inputs.ts';
import type { ResponseModel } from '../uncertainty/model.ts';
import { withQuarters } from '../uncertainty/quarters.ts';
import { factorsOf, type Draws } from '../uncertainty/sampling.ts';
import type { Build } from '../../neck/build.ts';
import type { Places } from '../try-strip/places.ts';
import { expectedMm, nutTurnsOf } from './expected.ts';
import type { NeckReading, ReadNeck } from './readings.ts';
import { modelErrorOf, QUARTER_LOG_SPREAD } from './spreads.ts';

/** What one neck's own readings are heard with. */
export interface OwnNeck {
  readonly build: Build;
  /** Of the build with an unmeasured bite. */
  readonly model: ResponseModel;
  readonly read: readonly ReadNeck[];
}

/** The samples of the neck at some rows of the vector. */
export function drawsAt({ model }: OwnNeck, places: Places, deviates: Float64Array, samples: number): Draws {
  const rows = new Float64Array(INPUTS.length * samples);
  INPUTS.forEach(({ id }, row) => {
    const place = places.neck[id]!;
    rows.set(deviates.subarray(place * samples, (place + 1) * samples), row * samples);
  });
  const { quarters } = places;
  const draws = factorsOf(model, rows);
  return withQuarters(draws, quarters && { frets: quarters.frets, logs: quarterLogs(places, deviates, samples) });
}

/** a_q of every sample. */
export function quarterLogs({ quarters }: Places, deviates: Float64Array, samples: number): Float64Array[] {
  return (quarters?.places ?? []).map((place) =>
    deviates.subarray(place * samples, (place + 1) * samples).map((z) => QUARTER_LOG_SPREAD * z),
  );
}

/** One standard deviation of a reading where so much is expected, mm. */
export function sigmaMm(neck: OwnNeck, reading: NeckReading, expected: number): number {
  const isBow = reading.kind !== 'pull' && reading.kind !== 'rod';
  const before = isBow && neck.build.job === 'refret' ? GAUGE_ERROR_MM : 0;
  return Math.hypot(reading.errorMm, before, modelErrorOf(reading.kind) * expected);
}

/** Calls back with what each reading would be of every sample. */
export function eachReading(
  neck: OwnNeck,
  draws: Draws,
  visit: (reading: NeckReading, expected: Float64Array) => void,
): void {
  for (const { method, readings } of neck.read) {
    const nut = nutTurnsOf(neck.build, neck.model, method);
    for (const reading of readings) visit(reading, expectedMm(draws, method, nut, reading));
  }
}

/** Adds ln of the likelihood of every sample to `logs`, without constants. */
export function addNeck(
  neck: OwnNeck,
  places: Places,
  deviates: Float64Array,
  samples: number,
  logs: Float64Array,
): void {
  eachReading(neck, drawsAt(neck, places, deviates, samples), (reading, expected) => {
    for (let i = 0; i < samples; i += 1) {
      const sigma = sigmaMm(neck, reading, expected[i]);
      logs[i] -= ((reading.measuredMm - expected[i]) / sigma) ** 2 / 2 + Math.log(sigma);
    }
  });
}
