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
  'bound-twelve': {
    label: 'Zwölfsaitig, Stahl, eingefasst',
    description:
      'Sechs Chöre auf Mahagoni und Nussbaum, eingefasstes Griffbrett aus Ebenholz, 20 Bünde gepresst und geleimt: ein kräftiger Zug.',
  },
  'board-first-six': {
    label: 'Griffbrett zuerst bundiert, Nullbund',
    description:
      'Gerösteter Ahorn mit einem Kern aus Wenge; ein Griffbrett aus Bambus, auf der Werkbank bundiert und dann aufgeleimt.',
  },
  'small-nylon-four': {
    label: 'Kleiner Viersaiter, Nylon',
    description:
      'Mensur 345 mm, Mahagoni, ein dünnes flaches Griffbrett, 12 Bünde eingepresst; kein Spannstab und kaum Zug.',
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
  'six-14-68': 'sechs, 14–68',
  'seven-10-59': 'sieben, 10–59',
  'eight-10-74': 'acht, 10–74',
  'nine-9-90': 'neun, 9–90',
  'twelve-10-47': 'zwölf in sechs Chören, Bronze 10–47',
  'nylon-28-43': 'sechs aus Nylon, 28–43',
  'ten-nylon': 'zehn aus Nylon, 28–53',
  'eleven-nylon': 'elf aus Nylon, 28–57',
  'four-nylon-22-35': 'vier aus Nylon, 22–35',
  'eight-10-38': 'acht in vier Chören, Bronze 10–38',
  'four-45-105': 'vier, 45–105',
  'five-45-130': 'fünf, 45–130',
  'six-32-130': 'sechs, 32–130',
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
  'six-baritone': 'H E A D Fis H',
  'six-low': 'H E A D G C, tief',
  'eight-standard': 'Fis H E A D G H E',
  'nine-standard': 'Cis Fis H E A D G H E',
  'twelve-standard': 'E A D G H E, in Oktaven und im Einklang',
  'ten-bourdons': 'A H C D E A D G H E',
  'eleven-bourdons': 'G A H C D E A D G H E',
  'four-small': 'G C E A, das G hoch',
  'eight-fifths': 'G D A E, paarweise',
};

/** Das deutsche B liegt einen Halbton unter dem H. */
export const NOTE_WORDS: typeof english.NOTE_WORDS = ['C', 'Cis', 'D', 'Es', 'E', 'F', 'Fis', 'G', 'As', 'A', 'B', 'H'];
