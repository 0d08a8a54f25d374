/** What is asked before a reading goes into the log. */
import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../../src/mechanics/bench-log/entry.ts';
import { questionsOf } from '../../../src/mechanics/bench-log/question.ts';
import { BITE_LOG_SPREAD } from '../../../src/mechanics/uncertainty/inputs.ts';
import { expectNear } from '../../expect-near.ts';
import { ENTRY } from './entries.ts';

const UNMEASURED = { median: 1, logSpread: BITE_LOG_SPREAD };
const fretted = (measuredFrettedMm: number, change: Partial<LogEntry> = {}): LogEntry => ({
  ...ENTRY,
  measuredStrungMm: null,
  predictedFrettedMm: -0.13,
  measuredFrettedMm,
  ...change,
});
const asked = (entry: LogEntry, bite = UNMEASURED) => questionsOf(entry, bite);

describe('with frets in', () => {
  it('what was predicted is not asked about, nor half or twice of it', () => {
    for (const measured of [-0.13, -0.07, -0.26]) expect(asked(fretted(measured))).toEqual([]);
  });

  it('0.40 mm hump for 0.13: a bite three times as hard', () => {
    const [question] = asked(fretted(-0.4));
    expect(question).toMatchObject({
      code: 'other-bite',
      reading: 'measuredFrettedMm',
      measuredMm: -0.4,
      predictedMm: -0.13,
    });
    expectNear(question.biteTimes!, 0.4 / 0.13, 1e-9, 'a ratio');
  });

  it('a hollow where a hump was predicted: no bite leads there', () => {
    expect(asked(fretted(0.14))).toMatchObject([{ code: 'no-bite', biteTimes: null }]);
  });

  it('next to nothing where a hump was predicted is asked about too', () => {
    expect(asked(fretted(-0.02, { predictedFrettedMm: -0.4, gaugeErrorMm: 0.005 }))).toMatchObject([
      { code: 'other-bite' },
    ]);
  });

  it('a coarse gauge asks less, a workshop that knows its bite more', () => {
    expect(asked(fretted(-0.4, { gaugeErrorMm: 0.2 }))).toEqual([]);
    expect(asked(fretted(-0.26), { median: 1, logSpread: 0.05 })).toHaveLength(1);
    expect(asked(fretted(-0.4), { median: 3, logSpread: 0.1 })).toEqual([]);
  });

  it('an old bow is left out of account', () => {
    const bowed = fretted(0.07, { predictedFrettedMm: 0.07, predictedFrettedFretsMm: -0.13 });
    expect(asked(bowed)).toEqual([]);
    expect(asked({ ...bowed, measuredFrettedMm: 0.4 })).toMatchObject([{ code: 'no-bite' }]);
  });
});

describe('strung', () => {
  const strung = (measuredStrungMm: number, change: Partial<LogEntry> = {}): LogEntry => ({
    ...ENTRY,
    measuredFrettedMm: null,
    measuredStrungMm,
    ...change,
  });

  it('as predicted is not asked about; a metre off is', () => {
    expect(asked(strung(0.11))).toEqual([]);
    expect(asked(strung(1.1))).toMatchObject([{ code: 'no-bite', reading: 'measuredStrungMm' }]);
    expect(asked(strung(-1.1))).toMatchObject([{ code: 'other-bite' }]);
  });

  it('of a glued neck is told apart: nothing bites', () => {
    const glued = { method: 'glue', predictedStrungFretsMm: 0 } as const;
    expect(asked(strung(0.12, glued))).toEqual([]);
    expect(asked(strung(0.6, glued))).toMatchObject([{ code: 'without-bite', biteTimes: null }]);
  });
});

describe('what else is read', () => {
  const further: LogEntry = {
    ...ENTRY,
    measuredFrettedMm: null,
    measuredStrungMm: null,
    dialFret: 7,
    dialErrorMm: 0.01,
    predictedPullMm: 0.28,
    predictedRodMm: -0.35,
    rodTurns: 0.5,
    predictedQuarter2Mm: -0.08,
  };

  it('as predicted, or a little beside it, is not asked about', () => {
    expect(asked({ ...further, measuredPullMm: 0.28, measuredRodMm: -0.35, measuredQuarter2Mm: -0.08 })).toEqual([]);
    expect(asked({ ...further, measuredPullMm: 0.34, measuredRodMm: -0.24, measuredQuarter2Mm: -0.05 })).toEqual([]);
    // Within the error of the dial there is no way.
    expect(asked({ ...further, measuredPullMm: -0.01, predictedPullMm: 0.01 })).toEqual([]);
  });

  it.each([
    ['measuredPullMm', { measuredPullMm: -0.28 }],
    ['measuredRodMm', { measuredRodMm: 0.35 }],
    ['measuredQuarter2Mm', { measuredQuarter2Mm: 0.08 }],
  ] as const)('the other way is asked about: %s', (reading, wrong) => {
    expect(asked({ ...further, ...wrong })).toMatchObject([{ code: 'other-way', reading }]);
  });

  it('twice what strings do, and a fifth of what the rod does', () => {
    expect(asked({ ...further, measuredPullMm: 0.56 })).toMatchObject([{ code: 'other-size', times: 2 }]);
    const [rod] = asked({ ...further, measuredRodMm: -0.07 });
    expect(rod.code).toBe('other-size');
    expectNear(rod.times!, 0.2, 1e-9, 'a ratio');
  });
});

it('both readings are asked about at once', () => {
  expect(asked({ ...ENTRY, measuredFrettedMm: 0.3, measuredStrungMm: 2 })).toHaveLength(2);
});
