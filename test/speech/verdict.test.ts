/** The verdict in words, in both languages and both systems of units. */
import { expect, test } from 'vitest';
import { createPredictor } from '../../src/mechanics/predict.ts';
import { createEstimator } from '../../src/mechanics/uncertainty/estimate.ts';
import { PRESETS } from '../../src/neck/presets.ts';
import { presetBuild } from '../../src/speech/names.ts';
import { feelOf, verdictOf } from '../../src/verdict/in-short/verdict.ts';
import { inBothLanguages } from './house.ts';

const predictor = createPredictor();
const build = presetBuild(PRESETS[0]);
const reckoned = { build, prediction: predictor.predict(build) };
const uncertainty = await createEstimator(predictor).estimate(build, { samples: 200, seed: 3 });
const verdict = verdictOf(reckoned, uncertainty);
const feel = feelOf(reckoned, { strength: 'medium', direction: 'along' });

const both = await inBothLanguages(async () => import('../../src/speech/answers/verdict.ts'));

test('in English and mm: what to do, what to expect, what the rod does', () => {
  const clauses = both.english.verdictClauses(verdict, feel, 'metric');
  expect(clauses.map(({ id }) => id)).toEqual(['saw', 'seat', 'nip', 'expect', 'rod', 'decides', 'feel']);
  const text = clauses.map((clause) => clause.text).join(' ');
  expect(text).toMatch(/^Saw 0\.580\smm, 3\.00\smm deep; press in, about [\d.]+\sN a fret; nothing to nip\. /);
  expect(text).toMatch(
    / Expect 0\.\d\d\smm back-bow with the frets in, 0\.\d\d\smm relief strung and settled \(90 % sure: /,
  );
  expect(text).toMatch(/ Rod: .*turns? clockwise for 0\.15\smm relief\./);
  expect(text).toMatch(/ What decides most: [a-z ]+\. Played medium at 1\.90\smm action: /);
  expect(both.english.spokenVerdict(verdict, 'metric').length).toBeLessThan(120);
});

test('in German and inches no English word and no dot as decimal sign is left', () => {
  const text = both.german
    .verdictClauses(verdict, feel, 'inch')
    .map((clause) => clause.text)
    .join(' ');
  expect(text).toMatch(/^0,0\d+\sin breit und 0,1\d+\sin tief sägen; einpressen, etwa [\d,]+\slbf je Bund; /);
  expect(text).not.toMatch(/\d\.\d|saw|press in|relief|turn /);
});

test('why not comes first, with its numbers', () => {
  const humped = { ...build, targetReliefMm: 0.32, rodKind: 'one-way', rodSettingPercent: 0 } as const;
  const said = verdictOf({ build: humped, prediction: predictor.predict(humped) });
  const clauses = both.english.verdictClauses(said, null, 'metric');
  const [first] = clauses;
  expect(first.id).toBe('not');
  expect(clauses.map(({ text }) => text).join(' ')).toMatch(/^It will not come out as wanted: .*\d\smm/);
  expect(both.english.spokenVerdict(said, 'metric').startsWith(first.text)).toBe(true);
});
