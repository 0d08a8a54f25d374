/** Each kind of glue brings its own stiffness, with its band; what was entered stays what it was. */
import { describe, expect, it } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { logSpread, spreadsOf } from '../../src/mechanics/uncertainty/inputs.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { before4, PROJECT_FORMAT, readProject } from '../../src/neck/file.ts';
import { GLUES, glueStiffness } from '../../src/neck/glues.ts';
import { expectNear } from '../expect-near.ts';

const predictor = createPredictor();
const glued = (change: Partial<Build> = {}): Build => ({ ...defaultBuild(), method: 'glue', ...change });
const give = (build: Build) => predictor.predict(build).methods[build.method].extraFlexibility;

describe('a kind of glue', () => {
  it('that is the default gives what 2 500 MPa entered by hand gives, band and all', () => {
    const entered = glued({ glueStiffness: 'own', glueModulusMPa: 2500 });
    expect(give(glued())).toBe(give(entered));
    expect(spreadsOf(glued())).toEqual(spreadsOf(entered));
  });

  it('that stays soft fills without stiffening: an eighth more give, where hard ones leave a hundredth', () => {
    expectNear(give(glued({ glueKind: 'soft-white-glue' })), 0.12, 0.15, 'necks.md, 300 MPa: +12 %, in whole per cent');
    expectNear(give(glued()), 0.01, 0.5, 'necks.md, 2 500 MPa: +1 %, in whole per cent');
  });

  it('as soft as nothing leaves the slots as empty ones, and one as stiff as wood leaves them as never sawn', () => {
    const softest = give(glued({ glueStiffness: 'own', glueModulusMPa: 50 }));
    const press = give({ ...glued(), method: 'press', studWidthMm: 0.5, kerfMm: 0.76 });
    expect(softest).toBeGreaterThan(give(glued({ glueKind: 'soft-white-glue' })));
    expect(softest).toBeLessThan(press);
    expect(Math.abs(give(glued({ glueStiffness: 'own', glueModulusMPa: 6000 })))).toBeLessThan(0.03);
  });

  it('the stiffer it is, the less the neck gives', () => {
    const inOrder = GLUES.toSorted((a, b) => a.modulusMPa - b.modulusMPa);
    const gives = inOrder.map(({ id }) => give(glued({ glueKind: id })));
    expect(gives).toEqual(gives.toSorted((a, b) => b - a));
  });

  it.each(GLUES)('$id has its own spread in the band', ({ id, modulusVariation }) => {
    expect(spreadsOf(glued({ glueKind: id })).glueModulus).toBe(logSpread(modulusVariation));
    expect(modulusVariation).toBeGreaterThan(0.2);
  });
});

describe('files of version 3', () => {
  const { glueStiffness: _new, ownWoods: _list, ...rest } = glued({ glueKind: 'epoxy' });
  const old = { ...rest, ownModulusGPa: 13, ownDensityKgM3: 700 };
  const open = (change: object) => {
    const read = readProject(JSON.stringify({ format: PROJECT_FORMAT, version: 3, build: { ...old, ...change } }));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return read.build;
  };

  it.each([
    ['wood-glue', 2500, 'kind', 2500],
    ['wood-glue', 900, 'own', 900],
    ['epoxy', 2500, 'own', 2500],
    ['hide-glue', 3000, 'own', 3000],
  ] as const)('%s with %d MPa keep the number that they had', (glueKind, glueModulusMPa, stiffness, modulusMPa) => {
    const build = open({ glueKind, glueModulusMPa });
    expect(build.glueStiffness).toBe(stiffness);
    expect(glueStiffness(build).modulusMPa).toBe(modulusMPa);
    expect(glueStiffness(build).modulusVariation).toBe(0.5);
  });

  it('that say no glue are refused as before', () => {
    expect(before4({})['glueStiffness']).toBe('own');
  });
});
