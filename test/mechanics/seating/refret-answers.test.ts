/** Mixtures of tangs as the page gets them: they come true in the build, lie in their bands and tell of their walls. */
import { describe, expect, it } from 'vitest';
import { defaultBuild, slotAndTang, type Build } from '../../../src/neck/build.ts';
import { checkBuild } from '../../../src/neck/schema.ts';
import { reliefAtGoal } from '../../../src/mechanics/inversion/goal.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { answerTangs, type TangWish } from '../../../src/mechanics/seating/refret-answers.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const FEW = { samples: 400 };
const OLD: Build = { ...defaultBuild(), job: 'refret', startingBowMm: 0.3, kerfMm: 0.58 };
const WISH: TangWish = {
  method: 'press',
  goal: { reliefMm: 0.15, when: 'settled', rodPercent: 0 },
  stretches: 3,
  choices: [
    { tangWidthMm: 0.5, studWidthMm: 0.76 },
    { tangWidthMm: 0.6, studWidthMm: 0.86 },
    { tangWidthMm: 0.75, studWidthMm: 0.9 },
  ],
};

describe('mixtures of tangs', () => {
  it('come true in the build that takes them, the nearest first', async () => {
    const { plans } = (await answerTangs(predictor, estimator, OLD, WISH, FEW))!;
    expect(plans.length).toBeGreaterThan(1);
    expect(plans.map(({ missMm }) => missMm)).toEqual(plans.map(({ missMm }) => missMm).toSorted((a, b) => a - b));
    for (const { regions, stretches, reliefMm, bandMm } of plans) {
      const taken = { ...OLD, regions };
      expect(checkBuild(taken).ok).toBe(true);
      expect(reliefAtGoal(predictor.predict(taken), 'press', WISH.goal)).toBe(reliefMm);
      expect([bandMm.p05 <= reliefMm, reliefMm <= bandMm.p95]).toEqual([true, true]);
      for (const { fromFret, toFret, tang, leastForceN, mostForceN } of stretches) {
        expect(slotAndTang(taken, fromFret)).toMatchObject(tang);
        expect(slotAndTang(taken, toFret)).toMatchObject(tang);
        expect(leastForceN).toBeLessThanOrEqual(mostForceN);
      }
    }
  });

  it('tell of walls that crush: a body far wider than the kerf, and none where only the studs bite', async () => {
    const wish = { ...WISH, stretches: 1 };
    const { plans } = (await answerTangs(predictor, estimator, OLD, wish, FEW))!;
    const of = (tangWidthMm: number) => plans.find(({ stretches }) => stretches[0].tang.tangWidthMm === tangWidthMm)!;
    expect(of(0.5).stretches[0].wallPressureShare).toBe(0);
    expect(of(0.75).stretches[0].wallPressureShare).toBeGreaterThan(of(0.6).stretches[0].wallPressureShare);
  });

  it('are given up between steps, and refuse what cannot be meant', async () => {
    let asked = 0;
    expect(await answerTangs(predictor, estimator, OLD, WISH, FEW, () => (asked += 1) > 2)).toBeNull();
    await expect(answerTangs(predictor, estimator, OLD, { ...WISH, choices: [] })).rejects.toThrow(
      'no-stretch-or-tang',
    );
    await expect(answerTangs(predictor, estimator, OLD, { ...WISH, stretches: 0 })).rejects.toThrow(
      'stretches-beyond-range, stretches 0',
    );
  });
});
