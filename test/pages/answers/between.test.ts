/** What is said where the line changes its shape on the way to the relief wanted. */
import { describe, expect, test } from 'vitest';
import { PRESETS } from '../../tools/presets.ts';
import { solveRod } from '../../../src/mechanics/inversion/rod.ts';
import { createPredictor } from '../../../src/mechanics/predict.ts';
import { rodText } from '../../../src/pages/papers/sections/expected.tsx';
import { betweenOf } from '../../../src/pages/answers/wanted/goal.ts';
import { kerfStatusText } from '../../../src/pages/answers/wanted/kerf-answers.tsx';

const kerfSaid = (goalMm: number, reliefMm: number) =>
  kerfStatusText({ status: 'between-shapes', reliefMm, missMm: reliefMm - goalMm }, goalMm, '0.583 mm', 'metric');

describe('the kerf', () => {
  test('for a flat neck is the one that makes it as flat as it gets, with what is left', () => {
    const { text, isOpen } = kerfSaid(0, -0.02);
    expect(text).toBe(
      'A kerf of 0.583 mm makes it as flat as it gets: the line is then humped at one place and hollow at another, 0.02\u00a0mm either way.',
    );
    // "0.02 mm back-bow: 0.02 mm too little" after it would say less and be half the truth.
    expect(isOpen).toBe(false);
  });

  test('that comes as close as is printed gives it', () => {
    expect(kerfSaid(0, 0.004)).toEqual({ text: 'A kerf of 0.583 mm gives it.', isOpen: false });
    expect(kerfSaid(0.1, 0.104).text).toBe('A kerf of 0.583 mm gives it.');
  });

  test('for a relief that a gauge can tell is the closest, and how close is said after it', () => {
    const { text, isOpen } = kerfSaid(0.06, 0.09);
    expect(text).toMatch(/^No kerf gives it exactly: .* The closest is 0\.583 mm\.$/);
    expect(isOpen).toBe(true);
  });
});

/** Presets whose line under the strings the rod does not turn from a hollow to a hump everywhere at once. */
test.each(PRESETS.filter(({ build }) => build.rodKind !== 'none'))(
  'the rod on the sheet of $id, wanted flat, gives it or makes it as flat as it gets',
  ({ build }) => {
    const prediction = createPredictor().predict(build);
    const answer = solveRod(prediction, build.method, { reliefMm: 0, when: 'strung' });
    expect(answer.status).toBe('between-shapes');
    const said = rodText(answer, 0, 'metric');
    const wanted = {
      'as-wanted': /^For the relief wanted, from a snug nut: .* turn/,
      flattest: /^The rod makes the line as flat as it gets: .* 0\.\d\d\smm either way\.$/,
      between: /^never$/,
    };
    expect(said).toMatch(wanted[betweenOf(0, answer.missMm, 'metric')]);
  },
);

test('the rod on the sheet, for a relief that a gauge can tell, names the nearest', () => {
  const build = PRESETS[0].build;
  const answer = solveRod(createPredictor().predict(build), build.method, { reliefMm: 0, when: 'strung' });
  const nearest = { ...answer, reliefMm: 0.12, missMm: 0.06 };
  expect(rodText(nearest, 0.06, 'metric')).toMatch(/the nearest is 0\.12\smm relief/);
});
