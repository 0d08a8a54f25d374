/** The heights to set: those of the line that is played on, and what the rod's nut does to the action. */
import { expect, test } from 'vitest';
import { lineAt } from '../../src/mechanics/states.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { actionMm, afterwards, setUp } from '../../src/playing/set-up.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { setUpHeights } from '../../src/verdict/set-up-heights.ts';
import { playedLine } from '../../src/verdict/string-room.ts';
import { expectNear } from '../expect-near.ts';
import { solutionOf } from './solution.ts';

const BUILDS = PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const);

test.each(BUILDS)('%s has heights for each string, and the action that was set', (_id, build) => {
  const { strings } = setUpHeights(solutionOf(build));
  expect(strings).toHaveLength(build.strings.length);
  for (const { actionMm: action, nutOverFret1Mm, saddleOverFretsMm } of strings) {
    expectNear(action, build.stringHeightFret12Mm - build.crownHeightMm, 1e-9, 'no side is higher');
    expect(nutOverFret1Mm).toBeGreaterThan(0);
    expect(saddleOverFretsMm).toBeGreaterThan(action);
  }
});

test.each(BUILDS.filter(([, build]) => build.rodKind !== 'none'))(
  '%s: a turn of the nut moves the action by what the line at that setting says',
  (_id, build) => {
    const solution = solutionOf(build);
    const { prediction } = solution;
    const { rodTurnsAtLimit, rodSetPercent } = prediction.methods[build.method];
    const tenth = 10 / rodTurnsAtLimit;
    // A tenth of a turn, towards where there is range.
    const way = rodSetPercent + tenth > prediction.rod.mostPercent ? -1 : 1;
    const rodPercent = rodSetPercent + way * tenth;
    const line = lineAt(prediction, build.method, { strung: true, days: build.settleDays, rodPercent });
    const before = playedLine(solution);
    const neck = afterwards(build, before, { stationXMm: prediction.stationXMm, reliefMm: line.reliefMm });
    for (const [i, string] of neck.strings.entries()) {
      const moved = actionMm(string, 12) - actionMm(setUp(build, before).strings[i], 12);
      expectNear(setUpHeights(solution).actionPerTurnMm!, way * 10 * moved, 1e-6, 'linear in the turn');
    }
    expect(setUpHeights(solution).actionPerTurnMm).toBeLessThan(0);
  },
);

test('without a rod there is no turn', () => {
  const nylon = BUILDS.find(([id]) => id === 'nylon-flat')![1];
  expect(setUpHeights(solutionOf(nylon)).actionPerTurnMm).toBeNull();
});
