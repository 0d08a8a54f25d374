/**
 * What people write cannot turn the words around it. Checked with bidi-js, which implements the Unicode Bidirectional
 * Algorithm and, as its authors say, passes the conformance tests of the Unicode Character Database.
 */
import bidiFactory from 'bidi-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isolated } from '../../src/speech/isolate.ts';
import { words } from '../../src/speech/language.ts';
import { neckLabels } from '../../src/pages/compare/labels.ts';
import { choiceLabels } from '../../src/pages/customer/labels.ts';
import { LIBRARY_WORDS } from '../../src/speech/en/pages/library.ts';
import { defaultBuild } from '../../src/neck/build.ts';
import { checkChange } from '../tools/check-change.ts';
import { HOSTILE_TEXTS } from '../faults/hostile.ts';
import { problemText } from '../../src/speech/problems.ts';

const bidi = bidiFactory();

const SEED = 20261204;
const BEFORE = 'Neck “';
const AFTER = '” is kept, 12 mm.';

/** Do all characters of the sentence around the name read from left to right, in this order? */
function staysInOrder(sentence: string): boolean {
  const { levels } = bidi.getEmbeddingLevels(sentence, 'ltr');
  const last = sentence.length - AFTER.length;
  return levels.every((level, at) => level === 0 || (at >= BEFORE.length && at < last));
}

/** What opens or closes something, both kinds of letters, digits and the ends of paragraphs. */
const TURNING = Array.from(
  '\u200e\u200f\u061c\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069abאبش ٣1,(\n\u2029',
);
const turningText = fc.string({ unit: fc.constantFrom(...TURNING), maxLength: 24 });

/** Many nested marks, more than the algorithm keeps count of one by one (its greatest depth is 125). */
const DEEP = ['\u202e'.repeat(200), '\u2067'.repeat(200), '\u2069'.repeat(200), '\u2067\u202e'.repeat(100)];
const NAMES = [
  ...HOSTILE_TEXTS,
  ...DEEP,
  '\u202eunclosed',
  '\u2069\u202eout of it',
  'two\u2029\u202elines',
  'צוואר 12',
];

describe('a name in a sentence', () => {
  test.each(NAMES.map((name) => [JSON.stringify(name).slice(0, 40), name]))(
    '%s leaves the rest alone',
    (_shown, name) => {
      expect(staysInOrder(BEFORE + isolated(name) + AFTER)).toBe(true);
    },
  );

  test(`so does any mixture of marks and letters (seed ${SEED})`, () => {
    let garbled = 0;
    fc.assert(
      fc.property(turningText, (name) => {
        if (!staysInOrder(BEFORE + name + AFTER)) garbled += 1;
        return staysInOrder(BEFORE + isolated(name) + AFTER);
      }),
      { seed: SEED, numRuns: 2000 },
    );
    // The mixture is one that does garble when it is let.
    expect(garbled).toBeGreaterThan(500);
  });

  test(`nothing that can be seen is changed, and a plain name not at all (seed ${SEED})`, () => {
    const visible = (text: string) => text.replaceAll(/[\u2066-\u2069]/g, '');
    fc.assert(
      fc.property(turningText, (name) => visible(isolated(name)) === visible(name)),
      { seed: SEED, numRuns: 1000 },
    );
    for (const plain of ['', 'Ash, No. 3', 'Жанна', '木', '𝔫𝔢𝔠𝔨 🎸', 'a\u200db\uFEFF'])
      expect(isolated(plain)).toBe(plain);
  });

  test('setting apart twice is as good as once', () => {
    for (const name of NAMES) expect(staysInOrder(BEFORE + isolated(isolated(name)) + AFTER)).toBe(true);
  });
});

describe('names are set apart where they enter', () => {
  const name = '\u202egnp.kcen';

  test('sentences of the tables', () => {
    expect(LIBRARY_WORDS.kept(name)).toBe(`“${isolated(name)}” is kept in the library.`);
    const table = words('TEST', { deep: [{ of: (text: string, count: number) => `${text}: ${count}` }] });
    expect(table.deep[0].of(name, 2)).toBe(`${isolated(name)}: 2`);
  });

  test('messages of refusal', () => {
    const [problem] = checkChange(defaultBuild(), { method: name as never });
    expect(problemText(problem, 'metric')).toContain(isolated(JSON.stringify(name)));
  });

  test('labels of compared necks and of the customer’s choices', () => {
    const build = { ...defaultBuild(), name };
    const builds = [build, { ...build, kerfMm: 0.6, method: 'glue' as const }];
    for (const label of [...neckLabels(builds), ...choiceLabels(builds)]) expect(label).toContain(isolated(name));
  });
});
