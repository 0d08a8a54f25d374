/** How far the readings of an entry lie from what any bite could have made of the neck. */
import type { EntryContent } from './entry.ts';
import { CAUTION, frettedFretsMm, LEFT_SCATTER } from './likelihood.ts';

/**
 * The smallest distance that a bite leaves, in standard deviations of the reading that fits worst.
 * The scatter of the frets counts as bite here: it does the same to a reading.
 * @param range of ln c
 */
export function leastMisfit(entry: EntryContent, range: Float64Array): number {
  const { measuredFrettedMm, measuredStrungMm, gaugeErrorMm, stringScatter } = entry;
  const before = (entry.predictedFrettedMm ?? 0) - frettedFretsMm(entry);
  const strings = (entry.predictedStrungMm ?? 0) - (entry.predictedStrungFretsMm ?? 0);
  let least = Infinity;
  for (const logC of range) {
    const bite = Math.exp(logC) / entry.biteFactor;
    let worst = 0;
    if (measuredFrettedMm !== null) {
      const sigmas =
        Math.abs(measuredFrettedMm - before - bite * frettedFretsMm(entry)) / stepWide(frettedFretsMm(entry));
      worst = Math.max(worst, sigmas);
    }
    if (measuredStrungMm !== null) {
      const wedges = bite * (entry.predictedStrungFretsMm ?? 0);
      const sigma = Math.hypot(
        stepWide(entry.predictedStrungFretsMm ?? 0),
        wedges * LEFT_SCATTER,
        strings * CAUTION * stringScatter,
      );
      worst = Math.max(worst, Math.abs(measuredStrungMm - wedges - strings) / sigma);
    }
    if (worst < least) least = worst;
  }
  return least;

  /** The gauge, and what lies between two points of the range. */
  function stepWide(partMm: number): number {
    const step = range[1] - range[0];
    return Math.hypot(gaugeErrorMm, (partMm * step) / 2);
  }
}
