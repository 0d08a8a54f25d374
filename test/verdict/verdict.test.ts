/** The verdict: what it says is what the figures say, and the change that it names helps. */
import { describe, expect, test } from 'vitest';
import { fretEnds } from '../../src/fretwork/ends.ts';
import { solveRod } from '../../src/mechanics/inversion/rod.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { changeOf, changesOf, helps, leastChange } from '../../src/verdict/in-short/least-change.ts';
import { verdictOf } from '../../src/verdict/in-short/verdict.ts';

const predictor = createPredictor();
const reckon = (build: Build) => ({ build, prediction: predictor.predict(build) });

const BOLT_ON = presetBuild(PRESETS[0]);
/** Wanted more hollow than its strings make it, with a rod that only pulls it back. */
const HUMPED: Build = { ...BOLT_ON, method: 'press', targetReliefMm: 0.32, rodKind: 'one-way', rodSettingPercent: 0 };

describe('what it says', () => {
  test('is what figures and plan say', async () => {
    const reckoned = reckon(BOLT_ON);
    const uncertainty = (await createEstimator(predictor).estimate(BOLT_ON, { samples: 200, seed: 3 }))!;
    const verdict = verdictOf(reckoned, uncertainty);
    const of = reckoned.prediction.methods[BOLT_ON.method];
    const { settled, fretted, rodPercentForTarget } = uncertainty.methods[BOLT_ON.method];
    expect(verdict.obstacle).toBeNull();
    expect(verdict.expect).toEqual({
      frettedMm: of.fretted.extremeMm,
      settledMm: of.settled.extremeMm,
      frettedBand: fretted,
      settledBand: settled,
    });
    expect(verdict.decides).toBe(settled.drivers[0].input);
    const goal = { reliefMm: BOLT_ON.targetReliefMm, when: 'settled' } as const;
    expect(verdict.rod).toEqual({
      answer: solveRod(reckoned.prediction, BOLT_ON.method, goal),
      targetMm: BOLT_ON.targetReliefMm,
      chance: rodPercentForTarget!.chance,
    });
    const nips = fretEnds(BOLT_ON).map(({ nipMm }) => nipMm);
    expect(verdict.nip).toEqual({ leastMm: Math.min(...nips), mostMm: Math.max(...nips) });
  });

  test('a glue fit is sawn to the studs, slides in by hand, and old slots are left as they are', () => {
    const glue = verdictOf(reckon({ ...BOLT_ON, method: 'glue' }));
    expect(glue.saw).toMatchObject({ kerfMm: BOLT_ON.studWidthMm, isSawn: true });
    expect(glue.seat.meanSeatingForceN).toBe(0);
    expect(verdictOf(reckon({ ...BOLT_ON, job: 'refret' })).saw.isSawn).toBe(false);
  });

  test.each(PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const))(
    '%s: it stands against the build exactly where a check or the rod does',
    (_, build) => {
      const reckoned = reckon(build);
      const { obstacle } = verdictOf(reckoned);
      const stopped = checksOf(reckoned).some(({ severity, code }) => severity === 'stop' || code === 'no-rod');
      expect(obstacle?.kind === 'check').toBe(stopped);
    },
  );
});

describe('the least change that helps', () => {
  const now = reckon(HUMPED);

  test('is found where the neck does not come out, and with it the neck does', async () => {
    expect(verdictOf(now).obstacle).toMatchObject({ kind: 'check', check: { severity: 'stop' } });
    const { change } = (await leastChange(predictor, now))!;
    expect(change).not.toBeNull();
    const changed = reckon({ ...HUMPED, ...changeOf(change!) });
    expect(verdictOf(changed).obstacle).toBeNull();
    expect(checksOf(changed).filter(({ severity }) => severity === 'stop')).toEqual([]);
  });

  test('is the first of all that are tried, and blades are tried from the nearest on', async () => {
    const { change } = (await leastChange(predictor, now))!;
    const tried = changesOf(HUMPED);
    const at = tried.findIndex((other) => JSON.stringify(other) === JSON.stringify(change));
    expect(tried.slice(0, at).filter((other) => helps(predictor, now, other))).toEqual([]);
    const away = tried.flatMap((one) =>
      one.kind === 'value' && one.parameter === 'kerfMm' ? [Math.abs(one.to - one.from)] : [],
    );
    expect(away.length).toBeGreaterThan(5);
    // Both sides of one distance are equally near but for rounding.
    away.slice(1).forEach((distance, index) => expect(distance).toBeGreaterThan(away[index] - 1e-6));
  });

  test('is none where nothing of the kind helps', async () => {
    // Wanted far more hollow than strings and any slot make it, with no rod that pushes.
    expect(await leastChange(predictor, reckon({ ...HUMPED, targetReliefMm: 0.8 }))).toEqual({ change: null });
  });

  test('old slots have the kerf that they have', () => {
    const parameters = changesOf({ ...HUMPED, job: 'refret' }).flatMap((one) =>
      one.kind === 'value' ? [one.parameter] : [],
    );
    expect(new Set(parameters)).toEqual(new Set(['slotDepthMm']));
  });

  test('is given up when something newer is asked', async () => {
    expect(await leastChange(predictor, now, () => true)).toBeNull();
  });
});
