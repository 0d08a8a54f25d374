/** One choice beside another, from samples that belong together. */
import { describe, expect, it } from 'vitest';
import { PRESETS } from '../../../src/neck/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { sampleExtremes } from '../../../src/mechanics/uncertainty/band-at.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import { asOfAnotherNeck, paired } from '../../../src/mechanics/uncertainty/paired.ts';
import { expectNear } from '../../expect-near.ts';

describe('two choices', () => {
  it('are counted sample by sample: worked by hand', () => {
    // Off by 3, 1, 2, 0 and by 1, 2, 2, 1: nearer, further, alike, further.
    const found = paired(Float64Array.of(3, -1, 2, 0), Float64Array.of(1, 2, -2, 1), 0);
    expect(found.nearer).toBe(0.375);
    expect(paired(Float64Array.of(3, -1), Float64Array.of(5, 1), 5).nearer).toBe(1);
    expect([found.bandMm.p05, found.bandMm.p95].map(Math.sign)).toEqual([-1, 1]);
  });

  it('that are one differ by nothing and are nearer in half', () => {
    const samples = Float64Array.of(0.1, -0.2, 0.4);
    expect(paired(samples, samples, 0.15)).toEqual({ bandMm: { p05: 0, p50: 0, p95: 0 }, nearer: 0.5 });
  });

  it('of one neck differ more surely than those of two pieces of wood', async () => {
    const { build } = PRESETS[0];
    const uncertainty = (await createEstimator(createPredictor()).estimate(build, { samples: 2000 }))!;
    const moment = { strung: true, days: build.settleDays, rodPercent: 0 };
    const [press, both] = (['press', 'both'] as const).map((method) => sampleExtremes(uncertainty, method, moment));
    const width = ({ bandMm }: ReturnType<typeof paired>) => bandMm.p95 - bandMm.p05;
    const one = paired(press, both, 0.15);
    const two = paired(press, asOfAnotherNeck(both), 0.15);
    expect(width(one)).toBeLessThan(0.6 * width(two));
    expectNear(one.bandMm.p50, two.bandMm.p50, 0.35, 'medians of differences of skew samples');
    expect(asOfAnotherNeck(both).toSorted()).toEqual(both.toSorted());
  });
});
