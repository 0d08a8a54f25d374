/** Advice passes the checks: no recommendation raises one that is not said beside it. */
import { expect, test } from 'vitest';
import { answerWanted, sawableKerfMm } from '../../src/mechanics/inversion/answers.ts';
import { goalOf, reliefAtGoal } from '../../src/mechanics/inversion/goal.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { advised, isOffered, raisedBy, type AdvisedAnswer } from '../../src/verdict/raised-by.ts';

const predictor = createPredictor();

const codesOf = (build: Build) => checksOf({ build, prediction: predictor.predict(build) }).map(({ code }) => code);

const estimator = createEstimator(predictor);

const TIGHT: Build = { ...presetBuild(PRESETS[0]), method: 'press', kerfMm: 0.58, studWidthMm: 0.76 };
/** The same neck wanted as hollow as only a loose kerf leaves it. */
const BACK_BOWED: Build = {
  ...TIGHT,
  targetReliefMm: reliefAtGoal(predictor.predict({ ...TIGHT, kerfMm: 0.74 }), 'press', goalOf(TIGHT)),
};

async function answerOf(build: Build): Promise<AdvisedAnswer> {
  const answer = await answerWanted(predictor, estimator, build, goalOf(build), { samples: 200, seed: 1 });
  return (await advised(predictor, estimator, build, answer!, { samples: 200, seed: 1 }))!;
}

test.each(PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const))(
  'the kerf for the relief wanted shows every check that it raises: %s',
  async (_, build) => {
    const { kerf, advice } = await answerOf(build);
    const now = codesOf(build);
    for (const method of ['press', 'both'] as const) {
      const offered = kerf![method];
      if (offered.status === 'no-effect') continue;
      const said = advice.kerf[method].raised.map(({ code }) => code);
      const raised = codesOf({ ...build, method, kerfMm: sawableKerfMm(offered.kerfMm) });
      expect(raised.filter((code) => !now.includes(code) && !said.includes(code))).toEqual([]);
    }
  },
  60_000,
);

test('beside a kerf with its price stands the nearest without it, with its own relief and band', async () => {
  const { goal, kerf, advice } = await answerOf(BACK_BOWED);
  const { raised, clear } = advice.kerf.press;
  expect(raised.map(({ code }) => code)).toContain('weak-bite');
  expect(clear!.kerfMm).toBeLessThan(kerf!.press.kerfMm);
  const taken = { ...BACK_BOWED, kerfMm: clear!.kerfMm };
  expect(codesOf(taken)).not.toContain('weak-bite');
  // A step nearer to what was asked for, the check speaks again.
  expect(codesOf({ ...taken, kerfMm: clear!.kerfMm + 0.005 })).toContain('weak-bite');
  const reliefMm = reliefAtGoal(predictor.predict(taken), 'press', goal);
  expect(clear).toMatchObject({ reliefMm, missMm: reliefMm - goal.reliefMm });
  expect(clear!.bandMm.p05).toBeLessThan(reliefMm);
  expect(clear!.bandMm.p95).toBeGreaterThan(reliefMm);
});

test('a kerf that lets the studs bite too little is said to, and a neck as it is raises nothing', () => {
  const now = { build: TIGHT, prediction: predictor.predict(TIGHT) };
  const loose = { ...TIGHT, kerfMm: 0.736 };
  const codes = raisedBy(now, { build: loose, prediction: predictor.predict(loose) }).map(({ code }) => code);
  expect(codes).toContain('weak-bite');
  expect(raisedBy(now, now)).toEqual([]);
});

test('a kerf where nothing bites is told and not offered; one that is only warned of is offered', () => {
  const now = { build: TIGHT, prediction: predictor.predict(TIGHT) };
  const at = (kerfMm: number) => {
    const build = { ...TIGHT, kerfMm };
    return raisedBy(now, { build, prediction: predictor.predict(build) });
  };
  expect(isOffered(at(0.76))).toBe(false);
  expect(at(0.736)).not.toEqual([]);
  expect(isOffered(at(0.736))).toBe(true);
});
