/**
 * Go on, or stop and do what with the rest: every choice taken to the end with the whole model, given all that was read of this
 * neck and all that is known of its workshop.
 *
 *   p(z | readings)                grip-posterior.ts: the frets between two readings have a grip of their own, those to come too
 *   choice                         the neck with the rest seated so, solved anew; its samples with the deviates of the posterior
 *   within                         share of the samples whose relief, strung and settled, can be brought to within 0.05 mm of
 *                                  the relief wanted with the rod no further than 30 % of its range either way
 *   within by rod                  the same with all of the rod's range
 *
 * A choice beside going on is advised when it is within for at least a twentieth more of such necks: less is not worth taking up
 * another tool, and no more than the samples tell. Where none is, the same is asked of within by rod; and where none of them is
 * surer of that either, the one that settles nearer to what is wanted by more than 0.05 mm. Where a choice differs in nothing but
 * effort, the earlier one is taken.
 */
import type { Build } from '../../neck/build.ts';
import { gripPosterior, asUnmeasured, type GripPosterior } from '../try-strip/grip-posterior.ts';
import type { Evidence } from '../neck-readings/evidence.ts';
import { bandAt, sampleExtremes, type LineBand } from '../uncertainty/band-at.ts';
import { bandOf, type Band } from '../uncertainty/band.ts';
import type { EstimateOptions, Estimator } from '../uncertainty/estimate.ts';
import type { ResponseModel } from '../uncertainty/model.ts';
import type { Draws } from '../uncertainty/sampling.ts';
import { ownInJob } from './heard-in-job.ts';
import { splitAt, withRest, type BowReading, type RestChange } from './job.ts';

/** How far from the relief wanted a neck may end, mm: what a maker tells with feelers under a string (common practice, no source). */
export const CLOSE_MM = 0.05;
/** Share of its range that the rod should at most need, per cent: the rest is for weather and other strings (assumption). */
export const ROD_SHARE_PERCENT = 30;
/** By how much another choice must be surer than going on. */
export const WORTH_IT = 0.05;

export interface FrettingJob {
  /** As it is being fretted: what was changed for frets that are in already is in its regions. */
  readonly build: Build;
  readonly readings: readonly BowReading[];
  /** Strips, other necks of the log, and what else was read on this neck. */
  readonly evidence: Evidence;
  /** Beside going on, in order of effort. */
  readonly choices: readonly RestChange[];
  /** Relief wanted, strung and settled, mm. */
  readonly wantedMm: number;
}

export interface Outcome {
  readonly change: RestChange;
  /** Bow with all frets in, and relief strung and settled with the rod neutral, mm. */
  readonly frettedMm: Band;
  readonly settledMm: Band;
  /** Shares of such necks, 0 to 1. */
  readonly within: number;
  readonly withinByRod: number;
}

/** The neck's line as it is known after the readings. */
export interface ReadLines {
  /** With the frets that are in. */
  readonly now: LineBand;
  /** With all of them in, when it is gone on. */
  readonly end: LineBand;
}

export interface Advice {
  /** Frets that were in at the last reading. */
  readonly seated: number;
  readonly lines: ReadLines;
  /** The first is going on. */
  readonly outcomes: readonly Outcome[];
  /** Which of them is advised. */
  readonly advised: number;
  readonly posterior: GripPosterior;
}

export interface AdviceOptions {
  readonly seed?: number;
  readonly samples?: number;
}

/** Relief strung and settled of every sample, with the rod at a setting. */
function settledAt(draws: Draws, build: Build, rodPercent: number): Float64Array {
  return sampleExtremes(draws, build.method, { strung: true, days: build.settleDays, rodPercent });
}

/** Share of the samples that come close with the rod somewhere in a range. */
function shareWithin(draws: Draws, build: Build, wantedMm: number, least: number, most: number): number {
  const [one, other] = [settledAt(draws, build, least), settledAt(draws, build, most)];
  let count = 0;
  for (let i = 0; i < one.length; i += 1) {
    const [low, high] = one[i] < other[i] ? [one[i], other[i]] : [other[i], one[i]];
    if (low - CLOSE_MM <= wantedMm && wantedMm <= high + CLOSE_MM) count += 1;
  }
  return count / one.length;
}

function outcomeOf(change: RestChange, build: Build, model: ResponseModel, draws: Draws, wantedMm: number): Outcome {
  const { leastPercent, mostPercent } = model.rodRange ?? { leastPercent: 0, mostPercent: 0 };
  return {
    change,
    frettedMm: bandOf(sampleExtremes(draws, build.method, { strung: false, days: 0, rodPercent: 0 })),
    settledMm: bandOf(settledAt(draws, build, 0)),
    within: shareWithin(
      draws,
      build,
      wantedMm,
      Math.max(leastPercent, -ROD_SHARE_PERCENT),
      Math.min(mostPercent, ROD_SHARE_PERCENT),
    ),
    withinByRod: shareWithin(draws, build, wantedMm, leastPercent, mostPercent),
  };
}

function linesOf(draws: Draws, build: Build, seated: number): ReadLines {
  const unstrung = { strung: false, days: 0, rodPercent: 0 } as const;
  const { seated: fretsIn } = splitAt(build, seated);
  return { now: bandAt(draws, build.method, { ...unstrung, fretsIn }), end: bandAt(draws, build.method, unstrung) };
}

type Compared = Pick<Outcome, 'within' | 'withinByRod'> & { readonly settledMm: Pick<Band, 'p50'> };

/** Place of the greatest, the first of equals; 0 where it is not greater than the first one by so much. */
function ahead(values: readonly number[], by: number): number {
  const best = values.indexOf(Math.max(...values));
  return values[best] >= values[0] + by ? best : 0;
}

/** Which outcome is advised; the first is going on. @param wantedMm relief wanted, strung and settled */
export function advisedOf(outcomes: readonly Compared[], wantedMm: number): number {
  const [goOn] = outcomes;
  const surer = ahead(
    outcomes.map(({ within }) => within),
    WORTH_IT,
  );
  if (surer > 0) return surer;
  // What is less sure of the better end than going on is no way out.
  const asSure = (outcome: Compared, value: number) => (outcome.within >= goOn.within ? value : -Infinity);
  const byRod = ahead(
    outcomes.map((outcome) => asSure(outcome, outcome.withinByRod)),
    WORTH_IT,
  );
  if (byRod > 0) return byRod;
  return ahead(
    outcomes.map((outcome) =>
      outcome.withinByRod >= goOn.withinByRod
        ? asSure(outcome, -Math.abs(outcome.settledMm.p50 - wantedMm))
        : -Infinity,
    ),
    CLOSE_MM,
  );
}

/**
 * In steps, one for each prediction or choice.
 * @throws {RangeError} where nothing was read
 */
export function* adviceSteps(
  estimator: Pick<Estimator, 'drawing'>,
  { build, readings, evidence, choices, wantedMm }: FrettingJob,
  { seed = 1, samples = 2000 }: AdviceOptions = {},
): Generator<unknown, Advice> {
  const { model } = yield* estimator.drawing(asUnmeasured(build, evidence.strips));
  const own = ownInJob(build, evidence, readings, model);
  const posterior = gripPosterior(build, evidence.strips, evidence.entries, { seed, samples, own });
  yield;
  const options: EstimateOptions = { seed, samples, grip: posterior.deviates, quarters: posterior.quarters };
  const seated = Math.max(...readings.map((reading) => reading.seated));
  const { rest } = splitAt(build, seated);
  const outcomes: Outcome[] = [];
  let lines: ReadLines | undefined;
  for (const change of [{ code: 'go-on' } as const, ...choices]) {
    const then = withRest(build, rest, change);
    const drawn = yield* estimator.drawing(then, options);
    lines ??= linesOf(drawn.draws, build, seated);
    outcomes.push(outcomeOf(change, then, drawn.model, drawn.draws, wantedMm));
    yield;
  }
  return { seated, lines: lines!, outcomes, advised: advisedOf(outcomes, wantedMm), posterior };
}
