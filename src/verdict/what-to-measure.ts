/**
 * What to measure next on this neck: everything that can still be measured, with the error that it leaves, the band of the
 * relief, strung and settled, before and after, and what that is for each minute at the bench.
 *
 * What is measured already is not in the list: a blank that was tapped or bent, the area of the studs where the bench log
 * tells bite and area together. Nothing is listed that would not narrow the band: the studs of a glue fit, say.
 *
 * Errors that are left, one standard deviation: common practice, no source; a tapped blank and feelers under a straightedge
 * as in uncertainty/inputs.ts. A lens tells a block from a ridge and a ridge from a point, and not much between them. Of a strip
 * 5 % of the force is left, as its readings are heard with (try-strip/spreads.ts); of dial and quarters what neck-readings/spreads.ts
 * says.
 */
import type { EstimateOptions, Estimator } from '../mechanics/uncertainty/estimate.ts';
import { GAUGE_ERROR_MM, logSpread, TAPPED_ERROR } from '../mechanics/uncertainty/inputs.ts';
import {
  shareLeft,
  widthKnowing,
  type Knowledge,
  type Left,
  type Reading,
} from '../mechanics/uncertainty/narrowing.ts';
import { fretsInAfterQuarters } from '../fretwork/plan/seating-order.ts';
import { modelErrorOf, QUARTER_LOG_SPREAD, USUAL_DIAL_ERROR_MM } from '../mechanics/neck-readings/spreads.ts';
import { nextTask, runSteps } from '../mechanics/steps.ts';
import { STRIP_MODEL_ERROR } from '../mechanics/try-strip/spreads.ts';
import { countedTest } from '../neck/blanks.ts';
import type { Build } from '../neck/build.ts';
import type { ParameterId } from '../neck/parameters.ts';
import type { QuantityKey } from '../neck/quantities.ts';

export const MEASUREMENT_IDS = [
  'studs',
  'kerf',
  'lens',
  'stud-area',
  'slot-depth',
  'board-blank',
  'neck-blank',
  'strip',
  'fretted',
  'quarters',
  'pull',
  'rod',
] as const;
export type MeasurementId = (typeof MEASUREMENT_IDS)[number];

/** Where it is entered: a control, the bench log, or the strip's own page. */
export type Place = { readonly control: ParameterId } | { readonly dialog: 'bench-log' | 'try-strip' };

interface Measurement {
  readonly place: Place;
  /** What is left as it is told, under the key that has its unit and digits. */
  readonly error: { readonly quantity: QuantityKey; readonly value: number };
  readonly left?: Left;
  readonly reading?: Reading;
  /** Of the neck at hand, where what is read depends on it. */
  readonly readings?: (build: Build) => readonly Reading[];
  readonly minutes: number;
}

const FRETTED = { strung: false, days: 0, rodPercent: 0 } as const;
const AREA_ERROR = 0.12;

/** After each quarter of the frets; a quarter's own grip is as good as an error of the reading. */
function quarterReadings(build: Build): readonly Reading[] {
  return fretsInAfterQuarters(build).map((fretsIn, quarter): Reading => {
    const error = Math.hypot(modelErrorOf('quarter'), QUARTER_LOG_SPREAD / Math.sqrt(quarter + 1));
    return { of: 'relief', moment: { ...FRETTED, fretsIn }, errorMm: GAUGE_ERROR_MM, error };
  });
}

export const MEASUREMENTS: Readonly<Record<MeasurementId, Measurement>> = {
  studs: {
    place: { control: 'studWidthMm' },
    error: { quantity: 'studWidthMm', value: 0.01 },
    left: { studWidthMm: 0.01 },
    minutes: 5,
  },
  kerf: {
    place: { control: 'kerfMm' },
    error: { quantity: 'kerfMm', value: 0.005 },
    left: { kerfMm: 0.005 },
    minutes: 10,
  },
  lens: {
    place: { control: 'studShape' },
    error: { quantity: 'studShape', value: 0.25 },
    left: { studShape: 0.25 },
    minutes: 5,
  },
  'stud-area': {
    place: { control: 'studAreaMm2' },
    error: { quantity: 'errorPercent', value: 100 * AREA_ERROR },
    left: { studArea: AREA_ERROR },
    minutes: 15,
  },
  'slot-depth': {
    place: { control: 'slotDepthMm' },
    error: { quantity: 'slotDepthMm', value: 0.03 },
    left: { slotDepthMm: 0.03 },
    minutes: 5,
  },
  'board-blank': {
    place: { control: 'boardBlankTest' },
    error: { quantity: 'errorPercent', value: 100 * TAPPED_ERROR },
    left: { boardModulus: logSpread(TAPPED_ERROR) },
    minutes: 15,
  },
  'neck-blank': {
    place: { control: 'neckBlankTest' },
    error: { quantity: 'errorPercent', value: 100 * TAPPED_ERROR },
    left: { neckModulus: logSpread(TAPPED_ERROR) },
    minutes: 15,
  },
  strip: {
    place: { dialog: 'try-strip' },
    error: { quantity: 'errorPercent', value: 100 * STRIP_MODEL_ERROR },
    reading: { of: 'force', error: STRIP_MODEL_ERROR },
    minutes: 120,
  },
  fretted: {
    place: { dialog: 'bench-log' },
    error: { quantity: 'reliefMeasuredMm', value: GAUGE_ERROR_MM },
    reading: { of: 'relief', moment: FRETTED, errorMm: GAUGE_ERROR_MM },
    minutes: 10,
  },
  quarters: {
    place: { dialog: 'bench-log' },
    error: { quantity: 'reliefMeasuredMm', value: GAUGE_ERROR_MM },
    readings: quarterReadings,
    minutes: 20,
  },
  pull: {
    place: { dialog: 'bench-log' },
    error: { quantity: 'reliefMeasuredMm', value: USUAL_DIAL_ERROR_MM },
    reading: { of: 'strings', errorMm: USUAL_DIAL_ERROR_MM, error: modelErrorOf('pull') },
    minutes: 15,
  },
  rod: {
    place: { dialog: 'bench-log' },
    error: { quantity: 'reliefMeasuredMm', value: USUAL_DIAL_ERROR_MM },
    reading: { of: 'rod', errorMm: USUAL_DIAL_ERROR_MM, error: modelErrorOf('rod') },
    minutes: 10,
  },
};

/** Minutes that each takes in a workshop; the standard is common practice, no source. */
export type Minutes = Readonly<Record<MeasurementId, number>>;

export const STANDARD_MINUTES = Object.fromEntries(
  MEASUREMENT_IDS.map((id) => [id, MEASUREMENTS[id].minutes]),
) as Minutes;

/** A minute at least, so that nothing is had for nothing; a week of eight-hour days at most. */
export const MINUTES_RANGE = { least: 1, most: 2400 } as const;

export interface Narrowing {
  readonly id: MeasurementId;
  /** Width of what holds 90 of 100 such necks, once it has been measured, and by how much that is less, mm. */
  readonly afterMm: number;
  readonly removedMm: number;
}

export interface WhatToMeasure {
  /** Width of the band as it is, with what is counted as done. */
  readonly beforeMm: number;
  /** In the order of `MEASUREMENT_IDS`. */
  readonly narrowings: readonly Narrowing[];
}

/** Less than this is noise of the samples, and nothing in the digits that are shown, mm. */
const LEAST_REMOVED_MM = 0.0005;

/** What can still be measured on such a neck, whether or not it tells anything. */
export function measurable(build: Build): readonly MeasurementId[] {
  const hasBlanks = build.job === 'new';
  return MEASUREMENT_IDS.filter((id) => {
    if (id === 'board-blank') return hasBlanks && countedTest(build, 'board') === 'none';
    if (id === 'neck-blank') return hasBlanks && countedTest(build, 'neck') === 'none';
    return id !== 'rod' || build.rodKind !== 'none';
  });
}

function knowing(build: Build, ids: readonly MeasurementId[]): Knowledge {
  const known = ids.map((id) => MEASUREMENTS[id]);
  return {
    left: Object.assign({}, ...known.map(({ left }) => left ?? {})) as Left,
    readings: known.flatMap(({ reading, readings }) => [...(reading ? [reading] : []), ...(readings?.(build) ?? [])]),
  };
}

/**
 * @param done counted as measured already
 * @param shouldStop asked between steps; when it says so the result is null
 * @param told the share that is done, 0 to 1
 */
export async function whatToMeasure(
  estimator: Pick<Estimator, 'drawing'>,
  build: Build,
  done: readonly MeasurementId[],
  options: EstimateOptions = {},
  shouldStop: () => boolean = () => false,
  told: (share: number) => void = () => undefined,
): Promise<WhatToMeasure | null> {
  const drawn = await runSteps(estimator.drawing(build, options), shouldStop, ({ done: steps, total }) =>
    told(steps / total / 2),
  );
  if (!drawn) return null;
  const question = {
    ...drawn.value,
    method: build.method,
    moment: { strung: true, days: build.settleDays, rodPercent: 0 },
  };
  const before = knowing(build, done);
  const beforeMm = widthKnowing(question, before);
  const narrowings: Narrowing[] = [];
  const open = measurable(build).filter((id) => !done.includes(id));
  for (const [index, id] of open.entries()) {
    const afterMm = beforeMm * shareLeft(question, before, knowing(build, [...done, id]));
    const removedMm = beforeMm - afterMm;
    if (removedMm >= LEAST_REMOVED_MM) narrowings.push({ id, afterMm, removedMm });
    told((1 + (index + 1) / open.length) / 2);
    await nextTask();
    if (shouldStop()) return null;
  }
  return { beforeMm, narrowings };
}

/** What removes most of the band in a minute comes first. */
export function ranked(narrowings: readonly Narrowing[], minutes: Minutes): readonly Narrowing[] {
  const rate = ({ id, removedMm }: Narrowing) => removedMm / minutes[id];
  return narrowings.toSorted((a, b) => rate(b) - rate(a));
}
