/** Words of the comparison. */
import { words } from '../../language.ts';
import type { Build } from '../../../neck/build.ts';
import type { Method } from '../../../mechanics/prediction-types.ts';
import type { Refret } from '../../../verdict/choice-facts.ts';

export const COMPARE_WORDS = words('COMPARE_WORDS', {
  title: 'Compare',
  open: 'Compare them',
  intro:
    'Two or three necks at one moment of the job, each compared with the first. This neck and its ways of seating follow the bench until you keep them.',
  threeWays: 'This neck, seated in each way',
  cannot: (label: string, why: string) => `${label} is not possible with this neck: ${why}`,
  onlyOneWay: 'Only one way of seating is possible with this neck; there is nothing to compare.',
  necks: 'Necks to compare',
  places: ['First neck', 'Second neck', 'Third neck'],
  none: 'none',
  bench: (name: string) => `on the bench: ${name}`,
  way: (label: string) => `this neck, ${label}`,
  groups: { bench: 'This neck', presets: 'To start from', saved: 'Saved' },
  asOf: (label: string, when: string) => `${label}, as of ${when}`,
  keep: 'Keep as it is',
  keepName: (label: string) => `Keep ${label} as it is`,
  onBench: 'on the bench',
  swap: 'Swap with the first',
  swapName: (label: string) => `Swap ${label} with the first`,
  choose: 'Choose as the build',
  chooseName: (label: string) => `Choose ${label} as the build`,
  stepChoose: (label: string) => `Choose ${label}`,
  chosen: (label: string) => `${label} is on the bench now. Undo brings back what was there before.`,
  refused: 'Not done; your build is unchanged.',
  failed: (reason: string) => `The comparison could not be computed: ${reason}.`,
  retry: 'Compute again',
  picture: 'The necks in one picture',
  description: (necks: string, factor: string) => `${necks}; bow drawn ×${factor}. The dashed lines are flat.`,
  drawing: 'The picture is being prepared.',
  noPicture: 'The picture cannot be drawn here. The chart and the table say the same.',
  views: 'View',
  moment: 'Moment in the job',
  chart: 'The lines of the fret tops',
  chartLabel: (necks: string) => `Lines of the fret tops against a straightedge. ${necks}`,
  chartNote: 'Upright bars: where the greatest bow of 90 of 100 such necks lies.',
  line: (label: string, bow: string) => `${label}: ${bow}.`,
  table: 'What differs, and why',
  waiting: 'band …',
  same: 'No difference.',
  steps: 'The steps in order',
  onlyHere: 'not in all',
  copyTitle: 'Settings that differ',
  copyNone: 'The necks have the same settings.',
  copyIntro: (label: string) =>
    `Copying gives the neck on the bench, ${label}, the settings of another; it is one step that undo takes back.`,
  copyNeedsBench:
    'None of these is on the bench. Choose one as the build, and settings of the others can be copied to it.',
  copyFrom: (label: string) => `Copy from ${label}`,
  copyFromName: (group: string, label: string) => `Copy “${group}” from ${label}`,
  stepCopy: (group: string, label: string) => `Copy ${group} from ${label}`,
  copied: (group: string, label: string) => `“${group}” is copied from ${label}. Undo takes it back.`,
  setting: 'Setting',
  noneListed: 'none',
  share: 'Share this comparison',
  forCustomer: 'A page for the customer',
  textsTooLong: 'The texts of the customer’s page are too long; there is a link as soon as they are shorter.',
  tooLong: 'This comparison is too long for a link. Shorten the notes of the necks.',
});

export const ROW_WORDS = words('ROW_WORDS', {
  now: (moment: string) => `Now: ${moment}`,
  fretted: 'Bow with the frets in',
  strung: 'Strung',
  settled: 'Settled',
  settledAfter: (time: string) => `Settled, ${time}`,
  rod: 'Rod needed for the relief wanted',
  action: 'Action at fret 12',
  room: 'Room of the worst note, played medium',
  mostRoom: 'Relief with the most room, played medium',
  months: 'The same set up when strung, and after the first months',
  flexibility: 'Slots, under the strings',
  pullOut: 'Force to pull a fret out',
  seating: 'Force to seat a fret',
  glue: 'Glue',
  steps: 'Steps of the work',
  refret: 'Risk at the next refret',
});

export const RISK_WORDS: Readonly<Record<Refret, string>> = words('RISK_WORDS', {
  easy: 'low',
  careful: 'some',
  hard: 'high',
});

export const ORDER_WORDS: Readonly<Record<Build['seatingOrder'], string>> = words('ORDER_WORDS', {
  spread: 'every fourth fret first',
  'nut-first': 'from the nut on',
  'body-first': 'from the last fret on',
});

/** What stands in the slots beside the tang. */
export const SLOT_WORDS: Readonly<Record<Method, string>> = words('SLOT_WORDS', {
  press: 'empty slots',
  glue: 'slots filled with glue',
  both: 'wedged slots filled with glue',
});

export const CELL_WORDS = words('CELL_WORDS', {
  noRod: 'no rod',
  outOfReach: 'out of reach',
  asSet: (bow: string) => `${bow}, as it is set`,
  plucks: (from: string, to: string) => `for a pluck of ${from} to ${to}`,
  fromTo: (from: string, to: string) => `${from} → ${to}`,
  chance: (percent: string) => `possible in ${percent}`,
  perFret: 'mean of the frets',
  flexible: (percent: string) => `${percent} more flexible`,
  stiffer: (percent: string) => `${percent} stiffer`,
  asUnsawn: 'as stiff as unsawn',
  dry: 'none',
  steps: (count: number, wait: string) => `${count} steps; ${wait} from frets to strings`,
});

/** Sentences of the reasons; every number in them is one of the library's, or a ratio of two of them. */
export const REASON_WORDS = words('REASON_WORDS', {
  noWedge: (kerf: string) => `nothing wedges: the studs slide into slots of ${kerf}`,
  wedgeOnlyHere: (force: string) => `each fret wedges its slot with ${force}`,
  whereOther: (force: string) => `where the first wedges each with ${force}`,
  wedge: (force: string, other: string, percent: string) =>
    `each fret wedges with ${force} instead of ${other} (${percent})`,
  bite: (bite: string, other: string) => `the studs bite ${bite} into the walls instead of ${other}`,
  give: (percent: string) => `the neck gives ${percent} under the same push`,
  boardFirst: (percent: string) =>
    `the board was fretted before it was glued on, and keeps part of the wedge to itself: each newton bows the neck ${percent}`,
  neckFirst: (percent: string) =>
    `the frets went into the finished neck, not into a loose board: each newton bows it ${percent}`,
  frets: (count: number, other: number) => `${count} frets instead of ${other}`,
  starting: (bow: string, other: string) => `it starts from ${bow} instead of ${other}`,
  more: (percent: string) => `${percent} more`,
  less: (percent: string) => `${percent} less`,
  before: (difference: string) => `${difference} of the difference was there with the frets in`,
  stringsAdd: (bow: string, other: string) => `the strings add ${bow} instead of ${other}`,
  flexible: (slots: string, flexible: string) => `${slots}: ${flexible} under the strings`,
  flexibleAgainst: (slots: string, flexible: string) => `${slots} of the first: ${flexible}`,
  pull: (force: string, other: string) => `the strings pull with ${force} instead of ${other}`,
  moved: (size: string, time: string, other: string, otherTime: string) =>
    time === otherTime
      ? `in ${time} it moves by ${size} instead of ${other}`
      : `it moves by ${size} in ${time} instead of ${other} in ${otherTime}`,
  wedgesKeep: (percent: string, force: string) => `the wedges keep ${percent} of their push of ${force}`,
  stringsGrow: (percent: string) => `what the strings do grows by ${percent}`,
  mustMove: (size: string, wanted: string, reach: string) =>
    `settled it is ${size} away from the ${wanted} wanted, and the whole rod moves it by ${reach}`,
  noRod: 'there is no rod to make up for it',
  slotSize: (depth: string, board: string, kerf: string) => `${kerf} wide, ${depth} deep in a board of ${board}`,
  held: (friction: string, glue: string) => `friction of the wedge holds ${friction}, glue ${glue}`,
  heldDry: (friction: string) => `friction of the wedge alone holds ${friction}`,
  heldGlue: (glue: string) => `glue alone holds ${glue}`,
  slidesIn: 'no stud bites: the fret slides in by hand',
  slotFilled: (kerf: string, percent: string) => `slots of ${kerf}, filled to ${percent} of their depth`,
  pressedDry: 'pressed in dry',
  extraSteps: (titles: string) => `more: ${titles}`,
  missingSteps: (titles: string) => `left out: ${titles}`,
  waits: (time: string, other: string) => `${time} to the strings instead of ${other}`,
  chamfer: (chamfer: string) => `slot edges chamfered ${chamfer}`,
  sharp: (chamfer: string) => `slot edges chamfered only ${chamfer}: the board chips`,
  noGlue: 'no glue: the fret lifts out of its slot',
  pulls: (force: string) => `${force} hold each fret`,
});
