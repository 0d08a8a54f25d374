/** Words of the bench: the job step by step, readings while the frets go in, and what they mean. */
import { words } from '../../language.ts';

export const BENCH_WORDS = words('BENCH_WORDS', {
  title: 'At the bench',
  documentTitle: (name: string) => `${name} – at the bench – Backbow`,
  back: 'Neck',
  jobs: 'All jobs',
  unnamed: 'Neck without a name',
  reading: 'Reading the jobs …',
  unreadable: (count: number) =>
    count === 1
      ? 'One job has a form that this release cannot read. It stays where it is.'
      : `${count} jobs have a form that this release cannot read. They stay where they are.`,
  troubles: {
    full: 'This device is out of space: what you enter now is gone when the page is closed. Write it down as well.',
    refused:
      'This browser keeps nothing for this page (a private window, or storage is blocked): what you enter is gone when the page is closed. Write it down as well.',
    silent:
      'The browser’s storage does not answer: what you enter now may be gone when the page is closed. Write it down as well.',
    newer:
      'The jobs on this device were written by a newer release and stay as they are. What you enter here is gone when the page is closed.',
  },
  startTitle: 'Start a job',
  startIntro: (name: string, method: string, relief: string) =>
    `${name}, ${method}. Relief you want, strung and settled: ${relief}.`,
  frozen: 'What is predicted now stays with the job, whatever you read.',
  isTry: 'An apprentice’s try: kept apart, and not for the bench log',
  start: 'Start with this neck',
  computing: 'The neck is being computed. You can start when its range is known.',
  openTitle: 'Jobs on the bench',
  finishedTitle: 'Finished jobs',
  none: 'No job has been started on this device.',
  goOnWith: 'Go on',
  lookAt: 'Open',
  jobLine: (started: string, readings: number) =>
    `started ${started}, ${readings === 0 ? 'no reading yet' : readings === 1 ? 'one reading' : `${readings} readings`}`,
  tryMark: 'apprentice’s try',
  removeJob: 'Delete',
  removeJobName: (name: string) => `Delete the job ${name}`,
  removed: (name: string) => `The job ${name} is deleted.`,
  undo: 'Undo',
  undone: 'That is undone.',
  gone: 'This job is not on this device: it was deleted here, or it is on another.',
  awake: 'The screen stays on.',
  notAwake: 'This browser cannot keep the screen on. Set a longer time in the settings of the device.',
  place: (at: number, of: number) => `${at} of ${of}`,
  steps: 'Step',
  previous: 'Back',
  next: 'Next',
  takeBack: {
    reading: 'Undo: the last reading',
    'removed-reading': 'Undo: the reading removed',
    change: 'Undo: the change for the rest',
    finished: 'Undo: job finished',
    logged: 'Undo: readings put in the bench log',
  },
  tookBack: {
    reading: 'The last reading is taken out again.',
    'removed-reading': 'The reading is back.',
    change: 'The rest goes in as before.',
    finished: 'The job is open again.',
    logged: 'The entry is out of the bench log again.',
  },
  seatTitle: (title: string, quarter: number) => `${title}: quarter ${quarter}`,
  readTitle: (frets: number) => `Straightedge on, ${frets} frets in`,
  doneTitle: 'What was read',
  seatThese: 'These go in now, in this order:',
  seatDrawing: (inNow: number, already: number) => `The board from above: ${already} frets are in, ${inNow} go in now.`,
  openFirst: (frets: string, kerf: string) => `Open these slots to ${kerf} first: ${frets}.`,
  otherWire: (frets: string, tang: string, studs: string) =>
    `Take the wire with a tang of ${tang} and ${studs} over the studs for: ${frets}.`,
  glueThese: (frets: string, kerf: string) =>
    `Open these slots to ${kerf} and glue the frets in: ${frets}. They must slide in by hand.`,
  glueCaution: 'Use the glue as its maker says: gloves, fresh air, and nothing hot near it.',
});

export const BENCH_FILE_WORDS = words('BENCH_FILE_WORDS', {
  title: 'From another device',
  intro:
    'A job goes from the desk to the bench and back as a file, with all its readings. No network is needed for it.',
  open: 'Open a job from a file',
  save: 'Save as a file',
  saveName: (name: string) => `Save the job ${name} as a file for another device`,
  saved: (file: string) => `Saved as ${file}. Send it to the other device, and open it there under “At the bench”.`,
  arrived: {
    new: (name: string) => `The job ${name} is on this device now.`,
    same: (name: string) => `The job ${name} is here already, just as it is in the file.`,
    further: (name: string) => `The job ${name} is now as far as it was on the other device.`,
    behind: (name: string) => `The job ${name} is further on this device than in the file. Nothing was changed.`,
    apart: (name: string) =>
      `Something was entered for ${name} on both devices. What is in the file is here as a job of its own.`,
  },
  notOpened: (file: string) => `“${file}” was not opened.`,
  troubles: {
    unreadable: 'The file could not be read.',
    'too-large': 'The file is larger than 20 MB: no job is that large.',
    'not-a-job': 'It is not a job saved by Backbow.',
    newer: 'It was saved by a newer release. Load this page afresh while there is a network, then open it again.',
    damaged: 'It is damaged or cut short. Save it once more on the other device.',
  },
});

export const BENCH_READING_WORDS = words('BENCH_READING_WORDS', {
  title: 'Enter what you see',
  lay: 'Lay the straightedge on from fret 1 to the fret at the body joint.',
  slack: 'The rod stays as it was for the bare board.',
  fretsIn: 'Frets in',
  fretsInOf: (count: string, of: string) => `${count} of ${of}`,
  fewer: 'One fret fewer',
  more: 'One fret more',
  bow: 'Bow',
  leaves: 'Which leaf just goes under?',
  noLeaf: 'none: flat',
  leafName: (size: string) => `Leaf ${size}`,
  size: 'Or type the size',
  details: 'Instrument and note',
  instrument: 'Read with',
  feelers: (error: string) => `feelers, ±${error}`,
  dial: (error: string) => `dial, ±${error}`,
  own: 'your own instrument',
  ownError: 'Its error',
  names: { feelers: 'feelers', dial: 'dial', own: 'own instrument' },
  note: 'Note',
  enter: 'Enter the reading',
  missing: {
    size: 'Tap a leaf or type how much.',
    way: 'Choose hump or hollow.',
    error: 'Enter the error of your instrument.',
    note: 'The note is too long.',
  },
  entered: (bow: string, frets: number) => `Entered: ${bow} with ${frets} frets in.`,
  list: 'Readings',
  line: (bow: string, frets: number, when: string) => `${bow} with ${frets} frets in, ${when}`,
  replaced: 'an earlier one; the later counts',
  remove: 'Remove',
  removeName: (bow: string, frets: number) => `Remove the reading ${bow} with ${frets} frets in`,
  asking: 'Looking at whether that can be …',
  askBite: (measured: string, band: string, times: string) =>
    `${measured}? Expected was ${band}. That would be a bite ${times} times as hard as expected.`,
  askNoBite: (measured: string, band: string) =>
    `${measured}? Expected was ${band}. No bite of the studs leads there: look whether the straightedge bears on a burr, or whether hump and hollow are mixed up.`,
  correct: 'Correct it',
  keep: 'It is right, keep it',
  notAsked: 'It could not be compared with the prediction. Keep it if you are sure of it.',
  nothing: 'Glued frets do not bow the neck: there is nothing to read while they go in.',
  board: 'These frets go into a board by itself: there is nothing to read before it is on the neck.',
});

export const BENCH_ADVICE_WORDS = words('BENCH_ADVICE_WORDS', {
  working: 'Working out what this means for the rest …',
  predicted: (bow: string, low: string) => `Predicted here: ${bow} (90 % sure: ${low})`,
  goOn: 'Go on.',
  letRod: 'Go on, and let the rod do it.',
  noBetter: 'Go on: no change for the rest brings it nearer.',
  stop: (what: string) => `Stop, and ${what}.`,
  what: {
    kerf: (kerf: string) => `open the rest to ${kerf}`,
    wire: (wire: string) => `seat the rest with ${wire}`,
    glue: 'glue the rest in',
  },
  choice: {
    'go-on': 'Go on as before',
    kerf: (kerf: string) => `Open the rest to ${kerf}`,
    wire: (wire: string) => `Seat the rest with ${wire}`,
    glue: 'Glue the rest in',
  },
  wire: (name: string, tang: string, studs: string) =>
    `${name === '' ? 'the wire' : name} (tang ${tang}, studs ${studs})`,
  blade: (kerf: string, name: string) => `${kerf} (${name})`,
  advised: 'advised',
  choices: 'What each would lead to',
  settled: (bow: string, band: string) => `Strung and settled: ${bow} (90 % sure: ${band})`,
  fretted: (bow: string) => `All frets in, no strings: ${bow}`,
  rod: {
    third: 'The rod reaches the relief you want within a third of its range.',
    all: 'The rod reaches the relief you want only with most of its range.',
    none: 'The rod does not reach the relief you want.',
    'no-rod': 'There is no rod: what the neck settles to is what it has.',
  },
  sure: (how: string, count: number, near: string, wanted: string) =>
    `${how}: ${count} of 100 such necks end within ${near} of ${wanted} and leave the rod two thirds of its range.`,
  sureNoRod: (how: string, count: number, near: string, wanted: string) =>
    `${how}: ${count} of 100 such necks end within ${near} of ${wanted}.`,
  how: ['Almost never', 'Unlikely', 'As likely as not', 'Likely', 'Very likely', 'Almost certain'],
  take: 'Do this',
  takeName: (choice: string) => `Do this: ${choice}`,
  taken: (choice: string) => `Decided: ${choice}.`,
  stopped: 'Not offered, because the checks stop it',
  bite: (low: string, middle: string, high: string) =>
    `Your studs bite ${middle} times as hard as the table says (90 % sure: ${low} to ${high}).`,
  chart: 'The line of the neck',
  chartLabel: (now: string) => `The line over the frets: ${now}.`,
  keys: { predicted: 'predicted at hand-over', now: 'as read', end: 'all frets in, if you go on' },
  fixed: (at: string, program: string, stamp: string) => `Predicted ${at}, Backbow ${program}, stamp ${stamp}`,
});

export const BENCH_DONE_WORDS = words('BENCH_DONE_WORDS', {
  caption: 'Predicted at hand-over and read',
  state: 'With',
  predicted: 'Predicted',
  range: '90 % sure',
  read: 'Read',
  fretsIn: (count: number) => `${count} frets in`,
  strung: 'strung',
  settled: 'strung and settled',
  notRead: 'not read',
  toLog: 'Readings to the bench log',
  inLog: 'The readings are in the bench log.',
  inLogElsewhere: 'The readings are in the bench log of another device.',
  logNote:
    'The bench log takes the readings after full quarters, up to the first change for the rest. The others stay with this job.',
  tryNote: 'An apprentice’s try stays out of the bench log.',
  nothingForLog: 'Nothing was read that the bench log could take.',
  notLogged: (why: string) => `The bench log did not take it. ${why}`,
  finish: 'Finish the job',
  isFinished: (when: string) => `Finished ${when}.`,
  changes: (change: string, frets: number) => `Decided after ${frets} frets: ${change}.`,
});
