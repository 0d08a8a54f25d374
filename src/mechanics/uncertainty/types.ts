/**
 * What the Monte Carlo hands over: the samples themselves, as factors on the basis lines, so that the band of any moment
 * is a matter of multiplying them out (band-at.ts). Plain data that can cross a worker boundary.
 */
import type { Method, Prediction, TimeInputs } from '../prediction-types.ts';
import type { Band } from './band.ts';
import type { UncertainInput } from './inputs.ts';

/** One input's part in a band. */
export interface Driver {
  readonly input: UncertainInput;
  /** Share of the variance, 0 to 1; the shares of all inputs sum to 1. */
  readonly share: number;
}

/** A band and the three inputs that make most of it, largest first. */
export interface ReadoutBand extends Band {
  readonly drivers: readonly Driver[];
}

/** The rod setting that gives the relief wanted once settled, per cent of its range; ±1000 stands for that and anything beyond. */
export interface RodSettingBand extends ReadoutBand {
  /** Share of the samples in which the rod can do it, 0 to 1. The band itself goes on beyond the rod's range. */
  readonly chance: number;
}

/** Relief under the strings against time, rod neutral. */
export interface TimeCourseBand {
  /** Days since stringing, an hour to ten years, evenly on a log scale. */
  readonly days: Float64Array;
  /** The stated prediction, and the band; relief of greatest size, mm. */
  readonly statedMm: Float64Array;
  readonly p05Mm: Float64Array;
  readonly p50Mm: Float64Array;
  readonly p95Mm: Float64Array;
  readonly flat: FlatCrossing;
}

/** When a neck with a back-bow under its strings comes flat. Days since stringing. */
export interface FlatCrossing {
  /** As stated: null when it is hollow (or flat) from the start, or is still humped after ten years. */
  readonly days: number | null;
  /** Relief as stated in the first hour is zero or forward. */
  readonly fromStart: boolean;
  /** Of the samples, 0 days for those that are flat or hollow from the start; null = not within ten years. */
  readonly p05Days: number | null;
  readonly p50Days: number | null;
  readonly p95Days: number | null;
  /** Shares of the samples, summing to 1. */
  readonly shareFromStart: number;
  readonly shareLater: number;
  readonly shareNever: number;
}

/** How what frets and strings do scatters for other reasons than the bite: of the logarithms of the factors on their lines. */
export interface Scatter {
  /** Mean and standard deviation for all frets together. The mean is not zero: force grows less than width over kerf. */
  readonly wedgesMean: number;
  readonly wedges: number;
  readonly strings: number;
  /** Between the two. */
  readonly correlation: number;
}

export interface MethodUncertainty {
  /** Relief of greatest size under the straightedge in each state, mm, as in the prediction. */
  readonly fretted: ReadoutBand;
  readonly strung: ReadoutBand;
  readonly settled: ReadoutBand;
  readonly rodSet: ReadoutBand;
  /** How the rod is set there, as in the prediction. */
  readonly rodSetPercent: number;
  /** Mean wedge force of the frets after seating, N. */
  readonly wedgeForceN: ReadoutBand;
  /** Null without a rod. */
  readonly rodPercentForTarget: RodSettingBand | null;
  readonly timeCourse: TimeCourseBand;
  /** Scatter of what frets and strings do beside what is stated, for the bench log; bite left out. */
  readonly scatter: Scatter;
  /** What `bandAt` needs: lines at the points (frets × points for the wedges), and a factor on each for every sample. */
  readonly wedgeMm: Float64Array;
  readonly stringsMm: Float64Array;
  readonly rodMm: Float64Array;
  readonly climateMm: Float64Array;
  /** One array for each kind of fret. */
  readonly wedgeFactors: readonly Float64Array[];
  readonly stringsFactor: Float64Array;
  readonly rodFactor: Float64Array;
  readonly climateFactor: Float64Array;
}

export interface Uncertainty {
  readonly seed: number;
  readonly samples: number;
  /** Where the bands are given: nut, every fret, end of the board; mm. */
  readonly xMm: Float64Array;
  /** First and last of these points under the straightedge. */
  readonly spanFrom: number;
  readonly spanTo: number;
  readonly time: TimeInputs;
  readonly levelledIn: Prediction['levelledIn'];
  readonly startingMm: Float64Array;
  /** The fall-away of the last frets. */
  readonly fallMm: Float64Array;
  /** What a standard deviation of the gauge adds to it, and the gauge's deviate of each sample. */
  readonly gaugeMm: Float64Array;
  readonly gaugeDeviates: Float64Array;
  /** Kind of each fret: index into `wedgeFactors`. */
  readonly kindOfFret: Int32Array;
  /** Factors on the wedges' relaxation and on creep, one a sample. */
  readonly relaxation: Float64Array;
  readonly creep: Float64Array;
  /** Standard normal deviates, inputs × samples, in the order of `INPUTS`. */
  readonly deviates: Float32Array;
  readonly methods: Readonly<Record<Method, MethodUncertainty>>;
}

/** The part of it that the band of a moment rests on. */
export type SampledLines = Omit<
  MethodUncertainty,
  | 'fretted'
  | 'strung'
  | 'settled'
  | 'rodSet'
  | 'rodSetPercent'
  | 'wedgeForceN'
  | 'rodPercentForTarget'
  | 'timeCourse'
  | 'scatter'
>;
export type Sampled = Omit<Uncertainty, 'methods' | 'seed'> & {
  readonly methods: Readonly<Record<Method, SampledLines>>;
};
