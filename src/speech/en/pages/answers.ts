/** Words of aiming for a relief. */
import { words } from '../../language.ts';
import type { RodAnswer } from '../../../mechanics/inversion/rod.ts';

export const WANTED_WORDS = words('WANTED_WORDS', {
  title: 'Aim for a relief',
  intro:
    'Say which relief you want, and get what leads to it: the kerf, the way of seating, the rod, or the plane. Each answer changes one thing and leaves the rest of the build as it is.',
  goal: 'The relief wanted',
  relief: 'Relief wanted',
  player: (force: string) => `For the player, with a pluck of ${force}`,
  aimFor: (bow: string) => `Aim for ${bow}`,
  when: 'When',
  strung: 'on the day it is strung',
  settled: (days: string) => `settled, after ${days}`,
  rod: 'With the rod at',
  rodNone: 'The neck has no rod.',
  rodHint: '0 % = neutral; plus bends backwards.',
  working: 'Looking for answers; this takes some seconds.',
  progress: 'How far the search is',
  giveUp: 'Give up',
  givenUp: 'Given up.',
  askAgain: 'Look again',
  failed: (reason: string) => `No answers: ${reason}.`,
  asItIs: 'As the build is',
  now: (bow: string, miss: string) => `${bow}: ${miss}.`,
  band: (band: string) => `90 of 100 such necks: ${band}.`,
  exact: 'as wanted',
  tooMuch: (size: string) => `${size} too much`,
  tooLittle: (size: string) => `${size} too little`,
  kerf: 'The kerf',
  kerfFor: { press: 'For a press fit', both: 'For press and glue' },
  kerfFound: (kerf: string) => `A kerf of ${kerf} gives it.`,
  kerfNarrowest: (kerf: string) => `No kerf gives it. The closest is ${kerf}, the narrowest that this wire takes.`,
  kerfWidest: (kerf: string) => `No kerf gives it. The closest is ${kerf}, where the studs no longer bite.`,
  kerfBetween: (kerf: string) =>
    `No kerf gives it exactly: on the way there the line changes from a hump at one place to a hollow at another. The closest is ${kerf}.`,
  kerfFlattest: (kerf: string, size: string) =>
    `A kerf of ${kerf} makes it as flat as it gets: the line is then humped at one place and hollow at another, ${size} either way.`,
  kerfNoEffect:
    'The kerf does not move it here: every slot has a kerf of its own, or the crowns are levelled under string pull.',
  kerfNone: (tang: string, least: string, most: string) =>
    `No kerf fits this wire: its tang of ${tang} wants at least ${least}, its studs and crown at most ${most}.`,
  reaches: (bow: string, miss: string) => `It comes to ${bow}: ${miss}.`,
  bodyWedges: (size: string) =>
    `The body of the tang is then ${size} wider than the kerf and wedges too: mind the checks.`,
  kerfClear: (kerf: string, bow: string, miss: string) =>
    `The nearest kerf that raises nothing of the kind is ${kerf}. It comes to ${bow}: ${miss}.`,
  use: 'Use this',
  takeKerf: (kerf: string, method: string) => `Use ${kerf}, ${method}`,
  methods: 'The way of seating',
  methodsCaption: 'Each way of seating with the build as it is, the closest first',
  method: 'Seating',
  reached: 'Relief',
  off: 'Off',
  spread: '90 of 100',
  rodWould: 'Rod for it',
  chosen: 'chosen',
  takeMethod: (method: string) => `Use ${method}`,
  rodTitle: 'The rod',
  rodReached: (setting: string, way: string) => `From snug, ${setting} gives it${way}.`,
  backwards: ', bending the neck backwards',
  forwards: ', bending the neck forwards',
  rodStatus: {
    reached: '',
    'no-rod': 'The neck has no rod.',
    'cannot-forward':
      'No turn of the nut gives it. A one-way rod only bends this neck backwards, and with the nut loose it lies too far back already.',
    'cannot-backward':
      'No turn of the nut gives it. In this neck the pull of the one-way rod passes above the middle of the wood and bends it forward, and with the nut loose it lies too far forward already.',
    'too-weak': 'The rod cannot do it: even at its limit it falls short.',
    'between-shapes':
      'No setting gives it exactly: on the way there the line changes from a hump at one place to a hollow at another.',
    'no-nearer':
      'No setting gives it: up to a point the rod brings the neck nearer, and turned further it bends another stretch away.',
  } satisfies Record<RodAnswer['status'], string>,
  rodFlattest: (setting: string, size: string) =>
    `From snug, ${setting} makes it as flat as it gets: the line is then humped at one place and hollow at another, ${size} either way.`,
  rodClosest: (setting: string) => `The closest, from snug: ${setting}.`,
  rodBeyond: (percent: string) => `It would take ${percent} of its range.`,
  takeRod: (setting: string) => `Set the rod: ${setting}`,
  rodShort: (percent: string) => percent,
  rodNo: 'cannot',
  planing: 'The plane',
  planingIntro: (most: string) =>
    `Plane the board to this before the slots are cut, and seat the frets as the build says: their tops come out on the wanted line. At most ${most} comes off.`,
  planingCaption: 'How much to plane off the board at each fret',
  saveCsv: 'Save the table as CSV',
  thicknessNote: 'The thicknesses in the build are those after planing.',
  done: (what: string) => `${what}. One undo brings back what was there.`,
  undo: 'Undo it',
  undone: 'It is as it was.',
  refused: 'The build was not changed.',
  stepKerf: (kerf: string) => `Kerf ${kerf}`,
  stepMethod: (method: string) => `Seating: ${method}`,
  stepRod: (percent: string) => `Rod ${percent}`,
});

/** What moves the bow of this neck, and how far. */
export const MOVES_WORDS = words('MOVES_WORDS', {
  title: 'What moves it, and how far',
  intro: (bow: string) =>
    `Each line changes one thing by the step that you have on the bench, and leaves the rest as it is: strung and settled with the rod slack, now ${bow}. Plus is hollower.`,
  working: 'Trying one thing after the other; this takes some seconds.',
  caption: 'Things that can be done otherwise, the one that moves the settled relief most first',
  lever: 'Instead',
  fretted: 'Frets in',
  settled: 'Settled',
  band: '90 of 100',
  picture: 'Picture',
  none: '–',
  nothing: '0',
  instead: (name: string, to: string, from: string) => `${name} ${to}, not ${from}`,
  thicker: (size: string) => `Neck ${size} thicker`,
  thinner: (size: string) => `Neck ${size} thinner`,
  strings: (set: string) => `Strings: ${set}`,
  rodBack: (turns: string) => `Rod from snug, ${turns}, bending the neck backwards`,
  rodForward: (turns: string) => `Rod from snug, ${turns}, bending the neck forwards`,
  shared:
    'The two necks of a line share their woods, their wire and their errors, so that the difference is surer than either relief by itself.',
});

/** One choice beside another. */
export const PAIRED_WORDS = words('PAIRED_WORDS', {
  nearer: 'Nearer than now',
  inOfHundred: (count: string) => `in ${count} of 100`,
  nearerThanNow: (count: string) =>
    `In ${count} of 100 such necks it ends nearer the relief wanted than the neck as it is.`,
  beside: (band: string, count: string) => `beside the first ${band}; nearer the relief wanted in ${count} of 100`,
});
