/** The way back: taken at its word, advice on relief and action gives what it said. */
import { describe, expect, test } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { leastClearanceMm } from '../../src/playing/aim.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { checksOf } from '../../src/verdict/checks.ts';
import { isOffered } from '../../src/verdict/raised-by.ts';
import { MORE_RELIEF_MM, stringAim } from '../../src/verdict/string-aim.ts';
import { PLUCK_DIRECTIONS, playingOf, STRENGTHS, stringRoom, type Hand } from '../../src/verdict/string-room.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';
import { solutionOf } from './solution.ts';

const predictor = createPredictor();
const BUILDS = PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const);
const HANDS = STRENGTHS.flatMap((strength) => PLUCK_DIRECTIONS.map((direction): Hand => ({ strength, direction })));
const AIMS = BUILDS.flatMap(([id, build]) => HANDS.map((hand) => ({ id, build, hand })));

const roomAfter = (build: Build, hand: Hand) =>
  stringRoom({ build, prediction: predictor.predict(build) }, hand).least.leastMm;

describe('the relief that leaves the most room', () => {
  test('taken over, leaves the room that was said, and more than before', () => {
    let taken = 0;
    for (const { build, hand } of AIMS) {
      const { relief } = stringAim(solutionOf(build), hand);
      if (relief.status !== 'better') continue;
      taken += 1;
      const after = roomAfter({ ...build, ...relief.change }, hand);
      // The prediction made anew sets the rod by the same rule on the same lines; a millionth for its bisection.
      expectNothing(after - relief.roomMm, 1, 1e-6, 'the same lines');
      expect(after).toBeGreaterThan(roomAfter(build, hand));
    }
    expect(taken).toBeGreaterThan(20);
  });

  test('is bettered by no other that the rod reaches, by more than the step of a hundredth costs', () => {
    for (const { id, build, hand } of AIMS) {
      const solution = solutionOf(build);
      const { prediction } = solution;
      const { relief } = stringAim(solution, hand);
      if (relief.status === 'no-rod') continue;
      const said = relief.status === 'better' ? relief.roomMm : roomAfter(build, hand);
      const { leastPercent, mostPercent } = prediction.rod;
      for (let step = 0; step <= 100; step += 1) {
        const rodPercent = leastPercent + (step / 100) * (mostPercent - leastPercent);
        const line = lineAt(prediction, build.method, { strung: true, days: build.settleDays, rodPercent });
        // Beyond what can be wanted of a neck.
        if (line.extremeMm < -0.2 || line.extremeMm > 0.8) continue;
        const neck = setUp(build, { stationXMm: prediction.stationXMm, reliefMm: line.reliefMm });
        const room = leastClearanceMm(neck, playingOf(build, hand));
        expect(room - said, `${id}, rod at ${rodPercent} %`).toBeLessThan(0.015);
      }
    }
  });

  test('tells what a little more of it takes', () => {
    let told = 0;
    for (const { build, hand } of AIMS) {
      const { relief } = stringAim(solutionOf(build), hand);
      if (relief.status !== 'better' || relief.costMm === null) continue;
      told += 1;
      const more = { ...build, ...relief.change, targetReliefMm: relief.reliefMm + MORE_RELIEF_MM };
      expectNothing(relief.roomMm - roomAfter(more, hand) - relief.costMm, 1, 1e-6, 'the same lines');
    }
    expect(told).toBeGreaterThan(10);
  });

  test('has a band that holds it, for a somewhat softer and a somewhat harder pluck, and for one’s own from its own', () => {
    let told = 0;
    let widest = 0;
    for (const { build, hand } of AIMS) {
      const solution = solutionOf(build);
      const { relief } = stringAim(solution, hand);
      if (relief.status !== 'better') continue;
      told += 1;
      const { lowMm, highMm, fromN, toN } = relief.band;
      expect(fromN).toBeLessThan(toN);
      expect(relief.reliefMm).toBeGreaterThanOrEqual(lowMm);
      expect(relief.reliefMm).toBeLessThanOrEqual(highMm);
      widest = Math.max(widest, highMm - lowMm);
    }
    expect(told).toBeGreaterThan(20);
    expect(widest).toBeGreaterThan(0.03);
    const own = stringAim(solutionOf(BUILDS[0][1]), { ...HANDS[0], ownForceN: 1.3, ownBandN: [1.1, 1.6] }).relief;
    expect(own).toMatchObject({ status: 'better', band: { fromN: 1.1, toN: 1.6 } });
  });

  test('is not offered without a rod, and says every check that it raises', () => {
    const nylon = BUILDS.find(([id]) => id === 'nylon-flat')![1];
    expect(nylon.rodKind).toBe('none');
    expect(stringAim(solutionOf(nylon), HANDS[0]).relief).toEqual({ status: 'no-rod' });
    let raised = 0;
    for (const { build, hand } of AIMS) {
      const solution = solutionOf(build);
      const { relief } = stringAim(solution, hand);
      if (relief.status !== 'better') continue;
      const taken = { ...build, ...relief.change };
      const before = checksOf(solution).map(({ code }) => code);
      const after = checksOf({ build: taken, prediction: predictor.predict(taken) });
      const said = relief.raised.map(({ code }) => code);
      raised += said.length;
      expect(after.filter(({ code }) => !before.includes(code) && !said.includes(code))).toEqual([]);
      expect(isOffered(relief.raised)).toBe(!relief.raised.some(({ severity }) => severity === 'stop'));
    }
    expect(raised).toBeGreaterThan(0);
  });

  test('sets a rod that was set by hand for the relief wanted again', () => {
    const build = { ...BUILDS[0][1], rodSettingPercent: -60 };
    const hand: Hand = { strength: 'medium', direction: 'along' };
    const { relief } = stringAim(solutionOf(build), hand);
    expect(relief).toMatchObject({ status: 'better', change: { rodSettingPercent: 0 } });
    if (relief.status !== 'better') return;
    expectNothing(roomAfter({ ...build, ...relief.change }, hand) - relief.roomMm, 1, 1e-6, 'the same lines');
  });
});

test('the lowest action leaves no room and no buzz on the line at hand, and goes up with the strength', () => {
  for (const { build, hand } of AIMS) {
    const solution = solutionOf(build);
    const { actionMm, lowestActionMm } = stringAim(solution, hand);
    expectNear(actionMm + build.crownHeightMm, build.stringHeightFret12Mm, ROUNDING, 'one difference');
    const lowered = { ...build, stringHeightFret12Mm: lowestActionMm + build.crownHeightMm };
    const room = stringRoom({ build: lowered, prediction: solution.prediction }, hand);
    expectNothing(room.least.leastMm, actionMm, 1e-9, 'clearance is linear in the action');
    expect(room.buzzing).toBe(0);
  }
  for (const [, build] of BUILDS)
    for (const direction of PLUCK_DIRECTIONS) {
      const [soft, medium, hard] = STRENGTHS.map((strength) => stringAim(solutionOf(build), { strength, direction }));
      expect(soft.lowestActionMm).toBeLessThan(medium.lowestActionMm);
      expect(medium.lowestActionMm).toBeLessThan(hard.lowestActionMm);
    }
});

describe('fall-away of the last frets', () => {
  test('where it helps, taken over leaves the room that was said, and more than before', () => {
    let taken = 0;
    for (const { build, hand } of AIMS) {
      // A neck whose last frets are in the way: a hollow that is large, and an action that is low.
      const hollow = { ...build, targetReliefMm: 0.6, rodSettingPercent: 0 };
      const solution = solutionOf(hollow);
      const { fall } = stringAim(solution, hand);
      if (!fall) continue;
      taken += 1;
      expect(fall.fromFret).toBeGreaterThanOrEqual(build.bodyJointFret);
      const after = roomAfter({ ...hollow, ...fall.change }, hand);
      expectNothing(after - fall.roomMm, 1, 0.002, 'stations stand at the walls of the slot where it starts');
      expect(after).toBeGreaterThan(stringRoom(solution, hand).least.leastMm);
    }
    expect(taken).toBeGreaterThan(2);
  });

  test('is not advised where it gains nothing, nor before the joint', () => {
    const [, build] = BUILDS[0];
    const hand: Hand = { strength: 'soft', direction: 'along' };
    expect(stringAim(solutionOf(build), hand).fall).toBeNull();
    const early = { ...build, targetReliefMm: 0.6, fallAwayMm: 0.1, fallAwayFromFret: 12 };
    expect(stringAim(solutionOf(early), { ...hand, strength: 'hard' }).fall).toBeNull();
  });
});
