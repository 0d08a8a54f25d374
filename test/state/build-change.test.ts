/** A worker that is told only of changes has the build of the page. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../tools/presets.ts';
import { changeOf } from '../../src/state/build-change.ts';

test('nothing known: the whole build', () => {
  const build = defaultBuild();
  expect(changeOf(build, undefined)).toBe(build);
});

test('one number changed: that number alone, no list', () => {
  const before = defaultBuild();
  expect(changeOf({ ...before, kerfMm: 0.6 }, before)).toEqual({ kerfMm: 0.6 });
  expect(changeOf({ ...before }, before)).toEqual({});
});

test('set over the build before, every change gives the build (seed 41)', () => {
  const builds = PRESETS.map(({ build }) => build);
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...builds), { minLength: 1, maxLength: 6 }), (visits) => {
      let known: Partial<Build> = {};
      let before: Build | undefined;
      for (const build of visits) {
        known = { ...known, ...structuredClone(changeOf(build, before)) };
        before = build;
        expect(known).toEqual(build);
      }
    }),
    { seed: 41, numRuns: 200 },
  );
});
