/** Bands of the readouts of one method, from the samples. */
import type { Build } from '../../build/build.ts';
import { shareForTarget } from '../inversion/rod-share.ts';
import type { Method, Prediction } from '../prediction-types.ts';
import { kindLines, sampleExtremes, sampleLines } from './band-at.ts';
import { bandOf } from './band.ts';
import { driversOf } from './drivers.ts';
import { INPUTS } from './inputs.ts';
import type { Draws } from './sampling.ts';
import type { MethodUncertainty, ReadoutBand, RodSettingBand } from './types.ts';

type Readouts = Pick<
  MethodUncertainty,
  'fretted' | 'strung' | 'settled' | 'rodSet' | 'wedgeForceN' | 'rodPercentForTarget' | 'scatter'
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
    rodSet: readout(extremesAt(true, settleDays, prediction.rod.kind === 'none' ? 0 : build.rodSettingPercent), draws),
    wedgeForceN: readout(force, draws),
    rodPercentForTarget: rodSettings(draws, prediction, method, build.targetReliefMm),
    scatter: scatterOf(draws, method),
  };
}

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
    const beyond = neutralExtremes[i]! > targetMm ? Infinity : -Infinity;
    settings[i] = share === undefined || rodFactor[i] === 0 ? beyond : (100 * share) / rodFactor[i]!;
    if (settings[i]! >= rod.leastPercent && settings[i]! <= rod.mostPercent) within += 1;
  }
  return { ...readout(settings, draws), chance: within / samples };
}

const BITE = INPUTS.findIndex(({ id }) => id === 'bite');

/** Standard deviations and correlation of ln(what all wedges do), bite left out, and ln(what the strings do). */
function scatterOf(draws: Draws, method: Method): MethodUncertainty['scatter'] {
  const { samples, deviates, spanFrom, spanTo } = draws;
  const { stringsFactor, wedgeFactors } = draws.methods[method];
  const lines = kindLines(draws, method);
  let at = spanFrom;
  const whole = (j: number) => Math.abs(lines.reduce((sum, line) => sum + line[j]!, 0));
  for (let j = spanFrom; j <= spanTo; j += 1) if (whole(j) > whole(at)) at = j;
  const logOf = (value: (i: number) => number) => {
    const logs = Float64Array.from({ length: samples }, (_, i) => Math.log(Math.max(Math.abs(value(i)), 1e-12)));
    const mean = logs.reduce((sum, log) => sum + log, 0) / samples;
    return logs.map((log) => log - mean);
  };
  const product = (a: Float64Array, b: Float64Array) => a.reduce((sum, value, i) => sum + value * b[i]!, 0) / samples;
  const strings = logOf((i) => stringsFactor[i]!);
  const ofStrings = Math.sqrt(product(strings, strings));
  if (whole(at) === 0) return { wedges: 0, strings: ofStrings, correlation: 0 };
  const all = logOf((i) => lines.reduce((sum, line, g) => sum + line[at]! * wedgeFactors[g]![i]!, 0));
  const bite = Float64Array.from(deviates.subarray(BITE * samples, (BITE + 1) * samples));
  const slope = product(all, bite) / product(bite, bite);
  const wedges = all.map((log, i) => log - slope * bite[i]!);
  const ofWedges = Math.sqrt(product(wedges, wedges));
  return { wedges: ofWedges, strings: ofStrings, correlation: product(wedges, strings) / (ofWedges * ofStrings) };
}
