/**
 * Bound necks and slots that stop before the edge, beside three-dimensional solid finite elements: every file of
 * test/reference/solid-fe-bound, whose geometry is read from the file alone. No number of the model was taken from them.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../expect-near.ts';
import {
  describeSolidBoundCase,
  readSolidBoundCase,
  readSolidBoundCases,
  SOLID_BOUND_FOLDER,
  solveSolidBoundCase,
} from '../reference/solid-bound-case.ts';
import { solidBoundRow } from '../reference/rows/solid-bound.ts';

const CASES = readSolidBoundCases();
const LIMITS = { wedgeAllMm: 0.03, stringsSlotsEmptyMm: 0.02, stringsNoSlotsMm: 0.02 } as const;
const KEYS = ['wedgeAllMm', 'stringsSlotsEmptyMm', 'stringsNoSlotsMm'] as const;

describe.each(CASES.map((solid) => [solid.id, solid] as const))('%s', (_id, solid) => {
  it('a full set of frets within 3 %, strings within 2 %', () => {
    const ours = solveSolidBoundCase(solid);
    const compared = KEYS.flatMap((key) => {
      const reference = solid.results[key];
      return reference === null ? [] : [[key, ours[key], reference] as const];
    });
    expect(compared.length).toBeGreaterThan(0);
    for (const [key, value, reference] of compared) expectNear(value, reference, LIMITS[key], `${key}: a plane model`);
    expect(solidBoundRow(solid).comparisons).toHaveLength(compared.length);
  });

  it('halving every element moves frets and strings by less than 2 %', () => {
    const [coarse, fine] = [solveSolidBoundCase(solid), solveSolidBoundCase(solid, 2)];
    for (const key of KEYS) expectNear(coarse[key], fine[key], 0.02, `${key}: convergence`);
  });
});

describe('reading the cases', () => {
  it('there is an unbound one, one in plastic and one in the board’s wood, and slots that stop before the edge', () => {
    const bindings = CASES.map(({ geometry }) => geometry.binding);
    expect(bindings.some((binding) => !binding)).toBe(true);
    expect(bindings.some((binding) => typeof binding?.E === 'number')).toBe(true);
    expect(bindings.some((binding) => typeof binding?.E === 'string')).toBe(true);
    expect(CASES.filter((solid) => (describeSolidBoundCase(solid).ends?.slotShortMm ?? 0) > 0).length).toBeGreaterThan(
      1,
    );
  });

  const [first] = CASES;
  const text = readFileSync(new URL(first.file, SOLID_BOUND_FOLDER), 'utf8');
  const changed = (change: (data: Record<string, Record<string, unknown>>) => void): string => {
    const data = JSON.parse(text) as Record<string, Record<string, unknown>>;
    change(data);
    return JSON.stringify(data);
  };
  it.each([
    ['a number that is text', 'geometry.widthNutMm', changed((d) => (d['geometry']['widthNutMm'] = '43'))],
    ['a shear left out', 'materials.GxzOverEx', changed((d) => delete d['materials']['GxzOverEx'])],
    [
      'a binding of an unknown stiffness',
      'geometry.binding.E',
      changed(
        (d) => (d['geometry']['binding'] = { widthPerSideMm: 2, leftWholePerSideMm: 1, nipClearanceMm: 0, E: '?' }),
      ),
    ],
    [
      'a binding without Poisson’s ratio',
      'geometry.binding.nu',
      changed(
        (d) => (d['geometry']['binding'] = { widthPerSideMm: 2, leftWholePerSideMm: 1, nipClearanceMm: 0, E: 2200 }),
      ),
    ],
    ['text that is no JSON', 'the file', '{ "id": '],
  ])('says which field it cannot read: %s', (_what, field, content) => {
    expect(() => readSolidBoundCase('X.json', content)).toThrow(`solid-fe-bound/X.json: ${field} `);
  });
});
