/** Woods whose printed values replaced derived ones: what moved, and that builds of before keep what they had. */
import { describe, expect, it } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { before4, PROJECT_FORMAT, readProject } from '../../src/neck/file.ts';
import { airDryDensityKgM3, hasMoved, longitudinalModulusMPa, woodById, WOODS } from '../../src/neck/woods.ts';
import { checkFretwork } from '../../src/fretwork/checks/checks.ts';
import { expectNear } from '../expect-near.ts';

describe('values that moved', () => {
  // AH 607: air-dry density in lb/ft³, 1 lb/ft³ = 16.018 kg/m³. Derived before: worked by hand from G/(1 − 0.159·G)·1.12.
  it.each([
    ['indian-rosewood', 53, 954],
    ['sapele', 42, 675],
    ['spanish-cedar', 30, 491],
    ['goncalo-alves', 60, 1086],
    ['ipe', 70.5, 1207],
  ])('%s is %d lb/ft³, where %d kg/m³ were derived', (id, pounds, derived) => {
    expectNear(airDryDensityKgM3(woodById(id)), 16.018 * pounds, 1e-3, 'rounded to a kilogram');
    expectNear(airDryDensityKgM3(woodById(id), 'earlier'), derived, 1e-3, 'rounded to a kilogram');
  });

  it('wenge has the modulus of its sheet, 21.05 GPa, and no tenth more', () => {
    expect(longitudinalModulusMPa(woodById('wenge'))).toBe(21_050);
    expectNear(longitudinalModulusMPa(woodById('wenge'), 'earlier'), 23_155, 1e-9, 'a product');
  });

  it('of all other woods that were released nothing moved', () => {
    const isNew = (source: string) => ['POLYMERS-2022', 'CBM-2015', 'NEMA-XX'].includes(source);
    const others = WOODS.filter(({ id, source }) => !hasMoved(id) && !isNew(source) && id !== 'moabi');
    expect(others.length).toBeGreaterThan(18);
    for (const wood of others) {
      expect(airDryDensityKgM3(wood)).toBe(airDryDensityKgM3(wood, 'earlier'));
      expect(longitudinalModulusMPa(wood)).toBe(longitudinalModulusMPa(wood, 'earlier'));
    }
  });
});

describe('a build of version 3', () => {
  const { woodValues: _new, ownWoods: _list, ...rest } = defaultBuild();
  const old = { ...rest, ownModulusGPa: 13, ownDensityKgM3: 700 };
  const open = (change: Partial<Build>) => {
    const read = readProject(JSON.stringify({ format: PROJECT_FORMAT, version: 3, build: { ...old, ...change } }));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return read.build;
  };
  const codes = (build: Build) => checkFretwork(build).map(({ code }) => code);

  it('with a wood that moved keeps its forces, and says so', () => {
    const build = open({});
    expect(build.woodValues).toBe('earlier');
    const found = checkFretwork(build).find(({ code }) => code === 'earlier-woods');
    expect(found?.about).toEqual(['indian-rosewood']);
    expect(codes({ ...build, woodValues: 'printed' })).not.toContain('earlier-woods');
    const predictor = createPredictor();
    const force = (of: Build) => predictor.predict(of).methods.press.wedgeForceN[10];
    // The force goes with the density, but for what the slots open under it.
    expectNear(
      force(build) / force({ ...build, woodValues: 'printed' }),
      954 / 849,
      0.03,
      'slots open a tenth of the bite',
    );
  });

  it.each<[string, Partial<Build>, 'printed' | 'earlier']>([
    ['neck', { boardWood: 'ebony-african', laminates: [{ wood: 'wenge', share: 1 }] }, 'earlier'],
    [
      'binding',
      { boardWood: 'ebony-african', binding: defaultBuild().binding.map((line) => ({ ...line, material: 'ipe' })) },
      'earlier',
    ],
    ['nowhere', { boardWood: 'ebony-african' }, 'printed'],
  ])('with one in its %s', (_where, change, values) => {
    expect(open(change).woodValues).toBe(values);
  });

  it('that lacks its lists is refused by what it lacks', () => {
    expect(before4({ laminates: [null], binding: 3 })['woodValues']).toBe('printed');
  });
});

describe('what is no wood', () => {
  it('has elastic constants that a solid can have', () => {
    const predictor = createPredictor();
    const { methods } = predictor.predict({ ...defaultBuild(), boardWood: 'paper-resin' });
    expect(methods.press.fretted.extremeMm).toBeLessThan(0);
    expect(methods.press.strung.extremeMm).toBeGreaterThan(methods.press.fretted.extremeMm);
  });
});
