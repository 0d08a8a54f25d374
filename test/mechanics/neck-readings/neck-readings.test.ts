/** What readings on a neck itself say of it: each of its own part of the model, a wrong one told as doubtful. */
import { describe, expect, test } from 'vitest';
import type { Build } from '../../../src/neck/build.ts';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { predictedFurther } from '../../../src/mechanics/bench-log/predicted.ts';
import { NO_EVIDENCE } from '../../../src/mechanics/neck-readings/evidence.ts';
import { hear, isSilent, narrowedBy, ownNeck, type Heard } from '../../../src/mechanics/neck-readings/heard.ts';
import { READING_KINDS, readingsOf, type ReadingKind } from '../../../src/mechanics/neck-readings/readings.ts';
import { sampleExtremes } from '../../../src/mechanics/uncertainty/band-at.ts';
import { bandOf, type Band } from '../../../src/mechanics/uncertainty/band.ts';
import type { EstimateOptions } from '../../../src/mechanics/uncertainty/estimate.ts';
import type { ResponseModel } from '../../../src/mechanics/uncertainty/model.ts';
import { withQuarters } from '../../../src/mechanics/uncertainty/quarters.ts';
import { drawSamples } from '../../../src/mechanics/uncertainty/sampling.ts';
import { modelOf } from '../uncertainty/model-of.ts';
import { expectNear } from '../../expect-near.ts';
import { NECK, predictor, prediction, SETTING, predicted, ENTRY, PULL, ROD, QUARTERS } from './read-neck.ts';

const MODEL = modelOf(NECK, predictor);

function heardOf(entry: LogEntry, kinds: readonly ReadingKind[] = READING_KINDS, neck: Build = NECK): Heard {
  const evidence = { ...NO_EVIDENCE, own: [entry] };
  return hear(neck, evidence, ownNeck(neck, evidence, MODEL, kinds));
}
function bandsOf({ grip, quarters }: EstimateOptions = {}, model: ResponseModel = MODEL) {
  const draws = withQuarters(drawSamples(model, 1, 2000, grip), quarters);
  const at = (strung: boolean, rodPercent = 0) =>
    bandOf(sampleExtremes(draws, 'press', { strung, days: 0, rodPercent }));
  return {
    stringsFactor: draws.methods.press.stringsFactor,
    fretted: at(false),
    strung: at(true),
    rodSet: at(true, 40),
    wedgeForceN: bandOf(draws.meanForceN.slice()),
  };
}
const width = ({ p05, p95 }: Band) => p95 - p05;

const BEFORE = bandsOf();

/** Of the logarithm of what the strings do. */
const scatter = (bands: typeof BEFORE) => {
  const logs = bands.stringsFactor.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  return Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / logs.length);
};

describe('read as it is predicted', () => {
  test('the strings’ pull leaves less of what the strings do, and the frets’ part as it was', () => {
    const after = bandsOf(narrowedBy(heardOf(PULL)));
    // Of the strings' factor 5 % of the model and the dial's 0.01 mm in 0.3 mm are left, of some 15 %.
    expect(scatter(after)).toBeLessThan(0.5 * scatter(BEFORE));
    expect(width(after.strung)).toBeLessThan(width(BEFORE.strung));
    // Both widths come from 2,000 samples: some 4 % each.
    expectNear(width(after.wedgeForceN), width(BEFORE.wedgeForceN), 0.1, 'the pull says next to nothing of the grip');
  });

  test('the rod tells of stiffness no better than a turn of it is known', () => {
    const [pull, rod] = [bandsOf(narrowedBy(heardOf(PULL))), bandsOf(narrowedBy(heardOf(ROD)))];
    expect(width(rod.rodSet)).toBeLessThan(width(BEFORE.rodSet));
    expect(scatter(rod)).toBeLessThan(scatter(BEFORE));
    expect(scatter(pull)).toBeLessThan(0.6 * scatter(rod));
    const { rodTimes } = heardOf(ROD).posterior;
    expectNear(rodTimes!, 1, 0.02, 'read as predicted, the median neck apart from the stated one');
  });

  test('the quarters leave little of the band with frets in, and say the grip of each', () => {
    const { posterior } = heardOf(QUARTERS);
    const after = bandsOf(narrowedBy(heardOf(QUARTERS)));
    expect(width(after.fretted)).toBeLessThan(0.25 * width(BEFORE.fretted));
    expect(width(after.wedgeForceN)).toBeLessThan(0.75 * width(BEFORE.wedgeForceN));
    expect(posterior.quarterGrips).toHaveLength(4);
    for (const { p50 } of posterior.quarterGrips!) expectNear(p50, 1, 0.06, 'each as predicted; 0.1 before');
    expect(posterior.doubts).toEqual([]);
  });
});

test('a quarter that was hit harder is found in its own quarter', () => {
  // The second quarter bends half as far again as predicted.
  const extra = 0.5 * (predicted.predictedQuarter2Mm! - predicted.predictedQuarter1Mm!);
  const { quarterGrips } = heardOf({
    ...QUARTERS,
    gaugeErrorMm: 0.005,
    measuredQuarter2Mm: predicted.predictedQuarter2Mm! + extra,
    measuredQuarter3Mm: predicted.predictedQuarter3Mm! + extra,
    measuredFrettedMm: predicted.predictedFrettedMm! + extra,
  }).posterior;
  const medians = quarterGrips!.map(({ p50 }) => p50);
  expect(Math.max(...medians)).toBe(medians[1]);
  expect(medians[1]).toBeGreaterThan(1.08 * medians[0]);
});

describe('what nothing explains', () => {
  test.each([
    ['pull', { measuredPullMm: -predicted.predictedPullMm! }],
    ['rod', { measuredRodMm: -predicted.predictedRodMm! }],
    ['quarter', { measuredQuarter2Mm: -predicted.predictedQuarter2Mm! }],
  ] as const)('is told: %s the other way', (kind, wrong) => {
    const { doubts } = heardOf({ ...ENTRY, ...wrong }).posterior;
    expect(doubts.map((doubt) => (doubt.code === 'far-on-neck' ? doubt.kind : doubt.code))).toContain(kind);
  });
});

test('with the rod snug only its own travel is heard', () => {
  const all = { ...QUARTERS, ...PULL, measuredRodMm: 0.1, rod: 'snug' } as const;
  expect(readingsOf(all, NECK).readings.map(({ kind }) => kind)).toEqual(['rod']);
  expect(isSilent({ ...NO_EVIDENCE, own: [{ ...all, measuredRodMm: null }] }, NECK)).toBe(true);
});

test('what is taken over gives the same neck again', () => {
  const entry = { ...QUARTERS, measuredQuarter1Mm: 1.3 * predicted.predictedQuarter1Mm! };
  const first = heardOf(entry);
  const neck = { ...NECK, ...first.taken };
  const again = heardOf(entry, READING_KINDS, neck);
  expect(again.taken).toEqual(first.taken);
  // The line of a neck that bites harder is not quite a scaled one.
  expectNear(
    bandsOf(narrowedBy(again), modelOf(neck, predictor)).fretted.p50,
    bandsOf(narrowedBy(first)).fretted.p50,
    0.02,
    'linearised',
  );
});

test('a half turn anticlockwise goes as far the other way', () => {
  const back = predictedFurther(prediction, 'press', NECK, { ...SETTING, rodWay: 'anticlockwise' });
  expectNear(back.predictedRodMm!, -predicted.predictedRodMm!, 1e-12, 'the same line');
  expect(predicted.predictedRodMm).toBeLessThan(0);
  expect(predicted.predictedPullMm).toBeGreaterThan(0);
});
