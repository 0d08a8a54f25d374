/** Bands of the readouts of one method, from the samples. */
import type { Build } from '../../neck/build.ts';
import { shareForTarget } from '../inversion/rod-share.ts';
import type { Method, Prediction } from '../prediction-types.ts';
import { kindLines, sampleExtremes, sampleLines } from './band-at.ts';
import { bandOf } from './band.ts';
import { driversOf } from './drivers.ts';
import { INPUTS } from './inputs.ts';
import type { Draws } from './sampling.ts';
import type { MethodUncertainty, ReadoutBand, RodSettingBand, Scatter } from './types.ts';

type Readouts = Pick<
  MethodUncertainty,
  'fretted' | 'strung' | 'settled' | 'rodSet' | 'rodSetPercent' | 'wedgeForceN' | 'rodPercentForTarget' | 'scatter'
>;

function readout(values: Float64Array, draws: Draws): ReadoutBand {
  return { drivers: driversOf(values, draws.deviates), ...bandOf(Float64Array.from(values)) };
}

export function readoutsOf(draws: Draws, prediction: Prediction, method: Method, build: Build): Readouts {
  const extremesAt = (strung: boolean, days: number, rodPercent: number) =>
    sampleExtremes(draws, method, { strung, days, rodPercent });
  const { settleDays } = prediction.time;
  const force = method === 'glue' ? new Float64Array(draws.samples) : draws.meanForceN;
  return {
    fretted: readout(extremesAt(false, 0, 0), draws),
    strung: readout(extremesAt(true, 0, 0), draws),
    settled: readout(extremesAt(true, settleDays, 0), draws),
    rodSet: readout(extremesAt(true, settleDays, prediction.methods[method].rodSetPercent), draws),
    rodSetPercent: prediction.methods[method].rodSetPercent,
    wedgeForceN: readout(force, draws),
    rodPercentForTarget: rodSettings(draws, prediction, method, build.targetReliefMm),
    scatter: scatterOf(draws, method),
  };
}

/** Settings beyond ten times the rod’s range are told as this: out of reach is out of reach. */
const FARTHEST_PERCENT = 1000;

function rodSettings(draws: Draws, prediction: Prediction, method: Method, targetMm: number): RodSettingBand | null {
  const { rod, time } = prediction;
  if (rod.kind === 'none') return null;
  const { samples, spanFrom, spanTo } = draws;
  const { rodMm, rodFactor } = draws.methods[method];
  const moment = { strung: true, days: time.settleDays, rodPercent: 0 };
  const neutral = sampleLines(draws, method, moment);
  const settings = new Float64Array(samples);
  const neutralExtremes = sampleExtremes(draws, method, moment);
  let within = 0;
  for (let i = 0; i < samples; i += 1) {
    const line = { values: neutral, offset: i, stride: samples };
    const share = shareForTarget(line, { values: rodMm }, spanFrom, spanTo, targetMm, 18);
    // No setting of any size: count it as beyond the end towards which it would have to go.
    const beyond = neutralExtremes[i] > targetMm ? FARTHEST_PERCENT : -FARTHEST_PERCENT;
    const setting = share === undefined || rodFactor[i] === 0 ? beyond : (100 * share) / rodFactor[i];
    settings[i] = Math.min(FARTHEST_PERCENT, Math.max(-FARTHEST_PERCENT, setting));
    if (settings[i] >= rod.leastPercent && settings[i] <= rod.mostPercent) within += 1;
  }
  return { ...readout(settings, draws), chance: within / samples };
}

/** What a workshop's frets have in common, and its bench log therefore measures. */
const COMMON = ['bite', 'studArea'].map((input) => INPUTS.findIndex(({ id }) => id === input));

function meanProduct(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i] * b[i];
  return sum / a.length;
}

function scatterOf(draws: Draws, method: Method): Scatter {
  const { samples, deviates, spanFrom, spanTo } = draws;
  const { stringsFactor, wedgeFactors } = draws.methods[method];
  const lines = kindLines(draws, method);
  const statedAt = (j: number) => lines.reduce((sum, line) => sum + line[j], 0);
  let at = spanFrom;
  for (let j = spanFrom; j <= spanTo; j += 1) if (Math.abs(statedAt(j)) > Math.abs(statedAt(at))) at = j;
  /** Logarithms, less their mean. */
  const logsOf = (value: (i: number) => number) => {
    const logs = Float64Array.from({ length: samples }, (_, i) => Math.log(Math.max(Math.abs(value(i)), 1e-12)));
    const mean = logs.reduce((sum, log) => sum + log, 0) / samples;
    return { mean, logs: logs.map((log) => log - mean) };
  };
  const strings = logsOf((i) => stringsFactor[i]).logs;
  const ofStrings = Math.sqrt(meanProduct(strings, strings));
  const none = { wedgesMean: 0, wedges: 0, strings: ofStrings, correlation: 0 };
  // Relative to frets that do not bite as stated nothing can be said.
  const stated = draws.statedWedges.reduce((sum, factor, kind) => sum + factor * lines[kind][at], 0);
  if (stated === 0) return none;
  const { mean, logs: all } = logsOf(
    (i) => lines.reduce((sum, line, kind) => sum + line[at] * wedgeFactors[kind][i], 0) / stated,
  );
  const wedges = COMMON.reduce((rest, row) => {
    const deviate = Float64Array.from(deviates.subarray(row * samples, (row + 1) * samples));
    const slope = meanProduct(all, deviate) / Math.max(meanProduct(deviate, deviate), 1e-300);
    return rest.map((log, i) => log - slope * deviate[i]);
  }, all);
  const ofWedges = Math.sqrt(meanProduct(wedges, wedges));
  const correlation = meanProduct(wedges, strings) / (ofWedges * ofStrings);
  return { wedgesMean: mean, wedges: ofWedges, strings: ofStrings, correlation };
}
