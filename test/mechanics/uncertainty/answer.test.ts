import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { answersAt, fitAnswer, type Trial } from '../../../src/mechanics/uncertainty/answer.ts';
import { INPUTS, spreadsOf, type UncertainInput } from '../../../src/mechanics/uncertainty/inputs.ts';
import { expectNear } from '../../expect-near.ts';

const SPREADS = spreadsOf(defaultBuild());
const index = (id: UncertainInput) => INPUTS.findIndex((input) => input.id === id);

/** Deviates of one sample with the moduli off by zb and zn. */
function deviates(zb: number, zn: number): Float64Array {
  const z = new Float64Array(INPUTS.length);
  z[index('boardModulus')] = zb;
  z[index('neckModulus')] = zn;
  return z;
}

/** Trials of a function of the two moduli, as the model makes them. */
function trialsOf(q: (board: number, neck: number) => number): Trial[] {
  const at = (zb: number, zn: number) =>
    q(Math.exp(SPREADS.boardModulus * zb), Math.exp(SPREADS.neckModulus * zn)) / q(1, 1);
  return [
    { input: 'boardModulus', step: 1.5, plus: at(1.5, 0), minus: at(-1.5, 0) },
    { input: 'neckModulus', step: 1.5, plus: at(0, 1.5) },
  ];
}

function expectFollowed(q: (board: number, neck: number) => number, tolerance: number, why: string): void {
  const answer = fitAnswer(SPREADS, trialsOf(q));
  for (const zb of [-2, -1, 0, 1, 2]) {
    for (const zn of [-2, -1, 0, 1, 2]) {
      const exact = q(Math.exp(SPREADS.boardModulus * zb), Math.exp(SPREADS.neckModulus * zn)) / q(1, 1);
      const [got] = answersAt(answer, deviates(zb, zn));
      expect(Math.abs(got - exact), `at ${zb}, ${zn}: ${got} for ${exact} (${why})`).toBeLessThan(tolerance);
    }
  }
}

describe('answers to the moduli', () => {
  it('a power law is met exactly', () => {
    const answer = fitAnswer(
      SPREADS,
      trialsOf((b, n) => b ** -0.4 * n ** -0.6),
    );
    expect(answer.logarithmic).toBe(true);
    const [got] = answersAt(answer, deviates(1.7, -2.3));
    const exact = Math.exp(-0.4 * 1.7 * SPREADS.boardModulus + 0.6 * 2.3 * SPREADS.neckModulus);
    expectNear(got, exact, 1e-12, 'linear in the logarithms');
  });

  it('the compliance of two layers glued together', () => {
    // Composite beam of layers of 6 and 15 mm, unit width (elementary beam theory).
    const compliance = (b: number, n: number) => {
      const axis = (b * 6 * 3 + n * 15 * 13.5) / (b * 6 + n * 15);
      return 1 / (b * (18 + 6 * (axis - 3) ** 2) + n * (281.25 + 15 * (13.5 - axis) ** 2));
    };
    expectFollowed(compliance, 2e-2, 'third derivatives left out, two standard deviations away on both');
  });

  it('a force through an axis that wanders: no logarithm where the sign may change', () => {
    // A thrust at 9.9 mm depth on the same beam bends it by its distance from the axis, which is stated as 10.5 mm.
    const bow = (b: number, n: number) => {
      const axis = (b * 6 * 3 + n * 15 * 13.5) / (b * 6 + n * 15);
      return (9.9 - axis) / (b * (18 + 6 * (axis - 3) ** 2) + n * (281.25 + 15 * (13.5 - axis) ** 2));
    };
    expect(fitAnswer(SPREADS, trialsOf(bow)).logarithmic).toBe(false);
    expectFollowed(bow, 0.35, 'q runs from −2.0 to 3.2 here; third derivatives left out');
  });

  it('an input that does nothing leaves 1', () => {
    const answer = fitAnswer(
      SPREADS,
      trialsOf(() => 5),
    );
    expect(answersAt(answer, deviates(2, -2))).toEqual(Float64Array.of(1));
  });
});
