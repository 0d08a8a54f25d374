/** Zahlzeichen, Tasten, Töne, woraus Saiten sind, und die Wahl der Sprache. */
import type * as strings from '../../neck/strings.ts';
import type * as quantity from '../en/quantity.ts';
import type * as keys from '../en/keys.ts';
import type * as project from '../en/languages.ts';

export const NUMBER_SIGNS: typeof quantity.NUMBER_SIGNS = { decimal: ',' };

export const UNIT_WORDS: typeof quantity.UNIT_WORDS = { day: 'Tage', oneDay: 'Tag', '% MC': '% Holzfeuchte' };

export const RANGE_WORDS: typeof quantity.RANGE_WORDS = { range: (low, high) => `${low} bis ${high}` };

/** Das deutsche B liegt einen Halbton unter dem H. */
export const NOTE_NAMES: typeof strings.NOTE_NAMES = ['C', 'Cis', 'D', 'Es', 'E', 'F', 'Fis', 'G', 'As', 'A', 'B', 'H'];

export const CONSTRUCTION_LABELS: typeof strings.CONSTRUCTION_LABELS = {
  'steel-plain': 'blanker Stahl',
  'steel-wound': 'Stahl, mit vernickeltem Stahl umsponnen',
  'bronze-wound': 'Stahl, mit Bronze umsponnen',
  'nylon-plain': 'blankes Nylon',
  'nylon-wound': 'Nylonseide, mit Kupfer umsponnen',
};

export const KEY_WORDS: typeof keys.KEY_WORDS = { control: 'Strg', shift: 'Umschalt' };

export const LANGUAGE_WORDS: typeof project.LANGUAGE_WORDS = {
  language: 'Sprache',
  system: 'wie das System',
  notKept: 'Dieses Gerät behält die Wahl nicht; sie gilt, bis die Seite geschlossen wird.',
};
