/**
 * How one number answers to the uncertain inputs, from a few solves around the stated values.
 *
 *   ln q(z) = Σ_i (a_i·z_i + b_i·z_i²) + b_bn·z_b·z_n        z: inputs in standard deviations; q(0) = 1
 *
 * b, n: moduli of board and neck. Without bars and fillers every deflection is homogeneous of degree −1 in the two
 * moduli, so with L = s·z the second derivatives of ln q in L sum to zero along each row: b_bn = −(b_b/s_b² + b_n/s_n²)·s_b·s_n.
 * Where q comes near zero or changes sign (the thrust of a one-way rod that passes the neutral axis), its logarithm is of
 * no use: q(z) = 1 + Σ_i (a_i·z_i + b_i·z_i²) + b_bn·z_b·z_n takes its place, with the same relation between the second
 * derivatives of q, of which homogeneity asks Q_bb + Q_bn = −q_b and Q_nn + Q_bn = −q_n.
 */
import { INPUTS, type Spreads, type UncertainInput } from './inputs.ts';

const BOARD = INPUTS.findIndex(({ id }) => id === 'boardModulus');
const NECK = INPUTS.findIndex(({ id }) => id === 'neckModulus');

export interface Answer {
  readonly logarithmic: boolean;
  /** a_i and b_i in the order of `INPUTS`. */
  readonly slope: Float64Array;
  readonly curve: Float64Array;
  /** b_bn. */
  readonly cross: number;
}

/** q at some steps of one input, in standard deviations, over q as stated. */
export interface Trial {
  readonly input: UncertainInput;
  readonly step: number;
  readonly plus: number;
  /** At −step; where it is missing the answer is taken as straight. */
  readonly minus?: number;
}

/** Ratios outside this range are not taken logarithmically. */
const LEAST_RATIO = 0.3;

/** The answer that goes through the trials. */
export function fitAnswer(spreads: Spreads, trials: readonly Trial[]): Answer {
  const logarithmic = trials.every(({ plus, minus = 1 }) => Math.min(plus, minus) > LEAST_RATIO);
  const slope = new Float64Array(INPUTS.length);
  const curve = new Float64Array(INPUTS.length);
  const scale = (ratio: number) => (logarithmic ? Math.log(ratio) : ratio - 1);
  for (const { input, step, plus, minus } of trials) {
    const at = INPUTS.findIndex(({ id }) => id === input);
    const up = scale(plus);
    const down = minus === undefined ? -up : scale(minus);
    slope[at] = (up - down) / (2 * step);
    curve[at] = (up + down) / (2 * step * step);
  }
  const b = spreads.boardModulus;
  const n = spreads.neckModulus;
  const bend = curve[BOARD]! / (b * b) + curve[NECK]! / (n * n);
  const tilt = logarithmic ? 0 : (slope[BOARD]! / b + slope[NECK]! / n) / 2;
  return { logarithmic, slope, curve, cross: -(bend + tilt) * b * n };
}

/** q at the deviates of one sample. */
export function answerAt(
  { logarithmic, slope, curve, cross }: Answer,
  deviates: ArrayLike<number>,
  offset = 0,
): number {
  let sum = cross * deviates[offset + BOARD]! * deviates[offset + NECK]!;
  for (let i = 0; i < slope.length; i += 1) {
    const z = deviates[offset + i]!;
    sum += (slope[i]! + curve[i]! * z) * z;
  }
  return logarithmic ? Math.exp(sum) : 1 + sum;
}
