/** Advice passes the checks: no recommendation raises one that is not said beside it. */
import { expect, test } from 'vitest';
import { sawableKerfMm, type WantedAnswer } from '../../src/mechanics/inversion/answers.ts';
import { goalOf } from '../../src/mechanics/inversion/goal.ts';
import { kerfRange, solveKerf } from '../../src/mechanics/inversion/kerf.ts';
import { solveRod } from '../../src/mechanics/inversion/rod.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { advised, raisedBy } from '../../src/verdict/raised-by.ts';

const predictor = createPredictor();

test.each(PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const))(
  'the kerf for the relief wanted shows every check that it raises: %s',
  (_, build) => {
    const prediction = predictor.predict(build);
    const goal = goalOf(build);
    const kerf = { press: solveKerf(predictor, build, goal, 'press'), both: solveKerf(predictor, build, goal, 'both') };
    const rod = solveRod(prediction, build.method, goal);
    const answer = { goal, kerf, kerfRange: kerfRange(build), rod } as unknown as WantedAnswer;
    const { raised } = advised(predictor, build, answer);
    const before = new Set(checksOf({ build, prediction }).map(({ code }) => code));
    for (const method of ['press', 'both'] as const) {
      if (kerf[method].status === 'no-effect') continue;
      const changed = { ...build, method, kerfMm: sawableKerfMm(kerf[method].kerfMm) };
      const codes = checksOf({ build: changed, prediction: predictor.predict(changed) }).map(({ code }) => code);
      const said = raised.kerf[method].map(({ code }) => code);
      expect(codes.filter((code) => !before.has(code) && !said.includes(code))).toEqual([]);
    }
  },
);

test('a kerf that lets the studs bite too little is said to, and a neck as it is raises nothing', () => {
  const build = { ...presetBuild(PRESETS[0]!), method: 'press', kerfMm: 0.58, studWidthMm: 0.76 } as const;
  const now = { build, prediction: predictor.predict(build) };
  const loose = { ...build, kerfMm: 0.736 };
  const codes = raisedBy(now, { build: loose, prediction: predictor.predict(loose) }).map(({ code }) => code);
  expect(codes).toContain('weak-bite');
  expect(raisedBy(now, now)).toEqual([]);
});
