/**
 * Standard normal deviates, seeded and stratified.
 *
 * Each input's range is cut into as many equally probable strips as there are samples, one deviate is drawn from each
 * strip, and the strips are shuffled independently for each input (Latin hypercube: McKay, Beckman & Conover 1979).
 * Chance correlations between inputs are then taken out: what the earlier inputs explain of a row is subtracted, and the
 * row's own deviates are put in the order of the remainder (after Iman & Conover 1982). Medians and 5 and 95 % points of
 * sums of inputs scatter several times less from seed to seed than with plain draws, each input by itself has its exact
 * distribution, and no input is blamed for the work of another.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';

// Rational approximations of the normal quantile (P. J. Acklam 2003; from memory), relative error 1.15e-9.
const CENTRE_TOP = [
  -3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2, -3.066479806614716e1,
  2.506628277459239,
];
const CENTRE_BOTTOM = [
  -5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1, -1.328068155288572e1, 1,
];
const TAIL_TOP = [
  -7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734, 4.374664141464968,
  2.938163982698783,
];
const TAIL_BOTTOM = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416, 1];

function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}

/** Quantile of the standard normal distribution. @throws {RangeError} outside 0 < probability < 1. */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(`probability is ${probability}; it must lie between 0 and 1`);
  }
  if (probability > 0.5) return -normalQuantile(1 - probability);
  if (probability < 0.02425) {
    const q = Math.sqrt(-2 * Math.log(probability));
    return polynomial(TAIL_TOP, q) / polynomial(TAIL_BOTTOM, q);
  }
  const q = probability - 0.5;
  return (polynomial(CENTRE_TOP, q * q) * q) / polynomial(CENTRE_BOTTOM, q * q);
}

/** Outputs thrown away at first: generators whose seeds differ little begin alike. */
const WARM_UP = 64;

/** A generator of random numbers; the same seed gives the same numbers. */
export function seededRandom(seed: number): RandomGenerator {
  const random = xoroshiro128plus(seed);
  for (let i = 0; i < WARM_UP; i += 1) random.next();
  return random;
}

/**
 * Standard normal deviates: `inputs` × `samples`, one row an input.
 * @param seed a whole number; the same seed gives the same deviates.
 */
export function normalDeviates(seed: number, samples: number, inputs: number): Float64Array {
  const random = seededRandom(seed);
  const out = new Float64Array(samples * inputs);
  const rows = Array.from({ length: inputs }, (_, input) => out.subarray(input * samples, (input + 1) * samples));
  rows.forEach((row, input) => {
    for (let i = 0; i < samples; i += 1) {
      // Open at both ends: 2^-54 keeps the first strip off zero.
      row[i] = normalQuantile((i + uniformFloat64(random) + 2 ** -54) / (samples + 2 ** -50));
    }
    const sorted = Float64Array.from(row);
    for (let i = samples - 1; i > 0; i -= 1) {
      const j = uniformInt(random, 0, i);
      const kept = row[i];
      row[i] = row[j]!;
      row[j] = kept;
    }
    decorrelate(row, sorted, rows.slice(0, input));
  });
  return out;
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i] * b[i];
  return sum;
}

/** Reorders a row so that it hardly correlates with the rows before it. @param sorted its deviates in order. */
function decorrelate(row: Float64Array, sorted: Float64Array, before: readonly Float64Array[]): void {
  if (before.length === 0) return;
  const rest = Float64Array.from(row);
  for (const other of before) {
    const slope = product(rest, other) / product(other, other);
    for (let i = 0; i < rest.length; i += 1) rest[i] -= slope * other[i];
  }
  const order = Uint32Array.from(rest.keys()).sort((a, b) => rest[a] - rest[b]);
  order.forEach((at, rank) => (row[at] = sorted[rank]!));
}
