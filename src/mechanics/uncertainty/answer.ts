/**
 * How one number answers to the uncertain inputs, from a few solves around the stated values.
 *
 *   ln q(z) = Σ_i (a_i·z_i + b_i·z_i²) + b_bn·z_b·z_n        z: inputs in standard deviations; q(0) = 1
 *
 * b, n: moduli of board and neck. Without bars and fillers every deflection is homogeneous of degree −1 in the two
 * moduli (0 for climate), so with L = s·z the second derivatives of ln q in L are Q_bb = Q_nn = −Q_bn. The neck's is
 * therefore taken from the board's, and one solve with a deviating neck is enough; bars and fillers disturb only this
 * second-order part.
 * Where q comes near zero or changes sign (the thrust of a one-way rod that passes the neutral axis) its logarithm is of
 * no use: q(z) = 1 + Σ_i (a_i·z_i + b_i·z_i²) + b_bn·z_b·z_n takes its place. Homogeneity then asks of the derivatives of
 * q itself that Q_bb + Q_bn = −Q_b and Q_nn + Q_bn = −Q_n.
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
  /** At −step; where it is missing the answer is taken as straight, the neck's modulus apart. */
  readonly minus?: number;
}

/** Ratios below this are not taken logarithmically. */
const LEAST_RATIO = 0.3;

/** The answer that goes through the trials. @param trials the board's modulus on both sides, before the neck's on one. */
export function fitAnswer(spreads: Spreads, trials: readonly Trial[]): Answer {
  const logarithmic = trials.every(({ plus, minus = 1 }) => Math.min(plus, minus) > LEAST_RATIO);
  const slope = new Float64Array(INPUTS.length);
  const curve = new Float64Array(INPUTS.length);
  const scale = (ratio: number) => (logarithmic ? Math.log(ratio) : ratio - 1);
  const b = spreads.boardModulus;
  const n = spreads.neckModulus;
  let cross = 0;
  for (const { input, step, plus, minus } of trials) {
    const at = INPUTS.findIndex(({ id }) => id === input);
    const up = scale(plus);
    if (minus !== undefined) {
      const down = scale(minus);
      slope[at] = (up - down) / (2 * step);
      curve[at] = (up + down) / (2 * step * step);
    } else if (at === NECK) {
      // Derivatives in L: Q_b, Q_bb of the board; Q_n from the step, Q_nn and Q_bn from homogeneity.
      const first = logarithmic ? 0 : slope[BOARD] / b;
      const second = (2 * curve[BOARD]) / (b * b);
      const far = step * n;
      const own = logarithmic ? 0 : 1;
      const neckFirst = (up - ((second + first) * far * far) / 2) / (far - (own * far * far) / 2);
      const neckSecond = second + first - own * neckFirst;
      slope[NECK] = neckFirst * n;
      curve[NECK] = (neckSecond / 2) * n * n;
      cross = -(second + first) * b * n;
    } else {
      slope[at] = up / step;
    }
  }
  return { logarithmic, slope, curve, cross };
}

/** q of every sample. @param deviates inputs × samples. */
export function answersAt({ logarithmic, slope, curve, cross }: Answer, deviates: Float64Array): Float64Array {
  const samples = deviates.length / INPUTS.length;
  const out = new Float64Array(samples);
  for (let input = 0; input < INPUTS.length; input += 1) {
    const a = slope[input];
    const b = curve[input];
    if (a === 0 && b === 0) continue;
    const z = deviates.subarray(input * samples, (input + 1) * samples);
    for (let i = 0; i < samples; i += 1) out[i] += (a + b * z[i]) * z[i];
  }
  const board = deviates.subarray(BOARD * samples, (BOARD + 1) * samples);
  const neck = deviates.subarray(NECK * samples, (NECK + 1) * samples);
  for (let i = 0; i < samples; i += 1) {
    const sum = out[i] + cross * board[i] * neck[i];
    out[i] = logarithmic ? Math.exp(sum) : 1 + sum;
  }
  return out;
}
