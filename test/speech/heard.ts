/** Loads the whole source and notes every table that it says meanwhile, in English. */
import type * as language from '../../src/speech/language.ts';

export interface Heard {
  /** Tables as they stand in the source, by id. */
  readonly tables: Map<string, unknown>;
}

type LanguageModule = typeof language;

/** language.ts, noting what is asked of it. */
export function listening(real: LanguageModule, heard: Heard): LanguageModule {
  return {
    ...real,
    words: (id, english) => {
      heard.tables.set(id, english);
      return real.words(id, english);
    },
  };
}

const modules = import.meta.glob([
  '../../src/**/*.{ts,tsx}',
  // What runs by itself when it is loaded, in a page, a worker or Node; and the other languages.
  '!**/app/{main,predict}.ts*',
  '!**/*worker.ts',
  '!**/*.worklet.ts',
  '!**/app/packaging/**',
  '!**/speech/{de/**,load.ts,start-words.ts,catalogue.ts}',
  '!**/speech/language.ts',
]);

/** @returns how many modules were loaded */
export async function loadEverything(): Promise<number> {
  for (const load of Object.values(modules)) await load();
  return Object.keys(modules).length;
}
