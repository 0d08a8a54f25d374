/** The ends of the slots of a build: binding of a kind, edges left whole, tangs nipped short. */
import { describe, expect, it } from 'vitest';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { describeNeck } from '../../src/mechanics/describe.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { before4 } from '../../src/neck/file.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { expectNear } from '../expect-near.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import HELD from './held-slots.json' with { type: 'json' };

const BUILD = defaultBuild();
const line = (thicknessMm: number, material?: string) => ({
  thicknessMm,
  colour: '#26211e',
  ...(material === undefined ? {} : { material }),
});
const bound = (material: string | undefined, change: Partial<Build> = {}): Build => ({
  ...BUILD,
  bindingLineCount: 1,
  linesSawnThrough: 1,
  binding: [line(2, material), ...BUILD.binding.slice(1)],
  ...change,
});
const predictor = createPredictor();
const fretted = (build: Build) => predictor.predict(build).methods.press.fretted.extremeMm;
const forces = (build: Build) => predictor.predict(build).methods.press.wedgeForceN;
const stringsAt8 = (build: Build) => predictor.predict(build).methods.press.strung.atFret8Mm - fretted(build);

describe('binding', () => {
  it.each(PRESETS.map(({ id, build }) => [id, build] as const))(
    'of the board’s own wood, sawn through, changes nothing, to the bit: %s',
    (_id, build) => {
      const unbound = { ...build, bindingLineCount: 0, linesSawnThrough: 0 };
      const own = { ...build, bindingLineCount: 2, linesSawnThrough: 2 };
      const named = { ...own, binding: own.binding.map((one) => ({ ...one, material: build.boardWood })) };
      const stated = predictor.predict(unbound);
      for (const other of [own, named]) {
        expect(describeNeck(other, AS_STATED).ends).toBeUndefined();
        expect(createPredictor().predict(other)).toEqual(stated);
      }
    },
  );

  it('softer than the board lets frets and strings bow the neck further, stiffer less far', () => {
    const [plastic, board, ipe] = ['celluloid', undefined, 'ipe'].map((material) => bound(material));
    expect(fretted(plastic)).toBeLessThan(fretted(board));
    expect(stringsAt8(plastic)).toBeGreaterThan(stringsAt8(board));
    expect(stringsAt8(ipe)).toBeLessThan(stringsAt8(board));
  });

  it('of another wood that is as stiff as the board’s hardly differs from it', () => {
    // The elastic ratios of the two are the same, and only they and the modulus enter.
    const own = { ...bound('own'), boardWood: 'own' };
    const elsewhere = { ...own, boardWood: 'own', binding: own.binding };
    expect(describeNeck(elsewhere, AS_STATED).ends).toBeUndefined();
  });

  it('inside binding of another material is board, outside it has its place', () => {
    const lines = [line(0.5), line(0.5, 'fibre'), line(1.5)];
    const build = {
      ...BUILD,
      bindingLineCount: 3,
      linesSawnThrough: 3,
      binding: [...lines, ...BUILD.binding.slice(3)],
    };
    const ends = describeNeck(build, AS_STATED).ends;
    expect(ends?.lines.map(({ widthMm }) => widthMm)).toEqual([0.5, 1.5]);
    expect(ends?.lines[1]?.wood).toEqual(describeNeck(build, AS_STATED).board);
    expect(ends?.lines[0]?.wood.modulusMPa).toBe(5000);
  });
});

describe('edges left whole', () => {
  it('bow the neck less the wider they are, and nothing jumps where they begin', () => {
    const bows = [0, 0.2, 1, 2, 4, 8].map((bridgeMm) => fretted({ ...BUILD, bridgeMm, nipClearanceMm: 0 }));
    for (let i = 1; i < bows.length; i += 1) expect(bows[i]).toBeGreaterThan(bows[i - 1]);
    expectNear(
      fretted({ ...BUILD, bridgeMm: 0.001, nipClearanceMm: 0 }),
      bows[0],
      0.005,
      'a thousandth of a millimetre',
    );
  });

  it('hold the slots together under the strings', () => {
    const give = [0, 1, 3].map((bridgeMm) => predictor.predict({ ...BUILD, bridgeMm }).methods.press.extraFlexibility);
    expect(give[1]).toBeLessThan(give[0]);
    expect(give[2]).toBeLessThan(give[1]);
  });

  it('are the same whether binding or board is left whole, where the binding is board', () => {
    const board = { ...BUILD, bridgeMm: 2 };
    expect(predictor.predict(bound(undefined, { linesSawnThrough: 0 }))).toEqual(predictor.predict(board));
    expect(predictor.predict(bound(undefined, { linesSawnThrough: 1, bridgeMm: 2 }))).toEqual(predictor.predict(board));
  });

  it('and clearance shorten the tang, whose studs press in proportion', () => {
    const [plain, blind] = [forces(BUILD), forces({ ...BUILD, bridgeMm: 2 })];
    expect(Math.max(...blind.map((force, i) => force / plain[i]))).toBeLessThan(1);
    expectNear(blind[0] / plain[0], (43.7 - 5) / 43.7, 0.03, 'the length of the tang; the slot gives otherwise too');
  });
});

describe('tangs nipped short in open slots', () => {
  it('press over their own length, in a slot that is sawn through', () => {
    const ends = describeNeck({ ...BUILD, undercutTangs: true, nipClearanceMm: 1 }, AS_STATED).ends;
    expect(ends).toMatchObject({ slotShortMm: 0, tangShortMm: 1, lines: [] });
    const short = fretted({ ...BUILD, undercutTangs: true, nipClearanceMm: 1 });
    expectNear(short / fretted(BUILD), 0.96, 0.015, '2 of some 50 mm of tang less');
  });

  it('without clearance are tangs to the edge', () => {
    expect(describeNeck({ ...BUILD, undercutTangs: true, nipClearanceMm: 0 }, AS_STATED).ends).toBeUndefined();
  });
});

/** Two that were drawn, and refused for a matrix that is not positive until what the ends take was held to what there is. */
describe('what the ends of a slot take from its own give', () => {
  const built = (held: object): Build => {
    // Builds of version 3; parameters that are newer have what they had then.
    const checked = checkBuild(before4({ ...defaultBuild(), ...held }));
    if (!checked.ok) throw new Error(JSON.stringify(checked.problems));
    return checked.build;
  };

  it('is never more than it has, where slots lie 3 mm apart', () => {
    expect(forces(built(HELD.closeSlots)).every((force) => force >= 0)).toBe(true);
  });

  it('is nothing once the slot is filled', () => {
    const { both, glue } = predictor.predict(built(HELD.filledSlots)).methods;
    for (const { strung } of [both, glue]) expect(Number.isFinite(strung.extremeMm)).toBe(true);
  });
});
