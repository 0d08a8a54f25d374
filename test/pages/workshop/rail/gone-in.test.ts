/** What is said beside the rail while frets go in: numbers of computed states, and nothing between them. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../../tools/presets.ts';
import type { Build } from '../../../../src/neck/build.ts';
import { seatingSequence } from '../../../../src/fretwork/plan/seating-order.ts';
import { createPredictor } from '../../../../src/mechanics/predict.ts';
import { METHODS } from '../../../../src/mechanics/prediction-types.ts';
import { lastGoneIn } from '../../../../src/pages/workshop/rail/rail.tsx';
import { changeText } from '../../../../src/speech/bow.ts';
import { linesOf } from '../../../../src/state/lines.ts';
import { expectNothing, ROUNDING } from '../../../expect-near.ts';

const predictor = createPredictor();
const solved = (change: Partial<Build>) => {
  const build = { ...PRESETS[0].build, ...change };
  return { build, prediction: predictor.predict(build), version: 1 };
};

describe.each(METHODS)('%s', (method) => {
  test('each fret has its own force, and the steps add up to the bow of the frets that are in', () => {
    const solution = solved({ method });
    const { build, prediction } = solution;
    const order = seatingSequence(build);
    let sumMm = 0;
    for (let fretsIn = 1; fretsIn < build.fretCount; fretsIn += 1) {
      const rail = { phase: 'frets', fretsIn } as const;
      const gone = lastGoneIn(solution, rail)!;
      expect(gone).toMatchObject({ fret: order[fretsIn - 1], count: fretsIn });
      expect(gone.seatingForceN).toBe(prediction.methods[method].seatingForceN[gone.fret - 1]);
      expect(gone.seatingForceN > 0).toBe(method !== 'glue');
      sumMm += gone.stepMm;
      const shown = linesOf({ solution, rail })![method].extremeMm;
      expectNothing(sumMm - shown, 0.1, ROUNDING, 'twenty steps of a bow of about a tenth of a millimetre');
    }
  });
});

test('nothing is said before the first fret and after the last', () => {
  const solution = solved({});
  expect(lastGoneIn(solution, { phase: 'bare' })).toBeNull();
  expect(lastGoneIn(solution, { phase: 'frets', fretsIn: 'all' })).toBeNull();
  expect(lastGoneIn(solution, { phase: 'strung' })).toBeNull();
});

test('a change has its sign, and is silent where nothing of it would be printed', () => {
  expect(changeText(-0.021, 'metric')).toBe('−0.02\u00a0mm');
  expect(changeText(0.034, 'metric')).toBe('+0.03\u00a0mm');
  expect(changeText(-0.004, 'metric')).toBe('');
});
