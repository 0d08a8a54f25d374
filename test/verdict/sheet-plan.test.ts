import { describe, expect, test } from 'vitest';
import type { Build } from '../../src/neck/build.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { checkBuild } from '../../src/neck/schema.ts';
import { seatingSequence } from '../../src/fretwork/plan/seating-order.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { sampleLine } from '../../src/mechanics/relief.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { sheetPlan } from '../../src/verdict/sheet-plan.ts';
import { expectNear, ROUNDING } from '../expect-near.ts';
import { solutionOf } from './solution.ts';

const preset = (id: string): Build => PRESETS.find((candidate) => candidate.id === id)!.build;
const MAPLE = preset('bolt-on-maple');

/** A change of a preset that the schema accepts. */
function changed(change: Partial<Build>, build = MAPLE): Build {
  const checked = checkBuild({ ...build, ...change });
  if (!checked.ok) throw new Error(JSON.stringify(checked.problems));
  return checked.build;
}

const SUMS = 'sums of a few dozen lines in double precision';

describe('the bow after each quarter', () => {
  test('is the sum of what its frets do, and is what the table prints', () => {
    const { prediction } = solutionOf(MAPLE);
    const sheet = sheetPlan(solutionOf(MAPLE));
    const { wedgeMm } = prediction.methods.press.basis;
    const stations = prediction.stationXMm.length;
    const order = seatingSequence(MAPLE);
    for (const [index, quarter] of sheet.plan.seating.quarters.entries()) {
      const x = sheet.quarterLines[index].extremeXMm;
      const sum = order
        .slice(0, quarter.fretsIn)
        .map((fret) => sampleLine(prediction.stationXMm, wedgeMm.subarray((fret - 1) * stations, fret * stations), x))
        .reduce((total, value) => total + value, 0);
      expectNear(quarter.expectedBowMm!, sum, ROUNDING, SUMS);
    }
    expectNear(
      sheet.plan.seating.quarters[3].expectedBowMm!,
      prediction.methods.press.fretted.extremeMm,
      ROUNDING,
      SUMS,
    );
  });
});

describe('the states', () => {
  test('are those of the prediction, with the rod set for the relief wanted at the end', () => {
    const { prediction } = solutionOf(MAPLE);
    const sheet = sheetPlan(solutionOf(MAPLE));
    const of = prediction.methods[MAPLE.method];
    const extreme = (id: string) => sheet.states.find((state) => state.id === id)!.line.extremeMm;
    expect(sheet.states.map(({ id }) => id)).toEqual(['bare', 'fretted', 'strung', 'settled', 'rodWanted']);
    expect(extreme('bare')).toBe(0);
    expectNear(extreme('fretted'), of.fretted.extremeMm, ROUNDING, SUMS);
    expectNear(extreme('strung'), of.strung.extremeMm, ROUNDING, SUMS);
    expectNear(extreme('settled'), of.settled.extremeMm, ROUNDING, SUMS);
    expect(sheet.rod?.status).toBe('reached');
    expectNear(extreme('rodWanted'), MAPLE.targetReliefMm, 1e-3, 'solved to a tenth of a micrometre of 0.15 mm');
  });

  test('leave the rod out where there is none, and show the build’s own setting where it has one', () => {
    const nylon = sheetPlan(solutionOf(preset('nylon-flat')));
    expect(nylon.rod).toBeUndefined();
    expect(nylon.states.map(({ id }) => id)).toEqual(['bare', 'fretted', 'strung', 'settled']);
    const set = sheetPlan(solutionOf(changed({ rodSettingPercent: 30 })));
    expect(set.states.map(({ id }) => id)).toContain('rodNow');
  });

  test('a one-way rod that cannot help is no state of its own', () => {
    const sheet = sheetPlan(solutionOf(changed({ targetReliefMm: 0.7, rodKind: 'one-way' })));
    expect(sheet.rod?.status).toBe('cannot-forward');
    expect(sheet.states.map(({ id }) => id)).not.toContain('rodWanted');
  });

  test('a refret begins with the bow that the board has', () => {
    const sheet = sheetPlan(solutionOf(changed({ job: 'refret', startingBowMm: 0.25 })));
    expectNear(sheet.states[0].line.extremeMm, 0.25, 1e-4, 'the top of the arc lies between two of its stations');
  });

  test('carry the band of the library once it is known, with the sheet’s own tolerance from it', async () => {
    const solution = solutionOf(MAPLE);
    const uncertainty = await createEstimator(createPredictor()).estimate(MAPLE, { samples: 400 });
    const sheet = sheetPlan(solution, uncertainty);
    const of = uncertainty!.methods.press;
    for (const id of ['fretted', 'strung', 'settled'] as const) {
      const { band } = sheet.states.find((state) => state.id === id)!;
      expectNear(band!.p05, of[id].p05, 1e-9, SUMS);
      expectNear(band!.p95, of[id].p95, 1e-9, SUMS);
    }
    expect(sheet.states[0].band).toBeUndefined();
    expect(sheet.plan.seating.quarters.every(({ bandMm }) => bandMm && bandMm[0] < bandMm[1])).toBe(true);
    expectNear(sheet.plan.seating.quarters[3].bandMm![0], of.fretted.p05, 1e-9, SUMS);
    expect(sheet.drivers).toBe(of.settled.drivers);
    expect(sheetPlan(solution).states.every(({ band }) => band === undefined)).toBe(true);
  });
});

describe('when the bow runs ahead', () => {
  test('the sheet answers for the first two quarters, more bow never with milder advice', () => {
    const rank = ['go-on', 'widen-kerf', 'glue-the-rest', 'past-target'];
    const { ahead } = sheetPlan(solutionOf(MAPLE));
    expect(ahead.map(({ fretsIn }) => fretsIn)).toEqual([6, 6, 6, 11, 11, 11]);
    for (const quarter of [ahead.slice(0, 3), ahead.slice(3)]) {
      const ranks = quarter.map(({ result }) => rank.indexOf(result.advice));
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      expect(ranks[0]).toBeGreaterThanOrEqual(0);
    }
    const widened = ahead.filter(({ result }) => result.kerfMm !== undefined);
    expect(widened.length).toBeGreaterThan(0);
    for (const { result } of widened) expect(result.kerfMm).toBeGreaterThan(MAPLE.kerfMm);
  });

  test('says nothing where frets do not bow the neck', () => {
    expect(sheetPlan(solutionOf(preset('nylon-flat'))).ahead).toEqual([]);
  });

  test('counts from the bow that a refret begins with', () => {
    const fresh = sheetPlan(solutionOf(MAPLE)).ahead;
    const again = sheetPlan(solutionOf(changed({ job: 'refret', startingBowMm: 0.25 }))).ahead;
    expect(again.map(({ result }) => result.advice)).toEqual(fresh.map(({ result }) => result.advice));
    expect(again[0].measuredMm).toBeGreaterThan(fresh[0].measuredMm + 0.1);
  });
});

describe('the levelling budget', () => {
  test('is reckoned in the state that the build says, on the bench where it says nothing', () => {
    const none = sheetPlan(solutionOf(changed({ levelledIn: 'none' })));
    const bare = sheetPlan(solutionOf(changed({ levelledIn: 'bare' })));
    const strung = sheetPlan(solutionOf(changed({ levelledIn: 'strung' })));
    expect([none.levelledIn, none.levellingAssumed]).toEqual(['bare', true]);
    expect([bare.levelledIn, bare.levellingAssumed]).toEqual(['bare', false]);
    expect([strung.levelledIn, strung.levellingAssumed]).toEqual(['strung', false]);
    expect(none.plan.levelling).toEqual(bare.plan.levelling);
    expect(none.plan.levelling).toHaveLength(22);
    expect(strung.plan.levelling).not.toEqual(bare.plan.levelling);
  });

  test('takes off a hump what stands above the line through its lowest tops', () => {
    // All frets over one arch: the file rides on the first and the last fret, by hand from the relief at three frets.
    const solution = solutionOf(changed({ levelledIn: 'bare' }));
    const { prediction } = solution;
    const line = prediction.methods.press.fretted;
    const relief = (fret: number) => sampleLine(prediction.stationXMm, line.reliefMm, prediction.fretXMm[fret - 1]);
    const [first, last] = [prediction.fretXMm[0], prediction.fretXMm[21]];
    const share = (prediction.fretXMm[7] - first) / (last - first);
    const wanted = -relief(8) - (-relief(1) + share * (-relief(22) + relief(1)));
    expectNear(sheetPlan(solution).plan.levelling![7].aboveLineMm, wanted, 1e-9, SUMS);
  });
});

test('every preset has a whole plan', () => {
  for (const { build } of PRESETS) {
    const sheet = sheetPlan(solutionOf(build));
    expect(sheet.plan.slots).toHaveLength(build.fretCount + (build.zeroFret ? 1 : 0));
    expect(sheet.plan.seating.forces).toHaveLength(build.fretCount);
    expect(sheet.quarterLines).toHaveLength(4);
  }
});
