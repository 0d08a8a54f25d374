/** Choosing the language of the page, at its start and at any time later. */
import { loadLanguage } from './load.ts';
import { speak, type Language } from './language.ts';

let chosen: Language = 'en';

/**
 * Speaks a language as soon as its words have come; the last choice wins, however long an earlier one takes.
 * @returns whether the page speaks it; without its words the page goes on speaking what it spoke
 */
export async function chooseLanguage(language: Language): Promise<boolean> {
  chosen = language;
  try {
    const tables = await loadLanguage(language);
    if (chosen === language) speak(language, tables);
    return true;
  } catch {
    return false;
  }
}
