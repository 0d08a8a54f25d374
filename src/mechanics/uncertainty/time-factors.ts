/**
 * Relaxation and creep of every sample at one time.
 *
 *   ω(t; a·f, c) = ω(t; a·f, 0) + c·(ω(t; a·f, 1) − ω(t; a·f, 0))      exact: creep enters linearly (time.ts)
 *
 * f factor on the relaxation a, c factor on creep. In ln f both parts are smooth: a Chebyshev series of degree 9 over the
 * range of the samples holds them to 1e-7, so that the hereditary integral is taken 20 times instead of thousands.
 */
import type { TimeInputs } from '../prediction-types.ts';
import { stringLineGrowth, wedgeLineLeft } from '../time.ts';

const DEGREE = 9;

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
  if (days <= 0) return new Float64Array(relaxation.length).fill(1);
  let least = Infinity;
  let most = -Infinity;
  for (const factor of relaxation) {
    if (factor < least) least = factor;
    if (factor > most) most = factor;
  }
  const middle = Math.log(least * most) / 2;
  const half = Math.max(1e-9, Math.log(most / least) / 2);
  const left = (u: number, amountOfCreep: number) =>
    wedgeLineLeft(days, time.wedgeRelaxation * Math.exp(middle + half * u), amountOfCreep);
  const still = chebyshev((u) => left(u, 0));
  const creeping = chebyshev((u) => left(u, 1) - left(u, 0));
  return relaxation.map((factor, i) => {
    const u = (Math.log(factor) - middle) / half;
    return seriesAt(still, u) + time.creepFactor * creep[i]! * seriesAt(creeping, u);
  });
}

/** 1 + φ of each sample, `days` after the strings went on. */
export function stringLineGrowthOf({ time, creep }: SampledTime, days: number): Float64Array {
  const perFactor = stringLineGrowth(days, 1) - 1;
  return creep.map((factor) => 1 + time.creepFactor * factor * perFactor);
}
