/** Importance sampling beside posteriors that are known in closed form. */
import { describe, expect, it } from 'vitest';
import {
  importanceSamples,
  resampled,
  type LogLikelihood,
  type Weighted,
} from '../../../src/mechanics/try-strip/importance.ts';
import { expectNear } from '../../expect-near.ts';

const DIMENSIONS = 15;

/** One reading of Σ h_d·z_d with error σ: the posterior is normal. */
function linear(h: readonly number[], reading: number, sigma: number): LogLikelihood {
  return (deviates, samples) =>
    Float64Array.from({ length: samples }, (_, i) => {
      const sum = h.reduce((total, weight, d) => total + weight * deviates[d * samples + i], 0);
      return -(((reading - sum) / sigma) ** 2) / 2;
    });
}

function moments({ deviates, weights, samples }: Weighted, of: (z: (d: number) => number) => number) {
  const values = Float64Array.from({ length: samples }, (_, i) => of((d) => deviates[d * samples + i]));
  const mean = values.reduce((sum, value, i) => sum + weights[i] * value, 0);
  const variance = values.reduce((sum, value, i) => sum + weights[i] * (value - mean) ** 2, 0);
  return { mean, variance };
}

describe.each([
  ['wide', 1, 0.8],
  ['as sharp as a feeler gauge', 1.5, 0.05],
  ['sharp, and far out in the prior', 4.2, 0.05],
])('a reading that is %s (seed 3)', (_what, reading, sigma) => {
  const h = [0.8, -0.5, 0.3, ...Array<number>(DIMENSIONS - 3).fill(0)];
  const size = h.reduce((sum, weight) => sum + weight ** 2, 0);
  const gain = size + sigma ** 2;
  const found = importanceSamples(DIMENSIONS, linear(h, reading, sigma), 3);

  it('leaves the mean and the variance that algebra gives', () => {
    // Var of the reading's sum: 1/(1/hh + 1/σ²); of one deviate 1 − h²/(hh + σ²).
    const sum = moments(found, (z) => h.reduce((total, weight, d) => total + weight * z(d), 0));
    expectNear(sum.mean, (size / gain) * reading, 0.02, 'samples');
    expectNear(sum.variance, (size * sigma ** 2) / gain, 0.1, 'samples');
    for (const d of [0, 1, 2, 9]) {
      const one = moments(found, (z) => z(d));
      expect(Math.abs(one.mean - (h[d] / gain) * reading)).toBeLessThan(0.08);
      expectNear(one.variance, 1 - h[d] ** 2 / gain, 0.12, 'samples');
    }
  });

  it('leaves a thousand effective samples, the same for the same seed', () => {
    expect(found.effective).toBeGreaterThan(1000);
    expectNear(
      found.weights.reduce((sum, weight) => sum + weight, 0),
      1,
      1e-9,
      'a sum',
    );
    expect(importanceSamples(DIMENSIONS, linear(h, reading, sigma), 3).deviates).toEqual(found.deviates);
    expect(importanceSamples(DIMENSIONS, linear(h, reading, sigma), 4).deviates).not.toEqual(found.deviates);
  });
});

it('finds both of two truths (seed 6)', () => {
  // A reading of z² leaves two places; a normal fitted to both covers them.
  const twice: LogLikelihood = (deviates, samples) =>
    Float64Array.from({ length: samples }, (_, i) => -(((deviates[i] ** 2 - 2.25) / 0.3) ** 2) / 2);
  const { deviates, weights, samples } = importanceSamples(8, twice, 6);
  const positive = weights.reduce((sum, weight, i) => sum + (deviates[i] > 0 ? weight : 0), 0);
  expect(Math.abs(positive - 0.5)).toBeLessThan(0.05);
  const near = weights.reduce((sum, weight, i) => sum + weight * Math.abs(deviates[i]), 0);
  expectNear(near, 1.5, 0.05, 'samples');
  expect(samples).toBeGreaterThan(1000);
});

it('takes each sample as often as its weight says, within one', () => {
  const weights = Float64Array.of(0.5, 0, 0.125, 0.375);
  const taken = resampled({ weights }, 1000, 2);
  const counts = [0, 1, 2, 3].map((at) => taken.filter((index) => index === at).length);
  counts.forEach((count, at) => expect(Math.abs(count - 1000 * weights[at])).toBeLessThanOrEqual(1));
  expect(counts[1]).toBe(0);
});

it('shrinks to no few samples where nothing explains the readings (seed 9)', () => {
  // Eight readings nine standard deviations out in the prior, each as sharp as a thousandth of one.
  const torn: LogLikelihood = (deviates, samples) =>
    Float64Array.from({ length: samples }, (_, i) => {
      const far = Array.from({ length: 8 }, (__, d) => ((deviates[d * samples + i] - 9) / 0.001) ** 2);
      return -far.reduce((sum, square) => sum + square, 0) / 2;
    });
  const { weights, effective } = importanceSamples(8, torn, 9);
  expect(effective).toBeLessThan(100);
  expect(1 / weights.reduce((sum, weight) => sum + weight ** 2, 0)).toBeGreaterThan(140);
});
