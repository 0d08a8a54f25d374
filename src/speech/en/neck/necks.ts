/** Necks to start from, strings and notes in words. */
import type { PresetId } from '../../../neck/presets.ts';
import type { StringConstruction, StringSetId, TuningId } from '../../../neck/strings.ts';
import { words } from '../../language.ts';

export const PRESET_WORDS = words('PRESET_WORDS', {
  'bolt-on-maple': {
    label: 'Bolt-on six, hard maple',
    description: 'One piece of hard maple, rosewood board, 22 frets pressed in; a two-way rod.',
  },
  'set-neck-mahogany': {
    label: 'Set-neck six, mahogany, bound ebony',
    description: 'Mahogany with a bound compound-radius ebony board; pressed and glued.',
  },
  'thick-five-piece': {
    label: 'Thick five-piece, dense woods',
    description: 'Wenge, purpleheart and wenge, over an inch thick, ebony board: stiff and slow to move.',
  },
  'slim-soft': {
    label: 'Slim six, soft board',
    description: 'A thin mahogany neck with a board of black walnut: easy to bow, easy to bite.',
  },
  'long-four': {
    label: 'Long-scale four-string',
    description: 'An 864 mm scale, maple and walnut laminates, stiff bars beside the rod.',
  },
  'nylon-flat': {
    label: 'Wide nylon-string, flat board',
    description: 'Spanish-cedar neck, flat ebony board 52 mm at the nut, 19 frets glued in.',
  },
  'bolt-on-tight': {
    label: 'Bolt-on six, tight slots',
    description: 'Maple, ebony board; the kerf is just under the body of the tang: the strings pull it flat.',
  },
  'bound-twelve': {
    label: 'Bound twelve-string, steel',
    description: 'Six courses on mahogany and walnut, bound ebony board, 20 frets pressed and glued: a strong pull.',
  },
  'board-first-six': {
    label: 'Board fretted first, zero fret',
    description: 'Roasted maple with a heart of wenge; a bamboo board, fretted on the bench and then glued on.',
  },
  'small-nylon-four': {
    label: 'Small nylon four-string',
    description: 'A 345 mm scale, mahogany, a thin flat board, 12 frets pressed in; no rod, and hardly any pull.',
  },
} satisfies Record<PresetId, { readonly label: string; readonly description: string }>);

export const CONSTRUCTION_WORDS = words('CONSTRUCTION_WORDS', {
  'steel-plain': 'plain steel',
  'steel-wound': 'steel, nickel-plated wrap',
  'bronze-wound': 'steel, bronze wrap',
  'nylon-plain': 'plain nylon',
  'nylon-wound': 'nylon floss, copper wrap',
} satisfies Record<StringConstruction, string>);

export const STRING_SET_WORDS = words('STRING_SET_WORDS', {
  'six-9-42': 'six, 9–42',
  'six-10-46': 'six, 10–46',
  'six-11-49': 'six, 11–49',
  'six-12-53': 'six, bronze 12–53',
  'six-14-68': 'six, 14–68',
  'seven-10-59': 'seven, 10–59',
  'eight-10-74': 'eight, 10–74',
  'nine-9-90': 'nine, 9–90',
  'twelve-10-47': 'twelve in six courses, bronze 10–47',
  'nylon-28-43': 'six nylon, 28–43',
  'ten-nylon': 'ten nylon, 28–53',
  'eleven-nylon': 'eleven nylon, 28–57',
  'four-nylon-22-35': 'four nylon, 22–35',
  'eight-10-38': 'eight in four courses, bronze 10–38',
  'four-45-105': 'four, 45–105',
  'five-45-130': 'five, 45–130',
  'six-32-130': 'six, 32–130',
} satisfies Record<StringSetId, string>);

export const TUNING_WORDS = words('TUNING_WORDS', {
  'six-standard': 'E A D G B E',
  'six-half-down': 'a half step down',
  'six-whole-down': 'a whole step down',
  'six-drop-d': 'D A D G B E',
  'six-dadgad': 'D A D G A D',
  'seven-standard': 'B E A D G B E',
  'four-low': 'low E A D G',
  'four-low-drop-d': 'low D A D G',
  'five-low': 'low B E A D G',
  'six-baritone': 'B E A D F♯ B',
  'six-low': 'low B E A D G C',
  'eight-standard': 'F♯ B E A D G B E',
  'nine-standard': 'C♯ F♯ B E A D G B E',
  'twelve-standard': 'E A D G B E, in octaves and unisons',
  'ten-bourdons': 'A B C D E A D G B E',
  'eleven-bourdons': 'G A B C D E A D G B E',
  'four-small': 'G C E A, the G high',
  'eight-fifths': 'G D A E in pairs',
} satisfies Record<TuningId, string>);

/** Note names from C on. */
export const NOTE_WORDS = words('NOTE_WORDS', ['C', 'C♯', 'D', 'E♭', 'E', 'F', 'F♯', 'G', 'A♭', 'A', 'B♭', 'B']);
