/** The factor of the bow: chosen from the bow, kept while it serves, and never in the way of a hand. */
import { describe, expect, test } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { BOW_FACTOR, chosenBowFactor } from '../../src/state/bow-factor.ts';
import { createBackbowStore } from '../../src/state/store.ts';
import { drawnBowFactor } from '../../src/state/view-slice.ts';

const predictor = createPredictor();
const neckOf = (reliefMm: number, method: 'press' = 'press') => {
  const line = { extremeMm: reliefMm };
  const methods = { press: { fretted: line, strung: line, settled: line, rodSet: line } };
  return [{ method }, { methods, fretXMm: [30, 460] }] as unknown as Parameters<typeof chosenBowFactor> extends [
    unknown,
    ...infer Rest,
  ]
    ? Rest
    : never;
};

describe('the factor', () => {
  test.each(PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const))(
    '%s is drawn bent, and not broken',
    (_, build) => {
      const prediction = predictor.predict(build);
      const factor = chosenBowFactor(BOW_FACTOR.standard, build, prediction);
      const { fretted, strung, settled, rodSet } = prediction.methods[build.method];
      const bowMm = Math.max(...[fretted, strung, settled, rodSet].map(({ extremeMm }) => Math.abs(extremeMm)));
      const share = (factor * bowMm) / prediction.fretXMm.at(-1)!;
      expect(share).toBeLessThan(0.045);
      // The smallest bows are drawn as large as any may be.
      expect(share > 0.009 || factor === BOW_FACTOR.max).toBe(true);
    },
  );

  test('falls as the bow grows, and stays within its range', () => {
    const factors = [0.01, 0.05, 0.2, 0.8, 3].map((bow) => chosenBowFactor(40, ...neckOf(bow)));
    factors.slice(1).forEach((factor, i) => expect(factor).toBeLessThanOrEqual(factors[i]));
    expect(factors[0]).toBe(BOW_FACTOR.max);
    expect(factors.at(-1)).toBeGreaterThanOrEqual(BOW_FACTOR.min);
  });

  test('is kept while the bow changes a little, so that the picture shows the change', () => {
    const first = chosenBowFactor(40, ...neckOf(0.2));
    expect(chosenBowFactor(first, ...neckOf(0.16))).toBe(first);
    expect(chosenBowFactor(first, ...neckOf(0.3))).toBe(first);
    expect(chosenBowFactor(first, ...neckOf(0.02))).toBeGreaterThan(first);
  });

  test('of a flat neck is the one that it had', () => {
    expect(chosenBowFactor(20, ...neckOf(0))).toBe(20);
  });
});

test('a hand wins until it lets go', () => {
  const store = createBackbowStore();
  const { build } = store.getState();
  const stiff = { ...build, thicknessFret1Mm: 26, thicknessFret12Mm: 28 };
  store.getState().setBowFactor(33);
  store.getState().setSolution(stiff, predictor.predict(stiff));
  expect(drawnBowFactor(store.getState())).toBe(33);
  store.getState().setBowFactor(null);
  const chosen = drawnBowFactor(store.getState());
  expect(chosen).toBe(chosenBowFactor(BOW_FACTOR.standard, stiff, predictor.predict(stiff)));
  expect(chosen).not.toBe(33);
});

test('no factor changes under a thumb', () => {
  const store = createBackbowStore();
  const { build } = store.getState();
  const stiff = { ...build, thicknessFret1Mm: 26, thicknessFret12Mm: 28, strings: [] };
  store.getState().beginGesture('thumb');
  const before = drawnBowFactor(store.getState());
  store.getState().setSolution(stiff, { ...predictor.predict(build) });
  expect(drawnBowFactor(store.getState())).toBe(before);
});
