/** Will it buzz? What the chart says of a neck, against the line and the strings that it is made of. */
import { describe, expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { lineAt } from '../../src/mechanics/states.ts';
import { actionChangeMm } from '../../src/playing/aim.ts';
import { roomChart } from '../../src/playing/room.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { presetBuild } from '../../src/speech/names.ts';
import {
  buzzVerdict,
  PLUCK_DIRECTIONS,
  playedLine,
  playingOf,
  STRENGTHS,
  stringRoom,
  type Hand,
} from '../../src/verdict/string-room.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';
import { solutionOf } from './solution.ts';

const BUILDS = PRESETS.map((preset) => [preset.id, presetBuild(preset)] as const);
const MEDIUM: Hand = { strength: 'medium', direction: 'along' };

const roomOf = (build: Build, hand: Partial<Hand> = {}) => stringRoom(solutionOf(build), { ...MEDIUM, ...hand });

describe.each(BUILDS)('%s', (_id, build) => {
  test('is looked at strung and settled, with the rod as it is set', () => {
    const { prediction } = solutionOf(build);
    const rodPercent = prediction.methods[build.method].rodSetPercent;
    const line = lineAt(prediction, build.method, { strung: true, days: build.settleDays, rodPercent });
    const { reliefMm } = playedLine(solutionOf(build));
    for (const [i, relief] of line.reliefMm.entries())
      expectNothing((reliefMm[i] ?? Number.NaN) - relief, 1, ROUNDING, 'the same sum of lines');
  });

  test('has one room for every string and every note that has a fret beyond it', () => {
    const { strings, notes } = roomOf(build);
    expect(strings).toHaveLength(build.strings.length);
    for (const ofString of strings) expect(ofString).toHaveLength(build.fretCount);
    expect(notes).toBe(build.strings.length * build.fretCount);
  });

  test('counts the notes that buzz and those that may, and names the worst', () => {
    for (const direction of PLUCK_DIRECTIONS)
      for (const strength of STRENGTHS) {
        const room = roomOf(build, { strength, direction });
        const all = room.strings.flat();
        // By hand, from the two clearances.
        const buzzing = all.filter(({ leastMm }) => leastMm < -1e-9).length;
        expect(room.buzzing).toBe(buzzing);
        expect(room.mayBuzz).toBe(all.filter(({ boundMm }) => boundMm < -1e-9).length - buzzing);
        expect(room.least.leastMm).toBe(Math.min(...all.map(({ leastMm }) => leastMm)));
        expect(room.strings[room.least.string][room.least.note].atFret).toBe(room.least.atFret);
      }
  });

  test('buzzes on no fewer notes the harder it is played, and not at all where the action is high enough', () => {
    const [soft, medium, hard] = STRENGTHS.map((strength) => roomOf(build, { strength }));
    expect(soft.buzzing).toBeLessThanOrEqual(medium.buzzing);
    expect(medium.buzzing).toBeLessThanOrEqual(hard.buzzing);
    expect(soft.least.leastMm).toBeGreaterThan(medium.least.leastMm);
    expect(medium.least.leastMm).toBeGreaterThan(hard.least.leastMm);

    const { prediction } = solutionOf(build);
    const line = playedLine(solutionOf(build));
    const playing = playingOf(build, { ...MEDIUM, strength: 'hard' });
    const change = actionChangeMm(setUp(build, line), playing);
    const raised = { ...build, stringHeightFret12Mm: build.stringHeightFret12Mm + change };
    // On the same line of fret tops; what the greater height does to the line itself is not asked here.
    const room = stringRoom({ build: raised, prediction }, { ...MEDIUM, strength: 'hard' });
    expect(room.buzzing).toBe(0);
    expectNothing(room.least.leastMm, build.stringHeightFret12Mm, 1e-9, 'clearance is linear in the action');
  });
});

test('every preset is clean played softly along the board, and one that is played hard is not', () => {
  for (const [id, build] of BUILDS) expect([id, roomOf(build, { strength: 'soft' }).buzzing]).toEqual([id, 0]);
  expect(roomOf(BUILDS[0][1], { strength: 'hard' }).buzzing).toBeGreaterThan(20);
});

test('the pluck is a fifth of the scale from the saddle and as hard as was said', () => {
  const build = BUILDS[0][1];
  const playing = playingOf(build, { strength: 'hard', direction: 'towards' });
  expect(playing).toMatchObject({ forceN: 2, direction: 'towards' });
  expectNear(playing.pluckMm, build.scaleLengthMm / 5, ROUNDING, 'one product');
  const { strings } = roomOf(build, { strength: 'hard', direction: 'towards' });
  const own = roomChart(setUp(build, playedLine(solutionOf(build))), playing);
  expect(strings).toEqual(own);
});

test.each([
  [0.02, 0.01, 'clear'],
  [0.02, -0.01, 'may-buzz'],
  [-0.01, -0.05, 'buzzes'],
  // Rounding alone makes no buzz.
  [-1e-12, -1e-12, 'clear'],
] as const)('room %d mm, within the bound %d mm: %s', (leastMm, boundMm, verdict) => {
  expect(buzzVerdict({ leastMm, boundMm })).toBe(verdict);
});
