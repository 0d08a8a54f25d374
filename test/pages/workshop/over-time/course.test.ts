/** When a back-bow has gone, in words. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../../tools/presets.ts';
import { createPredictor } from '../../../../src/mechanics/predict.ts';
import type { FlatCrossing } from '../../../../src/mechanics/uncertainty/types.ts';
import {
  courseOf,
  flatText,
  reliefAfter,
  roughTime,
  shortTime,
} from '../../../../src/pages/workshop/over-time/course.ts';

const predictor = createPredictor();
const hollow = predictor.predict(PRESETS[0].build);
const humped = predictor.predict({ ...PRESETS[2].build, biteFactor: 2.2 });
const lasting = predictor.predict({ ...PRESETS[2].build, biteFactor: 5 });
const flat = (change: Partial<FlatCrossing>): FlatCrossing => ({
  days: null,
  fromStart: false,
  p05Days: 0,
  p50Days: 0,
  p95Days: 0,
  shareFromStart: 1,
  shareLater: 0,
  shareNever: 0,
  ...change,
});

test('times have no false exactness', () => {
  expect([0, 0.5, 3.2, 17, 75, 400, 3000].map(roughTime)).toEqual([
    'at once',
    '12 hours',
    '3 days',
    '2 weeks',
    '3 months',
    'a year',
    '8 years',
  ]);
  expect([1 / 24, 1, 7, 30, 90, 365, 3650].map(shortTime)).toEqual([
    '1 h',
    '1 d',
    '1 wk',
    '1 mo',
    '3 mo',
    '1 yr',
    '10 yr',
  ]);
});

describe('a back-bow', () => {
  test('that fades is given its time and its range', () => {
    expect(reliefAfter(humped, 'press', 0)).toBeLessThan(0);
    expect(flatText(humped, 'press', null)).toMatch(/^Flat after about .+\.$/);
    const crossing = flat({ days: 21, p05Days: 4, p95Days: null, shareFromStart: 0, shareLater: 0.9, shareNever: 0.1 });
    expect(flatText(humped, 'press', crossing)).toBe('Flat after about 3 weeks (4 days to more than ten years).');
  });

  test('that does not fade is said to outlast ten years, with the chance that it does not', () => {
    expect(reliefAfter(lasting, 'press', 3650)).toBeLessThan(0);
    expect(flatText(lasting, 'press', null)).toBe('The back-bow outlasts ten years.');
    expect(flatText(lasting, 'press', flat({ shareFromStart: 0.1, shareLater: 0.2, shareNever: 0.7 }))).toBe(
      'The back-bow outlasts ten years; in 30 of 100 such necks it fades sooner.',
    );
  });

  test('that is not there may be there in some necks', () => {
    expect(flatText(hollow, 'press', null)).toBe('No back-bow under the strings.');
    expect(flatText(hollow, 'press', flat({ fromStart: true, shareFromStart: 0.97, shareLater: 0.03 }))).toBe(
      'No back-bow under the strings.',
    );
    expect(
      flatText(hollow, 'press', flat({ fromStart: true, p95Days: 14, shareFromStart: 0.89, shareLater: 0.11 })),
    ).toBe(
      'No back-bow under the strings; in 11 of 100 such necks there is one, and in 5 it lasts longer than 2 weeks.',
    );
  });
});

test('the course goes from an hour to ten years, and only forwards under the strings', () => {
  const { days, reliefMm } = courseOf(hollow, 'press');
  expect([days[0], Math.round(days.at(-1)!)]).toEqual([1 / 24, 3650]);
  for (let i = 1; i < reliefMm.length; i += 1) expect(reliefMm[i]).toBeGreaterThan(reliefMm[i - 1]);
});
