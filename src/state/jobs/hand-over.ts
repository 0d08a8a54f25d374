/** A neck handed over to the bench: a job with everything that is predicted for it now. */
import { fretsInAfterQuarters } from '../../fretwork/plan/seating-order.ts';
import { newId } from '../../mechanics/bench-log/identity.ts';
import { predictedFurther, predictedPart } from '../../mechanics/bench-log/predicted.ts';
import type { Moment, Prediction } from '../../mechanics/prediction-types.ts';
import { lineAt } from '../../mechanics/states.ts';
import { bandAt } from '../../mechanics/uncertainty/band-at.ts';
import type { Band } from '../../mechanics/uncertainty/band.ts';
import type { Uncertainty } from '../../mechanics/uncertainty/types.ts';
import type { Build } from '../../neck/build.ts';
import { writeProject, type Made } from '../../neck/file.ts';
import { JOB_VERSION, type BenchJob, type JobPrediction } from './job-document.ts';

/** What a neck is handed over with. */
export interface HandedOver {
  readonly build: Build;
  readonly prediction: Prediction;
  readonly uncertainty: Uncertainty;
  readonly made: Made;
  readonly isTry: boolean;
  /** ms since 1970. */
  readonly at: number;
}

/** Digits after the point that a prediction keeps: a nanometre. */
const DIGITS = 6;
const rounded = (value: number): number => Number(value.toFixed(DIGITS)) + 0;
const roundedAll = (line: Float64Array): number[] => Array.from(line).map(rounded);

function roundedNumbers<Values extends object>(values: Values): Values {
  const entries = Object.entries(values).map(([key, value]: [string, unknown]) => [
    key,
    typeof value === 'number' ? rounded(value) : value,
  ]);
  return Object.fromEntries(entries) as Values;
}

function predictedNow({ build, prediction, uncertainty, made, at }: HandedOver): JobPrediction {
  const { method } = build;
  const of = uncertainty.methods[method];
  const state = (statedMm: number, { p05, p50, p95 }: Band) => roundedNumbers({ statedMm, p05, p50, p95 });
  const quarters = fretsInAfterQuarters(build).map((fretsIn) => {
    const moment: Moment = { strung: false, days: 0, rodPercent: 0, fretsIn };
    const band = bandAt(uncertainty, method, moment);
    const line = { p05Mm: roundedAll(band.p05Mm), p50Mm: roundedAll(band.p50Mm), p95Mm: roundedAll(band.p95Mm) };
    return { ...state(lineAt(prediction, method, moment).extremeMm, band.extreme), line };
  });
  const { fretted, strung, settled } = prediction.methods[method];
  const board = prediction.frettedBoard;
  return {
    program: made.program,
    stamp: made.stamp,
    at,
    xMm: roundedAll(uncertainty.xMm),
    spanFrom: uncertainty.spanFrom,
    spanTo: uncertainty.spanTo,
    quarters,
    fretted: state(fretted.extremeMm, of.fretted),
    strung: state(strung.extremeMm, of.strung),
    settled: state(settled.extremeMm, of.settled),
    frettedBoard: board && roundedNumbers({ freeBowMm: board.freeBowMm, clampPressureMPa: board.clampPressureMPa }),
    forLog: roundedNumbers({
      ...predictedPart(prediction, method, build, 0, of.scatter),
      ...predictedFurther(prediction, method, build, { dialFret: null, rodTurns: null, rodWay: 'clockwise' }),
    }),
  };
}

export function handedOver(handed: HandedOver): BenchJob {
  const { build, made, isTry, at } = handed;
  const project: unknown = JSON.parse(writeProject(build, made));
  return {
    version: JOB_VERSION,
    id: newId(),
    startedAt: at,
    neck: project,
    predicted: predictedNow(handed),
    wantedMm: build.targetReliefMm,
    isTry,
    place: '',
    now: { readings: [], changes: [], finishedAt: null, logged: null },
    past: [],
  };
}
