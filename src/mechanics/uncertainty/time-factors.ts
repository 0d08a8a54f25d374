/**
 * Relaxation and creep of every sample at one time.
 *
 *   ω(t; a·f, c) = r(t; a·f) + c·g(t; a·f)      exact, since creep enters linearly (time.ts): g = ω(t; ·, 1) − r
 *
 * r force left, f factor on the relaxation a, c factor on creep. g holds the hereditary integral; it is smooth in ln f, so
 * a Chebyshev series of degree 6 over the range of the samples stands for it, and 7 integrals for thousands.
 */
import type { TimeInputs } from '../prediction-types.ts';
import { stringLineGrowth, wedgeForceLeft, wedgeLineLeft } from '../time.ts';

const DEGREE = 6;

/** Coefficients of the Chebyshev series of a function on −1 … 1. */
function chebyshev(of: (u: number) => number): number[] {
  const n = DEGREE + 1;
  const values = Array.from({ length: n }, (_, k) => of(Math.cos((Math.PI * (k + 0.5)) / n)));
  return values.map((_, j) => {
    let sum = 0;
    for (let k = 0; k < n; k += 1) sum += values[k]! * Math.cos((Math.PI * j * (k + 0.5)) / n);
    return ((j === 0 ? 1 : 2) / n) * sum;
  });
}

function seriesAt(coefficients: readonly number[], u: number): number {
  let b1 = 0;
  let b2 = 0;
  for (let j = coefficients.length - 1; j > 0; j -= 1) {
    const b0 = coefficients[j]! + 2 * u * b1 - b2;
    b2 = b1;
    b1 = b0;
  }
  return coefficients[0]! + u * b1 - b2;
}

export interface SampledTime {
  readonly time: TimeInputs;
  readonly relaxation: Float64Array;
  readonly creep: Float64Array;
}

/** ω of each sample, `days` after the frets went in. */
export function wedgeLineLeftOf({ time, relaxation, creep }: SampledTime, days: number): Float64Array {
  const samples = relaxation.length;
  const out = new Float64Array(samples).fill(1);
  if (days <= 0) return out;
  let least = Infinity;
  let most = 0;
  for (const factor of relaxation) {
    if (factor < least) least = factor;
    if (factor > most) most = factor;
  }
  const middle = Math.log(least * most) / 2;
  const half = Math.max(1e-9, Math.log(most / least) / 2);
  const creeping = chebyshev((u) => {
    const amount = time.wedgeRelaxation * Math.exp(middle + half * u);
    return wedgeLineLeft(days, amount, 1) - wedgeForceLeft(days, amount);
  });
  const perAmount = 1 / wedgeForceLeft(days, 1) - 1;
  for (let i = 0; i < samples; i += 1) {
    const force = 1 / (1 + time.wedgeRelaxation * relaxation[i]! * perAmount);
    const u = (Math.log(relaxation[i]!) - middle) / half;
    out[i] = force + time.creepFactor * creep[i]! * seriesAt(creeping, u);
  }
  return out;
}

/** 1 + φ of each sample, `days` after the strings went on. */
export function stringLineGrowthOf({ time, creep }: Pick<SampledTime, 'time' | 'creep'>, days: number): Float64Array {
  const perFactor = stringLineGrowth(days, 1) - 1;
  return creep.map((factor) => 1 + time.creepFactor * factor * perFactor);
}
