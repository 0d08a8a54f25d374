/** The table for a bow that runs ahead, against the whole model with every slot coupled. */
import { describe, expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import { PRESETS } from '../../../src/neck/presets.ts';
import { fretsInAfterQuarters } from '../../../src/fretwork/plan/seating-order.ts';
import { AS_STATED } from '../../../src/mechanics/deviations.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { sampleLine } from '../../../src/mechanics/relief.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { splitAt, withRest } from '../../../src/mechanics/while-fretting/job.ts';
import { runAhead, type RunAhead } from '../../../src/mechanics/while-fretting/run-ahead.ts';
import { RUN_AHEAD_TEXTS } from '../../../src/speech/en/fretwork/run-ahead.ts';
import { expectNear } from '../../expect-near.ts';

const predictor = createPredictor();
const NECK = PRESETS[0].build;
const stated = predictor.predict(NECK);
const xMm = stated.methods.press.fretted.extremeXMm;

/** Bow at the place of the greatest one, of some frets or of all. */
function bow(build: Build, bite: number, fretsIn?: readonly number[]): number {
  const moment = { strung: false, days: 0, rodPercent: 0, ...(fretsIn ? { fretsIn } : {}) };
  const { reliefMm } = lineAt(predictor.predict(build, { ...AS_STATED, bite }), 'press', moment);
  return sampleLine(stated.stationXMm, reliefMm, xMm);
}

function found(bite: number, quarter: number, tolerance = 0.1): RunAhead {
  const { seated, rest } = splitAt(NECK, fretsInAfterQuarters(NECK)[quarter].length);
  const ratio = bow(NECK, bite, seated) / bow(NECK, 1, seated);
  return runAhead(NECK, stated, { seated, rest, ratio, xMm, tolerance });
}

describe('a bow that runs ahead', () => {
  test.each([
    [1.3, 0],
    [1.5, 0],
    [1.5, 1],
    [2.5, 1],
  ])('bite %f after quarter %i: found, and the end foreseen', (bite, quarter) => {
    const { biteTimes, expectedFullMm } = found(bite, quarter);
    // Slots by themselves: neighbours that bite harder open each other a little more.
    expectNear(biteTimes, bite, 0.04, 'neighbouring slots are held as predicted');
    expectNear(expectedFullMm, bow(NECK, bite), 0.03, 'neighbouring slots are held as predicted');
  });

  test.each([
    [1.5, 0],
    [1.5, 1],
    [2, 0],
  ])(
    'bite %f after quarter %i: the kerf for the rest ends at the bow wanted, nearer than by the rule of three',
    (bite, quarter) => {
      const { kerfMm, advice } = found(bite, quarter);
      expect(advice).toBe('widen-kerf');
      const { rest } = splitAt(NECK, fretsInAfterQuarters(NECK)[quarter].length);
      const ends = (kerf: number) => bow(withRest(NECK, rest, { code: 'kerf', kerfMm: kerf }), bite);
      expectNear(ends(kerfMm!), bow(NECK, 1), 0.04, 'neighbouring slots are held as predicted');
      const ratio =
        bow(NECK, bite, splitAt(NECK, fretsInAfterQuarters(NECK)[quarter].length).seated) /
        bow(NECK, 1, splitAt(NECK, fretsInAfterQuarters(NECK)[quarter].length).seated);
      const soFar = bow(NECK, 1, splitAt(NECK, fretsInAfterQuarters(NECK)[quarter].length).seated);
      const full = bow(NECK, 1);
      const share = (full - ratio * soFar) / (ratio * (full - soFar));
      const byThree = NECK.studWidthMm - share * (NECK.studWidthMm - NECK.kerfMm);
      expect(Math.abs(ends(byThree) - full)).toBeGreaterThan(Math.abs(ends(kerfMm!) - full));
    },
  );

  test('as predicted: go on; behind; far past it: glue, and past what was wanted', () => {
    expect(found(1, 1)).toMatchObject({ advice: 'go-on', ratio: 1 });
    expect(found(0.6, 1).advice).toBe('behind');
    const { seated, rest } = splitAt(NECK, fretsInAfterQuarters(NECK)[2].length);
    const wished = (ratio: number) => runAhead(NECK, stated, { seated, rest, ratio, xMm, tolerance: 0.1 }).advice;
    const all = bow(NECK, 1) / bow(NECK, 1, seated);
    expect(wished(all * 0.99)).toBe('glue-the-rest');
    expect(wished(all * 1.4)).toBe('past-target');
  });

  test('a kerf is told for the rest, and for nothing else', () => {
    for (const bite of [0.6, 1, 1.5, 2]) {
      const { kerfMm, advice } = found(bite, 1);
      expect(kerfMm === undefined).toBe(advice !== 'widen-kerf');
      expect(RUN_AHEAD_TEXTS[advice].text.length).toBeGreaterThan(40);
    }
  });

  test('frets that do nothing have no direction', () => {
    const idle = { ...NECK, kerfMm: NECK.studWidthMm + 0.1 };
    const { seated, rest } = splitAt(idle, 6);
    expect(() => runAhead(idle, predictor.predict(idle), { seated, rest, ratio: 1, xMm, tolerance: 0.1 })).toThrow(
      RangeError,
    );
  });
});
