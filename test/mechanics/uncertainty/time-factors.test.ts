import { describe, expect, it } from 'vitest';
import { stringLineGrowth, wedgeLineLeft } from '../../../src/mechanics/time.ts';
import { normalDeviates } from '../../../src/mechanics/uncertainty/normal.ts';
import { stringLineGrowthOf, wedgeLineLeftOf } from '../../../src/mechanics/uncertainty/time-factors.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';

const SAMPLES = 300;
const [relaxation, creep] = [0, 1].map((row) =>
  normalDeviates(3, SAMPLES, 2)
    .subarray(row * SAMPLES, (row + 1) * SAMPLES)
    .map((z) => Math.exp(0.385 * z)),
) as [Float64Array, Float64Array];

describe('relaxation and creep of the samples', () => {
  it.each([0, 1 / 24, 3, 93, 3653])('are those of each sample by itself after %s days', (days) => {
    const time = { restDays: 3, settleDays: 90, wedgeRelaxation: 0.5, creepFactor: 1.2 };
    const wedges = wedgeLineLeftOf({ time, relaxation, creep }, days);
    const strings = stringLineGrowthOf({ time, creep }, days);
    for (let i = 0; i < SAMPLES; i += 1) {
      expectNear(
        wedges[i],
        wedgeLineLeft(days, 0.5 * relaxation[i], 1.2 * creep[i]),
        1e-5,
        'series of degree 24 for the hereditary integral',
      );
      expectNear(strings[i], stringLineGrowth(days, 1.2 * creep[i]), ROUNDING, 'creep enters linearly');
    }
  });

  it.each([0.01, 0.2, 2, 40])('whatever the relaxation: %s', (wedgeRelaxation) => {
    const time = { restDays: 3, settleDays: 90, wedgeRelaxation, creepFactor: 1 };
    const wedges = wedgeLineLeftOf({ time, relaxation, creep }, 10);
    for (let i = 0; i < SAMPLES; i += 7) {
      const exact = wedgeLineLeft(10, wedgeRelaxation * relaxation[i], creep[i]);
      expectNear(wedges[i], exact, 1e-5, 'inside the series, below it and above it');
    }
  });

  it('wedges that do not relax only creep', () => {
    const time = { restDays: 3, settleDays: 90, wedgeRelaxation: 0, creepFactor: 1 };
    const wedges = wedgeLineLeftOf({ time, relaxation, creep }, 90);
    const strings = stringLineGrowthOf({ time, creep }, 90);
    for (let i = 0; i < SAMPLES; i += 1) expectNear(wedges[i], strings[i], 1e-9, 'the same creep under a held force');
    expect(new Set(wedges).size).toBe(SAMPLES);
  });
});
