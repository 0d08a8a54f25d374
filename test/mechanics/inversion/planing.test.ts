import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { goalMoment } from '../../../src/mechanics/inversion/goal.ts';
import { lineAfterPlaning, planPlaning, wantedLineMm } from '../../../src/mechanics/inversion/planing.ts';
import { goalOf } from '../../../src/mechanics/inversion/goal.ts';
import { solveTarget } from './every-way.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { METHODS, type Method, type Prediction } from '../../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../../src/mechanics/relief.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { expectNear } from '../../expect-near.ts';
import { randomNecks } from './random-builds.ts';

const predictor = createPredictor();

/** The fret tops of a planed neck at the goal's moment lie on the wanted line. */
function expectOnTheLine(prediction: Prediction, method: Method, goal: Parameters<typeof planPlaning>[2]): void {
  const plan = planPlaning(prediction, method, goal);
  const line = lineAt(prediction, method, goalMoment(goal, prediction.time));
  const after = lineAfterPlaning(prediction, line, plan.rows);
  for (const row of plan.rows) {
    const got = sampleLine(prediction.stationXMm, after.reliefMm, row.xMm);
    // The planed board has corners at the frets, each between two columns of the mesh 0.6 mm apart: a cut that changes by
    // 0.01 mm from fret to fret over 20 mm is off by some 0.6/20 of that.
    expect(Math.abs(got - row.wantedMm), `fret ${row.fret}`).toBeLessThan(2e-4 + 0.01 * plan.mostMm);
    expect(row.wantedMm).toBe(wantedLineMm(prediction, goal.reliefMm, row.xMm));
    expect(row.planeOffMm).toBeGreaterThanOrEqual(0);
  }
  expect(Math.min(...plan.rows.map(({ planeOffMm }) => planeOffMm))).toBe(0);
  expect(plan.mostMm).toBe(Math.max(...plan.rows.map(({ planeOffMm }) => planeOffMm)));
  expect(plan.reliefMm).toBe(after.extremeMm);
}

describe('planing', () => {
  it.each(PRESETS)('$id: the fret tops come out on the wanted line', ({ build }) => {
    const prediction = predictor.predict(build);
    for (const method of METHODS) {
      for (const when of ['strung', 'settled'] as const) {
        expectOnTheLine(prediction, method, { reliefMm: build.targetReliefMm, when, rodPercent: 0 });
      }
      const plan = planPlaning(prediction, method, goalOf(build));
      expectNear(plan.reliefMm, build.targetReliefMm, 0.02, 'between the frets the line bends at the slots');
    }
  });

  it('so they do on random necks (seed 5303)', () => {
    fc.assert(
      fc.property(
        randomNecks,
        fc.integer({ min: -100, max: 500 }).map((micrometres) => micrometres / 1000),
        (build, reliefMm) => {
          const goal = { reliefMm, when: 'settled', rodPercent: 0 } as const;
          expectOnTheLine(predictor.predict(build), 'press', goal);
        },
      ),
      { seed: 5303, numRuns: 12 },
    );
  }, 120_000);

  it('takes nothing off a neck whose frets are on the line, and the whole bow off one that is hollow', () => {
    // Two lines by hand: a prediction whose fret tops are the wanted line but for a straight tilt, and one 0.2 mm deeper.
    const prediction = predictor.predict({ ...defaultBuild(), method: 'glue' });
    const goal = { reliefMm: 0.1, when: 'strung', rodPercent: 0 } as const;
    const shaped = (depthMm: number): Prediction => {
      const lineMm = prediction.stationXMm.map((x) => wantedLineMm(prediction, depthMm, x));
      const { glue } = prediction.methods;
      const basis = { ...glue.basis, stringsMm: lineMm };
      return { ...prediction, methods: { ...prediction.methods, glue: { ...glue, basis } } };
    };
    expect(planPlaning(shaped(0.1), 'glue', goal).mostMm).toBeLessThan(2e-3);
    const deeper = planPlaning(shaped(0.3), 'glue', goal);
    // The middle is 0.2 too low: it stays, and both ends come down by 0.2.
    expectNear(deeper.rows[0].planeOffMm, 0.2, 0.02, 'the deepest place lies between two frets');
    expect(deeper.rows.some(({ planeOffMm }) => planeOffMm < 1e-9)).toBe(true);
  });

  it('cuts no deeper than it must', () => {
    const prediction = predictor.predict(defaultBuild());
    const { rows, mostMm } = planPlaning(prediction, 'press', goalOf(defaultBuild()));
    // Any other tilt that leaves no fret below its line cuts deeper somewhere.
    for (const tilt of [-2e-4, -1e-5, 1e-5, 2e-4]) {
      const tilted = rows.map((row) => row.planeOffMm + tilt * row.xMm);
      expect(Math.max(...tilted) - Math.min(...tilted)).toBeGreaterThan(mostMm);
    }
  });
});

describe('every way at once', () => {
  it('starts from the relief that the build wants', () => {
    const build = defaultBuild();
    const answer = solveTarget(predictor, build);
    expect(answer.goal).toEqual({ reliefMm: 0.15, when: 'settled', rodPercent: 0 });
    expect(answer.reliefMm).toBe(predictor.predict(build).methods.press.settled.extremeMm);
    expect(answer.kerf.press.status).toBe('found');
    expect(answer.rod.status).toBe('reached');
    expect(answer.planing.rows).toHaveLength(build.fretCount);
    expect(structuredClone(answer)).toEqual(answer);
  });

  it('finds nothing impossible, but says how close each way comes', () => {
    const build = { ...defaultBuild(), rodKind: 'one-way' as const, targetReliefMm: 0.8 };
    const answer = solveTarget(predictor, build);
    expect(answer.kerf.press.status).toBe('too-humped');
    expect(answer.kerf.both.status).toBe('too-humped');
    expect(answer.rod.status).toBe('cannot-forward');
    for (const { missMm } of [answer.kerf.press, answer.kerf.both, answer.rod]) expect(missMm).toBeLessThan(-0.1);
    expectNear(answer.planing.reliefMm, 0.8, 0.02, 'a plane always can');
  });
});
