/** Which readings are asked about before they count, and what they would mean. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../../src/neck/presets.ts';
import { fretsInAfterQuarters } from '../../../src/fretwork/plan/seating-order.ts';
import { NO_EVIDENCE, type Evidence } from '../../../src/mechanics/neck-readings/evidence.ts';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { predictedPart } from '../../../src/mechanics/bench-log/predicted.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { lineAt } from '../../../src/mechanics/states.ts';
import { runAtOnce } from '../../../src/mechanics/steps.ts';
import { createEstimator } from '../../../src/mechanics/uncertainty/estimate.ts';
import type { BowReading } from '../../../src/mechanics/while-fretting/job.ts';
import { questionSteps } from '../../../src/mechanics/while-fretting/question.ts';
import { ENTRY } from '../neck-readings/read-neck.ts';

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
const ask = (reading: BowReading, readings: readonly BowReading[] = [], evidence: Evidence = NO_EVIDENCE) =>
  runAtOnce(questionSteps(estimator, { build, readings, evidence }, reading));

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

  test('what was read on this neck at an earlier fretting is heard, before the first reading of this one too', () => {
    const before: LogEntry = {
      ...ENTRY,
      ...predictedPart(stated, 'press', build),
      measuredQuarter1Mm: 0.6 * bow(0),
      measuredQuarter2Mm: 0.6 * bow(1),
      measuredQuarter3Mm: 0.6 * bow(2),
    };
    const late = read(2, 2 * bow(2));
    expect(ask(late)).toBeNull();
    const heard = ask(late, [], { ...NO_EVIDENCE, own: [before] })!;
    expect(Math.abs(heard.expectedMm.p50)).toBeLessThan(0.8 * Math.abs(bow(2)));
    // The neck of now says more than the neck of then: with a reading of its own it is expected further.
    const read1 = read(1, bow(1));
    const both = ask(read(2, 3 * bow(2)), [read1], { ...NO_EVIDENCE, own: [before] })!;
    expect(Math.abs(both.expectedMm.p50)).toBeGreaterThan(Math.abs(heard.expectedMm.p50));
  });
});
