/** Drawings of the lessons: at true proportion where they say so. */
import { expect, test } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import {
  boardPath,
  chipPaths,
  chipShare,
  fretPaths,
  liftMm,
} from '../../../src/pages/lessons/figures/pulling-shapes.ts';
import { bowedThrough, BOX, extremeOf, guessPath, lineScales } from '../../../src/pages/lessons/line-curve.ts';

const build = { ...defaultBuild(), kerfMm: 0.6, slotDepthMm: 3, tangDepthMm: 2, studWidthMm: 0.8, crownWidthMm: 2.4 };

function extent(path: string): { left: number; right: number; top: number; bottom: number } {
  const numbers = Array.from(path.matchAll(/-?\d+\.\d+/g), ([text]) => Number(text));
  const xs = numbers.filter((_, index) => index % 2 === 0);
  const ys = numbers.filter((_, index) => index % 2 === 1);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

test('the fret is as wide as the build says, and rises with the pull', () => {
  const seated = fretPaths(build, 0);
  expect(extent(seated.crown)).toMatchObject({ left: -1.2, right: 1.2, bottom: 0 });
  expect(extent(seated.tang)).toEqual({ left: -0.4, right: 0.4, top: 0, bottom: 2 });
  const out = fretPaths(build, 1);
  expect(extent(out.tang).bottom).toBe(2 - liftMm(build, 1));
  expect(liftMm(build, 1)).toBeGreaterThan(build.tangDepthMm);
});

test('the slot has its kerf, its depth and its chamfer', () => {
  expect(boardPath(build, 0.25, 0)).toContain('0.550 0.000L0.300 0.250L0.300 3.000');
  expect(boardPath(build, 0, 0)).toContain('0.300 0.000L0.300 0.000L0.300 3.000');
});

test('chips come only from sharp edges, and only as the studs come up', () => {
  expect(chipShare(build, 0, 0)).toBe(0);
  expect(chipShare(build, 0.2, 0)).toBe(0);
  expect(chipShare(build, 1, 0)).toBe(1);
  expect(chipShare(build, 1, 0.25)).toBe(0);
  expect(chipPaths(build, 0)).toEqual([]);
  expect(chipPaths(build, 0.5).length).toBe(2);
});

test('a hump stands up, and the scales go both ways', () => {
  const scales = lineScales(0.6);
  expect(scales.y(-0.6)).toBe(BOX.top);
  expect(scales.y(0.6)).toBe(BOX.height - BOX.bottom);
  expect(scales.reliefAt(scales.y(-0.6))).toBe(-0.6);
  expect(scales.shareAt(scales.x(0.5))).toBe(0.5);
  expect(guessPath([-0.1, -0.2, -0.1], scales)).toMatch(/^M12,/);
  expect(bowedThrough(1, -0.25)).toEqual([-0.1875, -0.25, -0.1875]);
  expect(bowedThrough(0, -0.1875)).toEqual([-0.1875, -0.25, -0.1875]);
  expect(extremeOf([-0.1, -0.3, 0.2])).toBe(-0.3);
});
