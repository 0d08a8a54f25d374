import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { METHODS } from '../../../src/mechanics/prediction-types.ts';
import { createEstimator, type Progress } from '../../../src/mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../../../src/mechanics/uncertainty/types.ts';
import { expectNear } from '../../expect-near.ts';
import { uncertaintyOf } from './model-of.ts';

const READOUTS = ['fretted', 'strung', 'settled', 'rodSet', 'wedgeForceN'] as const;
const width = (band: { p05: number; p95: number }) => band.p95 - band.p05;

/** Every number in plain data, by its path. */
function* numbersOf(value: unknown, path = ''): Generator<[string, number]> {
  if (typeof value === 'number') yield [path, value];
  else if (ArrayBuffer.isView(value)) for (const number of value as Float64Array) yield [path, number];
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) yield* numbersOf(inner, `${path}.${key}`);
}

describe.each(PRESETS)('$id', ({ build }) => {
  const predictor = createPredictor();
  const uncertainty = uncertaintyOf(build, { samples: 600 }, predictor);
  const prediction = predictor.predict(build);

  it('has no number that is not one', () => {
    for (const [path, value] of numbersOf(uncertainty))
      expect(Number.isFinite(value), `a number at ${path}`).toBe(true);
  });

  it('bands are in order and hold the stated value', () => {
    for (const method of METHODS) {
      const bands = uncertainty.methods[method];
      for (const name of READOUTS) {
        expect(bands[name].p05).toBeLessThanOrEqual(bands[name].p50);
        expect(bands[name].p50).toBeLessThanOrEqual(bands[name].p95);
      }
      for (const name of ['fretted', 'strung', 'settled', 'rodSet'] as const) {
        const stated = prediction.methods[method][name].extremeMm;
        expect(stated, `${method} ${name}`).toBeGreaterThanOrEqual(bands[name].p05 - 1e-9);
        expect(stated, `${method} ${name}`).toBeLessThanOrEqual(bands[name].p95 + 1e-9);
      }
    }
  });

  it('names what makes the bands', () => {
    const { press, glue } = uncertainty.methods;
    for (const method of METHODS) {
      for (const name of READOUTS) {
        const { drivers } = uncertainty.methods[method][name];
        expect(drivers.length).toBeLessThanOrEqual(3);
        const shares = drivers.map(({ share }) => share);
        expect(shares).toEqual(shares.toSorted((a, b) => b - a));
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
      }
    }
    // Before any measurement the bite is what is known least, or how far a fretted board slides under its clamps; without
    // wedges only the woods are left.
    expect(press.fretted.drivers[0].input).toBe(build.workOrder === 'board-first' ? 'clampSlide' : 'bite');
    expect(glue.strung.drivers.map(({ input }) => input).toSorted()).toEqual(['boardModulus', 'neckModulus']);
    expect(glue.fretted.drivers).toEqual([]);
    expect(width(glue.fretted)).toBe(0);
  });

  it('crosses a worker', () => {
    expect(structuredClone(uncertainty)).toEqual(uncertainty);
  });
});

describe('the Monte Carlo', () => {
  const build = defaultBuild();
  const predictor = createPredictor();
  const standard = uncertaintyOf(build, {}, predictor);

  it('gives the same band for the same seed, and nearly the same for another', () => {
    expect(uncertaintyOf(build, { seed: 1 }, predictor)).toEqual(standard);
    const other = uncertaintyOf(build, { seed: 2 }, predictor);
    expect(other).not.toEqual(standard);
    for (const name of READOUTS) {
      // 2 000 samples: a 5 % point scatters by 0.022/density ≈ a few per cent of the width; 8 % is four of those.
      const scale = width(standard.methods.press[name]);
      for (const point of ['p05', 'p50', 'p95'] as const) {
        const apart = Math.abs(other.methods.press[name][point] - standard.methods.press[name][point]);
        expect(apart, `${name} ${point}`).toBeLessThan(0.08 * scale);
      }
    }
  });

  it.each([
    ['a tapped neck', { neckBlankTest: 'tap', neckBlankFrequencyHz: 240 }, 'glue', 'strung'],
    ['a tapped board', { boardBlankTest: 'tap', boardBlankFrequencyHz: 150 }, 'glue', 'strung'],
    ['a bent neck', { neckBlankTest: 'sag', neckBlankSagMm: 0.9 }, 'glue', 'settled'],
  ] as const)('%s narrows the band', (_name, change, method, readout) => {
    const measured = uncertaintyOf({ ...build, ...change }, {}, predictor).methods[method][readout];
    const species = standard.methods[method][readout];
    // In parts of the median, since the measured modulus moves the median too.
    expect(width(measured) / measured.p50).toBeLessThan((0.97 * width(species)) / species.p50);
  });

  it('both blanks measured leave a seventh of the strings’ band', () => {
    const both = {
      ...build,
      neckBlankTest: 'tap',
      boardBlankTest: 'tap',
      boardBlankFrequencyHz: 150,
      neckBlankFrequencyHz: 240,
    } as const;
    const { strung } = uncertaintyOf(both, {}, predictor).methods.glue;
    const species = standard.methods.glue.strung;
    // 3 % for 22 % on both: 0.136. Slot depth, grain across and glue leave 7 % of the old width by themselves: √(0.136² + 0.07²).
    const ratio = width(strung) / strung.p50 / (width(species) / species.p50);
    expectNear(ratio, 0.153, 0.05, 'ratio of the spreads, lognormal against lognormal');
  });

  it('a bench log narrows it', () => {
    const logged = uncertaintyOf(build, { biteLogSpread: 0.12 }, predictor);
    expect(width(logged.methods.press.fretted)).toBeLessThan(0.75 * width(standard.methods.press.fretted));
  });

  it('knows that frets without bite as stated may bite after all', () => {
    const loose = { ...build, kerfMm: build.studWidthMm };
    const { press } = uncertaintyOf(loose, {}, predictor).methods;
    expect(Math.abs(predictor.predict(loose).methods.press.fretted.extremeMm)).toBe(0);
    expect(press.fretted.p95).toBe(0);
    expect(press.fretted.p05).toBeLessThan(0);
    expect(press.wedgeForceN.p95).toBeGreaterThan(50);
  });

  it('says how likely the rod can do it', () => {
    const rods = (change: Partial<Build>) =>
      uncertaintyOf({ ...build, ...change }, {}, predictor).methods.press.rodPercentForTarget;
    const easy = rods({ targetReliefMm: 0.1 })!;
    expect(easy.chance).toBeGreaterThan(0.95);
    expect(easy.p05).toBeLessThan(easy.p95);
    // A one-way rod cannot bend forward: more relief than the neck has is out of reach for most.
    const forward = rods({ rodKind: 'one-way', targetReliefMm: 0.35 })!;
    expect(forward.chance).toBeLessThan(0.1);
    expect(forward.p50).toBeLessThan(0);
    expect(rods({ rodKind: 'none' })).toBeNull();
  });

  it('refuses what cannot be', () => {
    expect(() => uncertaintyOf(build, { samples: 99 }, predictor)).toThrow(
      'samples-beyond-range, samples 99, least 100, most 100000',
    );
    expect(() => uncertaintyOf(build, { seed: 1.5 }, predictor)).toThrow('seed-not-whole, seed 1.5');
    expect(() => uncertaintyOf(build, { biteLogSpread: -1 }, predictor)).toThrow(
      'bite-spread-negative, biteLogSpread -1',
    );
  });
});

describe('giving it up', () => {
  it('stops between steps, and says how far it came', async () => {
    const estimator = createEstimator(createPredictor());
    const seen: Progress[] = [];
    const run = (stopAfter: number): Promise<Uncertainty | null> => {
      seen.length = 0;
      return estimator.estimate(
        defaultBuild(),
        { samples: 200 },
        () => seen.length >= stopAfter,
        () => Promise.resolve(),
        (progress) => seen.push(progress),
      );
    };
    expect(await run(3)).toBeNull();
    expect(seen.map(({ done }) => done)).toEqual([1, 2, 3]);
    const whole = await run(Infinity);
    expect(whole?.samples).toBe(200);
    expect(seen.at(-1)).toEqual({ done: seen[0].total, total: seen[0].total });
  });

  it('lets others run between steps', async () => {
    const estimator = createEstimator(createPredictor());
    let turns = 0;
    const timer = setInterval(() => (turns += 1), 0);
    await estimator.estimate(defaultBuild(), { samples: 200 });
    clearInterval(timer);
    expect(turns).toBeGreaterThan(3);
  });
});
