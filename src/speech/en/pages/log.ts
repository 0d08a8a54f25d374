/** Words of the bench log. */
import { words } from '../../language.ts';

export const LOG_WORDS = words('LOG_WORDS', {
  title: 'Bench log',
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
  caption: 'Measured necks, the newest first',
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
    'The name, the seating and the prediction come from the build in hand. Lay the straightedge from fret 1 to the body joint, choose hump (back-bow) or hollow, and enter how much. Leave empty what you did not measure.',
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
  notNumber: (text: string, field: string, range: string) =>
    `“${text}” is not a number for ${field}: it takes ${range}.`,
  outOfRange: (text: string, field: string, range: string) => `${text} for ${field}: it takes ${range}.`,
  range: (low: string, high: string) => `${low} to ${high}`,
  inField: (field: string, sentence: string) => `${field}: ${sentence}`,
  fields: {
    measuredFrettedMm: 'measured with frets in',
    measuredStrungMm: 'measured strung',
    gaugeErrorMm: 'error of straightedge and feelers',
    humidityPercent: 'humidity',
    days: 'days since it was strung',
    measuredPullMm: 'moved by the strings',
    measuredRodMm: 'moved by the rod',
    measuredQuarter1Mm: 'with a quarter of the frets in',
    measuredQuarter2Mm: 'with half of the frets in',
    measuredQuarter3Mm: 'with three quarters of the frets in',
    dialFret: 'fret under the dial',
    dialErrorMm: 'error of the dial',
    rodTurns: 'turns of the nut',
  },
  dialTitle: 'Strings’ pull and rod, read on a dial',
  dialIntro:
    'Rest a beam with a dial on fret 1 and on the fret at the body joint, the dial over a fret between them. Read it before and after the strings come to pitch, and before and after a turn of the nut, beginning where the nut is snug. Choose which way the neck went: towards a hump or towards a hollow.',
  dialFret: 'Dial over fret',
  dialError: (unit: string) => `Error of the dial, ${unit}`,
  measuredPull: (unit: string) => `Strings put on: it moved by, ${unit}`,
  measuredRod: (unit: string) => `Nut turned: it moved by, ${unit}`,
  rodTurns: 'Turns of the nut',
  rodWay: 'Nut turned, seen from the wrench',
  nutWays: { clockwise: 'clockwise', anticlockwise: 'anticlockwise' },
  rodStrings: 'Strings meanwhile',
  stringsStates: { on: 'on', off: 'off' },
  noSuchFret: (fret: string, last: string) => `Dial over fret ${fret}: it stands between fret 1 and fret ${last}.`,
  quartersTitle: 'Bow after each quarter of the frets',
  quartersIntro:
    'Lay the straightedge on after each quarter, in the order of seating of this build. The bow after the last quarter is the one with frets in, above.',
  measuredQuarter: {
    1: (unit: string) => `A quarter of the frets in, ${unit}`,
    2: (unit: string) => `Half of the frets in, ${unit}`,
    3: (unit: string) => `Three quarters of the frets in, ${unit}`,
  },
  further: 'Also read',
  furtherRead: (reading: string, bow: string, predicted: string) => `${reading}: ${bow} (${predicted})`,
  askOtherWay: (bow: string, reading: string, predicted: string) =>
    `${bow}, ${reading}? That is the other way than predicted: ${predicted}. Are hump and hollow mixed up?`,
  askTimes: (bow: string, reading: string, times: string, predicted: string) =>
    `${bow}, ${reading}? That is ${times} times what was predicted: ${predicted}.`,
  ownTitle: 'What was read on this neck itself',
  ownIntro:
    'The strings’ pull tells of the stiffness of this neck and of its slots, the rod of rod and stiffness, the bow of its grip, quarter by quarter.',
  ownCounts: 'Read on this neck',
  ownName: (neck: string, date: string) => `${neck}, ${date}`,
  ownWorking: 'The readings are being worked through.',
  ownRead: 'Read',
  ownBefore: 'nothing yet',
  ownKinds: {
    pull: 'strings’ pull',
    rod: 'rod travel',
    quarter: 'bow per quarter',
    fretted: 'bow with frets in',
    strung: 'bow strung',
  },
  ownAll: 'all of them',
  rodSays: (times: string) =>
    `A turn of the nut moves this neck ${times} times as far as predicted. The turns that the program names do not know of it.`,
  quartersSay: (grips: string) => `Grip of the four quarters, in the order in which they went in: ${grips}.`,
  needsNumber: (field: string, range: string) => `${field} is empty; it takes ${range}.`,
  added: (neck: string) => `${neck} is in the log.`,
  changed: (neck: string) => `The entry of ${neck} is changed.`,
  removed: (neck: string) => `The entry of ${neck} is deleted.`,
  undo: 'Undo',
  undone: 'The log is as it was.',
  circumstances: 'Tools and conditions',
  circumstance: {
    workshop: 'Workshop',
    wire: 'Wire',
    blade: 'Blade',
    instrument: 'Straightedge and feelers',
    rod: 'Rod',
    straightedgeOn: 'Straightedge on',
    humidity: 'Humidity of the air, %',
  },
  rodStates: { slack: 'slack', snug: 'snug' },
  straightedgeOn: { frets: 'the frets', board: 'the board' },
  snugSaysNothing:
    'The prediction is that of a slack rod: a neck measured with the rod snug is kept, and says nothing of the bite.',
  askTitle: 'Far from what was predicted',
  askHarder: (bow: string, reading: string, times: string, predicted: string) =>
    `${bow}, ${reading}? That would be a bite ${times} times as hard as predicted; predicted: ${predicted}.`,
  askSofter: (bow: string, reading: string, times: string, predicted: string) =>
    `${bow}, ${reading}? That would be a bite only ${times} times as hard as predicted; predicted: ${predicted}.`,
  askNoBite: (bow: string, reading: string, predicted: string) =>
    `${bow}, ${reading}? No bite leads there; predicted: ${predicted}. Are hump and hollow mixed up?`,
  askWithoutBite: (bow: string, reading: string, predicted: string) =>
    `${bow}, ${reading}? That is far from what was predicted: ${predicted}.`,
  askKeep: 'It is right: enter it',
  askCorrect: 'Correct it',
  importFile: 'Bring in a CSV file …',
  exportFile: 'Save as CSV',
  fileName: 'bench-log.csv',
  imported: (count: number) =>
    count === 0
      ? 'Nothing was added: every entry of the file is in the log already.'
      : `${count === 1 ? 'One entry was' : `${count} entries were`} added.`,
  fileReading: 'The file is being read.',
  otherwise: (count: number) =>
    count === 1
      ? 'One entry of the file says something else than the same entry of the log, which is as it was.'
      : `${count} entries of the file say something else than the same entries of the log, which are as they were.`,
  takeTheirs: (count: number) => (count === 1 ? 'Take the one of the file' : `Take the ${count} of the file`),
  tookTheirs: (count: number) =>
    count === 1 ? 'One entry is now that of the file.' : `${count} entries are now those of the file.`,
  showMore: (count: number, all: number) => `Show ${count} more of ${all}`,
  notImported: (file: string) => `“${file}” was not brought in; the log is as it was:`,
  biteTitle: 'How hard your studs bite',
  biteNone:
    'No measured neck says anything of it yet. Before any measurement the studs may bite half or twice as hard as assumed.',
  biteSays: (necks: number, factor: string, low: string, high: string) =>
    `After ${necks === 1 ? 'one neck' : `${necks} necks`}: ${factor} times as hard as assumed; 90 % sure: ${low} to ${high}.`,
  saysNothing:
    'A neck that was only glued says nothing of the bite, because its frets do not wedge; nor does one measured with the rod snug.',
  posteriorWorking: 'The log is being worked through.',
  doubts: {
    tooSoft:
      'The log gives no answer: by these necks the studs bite less than a tenth as hard as assumed, which is beyond what is considered. Check the entries, above all hump and hollow.',
    tooHard:
      'The log gives no answer: by these necks the studs bite more than ten times as hard as assumed, which is beyond what is considered. Check the entries, above all hump and hollow.',
    identical: (entries: number, necks: number) =>
      `Caution: ${entries} of ${necks} entries share exactly the same numbers. If one neck was entered several times, the band is too narrow: delete the doubles.`,
    unexplained: (entries: number) =>
      `Caution: ${entries === 1 ? 'one entry' : `${entries} entries`} cannot come from any bite. Check hump and hollow there.`,
    contradicting:
      'Caution: the necks contradict each other by more than their scatter. They may be of different wires or blades, or one of them was misread; the band is narrower than they justify.',
  },
  picture: (low: string, high: string) =>
    `Two curves over the bite factor: before any measurement wide, from 0.52 to 1.93; after the log from ${low} to ${high}.`,
  before: 'before',
  after: 'after your necks',
  axis: 'bite factor',
  takeBite: (factor: string) => `Use ${factor} in this build`,
  inUse: (factor: string) => `This build uses it: bite factor ${factor}, and the narrower bands that go with it.`,
  tooManyToTake: (most: number) =>
    `A build refers to at most ${most} measured necks. Delete the entries that no longer speak for your work.`,
  step: (factor: string) => `Bite factor ${factor}`,
  effect: 'What it does to this build',
  effectCaption: 'Where 90 of 100 such necks lie',
  state: 'State',
  states: { fretted: 'with frets in', strung: 'strung', settled: 'settled' },
  without: 'without the log',
  with: 'with the log',
  glueNoEffect: 'This build is a glue fit: the bite does not matter to it.',
});
