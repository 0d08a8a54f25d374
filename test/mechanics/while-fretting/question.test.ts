/** Which readings are asked about before they count, and what they would mean. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../../src/neck/presets.ts';
import { fretsInAfterQuarters } from '../../../src/fretwork/plan/seating-order.ts';
import { NO_EVIDENCE } from '../../../src/mechanics/neck-readings/evidence.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { runAtOnce } from '../../../src/mechanics/steps.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import type { BowReading } from '../../../src/mechanics/while-fretting/job.ts';
import { questionSteps } from '../../../src/mechanics/while-fretting/question.ts';

const build = PRESETS[0].build;
const predictor = createPredictor();
const estimator = createEstimator(predictor);
const quarters = fretsInAfterQuarters(build);
const stated = predictor.predict(build);
const bow = (quarter: number) =>
  lineAt(stated, build.method, { strung: false, days: 0, rodPercent: 0, fretsIn: quarters[quarter] }).extremeMm;
const read = (quarter: number, measuredMm: number): BowReading => {
  return { seated: quarters[quarter].length, measuredMm, errorMm: 0.02 };
};
const ask = (reading: BowReading, readings: readonly BowReading[] = []) =>
  runAtOnce(questionSteps(estimator, { build, readings, evidence: NO_EVIDENCE }, reading));

describe('a reading while frets go in', () => {
  test('as predicted, and twice that, is taken as it is', () => {
    expect(ask(read(1, bow(1)))).toBeNull();
    expect(ask(read(1, 2 * bow(1)))).toBeNull();
  });

  test('ten times as much is a slip of the point: a bite so many times as hard', () => {
    const question = ask(read(1, 10 * bow(1)))!;
    expect(question.biteTimes).toBeGreaterThan(8);
    expect(question.expectedMm.p50).toBeLessThan(0);
  });

  test('a hollow where frets make a hump: no bite leads there', () => {
    expect(ask(read(2, -2 * bow(2)))!.biteTimes).toBeNull();
  });

  test('what was read before is heard: the same number may be likely at first and far after it', () => {
    const late = read(2, 2 * bow(2));
    expect(ask(late)).toBeNull();
    expect(ask(late, [read(0, bow(0)), read(1, 0.7 * bow(1))])).not.toBeNull();
  });
});
