/** What the first months make of a set-up: nothing where nothing moves, and as the lines say where something does. */
import { expect, test } from 'vitest';
import { PRESETS } from '../../src/neck/presets.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { overMonths } from '../../src/verdict/over-months.ts';
import { STRENGTHS } from '../../src/verdict/string-room.ts';
import { expectNear, expectNothing } from '../expect-near.ts';
import { solutionOf } from './solution.ts';

const BUILDS = PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const);

test.each(BUILDS)('%s: set up with the action that was chosen, and moved the way the relief moves', (_id, build) => {
  const { prediction } = solutionOf(build);
  const { strung, settled } = overMonths({ build, prediction }, 'along');
  expectNear(strung.actionMm, build.stringHeightFret12Mm - build.crownHeightMm, 1e-9, 'it is set on that day');
  const relief = (days: number) => lineAt(prediction, build.method, { strung: true, days, rodPercent: 0 }).extremeMm;
  expect(Math.sign(settled.actionMm - strung.actionMm)).toBe(Math.sign(relief(build.settleDays) - relief(0)));
  // A neck that is clean when it is played hard is clean when it is played softly.
  for (const { cleanTo, roomMm } of [strung, settled])
    expect(roomMm >= 0).toBe(cleanTo !== null && STRENGTHS.indexOf(cleanTo) >= STRENGTHS.indexOf('medium'));
});

test('a neck that does not creep and whose frets do not fade stays as it was set up', () => {
  const [, build] = BUILDS[0];
  const { prediction } = solutionOf({ ...build, wedgeRelaxation: 0 });
  const still = { ...prediction, time: { ...prediction.time, creepFactor: 0, wedgeRelaxation: 0 } };
  const { strung, settled } = overMonths({ build, prediction: still }, 'along');
  expectNothing(settled.actionMm - strung.actionMm, 1, 1e-9, 'nothing moves');
  expectNothing(settled.roomMm - strung.roomMm, 1, 1e-9, 'nothing moves');
});
