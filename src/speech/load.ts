/** The languages of the page besides English, each a part of its own that comes when it is chosen. */
import type { Language, Tables } from './language.ts';

const LOADED: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Tables>>> = {
  de: async () => (await import('./de/index.ts')).GERMAN,
};

/** @throws {Error} when the network does not bring it */
export function loadLanguage(language: Language): Promise<Tables> {
  // English stands in the tables themselves.
  return language === 'en' ? Promise.resolve({}) : LOADED[language]();
}
