/**
 * What the bench log says of the bite factor c: how much harder (or softer) this workshop's frets bite than predicted.
 *
 *   before      ln c ~ N(0, 0.4²)
 *   a neck      fretted   y_f = B + c′·W·e^ε + gauge
 *               strung    y_s = c′·W_s·e^ε·(1 + τ + σ) + S·e^η + gauge
 *               c′ = c / bite factor of the prediction; W, W_s: predicted part of the frets, S: of the strings, B: the bow
 *               before fretting, mm
 *               ε ~ N(m, s_f²), η ~ N(0, s_s²) with correlation ρ: scatter for other reasons than the bite
 *               τ ~ N(0, 0.09²): relaxation and creep of the wedges until the strings went on
 *               σ ~ N(0, 0.06²): frets and strings bend the neck in slightly different curves; where they nearly cancel, the
 *               relief of greatest size is not found where it was predicted
 *               gauge ~ N(0, g²), anew for each reading
 *   after       the product, on a grid of ln c
 *
 * The scatters s_f and s_s are themselves assumptions, known to some 15 %: they are widened by that (1.15).
 * τ and σ are those of the standard build's samples. Each neck's likelihood is integrated over ε numerically; the strings'
 * scatter given ε is taken as normal in mm. A neck that was only glued says nothing of c. A neck measured fretted and
 * strung has one ε for both.
 *
 * The median scales the bite (`Build.biteFactor`), the spread takes the place of 0.4 in the Monte Carlo
 * (`EstimateOptions.biteLogSpread`).
 */
import { BITE_LOG_SPREAD } from '../uncertainty/inputs.ts';
import type { LogEntry } from './entry.ts';

export interface BitePosterior {
  /** Median of c, and the interval that holds it with 90 %. */
  readonly median: number;
  readonly p05: number;
  readonly p95: number;
  /** Standard deviation of ln c. */
  readonly logSpread: number;
  /** Entries that say something of the bite. */
  readonly necks: number;
}

/** ln c from −2.4 to 2.4: six standard deviations of the prior. */
const STEP = 0.008;
const HALF_WIDTH = 6 * BITE_LOG_SPREAD;
const SIZE = 2 * Math.round(HALF_WIDTH / STEP) + 1;
/** Nodes of the integral over ε, from −4 to 4 standard deviations. */
const NODES = 65;
const WIDEST = 4;
/** Scatter of the part of the wedges that is left when the strings go on (relaxation and creep ±40 %, some days). */
const REST_SCATTER = 0.09;
/** Scatter of a strung reading for the difference of the curves, in parts of the frets' part. */
const SHAPE_SCATTER = 0.06;
const LEFT_SCATTER = Math.hypot(REST_SCATTER, SHAPE_SCATTER);
/** How much the scatters are widened, because they are assumptions. */
const CAUTION = 1.15;

const logCAt = (index: number) => (index - (SIZE - 1) / 2) * STEP;

function logNormal(value: number, mean: number, variance: number): number {
  return -((value - mean) ** 2) / (2 * variance) - Math.log(variance) / 2;
}

/** The frets' part of the predicted relief with frets in: all of it unless it is given. */
function frettedFretsMm(entry: LogEntry): number {
  return entry.predictedFrettedFretsMm ?? entry.predictedFrettedMm ?? 0;
}

/** Does the entry depend on the bite? */
function informs(entry: LogEntry): boolean {
  return (
    (entry.measuredFrettedMm !== null && frettedFretsMm(entry) !== 0) ||
    (entry.measuredStrungMm !== null && (entry.predictedStrungFretsMm ?? 0) !== 0)
  );
}

/** ln of the likelihood of one neck's readings at a bite c′, up to a constant. */
function logLikelihood(entry: LogEntry, bite: number): number {
  const { measuredFrettedMm, measuredStrungMm, fretShift, scatterCorrelation: rho } = entry;
  const fretScatter = CAUTION * entry.fretScatter;
  const stringScatter = CAUTION * entry.stringScatter;
  const gauge = entry.gaugeErrorMm ** 2;
  const fretted = bite * frettedFretsMm(entry);
  const before = (entry.predictedFrettedMm ?? 0) - frettedFretsMm(entry);
  const wedges = bite * (entry.predictedStrungFretsMm ?? 0);
  const strings = (entry.predictedStrungMm ?? 0) - (entry.predictedStrungFretsMm ?? 0);
  // The nodes must be no coarser than the gauge: where they are, it is widened to their distance.
  const apart = ((2 * WIDEST) / (NODES - 1)) * fretScatter;
  const logs: number[] = [];
  let most = -Infinity;
  for (let node = 0; node < NODES; node += 1) {
    const z = WIDEST * ((2 * node) / (NODES - 1) - 1);
    const factor = Math.exp(fretShift + fretScatter * z);
    let log = -(z * z) / 2;
    if (measuredFrettedMm !== null) {
      const mean = fretted * factor;
      log += logNormal(measuredFrettedMm, before + mean, gauge + (mean * apart) ** 2 / 12);
    }
    if (measuredStrungMm !== null) {
      const wedgePart = wedges * factor;
      const stringPart = strings * Math.exp(rho * stringScatter * z);
      const variance =
        gauge +
        (wedgePart * LEFT_SCATTER) ** 2 +
        (stringPart * stringScatter) ** 2 * (1 - rho * rho) +
        (wedgePart * apart) ** 2 / 12;
      log += logNormal(measuredStrungMm, wedgePart + stringPart, variance);
    }
    logs.push(log);
    if (log > most) most = log;
  }
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
}

/** The bite factor after these entries. Entries must be free of problems (`entryProblems`). Without any it is the prior. */
export function bitePosterior(entries: readonly LogEntry[]): BitePosterior {
  const used = entries.filter(informs);
  const logs = Float64Array.from({ length: SIZE }, (_, i) => -((logCAt(i) / BITE_LOG_SPREAD) ** 2) / 2);
  for (const entry of used) {
    for (let i = 0; i < SIZE; i += 1) logs[i]! += logLikelihood(entry, Math.exp(logCAt(i)) / entry.biteFactor);
  }
  const most = logs.reduce((a, b) => Math.max(a, b), -Infinity);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let mean = 0;
  let square = 0;
  weights.forEach((weight, i) => {
    mean += (weight / total) * logCAt(i);
    square += (weight / total) * logCAt(i) ** 2;
  });
  /** Point of the cumulative sum, each weight spread over its step. */
  const quantile = (part: number) => {
    let below = 0;
    for (let i = 0; i < SIZE; i += 1) {
      const above = below + weights[i]! / total;
      if (above >= part) return Math.exp(logCAt(i) + STEP * ((part - below) / (above - below) - 0.5));
      below = above;
    }
    return Math.exp(HALF_WIDTH);
  };
  return {
    median: quantile(0.5),
    p05: quantile(0.05),
    p95: quantile(0.95),
    logSpread: Math.sqrt(Math.max(0, square - mean * mean)),
    necks: used.length,
  };
}
