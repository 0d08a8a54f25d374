/** How likely one neck's readings are at a bite; the model is at the head of posterior.ts. */
import type { EntryContent } from './entry.ts';

/** Nodes of the integral over ε, from −4 to 4 standard deviations. */
const NODES = 65;
const WIDEST = 4;
/** Scatter of the part of the wedges that is left when the strings go on (relaxation and creep ±40 %, some days). */
const REST_SCATTER = 0.09;
/** Scatter of a strung reading for the difference of the curves, in parts of the frets' part. */
const SHAPE_SCATTER = 0.06;
export const LEFT_SCATTER = Math.hypot(REST_SCATTER, SHAPE_SCATTER);
/** How much the scatters are widened, because they are assumptions. */
export const CAUTION = 1.15;

/** The frets' part of the predicted relief with frets in: all of it unless it is given. */
export function frettedFretsMm(entry: EntryContent): number {
  return entry.predictedFrettedFretsMm ?? entry.predictedFrettedMm ?? 0;
}

/** Does the entry say something of the bite? The prediction is that of a slack rod. */
export function informs(entry: EntryContent): boolean {
  return (
    entry.rod === 'slack' &&
    ((entry.measuredFrettedMm !== null && frettedFretsMm(entry) !== 0) ||
      (entry.measuredStrungMm !== null && (entry.predictedStrungFretsMm ?? 0) !== 0))
  );
}

/** (value − mean)² / 2 variance + ln(variance) / 2, without the constant. */
const misfit = (value: number, mean: number, variance: number) =>
  (value - mean) ** 2 / (2 * variance) + Math.log(variance) / 2;

/** @returns ln of the likelihood of the neck's readings at a bite c of this workshop, up to a constant */
export function likelihoodOf(entry: EntryContent): (bite: number) => number {
  const { measuredFrettedMm, measuredStrungMm, fretShift, scatterCorrelation: rho, biteFactor } = entry;
  const fretScatter = CAUTION * entry.fretScatter;
  const stringScatter = CAUTION * entry.stringScatter;
  const gauge = entry.gaugeErrorMm ** 2;
  const before = (entry.predictedFrettedMm ?? 0) - frettedFretsMm(entry);
  const strings = (entry.predictedStrungMm ?? 0) - (entry.predictedStrungFretsMm ?? 0);
  // The nodes must be no coarser than the gauge: where they are, it is widened to their distance.
  const between = (((2 * WIDEST) / (NODES - 1)) * fretScatter) ** 2 / 12;
  const nodes = Array.from({ length: NODES }, (_, node) => WIDEST * ((2 * node) / (NODES - 1) - 1));
  const factors = nodes.map((z) => Math.exp(fretShift + fretScatter * z));
  const stringParts = nodes.map((z) => strings * Math.exp(rho * stringScatter * z));
  const logs = new Float64Array(NODES);
  return (bite) => {
    const fretted = (bite / biteFactor) * frettedFretsMm(entry);
    const wedges = (bite / biteFactor) * (entry.predictedStrungFretsMm ?? 0);
    let most = -Infinity;
    for (let node = 0; node < NODES; node += 1) {
      let log = -(nodes[node] ** 2) / 2;
      if (measuredFrettedMm !== null) {
        const mean = fretted * factors[node];
        log -= misfit(measuredFrettedMm, before + mean, gauge + mean * mean * between);
      }
      if (measuredStrungMm !== null) {
        const wedgePart = wedges * factors[node];
        const stringPart = stringParts[node];
        const variance =
          gauge +
          wedgePart * wedgePart * (LEFT_SCATTER ** 2 + between) +
          (stringPart * stringScatter) ** 2 * (1 - rho * rho);
        log -= misfit(measuredStrungMm, wedgePart + stringPart, variance);
      }
      logs[node] = log;
      if (log > most) most = log;
    }
    let sum = 0;
    for (let node = 0; node < NODES; node += 1) {
      const below = logs[node] - most;
      if (below > -40) sum += Math.exp(below);
    }
    return most + Math.log(sum);
  };
}
