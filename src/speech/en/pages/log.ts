/** Words of the bench log. */
import { words } from '../../language.ts';

export const LOG_WORDS = words('LOG_WORDS', {
  title: 'Bench log',
  action: 'Bench log …',
  intro:
    'What you measured on finished necks, beside what was predicted for them. It tells how hard your studs really bite, and makes the bands of the next neck narrower. The log is kept on this device, in this browser.',
  troubles: {
    full: 'There is no room left on this device: what you change now is gone when the page is closed. Save the log as a CSV file.',
    refused:
      'This browser keeps nothing for this page (a private window, or storage is blocked): the log is gone when the page is closed. Save it as a CSV file.',
    silent:
      'The browser’s storage does not answer: what you change now may be gone when the page is closed. Close other windows of this program, and save the log as a CSV file.',
    newer:
      'The log on this device was written by a newer release and is left as it is. What you enter here is gone when the page is closed; save it as a CSV file.',
  },
  reading: 'The log is being read.',
  unreadable: (count: number) =>
    `${count === 1 ? 'One entry is' : `${count} entries are`} of a kind that this release cannot read. They are left where they are.`,
  entries: 'The necks measured',
  empty: 'No neck has been measured yet.',
  caption: 'Measured necks, the oldest first',
  date: 'Date',
  neck: 'Neck',
  method: 'Seating',
  fretted: 'With frets in',
  strung: 'Strung',
  gauge: 'Gauge error',
  does: 'Change or delete',
  notMeasured: '–',
  edit: 'Change',
  editName: (neck: string, date: string) => `Change the entry of ${neck}, ${date}`,
  remove: 'Delete',
  removeName: (neck: string, date: string) => `Delete the entry of ${neck}, ${date}`,
  addTitle: 'Enter the neck on the bench',
  editTitle: (neck: string) => `Change the entry of ${neck}`,
  addIntro:
    'The name, the seating and the prediction come from the build in hand. Lay the straightedge from fret 1 to the body joint; a hollow counts plus, a hump (back-bow) minus. Leave empty what you did not measure.',
  editIntro: 'The prediction stays the one of the day on which it was entered.',
  measuredFretted: (unit: string) => `Measured with frets in, no strings, ${unit}`,
  measuredStrung: (unit: string) => `Measured strung, rod neutral, ${unit}`,
  strungDays: 'Days since it was strung',
  gaugeError: (unit: string) => `Error of straightedge and feelers, ${unit}`,
  predicted: (bow: string) => `predicted: ${bow}`,
  noPrediction: 'The prediction is still being computed.',
  save: 'Enter it',
  saveChange: 'Keep the change',
  cancel: 'Leave it',
  notNumber: (text: string, field: string, range: string) => `“${text}” is no number for ${field}: it takes ${range}.`,
  outOfRange: (text: string, field: string, range: string) => `${text} for ${field}: it takes ${range}.`,
  range: (low: string, high: string) => `${low} to ${high}`,
  fields: {
    measuredFrettedMm: 'measured with frets in',
    measuredStrungMm: 'measured strung',
    gaugeErrorMm: 'error of straightedge and feelers',
    days: 'days since it was strung',
  },
  needsNumber: (field: string, range: string) => `${field} is empty; it takes ${range}.`,
  added: (neck: string) => `${neck} is in the log.`,
  changed: (neck: string) => `The entry of ${neck} is changed.`,
  removed: (neck: string) => `The entry of ${neck} is deleted.`,
  undo: 'Undo',
  undone: 'The log is as it was.',
  alreadyThere: 'That entry is in the log already.',
  importFile: 'Bring in a CSV file …',
  exportFile: 'Save as CSV',
  fileName: 'bench-log.csv',
  imported: (count: number) =>
    count === 0
      ? 'Nothing was added: every entry of the file is in the log already.'
      : `${count === 1 ? 'One entry was' : `${count} entries were`} added.`,
  notImported: (file: string) => `“${file}” was not brought in; the log is as it was:`,
  unreadableFile: 'The file could not be read.',
  moreProblems: (count: number) => `and ${count} more`,
  biteTitle: 'How hard your studs bite',
  biteNone:
    'No measured neck says anything of it yet. Before any measurement the studs may bite half or twice as hard as assumed.',
  biteSays: (necks: number, factor: string, low: string, high: string) =>
    `After ${necks === 1 ? 'one neck' : `${necks} necks`}: ${factor} times as hard as assumed; between ${low} and ${high} with 90 %.`,
  gluedOnly: 'A neck that was only glued says nothing of the bite: its frets do not wedge.',
  picture: (low: string, high: string) =>
    `Two curves over the bite factor: before any measurement wide, from 0.52 to 1.93; after the log from ${low} to ${high}.`,
  before: 'before',
  after: 'after your necks',
  axis: 'bite factor',
  takeBite: (factor: string) => `Use ${factor} in this build`,
  inUse: (factor: string) => `This build uses it: bite factor ${factor}, and the narrower bands that go with it.`,
  step: (factor: string) => `Bite factor ${factor}`,
  effect: 'What it does to this build',
  effectCaption: 'Where 90 of 100 such necks lie',
  state: 'State',
  states: { fretted: 'with frets in', strung: 'strung', settled: 'settled' },
  without: 'without the log',
  with: 'with the log',
  glueNoEffect: 'This build is a glue fit: the bite does not matter to it.',
});
