/** Entries of the bench log under another law of the grip than the build's. */
import { expect, it } from 'vitest';
import { defaultBuild } from '../../../src/neck/build.ts';
import { STANDARD_LAW, underLaw } from '../../../src/mechanics/bench-log/law.ts';
import { EARLIER_GRIP } from '../../../src/neck/file.ts';
import { bitePosterior } from '../../../src/mechanics/bench-log/posterior.ts';
import { predictedPart } from '../../../src/mechanics/bench-log/predicted.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { expectNear } from '../../expect-near.ts';
import { ENTRY } from './entries.ts';

const EARLIER = { ...ENTRY, studShape: null, embeddingLengthMm: null };
const SIZES = { kerfMm: 0.58, tangWidthMm: 0.5, studWidthMm: 0.76 };

it('an entry of the build’s own law stays as it is', () => {
  expect(underLaw(STANDARD_LAW, ENTRY)).toBe(ENTRY);
  expect(underLaw(EARLIER_GRIP, EARLIER)).toBe(EARLIER);
});

it('a block of file version 1 as a ridge, worked by hand', () => {
  // Bite 0.09 of 0.13 mm: 1 − e^(−0.09/0.05) = 0.834701 against 0.09/0.13·(1 − e^(−0.09/0.017)) = 0.688832
  const factor = 0.834701 / 0.688832;
  expectNear(underLaw(STANDARD_LAW, { ...EARLIER, ...SIZES }).biteFactor, factor, 1e-5, 'worked by hand');
  // Who does not say what it was is taken for the standard wire in the standard kerf.
  expectNear(underLaw(STANDARD_LAW, EARLIER).biteFactor, factor, 1e-5, 'the same sizes');
  expectNear(underLaw(STANDARD_LAW, { ...EARLIER, biteFactor: 1.3 }).biteFactor, 1.3 * factor, 1e-5, 'in proportion');
});

it('the factor that gives a neck the bow of one law gives it the same bow under the other', () => {
  const predictor = createPredictor();
  const before = { ...defaultBuild(), ...EARLIER_GRIP, kerfMm: 0.6, biteFactor: 1.2 };
  const part = predictedPart(predictor.predict(before), 'press', before);
  const { biteFactor } = underLaw(STANDARD_LAW, { ...ENTRY, ...part, ...SIZES, kerfMm: 0.6 });
  const after = predictor.predict({ ...before, ...STANDARD_LAW, biteFactor }).methods.press;
  expectNear(after.fretted.extremeMm, part.predictedFrettedMm!, 0.05, 'the opening of the slots is left out');
});

it('what is measured on a neck is told in the terms of the law that asks', () => {
  const ridge = bitePosterior([{ ...EARLIER, ...SIZES }], STANDARD_LAW);
  const block = bitePosterior([{ ...EARLIER, ...SIZES }], EARLIER_GRIP);
  // Less than in proportion: the prior holds both back.
  expect(ridge.median / block.median).toBeGreaterThan(1.1);
  expect(ridge.median / block.median).toBeLessThan(0.834701 / 0.688832);
  expectNear(ridge.logSpread, block.logSpread, 0.01, 'as much is known');
});

it('studs that do not reach the wood say nothing of a law', () => {
  const loose = { ...EARLIER, ...SIZES, kerfMm: 0.8 };
  expect(underLaw(STANDARD_LAW, loose)).toBe(loose);
});
