/**
 * The language of the page. Every text that people read stands in a table that is registered with `words`. English stands
 * in the tables themselves; another language is a catalogue with an entry for every table, and the type of the catalogue
 * refuses a missing one.
 *
 * Tables are live: another choice fills each of them in place, and those that are loaded later take the language of then.
 * So nothing may keep a text outside a function (test/speech/captures.test.ts), and what shows texts asks `onLanguage`.
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
const listeners = new Set<() => void>();

/** A table as it was registered, and the one that is read. */
interface Registered {
  readonly english: unknown;
  readonly live: unknown;
}
const registered = new Map<string, Registered>();

/**
 * Speaks another language from now on, in every table, and tells whoever listens.
 * @param catalogue the tables of the language by id; none for English
 */
export function speak(chosen: Language, catalogue: Tables): void {
  language = chosen;
  tables = catalogue;
  for (const [id, { english, live }] of registered) fill(live as Fields, (tables[id] ?? english) as Fields);
  for (const listener of listeners) listener();
}

/** Calls back after the language has changed. @returns ends it */
export function onLanguage(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function spokenLanguage(): Language {
  return language;
}

/** The language of the page for dates and lists, as `Intl` takes it. */
export function spokenLocale(): string {
  return LOCALES[language];
}

type Fields = Record<string, unknown>;

function isSentence(value: unknown): value is (...given: readonly unknown[]) => unknown {
  return typeof value === 'function';
}

/** Does it hold entries of its own? A list or a plain object. */
function isTable(value: unknown): value is Fields {
  return Array.isArray(value) || (typeof value === 'object' && value !== null && value.constructor === Object);
}

/** A text or sentence as it is read; a sentence sets apart the texts that are put into it. */
function settingApart(entry: unknown): unknown {
  if (!isSentence(entry)) return entry;
  return (...given: readonly unknown[]): unknown =>
    entry(...given.map((value) => (typeof value === 'string' ? isolated(value) : value)));
}

/** Makes a table say what another one says, and keeps the tables in it: they may be at hand elsewhere. */
function fill(live: Fields, said: Fields): void {
  if (Array.isArray(live)) live.length = (said as unknown as readonly unknown[]).length;
  else for (const key of Object.keys(live)) if (!Object.hasOwn(said, key)) delete live[key];
  for (const [key, entry] of Object.entries(said)) {
    if (!isTable(entry)) live[key] = settingApart(entry);
    else {
      const inner = live[key];
      fill((live[key] = isTable(inner) ? inner : emptyLike(entry)) as Fields, entry);
    }
  }
}

function emptyLike(table: unknown): unknown {
  return Array.isArray(table) ? [] : {};
}

/**
 * A table in the language of the page, whichever that is when it is read. Texts that its sentences are given, such as the
 * name of a neck, are set apart so that they cannot turn the words around them (isolate.ts).
 * @param english the table itself
 */
export function words<const T>(id: string, english: T): Widened<T> {
  const live = emptyLike(english);
  // The catalogue's type holds each table to that of the English one (catalogue.ts).
  fill(live as Fields, (tables[id] ?? english) as Fields);
  registered.set(id, { english, live });
  return live as Widened<T>;
}

/** A title or label as it stands within a sentence: small in English; in German a noun keeps its capital. */
export function withinSentence(title: string): string {
  return language === 'en' ? title.toLowerCase() : title;
}
