/** What a person prefers, kept on this device. A device that refuses to keep it loses nothing but the preference. */
import { LANGUAGES, type Language } from '../speech/language.ts';
import type { UnitSystem } from '../neck/units.ts';

export type Appearance = 'system' | 'light' | 'dark';
export const APPEARANCES: readonly Appearance[] = ['system', 'light', 'dark'];

export interface Preferences {
  readonly unitSystem: UnitSystem;
  readonly appearance: Appearance;
  /** Do single letters act as shortcuts? Off helps people who dictate. */
  readonly singleKeys: boolean;
  /** Language of the page; that of the system where it is one of ours. */
  readonly language: Language | 'system';
}

export const STANDARD_PREFERENCES: Preferences = {
  unitSystem: 'metric',
  appearance: 'system',
  singleKeys: true,
  language: 'system',
};

const KEY = 'backbow.preferences';

export function loadPreferences(storage: () => Pick<Storage, 'getItem'> = () => localStorage): Preferences {
  let stored: unknown;
  try {
    stored = JSON.parse(storage().getItem(KEY) ?? '{}');
  } catch {
    return STANDARD_PREFERENCES;
  }
  if (typeof stored !== 'object' || stored === null) return STANDARD_PREFERENCES;
  const { unitSystem, appearance, singleKeys, language } = stored as Record<string, unknown>;
  return {
    unitSystem: unitSystem === 'inch' ? 'inch' : 'metric',
    appearance: APPEARANCES.find((known) => known === appearance) ?? STANDARD_PREFERENCES.appearance,
    singleKeys: typeof singleKeys === 'boolean' ? singleKeys : STANDARD_PREFERENCES.singleKeys,
    language: LANGUAGES.find((known) => known === language) ?? STANDARD_PREFERENCES.language,
  };
}

/** As they are stored. */
export function writePreferences({ unitSystem, appearance, singleKeys, language }: Preferences): string {
  return JSON.stringify({ unitSystem, appearance, singleKeys, language });
}

export function savePreferences(
  preferences: Preferences,
  storage: () => Pick<Storage, 'setItem'> = () => localStorage,
): void {
  try {
    storage().setItem(KEY, writePreferences(preferences));
  } catch {
    // Storage refused or full: the preference holds until the page is closed.
  }
}

/** The language of the page: the one chosen, or the first of the reader's that is one of ours, or English. */
export function pageLanguage(chosen: Preferences['language'], readers: readonly string[]): Language {
  if (chosen !== 'system') return chosen;
  const ours = readers.map((tag) => LANGUAGES.find((known) => tag.toLowerCase().split('-')[0] === known));
  return ours.find((known) => known !== undefined) ?? 'en';
}
