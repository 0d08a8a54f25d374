import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { deviationsAt, INPUTS, logSpread, spreadsOf } from '../../../src/mechanics/uncertainty/inputs.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';

const spreads = (change: Partial<Build>) => spreadsOf({ ...defaultBuild(), ...change });

describe('the uncertain inputs', () => {
  it('are all that a prediction can deviate in, each once', () => {
    expect(INPUTS.map(({ id }) => id).toSorted()).toEqual(Object.keys(AS_STATED).toSorted());
  });

  it('deviate by nothing at zero and by their spread at one', () => {
    const own = spreadsOf(defaultBuild());
    expect(deviationsAt(own, new Float64Array(INPUTS.length))).toEqual(AS_STATED);
    const one = deviationsAt(own, new Float64Array(INPUTS.length).fill(1));
    expectNear(one.kerfMm, 0.01, ROUNDING, 'an offset');
    expectNear(one.bite, Math.exp(0.4), ROUNDING, 'a factor');
  });

  it('a lognormal factor has its coefficient of variation', () => {
    // Variance of exp(s z) is e^{s²}(e^{s²} − 1), mean e^{s²/2}: any textbook on probability.
    for (const variation of [0.1, 0.22, 0.4]) {
      const square = logSpread(variation) ** 2;
      expectNear(Math.sqrt(Math.expm1(square)), variation, ROUNDING, 'the definition');
    }
  });

  it('a measured blank takes the place of the scatter of the species', () => {
    const species = spreads({});
    expectNear(species.neckModulus, logSpread(0.22), ROUNDING, 'one wood');
    expectNear(spreads({ neckBlankTest: 'tap' }).neckModulus, logSpread(0.03), ROUNDING, 'tapped');
    expectNear(spreads({ neckBlankTest: 'sag' }).neckModulus, logSpread(0.05), ROUNDING, 'bent');
    expectNear(spreads({ boardBlankTest: 'tap' }).boardModulus, logSpread(0.03), ROUNDING, 'tapped');
    expect(spreads({ neckBlankTest: 'tap' }).boardModulus).toBe(species.boardModulus);
  });

  it('different woods in one neck even each other out, pieces of one wood do not', () => {
    const one = logSpread(0.22);
    const maple = { wood: 'sugar-maple', share: 0.5 };
    expectNear(spreads({ laminates: [maple, maple] }).neckModulus, one, ROUNDING, 'one plank');
    // E of sugar maple 13 860, the tenth for shear in it, and of wenge 21 050 MPa (woods.ts), at equal widths.
    const two = spreads({ laminates: [maple, { wood: 'wenge', share: 0.5 }] }).neckModulus;
    expectNear(two, (one * Math.hypot(13860, 21050)) / (13860 + 21050), ROUNDING, 'root of the sum of squares');
  });

  it('what the bench log leaves of the bite takes the place of the prior', () => {
    expect(spreadsOf(defaultBuild()).bite).toBe(0.4);
    expect(spreadsOf(defaultBuild(), 0.15).bite).toBe(0.15);
  });
});
