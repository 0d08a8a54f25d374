import { erf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { normalDeviates, normalQuantile } from '../../../src/mechanics/uncertainty/normal.ts';
import { expectNear } from '../../expect-near.ts';

/** Distribution function of the standard normal, from a general mathematics library. */
const distribution = (z: number) => (1 + erf(z / Math.SQRT2)) / 2;

describe('the normal quantile', () => {
  it('inverts the distribution function of mathjs', () => {
    for (const p of [0.0005, 0.005, 0.02, 0.025, 0.05, 0.1, 0.3, 0.45, 0.6, 0.9, 0.975, 0.999]) {
      expectNear(distribution(normalQuantile(p)), p, 1e-7, 'quantile good to 1.2e-9, times the density over p');
    }
  });

  it('gives the values of the tables', () => {
    // Standard normal tables, e.g. NIST/SEMATECH e-Handbook 1.3.6.7.1 (from memory).
    for (const [p, z] of [
      [0.9, 1.2815515655446],
      [0.95, 1.6448536269515],
      [0.975, 1.9599639845401],
      [0.995, 2.5758293035489],
    ] as const) {
      expectNear(normalQuantile(p), z, 2e-9, 'the approximation’s stated 1.15e-9');
      expectNear(normalQuantile(1 - p), -z, 2e-9, 'symmetry');
    }
    expect(Math.abs(normalQuantile(0.5))).toBe(0);
  });

  it('refuses what is no probability', () => {
    for (const p of [0, 1, -0.1, Number.NaN]) expect(() => normalQuantile(p)).toThrow(/probability is/);
  });
});

describe('deviates', () => {
  const SAMPLES = 2000;
  const INPUTS = 4;
  const deviates = normalDeviates(7, SAMPLES, INPUTS);
  const row = (input: number) => deviates.subarray(input * SAMPLES, (input + 1) * SAMPLES);

  it('has one in each of as many equally probable strips as there are samples', () => {
    for (let input = 0; input < INPUTS; input += 1) {
      const strips = new Set(Array.from(row(input), (z) => Math.floor(distribution(z) * SAMPLES * (1 - 1e-9))));
      // The approximation may move a deviate over the edge of its strip, now and then.
      expect(strips.size).toBeGreaterThan(0.998 * SAMPLES);
    }
  });

  it('has mean 0, variance 1, and rows that know nothing of each other', () => {
    const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / SAMPLES;
    for (let a = 0; a < INPUTS; a += 1) {
      expect(Math.abs(mean(row(a)))).toBeLessThan(1e-3);
      expectNear(
        mean(row(a).map((z) => z * z)),
        1,
        1e-2,
        'the outermost strips are wide: z² there is anything above 12',
      );
      for (let b = 0; b < a; b += 1) {
        // Independent rows would correlate by chance with 1/√2000 = 0.022.
        expect(Math.abs(mean(row(a).map((z, i) => z * row(b)[i])))).toBeLessThan(0.004);
      }
    }
  });

  it('follows its seed', () => {
    expect(normalDeviates(7, SAMPLES, INPUTS)).toEqual(deviates);
    expect(normalDeviates(8, SAMPLES, INPUTS)).not.toEqual(deviates);
  });
});
