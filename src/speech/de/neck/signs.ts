/** Zahlzeichen, Tasten und die Wahl der Sprache. */
import type * as quantity from '../../en/neck/quantity.ts';
import type * as keys from '../../en/workshop/keys.ts';
import type * as project from '../../en/workshop/languages.ts';

export const NUMBER_SIGNS: typeof quantity.NUMBER_SIGNS = { decimal: ',' };

export const UNIT_WORDS: typeof quantity.UNIT_WORDS = { day: 'Tage', oneDay: 'Tag', '% MC': '% Holzfeuchte' };

export const RANGE_WORDS: typeof quantity.RANGE_WORDS = { range: (low, high) => `${low} bis ${high}` };

export const KEY_WORDS: typeof keys.KEY_WORDS = { control: 'Strg', shift: 'Umschalt' };

export const LANGUAGE_WORDS: typeof project.LANGUAGE_WORDS = {
  language: 'Sprache',
  system: 'wie das System',
  notKept: 'Dieses Gerät behält die Wahl nicht; sie gilt, bis die Seite geschlossen wird.',
};
