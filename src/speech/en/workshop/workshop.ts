/** Words of the panels around the picture. */
import { words } from '../../language.ts';
import type { Method } from '../../../mechanics/prediction-types.ts';

export const METHOD_WORDS: Readonly<Record<Method, { label: string; says: string }>> = words('METHOD_WORDS', {
  press: { label: 'press fit', says: 'the studs wedge the slot; air stays beside the tang' },
  glue: { label: 'glue fit', says: 'the slot is sawn to the tang and filled; no wedge' },
  both: { label: 'press and glue', says: 'wedged first, then the slot is filled' },
});

export const READOUT_WORDS = words('READOUT_WORDS', {
  title: 'What the neck does',
  origin: 'Where this number comes from',
  fretted: 'With the frets in',
  strung: 'Strung',
  settled: (days: string) => `Settled, ${days}`,
  settledPlain: 'Settled',
  force: 'Wedge force per fret',
  pull: 'String pull',
  waiting: 'band …',
  perFret: (low: string, high: string) => `${low} to ${high} by fret`,
  rodNeeded: 'Rod needed',
  rodFor: (relief: string) => `Rod for ${relief} relief`,
  ofRange: (percent: string) => `${percent} of its range`,
  outOfReach: 'out of reach',
  rodChance: (percent: string) => `possible in ${percent}`,
  bandMeans: 'The small numbers span 90 of 100 such necks.',
  bandComing: '',
  drivers: (list: string) => `What spreads them most: ${list}.`,
  strings: (count: number) => `${count} ${count === 1 ? 'string' : 'strings'}`,
  noForce: 'no wedge',
  band: (low: string, high: string) => `${low} to ${high}`,
});

/** Which chart: as it is chosen, what its key does, and its title. */
export const CHARTS_WORDS = words('CHARTS_WORDS', {
  choice: 'Chart',
  line: { choice: 'along the neck', action: 'The line of the fret tops', title: 'The line of the fret tops' },
  time: {
    choice: 'over time',
    action: 'Relief against time',
    title: 'Relief under the strings against time, rod neutral',
  },
  room: { choice: 'will it buzz?', action: 'Will it buzz?', title: 'Will it buzz?' },
});

export const CHART_WORDS = words('CHART_WORDS', {
  straightedge: 'straightedge',
  above: 'hump',
  below: 'hollow',
  axis: 'fret',
  method: 'Seating',
  comparing: 'all three lines',
  summary: (state: string, lines: string) => `Line of the fret tops against a straightedge, ${state}. ${lines}`,
  line: (method: string, bow: string, fret: number) => `${method}: ${bow}, greatest near fret ${fret}.`,
  table: 'as a table',
  target: 'relief wanted',
  rangeFrom: 'Shown from fret',
  rangeTo: 'Shown to fret',
  rangeJoin: 'to',
  rangeHint: 'Which part of the board the chart shows; over the chart also the wheel with Ctrl, or two fingers',
  whole: 'whole board',
  save: 'save SVG',
  saveHint: 'Save the chart as a drawing (SVG)',
  tableTitle: 'The line, fret by fret',
  caption: (state: string) => `Fret tops against the straightedge, ${state}: minus is a hump, plus a hollow`,
  fret: 'Fret',
  hover: (fret: number, bow: string) => `fret ${fret}: ${bow}`,
  vertical: (times: string) => `heights drawn ×${times}`,
});

export const PHASE_WORDS = words('PHASE_WORDS', {
  bare: 'bare board',
  frets: 'frets in',
  strung: 'strung',
  weeks: 'settling',
  rod: 'rod set',
});

export const RAIL_WORDS = words('RAIL_WORDS', {
  title: 'The way through the job',
  slider: 'Moment in the job',
  play: 'Play',
  pause: 'Pause',
  back: 'Previous step',
  forward: 'Next step',
  bare: 'bare board, no frets',
  frets: (count: number, total: number) =>
    count === total ? `all ${total} frets in, no strings` : `${count} of ${total} frets in`,
  boardOn: 'fretted board glued on, no strings',
  count: (count: number, total: number) => `${count} of ${total} in`,
  seated: (fret: number, force: string) => `fret ${fret}: ${force}`,
  push: (force: string) => `${force} to seat`,
  byHand: 'slides in',
  stepMeans: 'What the last fret changed; minus is towards a hump.',
  strung: 'just strung',
  weeks: (time: string) => `strung for ${time}`,
  rod: (time: string, set: string) => `strung for ${time}, rod set${set === '' ? '' : `: ${set}`}`,
});

export const TIME_WORDS = words('TIME_WORDS', {
  hours: (n: number) => (n === 1 ? 'an hour' : `${n} hours`),
  days: (n: number) => (n === 1 ? 'a day' : `${n} days`),
  weeks: (n: number) => (n === 1 ? 'a week' : `${n} weeks`),
  months: (n: number) => (n === 1 ? 'a month' : `${n} months`),
  years: (n: number) => (n === 1 ? 'a year' : `${n} years`),
});

export const VIEW_WORDS = words('VIEW_WORDS', {
  neck: { label: 'Whole neck', says: 'three-quarter view over the board' },
  slot: { label: 'Slot cut open', says: 'cut along the neck through one slot' },
  fret: { label: 'Along a fret', says: 'cut along one fret, the whole width of the board' },
  end: { label: 'Fret end', says: 'the end of one fret at the edge of the board' },
  edge: { label: 'Straightedge', says: 'edge-on, with a straightedge on the frets' },
  back: { label: 'Back', says: 'the back of the neck' },
});

export const PICTURE_WORDS = words('PICTURE_WORDS', {
  title: 'The neck',
  views: 'View',
  enlarged: (factor: string) => `bow ×${factor}`,
  trueSize: 'true size',
  /** Lets the factor be chosen from the bow again. */
  chosenFactor: 'as fits',
  times: (factor: string) => `×${factor}`,
  shown: (factor: string) => `bow shown ×${factor}`,
  trueShown: 'bow at true size',
  fret: 'fret',
  nutwards: 'nut',
  bodywards: 'body',
  shownGroup: 'Also shown',
  lift: 'lift fret',
  rod: 'rod',
  forces: 'forces',
  stress: 'stress',
  loading: 'The picture is being prepared.',
  unavailable: 'The picture cannot be drawn here',
  unavailableWhy: (reason: string) => `${reason} The numbers, the chart and the table work all the same.`,
  broke: 'The picture broke off.',
  retry: 'Draw it again',
  straight: (reason: string) => `Drawn without its bow, which could not be computed: ${reason}.`,
  description: (name: string, view: string, state: string, bow: string, method: string, shown: string) =>
    `${name}, ${view}; ${method}, ${state}: ${bow}; ${shown}.`,
});

export const PROJECT_WORDS = words('PROJECT_WORDS', {
  menu: 'Menu',
  presets: 'Start from',
  name: 'Name of the build',
  quoted: (name: string) => `“${name}”`,
  open: 'Open …',
  save: 'Save',
  undo: (label: string | undefined) => (label ? `Undo: ${label}` : 'Undo'),
  redo: (label: string | undefined) => (label ? `Redo: ${label}` : 'Redo'),
  unsaved: 'not saved',
  saved: 'saved',
  opened: (name: string) => `Opened “${name}”.`,
  notOpened: (file: string) => `“${file}” was not opened; your build is unchanged.`,
  unreadable: 'The file could not be read.',
  moreProblems: (count: number) => `and ${count} more`,
  tooBig: (size: string, most: string) => `The file is ${size}; a project file has at most ${most}.`,
  drop: 'Let go to open this project file',
  stepOpen: 'Open a project',
  stepPreset: (label: string) => `Start from ${label}`,
  stepName: 'Name',
});

export const SETTING_WORDS = words('SETTING_WORDS', {
  units: 'Units',
  metric: 'mm',
  inch: 'inches',
  appearance: 'Appearance',
  appearances: { system: 'as the system', light: 'light', dark: 'dark' },
});

export const NOTICE_WORDS = words('NOTICE_WORDS', {
  close: 'Close',
  title: 'Messages',
  copied: 'Copied.',
  copyByHand: 'This browser does not let a page copy. The text is marked: copy it with your keys or the menu.',
});
