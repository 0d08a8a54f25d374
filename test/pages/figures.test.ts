import { beforeAll, describe, expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import type { Uncertainty } from '../../src/mechanics/uncertainty/types.ts';
import { figuresOf, nearestFret } from '../../src/pages/workshop/readouts/figures.ts';
import { bowBandText } from '../../src/speech/bow.ts';
import type { Solution } from '../../src/state/solution-slice.ts';

const predictor = createPredictor();
const solve = (change: Partial<Build> = {}): Solution => {
  const build = { ...defaultBuild(), ...change };
  return { build, prediction: predictor.predict(build), version: 1 };
};

let solution: Solution;
let uncertainty: Uncertainty;
beforeAll(async () => {
  solution = solve();
  uncertainty = (await createEstimator(predictor).estimate(solution.build, { samples: 500 }))!;
});

const figure = (
  id: string,
  of = solution,
  sure: Uncertainty | null = uncertainty,
  system: 'metric' | 'inch' = 'metric',
) => figuresOf(of, sure, system).find((candidate) => candidate.id === id);

test('before the first prediction every number is awaited', () => {
  for (const { value, band } of figuresOf(null, null, 'metric')) expect([value, band]).toEqual([undefined, undefined]);
});

test('bows are those of the prediction, with a word in place of a sign', () => {
  const { fretted, strung } = solution.prediction.methods.press;
  expect(fretted.extremeMm).toBeLessThan(0);
  expect(figure('fretted')).toMatchObject({ value: (-fretted.extremeMm).toFixed(2), unit: 'mm', word: 'back-bow' });
  expect(strung.extremeMm).toBeGreaterThan(0);
  expect(figure('strung')).toMatchObject({ value: strung.extremeMm.toFixed(2), word: 'relief' });
  expect(figure('fretted', solution, uncertainty, 'inch')).toMatchObject({
    value: (-fretted.extremeMm / 25.4).toFixed(3),
    unit: 'in',
  });
});

test('every predicted number has its band, and a band holds its number', () => {
  for (const id of ['fretted', 'strung', 'settled', 'force']) {
    expect(figure(id)!.band).toMatch(/^\d.* to \d/);
    expect(figure(id)!.drivers).toHaveLength(3);
    expect(figure(id, solution, null)!.band).toBeUndefined();
  }
  const [low, high] = figure('fretted')!
    .band!.match(/[\d.]+/g)!
    .map(Number) as [number, number];
  const value = Number(figure('fretted')!.value);
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
});

describe('a rod', () => {
  test('has its setting for the relief wanted, and how likely it can do it', () => {
    expect(figure('rod')!.band).toMatch(/^possible in \d+\u00a0%$/);
    expect(figure('rod')!.label).toBe('Rod for 0.15\u00a0mm relief');
    expect(figure('rod')!.detail).toMatch(/^−?\d+\u00a0% of its range$/);
    expect(`${figure('rod')!.value} ${figure('rod')!.unit}`).toMatch(/^\d*[⅛¼⅜½⅝¾⅞]? turns?$/);
  });

  test('that is not there is not shown', () => {
    expect(figure('rod', solve({ rodKind: 'none' }), null)).toBeUndefined();
  });
});

test('a glue fit has no wedge, and says so', () => {
  expect(figure('force', solve({ method: 'glue' }), null)).toMatchObject({
    value: '0',
    detail: 'no wedge',
    band: null,
  });
});

test.each([
  [-0.41, -0.19, 'metric', '0.19 to 0.41\u00a0mm'],
  [0.19, 0.41, 'metric', '0.19 to 0.41\u00a0mm'],
  [-0.05, 0.12, 'metric', '0.05\u00a0mm back-bow to 0.12\u00a0mm relief'],
  [-0.001, 0.12, 'metric', '0.00 to 0.12\u00a0mm'],
  [-0.001, 0.004, 'metric', 'flat'],
  [-0.41, -0.19, 'inch', '0.007 to 0.016\u00a0in'],
] as const)('a band from %d to %d in %s is “%s”', (low, high, system, text) => {
  expect(bowBandText(low, high, system)).toBe(text);
});

test('the nearest fret', () => {
  const fretXMm = [36, 70, 102];
  expect([0, 52, 54, 500].map((x) => nearestFret(fretXMm, x))).toEqual([1, 1, 2, 3]);
});
