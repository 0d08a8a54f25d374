/** Words of the customer's page: for somebody who has never heard of a tang. */
import { words } from '../../language.ts';
import type { Method } from '../../../mechanics/prediction-types.ts';
import type { Strength } from '../../../verdict/string-room.ts';
import type { Movement, Nickel, Refret, RodTask } from '../../../verdict/choice-facts.ts';

export const CUSTOMER_WORDS = words('CUSTOMER_WORDS', {
  titleOne: 'Your neck',
  titleMany: 'Your neck, and what you can choose',
  forWhom: (name: string) => `For ${name}`,
  noteTitle: 'A word from the workshop',
  intro:
    'The metal frets sit in narrow slots across the fingerboard. How they are held there bends the neck by a hair, the strings bend it back, and the wood takes some weeks to come to rest. All of it is small, and you can feel it when you play.',
  choices: 'The choices',
  methods: {
    press: 'Frets pressed in',
    glue: 'Frets glued in',
    both: 'Frets pressed in and glued',
  } satisfies Record<Method, string>,
  advised: 'what the workshop advises',
  picture: (label: string) => `Picture of the neck: ${label}`,
  pictureOf: (label: string, moment: string) => `${label}, ${moment}`,
  pictureComing: 'The picture is being drawn.',
  liesTitle: 'How the neck lies',
  factor: (factor: string) =>
    `Seen from the side, nut on the left. The bend is drawn ${factor} times larger than it is; the thin line is straight.`,
  moment: 'When',
  moments: { fretted: 'before the strings', strung: 'strung', settled: 'at rest' },
  settledAfter: (time: string) => `after ${time}`,
  months: (count: number) => (count === 1 ? 'one month' : count === 3 ? 'three months' : `${count} months`),
  lies: {
    'back-bow': (size: string, like: string) => `The middle is ${size} higher than the ends: ${like}.`,
    relief: (size: string, like: string) => `The middle is ${size} lower than the ends: ${like}.`,
    flat: 'Straight.',
  },
  noPicture: 'Pictures cannot be drawn on this device; everything else is here.',
  computing: 'It is being worked out for this neck.',
  failed: 'It could not be worked out on this device.',
  retry: 'Try again',

  holds: {
    press:
      'Each fret is pressed into a slot that is a little too narrow for it, and the wood holds it fast. Nothing else is needed.',
    glue: 'Each fret is laid into a slot of just its own width and held by glue, which also fills the slot.',
    both: 'Each fret is pressed into a slot that is a little too narrow for it, and the slot is filled with glue as well.',
  } satisfies Record<Method, string>,
  paper: (sheets: string) => `about ${sheets} of paper`,
  sheets: (count: number) => (count <= 1 ? 'one sheet' : `${count} sheets`),
  lessThanPaper: 'less than a sheet of paper',
  between: (low: string, high: string) =>
    `Every piece of wood is different. With all frets in, nine of ten such necks are bent by ${low} to ${high}.`,
  bentEitherWay: (back: string, forward: string) =>
    `Every piece of wood is different. With all frets in, nine of ten such necks lie between ${back} higher and ${forward} lower in the middle.`,

  price: 'Price',
  time: 'Time',
  held: 'How the frets are held',
  sure: 'How sure that is',
  waitGlue: (days: string, hours: string) =>
    `Clamps and cleaning at the bench, and the glue sets for ${hours}. Strings go on ${days} after the frets.`,
  wait: (days: string) => `Nothing has to set. Strings go on ${days} after the frets.`,
  atOnce: 'the same day',
  rodTasks: {
    none: 'Nothing inside this neck can be adjusted: only the height of the strings can be set.',
    easy: 'What is left over is set right with the adjuster inside the neck, and that is easy.',
    within: 'What is left over is set right with the adjuster inside the neck, by more than half of what it can do.',
    doubtful: 'The adjuster inside the neck may not be strong enough to set it right.',
    beyond: 'The adjuster inside the neck will probably not set it right. Talk about this one.',
  } satisfies Record<RodTask, string>,
  chance: (of100: number) => `It can be set right in about ${of100} of 100 such necks.`,
  chanceAll: 'It can be set right in nearly every such neck.',

  care: 'The first months',
  movements: {
    hardly: (size: string) =>
      `The neck hardly moves after stringing (${size}). You will probably not have to bring it back.`,
    'a-little': (size: string) =>
      `The neck goes on bending forward a little (${size}). Bring it back once, after about three months, to have it set.`,
    clearly: (size: string) =>
      `The neck goes on bending forward (${size}), and you will feel it. Expect to have it set once or twice in the first half year.`,
  } satisfies Record<Movement, (size: string) => string>,
  changes: {
    strings: {
      rise: (size: string) => `If nothing is set again, the strings come to lie ${size} higher meanwhile.`,
      sink: (size: string) => `If nothing is set again, the strings come to lie ${size} lower meanwhile.`,
      stay: 'The strings stay as high as they were set.',
    },
    clean: {
      same: 'It plays as cleanly as on the first day.',
      more: 'It then plays more cleanly than on the first day.',
      less: 'Notes that were clean on the first day may then buzz, until it is set again.',
    },
  },
  strings: 'Playing',
  action: (height: string) => `Once the neck has come to rest, the strings are ${height} above the twelfth fret.`,
  cleans: {
    hard: 'Every note stays clean, even when you play hard.',
    medium: 'Every note stays clean in ordinary playing; played hard, some may buzz.',
    soft: 'Every note stays clean when you play softly; played harder, some may buzz.',
    none: 'Some notes may buzz even when you play softly. Talk about this one.',
  } satisfies Record<Strength | 'none', string>,
  handAssumed: 'How hard you play is assumed: show the workshop.',
  handMeasured: (force: string, low: string, high: string) =>
    `The workshop has measured how hard it plays itself: ${force} on the string, and is 90 % sure of ${low} to ${high}.`,
  handSays: {
    clean: 'Played like that, every note stays clean.',
    mostly: 'Played like that, every note stays clean; at the harder end some may buzz.',
    buzzes: 'Played like that, some notes may buzz.',
  },
  skin: 'Skin',
  nickels: {
    none: (wire: string) => `The wire is ${wire}, without nickel.`,
    bound: (wire: string) =>
      `The wire is ${wire}. It contains nickel but gives hardly any off. If your skin reacts to nickel, ask your doctor first.`,
    contains: (wire: string) =>
      `The wire is ${wire}, and it contains nickel. If your skin reacts to nickel, say so now: there is wire without.`,
  } satisfies Record<Nickel, (wire: string) => string>,
  nickelStrings: 'The wound strings are nickel-plated: there are strings without, too.',
  wear: 'Wear',
  wears: {
    softer: 'It is softer than common fret wire and wears sooner.',
    common: 'It wears as common fret wire does.',
    harder: 'It is harder than common fret wire and lasts longer.',
    muchHarder:
      'It is much harder than common fret wire and lasts far longer; dressing it takes the workshop more time.',
  },
  refret: 'New frets, one day',
  refrets: {
    easy: 'These frets come out again with care, and leave the board whole.',
    careful: 'These frets have to be warmed to come out, and the edges of the slots want a careful hand.',
    hard: 'These frets hold twice over. Getting them out takes heat and time, and chips in the board are likelier; the next repairer needs the record.',
  } satisfies Record<Refret, string>,
  forAll: 'The same with every choice',

  days: (count: string) => (count === '1' ? 'one day' : `${count} days`),
  hours: (count: string) => `${count} hours`,

  sureTitle: 'How sure is this?',
  allSure:
    'Everything here is computed for this very neck: its woods, its sizes, its wire. Two pieces of the same wood still differ by a fifth and more, and how firmly wood grips a fret is known only roughly. Which choice bends more is surer than by how much. What the workshop measures on the neck itself has the last word.',

  choose: 'I choose this',
  chooseOne: 'I agree',
  chooseName: (label: string) => `I choose this: ${label}`,
  messageLabel: 'Your message to the workshop',
  messageHint: 'Nothing is sent from here. Send it as you like, and change it first if you want.',
  message: (label: string, neck: string, date: string, mark: string) =>
    `I choose: ${label}\nNeck: ${neck}\nDate: ${date}\nMark: ${mark}`,
  subject: (neck: string) => `My choice: ${neck}`,
  copyMessage: 'Copy the message',
  messageCopied: 'The message is copied.',
  messageMarked: 'This browser does not let a page copy. The message is marked: copy it with your keys or the menu.',
  mail: 'Write a mail',
  text: 'Write a text message',
  engineering: 'Everything, with all numbers',
  print: 'Print this page',
  made: (version: string, stamps: string) => `Made with Backbow ${version}, stamp ${stamps}.`,
  notOpened: 'This page cannot be shown',
  workshop: 'Open the program',
});
