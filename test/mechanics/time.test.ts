/** Creep and relaxation beside quadrature apart from the library; the published values are rows of the table. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { creep, stringLineGrowth, wedgeForceLeft, wedgeLineLeft } from '../../src/mechanics/time.ts';
import { expectNear } from '../expect-near.ts';
import { boltzmannLineLeft } from './elements/boltzmann.ts';

describe('at once', () => {
  it('nothing has crept or relaxed', () => {
    expect(creep(0)).toBe(0);
    expect(creep(-1)).toBe(0);
    expect(wedgeForceLeft(0, 0.5)).toBe(1);
    expect(wedgeLineLeft(0, 0.5)).toBe(1);
    expect(stringLineGrowth(0)).toBe(1);
  });
});

describe('properties (seed 1403)', () => {
  const days = fc.double({ min: -3, max: Math.log10(5000), noNaN: true }).map((exponent) => 10 ** exponent);
  const amount = fc.double({ min: 0, max: 2, noNaN: true });
  const factor = fc.double({ min: 0.2, max: 3, noNaN: true });

  it('relaxing wedges on creeping wood follow Boltzmann’s integral', () => {
    fc.assert(
      fc.property(days, amount, factor, (t, a, f) => {
        expectNear(
          wedgeLineLeft(t, a, f),
          boltzmannLineLeft(t, a, f),
          3e-4,
          '64 steps; three times the error with three times the creep',
        );
      }),
      { seed: 1403, numRuns: 200 },
    );
  });

  it('wedges that do not relax creep like any load', () => {
    fc.assert(
      fc.property(days, factor, (t, f) => {
        expectNear(wedgeLineLeft(t, 0, f), stringLineGrowth(t, f), 1e-12, 'no relaxation, no integral');
      }),
      { seed: 1403, numRuns: 50 },
    );
  });

  it('on rigid wood they fade as their force does', () => {
    fc.assert(
      fc.property(days, amount, (t, a) => {
        expectNear(wedgeLineLeft(t, a, 0), wedgeForceLeft(t, a), 1e-12, 'no creep, no integral');
      }),
      { seed: 1403, numRuns: 50 },
    );
  });

  it('the more it relaxes the less is left; strings only ever sink further', () => {
    fc.assert(
      fc.property(days, days, amount, factor, (t, u, a, f) => {
        expect(wedgeLineLeft(t, a + 0.1, f)).toBeLessThan(wedgeLineLeft(t, a, f));
        expect(wedgeForceLeft(Math.max(t, u), a)).toBeLessThanOrEqual(wedgeForceLeft(Math.min(t, u), a));
        expect(stringLineGrowth(Math.max(t, u), f)).toBeGreaterThanOrEqual(stringLineGrowth(Math.min(t, u), f));
      }),
      { seed: 1403, numRuns: 100 },
    );
  });
});

it('with the constants of the program a neck’s wedges keep most of their bow', () => {
  // Two thirds of the force after three months, but the wood has crept meanwhile: 0.87 of the bow.
  expectNear(wedgeForceLeft(90, 0.5), 2 / 3, 1e-12, 'by construction');
  expect(wedgeLineLeft(90, 0.5)).toBeGreaterThan(0.8);
  expect(wedgeLineLeft(90, 0.5)).toBeLessThan(0.95);
});
