/** What to measure next: what narrows the band, by how much, and what is left out. */
import { describe, expect, it } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { boardProperties, speciesModulusMPa } from '../../src/mechanics/elements/materials.ts';
import { sampleExtremes } from '../../src/mechanics/uncertainty/band-at.ts';
import { bandOf } from '../../src/mechanics/uncertainty/band.ts';
import { createEstimator, type Drawn, type EstimateOptions } from '../../src/mechanics/uncertainty/estimate.ts';
import { INPUTS, spreadsOf } from '../../src/mechanics/uncertainty/inputs.ts';
import { shareLeft, widthKnowing } from '../../src/mechanics/uncertainty/narrowing.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import {
  measurable,
  MEASUREMENT_IDS,
  MEASUREMENTS,
  ranked,
  STANDARD_MINUTES,
  whatToMeasure,
  type MeasurementId,
  type WhatToMeasure,
} from '../../src/verdict/what-to-measure.ts';
import { expectNear } from '../expect-near.ts';

const estimator = createEstimator(createPredictor());
const SAMPLES = { samples: 1000 };
const build = defaultBuild();
const settledOf = (of: Build) => ({ strung: true, days: of.settleDays, rodPercent: 0 });

function drawn(of: Build): Drawn {
  const drawing = estimator.drawing(of, SAMPLES);
  for (;;) {
    const step = drawing.next();
    if (step.done) return step.value;
  }
}

async function measuring(
  of: Build,
  done: readonly MeasurementId[] = [],
  options: EstimateOptions = {},
): Promise<WhatToMeasure> {
  return (await whatToMeasure(estimator, of, done, { ...SAMPLES, ...options }))!;
}
const ids = ({ narrowings }: WhatToMeasure) => narrowings.map(({ id }) => id);
const removed = (found: WhatToMeasure, id: MeasurementId) =>
  found.narrowings.find((one) => one.id === id)?.removedMm ?? 0;

/** Tapped, with numbers that give just the density and the stiffness of its species: E = 0.9465·(m f²/b)·(L³/t³)·T₁. */
function tappedAsSpecies(of: Build): Partial<Build> {
  const [lengthMm, widthMm, thicknessMm] = [560, 70, 9];
  const massG = (boardProperties(of).densityKgM3 * lengthMm * widthMm * thicknessMm) / 1e6;
  const shape = 1 + 6.585 * (thicknessMm / lengthMm) ** 2;
  const modulus = speciesModulusMPa(of, 'board') * 1e6;
  const frequency = Math.sqrt((modulus * widthMm * (thicknessMm / lengthMm) ** 3) / (0.9465 * massG * shape));
  return {
    boardBlankTest: 'tap',
    boardBlankLengthMm: lengthMm,
    boardBlankWidthMm: widthMm,
    boardBlankThicknessMm: thicknessMm,
    boardBlankMassG: massG,
    boardBlankFrequencyHz: frequency,
  };
}

describe('the band that a measurement removes', () => {
  it('starts from the band that the page shows', async () => {
    for (const { build: of } of PRESETS.slice(0, 3)) {
      const { beforeMm } = await measuring(of);
      const all = (await estimator.estimate(of, SAMPLES))!;
      const { p05, p95 } = bandOf(sampleExtremes(all, of.method, settledOf(of)));
      expectNear(beforeMm, p95 - p05, 1e-5, 'the page’s deviates come back from single precision');
    }
  });

  it.each(PRESETS.map(({ id, build: of }) => [id, of] as const))(
    'never gets less with a better instrument, nor negative: %s',
    (_id, of) => {
      const question = { ...drawn(of), method: of.method, moment: settledOf(of) };
      const nothing = { left: {}, readings: [] };
      const spreads = spreadsOf(of);
      for (const { id: input } of INPUTS) {
        const shares = [1, 0.75, 0.5, 0.25, 0.1, 0].map((share) =>
          shareLeft(question, nothing, { left: { [input]: share * spreads[input] }, readings: [] }),
        );
        expectNear(shares[0], 1, 1e-3, 'a thousand deviates scatter by one to a thousandth');
        // An input that hardly counts, and bends what another does: a thousandth of the band.
        shares.slice(1).forEach((less, i) => expect(less - shares[i], `${input}, step ${i}`).toBeLessThan(2e-3));
      }
      const read = (errorMm: number) => ({
        left: {},
        readings: [{ of: 'relief' as const, moment: { strung: false, days: 0, rodPercent: 0 }, errorMm }],
      });
      const feelers = [0.2, 0.1, 0.05, 0.02, 0.005].map((errorMm) => shareLeft(question, nothing, read(errorMm)));
      feelers.slice(1).forEach((less, i) => expect(less, `feelers, step ${i}`).toBeLessThanOrEqual(feelers[i] + 1e-3));
    },
  );

  it('leaves the band that the page shows when it is entered: a board tapped as stiff as its species', async () => {
    const four = PRESETS.find(({ id }) => id === 'long-four')!.build;
    const question = { ...drawn(four), method: four.method, moment: settledOf(four) };
    const known = { left: MEASUREMENTS['board-blank'].left!, readings: [] };
    const tapped = (await estimator.estimate({ ...four, ...tappedAsSpecies(four) }, SAMPLES))!;
    const { p05, p95 } = bandOf(sampleExtremes(tapped, four.method, settledOf(four)));
    expectNear(
      widthKnowing(question, known),
      p95 - p05,
      1e-3,
      'the answers to the board’s modulus are fitted at other steps',
    );
    const { afterMm } = (await measuring(four)).narrowings.find(({ id }) => id === 'board-blank')!;
    expectNear(afterMm, p95 - p05, 0.05, 'the 5 and 95 % points of a thousand samples');
  });

  it('goes on from what is counted as done', async () => {
    const first = await measuring(build);
    const next = await measuring(build, ['fretted']);
    const { afterMm } = first.narrowings.find(({ id }) => id === 'fretted')!;
    expectNear(next.beforeMm, afterMm, 0.05, 'one from the 5 and 95 % points, one from the samples around them');
    expect(ids(next)).not.toContain('fretted');
    // Both tell of the same grip: together they tell less than the sum.
    expect(removed(next, 'strip')).toBeLessThan(0.5 * removed(first, 'strip'));
    const all = await measuring(build, MEASUREMENT_IDS);
    expect(all.narrowings).toEqual([]);
    expect(all.beforeMm).toBeLessThan(0.6 * first.beforeMm);
  });

  it('stops when it is asked to, and tells how far it has come', async () => {
    const shares: number[] = [];
    const stop = () => shares.length > 4;
    expect(await whatToMeasure(estimator, build, [], SAMPLES, stop, (share) => shares.push(share))).toBeNull();
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  });
});

describe('the list', () => {
  it('is ranked by what a minute removes, in the minutes of the workshop', async () => {
    const { narrowings } = await measuring(build);
    const rates = (minutes: typeof STANDARD_MINUTES) =>
      ranked(narrowings, minutes).map(({ id, removedMm }) => removedMm / minutes[id]);
    expect(rates(STANDARD_MINUTES)).toEqual(rates(STANDARD_MINUTES).toSorted((a, b) => b - a));
    expect(ranked(narrowings, STANDARD_MINUTES)[0].id).toBe('fretted');
    const slow = { ...STANDARD_MINUTES, fretted: 2400, strip: 1 };
    expect(ranked(narrowings, slow)[0].id).toBe('strip');
    expect(ranked(narrowings, slow).at(-1)!.id).toBe('fretted');
  });

  it('leaves out what is measured', async () => {
    expect(measurable(build)).toEqual(MEASUREMENT_IDS);
    const tapped = { ...build, ...tappedAsSpecies(build) };
    expect(ids(await measuring(tapped))).not.toContain('board-blank');
    expect(measurable(tapped)).toContain('neck-blank');
    // The bench log tells bite and area together.
    const logged = await measuring(build, [], { biteLogSpread: 0.1 });
    expect(ids(logged)).not.toContain('stud-area');
    expect(ids(await measuring(build))).toContain('stud-area');
  });

  it('leaves out what the neck does not have, and what would tell nothing', async () => {
    const refret = measurable({ ...build, job: 'refret' });
    expect(refret).not.toContain('board-blank');
    expect(refret).not.toContain('neck-blank');
    expect(ids(await measuring({ ...build, method: 'glue' }))).toEqual(['board-blank', 'neck-blank', 'pull', 'rod']);
    expect(measurable({ ...build, rodKind: 'none' })).not.toContain('rod');
  });

  it('is told more by the bow after each quarter than by the last of them alone, and more by a dial on strings than on the rod', async () => {
    const found = await measuring(build);
    expect(removed(found, 'quarters')).toBeGreaterThanOrEqual(removed(found, 'fretted') - 0.002);
    const glued = await measuring({ ...build, method: 'glue' });
    expect(removed(glued, 'pull')).toBeGreaterThan(removed(glued, 'rod'));
  });

  it('leads somewhere for each', () => {
    expect(MEASUREMENTS.strip.place).toEqual({ dialog: 'try-strip' });
  });

  it('has for each an error that is less than what is assumed', () => {
    const spreads = spreadsOf(build);
    for (const id of MEASUREMENT_IDS) {
      const { left = {}, reading, readings, minutes } = MEASUREMENTS[id];
      const read = reading ? [reading] : (readings?.(build) ?? []);
      for (const [input, error] of Object.entries(left))
        expect([id, error < spreads[input as keyof typeof spreads]]).toEqual([id, true]);
      expect([id, Object.keys(left).length > 0 || read.length > 0]).toEqual([id, true]);
      expect(minutes).toBeGreaterThan(0);
    }
  });
});
