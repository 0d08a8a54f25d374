/** The prediction as JSON: bands, rod, when a back-bow has gone, levelling. */
import { describe, expect, it } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { METHODS } from '../../src/mechanics/prediction-types.ts';
import { predictionReport } from '../../src/mechanics/report.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const FEW = { samples: 400 };

describe.each(PRESETS)('$id', ({ build }) => {
  it('has bands that hold what is stated, and says what the rod can do', async () => {
    const prediction = predictor.predict(build);
    const report = predictionReport(prediction, build, (await estimator.estimate(build, FEW))!);
    expect(report.bands).toMatchObject({ seed: 1, samples: 400 });
    for (const method of METHODS) {
      const { bands, fretted, strung, settled, rodForTarget, levellingReliefMm } = report.methods[method];
      for (const [band, stated] of [
        [bands!.frettedReliefMm, fretted.reliefMm],
        [bands!.strungReliefMm, strung.reliefMm],
        [bands!.settledReliefMm, settled.reliefMm],
      ] as const) {
        expect(band.p05).toBeLessThanOrEqual(stated);
        expect(band.p95).toBeGreaterThanOrEqual(stated);
      }
      expect(rodForTarget.status === 'no-rod').toBe(build.rodKind === 'none');
      expect(bands!.rodPercentForTarget === null).toBe(build.rodKind === 'none');
      // What is reached is reached to the last digit of the report, a tenth of a micrometre.
      expect(rodForTarget.status === 'reached').toBe(Math.abs(rodForTarget.missMm) <= 1e-4);
      expect(levellingReliefMm).toHaveLength(build.fretCount);
    }
    // Nothing that JSON cannot say: infinities and NaN would turn into null without a word.
    const numbers: number[] = [];
    JSON.stringify(report, (_key, value: unknown) => {
      if (typeof value === 'number') numbers.push(value);
      return value;
    });
    expect(numbers.every(Number.isFinite)).toBe(true);
  });
});

it('gives the same bands on every run, and none when it is given none', async () => {
  const { build } = PRESETS[0]!;
  const prediction = predictor.predict(build);
  const report = async () => predictionReport(prediction, build, (await estimator.estimate(build, FEW))!);
  expect(await report()).toEqual(await report());
  expect(predictionReport(prediction, build).methods.press).not.toHaveProperty('bands');
});

it('gives the days after which a back-bow has gone, and null where there is none', () => {
  const light = { ...PRESETS[2]!.build, biteFactor: 2.2 };
  const report = predictionReport(predictor.predict(light), light);
  expect(report.methods.press.strung.reliefMm).toBeLessThan(0);
  expect(report.methods.press.flatAfterDays).toBeGreaterThan(0);
  expect(report.methods.glue.flatAfterDays).toBeNull();
});

it('says whether the state of levelling is the build’s or an assumption', () => {
  const { build } = PRESETS[0]!;
  const of = (levelledIn: 'none' | 'bare' | 'strung') =>
    predictionReport(predictor.predict({ ...build, levelledIn }), { ...build, levelledIn });
  expect(of('none')).toMatchObject({ levelledIn: 'bare', levelledInIsAssumed: true });
  expect(of('strung')).toMatchObject({ levelledIn: 'strung', levelledInIsAssumed: false });
  expect(of('strung').methods.press.levellingReliefMm).not.toEqual(of('bare').methods.press.levellingReliefMm);
});
