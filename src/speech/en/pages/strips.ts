/** Words of try strips. */
import type { StripProblem } from '../../../mechanics/try-strip/document-problems.ts';
import type { WireNumber } from '../../../mechanics/try-strip/places.ts';
import { words } from '../../language.ts';

type Because = Extract<StripProblem, { code: 'impossible' }>['because'];

export const STRIP_WORDS = words('STRIP_WORDS', {
  title: 'Try strip',
  intro:
    'An offcut, the same saw, the same wire, half a dozen frets. A bare strip bows many times as much as a neck, so a ruler shows how hard your studs really bite, and the range of this neck gets narrower.',
  reading: 'Reading the try strips …',
  unreadable: (count: number) =>
    count === 1
      ? 'One strip has a form that this release cannot read. It stays where it is.'
      : `${count} strips have a form that this release cannot read. They stay where they are.`,
  troubles: {
    full: 'This device is out of space: what you change now is gone when the page is closed. Save the strips to a file.',
    refused:
      'This browser keeps nothing for this page (a private window, or storage is blocked): the strips are gone when the page is closed. Save them to a file.',
    silent:
      'The browser’s storage does not answer: what you change now may be gone when the page is closed. Save the strips to a file.',
    newer:
      'The strips on this device were written by a newer release and stay as they are. What you enter here is gone when the page is closed; save it to a file.',
  },
  mine: 'Your strips',
  fresh: 'New strip',
  unnamed: 'Strip',
  nameOf: (name: string, date: string) => `${name}, ${date}`,
  plan: 'Plan a strip',
  name: 'Name',
  lengthMm: 'Length of the offcut',
  widthMm: 'Width',
  thicknessMm: 'Thickness',
  ownBoard: 'Cut from the board of this neck',
  asNeck: (wood: string, tang: string, studs: string, depth: string) =>
    `Of this neck: ${wood}; wire with a tang of ${tang} and studs of ${studs}; slots ${depth} deep.`,
  group: (number: number) => `Kerf ${number}`,
  blade: 'Blade',
  kerfMm: 'Kerf',
  kerfErrorMm: 'Error of the kerf, as it was measured',
  frets: 'Frets',
  addGroup: 'Add a kerf',
  removeGroup: 'Remove',
  removeGroupName: (number: number) => `Remove kerf ${number}`,
  twoKerfs: 'Two kerfs on one strip also show the shape of your studs.',
  instrument: 'Read with',
  ruler: (error: string) => `a ruler, ±${error}`,
  feelers: (error: string) => `feelers, ±${error}`,
  ownInstrument: 'your own instrument',
  needsSizes: 'Enter length, width and thickness, and you see what the strip will tell.',
  aheadTitle: 'What it will tell',
  aheadHump: (middle: string, low: string, high: string) =>
    `Expect a hump of ${middle} (90 % sure: ${low} to ${high}).`,
  aheadTable: 'Width of the 90 % range of this neck',
  state: 'State',
  now: 'today',
  after: 'with the strip',
  states: { fretted: 'frets in', strung: 'strung', settled: 'settled' },
  tooSmall: (hump: string, least: string) =>
    `The hump will be only ${hump}; to read it well it should be ${least}. More frets, a longer or thinner strip, or feelers.`,
  crushes: (group: number, stress: string, most: string) =>
    `Kerf ${group}: the wood below the slots may be pressed with ${stress}; it crushes at ${most}. Shallower slots, a wider kerf, or a thicker strip.`,
  drawing: (frets: number, length: string) => `Drawing of the strip: ${frets} slots on ${length}.`,
  cuttingList: 'Cutting list',
  slot: 'Slot',
  fromEnd: (unit: string) => `from the left end, ${unit}`,
  kerfColumn: (unit: string) => `kerf, ${unit}`,
  keep: 'Keep this strip',
  readings: 'Readings',
  noReadings: 'No reading yet.',
  days: 'Days since the frets went in',
  over: 'Bridged',
  overEnds: 'from end to end',
  overGroup: (number: number) => `kerf ${number}`,
  bow: 'Bow',
  size: 'Size',
  add: 'Add the reading',
  whichWay: 'Is it a hump or a hollow?',
  noSize: 'Enter the size of the bow.',
  errorMm: 'Its error, one standard deviation',
  noError: 'Enter the error of your instrument.',
  stiffness: 'Its stiffness',
  tests: { none: 'not measured', weight: 'by a weight', tap: 'by a tap' },
  measuredWhen: 'Measured',
  measuredStates: { plain: 'before it was slotted', slotted: 'with its slots sawn, no fret in' },
  stiffnessHow: {
    weight: 'Lay it on two edges, hang the weight at the middle, and read how far the middle goes down.',
    tap: 'Weigh it, hang it at 22 % from both ends, tap the middle, and read its lowest tone.',
  },
  loadG: 'Weight',
  spanMm: 'Between the edges',
  sagMm: 'Middle goes down',
  massG: 'Its mass',
  frequencyHz: 'Tone',
  addStiffnessTitle: 'How stiff the strip is – it tells more once this is known',
  addStiffness: 'Keep the stiffness',
  stiffnessMissing: 'Enter every number of the test.',
  weighed: (load: string, span: string, sag: string, when: string) =>
    `Stiffness: ${load} on a span of ${span} lowers it by ${sag}, ${when}`,
  tapped: (mass: string, tone: string, when: string) => `Stiffness: ${mass} ring at ${tone}, ${when}`,
  farSofter: (times: string, wood: string, modulus: string, expected: string) =>
    `That makes the strip ${times} times softer than ${wood}: ${modulus} against ${expected}.`,
  farStiffer: (times: string, wood: string, modulus: string, expected: string) =>
    `That makes the strip ${times} times stiffer than ${wood}: ${modulus} against ${expected}.`,
  noDays: 'Enter the days since the frets went in; 0 is the same day.',
  remove: 'Remove',
  removeReading: (bow: string) => `Remove the reading ${bow}`,
  askBite: (measured: string, band: string, times: string) =>
    `${measured} is far from what was expected (${band}). It would mean that your studs bite ${times} times as hard as assumed.`,
  askNoBite: (measured: string, band: string) =>
    `${measured} is far from what was expected (${band}). No bite of the studs explains it.`,
  keepReading: 'It is right, keep it',
  correct: 'Correct it',
  printCard: 'Print the bench card',
  card: 'Bench card',
  cardSizes: (length: string, width: string, thickness: string, depth: string) =>
    `Offcut ${length} × ${width} × ${thickness}; slots ${depth} deep, square to the edge.`,
  cardCaution:
    'Caution: clamp the offcut, keep your fingers out of the line of the saw and the press, wear eye protection, and keep the dust out of your lungs. Local rules come first.',
  cardWay: 'hump ☐ hollow ☐',
  delete: 'Delete this strip',
  says: (factor: string, low: string, high: string) =>
    `Your studs bite ${factor} times as hard as assumed (90 % sure: ${low} to ${high}).`,
  shape: (shape: string, low: string, high: string) =>
    `Shape of the studs ${shape} (${low} to ${high}); 0 is a block, 1 a ridge, 2 a point.`,
  effect: 'What that does to this neck',
  without: 'without a strip',
  with: 'with these strips',
  glueNoEffect: 'This neck is glued: its frets do not bite, and a strip changes nothing.',
  working: 'The ranges are being computed.',
  countsFor: 'Strips that count for this neck',
  doubts: {
    contradicting: 'The readings contradict each other: no grip explains them all. Check the kerfs and the readings.',
    far: (measured: string, expected: string) =>
      `A reading of ${measured} is far from the others, which suggest ${expected}.`,
    farOnNeck: (reading: string, measured: string, expected: string) =>
      `${reading}: ${measured} was read, and everything else suggests ${expected}. Check it, above all hump and hollow.`,
    end: (input: string) => `These readings ask for an unusual value: ${input}. Check it first.`,
    few: 'The readings are so sharp, or so unlikely, that the result is rough.',
    wire: (name: string, strip: string, neck: string) =>
      `The strip’s wire is not this neck’s: ${name} ${strip} against ${neck}. Of the wire the strip tells nothing here.`,
  },
  wireNumbers: {
    tangWidthMm: 'tang width',
    studWidthMm: 'width over the studs',
    studAreaMm2: 'stud area',
    studPitchMm: 'stud pitch',
  } satisfies Record<WireNumber, string>,
  kept: (name: string) => `${name} is kept on this device.`,
  changed: (name: string) => `${name} is changed.`,
  deleted: (name: string) => `${name} is deleted.`,
  save: 'Save to a file',
  bringIn: 'Bring in from a file …',
  fileName: 'try-strips',
  broughtIn: (fresh: number, known: number) =>
    `${fresh === 1 ? 'One strip' : `${fresh} strips`} brought in${known > 0 ? `; ${known} here already` : ''}.`,
  notBroughtIn: (file: string, why: string) => `“${file}” was not brought in. ${why}`,
  fileTroubles: {
    'not-json': 'It is damaged or no file of strips.',
    'not-strips': 'It holds no try strips.',
    'newer-version': 'It was made by a newer release.',
  },
  problem: (at: string, value: string, limits: string) => `${at} is ${value}${limits}.`,
  limits: (low: string, high: string) =>
    low === ''
      ? `; it can be at most ${high}`
      : high === ''
        ? `; it must be at least ${low}`
        : `; it can be ${low} to ${high}`,
  because: {
    'span-on-offcut': 'The supports are farther apart than the strip is long',
    'wood-below-slots': 'The slots leave no wood below them',
    'tang-in-slot': 'The tang is deeper than the slot',
    'wood-between-slots': 'The slots are too close together, or to an end',
    'ends-in-strip': 'The ends leave no room for slots',
    'frets-of-strip': 'There are too many frets',
    'studs-over-tang': 'The studs are narrower than the tang',
    'group-of-reading': 'The strip has no such kerf',
  } satisfies Record<Because, string>,
  wrong: 'Something of it has no place in a strip',
});
