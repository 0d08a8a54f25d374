/**
 * Slanted frets beside three-dimensional solid finite elements: every file of test/reference/solid-fe-fan, whose geometry is
 * read from the file alone. No number of the model was taken from them.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EMPTY, UNCUT } from '../../src/mechanics/description.ts';
import { createNeckModel, solveInfluence } from '../../src/mechanics/influence.ts';
import { expectNear } from '../expect-near.ts';
import {
  describeSolidFanCase,
  LOAD_CASES,
  readSolidFanCase,
  readSolidFanCases,
  SOLID_FAN_FOLDER,
  solveSolidFanCase,
} from '../reference/solid-fan-case.ts';

const CASES = readSolidFanCases();
/** Of a single fret the mesh is too stiff by 2–3 %, as on square necks (solid-fe.test.ts). */
const MIDDLE = { wedgeAll: 0.03, oneFret: 0.05, stringsSlotsEmpty: 0.03, stringsNoSlots: 0.03 } as const;
const EDGES = 0.06;
const TWIST = 0.25;
const LITTLE_MRAD = 0.1;
const LITTLE_WITHIN_MRAD = 0.03;

describe.each(CASES.map((solid) => [solid.id, solid] as const))('%s', (_id, solid) => {
  const ours = solveSolidFanCase(solid);

  it.each(LOAD_CASES)('%s: middle, edges and twist', (key) => {
    const reference = solid.results[key];
    expectNear(ours[key].middleMm, reference.middleMm, MIDDLE[key], 'a plane model, each wedge cos² of itself');
    expectNear(ours[key].bassEdgeMm, reference.bassEdgeMm, EDGES, 'middle and twist');
    expectNear(ours[key].trebleEdgeMm, reference.trebleEdgeMm, EDGES, 'middle and twist');
    const off = Math.abs(ours[key].twistMrad - reference.twistMrad);
    const size = Math.abs(reference.twistMrad);
    expect(off, 'twist, mrad').toBeLessThan(size > LITTLE_MRAD ? TWIST * size : LITTLE_WITHIN_MRAD);
  });
});

describe('a fan that is none', () => {
  const square = CASES.filter(({ geometry }) =>
    geometry.fretsBassXMm.every((x, n) => x === geometry.fretsTrebleXMm[n]),
  );

  it('gives the numbers of the square neck, to the last digit, and no twist', () => {
    expect(square).toHaveLength(1);
    const { fan, ...plain } = describeSolidFanCase(square[0]);
    const [fanned, bare] = [{ ...plain, fan }, plain].map((neck) => {
      const model = createNeckModel(neck);
      return [solveInfluence(model, EMPTY), solveInfluence(model, UNCUT, 'named')] as const;
    });
    [0, 1].forEach((which) => {
      expect(fanned[which].lineMm).toEqual(bare[which].lineMm);
      expect(fanned[which].openingMm).toEqual(bare[which].openingMm);
      expect(bare[which].tiltRad).toBeUndefined();
      expect(Math.max(...fanned[which].tiltRad!.map(Math.abs))).toBe(0);
    });
  });
});

describe('reading the cases', () => {
  it('there are a mild and a strong one', () => {
    const steepest = CASES.map((solid) =>
      Math.max(...solid.geometry.fretsBassXMm.map((x, n) => Math.abs(x - solid.geometry.fretsTrebleXMm[n]))),
    );
    expect(steepest.some((mm) => mm > 5 && mm < 15)).toBe(true);
    expect(steepest.some((mm) => mm > 25)).toBe(true);
  });

  const [first] = CASES;
  const text = readFileSync(new URL(first.file, SOLID_FAN_FOLDER), 'utf8');
  const changed = (change: (data: Record<string, Record<string, unknown>>) => void): string => {
    const data = JSON.parse(text) as Record<string, Record<string, unknown>>;
    change(data);
    return JSON.stringify(data);
  };
  it.each([
    ['a number that is text', 'geometry.widthNutMm', changed((d) => (d['geometry']['widthNutMm'] = '43'))],
    ['a fret too few', 'geometry.fretsBassXMm', changed((d) => (d['geometry']['fretsBassXMm'] = [0, 36]))],
    ['a shear left out', 'materials.GxzOverEx', changed((d) => delete d['materials']['GxzOverEx'])],
    ['a neck without its ends', 'geometry.rule', changed((d) => (d['geometry']['rule'] = 'straight'))],
    ['a single fret without its slot', 'loads.oneFret', changed((d) => (d['loads']['oneFret'] = 'somewhere'))],
    ['text that is no JSON', 'the file', '{ "id": '],
  ])('says which field it cannot read: %s', (_what, field, content) => {
    expect(() => readSolidFanCase('X.json', content)).toThrow(`solid-fe-fan/X.json: ${field} `);
  });
});
