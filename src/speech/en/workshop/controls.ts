/** Words of the controls. */
import { words } from '../../language.ts';

export const CONTROL_WORDS = words('CONTROL_WORDS', {
  title: 'The build',
  usual: (range: string) => `Usual: ${range}.`,
  standard: (value: string) => `Standard: ${value}.`,
  from: (source: string) => `From: ${source}.`,
  reset: 'reset',
  resetName: (label: string, value: string) => `Reset ${label} to ${value}`,
  less: (label: string, by: string) => `${label}: ${by} less`,
  more: (label: string, by: string) => `${label}: ${by} more`,
  typed: (label: string) => `${label}, as a number`,
  notANumber: (text: string, label: string, range: string) => `“${text}” is not a number. ${label} takes ${range}.`,
  outOfRange: (value: string, label: string, range: string) => `${label} cannot be ${value}: it takes ${range}.`,
  notWhole: (value: string, label: string, range: string) =>
    `${label} cannot be ${value}: it takes a whole number, ${range}.`,
  tooLong: (label: string, length: string, most: string) =>
    `${label} has ${length} characters; it takes at most ${most} characters.`,
  kept: (value: string) => `${value} is kept.`,
  staysEmpty: 'The field stays empty.',
  notMeasured: 'not measured yet',
  emptyName: (label: string) => `Empty ${label}`,
  range: (min: string, max: string) => `${min} to ${max}`,
  yes: 'yes',
  no: 'no',
  hintTitle: 'What it changes',
  hintEmpty:
    'Point at a control, or move to it by key, to read what it changes, what is usual, and where that comes from.',
  keys: 'Arrow keys step; with Shift finer; Page keys coarser; Home and End go to the limits.',
});

/** Of a glue fit whose slots are wider than the kerf for pressing. */
export const KERF_WORDS = words('KERF_WORDS', {
  asWideAsStuds: (press: string) =>
    `Glue fit: sawn as wide as the studs. Pressing keeps its own kerf, ${press}. If the board came slotted, open its slots to this.`,
  openOld: (cut: string) => `The old slots are ${cut}: for a glue fit open them to this, as wide as the studs.`,
});

export const LIST_WORDS = words('LIST_WORDS', {
  strings: {
    title: 'Strings',
    set: 'Set, by gauges in thousandths of an inch',
    tuning: 'Tuning',
    own: 'as in the table below',
    string: 'String',
    construction: 'Made of',
    diameter: 'Diameter',
    core: 'Core',
    pitch: 'Note',
    add: 'Add a lower string',
    remove: 'Take the last string off',
    caption: 'Strings, from the treble side to the bass side',
    pull: 'Pull',
    paired: 'In pairs, two strings to a course',
    beside: 'From the one above',
    changed: (what: string) => `String ${what}`,
  },
  laminates: {
    title: 'Woods of the neck',
    make: 'Neck made of',
    pieces: ['one piece', 'three laminates', 'five laminates', 'seven laminates'],
    wood: (place: string) => `Wood, ${place}`,
    share: (place: string) => `Share of the width, ${place}`,
    places: {
      one: 'whole neck',
      centre: 'centre piece',
      next: 'next outwards',
      outer: 'outer pieces',
    },
    shareHint: 'Both halves of the piece together. The outer pieces take what is left of the width.',
    rest: (percent: string) => `takes the rest: ${percent}`,
    widths: 'Widths of the laminates',
    widthsBy: { share: 'shares of the width', mm: 'constant, in mm' },
    width: (place: string) => `Width, ${place}`,
  },
  ownWoods: {
    title: 'Woods of my own',
    name: (wood: string) => `Name, ${wood}`,
    modulusGPa: 'E along the grain, GPa',
    densityKgM3: 'Density, kg/m³',
    strength: 'Crushing strength along the grain',
    strengths: {
      density: (value: string) => `by its density: ${value}`,
      own: () => 'entered here',
    },
    crushingMPa: 'Crushing strength, MPa',
    like: 'Across the grain like',
    hint: 'From a data sheet or your own test: for boards of paper and resin, veneers or other woods. The density is that in your shop, and decides how hard the studs bite.',
  },
  regions: {
    title: 'Frets whose slot or tang differs',
    none: 'All frets have the same slot and the same tang.',
    add: 'Add a stretch of frets',
    remove: (index: number) => `Take stretch ${index} away`,
    removeShort: 'take away',
    region: (index: number) => `Stretch ${index}`,
    caption: 'Stretches of frets with a slot or tang of their own; a later one goes before an earlier one',
    columns: {
      fromFret: 'from fret',
      toFret: 'to fret',
      kerfMm: 'kerf',
      tangWidthMm: 'tang',
      studWidthMm: 'over studs',
    },
  },
  reliefs: {
    title: 'Measured relief at each fret',
    perFret: 'A relief for each fret, in place of one number',
    caption: 'Relief of the bare board at each fret, strings off; minus is a hump',
    fret: (fret: number) => `Relief at fret ${fret}`,
  },
  binding: {
    title: 'Binding lines, from the wood outwards',
    line: (index: number) => `Line ${index}`,
    thickness: (index: number) => `Thickness of line ${index}`,
    colour: (index: number) => `Colour of line ${index}`,
    material: (index: number) => `Material of line ${index}`,
    none: 'The board is unbound.',
    sawn: 'sawn through',
    whole: 'left whole',
  },
});

export const SUMMARY_WORDS = words('SUMMARY_WORDS', {
  frets: (count: number) => `${count} frets`,
  slots: (kerf: string, depth: string) => `${kerf} kerf, ${depth} deep`,
  binding: (lines: number) => (lines === 0 ? 'unbound' : `${lines} ${lines === 1 ? 'line' : 'lines'} of binding`),
  strings: (count: number) => `${count} ${count === 1 ? 'string' : 'strings'} of your own`,
  settled: (time: string) => time,
  climate: 'climate change',
  newNeck: 'a new neck',
  refret: 'a refret',
  bite: (factor: string) => `bite factor ${factor}`,
});
