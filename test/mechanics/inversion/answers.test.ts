/** Every way to a wanted relief, with its band: the answers come true when the build takes them, and the bands hold them. */
import { describe, expect, it } from 'vitest';
import { PRESETS } from '../../../src/neck/presets.ts';
import { answerWanted, planedSamples, sawableKerfMm } from '../../../src/mechanics/inversion/answers.ts';
import { goalMoment, reliefAtGoal, type ReliefGoal } from '../../../src/mechanics/inversion/goal.ts';
import { planPlaning } from '../../../src/mechanics/inversion/planing.ts';
import type { Method } from '../../../src/mechanics/prediction-types.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { bandAt, sampleExtremes } from '../../../src/mechanics/uncertainty/band-at.ts';
import { bandOf, type Band } from '../../../src/mechanics/uncertainty/band.ts';
import { paired } from '../../../src/mechanics/uncertainty/paired.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import { expectNear } from '../../expect-near.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const FEW = { samples: 400 };
const build = PRESETS[0].build;
const goal: ReliefGoal = { reliefMm: 0.15, when: 'settled', rodPercent: 0 };

const holds = ({ p05, p95 }: Band, value: number) => p05 <= value && value <= p95;

describe('answers', () => {
  it('come true in the build that takes them', async () => {
    const answer = (await answerWanted(predictor, estimator, build, goal, FEW))!;
    for (const method of ['press', 'both'] as const) {
      const { status, kerfMm } = answer.kerf![method];
      expect(status).toBe('found');
      const there = reliefAtGoal(predictor.predict({ ...build, kerfMm: sawableKerfMm(kerfMm) }), method, goal);
      expectNear(
        there,
        goal.reliefMm,
        0.02,
        'the kerf is rounded to a thousandth: up to 2.5 µm of relief where the body wedges',
      );
    }
    expect(answer.rod.status).toBe('reached');
    const prediction = predictor.predict(build);
    const set = reliefAtGoal(prediction, build.method, { ...goal, rodPercent: answer.rod.percent });
    expectNear(set, goal.reliefMm, 1e-3, 'bisection of the setting, CLOSE_ENOUGH_MM');
  });

  it('lie in their bands', async () => {
    const answer = (await answerWanted(predictor, estimator, build, goal, FEW))!;
    expect(holds(answer.bandMm, answer.reliefMm)).toBe(true);
    for (const method of ['press', 'both'] as const)
      expect(holds(answer.kerf![method].bandMm, goal.reliefMm)).toBe(true);
    for (const { bandMm, reliefMm } of answer.methods) expect(holds(bandMm, reliefMm)).toBe(true);
    expect(holds(answer.rod.bandMm, answer.rod.reliefMm)).toBe(true);
    expect(holds(answer.planing.bandMm, answer.planing.reliefMm)).toBe(true);
  });

  it('stand beside the neck as it is sample by sample, as in the comparison', async () => {
    const answer = (await answerWanted(predictor, estimator, build, goal, FEW))!;
    const uncertainty = (await estimator.estimate(build, FEW))!;
    const moment = goalMoment(goal, predictor.predict(build).time);
    const samples = (method: Method) => sampleExtremes(uncertainty, method, moment);
    for (const { method, paired: found } of answer.methods)
      expect(found).toEqual(paired(samples(build.method), samples(method), goal.reliefMm));
    expect(answer.rod.paired.nearer).toBeGreaterThan(0.5);
  });

  it('have narrower bands where the bite is known better', async () => {
    const plain = (await answerWanted(predictor, estimator, build, goal, FEW))!;
    const known = (await answerWanted(predictor, estimator, build, goal, { ...FEW, biteLogSpread: 0.1 }))!;
    const width = ({ p05, p95 }: Band) => p95 - p05;
    expect(width(known.bandMm)).toBeLessThan(0.8 * width(plain.bandMm));
    // There the body wedges too, which is no matter of the bite.
    expect(width(known.kerf!.press.bandMm)).toBeLessThan(0.9 * width(plain.kerf!.press.bandMm));
  });

  it('say so when no kerf fits the wire, and still give the rest', async () => {
    const thick = { ...build, tangWidthMm: 0.7, studWidthMm: 0.72, crownWidthMm: 0.85 };
    const answer = (await answerWanted(predictor, estimator, thick, goal, FEW))!;
    expect(answer.kerf).toBeNull();
    expect(answer.kerfRange.leastMm).toBeGreaterThan(answer.kerfRange.mostMm);
    expect(answer.methods).toHaveLength(3);
  });

  it('tell how far they are: from little to all of it, never back', async () => {
    const shares: number[] = [];
    const told = (share: number) => void shares.push(share);
    await answerWanted(predictor, estimator, build, goal, FEW, undefined, told);
    expect(shares.length).toBeGreaterThan(20);
    expect(shares[0]).toBeLessThan(0.1);
    expect(shares.at(-1)).toBe(1);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  });

  it('are given up between steps, and refuse a goal that cannot be meant', async () => {
    let asked = 0;
    expect(await answerWanted(predictor, estimator, build, goal, FEW, () => (asked += 1) > 3)).toBeNull();
    await expect(answerWanted(predictor, estimator, build, { ...goal, reliefMm: 9 })).rejects.toThrow('reliefMm 9');
  });
});

describe('the band after planing', () => {
  it('is the band before it when nothing is planed off, or a straight slope is', async () => {
    const uncertainty = (await estimator.estimate(build, FEW))!;
    const prediction = predictor.predict(build);
    const moment = goalMoment(goal, prediction.time);
    const plan = planPlaning(prediction, build.method, goal);
    const before = bandAt(uncertainty, build.method, moment).extreme;
    const flat = { ...plan, rows: plan.rows.map((row) => ({ ...row, planeOffMm: 0 })) };
    expect(bandOf(planedSamples(uncertainty, prediction, build.method, moment, flat))).toEqual(before);
    const sloped = { ...plan, rows: plan.rows.map((row) => ({ ...row, planeOffMm: 0.1 + row.xMm / 1000 })) };
    const { p05, p95 } = bandOf(planedSamples(uncertainty, prediction, build.method, moment, sloped));
    // A straight slope does not show under a straightedge.
    expectNear(p05, before.p05, 1e-9, 'sums and differences in double precision');
    expectNear(p95, before.p95, 1e-9, 'sums and differences in double precision');
  });
});
