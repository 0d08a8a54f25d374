/**
 * Which inputs make a band: the squared correlation of each input's deviate with the result, over the sum of all of them.
 * That is each input's first-order share of the variance where the result is near to linear in the deviates.
 */
import { INPUTS } from './inputs.ts';
import type { Driver } from './types.ts';

/** Inputs below this share are left out: sampling noise. */
const LEAST_SHARE = 0.01;

/** The shares of all inputs in the variance of `values`, in the order of `INPUTS`; zeros when nothing varies. */
export function sharesOfVariance(values: Float64Array, deviates: Float32Array): Float64Array {
  const samples = values.length;
  const shares = new Float64Array(INPUTS.length);
  let count = 0;
  let mean = 0;
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    count += 1;
    mean += value / samples;
  }
  if (count === 0) return shares;
  mean *= samples / count;
  const off = values.map((value) => (Number.isFinite(value) ? value - mean : 0));
  const largest = off.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (largest <= 1e-12 * Math.max(1, Math.abs(mean))) return shares;
  let total = 0;
  for (let input = 0; input < INPUTS.length; input += 1) {
    let sum = 0;
    for (let i = 0; i < samples; i += 1) sum += off[i] * deviates[input * samples + i];
    shares[input] = sum * sum;
    total += sum * sum;
  }
  return shares.map((share) => share / total);
}

/** The inputs that make most of the scatter of `values`, largest first, at most three. */
export function driversOf(values: Float64Array, deviates: Float32Array, most = 3): Driver[] {
  const shares = sharesOfVariance(values, deviates);
  return INPUTS.map(({ id }, i): Driver => ({ input: id, share: shares[i] }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .toSorted((a, b) => b.share - a.share)
    .slice(0, most);
}
