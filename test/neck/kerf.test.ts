/** The kerf of a way of seating, and what changing it leaves alone. */
import { expect, test } from 'vitest';
import { defaultBuild } from '../../src/neck/build.ts';
import { kerfChange, workingValue } from '../../src/neck/kerf.ts';

const glued = { ...defaultBuild(), method: 'glue', kerfMm: 0.58, studWidthMm: 0.76 } as const;

test('a glue fit shows the kerf that is sawn for it, pressing its own', () => {
  expect(workingValue(glued, 'kerfMm')).toBe(0.76);
  expect(workingValue({ ...glued, method: 'press' }, 'kerfMm')).toBe(0.58);
  expect(workingValue(glued, 'studWidthMm')).toBe(0.76);
});

test('a glue fit set to the width over the studs keeps the kerf for pressing', () => {
  expect(kerfChange(glued, 0.76)).toEqual({ kerfMm: 0.58 });
  expect(kerfChange(glued, 0.8)).toEqual({ kerfMm: 0.8 });
});

test('a slider that goes out and comes back to the studs leaves what was there', () => {
  expect(kerfChange({ ...glued, kerfMm: 0.8 }, 0.76, glued)).toEqual({ kerfMm: 0.58 });
});

test('pressing takes any kerf as it is', () => {
  expect(kerfChange({ ...glued, method: 'press' }, 0.76)).toEqual({ kerfMm: 0.76 });
});
