/**
 * The library beside three-dimensional solid finite elements: every file of test/reference/solid-fe. The numbers of each
 * case are rows of the validation page; here they are held to what is promised, and the reader of the files is tried.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  readSolidFeCase,
  readSolidFeCases,
  SOLID_FE_FOLDER,
  solveSolidFeCase,
  type SolidFeCase,
  type SolidFeResults,
} from '../reference/solid-fe-case.ts';
import { solidFeRow } from '../reference/rows/solid-fe.ts';
import { expectNear } from '../expect-near.ts';

const CASES = readSolidFeCases();

/** What a file gives, beside ours; nothing for what it leaves out. */
function pairs(solid: SolidFeCase, ours: SolidFeResults, key: Exclude<keyof SolidFeResults, 'slotOpeningUmPerKN'>) {
  const reference = solid.results[key];
  return reference === null ? [] : [[ours[key], reference] as const];
}

describe.each(CASES.map((solid) => [solid.id, solid] as const))('%s', (_id, solid) => {
  const ours = solveSolidFeCase(solid);

  it('a full set of frets and both string cases within 3 %', () => {
    const compared = (['wedgeAllMm', 'stringsSlotsEmptyMm', 'stringsNoSlotsMm'] as const).flatMap((key) =>
      pairs(solid, ours, key),
    );
    expect(compared.length).toBeGreaterThan(0);
    for (const [value, reference] of compared) expectNear(value, reference, 0.03, 'a plane model of a solid');
  });

  it('a single fret and every slot opening within 5 %', () => {
    const openings = (solid.results.slotOpeningUmPerKN ?? []).flatMap((reference, slot) =>
      reference === null ? [] : [[ours.slotOpeningUmPerKN[slot], reference] as const],
    );
    const compared = [...pairs(solid, ours, 'oneFretMm'), ...openings];
    expect(compared.length).toBeGreaterThan(0);
    for (const [value, reference] of compared) expectNear(value, reference, 0.05, 'a plane model of a solid');
  });

  it('is in the validation table', () => {
    expect(solidFeRow(solid).comparisons.length).toBeGreaterThan(2);
  });
});

describe('reading the cases', () => {
  const [first] = CASES;
  const text = readFileSync(new URL(first.file, SOLID_FE_FOLDER), 'utf8');
  const changed = (change: (data: Record<string, Record<string, unknown>>) => void): string => {
    const data = JSON.parse(text) as Record<string, Record<string, unknown>>;
    change(data);
    return JSON.stringify(data);
  };

  it('there are cases of different kinds', () => {
    expect(CASES.length).toBeGreaterThanOrEqual(5);
    expect(CASES.some((solid) => solid.geometry.boardRadiusMm !== null)).toBe(true);
    expect(CASES.some((solid) => solid.geometry.rodChannel !== null)).toBe(true);
    expect(CASES.some((solid) => solid.woods.neckLaminates !== null)).toBe(true);
  });

  it.each([
    ['a number that is text', 'geometry.widthNutMm', changed((d) => (d['geometry']['widthNutMm'] = '43'))],
    [
      'a missing number',
      'geometry.slot.kerfMm',
      changed((d) => delete (d['geometry']['slot'] as Record<string, unknown>)['kerfMm']),
    ],
    [
      'a thickness of nothing',
      'geometry.totalThicknessFret1Mm',
      changed((d) => (d['geometry']['totalThicknessFret1Mm'] = 0)),
    ],
    [
      'a laminate without its modulus',
      'woods.neckLaminates.0.E',
      changed((d) => (d['woods']['neckLaminates'] = [{ toHalfWidthFraction: 1 }])),
    ],
    ['no wood for the neck', 'woods', changed((d) => (d['woods']['neckE'] = null))],
    [
      'too few openings',
      'results.slotOpeningUmPerKN',
      changed((d) => (d['results']['slotOpeningUmPerKN'] = [1, 2, 3])),
    ],
    ['a result that is text', 'results.wedgeAllMm', changed((d) => (d['results']['wedgeAllMm'] = '0.5'))],
    [
      'a string load without its pull',
      'loads.strings',
      changed((d) => (d['loads']['strings'] = 'on a line 3 mm above the crown of the board')),
    ],
    ['a single fret without its slot', 'loads.oneFret', changed((d) => (d['loads']['oneFret'] = 'somewhere'))],
    [
      'elastic ratios left out',
      'method',
      changed((d) => ((d as Record<string, unknown>)['method'] = 'solid elements')),
    ],
    ['no results at all', 'results', changed((d) => delete (d as Record<string, unknown>)['results'])],
    ['text that is no JSON', 'the file', '{ "id": '],
  ])('says which field it cannot read: %s', (_what, field, content) => {
    expect(() => readSolidFeCase('X.json', content)).toThrow(
      new RegExp(`^solid-fe/X\\.json: ${field.replaceAll('.', '\\.')} `),
    );
  });

  it('an empty folder fails, and so does a folder with a file that is no case', () => {
    const folder = mkdtempSync(join(tmpdir(), 'cases-'));
    try {
      const url = pathToFileURL(`${folder}/`);
      expect(() => readSolidFeCases(url)).toThrow(/folder of solid finite-element cases is empty/);
      writeFileSync(join(folder, 'Z.json'), text);
      expect(readSolidFeCases(url)).toHaveLength(1);
      writeFileSync(join(folder, 'notes.txt'), 'not a case');
      expect(() => readSolidFeCases(url)).toThrow(/solid-fe\/notes\.txt: the file is not JSON/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
