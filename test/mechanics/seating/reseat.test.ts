/** A fret that was pulled and seated again: what its slot still grips, by the law of the grip. */
import { describe, expect, it } from 'vitest';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { answerReseat, type ReseatWay, type ReseatWish } from '../../../src/mechanics/seating/reseat.ts';
import { wedgeForceLeft } from '../../../src/mechanics/time.ts';
import { defaultBuild, slotAndTang, type Build } from '../../../src/neck/build.ts';
import { advisedReseat, ENOUGH_SHARE } from '../../../src/verdict/reseat-advice.ts';
import { expectNear, ROUNDING } from '../../expect-near.ts';

const predictor = createPredictor();
const build = defaultBuild();
const ask = (wish: Partial<ReseatWish> = {}, of: Build = build) =>
  advisedReseat(predictor, of, { fret: 12, kerfMm: of.kerfMm, days: 0, ...wish });
const optionOf = (answer: ReturnType<typeof ask>, way: ReseatWay) =>
  answer.options.find((option) => option.way === way)!;

describe('a fret seated again', () => {
  it('at once, in a slot that has not grown, holds what it held', () => {
    const answer = ask();
    expect(answer.forceN).toBe(predictor.predict(build).methods.press.wedgeForceN[11]);
    const same = optionOf(answer, 'same-place');
    expectNear(same.forceN, answer.forceN, 1e-9, 'seating settles to this');
    expectNear(same.reliefMm, answer.reliefMm, 1e-9, 'nothing has changed');
    expectNear(optionOf(answer, 'beside').forceN, answer.forceN, 1e-9, 'fresh wood in the same slot');
    expect(answer.advised).toBe('same-place');
    expect(answer.options.map(({ way }) => way)).toEqual(['same-place', 'beside', 'glue']);
  });

  it('after a time holds in its own pits what time has left, and all of it in fresh wood', () => {
    const answer = ask({ days: 365 });
    expectNear(optionOf(answer, 'same-place').share, wedgeForceLeft(365, build.wedgeRelaxation), 1e-9, 'section 9');
    expectNear(optionOf(answer, 'beside').share, 1, 1e-9, 'unpitted wood');
    expect(answer.advised).toBe('beside');
  });

  it('holds less the wider its slot has grown, and never more than it did', () => {
    const kerfs = [0.58, 0.6, 0.64, 0.7, 0.75];
    for (const way of ['same-place', 'beside', 'glue'] as const) {
      const forces = kerfs.map((kerfMm) => optionOf(ask({ kerfMm, days: 30 }), way).forceN);
      expect(forces).toEqual(forces.toSorted((a, b) => b - a));
      expect(forces[0]).toBeLessThanOrEqual(ask().forceN * (1 + ROUNDING));
    }
    // Studs that do not reach the walls any more.
    expect(optionOf(ask({ kerfMm: 0.77 }), 'same-place').forceN).toBe(0);
    expect(ask({ kerfMm: 0.77 }).advised).toBe('glue');
  });

  it('bites with wider studs as deep as before', () => {
    const answer = ask({ kerfMm: 0.62 });
    const wider = optionOf(answer, 'wider');
    expectNear(wider.studWidthMm, build.studWidthMm + 0.04, 1e-9, 'as much as the slot has grown');
    expect(wider.share).toBeGreaterThan(optionOf(answer, 'beside').share);
    const regions = wider.regions!;
    expect(slotAndTang({ ...build, regions }, 12)).toMatchObject({ kerfMm: 0.62, studWidthMm: 0.8 });
    expect(slotAndTang({ ...build, regions }, 11)).toMatchObject({ kerfMm: 0.58, studWidthMm: 0.76 });
  });

  it('with glue wedges no more and holds by 3 MPa over both flanks', () => {
    const answer = ask({ kerfMm: 0.7 });
    const [same, glue] = [optionOf(answer, 'same-place'), optionOf(answer, 'glue')];
    expect(glue.forceN).toBe(same.forceN);
    // Twice the flank of the tang, 2 mm deep over the width of the board at fret 12.
    const widthMm = 43 + ((56 - 43) * (648 / 2)) / (648 * (1 - 2 ** (-22 / 12)));
    expectNear(glue.pullOutN - same.pullOutN, 2 * 3 * 2 * widthMm, 0.02, 'the board is round, the tang follows it');
  });

  it('advises what passes the checks and holds enough, in the order of the least work', () => {
    for (const kerfMm of [0.58, 0.6, 0.62, 0.64, 0.68, 0.72])
      for (const days of [0, 30, 365]) {
        const answer = ask({ kerfMm, days });
        const at = answer.options.findIndex(({ way }) => way === answer.advised);
        const enough = answer.options.map(
          ({ way, share, raised }) =>
            way === 'glue' || (share >= ENOUGH_SHARE && raised.every(({ severity }) => severity !== 'stop')),
        );
        expect(at).toBe(enough.indexOf(true));
      }
  });

  it.each([
    [{ fret: 23 }, /fret-not-there, fret 23, frets 22/],
    [{ kerfMm: 0.5 }, /slot-narrower, kerfMm 0.5, beforeMm 0.58/],
    [{ days: -1 }, /days-negative/],
  ])('refuses %j', (wish, message) => {
    expect(() => answerReseat(predictor, build, { fret: 12, kerfMm: 0.58, days: 0, ...wish })).toThrow(message);
  });
});
