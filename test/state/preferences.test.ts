import { expect, test } from 'vitest';
import {
  loadPreferences,
  pageLanguage,
  savePreferences,
  STANDARD_PREFERENCES,
  type Preferences,
} from '../../src/state/preferences.ts';

function memory(first?: string) {
  let kept: string | null = first ?? null;
  return () => ({
    getItem: () => kept,
    setItem: (_key: string, value: string) => {
      kept = value;
    },
  });
}

test('what is saved is loaded', () => {
  const storage = memory();
  const chosen: Preferences = { unitSystem: 'inch', appearance: 'dark', singleKeys: false, language: 'de' };
  savePreferences(chosen, storage);
  expect(loadPreferences(storage)).toEqual(chosen);
});

test.each([
  '',
  'not JSON',
  'null',
  '[]',
  '7',
  '{"unitSystem":"furlongs","appearance":3,"singleKeys":"no","language":"tlh"}',
])('what makes no sense is the standard: %s', (text) => {
  expect(loadPreferences(memory(text))).toEqual(STANDARD_PREFERENCES);
});

test('storage that is refused loses only the preference', () => {
  const refused = () => {
    throw new Error('refused');
  };
  expect(loadPreferences(refused)).toEqual(STANDARD_PREFERENCES);
  expect(() => savePreferences(STANDARD_PREFERENCES, refused)).not.toThrow();
});

test('the language is the one chosen, else the reader’s first that is one of ours, else English', () => {
  expect(pageLanguage('de', ['en-GB'])).toBe('de');
  expect(pageLanguage('en', ['de-AT'])).toBe('en');
  expect(pageLanguage('system', ['fr-FR', 'de-AT', 'en'])).toBe('de');
  expect(pageLanguage('system', ['EN-us'])).toBe('en');
  expect(pageLanguage('system', ['den', 'fr'])).toBe('en');
  expect(pageLanguage('system', [])).toBe('en');
});
