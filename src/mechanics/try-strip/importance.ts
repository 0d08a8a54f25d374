/**
 * Samples of a posterior over independent standard normal deviates, by importance sampling.
 *
 *   first pass    from the prior N(0, 1); weights L(z)^t, t ≤ 1 as large as leaves at least so many effective samples
 *   next pass     from  (1 − p)·N(μ, Σ_w) + p·N(0, 1),  Σ_w⁻¹ = 1 + (Σ⁻¹ − 1)/1.5², μ and Σ the weighted mean
 *                 and covariance of the pass before: widened where the readings have sharpened it, and as the prior elsewhere;
 *                 weights L(z)·N(z; 0, 1) over that density
 *   effective     (Σ w)²/Σ w²                                            Kish 1965, from memory
 *
 * The second pass is the last one unless t had to be below 1 or few samples count; then the same is done again, at most so
 * often; weights of the last pass that leave fewer are flattened to w^t in the same way: readings that nothing can explain
 * widen what they leave, and are told as doubtful. The part from the prior keeps every weight below L/p: no sample that the normal misses can outweigh the rest. That is
 * the usual defensive mixture (Hesterberg 1995, from memory). Mean and covariance of D deviates from few samples are noisy:
 * what they differ from the prior's is taken in part, Σ = (n·S + k·1)/(n + k) with n effective samples and k = D/2.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { factorDense, substituteBack, substituteForward } from '../elements/dense.ts';
import { normalQuantile, seededRandom } from '../uncertainty/normal.ts';

/** Deviates of `samples` samples: dimensions × samples. */
export type LogLikelihood = (deviates: Float64Array, samples: number) => Float64Array;

export interface Weighted {
  readonly dimensions: number;
  readonly samples: number;
  /** dimensions × samples */
  readonly deviates: Float64Array;
  /** Summing to 1; flattened where but a few samples would hold them all, so that no band shrinks to those. */
  readonly weights: Float64Array;
  /** Before that. */
  readonly effective: number;
  /** How many passes it took. */
  readonly passes: number;
}

const FIRST_SAMPLES = 6000;
const LATER_SAMPLES = 8000;
const MOST_PASSES = 5;
/** Effective samples that a pass must leave, by tempering if need be, to fit a normal to. */
const FEWEST_TO_FIT = 150;
/** With so many effective samples in the last pass no other is made. */
const ENOUGH = 1000;
const FROM_PRIOR = 0.15;
const WIDER = 1.5;

type Random = ReturnType<typeof seededRandom>;

const normal = (random: Random) => normalQuantile((uniformFloat64(random) + 2 ** -54) / (1 + 2 ** -52));

/** Weights of logarithms to a power, summing to 1. */
function weightsOf(logs: Float64Array, power = 1): { readonly weights: Float64Array; readonly effective: number } {
  const most = logs.reduce((a, b) => Math.max(a, b), -Infinity);
  const weights = logs.map((log) => Math.exp(power * (log - most)));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let squares = 0;
  for (let i = 0; i < weights.length; i += 1) {
    weights[i] /= total;
    squares += weights[i] ** 2;
  }
  return { weights, effective: 1 / squares };
}

/** The weights, at the greatest power up to 1 that leaves enough effective samples. */
function tempered(logs: Float64Array): {
  readonly weights: Float64Array;
  readonly effective: number;
  readonly power: number;
} {
  const whole = weightsOf(logs);
  if (whole.effective >= FEWEST_TO_FIT) return { ...whole, power: 1 };
  let [low, high] = [0, 1];
  for (let step = 0; step < 25; step += 1) {
    const middle = (low + high) / 2;
    if (weightsOf(logs, middle).effective >= FEWEST_TO_FIT) low = middle;
    else high = middle;
  }
  return { ...weightsOf(logs, low), power: low };
}

/** A normal by its mean and the lower Cholesky factor R of its precision, row by row: precision R·Rᵀ. */
interface Normal {
  readonly mean: Float64Array;
  readonly root: Float64Array;
  /** Σ ln of the diagonal of R. */
  readonly logRoot: number;
}

function fit(deviates: Float64Array, dimensions: number, weights: Float64Array, effective: number): Normal {
  const samples = weights.length;
  const shrink = dimensions / 2;
  const mean = new Float64Array(dimensions);
  for (let d = 0; d < dimensions; d += 1)
    for (let i = 0; i < samples; i += 1) mean[d] += weights[i] * deviates[d * samples + i];
  const covariance = new Float64Array(dimensions * dimensions);
  const scaled = new Float64Array(samples);
  for (let a = 0; a < dimensions; a += 1) {
    for (let i = 0; i < samples; i += 1) scaled[i] = weights[i] * (deviates[a * samples + i] - mean[a]);
    for (let b = 0; b <= a; b += 1) {
      let sum = 0;
      for (let i = 0; i < samples; i += 1) sum += scaled[i] * (deviates[b * samples + i] - mean[b]);
      covariance[a * dimensions + b] = (effective * sum + (a === b ? shrink : 0)) / (effective + shrink);
    }
  }
  const root = widened(inverse(covariance, dimensions), dimensions);
  // The part of the prior in it keeps it positive.
  factorDense(root, dimensions);
  let logRoot = 0;
  for (let d = 0; d < dimensions; d += 1) logRoot += Math.log(root[d * dimensions + d]);
  return { mean, root, logRoot };
}

/** 1 + (P − 1)/w²: only what the readings have sharpened becomes wider. */
function widened(precision: Float64Array, n: number): Float64Array {
  return precision.map((value, at) => {
    const one = Math.floor(at / n) === at % n ? 1 : 0;
    return one + (value - one) / WIDER ** 2;
  });
}

/** Of a symmetric positive definite matrix, of which the lower half is given; all of it is returned. */
function inverse(matrix: Float64Array, n: number): Float64Array {
  const lower = matrix.slice();
  factorDense(lower, n);
  const out = new Float64Array(n * n);
  const column = new Float64Array(n);
  for (let c = 0; c < n; c += 1) {
    column.fill(0);
    column[c] = 1;
    substituteForward(lower, column);
    substituteBack(lower, column);
    for (let a = 0; a < n; a += 1) out[a * n + c] = column[a]!;
  }
  return out;
}

/** Draws from the mixture; writes ln of prior over mixture of each sample into `logs`. */
function drawMixture(
  random: Random,
  { mean, root, logRoot }: Normal,
  samples: number,
  logs: Float64Array,
): Float64Array {
  const n = mean.length;
  const deviates = new Float64Array(n * samples);
  const off = new Float64Array(n);
  for (let i = 0; i < samples; i += 1) {
    const isFromPrior = uniformFloat64(random) < FROM_PRIOR;
    for (let d = 0; d < n; d += 1) off[d] = normal(random);
    if (isFromPrior) for (let d = 0; d < n; d += 1) off[d] -= mean[d];
    else substituteBack(root, off);
    let ofPrior = 0;
    let ofFit = 0;
    for (let d = 0; d < n; d += 1) {
      const z = mean[d] + off[d];
      deviates[d * samples + i] = z;
      ofPrior += z * z;
      let u = 0;
      for (let k = d; k < n; k += 1) u += root[k * n + d] * off[k];
      ofFit += u * u;
    }
    // ln(N(z; 0, 1)/mixture) = −ln(p + (1 − p)·N_fit/N_prior)
    logs[i] = -Math.log(FROM_PRIOR + (1 - FROM_PRIOR) * Math.exp((ofPrior - ofFit) / 2 + logRoot));
  }
  return deviates;
}

let kept: { readonly seed: number; readonly dimensions: number; readonly deviates: Float64Array } | undefined;

/** Those of the last seed are kept, so that who has seen them knows them again. */
function priorDeviates(dimensions: number, seed: number): Float64Array {
  if (kept?.seed !== seed || kept.dimensions !== dimensions) {
    const random = seededRandom(seed);
    const deviates = new Float64Array(dimensions * FIRST_SAMPLES);
    for (let i = 0; i < deviates.length; i += 1) deviates[i] = normal(random);
    kept = { seed, dimensions, deviates };
  }
  return kept.deviates;
}

/** Seeded: the same numbers for the same seed. @param logLikelihood must not change what it is given */
export function importanceSamples(dimensions: number, logLikelihood: LogLikelihood, seed: number): Weighted {
  const random = seededRandom(~seed);
  let deviates = priorDeviates(dimensions, seed);
  let logs = logLikelihood(deviates, FIRST_SAMPLES);
  for (let pass = 2; ; pass += 1) {
    const before = tempered(logs);
    const proposal = fit(deviates, dimensions, before.weights, before.effective);
    const priors = new Float64Array(LATER_SAMPLES);
    deviates = drawMixture(random, proposal, LATER_SAMPLES, priors);
    logs = logLikelihood(deviates, LATER_SAMPLES).map((log, i) => log + priors[i]);
    const { effective } = weightsOf(logs);
    if (effective >= ENOUGH || pass === MOST_PASSES) {
      const { weights } = tempered(logs);
      return { dimensions, samples: LATER_SAMPLES, deviates, weights, effective, passes: pass };
    }
  }
}

/** Indices of samples that all count alike: each is taken as often as its weight says, within one. */
export function resampled({ weights }: Pick<Weighted, 'weights'>, count: number, seed: number): Uint32Array {
  const out = new Uint32Array(count);
  const start = uniformFloat64(seededRandom(seed));
  let below = weights[0];
  let at = 0;
  for (let i = 0; i < count; i += 1) {
    const wanted = (i + start) / count;
    while (below < wanted && at < weights.length - 1) below += weights[(at += 1)];
    out[i] = at;
  }
  return out;
}
