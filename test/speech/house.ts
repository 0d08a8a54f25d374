/** The program in a language of choice: every module anew, so that its tables speak it. */
import { vi } from 'vitest';
import { loadLanguage } from '../../src/speech/load.ts';
import type { Language } from '../../src/speech/language.ts';

/** Has the modules that are imported from now on speak a language. */
export async function speakAnew(language: Language): Promise<void> {
  vi.resetModules();
  const { speak } = await import('../../src/speech/language.ts');
  speak(language, await loadLanguage(language));
}

/** What is loaded speaking English, and the same speaking German. */
export async function inBothLanguages<House>(
  load: () => Promise<House>,
): Promise<{ readonly english: House; readonly german: House }> {
  await speakAnew('en');
  const english = await load();
  await speakAnew('de');
  return { english, german: await load() };
}
