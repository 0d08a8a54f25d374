/** Tables change their language while the page is open: nothing keeps what they said before. */
import { describe, expect, test } from 'vitest';
import { PURE_ROOMS } from '../tools/architecture.ts';
import { capturedTexts } from '../tools/captures.ts';
import { readFiles } from '../tools/source-files.ts';

test('the source asks for every text when it is shown', () => {
  // The pure rooms may not speak at all (architecture.test.ts); the command line runs once, in English.
  const files = readFiles('src', /\.tsx?$/).filter(
    ({ path }) => !PURE_ROOMS.has(path.split('/')[1]) && path !== 'src/app/predict.ts',
  );
  expect(files.length).toBeGreaterThan(200);
  expect(capturedTexts(files)).toEqual([]);
});

describe('texts that are kept are found', () => {
  const language = { path: 'src/speech/language.ts', text: 'export const words = (id, english) => english;' };
  const table = {
    path: 'src/speech/en/rail.ts',
    text: `import { words } from '../language.ts';
      export const RAIL_WORDS = words('RAIL_WORDS', { play: 'Play' });
      export function label() { return RAIL_WORDS.play; }`,
  };
  const kept = (text: string) => capturedTexts([language, table, { path: 'src/pages/rail.ts', text }]);
  const IMPORT = `import { RAIL_WORDS, label } from '../speech/en/rail.ts';\n`;

  test.each([
    ['a text', 'const PLAY = RAIL_WORDS.play;'],
    ['a table', 'const WORDS = RAIL_WORDS;'],
    ['a part', 'const { play } = RAIL_WORDS;'],
    ['in a list', 'export const ALL = [{ id: 1, label: RAIL_WORDS.play }];'],
    ['in a list that is made', 'export const ALL = [1, 2].map((id) => ({ id, label: RAIL_WORDS.play }));'],
    ['from a function', 'const PLAY = label();'],
    ['from a function that asks another', 'const both = () => label() + 1; const PLAY = both();'],
    ['in a type that is none', 'const PLAY = RAIL_WORDS.play as string;'],
  ])('%s', (_what, text) => {
    expect(kept(IMPORT + text)).toHaveLength(1);
  });

  test.each([
    ['a function that reads it', 'const play = () => RAIL_WORDS.play; export function say() { return label(); }'],
    ['a function in a list', 'export const ALL = [{ id: 1, label: () => RAIL_WORDS.play, other: label }];'],
    ['a type', 'export type Word = keyof typeof RAIL_WORDS;'],
    ['a name of the same sound', 'const made = { RAIL_WORDS: 1, label: 2 }; export const one = made.label;'],
    ['what is made to be asked', 'const make = () => ({ play: () => RAIL_WORDS.play }); export const made = make();'],
  ])('not %s', (_what, text) => {
    expect(kept(IMPORT + text)).toEqual([]);
  });
});
