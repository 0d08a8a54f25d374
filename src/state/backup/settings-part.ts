/**
 * The settings in a backup. What was chosen here stays; what is here as it is at first, and was chosen there, is taken. So
 * they come along to a new device, and never change one that somebody has set up.
 */
import type { TextStorage } from '../journal/journal.ts';
import { LANGUAGES } from '../../speech/language.ts';
import { APPEARANCES, STANDARD_PREFERENCES, writePreferences, type Preferences } from '../preferences.ts';
import type { BackbowStore } from '../store.ts';
import { EMPTY_TALLY, isObject, isText, type Counted, type Part } from './part.ts';

const WORKSHOP_KEY = 'backbow.workshop';
const WELCOMED_KEY = 'backbow.welcomed';
const PREFERENCES_KEY = 'backbow.preferences';
const MINUTES_KEY = 'backbow.minutes';

/** More than a letter takes: what is too long for one is kept as it was typed. */
const MOST_WORKSHOP = 10_000;
/** Many times what the minutes of all measurements take. */
const MOST_MINUTES = 10_000;

interface Settings extends Preferences {
  /** The workshop's own line in letters. */
  readonly workshop: string;
  /** Was the person welcomed? */
  readonly welcomed: boolean;
  /** How long measurements take in this workshop, as kept; empty as in the standard. */
  readonly minutes: string;
}

const STANDARD: Settings = { ...STANDARD_PREFERENCES, workshop: '', welcomed: false, minutes: '' };
const KEYS = Object.keys(STANDARD) as readonly (keyof Settings)[];

const ALLOWED: { readonly [Key in keyof Settings]: (value: unknown) => boolean } = {
  unitSystem: (value) => value === 'metric' || value === 'inch',
  appearance: (value) => APPEARANCES.some((known) => known === value),
  singleKeys: (value) => typeof value === 'boolean',
  language: (value) => value === 'system' || LANGUAGES.some((known) => known === value),
  workshop: (value) => isText(value, MOST_WORKSHOP),
  welcomed: (value) => typeof value === 'boolean',
  minutes: (value) => isText(value, MOST_MINUTES),
};

const chosenIn = (settings: Settings) => KEYS.filter((key) => settings[key] !== STANDARD[key]);

function checkSettings(value: unknown): Settings | null {
  if (value === undefined) return STANDARD;
  if (!isObject(value)) return null;
  // A backup from before they were kept says nothing of minutes.
  const given: Readonly<Record<string, unknown>> = { minutes: STANDARD.minutes, ...value };
  if (!KEYS.every((key) => ALLOWED[key](given[key]))) return null;
  return Object.fromEntries(KEYS.map((key) => [key, given[key]])) as unknown as Settings;
}

function only(settings: Settings, keys: readonly (keyof Settings)[]): Partial<Settings> {
  return Object.fromEntries(keys.map((key) => [key, settings[key]]));
}

function merged(here: Settings, coming: Settings) {
  const tally: Counted = { ...EMPTY_TALLY };
  const taken: (keyof Settings)[] = [];
  for (const key of chosenIn(coming)) {
    if (here[key] === coming[key]) tally.known += 1;
    else if (here[key] !== STANDARD[key]) tally.stays += 1;
    else {
      tally.fresh += 1;
      taken.push(key);
    }
  }
  return { tally, taken, into: { ...here, ...only(coming, taken) } };
}

function settingsOf(texts: () => TextStorage, store: BackbowStore): Settings {
  const { unitSystem, appearance, singleKeys, language } = store.getState();
  const read = (key: string): string | null => {
    try {
      return texts().getItem(key);
    } catch {
      return null;
    }
  };
  return {
    unitSystem,
    appearance,
    singleKeys,
    language,
    workshop: read(WORKSHOP_KEY) ?? '',
    welcomed: read(WELCOMED_KEY) !== null,
    minutes: read(MINUTES_KEY) ?? '',
  };
}

export function settingsPart(texts: () => TextStorage, store: BackbowStore): Part {
  const now = () => settingsOf(texts, store);

  /** @throws when the device does not take them; then nothing has changed */
  function set(settings: Settings, keys: readonly (keyof Settings)[]): void {
    if (keys.length === 0) return;
    const storage = texts();
    const before = now();
    const { unitSystem, appearance, singleKeys, language, workshop, welcomed, minutes } = settings;
    try {
      if (keys.includes('workshop')) storage.setItem(WORKSHOP_KEY, workshop);
      if (keys.includes('minutes')) {
        if (minutes === '') storage.removeItem(MINUTES_KEY);
        else storage.setItem(MINUTES_KEY, minutes);
      }
      if (keys.includes('welcomed')) {
        if (welcomed) storage.setItem(WELCOMED_KEY, '1');
        else storage.removeItem(WELCOMED_KEY);
      }
      storage.setItem(PREFERENCES_KEY, writePreferences({ unitSystem, appearance, singleKeys, language }));
    } catch (error) {
      if (keys.includes('workshop')) putBack(WORKSHOP_KEY, before.workshop);
      if (keys.includes('minutes')) putBack(MINUTES_KEY, before.minutes);
      if (keys.includes('welcomed')) putBack(WELCOMED_KEY, before.welcomed ? '1' : '');
      throw error;
    }
    store.setState({ unitSystem, appearance, singleKeys, language });
  }

  function putBack(key: string, text: string): void {
    try {
      if (text === '') texts().removeItem(key);
      else texts().setItem(key, text);
    } catch {
      // What could not be written is not there either.
    }
  }

  return {
    id: 'settings',
    places: [PREFERENCES_KEY, WORKSHOP_KEY, WELCOMED_KEY, MINUTES_KEY],
    save: async () => {
      const { workshop, minutes, ...others } = now();
      const value = {
        ...others,
        workshop: workshop.slice(0, MOST_WORKSHOP),
        // Too long to be what this program keeps there.
        minutes: minutes.length > MOST_MINUTES ? '' : minutes,
      };
      return { value, count: chosenIn(value).length, leftOut: 0, trouble: null };
    },
    check: (value) => {
      const coming = checkSettings(value);
      if (!coming) return { ok: false, fault: { part: 'settings', place: 0, code: 'wrong-kind' } };
      return {
        ok: true,
        count: chosenIn(coming).length,
        foresee: async () => {
          // Where nothing can be read nothing can be kept.
          texts().getItem(PREFERENCES_KEY);
          return merged(now(), coming).tally;
        },
        add: async () => {
          const before = now();
          const { tally, taken, into } = merged(before, coming);
          set(into, taken);
          const takeBack = async () => {
            const later = now();
            const untouched = taken.filter((key) => later[key] === into[key]);
            set({ ...later, ...only(before, untouched) }, untouched);
          };
          return { tally, takeBack };
        },
      };
    },
  };
}
