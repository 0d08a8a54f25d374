/**
 * The linearised Monte Carlo against predictions solved anew with the same deviations: 100 seeds.
 *
 * Each seed is one neck with its own deviations. Two things are asked: that the linearised relief of that neck is the
 * solved one, measured by the half-width of the band, and that the band covers as many of the solved ones as it says.
 * Coverage stated: 90 %; of 100 necks between 81 and 97 lie inside (binomial, 99.8 %).
 */
import { describe, expect, it } from 'vitest';
import { PRESETS } from '../../../src/neck/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import type { Method, Moment } from '../../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../../src/mechanics/relief.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { bandAt, sampleLines } from '../../../src/mechanics/uncertainty/band-at.ts';
import { deviationsAt, INPUTS } from '../../../src/mechanics/uncertainty/inputs.ts';
import { normalQuantile, seededRandom } from '../../../src/mechanics/uncertainty/normal.ts';
import { drawSamples, factorsOf } from '../../../src/mechanics/uncertainty/sampling.ts';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { modelOf } from './model-of.ts';

const SEEDS = 100;
const ROD = { 'bolt-on-maple': 40, 'set-neck-mahogany': 50 } as const;

/** Plain draws, one seed a neck, unlike the stratified ones of the band. */
const seeded = Array.from({ length: SEEDS }, (_, seed) => {
  const random = seededRandom(9000 + seed);
  return INPUTS.map(() => normalQuantile(uniformFloat64(random) * (1 - 1e-12) + 5e-13));
});

describe.each(['bolt-on-maple', 'set-neck-mahogany'] as const)(
  '%s, 100 seeds',
  (id) => {
    const { build } = PRESETS.find((preset) => preset.id === id)!;
    const predictor = createPredictor();
    const model = modelOf(build, predictor);
    const draws = drawSamples(model, 1, 2000);
    const columns = Float64Array.from(INPUTS.flatMap((_, input) => seeded.map((deviates) => deviates[input])));
    const linear = factorsOf(model, columns);
    const solved = seeded.map((deviates) => predictor.predict(build, deviationsAt(model.spreads, deviates)));

    const states: readonly (readonly [name: string, method: Method, moment: Moment])[] = [
      ['fretted', 'press', { strung: false, days: 0, rodPercent: 0 }],
      ['strung', 'press', { strung: true, days: 0, rodPercent: 0 }],
      ['settled', 'press', { strung: true, days: 90, rodPercent: 0 }],
      ['rod set', 'press', { strung: true, days: 90, rodPercent: ROD[id] }],
      ['settled', 'glue', { strung: true, days: 90, rodPercent: 0 }],
      ['strung', 'both', { strung: true, days: 0, rodPercent: 0 }],
      ['ten years', 'both', { strung: true, days: 3650, rodPercent: 0 }],
    ];

    it.each(states)(
      '%s, %s: the linearised line is the solved one, and the band covers 90 %% of them',
      (_, method, moment) => {
        const band = bandAt(draws, method, moment);
        const lines = sampleLines(linear, method, moment);
        const exact = solved.map((prediction) => {
          const line = lineAt(prediction, method, moment).reliefMm;
          return Array.from(draws.xMm, (x) => sampleLine(prediction.stationXMm, line, x));
        });
        const errors: number[] = [];
        // Every third fret under the straightedge, and the last fret.
        const points = [...Array.from({ length: 5 }, (_point, k) => 3 * k + 2), draws.xMm.length - 2];
        for (const j of points) {
          const half = (band.p95Mm[j] - band.p05Mm[j]) / 2;
          let inside = 0;
          exact.forEach((relief, seed) => {
            errors.push(Math.abs(lines[j * SEEDS + seed] - relief[j]) / half);
            if (relief[j] >= band.p05Mm[j] && relief[j] <= band.p95Mm[j]) inside += 1;
          });
          expect(inside, `necks of 100 in the band at ${draws.xMm[j].toFixed(0)} mm`).toBeGreaterThanOrEqual(81);
          expect(inside, `necks of 100 in the band at ${draws.xMm[j].toFixed(0)} mm`).toBeLessThanOrEqual(97);
        }
        errors.sort((a, b) => a - b);
        // Shapes are kept and third derivatives left out: a few per cent of the half-width for nine in ten, a fifth at worst.
        expect(errors[Math.floor(0.9 * errors.length)]).toBeLessThan(0.08);
        expect(errors.at(-1)).toBeLessThan(0.25);
      },
    );
  },
  240_000,
);
