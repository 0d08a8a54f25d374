/** The rule of three that the advice is held against. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectNear, ROUNDING } from '../fretwork/near.ts';
import { inProportion, type ProportionInput } from './rule-of-three.ts';

describe('the rule of three, worked by hand', () => {
  const input: ProportionInput = {
    predictedSoFarMm: -0.06,
    measuredSoFarMm: -0.09,
    predictedFullMm: -0.24,
    tolerance: 0.15,
    kerfMm: 0.58,
    studWidthMm: 0.76,
  };

  it('widens the kerf of the rest in proportion', () => {
    // ratio 0.09/0.06 = 1.5; the rest would make 1.5·0.18 = 0.27; in all 0.36 against 0.24.
    // It may make 0.24 − 0.09 = 0.15: share 0.15/0.27 = 0.55556; kerf 0.76 − 0.55556·0.18 = 0.66
    const advice = inProportion(input);
    expect(advice.advice).toBe('widen-kerf');
    expectNear(advice.ratio, 1.5, ROUNDING, 'exact decimals');
    expectNear(advice.expectedFullMm, -0.36, ROUNDING, 'exact decimals');
    expectNear(advice.restShare, 5 / 9, ROUNDING, '0.15/0.27');
    expectNear(advice.kerfMm!, 0.66, ROUNDING, 'exact decimals');
  });

  it.each([
    ['go-on', { measuredSoFarMm: -0.066 }], // 1.1 × 0.24 = 0.264: 0.024 over, 0.036 allowed
    ['behind', { measuredSoFarMm: -0.04 }],
    ['glue-the-rest', { measuredSoFarMm: -0.235 }], // 0.005 left of 3.9 × 0.18
    ['past-target', { measuredSoFarMm: -0.3 }],
    ['widen-kerf', { targetFullMm: -0.15 }],
  ] as const)('%s', (advice, change) => {
    const found = inProportion({ ...input, ...change });
    expect(found.advice).toBe(advice);
    expect(found.kerfMm === undefined).toBe(advice !== 'widen-kerf');
  });

  it('refuses a prediction that has no direction', () => {
    expect(() => inProportion({ ...input, predictedSoFarMm: 0 })).toThrow(/0 mm and -0.24 mm/);
    expect(() => inProportion({ ...input, predictedSoFarMm: 0.01 })).toThrow(RangeError);
    expect(() => inProportion({ ...input, measuredSoFarMm: Number.NaN })).toThrow(/measuredSoFarMm is NaN/);
  });

  it('the advised kerf lies between kerf and studs and brings a proportional neck to its target (seed 6802)', () => {
    const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(share, fc.double({ min: 0.5, max: 4, noNaN: true }), (done, ratio) => {
        const full = -0.3;
        const found = inProportion({
          ...input,
          predictedFullMm: full,
          predictedSoFarMm: full * done,
          measuredSoFarMm: full * done * ratio,
        });
        const kerf = found.kerfMm ?? 0.66;
        expect(kerf).toBeGreaterThan(0.58);
        expect(kerf).toBeLessThan(0.76);
        const reached = full * done * ratio + found.restShare * ratio * full * (1 - done);
        expectNear(reached, full, 1e-9, 'linear by construction');
      }),
      { seed: 6802, numRuns: 200 },
    );
  });
});
