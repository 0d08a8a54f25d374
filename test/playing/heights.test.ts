/** The heights under a string, worked by hand on boards and lines that are simple enough. */
import { expect, test } from 'vitest';
import { fretPositionMm } from '../../src/neck/neck-shape.ts';
import { stringHeights } from '../../src/playing/heights.ts';
import { setUp } from '../../src/playing/set-up.ts';
import { defaultBuild } from '../../src/neck/build.ts';
import { expectNear, expectNothing, ROUNDING } from '../expect-near.ts';
import { arcLine, FLAT_BOARD, straightLine } from './necks.ts';

const heights = (build = FLAT_BOARD, line = straightLine(build)) =>
  stringHeights(setUp(build, line), build.bodyJointFret);

test('on a flat board with a straight line they are those of similar triangles', () => {
  const { crownHeightMm, stringHeightNutMm, stringHeightFret12Mm, scaleLengthMm } = FLAT_BOARD;
  const rise = (x: number) =>
    stringHeightNutMm - crownHeightMm + ((stringHeightFret12Mm - stringHeightNutMm) * x) / (scaleLengthMm / 2);
  for (const one of heights()) {
    expectNear(one.actionMm, stringHeightFret12Mm - crownHeightMm, 1e-9, 'as it was set');
    expectNothing(one.reliefMm, 1, ROUNDING, 'a straight line');
    expectNear(one.nutOverFret1Mm, rise(fretPositionMm(scaleLengthMm, 1)), 1e-9, 'on the way to fret 12');
    expectNear(one.saddleOverFretsMm, rise(scaleLengthMm), 1e-9, 'twice the way to fret 12');
  }
});

test('the relief under every string of a flat board is that of the line', () => {
  for (const one of heights(FLAT_BOARD, arcLine(FLAT_BOARD, 0.3)))
    expectNear(one.reliefMm, 0.3, 0.02, 'the deepest fret stands beside the middle');
  for (const one of heights(FLAT_BOARD, arcLine(FLAT_BOARD, -0.2)))
    expectNear(one.reliefMm, -0.2, 0.02, 'a hump has its sign');
});

test('over a cylinder the outer strings find less relief, on both sides alike, and the inner ones nearly all', () => {
  const build = { ...defaultBuild(), boardShape: 'cylinder' as const };
  const all = heights(build, arcLine(build, 0.3)).map(({ reliefMm }) => reliefMm);
  expect(all[0]).toBeLessThan(0.29);
  expect(all.at(-1)!).toBeLessThan(0.29);
  expect(all[2]).toBeGreaterThan(all[0]);
  // The bass string is thicker: its middle lies a little further in.
  expectNear(all[0], all.at(-1)!, 0.05, 'mirror images but for the thickness of the strings');
});

test('a higher bass and a hollow show where they are looked for', () => {
  const build = { ...FLAT_BOARD, bassHigherMm: 0.4 };
  const line = straightLine(build);
  const [treble, bass] = [heights(build, line)[0], heights(build, line).at(-1)!];
  expectNear(bass.actionMm - treble.actionMm, 0.4, 1e-9, 'as it was set');
  expectNear(bass.saddleOverFretsMm - treble.saddleOverFretsMm, 0.8, 1e-9, 'twice as much at twice the way');
  expect(bass.nutOverFret1Mm).toBeGreaterThan(treble.nutOverFret1Mm);
});
