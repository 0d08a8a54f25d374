import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import type { Moment } from '../../../src/mechanics/prediction-types.ts';
import { METHODS } from '../../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../../src/mechanics/relief.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { bandAt, sampleExtremes } from '../../../src/mechanics/uncertainty/band-at.ts';
import { INPUTS } from '../../../src/mechanics/uncertainty/inputs.ts';
import { drawSamples, factorsOf } from '../../../src/mechanics/uncertainty/sampling.ts';
import { expectNear } from '../../expect-near.ts';
import { modelOf } from './model-of.ts';

const FRETS = 22;
const moments: fc.Arbitrary<Moment> = fc.record(
  {
    strung: fc.boolean(),
    days: fc.constantFrom(0, 1 / 24, 7, 90, 3650),
    rodPercent: fc.integer({ min: -100, max: 100 }),
    fretsIn: fc.uniqueArray(fc.integer({ min: 1, max: FRETS })),
    ofWood: fc.boolean(),
  },
  { requiredKeys: ['strung', 'days', 'rodPercent'] },
);

const VARIANTS: readonly (readonly [name: string, change: Partial<Build>])[] = [
  ['a new neck', {}],
  ['levelled bare, climate on', { levelledIn: 'bare', climateOn: true }],
  ['the last frets filed lower', { fallAwayMm: 0.4, fallAwayFromFret: 13 }],
  ['the same, levelled bare', { fallAwayMm: 0.4, fallAwayFromFret: 13, levelledIn: 'bare' }],
  ['a bowed old neck, levelled under strings', { levelledIn: 'strung', job: 'refret', startingBowMm: 0.3 }],
];

describe.each(VARIANTS)('%s', (_name, change) => {
  const build = { ...defaultBuild(), ...change };
  const model = modelOf(build);
  const stated = factorsOf(model, new Float64Array(INPUTS.length));
  const draws = drawSamples(model, 11, 400);

  it('without deviations the lines are the stated ones (seed 5103)', () => {
    fc.assert(
      fc.property(moments, fc.constantFrom(...METHODS), (moment, method) => {
        const line = lineAt(model.prediction, method, moment);
        const band = bandAt(stated, method, moment);
        const size = Math.max(...line.reliefMm.map(Math.abs), 0.05);
        band.xMm.forEach((x, j) => {
          const exact = sampleLine(model.prediction.stationXMm, line.reliefMm, x);
          // One sample at its median: the three points coincide. 1e-4: the series for the hereditary integral.
          expect(Math.abs(band.p50Mm[j] - exact), `at ${x} mm`).toBeLessThan(1e-4 * size);
          expect(band.p05Mm[j]).toBe(band.p95Mm[j]);
        });
      }),
      { seed: 5103, numRuns: 60 },
    );
  });

  it('the band is in order everywhere and holds the median (seed 5104)', () => {
    fc.assert(
      fc.property(moments, fc.constantFrom(...METHODS), (moment, method) => {
        const band = bandAt(draws, method, moment);
        const { extreme } = band;
        expect(extreme.p05 <= extreme.p50 && extreme.p50 <= extreme.p95).toBe(true);
        band.xMm.forEach((x, j) => {
          const at = [band.p05Mm[j], band.p50Mm[j], band.p95Mm[j]];
          expect(at.every(Number.isFinite), `at ${x} mm`).toBe(true);
          expect(at[0] <= at[1] && at[1] <= at[2], `at ${x} mm`).toBe(true);
        });
      }),
      { seed: 5104, numRuns: 40 },
    );
  });
});

describe('the band of a moment', () => {
  const model = modelOf(defaultBuild());
  const draws = drawSamples(model, 12, 500);
  const moment: Moment = { strung: true, days: 30, rodPercent: 20 };

  it('widens fret by fret while they go in', () => {
    const widths = [0, 4, 10, 16, 22].map((count) => {
      const fretsIn = Array.from({ length: count }, (_, i) => i + 1);
      const { extreme } = bandAt(draws, 'press', { strung: false, days: 0, rodPercent: 0, fretsIn });
      return extreme.p95 - extreme.p05;
    });
    expect(widths[0]).toBe(0);
    for (let i = 1; i < widths.length; i += 1) expect(widths[i]).toBeGreaterThan(widths[i - 1]);
  });

  it('is zero at the ends of the straightedge', () => {
    const band = bandAt(draws, 'press', moment);
    for (const j of [draws.spanFrom, draws.spanTo]) {
      expect(Math.abs(band.p05Mm[j])).toBeLessThan(1e-12);
      expect(Math.abs(band.p95Mm[j])).toBeLessThan(1e-12);
    }
  });

  it('takes the extremes of the same lines', () => {
    for (const rodPercent of [0, 20]) {
      const band = bandAt(draws, 'both', { ...moment, rodPercent });
      const sorted = sampleExtremes(draws, 'both', { ...moment, rodPercent }).toSorted();
      expectNear(band.extreme.p05, sorted[Math.round(0.05 * 499)], 1e-12, 'summed in another order');
      expectNear(band.extreme.p50, sorted[Math.round(0.5 * 499)], 1e-12, 'summed in another order');
      expectNear(band.extreme.p95, sorted[Math.round(0.95 * 499)], 1e-12, 'summed in another order');
    }
  });

  it('refuses moments that cannot be', () => {
    expect(() => bandAt(draws, 'press', { ...moment, days: -1 })).toThrow('days-negative, days -1');
    expect(() => bandAt(draws, 'press', { ...moment, rodPercent: 101 })).toThrow('rod-beyond-range, rodPercent 101');
    expect(() => bandAt(draws, 'press', { ...moment, fretsIn: [23] })).toThrow('fret-not-there, fret 23');
  });
});
