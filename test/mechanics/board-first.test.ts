/**
 * Frets in before the board is on: beside solids (every file of test/reference/solid-fe-board-first), and the laws of
 * superposition.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { boardFirst } from '../../src/mechanics/board-first.ts';
import { AS_STATED } from '../../src/mechanics/deviations.ts';
import { describeNeck } from '../../src/mechanics/describe.ts';
import { EMPTY } from '../../src/mechanics/description.ts';
import { boardAlone, released } from '../../src/mechanics/elements/board-hold.ts';
import { createNeckModel, solveCasesOnEmpty, solveInfluence } from '../../src/mechanics/influence.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { expectNear } from '../expect-near.ts';
import {
  readSolidBoardCase,
  readSolidBoardCases,
  SOLID_BOARD_FOLDER,
  solveSolidBoardCase,
} from '../reference/solid-board-case.ts';

describe.each(readSolidBoardCases().map((solid) => [solid.id, solid] as const))('%s', (_id, solid) => {
  const [coarse, fine] = [solveSolidBoardCase(solid), solveSolidBoardCase(solid, 2)];

  it('glued on, pressed and the board alone within 4 %, on the mesh of the program and on one twice as fine', () => {
    expect(fine.gluedOnClampsOffMm).toBeGreaterThan(0);
    for (const ours of [coarse, fine])
      for (const key of ['gluedOnClampsOffMm', 'pressedOnTheNeckMm', 'boardAloneFreeMm'] as const) {
        const reference = solid.results[key];
        if (typeof reference === 'number') expectNear(ours[key], reference, 0.04, `${key}: a plane model of a solid`);
      }
  });

  it('every slot of the board that is held flat opens as far, within 4 %', () => {
    const references = solid.results.slotOpeningClampedFlatUmPerKN ?? [];
    expect(coarse.slotOpeningClampedFlatUmPerKN).toHaveLength(solid.geometry.frets);
    references.forEach((reference, slot) => {
      if (reference === null) return;
      expectNear(coarse.slotOpeningClampedFlatUmPerKN[slot], reference, 0.04, `slot ${slot + 1}: a plane model`);
    });
  });
});

it('says which field of a case it cannot read', () => {
  const text = readFileSync(new URL(readSolidBoardCases()[0].file, SOLID_BOARD_FOLDER), 'utf8');
  const data = JSON.parse(text) as { geometry: Record<string, unknown> };
  data.geometry['widthNutMm'] = '43';
  expect(() => readSolidBoardCase('X.json', JSON.stringify(data))).toThrow(
    'solid-fe-board-first/X.json: geometry.widthNutMm cannot be read',
  );
});

/** Rounding of two solves of one neck, over the largest number. */
const SOLVES = 1e-7;

function expectAlike(ours: Float64Array, theirs: Float64Array, what: string): void {
  const size = Math.max(...theirs.map(Math.abs));
  const off = Math.max(...ours.map((value, k) => Math.abs(value - theirs[k])));
  expect([what, off / size < SOLVES]).toEqual([what, true]);
}

describe('superposition', () => {
  it.each(PRESETS.slice(0, 3).map(({ id, build }) => [id, build] as const))(
    'a board held along as well as flat, let go on the neck, is wedges in the neck: %s',
    (_id, build) => {
      const model = createNeckModel(describeNeck({ ...build, bridgeMm: 0, undercutTangs: false }, AS_STATED));
      const { assembly } = model;
      const stick = boardAlone(assembly)('stick');
      const letGo = solveCasesOnEmpty(model, released(assembly, stick));
      const neck = solveInfluence(model, EMPTY);
      const { slots } = neck;
      expectAlike(letGo.lineMm, neck.lineMm.subarray(0, letGo.lineMm.length), 'lines');
      expectAlike(
        boardFirst(model).clampedStickMm.map((opening, k) => opening + letGo.openingMm[k]),
        neck.openingMm.subarray(0, slots * slots).slice(),
        'openings',
      );
    },
  );

  it('the hold balances itself, and no wedge opens a slot of the held board as far as of the free one', () => {
    const model = createNeckModel(describeNeck(defaultBuild(), AS_STATED));
    const held = boardAlone(model.assembly);
    const { reactionN } = held('slide');
    const columns = model.assembly.mesh.columnXMm.length;
    for (let j = 0; j < 22; j += 7) {
      const row = reactionN.subarray(2 * j * columns, 2 * (j + 1) * columns);
      const down = row.filter((_, k) => k % 2 === 1);
      const most = Math.max(...down.map(Math.abs));
      expect(Math.abs(down.reduce((a, b) => a + b, 0)) / most).toBeLessThan(1e-6);
    }
    const unit = boardFirst(model);
    for (let j = 0; j < 22; j += 1) {
      const at = j * 22 + j;
      expect(unit.clampedStickMm[at]).toBeLessThan(unit.clampedSlideMm[at]);
      expect(unit.clampedSlideMm[at]).toBeLessThan(unit.freeMm[at]);
      expect(unit.clampedSlideMm[at]).toBeLessThan(unit.releasedMm[at]);
    }
  });
});

describe('a build', () => {
  const predictor = createPredictor();
  const build = (change: Partial<Build>): Build => ({ ...defaultBuild(), ...change });
  const first = (clampSlidePercent: number, change: Partial<Build> = {}) =>
    build({ workOrder: 'board-first', clampSlidePercent, ...change });
  const fretted = (of: Build) => predictor.predict(of).methods.press.fretted.extremeMm;

  it('whose board cannot slide bows as one that is fretted finished, and less the more it slides', () => {
    const pressed = fretted(build({}));
    // The slots opened while the clamps were on, and the studs let go of that on their elastic line: a little force.
    expectNear(fretted(first(0)), pressed, 0.06, 'studs that were let go');
    const bows = [0, 25, 50, 75, 100].map((slide) => fretted(first(slide)));
    for (let i = 1; i < bows.length; i += 1) expect(bows[i]).toBeGreaterThan(bows[i - 1]);
    expectNear(bows[4] / pressed, 0.36, 0.15, 'a third, as on solids, with the forces of its own studs');
  });

  it('tells the hump of the board on the bench, its forces under the clamps and the pressure that they need', () => {
    const { frettedBoard, methods } = predictor.predict(first(100));
    expect(predictor.predict(build({})).frettedBoard).toBeNull();
    expect(frettedBoard!.freeBowMm).toBeGreaterThan(2);
    expect(frettedBoard!.freeBowMm).toBeLessThan(12);
    expect(frettedBoard!.clampPressureMPa).toBeGreaterThan(0.01);
    frettedBoard!.clampedForceN.forEach((force, i) => expect(force).toBeGreaterThan(methods.press.wedgeForceN[i]));
  });

  it('that is strung and settled stays less far back than one that is fretted finished', () => {
    const at = (of: Build) => predictor.predict(of).methods.press;
    const [board, neck] = [at(first(100)), at(build({}))];
    expect(board.strung.extremeMm).toBeGreaterThan(neck.strung.extremeMm);
    expect(board.settled.extremeMm).toBeGreaterThan(neck.settled.extremeMm);
    expect(at(first(50, { method: 'both' })).strung.atFret8Mm).toBeLessThan(board.strung.atFret8Mm + 1);
  });

  it('has how far the board slides in its band', async () => {
    const estimator = createEstimator(createPredictor());
    const share = async (of: Build) => {
      const uncertainty = await estimator.estimate(of, { samples: 400 });
      return uncertainty!.methods.press.fretted.drivers.find(({ input }) => input === 'clampSlide')?.share ?? 0;
    };
    expect(await share(first(50))).toBeGreaterThan(0.1);
    expect(await share(build({}))).toBe(0);
  });
});
