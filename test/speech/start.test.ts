/** The language is chosen before anything that speaks is loaded. */
import { describe, expect, test } from 'vitest';
import { loadLanguage } from '../../src/speech/load.ts';
import { START_WORDS } from '../../src/speech/start-words.ts';
import { LANGUAGE_NAMES, LANGUAGES } from '../../src/speech/language.ts';
import { pageLanguage } from '../../src/state/preferences.ts';
import { resolveImport } from '../tools/architecture.ts';
import { reachOf } from '../tools/imports.ts';
import { readFiles } from '../tools/source-files.ts';
import { spokenIn } from '../tools/spoken.ts';

const files = new Map(readFiles('src', /\.tsx?$/).map((file) => [file.path, file]));
const paths = new Set(files.keys());
const LANGUAGE = 'src/speech/language.ts';

/** Files that are loaded with this one, before its first line runs. */
function loadedWith(start: string, reached = new Set<string>()): Set<string> {
  if (reached.has(start)) return reached;
  reached.add(start);
  for (const { name, typeOnly, later } of reachOf(files.get(start)!).imports) {
    const target = name.startsWith('.') && !typeOnly && !later ? resolveImport(start, name, paths) : undefined;
    if (target !== undefined && paths.has(target)) loadedWith(target, reached);
  }
  return reached;
}

/** Those of some files that say something. */
function speaking(some: ReadonlySet<string>): string[] {
  return [...some].filter((path) => {
    const { tables } = spokenIn([files.get(path)!]);
    return path !== LANGUAGE && tables.size > 0;
  });
}

test('nothing that speaks is loaded with the entry of the page', () => {
  const loaded = loadedWith('src/app/main.tsx');
  expect(loaded).toContain('src/state/preferences.ts');
  expect(speaking(loaded)).toEqual([]);
});

test.each(LANGUAGES.filter((language) => language !== 'en'))('nor with the words of %s', (language) => {
  const loaded = loadedWith(`src/speech/${language}/index.ts`);
  expect(loaded.size).toBeGreaterThan(10);
  expect(speaking(loaded)).toEqual([]);
  // It stands alone: nothing of the page comes with it.
  expect([...loaded].filter((path) => !path.startsWith(`src/speech/${language}/`))).toEqual([]);
});

test('files that speak are told from those that do not', () => {
  expect(speaking(loadedWith('src/app/workshop.tsx'))).toContain('src/speech/en/neck/quantity.ts');
  expect(speaking(new Set(['src/speech/en/neck/quantity.ts', 'src/state/preferences.ts']))).toEqual([
    'src/speech/en/neck/quantity.ts',
  ]);
});

describe('a language', () => {
  test.each(LANGUAGES)('%s can be loaded, and names itself', async (language) => {
    const tables = await loadLanguage(language);
    // English stands in the tables themselves.
    expect(Object.keys(tables).length > 0).toBe(language !== 'en');
    expect(LANGUAGE_NAMES[language]).not.toBe('');
    expect(Object.values(START_WORDS[language]).every((text) => text !== '')).toBe(true);
  });

  test.each([
    ['system', ['de-AT', 'en'], 'de'],
    ['system', ['fr-CH', 'de-CH', 'en-US'], 'de'],
    ['system', ['en-US', 'de'], 'en'],
    ['system', ['DE'], 'de'],
    ['system', ['den', 'fr'], 'en'],
    ['system', [], 'en'],
    ['en', ['de-DE'], 'en'],
    ['de', ['en-GB'], 'de'],
  ] as const)('chosen as %s by readers of %j is %s', (chosen, readers, expected) => {
    expect(pageLanguage(chosen, readers)).toBe(expected);
  });
});
