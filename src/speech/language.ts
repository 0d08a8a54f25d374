/**
 * The language of the page. Every text that people read stands in a table; each table says its words through `words`, in
 * the language that was chosen before the table was loaded. English stands in the tables themselves; another language is a
 * catalogue with an entry for every table, and the type of the catalogue refuses a missing one.
 *
 * The choice is made once, at the start of the page, before anything that speaks is loaded (see app/main.tsx). Another
 * choice starts the page afresh.
 */
import { isolated } from './isolate.ts';

export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

/** What each language calls itself. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

/** Where dates and lists look for the customs of each language (BCP 47). */
const LOCALES: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };

/** The same table with other words: texts for texts, functions that take the same and give the same kind. */
export type Widened<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Said
    ? (...given: Given) => Widened<Said>
    : T extends readonly (infer Entry)[]
      ? readonly Widened<Entry>[]
      : T extends object
        ? { readonly [Key in keyof T]: Widened<T[Key]> }
        : T;

/** Tables by id, as another language has them. */
export type Tables = Readonly<Record<string, unknown>>;

let language: Language = 'en';
let tables: Tables = {};

/** Chooses the language. Tables that are loaded already keep theirs. */
export function speak(chosen: Language, catalogue: Tables): void {
  language = chosen;
  tables = catalogue;
}

export function spokenLanguage(): Language {
  return language;
}

/** The language of the page for dates and lists, as `Intl` takes it. */
export function spokenLocale(): string {
  return LOCALES[language];
}

function isSentence(value: unknown): value is (...given: readonly unknown[]) => unknown {
  return typeof value === 'function';
}

/** A table whose sentences set apart the texts that are put into them. */
function settingApart(table: unknown): unknown {
  if (isSentence(table)) {
    return (...given: readonly unknown[]): unknown =>
      table(...given.map((value) => (typeof value === 'string' ? isolated(value) : value)));
  }
  if (Array.isArray(table)) return table.map(settingApart);
  if (typeof table !== 'object' || table === null || Object.getPrototypeOf(table) !== Object.prototype) return table;
  return Object.fromEntries(Object.entries(table).map(([key, entry]) => [key, settingApart(entry)]));
}

/**
 * A table in the language of the page. Texts that its sentences are given, such as the name of a neck, are set apart so
 * that they cannot turn the words around them (isolate.ts).
 * @param english the table itself
 */
export function words<const T>(id: string, english: T): Widened<T> {
  // The catalogue's type holds each table to that of the English one (app/languages).
  return settingApart(tables[id] ?? english) as Widened<T>;
}

/** What the language of the page has instead of texts that stand elsewhere, such as in a row of data; none in English. */
export function translation<T>(id: string): T | undefined {
  return tables[id] as T | undefined;
}

/** Id of the table of sentences that stand where they are made. */
export const SENTENCES = 'SENTENCES';

/** A whole text, such as the name in a row of data, in the language of the page. */
export function sayText(english: string): string {
  return (tables[SENTENCES] as Readonly<Record<string, string>> | undefined)?.[english] ?? english;
}

/**
 * A sentence that stands where it is made, in the language of the page: say`Kerf is ${kerf}; it takes ${range}`. Other
 * languages find it by its English text, values as {0}, {1} …; a test holds that they have every one.
 */
export function say(texts: TemplateStringsArray, ...values: readonly (string | number)[]): string {
  const english = texts.reduce((sentence, text, index) => `${sentence}{${index - 1}}${text}`);
  return sayText(english).replace(/\{(\d+)\}/g, (_all, index: string) => isolated(String(values[Number(index)])));
}

/** A title or label as it stands within a sentence: small in English; in German a noun keeps its capital. */
export function withinSentence(title: string): string {
  return language === 'en' ? title.toLowerCase() : title;
}
