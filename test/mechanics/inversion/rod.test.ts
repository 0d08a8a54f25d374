import { describe, expect, it } from 'vitest';
import { defaultBuild, type Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { rankMethods } from '../../../src/mechanics/inversion/methods.ts';
import { rodBends, solveRod } from '../../../src/mechanics/inversion/rod.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { METHODS } from '../../../src/mechanics/prediction-types.ts';
import { describeLine, lineAt } from '../../../src/mechanics/states.ts';
import { mendedBuild } from '../../sweep/mended.ts';
import { expectNear } from '../../expect-near.ts';

const WITH_ROD = PRESETS.filter(({ build }) => build.rodKind !== 'none');
const predictor = createPredictor();
const rodOf = (change: Partial<Build>, reliefMm: number, when: 'strung' | 'settled' = 'settled') => {
  const build = { ...defaultBuild(), ...change };
  return solveRod(predictor.predict(build), build.method, { reliefMm, when });
};

describe.each(WITH_ROD)('$id: there and back', ({ build }) => {
  it.each(METHODS)('%s', (method) => {
    const prediction = predictor.predict(build);
    const [low, high] = [prediction.rod.leastPercent, prediction.rod.mostPercent];
    for (const percent of [low + 0.2 * (high - low), high]) {
      const set = predictor.predict({ ...build, rodSettingPercent: percent }).methods[method].rodSet;
      const answer = solveRod(prediction, method, { reliefMm: set.extremeMm, when: 'settled' });
      expect(answer.status).toBe('reached');
      expectNear(answer.percent, percent, 1e-6, 'bisection to 60 bits');
      expectNear(answer.reliefMm, set.extremeMm, 1e-9, 'the same lines');
    }
  });

  it('gives the relief wanted, or says that it cannot', () => {
    for (const method of METHODS) {
      const prediction = predictor.predict(build);
      const answer = solveRod(prediction, method, { reliefMm: build.targetReliefMm, when: 'settled' });
      const rodSettingPercent = answer.percent;
      const reached = predictor.predict({ ...build, rodSettingPercent }).methods[method].rodSet.extremeMm;
      expectNear(reached, answer.reliefMm, 1e-9, 'the same lines');
      expect(answer.status === 'reached').toBe(Math.abs(answer.missMm) < 1e-6);
    }
  });
});

it('where the line is humped as much as it is hollow, says the side that every other surface says (seed 307187)', () => {
  const build = mendedBuild(307_187);
  const prediction = predictor.predict(build);
  const answer = solveRod(prediction, build.method, { reliefMm: build.targetReliefMm, when: 'settled' });
  const moment = { strung: true, days: build.settleDays, rodPercent: answer.percent };
  expect(answer.status).toBe('between-shapes');
  // To the last bit: rounding alone chooses the side.
  expect(answer.reliefMm).toBe(lineAt(prediction, build.method, moment).extremeMm);
});

describe('what a rod cannot do', () => {
  it('a one-way rod leaves a back-bow: no turn of the nut removes it', () => {
    const humped = { rodKind: 'one-way', method: 'both', kerfMm: 0.48, stringHeightFret12Mm: 3.1 } as const;
    const answer = rodOf(humped, 0.15, 'strung');
    expect(answer).toMatchObject({
      status: 'cannot-forward',
      percent: 0,
      shareOfRange: 0,
      nut: { turns: 0, way: 'none' },
    });
    expect(answer.neutralMm).toBeLessThan(0);
    expect(answer.missMm).toBeLessThan(-0.15);
    expect(answer.wantedPercent).toBeLessThan(0);
    // The same neck with a two-way rod.
    expect(rodOf({ ...humped, rodKind: 'two-way' }, 0.15, 'strung').status).toBe('reached');
  });

  it('a one-way rod that pulls above the middle of a thick neck bends it forward, and is said to', () => {
    const thick = { ...PRESETS.find(({ id }) => id === 'thick-five-piece')!.build, rodKind: 'one-way' } as const;
    for (const method of METHODS) {
      const prediction = predictor.predict({ ...thick, method });
      const limit = describeLine(prediction, prediction.methods[method].basis.rodMm).extremeMm;
      expect(limit).toBeGreaterThan(0);
      const slack = solveRod(prediction, method, { reliefMm: 0, when: 'settled' }).neutralMm;
      const ask = (reliefMm: number) => solveRod(prediction, method, { reliefMm, when: 'settled' });
      // Within its little reach forward it gives what is wanted.
      const within = ask(slack + limit / 2);
      expect(within).toMatchObject({ status: 'reached' });
      expect(within.percent).toBeGreaterThan(0);
      expect(rodBends(within)).toBe('forward');
      expect(ask(slack + 5 * limit)).toMatchObject({ status: 'too-weak', percent: 100 });
      expect(ask(slack - 0.3)).toMatchObject({ status: 'cannot-backward', percent: 0 });
    }
    // An ordinary neck: backwards.
    const ordinary = rodOf({ rodKind: 'one-way' }, 0.05);
    expect(rodBends(ordinary)).toBe('backward');
  });

  it('a weak wrench runs out of range', () => {
    const weak = { wrenchTorqueNm: 0.5, strings: defaultBuild().strings, method: 'glue' } as const;
    const answer = rodOf(weak, -0.1);
    expect(answer).toMatchObject({ status: 'too-weak', percent: 100, shareOfRange: 1 });
    expect(answer.wantedPercent).toBeGreaterThan(100);
    expect(answer.missMm).toBeGreaterThan(0);
    const forward = rodOf({ ...weak, wrenchTorqueNm: 0.5 }, 0.8);
    expect(forward).toMatchObject({ status: 'too-weak', percent: -100 });
    expect(forward.missMm).toBeLessThan(0);
  });

  it('a neck without one has none', () => {
    const answer = rodOf({ rodKind: 'none' }, 0.15);
    expect(answer).toMatchObject({ status: 'no-rod', percent: 0, wantedPercent: null, nut: { turns: 0, way: 'none' } });
    expect(answer.reliefMm).toBe(answer.neutralMm);
  });

  it('turns of the nut are a share of those at the limit', () => {
    const build = { ...defaultBuild(), rodKind: 'one-way' as const };
    const prediction = predictor.predict(build);
    const answer = solveRod(prediction, 'glue', { reliefMm: 0.2, when: 'settled' });
    expect(answer.status).toBe('reached');
    const { rodTurnsAtLimit } = prediction.methods.glue;
    expect(rodTurnsAtLimit).toBeGreaterThan(0);
    expectNear(answer.nut.turns, (rodTurnsAtLimit * answer.percent) / 100, 1e-12, 'in proportion');
    expect(answer.nut.way).toBe('clockwise');
    // As many quarter turns as it takes, each with what it does: the line's place of greatest size moves a little on the way.
    expectNear(4 * answer.nut.turns * answer.quarterTurnMm, answer.reliefMm - answer.neutralMm, 0.05, 'a straight sum');
  });
});

describe('the method that gets closest', () => {
  it('comes first, with what it misses and what its rod would have to do', () => {
    for (const { build } of PRESETS) {
      const prediction = predictor.predict(build);
      const goal = { reliefMm: build.targetReliefMm, when: 'settled', rodPercent: 0 } as const;
      const ranked = rankMethods(prediction, goal);
      expect(ranked.map(({ method }) => method).toSorted()).toEqual(['both', 'glue', 'press']);
      const misses = ranked.map(({ missMm }) => Math.abs(missMm));
      expect(misses).toEqual(misses.toSorted((a, b) => a - b));
      for (const { method, reliefMm, missMm, rod } of ranked) {
        expect(reliefMm).toBe(prediction.methods[method].settled.extremeMm);
        expectNear(missMm, reliefMm - goal.reliefMm, 1e-12, 'a difference');
        expect(rod).toEqual(solveRod(prediction, method, goal));
      }
    }
  });

  it('takes the rod setting of the goal', () => {
    const prediction = predictor.predict(defaultBuild());
    const [neutral, set] = [0, 30].map((rodPercent) =>
      rankMethods(prediction, { reliefMm: 0.1, when: 'strung', rodPercent }).find(({ method }) => method === 'press'),
    );
    expect(set!.reliefMm).toBeLessThan(neutral!.reliefMm);
  });
});
