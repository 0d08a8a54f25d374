import { describe, expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { METHODS } from '../../../src/mechanics/prediction-types.ts';
import { sampleLine } from '../../../src/mechanics/relief.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { bandAt } from '../../../src/mechanics/uncertainty/band-at.ts';
import { courseDays, FIRST_DAYS, flatAfterDays, LAST_DAYS } from '../../../src/mechanics/uncertainty/time-course.ts';
import { expectNear } from '../../expect-near.ts';
import { uncertaintyOf } from './model-of.ts';

describe('the times', () => {
  it('run from an hour to ten years, evenly on a log scale', () => {
    const days = courseDays();
    expectNear(days[0], 1 / 24, 1e-12, 'the first');
    expectNear(days.at(-1)!, 3650, 1e-12, 'the last');
    const ratio = days[1] / days[0];
    for (let i = 1; i < days.length; i += 1) expectNear(days[i] / days[i - 1], ratio, 1e-9, 'one ratio');
  });
});

// The nylon-string preset in a narrower kerf, pressed and glued, is humped under its strings at first and flat within days.
const build = { ...PRESETS.find(({ id }) => id === 'nylon-flat')!.build, kerfMm: 0.5 };
const predictor = createPredictor();
const prediction = predictor.predict(build);
const uncertainty = uncertaintyOf(build, { samples: 800 }, predictor);

describe('flat after', () => {
  it('is where no fret top stands higher over the others than a feeler gauge tells, 0.02 mm', () => {
    const days = flatAfterDays(prediction, 'both')!;
    const at = (day: number) => {
      const { reliefMm } = lineAt(prediction, 'both', { strung: true, days: day, rodPercent: 0 });
      const tops = prediction.fretXMm.slice(0, build.bodyJointFret);
      return Math.min(...tops.map((x) => sampleLine(prediction.stationXMm, reliefMm, x)));
    };
    expect(at(days * 0.999)).toBeLessThan(-0.02);
    expect(at(days * 1.001)).toBeGreaterThan(-0.02);
    expect(days).toBeGreaterThan(FIRST_DAYS);
    expect(days).toBeLessThan(LAST_DAYS);
  });

  it('comes with its range and with the shares of the necks', () => {
    const { flat } = uncertainty.methods.both.timeCourse;
    expect(flat.days).toBe(flatAfterDays(prediction, 'both'));
    expect(flat.fromStart).toBe(false);
    expectNear(flat.shareFromStart + flat.shareLater + flat.shareNever, 1, 1e-12, 'shares');
    expect(flat.p05Days).toBe(0);
    expect(flat.p50Days).toBeGreaterThan(0);
    expect(flat.p95Days).toBeNull();
    expect(flat.shareNever).toBeGreaterThan(0.05);
    // The band at a day and the crossings tell one story: humped at ten years = never flat.
    const late = bandAt(uncertainty, 'both', { strung: true, days: LAST_DAYS, rodPercent: 0 });
    expect(late.extreme.p05).toBeLessThan(0);
  });

  it('is nothing for a neck that is hollow from the start', () => {
    expect(flatAfterDays(prediction, 'glue')).toBeNull();
    const { flat } = uncertainty.methods.glue.timeCourse;
    expect(flat).toMatchObject({ days: null, fromStart: true, p05Days: 0, p95Days: 0, shareFromStart: 1 });
  });

  it('is nothing for a neck that stays humped', () => {
    const humped = {
      ...defaultBuild(),
      kerfMm: 0.46,
      wedgeRelaxation: 0,
      method: 'both' as const,
      thicknessFret1Mm: 26,
      thicknessFret12Mm: 28,
    };
    const bands = uncertaintyOf(humped, { samples: 200 }, predictor).methods.both;
    expect(bands.timeCourse.flat).toMatchObject({ days: null, fromStart: false });
    expect(bands.timeCourse.statedMm.at(-1)).toBeLessThan(0);
  });
});

describe('the course', () => {
  it('is the stated relief and the band at each time', () => {
    for (const method of METHODS) {
      const course = uncertainty.methods[method].timeCourse;
      for (const t of [0, 12, 24]) {
        const moment = { strung: true, days: course.days[t], rodPercent: 0 };
        expect(course.statedMm[t]).toBe(lineAt(prediction, method, moment).extremeMm);
        const { extreme } = bandAt(uncertainty, method, moment);
        expect([course.p05Mm[t], course.p50Mm[t], course.p95Mm[t]]).toEqual([extreme.p05, extreme.p50, extreme.p95]);
      }
    }
  });

  it('wood under strings only gives: the relief never falls with time', () => {
    for (const method of METHODS) {
      const { p50Mm } = uncertainty.methods[method].timeCourse;
      for (let t = 1; t < p50Mm.length; t += 1) expect(p50Mm[t]).toBeGreaterThanOrEqual(p50Mm[t - 1] - 1e-9);
    }
  });
});
