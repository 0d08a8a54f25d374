/** Going on or changing the rest, on necks whose truth is known. */
import { describe, expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { fretsInAfterQuarters } from '../../../src/fretwork/plan/seating-order.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { NO_EVIDENCE } from '../../../src/mechanics/neck-readings/evidence.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import type { Moment } from '../../../src/mechanics/prediction-types.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { runAtOnce } from '../../../src/mechanics/steps.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import { adviceSteps, advisedOf, CLOSE_MM, type Advice } from '../../../src/mechanics/while-fretting/advice.ts';
import { splitAt, withRest, type RestChange } from '../../../src/mechanics/while-fretting/job.ts';
import { expectNear } from '../../expect-near.ts';

const predictor = createPredictor();
const estimator = createEstimator(predictor);
const preset = (id: string): Build => PRESETS.find((one) => one.id === id)!.build;
const wider = (build: Build, mm: number): RestChange => ({ code: 'kerf', kerfMm: build.kerfMm + mm });

const bowOf = (build: Build, bite: number, moment: Moment) =>
  lineAt(predictor.predict(build, { ...AS_STATED, bite }), build.method, moment).extremeMm;
const settled = (build: Build): Moment => ({ strung: true, days: build.settleDays, rodPercent: 0 });

/** A neck whose studs bite so many times as hard, read without error after so many quarters. */
function afterQuarters(
  build: Build,
  bite: number,
  quarters: number,
  choices: readonly RestChange[],
  wantedMm?: number,
): Advice {
  const readings = fretsInAfterQuarters(build)
    .slice(0, quarters)
    .map((fretsIn) => {
      const measuredMm = bowOf(build, bite, { strung: false, days: 0, rodPercent: 0, fretsIn });
      return { seated: fretsIn.length, measuredMm, errorMm: 0.02 };
    });
  const job = {
    build,
    readings,
    evidence: NO_EVIDENCE,
    choices,
    wantedMm: wantedMm ?? bowOf(build, 1, settled(build)),
  };
  return runAtOnce(adviceSteps(estimator, job, { samples: 800 }));
}

describe('advice while frets go in', () => {
  test('as predicted: go on', () => {
    const build = preset('bolt-on-maple');
    const { advised, outcomes, seated } = afterQuarters(build, 1, 2, [wider(build, 0.04)]);
    expect(advised).toBe(0);
    expect(seated).toBe(fretsInAfterQuarters(build)[1].length);
    // Read without error as it is stated; what is left is the posterior's own skew.
    expect(Math.abs(outcomes[0].settledMm.p50 - bowOf(build, 1, settled(build)))).toBeLessThan(0.02);
  });

  test('the same kerf again is going on', () => {
    const build = preset('bolt-on-maple');
    const { outcomes } = afterQuarters(build, 1.5, 1, [wider(build, 0)]);
    expectNear(outcomes[1].settledMm.p50, outcomes[0].settledMm.p50, 1e-12, 'the same neck with the same samples');
    expect(outcomes[1].within).toBe(outcomes[0].within);
  });

  test('the wider the blade for the rest, the less it humps', () => {
    const build = preset('bolt-on-maple');
    const { outcomes } = afterQuarters(
      build,
      1.5,
      1,
      [0.03, 0.06, 0.1].map((mm) => wider(build, mm)),
    );
    const humps = outcomes.map(({ frettedMm }) => frettedMm.p50);
    expect(humps).toEqual(humps.toSorted((a, b) => a - b));
    expect(outcomes.every(({ within, withinByRod }) => within <= withinByRod)).toBe(true);
  });

  test('studs that bite harder are heard: where the neck will end is where it ends', () => {
    const build = preset('bolt-on-maple');
    const truth = bowOf(build, 1.6, settled(build));
    const after = [1, 2, 3].map((quarters) => afterQuarters(build, 1.6, quarters, []).outcomes[0].settledMm);
    const width = after.map(({ p05, p95 }) => p95 - p05);
    for (const { p05, p95 } of after) {
      expect(p05).toBeLessThan(truth);
      expect(p95).toBeGreaterThan(truth);
    }
    expect(width[2]).toBeLessThan(width[0]);
  });

  test('a neck without a rod whose studs bite far too hard: stop, and the blade that is advised brings it home', () => {
    const build: Build = { ...preset('bolt-on-maple'), rodKind: 'none' };
    const choices = [0.03, 0.06, 0.1, 0.14].map((mm) => wider(build, mm));
    const wantedMm = bowOf(build, 1, settled(build));
    const { advised, outcomes } = afterQuarters(build, 2.2, 2, choices, wantedMm);
    expect(advised).toBeGreaterThan(0);
    const { rest } = splitAt(build, fretsInAfterQuarters(build)[1].length);
    const ends = outcomes.map(({ change }) => bowOf(withRest(build, rest, change), 2.2, settled(build)));
    const miss = ends.map((mm) => Math.abs(mm - wantedMm));
    expect(miss[0]).toBeGreaterThan(CLOSE_MM);
    expect(miss[advised]).toBeLessThan(miss[0] / 2);
  });
});

describe('which choice is advised', () => {
  const settled = (p50: number) => ({ settledMm: { p50 } });
  const from = (...within: number[]) =>
    advisedOf(
      within.map((share) => ({ within: share, withinByRod: share, ...settled(0.2) })),
      0.2,
    );

  test('going on, unless another is surer by a twentieth', () => {
    expect(from(0.8, 0.84)).toBe(0);
    expect(from(0.8, 0.855)).toBe(1);
  });

  test('of those the surest, and of equals the first', () => {
    expect(from(0.5, 0.7, 0.9, 0.9)).toBe(2);
    expect(from(0.5, 0.5)).toBe(0);
  });

  test('where a third of the rod brings none of them home: what all of it does, then what comes nearer', () => {
    const none = { within: 0, withinByRod: 0 };
    const ends = (...p50: number[]) => p50.map((mm) => ({ ...none, ...settled(mm) }));
    const byRod = (withinByRod: number, p50: number) => ({ within: 0.02, withinByRod, ...settled(p50) });
    expect(advisedOf([byRod(0.1, -0.9), byRod(0.19, -0.6), byRod(0.7, -0.4)], 0.2)).toBe(2);
    expect(advisedOf(ends(-0.9, -0.6, -0.4, 0.9), 0.2)).toBe(2);
    expect(advisedOf(ends(-0.9, -0.87), 0.2)).toBe(0);
    // Going on is surer of the better end.
    expect(advisedOf([{ ...byRod(0.3, -0.2), within: 0.1 }, byRod(0.7, -0.1)], 0.2)).toBe(0);
  });
});
