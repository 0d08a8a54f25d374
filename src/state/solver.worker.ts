/**
 * The worker: one predictor with its caches. A newer request makes it give up the band that it is working on.
 *
 * Its answers hold numbers and ids, and so does what it refuses: it knows no language.
 */
import type { ReseatWish } from '../mechanics/seating/reseat.ts';
import { advisedReseat, type AdvisedReseat } from '../verdict/reseat-advice.ts';
import { expose } from 'comlink';
import type { Build } from '../neck/build.ts';
import { answerWanted } from '../mechanics/inversion/answers.ts';
import { bringIn, type BroughtIn } from '../mechanics/bench-log/compare.ts';
import type { BandNarrowing } from '../mechanics/bench-log/standing.ts';
import type { LogEntry } from '../mechanics/bench-log/entry.ts';
import type { GripLaw } from '../mechanics/bench-log/law.ts';
import { bitePosterior, type BitePosterior } from '../mechanics/bench-log/posterior.ts';
import type { ReliefGoal } from '../mechanics/inversion/goal.ts';
import { createPredictor } from '../mechanics/predict.ts';
import type { Prediction } from '../mechanics/prediction-types.ts';
import type { StressField } from '../mechanics/elements/stress.ts';
import { advised, advisedTangs, type AdvisedAnswer, type AdvisedTangs } from '../verdict/raised-by.ts';
import { leastChange, type LeastChangeFound } from '../verdict/in-short/least-change.ts';
import { whatMoves, type WhatMoves } from '../verdict/what-moves.ts';
import { whatToMeasure, type MeasurementId, type WhatToMeasure } from '../verdict/what-to-measure.ts';
import { answerTangs, type TangWish } from '../mechanics/seating/refret-answers.ts';
import type { StripQuestion } from '../mechanics/try-strip/predicted.ts';
import type { StripDesign, StripPlan } from '../mechanics/try-strip/design.ts';
import type { StripContent } from '../mechanics/try-strip/document.ts';
import type { Evidence } from '../mechanics/neck-readings/evidence.ts';
import type { FrettingJob } from '../mechanics/while-fretting/advice.ts';
import type { BowReading } from '../mechanics/while-fretting/job.ts';
import type { FrettingQuestion } from '../mechanics/while-fretting/question.ts';
import type { FrettingAdvice, StockForRest } from '../verdict/fretting-advice.ts';
import type { NeckBands } from './strips/neck-bands.ts';
import { throwRefusals } from './refusals-across.ts';
import { createEstimator, type EstimateOptions } from '../mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';

/** What a band is asked for with. */
export type BandOptions = EstimateOptions & BandNarrowing;

const predictor = createPredictor();
const estimator = createEstimator(predictor);
/** Loaded when somebody makes a strip. */
const strips = () => import('./strips/strip-answers.ts');
/** Loaded when something was measured. */
const heard = () => import('./strips/neck-bands.ts');
/** Loaded when frets go in. */
const whileFretting = () => import('./fretting-answers.ts');
/** What a band is made with: what was measured is heard first. Null when something newer came meanwhile. */
async function ready(
  build: Build,
  { evidence, ...options }: BandOptions,
  isStale: () => boolean,
): Promise<EstimateOptions | null> {
  if (!evidence) return options;
  const { heardOptions } = await heard();
  return heardOptions(estimator, build, evidence, isStale);
}

let latest = 0;
let bench: Partial<Build> = {};

export interface SolverApi {
  predict(build: Build): Prediction;
  /**
   * The prediction of the bench's build, which the worker keeps: only what changed has to come, many times a second while a
   * slider moves. @param change the whole build at first
   */
  predictBench(change: Partial<Build>): Prediction;
  /** Null when another request came meanwhile. */
  estimate(build: Build, options?: BandOptions): Promise<Uncertainty | null>;
  /** Stress around one slot; it makes nothing give up. */
  stress(build: Build, fret: number): StressField;
  /** Every way to a wanted relief; null as above. @param onProgress told the share that is done, 0 to 1 */
  wanted(
    build: Build,
    goal: ReliefGoal,
    options?: BandOptions,
    onProgress?: (share: number) => void,
  ): Promise<AdvisedAnswer | null>;
  /** The least change with which the neck comes out as wanted; null as above. */
  leastChange(build: Build): Promise<LeastChangeFound | null>;
  /** What else could be done with this neck, and how far it moves the bow; null as above. */
  moves(build: Build, options?: BandOptions, onProgress?: (share: number) => void): Promise<WhatMoves | null>;
  /**
   * What could still be measured on this neck, and what of the band each would take away; null as above.
   * @param done counted as measured already
   */
  measure(
    build: Build,
    done: readonly MeasurementId[],
    options?: BandOptions,
    onProgress?: (share: number) => void,
  ): Promise<WhatToMeasure | null>;
  /** The best combinations of tangs for a refret; null as above. */
  tangs(
    build: Build,
    wish: TangWish,
    options?: BandOptions,
    onProgress?: (share: number) => void,
  ): Promise<AdvisedTangs | null>;
  /** What holds in the slot of a fret that was pulled; it makes nothing give up. */
  reseat(build: Build, wish: ReseatWish): AdvisedReseat;
  /** What the bench log says of the bite; it makes nothing give up. */
  posterior(entries: readonly LogEntry[], law: GripLaw, onProgress?: (share: number) => void): BitePosterior;
  /** What a try strip will do, before it is sawn; null as above. */
  stripAhead(build: Build, plan: StripPlan, onProgress?: (share: number) => void): Promise<StripDesign | null>;
  /** What there is to ask about a strip's readings; it makes nothing give up. */
  stripQuestions(build: Build, strip: StripContent, ownBoard: boolean): Promise<StripQuestion[]>;
  /** What everything that was measured leaves of a neck's bands, each by itself and together; null as above. */
  neckBands(build: Build, evidence: Evidence, onProgress?: (share: number) => void): Promise<NeckBands | null>;
  /** While frets go in: go on, or what to do with the rest, each choice taken to its end; null as above. */
  fretting(job: Omit<FrettingJob, 'choices'>, stock: StockForRest): Promise<FrettingAdvice | null>;
  /** What there is to ask about a reading before it counts; null as above. */
  frettingQuestion(
    job: Pick<FrettingJob, 'build' | 'readings' | 'evidence'>,
    reading: BowReading,
  ): Promise<{ readonly question: FrettingQuestion | null } | null>;
  /** What a file of the bench log holds beside the entries that are there; it makes nothing give up. */
  bringIn(bytes: Uint8Array, present: readonly LogEntry[], onProgress?: (share: number) => void): BroughtIn;
}

const api: SolverApi = {
  predict(build) {
    latest += 1;
    return predictor.predict(build);
  },
  predictBench(change) {
    latest += 1;
    bench = { ...bench, ...change };
    return predictor.predict(bench as Build);
  },
  async estimate(build, options = {}) {
    const mine = (latest += 1);
    const isStale = () => mine !== latest;
    const known = await ready(build, options, isStale);
    return known && estimator.estimate(build, known, isStale);
  },
  stress: (build, fret) => predictor.stress(build, fret),
  async wanted(build, goal, options = {}, onProgress) {
    const mine = (latest += 1);
    const isStale = () => mine !== latest;
    const known = await ready(build, options, isStale);
    if (!known) return null;
    const answer = await answerWanted(predictor, estimator, build, goal, known, isStale, onProgress);
    return answer && advised(predictor, estimator, build, answer, known, isStale);
  },
  async leastChange(build) {
    const mine = (latest += 1);
    return leastChange(predictor, { build, prediction: predictor.predict(build) }, () => mine !== latest);
  },
  async moves(build, options = {}, onProgress) {
    const mine = (latest += 1);
    const isStale = () => mine !== latest;
    const known = await ready(build, options, isStale);
    return known && whatMoves(predictor, estimator, build, known, isStale, onProgress);
  },
  async measure(build, done, options = {}, onProgress) {
    const mine = (latest += 1);
    const isStale = () => mine !== latest;
    const known = await ready(build, options, isStale);
    return known && whatToMeasure(estimator, build, done, known, isStale, onProgress);
  },
  async tangs(build, wish, options = {}, onProgress) {
    const mine = (latest += 1);
    const isStale = () => mine !== latest;
    const known = await ready(build, options, isStale);
    const answer = known && (await answerTangs(predictor, estimator, build, wish, known, isStale, onProgress));
    return answer && advisedTangs(predictor, build, wish, answer);
  },
  reseat: (build, wish) => advisedReseat(predictor, build, wish),
  posterior: (entries, law, onProgress) => bitePosterior(entries, law, onProgress),
  async stripAhead(build, plan, onProgress) {
    const mine = (latest += 1);
    const { stripAhead } = await strips();
    return stripAhead(predictor, build, plan, () => mine !== latest, onProgress);
  },
  async stripQuestions(build, strip, ownBoard) {
    const { stripAsked } = await strips();
    return stripAsked(build, strip, ownBoard);
  },
  async neckBands(build, evidence, onProgress) {
    const mine = (latest += 1);
    const { neckBands } = await heard();
    return neckBands(estimator, build, evidence, () => mine !== latest, onProgress);
  },
  async fretting(job, stock) {
    const mine = (latest += 1);
    const { frettingAdvice } = await whileFretting();
    return frettingAdvice(predictor, estimator, job, stock, () => mine !== latest);
  },
  async frettingQuestion(job, reading) {
    const mine = (latest += 1);
    const { frettingQuestion } = await whileFretting();
    return frettingQuestion(estimator, job, reading, () => mine !== latest);
  },
  bringIn: (bytes, present, onProgress) => bringIn(bytes, present, onProgress),
};

throwRefusals();
expose(api);
