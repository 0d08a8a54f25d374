/**
 * Relaxation and creep of every sample at one time.
 *
 *   ω(t; a, c) = r + c·φ(t)·G(A),   r = 1/(1 + A),   A = a·(t/90 d)^0.21      exact, for the laws of time.ts:
 *   G(A) = 1 + ∫₀¹ (1 − σ)^0.21·r′(σ) dσ                                        the hereditary integral, in σ = s/t
 *
 * a relaxation of the sample, c factor on its creep. Both laws have one exponent, so G depends on time through A alone: one
 * Chebyshev series in ln A, made once, stands for all integrals (to 1e-5, against time.ts in the tests).
 */
import type { TimeInputs } from '../prediction-types.ts';
import { creep as creepOf, stringLineGrowth, wedgeForceLeft, wedgeLineLeft } from '../time.ts';

/** Days at which A = a. */
const UNIT_DAYS = 90;
const LEAST = 1e-3;
const MOST = 30;
const MIDDLE = Math.log(LEAST * MOST) / 2;
const HALF = Math.log(MOST / LEAST) / 2;
const DEGREE = 24;

/** G, from the integral itself. */
function integral(amount: number): number {
  return (wedgeLineLeft(UNIT_DAYS, amount, 1) - wedgeForceLeft(UNIT_DAYS, amount)) / creepOf(UNIT_DAYS);
}

/** Coefficients of the Chebyshev series of a function on −1 … 1. */
function chebyshev(of: (u: number) => number): Float64Array {
  const n = DEGREE + 1;
  const values = Array.from({ length: n }, (_, k) => of(Math.cos((Math.PI * (k + 0.5)) / n)));
  return Float64Array.from(values, (_, j) => {
    let sum = 0;
    for (let k = 0; k < n; k += 1) sum += values[k] * Math.cos((Math.PI * j * (k + 0.5)) / n);
    return ((j === 0 ? 1 : 2) / n) * sum;
  });
}

let series: Float64Array | undefined;

function seriesAt(coefficients: Float64Array, u: number): number {
  let b1 = 0;
  let b2 = 0;
  for (let j = DEGREE; j > 0; j -= 1) {
    const b0 = coefficients[j] + 2 * u * b1 - b2;
    b2 = b1;
    b1 = b0;
  }
  return coefficients[0] + u * b1 - b2;
}

/** G of an amount A ≥ 0: 1 at A = 0, straight from there to the series. */
function hereditary(amount: number): number {
  series ??= chebyshev((u) => integral(Math.exp(MIDDLE + HALF * u)));
  if (amount > MOST) return integral(amount);
  if (amount < LEAST) return 1 + (seriesAt(series, -1) - 1) * (amount / LEAST);
  return seriesAt(series, (Math.log(amount) - MIDDLE) / HALF);
}

export interface SampledTime {
  readonly time: TimeInputs;
  /** Factors on relaxation and creep, one a sample. */
  readonly relaxation: Float64Array;
  readonly creep: Float64Array;
}

/** ω of each sample, `days` after the frets went in. */
export function wedgeLineLeftOf({ time, relaxation, creep }: SampledTime, days: number): Float64Array {
  const samples = relaxation.length;
  const out = new Float64Array(samples).fill(1);
  if (days <= 0) return out;
  const amount = time.wedgeRelaxation * (1 / wedgeForceLeft(days, 1) - 1);
  const grown = time.creepFactor * creepOf(days);
  for (let i = 0; i < samples; i += 1) {
    const own = amount * relaxation[i];
    out[i] = 1 / (1 + own) + grown * creep[i] * hereditary(own);
  }
  return out;
}

/** 1 + φ of each sample, `days` after the strings went on. */
export function stringLineGrowthOf({ time, creep }: Pick<SampledTime, 'time' | 'creep'>, days: number): Float64Array {
  const grown = time.creepFactor * (stringLineGrowth(days, 1) - 1);
  return creep.map((factor) => 1 + grown * factor);
}
