/**
 * Two choices for one neck, sampled with the same deviates: what is uncertain is mostly common to both, so that their
 * difference is surer than either by itself, and how often one ends nearer the relief wanted is a matter of counting.
 *
 *   band      5–95 % of r_other,i − r_first,i           i sample
 *   nearer    share of the samples with |r_other,i − wanted| < |r_first,i − wanted|, ties counted by half
 */
import { bandOf, type Band } from './band.ts';

export interface Paired {
  /** Of the relief of the other less that of the first, mm. */
  readonly bandMm: Band;
  /** Share of such necks in which the other ends nearer the relief wanted, 0 to 1. */
  readonly nearer: number;
}

/** @param firstMm, @param otherMm relief of every sample, in the same order */
export function paired(firstMm: Float64Array, otherMm: Float64Array, wantedMm: number): Paired {
  let nearer = 0;
  for (let i = 0; i < firstMm.length; i += 1) {
    const [first, other] = [Math.abs(firstMm[i] - wantedMm), Math.abs(otherMm[i] - wantedMm)];
    nearer += other < first ? 1 : other === first ? 0.5 : 0;
  }
  return { bandMm: bandOf(otherMm.map((mm, i) => mm - firstMm[i])), nearer: nearer / firstMm.length };
}

/** The samples of another neck as of another piece of wood: no deviate is shared. */
export function asOfAnotherNeck(samplesMm: Float64Array): Float64Array {
  const half = samplesMm.length >> 1;
  return Float64Array.from(samplesMm, (_, i) => samplesMm[(i + half) % samplesMm.length]);
}
