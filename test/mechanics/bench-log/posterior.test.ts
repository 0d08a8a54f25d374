import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { ORDINARY_SCATTER } from '../../../src/mechanics/bench-log/entry.ts';
import { bitePosterior } from '../../../src/mechanics/bench-log/posterior.ts';
import { predictedPart } from '../../../src/mechanics/bench-log/predicted.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import type { Method } from '../../../src/mechanics/prediction-types.ts';
import { sampleExtremes } from '../../../src/mechanics/uncertainty/band-at.ts';
import { INPUTS } from '../../../src/mechanics/uncertainty/inputs.ts';
import { normalQuantile, seededRandom } from '../../../src/mechanics/uncertainty/normal.ts';
import { factorsOf } from '../../../src/mechanics/uncertainty/sampling.ts';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { draw } from '../../draw.ts';
import { expectNear } from '../../expect-near.ts';
import { modelOf, uncertaintyOf } from '../uncertainty/model-of.ts';
import { ENTRY } from './entries.ts';

/** The bite and the area of the studs together: √(0.4² + 0.31²). */
const PRIOR = 0.5060632;
const GRID = 'grid of ln c in steps of 0.008';

describe('without readings', () => {
  it('is the prior', () => {
    const prior = bitePosterior([]);
    expectNear(prior.median, 1, 1e-9, 'symmetry');
    expectNear(prior.logSpread, PRIOR, 1e-4, GRID);
    expectNear(prior.p95, Math.exp(PRIOR * 1.6448536), 1e-4, 'normal tables');
    expectNear(prior.p05, Math.exp(-PRIOR * 1.6448536), 1e-4, 'normal tables');
    expect(prior.necks).toBe(0);
  });

  it('stays the prior after a neck that was only glued', () => {
    const glued = {
      ...ENTRY,
      method: 'glue',
      measuredFrettedMm: null,
      measuredStrungMm: 0.3,
      predictedStrungFretsMm: 0,
    } as const;
    expect(bitePosterior([glued])).toEqual(bitePosterior([]));
  });
});

describe('one neck measured with its frets in', () => {
  const fretted = {
    ...ENTRY,
    measuredStrungMm: null,
    gaugeErrorMm: 0.004,
    measuredFrettedMm: -0.42,
    predictedFrettedMm: -0.3,
  };

  it('is the product of two normals in the logarithm when the gauge is fine', () => {
    // Textbook (e.g. Gelman et al., Bayesian Data Analysis ch. 2; from memory): precisions add, means are weighted by them.
    const variance = (1.15 * 0.3) ** 2 + (0.004 / 0.42) ** 2;
    const precision = 1 / PRIOR ** 2 + 1 / variance;
    const mean = (Math.log(1.4) + 0.06) / variance / precision;
    const after = bitePosterior([fretted]);
    expectNear(Math.log(after.median), mean, 5e-3, 'the gauge in mm is not quite normal in the logarithm');
    expectNear(after.logSpread, 1 / Math.sqrt(precision), 5e-3, 'the same');
    expect(after.necks).toBe(1);
  });

  it('says less the worse the gauge and the wider the scatter', () => {
    const spread = (change: Partial<LogEntry>) => bitePosterior([{ ...fretted, ...change }]).logSpread;
    const fine = spread({});
    expect(spread({ gaugeErrorMm: 0.05 })).toBeGreaterThan(fine);
    expect(spread({ fretScatter: 0.4 })).toBeGreaterThan(fine);
    expect(spread({ gaugeErrorMm: 0.5, fretScatter: 1 })).toBeLessThan(PRIOR);
  });

  it('is told in terms of the neck’s own bite factor', () => {
    // Predicted with 1.4 on board and measured as predicted: the same as 1.4 times the prediction with 1.
    const corrected = { ...fretted, predictedFrettedMm: -0.42, biteFactor: 1.4 };
    expectNear(bitePosterior([corrected]).median, bitePosterior([fretted]).median, 1e-3, GRID);
  });

  it('leaves an old bow out of account', () => {
    const bowed = { ...fretted, measuredFrettedMm: 0.08, predictedFrettedMm: 0.2, predictedFrettedFretsMm: -0.3 };
    expectNear(bitePosterior([bowed]).median, bitePosterior([fretted]).median, 1e-9, 'both readings moved by 0.5');
  });
});

describe('strung only', () => {
  it('moves the bite by what the frets’ part explains', () => {
    const strung = { ...ENTRY, measuredFrettedMm: null };
    const after = (measuredStrungMm: number) => bitePosterior([{ ...strung, measuredStrungMm }]);
    expectNear(
      after(0.11).median,
      1,
      0.05,
      'measured as predicted: the shift and the skewness of the lognormal parts are left',
    );
    expect(after(0).median).toBeGreaterThan(after(0.11).median);
    expect(after(0.25).median).toBeLessThan(after(0.11).median);
    expect(after(0.11).logSpread).toBeLessThan(0.35);
  });

  it('adds to the reading with frets in', () => {
    const both = bitePosterior([ENTRY]);
    const alone = bitePosterior([{ ...ENTRY, measuredStrungMm: null }]);
    expect(both.logSpread).toBeLessThan(alone.logSpread);
    expect(both.necks).toBe(1);
  });
});

it('readings accumulate whatever their order', () => {
  const list = [-0.2, -0.35, -0.28, -0.4].map((measuredFrettedMm) => ({ ...ENTRY, measuredFrettedMm }));
  const spreads = list.map((_, i) => bitePosterior(list.slice(0, i + 1)).logSpread);
  expect(spreads).toEqual(spreads.toSorted((a, b) => b - a));
  expectNear(bitePosterior(list.toReversed()).median, bitePosterior(list).median, 1e-9, 'a sum of logarithms');
});

describe('what an entry keeps of a prediction', () => {
  const build = { ...defaultBuild(), biteFactor: 1.2 };
  const predictor = createPredictor();
  const prediction = predictor.predict(build);

  it('is its relief, and the part of it that grows with the bite', () => {
    const part = predictedPart(prediction, 'press', build);
    const { press } = prediction.methods;
    expect(part.predictedFrettedMm).toBe(press.fretted.extremeMm);
    expect(part.predictedStrungMm).toBe(press.strung.extremeMm);
    expectNear(part.predictedFrettedFretsMm!, press.fretted.extremeMm, 1e-12, 'a new neck is straight before');
    expect(part.predictedStrungFretsMm).toBeLessThan(0);
    expect(part).toMatchObject({ biteFactor: 1.2, studShape: 1, embeddingLengthMm: 0.017, ...ORDINARY_SCATTER });
    // A tenth more bite: the frets' part grows by a tenth, less what the opening slots take back.
    const more = predictor.predict({ ...build, biteFactor: 1.32 });
    const change =
      predictedPart(more, 'press', { ...build, biteFactor: 1.32 }).predictedStrungMm! - part.predictedStrungMm!;
    expectNear(
      change,
      0.1 * part.predictedStrungFretsMm!,
      0.12,
      'the slots give, the studs act as springs, and the two places are not quite one',
    );
  });

  it('levelled crowns have forgotten the frets’ part on the day', () => {
    const levelled = predictor.predict({ ...build, levelledIn: 'strung' });
    const part = predictedPart(levelled, 'press', build, 0);
    expect(Math.abs(part.predictedStrungFretsMm!)).toBeLessThan(1e-12);
    const later = predictedPart(levelled, 'press', build, 365);
    expect(Math.abs(later.predictedStrungFretsMm!)).toBeGreaterThan(1e-3);
  });

  it('takes the scatter of the neck’s own band', () => {
    const { scatter } = uncertaintyOf(build, { samples: 400 }, predictor).methods.press;
    const part = predictedPart(prediction, 'press', build, 0, scatter);
    expect(part).toMatchObject({ fretScatter: scatter.wedges, stringScatter: scatter.strings });
    expectNear(scatter.wedgesMean, ORDINARY_SCATTER.fretShift, 0.15, 'one digit');
    // The constants for an ordinary neck are those of the standard build.
    expectNear(scatter.wedges, ORDINARY_SCATTER.fretScatter, 0.05, 'two digits');
    expectNear(scatter.strings, ORDINARY_SCATTER.stringScatter, 0.05, 'two digits');
    expectNear(scatter.correlation, ORDINARY_SCATTER.scatterCorrelation, 0.1, 'one digit');
  });
});

/**
 * 500 seeded workshops whose frets truly bite 1.4 times as hard as predicted. Each has 3 to 8 necks with woods, kerfs and
 * wire of their own deviations (the area of its studs apart, which no bow tells from the bite), run through the calculation itself (the sampled model, which the coverage tests hold to
 * the full solve), read with a gauge that errs by 0.015 mm: with frets in, strung, or both.
 */
const WORKSHOPS = draw(500, 500);

describe(`${WORKSHOPS} seeded workshops with a true factor of 1.4`, () => {
  const TRUE = 1.4;
  const GAUGE = 0.015;
  const build = defaultBuild();
  const predictor = createPredictor();
  const model = modelOf(build, predictor);
  const { scatter } = uncertaintyOf(build, {}, predictor).methods.press;
  const kept = Object.fromEntries(
    (['press', 'both'] as const).map((method) => [method, predictedPart(model.prediction, method, build, 0, scatter)]),
  ) as Record<Method, ReturnType<typeof predictedPart>>;

  const workshops = Array.from({ length: WORKSHOPS }, (_, seed) => {
    const random = seededRandom(40_000 + seed);
    const normal = () => normalQuantile(uniformFloat64(random) * (1 - 1e-12) + 5e-13);
    const necks = uniformInt(random, 3, 8);
    const deviates = new Float64Array(necks * INPUTS.length);
    INPUTS.forEach(({ id }, input) => {
      for (let neck = 0; neck < necks; neck += 1) {
        deviates[input * necks + neck] =
          id === 'bite' ? Math.log(TRUE) / model.spreads.bite : id === 'studArea' ? 0 : normal();
      }
    });
    const real = factorsOf(model, deviates);
    const entries = Array.from({ length: necks }, (_neck, neck): LogEntry => {
      const method = uniformInt(random, 0, 1) === 0 ? 'press' : 'both';
      const what = uniformInt(random, 0, 2);
      const read = (strung: boolean) =>
        sampleExtremes(real, method, { strung, days: 0, rodPercent: 0 })[neck] + GAUGE * normal();
      return {
        ...ENTRY,
        ...kept[method],
        neck: `No. ${neck + 1}`,
        method,
        gaugeErrorMm: GAUGE,
        measuredFrettedMm: what === 1 ? null : read(false),
        measuredStrungMm: what === 0 ? null : read(true),
      };
    });
    return bitePosterior(entries);
  });

  it('the 90 % interval holds it in at least 90 % of them', () => {
    const covered = workshops.filter(({ p05, p95 }) => p05 <= TRUE && TRUE <= p95).length;
    expect(covered).toBeGreaterThanOrEqual(0.9 * WORKSHOPS);
    // Not by being useless: the intervals are less than half as wide as the prior's.
    const spreads = workshops.map(({ logSpread }) => logSpread).toSorted((a, b) => a - b);
    expect(spreads[WORKSHOPS / 2]).toBeLessThan(0.16);
  });

  it('the median comes nearer to it than the prior’s 1 in nearly all of them', () => {
    const nearer = workshops.filter(({ median }) => Math.abs(Math.log(median / TRUE)) < Math.log(TRUE)).length;
    expect(nearer).toBeGreaterThanOrEqual(Math.floor(0.962 * WORKSHOPS));
  });
});
