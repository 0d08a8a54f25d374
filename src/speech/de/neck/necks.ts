/** Hälse zum Beginnen, aus einer erfundenen Werkstatt; Saiten und Töne. */
import type * as english from '../../en/neck/necks.ts';

export const PRESET_WORDS: typeof english.PRESET_WORDS = {
  'bolt-on-maple': {
    label: 'Sechssaitig, Hals geschraubt, Ahorn',
    description:
      'Ein Stück Zuckerahorn, Griffbrett aus Palisander, 22 Bünde eingepresst; ein zweifach wirkender Halsspannstab.',
  },
  'set-neck-mahogany': {
    label: 'Sechssaitig, Hals eingeleimt, Mahagoni, eingefasstes Ebenholz',
    description: 'Schlankes Mahagoni mit eingefasstem, konischem Griffbrett aus Ebenholz; gepresst und geleimt.',
  },
  'thick-five-piece': {
    label: 'Dicker fünfstreifiger Hals, dichte Hölzer',
    description:
      'Wenge, Amarant und Wenge, mehr als 25 mm dick, Griffbrett aus Ebenholz: steif und langsam in Bewegung.',
  },
  'slim-soft': {
    label: 'Schlank, sechssaitig, weiches Griffbrett',
    description:
      'Ein dünner Mahagonihals mit einem Griffbrett aus amerikanischem Nussbaum: leicht zu biegen, und die Noppen dringen leicht ein.',
  },
  'long-four': {
    label: 'Viersaitig, lange Mensur',
    description: 'Mensur 864 mm, Streifen aus Ahorn und Nussbaum, Versteifungsstäbe neben dem Spannstab.',
  },
  'nylon-flat': {
    label: 'Breiter Hals für Nylonsaiten, flaches Griffbrett',
    description: 'Hals aus Cedro, flaches Griffbrett aus Ebenholz, 52 mm am Sattel, 19 Bünde eingeleimt.',
  },
  'bolt-on-tight': {
    label: 'Sechssaitig, Hals geschraubt, enge Schlitze',
    description:
      'Ahorn, Griffbrett aus Ebenholz; gesägt wird knapp schmaler als der Steg des Bundfußes: Die Saiten ziehen den Hals gerade.',
  },
};

export const CONSTRUCTION_WORDS: typeof english.CONSTRUCTION_WORDS = {
  'steel-plain': 'blanker Stahl',
  'steel-wound': 'Stahl, mit vernickeltem Stahl umsponnen',
  'bronze-wound': 'Stahl, mit Bronze umsponnen',
  'nylon-plain': 'blankes Nylon',
  'nylon-wound': 'Nylonseide, mit Kupfer umsponnen',
};

export const STRING_SET_WORDS: typeof english.STRING_SET_WORDS = {
  'six-9-42': 'sechs, 9–42',
  'six-10-46': 'sechs, 10–46',
  'six-11-49': 'sechs, 11–49',
  'six-12-53': 'sechs, Bronze 12–53',
  'seven-10-59': 'sieben, 10–59',
  'nylon-28-43': 'sechs aus Nylon, 28–43',
  'four-45-105': 'vier, 45–105',
  'five-45-130': 'fünf, 45–130',
};

/** Das deutsche H heißt auf Englisch B. */
export const TUNING_WORDS: typeof english.TUNING_WORDS = {
  'six-standard': 'E A D G H E',
  'six-half-down': 'einen Halbton tiefer',
  'six-whole-down': 'einen Ganzton tiefer',
  'six-drop-d': 'D A D G H E',
  'six-dadgad': 'D A D G A D',
  'seven-standard': 'H E A D G H E',
  'four-low': 'E A D G, tief',
  'four-low-drop-d': 'D A D G, tief',
  'five-low': 'H E A D G, tief',
};

/** Das deutsche B liegt einen Halbton unter dem H. */
export const NOTE_WORDS: typeof english.NOTE_WORDS = ['C', 'Cis', 'D', 'Es', 'E', 'F', 'Fis', 'G', 'As', 'A', 'B', 'H'];
