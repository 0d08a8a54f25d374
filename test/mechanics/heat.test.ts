/** A neck that was pressed straight with heat: a recorded step, whose last bow everything later starts from. */
import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../../src/fretwork/checks/cautions.ts';
import { checkFretwork } from '../../src/fretwork/checks/checks.ts';
import { fretworkSteps, heatSprungBackPercent } from '../../src/fretwork/plan/steps.ts';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { expectNear, ROUNDING } from '../expect-near.ts';

const refret: Build = { ...defaultBuild(), job: 'refret', startingBowMm: 0.4 };
const pressed: Build = { ...refret, heatPressed: true, heatBeforeMm: 0.4, heatAfterMm: -0.05, heatRestMm: 0.1 };
const predictor = createPredictor();

describe('heat and pressing', () => {
  it('leave the bow that was measured once the neck had sprung back, and nothing else', () => {
    const [one, other] = [pressed, { ...refret, startingBowMm: 0.1 }].map((build) => predictor.predict(build));
    expect(one.startingMm).toEqual(other.startingMm);
    expect(one.methods.press.settled.reliefMm).toEqual(other.methods.press.settled.reliefMm);
    const [before] = [predictor.predict(refret)];
    expect(Math.max(...before.startingMm)).toBeGreaterThan(Math.max(...one.startingMm));
  });

  it('predict nothing: neither the bow before nor that out of the clamps moves a number', () => {
    const again = predictor.predict({ ...pressed, heatBeforeMm: 1, heatAfterMm: -0.3 });
    expect(again.methods.press.settled.reliefMm).toEqual(predictor.predict(pressed).methods.press.settled.reliefMm);
  });

  it('tell how much came back', () => {
    expectNear(heatSprungBackPercent(pressed)!, (100 * 0.15) / 0.45, ROUNDING, 'of 0.45 mm, 0.15');
    expect(heatSprungBackPercent({ ...pressed, heatAfterMm: 0.4 })).toBeUndefined();
  });

  it('stand among the steps with their caution, on a refret that has them', () => {
    const ids = (build: Build) => fretworkSteps(build).map(({ id }) => id);
    expect(ids(pressed).slice(0, 3)).toEqual(['pull', 'heat', 'mend']);
    expect(ids(refret)).not.toContain('heat');
    expect(ids({ ...pressed, job: 'new' })).not.toContain('heat');
    expect(cautionsFor(pressed).has('heat')).toBe(true);
    expect(cautionsFor(refret).has('heat')).toBe(false);
    expect(checkFretwork(pressed).map(({ code }) => code)).toContain('heat');
  });
});
