/** Words of the papers: the fretwork plan that prints as the bench sheet, the cutting template, the files to take along. */
import { words } from '../../language.ts';
import type { TableId } from '../../../fretwork/plan/tables.ts';

export const PLAN_WORDS = words('PLAN_WORDS', {
  title: 'Bench sheet',
  printHint:
    'Prints on A4 or Letter as the printer is set. The browser’s own header and footer can be switched off; the pages have their own.',
  contents: 'On this sheet',
  made: 'Printed',
  deference:
    'Local rules on dust, solvents and protected woods, and the makers’ data sheets, come before anything on this sheet. The numbers are a prediction, not a measurement: the straightedge has the last word.',
  notes: 'Notes',
  code: 'Opens this build in Backbow',
  codeTooLong:
    'This build holds more than a code of readable size takes; the project file and the list of all values below hold it.',
  page: 'page',
  of: 'of',
  saveTable: (title: string) => `Save “${title}” as CSV`,
  saveTableShort: 'CSV',
  scrollable: (title: string) => `${title}, scrolls sideways`,
  allFrets: 'At all frets',
  alike: 'Alike for all',

  build: 'The build',

  expected: {
    title: 'What to expect, and what was measured',
    caption: 'Expected and measured bow in each state',
    note: (from: number, to: number) =>
      `Relief is measured under a straightedge on frets ${from} and ${to}, at its greatest. Back-bow is a hump, relief a hollow. Write down what the feeler gauge shows: these are the numbers that the bench log asks for.`,
    state: 'State',
    predicted: 'Predicted',
    band: 'Band, 5 to 95 %',
    measured: 'Measured',
    date: 'Date',
    gauge: 'Gauge, ±',
    states: {
      bare: 'Bare board, before fretting',
      fretted: 'All frets in, no strings',
      strung: 'Strung, first day, rod slack',
      settled: (time: string) => `Settled, strung for ${time}, rod slack`,
      rodNow: (setting: string) => `Rod as in this build: ${setting}`,
      rodNearest: (setting: string) => `Rod as near as it comes: ${setting}`,
      rodWanted: (setting: string) => `Rod set for the relief wanted: ${setting}`,
    },
    bandComing: 'The bands are being computed.',
    noBand:
      'No band could be computed for these numbers. Reckon with a third up or down: the stiffness of one species alone scatters by 22 % (coefficient of variation, wood handbooks), and the grip of the studs is an estimate.',
    bandFrom: (drivers: string) =>
      `In nine necks of ten the measured number should lie in its band. Most of the band comes from ${drivers}.`,
    fromLog: (necks: number) =>
      `The bands are narrowed by the bench log of this workshop (${necks === 1 ? 'one measured neck' : `${necks} measured necks`}). The log does not travel with the neck: opened elsewhere, it has wider bands.`,
    fromGrip: (measured: number) =>
      `The bands are narrowed by try strips and readings of this workshop (${measured === 1 ? 'one measurement' : `${measured} measurements`}). They do not travel with the neck: opened elsewhere, it has wider bands.`,
    method: (label: string) => `Frets seated by ${label}.`,
    rod: {
      reached: (setting: string, more: string) => `For the relief wanted, from a snug nut: ${setting}. ${more}`,
      tightForward: 'Tightened, the rod bends this neck forward, because it pulls above the middle of its wood.',
      'cannot-forward': (nearest: string) =>
        `A one-way rod cannot bend this neck forward: with its nut loose the neck comes to ${nearest}, and no turn of the nut brings it to the relief wanted.`,
      'cannot-backward': (nearest: string) =>
        `The one-way rod pulls above the middle of this neck’s wood and cannot bend it backwards: with its nut loose the neck comes to ${nearest}, and no turn of the nut brings it to the relief wanted.`,
      'too-weak': (nearest: string) =>
        `The rod cannot bring the neck to the relief wanted; at its limit it comes to ${nearest}.`,
      'between-shapes': (nearest: string) =>
        `The rod cannot bring the neck to just the relief wanted, because its line is humped in one place and hollow in another; the nearest is ${nearest}.`,
      'no-nearer': (nearest: string) =>
        `The rod cannot bring the neck to the relief wanted; the nearest is ${nearest}, and turned further it bends another stretch of the neck away.`,
      flattest: (size: string) =>
        `The rod makes the line as flat as it gets: humped in one place and hollow in another, ${size} either way.`,
      none: '',
    },
    targetLine: (relief: string) => `Relief wanted: ${relief}.`,
    lineTitle: 'The line of the fret tops',
    lineCaption: 'Fret tops against the straightedge in each state; heights are drawn larger than life.',
    heights: (times: string) => `heights ×${times}`,
    fret: 'fret',
  },

  checks: {
    title: 'Checks before you begin',
  },

  quarters: {
    title: 'Bow while seating',
    note: 'Lay the straightedge on after each quarter. Minus is a hump (back-bow), plus a hollow.',
    rodNeutral: 'Keep the rod slack meanwhile.',
    aheadTitle: 'When it runs ahead',
    aheadCaption: 'What to do when the bow runs ahead of the prediction',
    aheadNote:
      'Find the row for the frets that are in and the bow that you measure. Up to a row that says “go on”, go on; past it, stop and read across. Widen one slot first, seat one fret, look again.',
    aheadRaises: (kerf: string) => `A kerf of ${kerf} for the rest has its price:`,
    in: 'Frets in',
    shows: 'Bow measured',
    times: 'Times predicted',
    end: 'Bow at the end, unchanged',
    kerf: 'Kerf for the rest',
    advice: 'What to do',
    none: 'These frets bow the neck too little for a straightedge to tell while they go in. A bow that shows all the same means that something wedges: dust or filler in a slot, or a kerf that came out too narrow. Stop and gauge an empty slot.',
    lineTitle: 'After each quarter',
    quarter: (n: number) => `after quarter ${n}`,
  },

  tables: {
    slots: {
      title: 'Slots',
      note: 'Positions run from the front of the nut along the centre line. Mark every slot from the nut, never from the slot before.',
    },
    wire: { title: 'Wire', note: 'Lengths run along the arc of the board.' },
    cutting: { title: 'Cutting plan', note: '' },
    seating: { title: 'Seating', note: '' },
    quarters: { title: 'Bow while seating', note: '' },
    levelling: { title: 'Levelling budget', note: '' },
    setUp: {
      title: 'Set-up: heights',
      note: 'Strung and settled, rod set. String 1 is the highest. Over fret 1 with the string open; at the saddle over a straightedge laid along the string on fret 1 and the fret at the joint.',
    },
    playing: {
      title: 'Set-up: will it buzz?',
      note: 'Strung and settled, rod set. The room is that of the worst note; minus is too low. Fretted at 0 is the open string.',
    },
    metals: {
      title: 'Wire metals compared',
      note: 'Hardness figures are typical ones, for comparing only. The wedge force comes from tang and kerf, not from the metal.',
    },
    checks: { title: 'Checks', note: '' },
  } satisfies Record<TableId, { title: string; note: string }>,

  turn: {
    lowers: (size: string) =>
      `One turn of the rod’s nut that bends the neck backwards lowers the action at fret 12 by ${size}.`,
    raises: (size: string) =>
      `One turn of the rod’s nut that bends the neck backwards raises the action at fret 12 by ${size}.`,
  },

  playing: (action: string, place: string) =>
    `Action ${action} at fret 12. Assumed: plucked along the board, ${place} from the saddle, as hard as the table says.`,
  ownPlaying: (strength: string) => `“My own” is measured. ${strength}`,

  order: {
    title: 'Wire to order',
    inFrets: (length: string) => `${length} in the frets`,
    spare: (count: number) => (count === 0 ? 'no spare' : `${count} spare ${count === 1 ? 'fret' : 'frets'}`),
    total: (length: string) => `${length} in all, with the loss at the cuts`,
    sticks: (count: number, length: string) => `${count} ${count === 1 ? 'stick' : 'sticks'} of ${length}`,
    fewest: 'Fewer sticks cannot do it.',
    perhapsFewer: (count: number) => `No plan with fewer was found; fewer than ${count} cannot do it.`,
    coil: (turns: string) => `${turns} turns of the coil`,
    waste: (length: string) => `${length} left over`,
  },

  bend: {
    title: 'Bending the wire',
    none: 'The wire goes in as it comes: sight along every piece and straighten what is not straight.',
    wanted: (radius: string) => `The free wire should have a radius of ${radius}.`,
    wantedStraight: 'The free wire should be straight.',
    to: (radius: string, stays: string) => `Bend to ${radius}; ${stays} of the bend stays.`,
    open: (radius: string, stays: string) =>
      `Bend the coil open, past straight, to ${radius} the other way; ${stays} of the bend stays.`,
    openStraight: (stays: string) => `Bend the coil open to straight; ${stays} of the bend stays.`,
    tightest: 'For the tightest radius under any fret; the table of the wire has each by itself.',
    wrongTitle: 'With a wrong radius',
    when: 'When',
    happens: 'What happens',
    remedy: 'What to do',
  },

  glue: {
    title: 'Glue',
    total: (volume: string, ml: string) => `${volume} in all slots together, ${ml} mL.`,
    open: (from: string, to: string) =>
      `Open time ${from} to ${to} minutes: spread only what you can seat in that time.`,
    clamp: (minutes: string, hours: string) =>
      `Clamp for ${minutes} minutes, string no sooner than after ${hours} hours.`,
    stiffness: (modulus: string) => `Computed with a modulus of ${modulus} once set.`,
    cleanUp: 'Clean up',
    release: 'To get the fret out again',
  },

  levelling: {
    bare: 'For levelling on the bench, strings off and rod slack. Level with the rod as it was when the board was trued.',
    strung: 'For levelling under simulated string pull, rod slack.',
    assumed: 'The build does not say yet where the crowns are levelled; it is set under time and climate.',
    none: 'No budget could be computed.',
  },

  metalSources: 'Sources of the figures',
  facts: {
    title: 'Nickel, wear, bending: what is known',
  },

  record: {
    title: 'Record for the next repairer',
    note: 'Keep this page with the neck. Whoever pulls these frets one day needs it.',
    wire: 'Wire',
    crown: 'Crown',
    tang: 'Tang',
    kerf: 'Kerf',
    depth: 'Slot depth',
    method: 'Seated',
    glue: 'Glue',
    noGlue: 'none',
    release: 'How it comes out',
    releaseDry:
      'Pressed in dry: warm the fret, lift from one end with flush-ground nippers along the slot, never prying across it.',
    chamfer: 'Chamfer',
    binding: 'Binding',
    board: 'Board',
    woods: 'Neck',
    tangOf: (body: string, studs: string, depth: string) => `${body} thick, ${studs} over the studs, ${depth} deep`,
    crownOf: (width: string, height: string) => `${width} wide, ${height} high as bought`,
    kerfOf: (kerf: string) => `${kerf} in this plan`,
    kerfVaries: (kerf: string) => `${kerf}, with stretches of their own (see the table of the slots)`,
    depthOf: (depth: string, bottom: string) => `${depth} at the centre line; ${bottom}`,
    chamferOf: (width: string) => `${width} on each edge of the slot`,
    noChamfer: 'none',
    unbound: 'none',
    lines: (lines: string, sawn: number, count: number) =>
      `${lines}, from the wood outwards; ${sawn === 0 ? 'none' : sawn === count ? 'all' : `the inner ${sawn}`} sawn through`,
    blanks: 'Filled in by hand',
    blankLabels: [
      'Kerf as gauged',
      'Crown left, least',
      'Frets in, date',
      'Strung, date',
      'Levelled, date',
      'Rod set to',
      'Strings fitted',
      'Made by',
      'For',
    ],
    remarks: 'Remarks',
  },

  values: {
    title: 'Every value of this build',
    note: 'With these the build can be entered again by hand.',
    regions: 'Frets whose slot or tang differs',
    region: (from: number, to: number, kerf: string, tang: string, studs: string) =>
      `frets ${from} to ${to}: kerf ${kerf}, tang ${tang}, over the studs ${studs}`,
    laminates: 'Woods from the centre line outwards',
    laminate: (wood: string, size: string) => `${wood} ${size}`,
    laminateRest: 'the rest',
    binding: 'Binding lines from the wood outwards',
    bindingLine: (thickness: string, colour: string) => `${thickness} ${colour}`,
    strings: 'Strings from the highest',
    string: (pitch: string, diameter: string, construction: string) => `${pitch} ${diameter} ${construction}`,
    stringOfCourse: (pitch: string, diameter: string, construction: string, beside: string) =>
      `${pitch} ${diameter} ${construction}, ${beside} from the one before it`,
    starting: 'Relief of the bare board at frets 1, 2 …',
  },
});

/** The stamp of what a paper was computed from, and the field that checks a sheet in hand. */
export const STAMP_WORDS = words('STAMP_WORDS', {
  before: 'stamp',
  stamp: (letters: string) => `stamp ${letters}`,
  title: 'Check a sheet in hand',
  intro:
    'Type the stamp of the sheet, file or picture: 12 letters, large or small. It tells whether that was computed from the neck on the bench.',
  label: 'Stamp of the sheet',
  check: 'Check',
  none: (most: string) => `This is no stamp: a stamp has 12 letters, like ${most}, without vowels, digits or Y.`,
  same: 'The same: it was computed from the neck on the bench, as it is now.',
  different: 'Different:',
  oneLetter: 'Only one letter differs from the stamp of this neck: look at the sheet again.',
  program: (version: string) => `Another version of Backbow computed it; this is ${version}. Numbers may differ.`,
  measured:
    'Its bands were narrowed by other measurements than those of this neck, or by measurements that this device does not have.',
  unmeasured: 'No measurement narrowed its bands; one narrows those of this neck here.',
  looking: 'Looking through the necks on this device …',
  unknown: 'It is of another build, and no neck on this device has that stamp.',
  known: (name: string, when: string) => `It is of “${name}” as it was on ${when}.`,
  knownPlain: (name: string) => `It is of an earlier state of “${name}”.`,
  setting: 'Setting',
  then: 'On the sheet',
  now: 'On the bench',
});

export const TEMPLATE_WORDS = words('TEMPLATE_WORDS', {
  title: 'Cutting template',
  intro:
    'Slots, taper and binding at full size. Print at 100 %, without “fit to page”, then measure both bars on every page with a steel rule before the saw comes out: printers scale, and paper moves with the damp. Where hundredths matter, mark from the table of the slots.',
  paper: 'Paper',
  print: 'Print the pages',
  save: 'Save as one SVG',
  pages: (count: number, paper: string) => `${count} ${count === 1 ? 'page' : 'pages'} of ${paper}, landscape.`,
  join: 'Lay the crosses of one page on those of the next, against a window, and tape the pages together.',
  page: (index: number, count: number) => `Page ${index} of ${count}`,
  heading: (name: string, version: string, date: string, stamp: string) => `${name}, ${version}, ${date}, ${stamp}`,
  sheet: (heading: string, index: number, count: number) => `${heading}, page ${index} of ${count}`,
  advice: (heading: string) => `${heading} — print at 100 %, then measure both bars`,
  nut: 'nut',
  joinHere: 'join here: lay the crosses on each other',
});

export const FILES_WORDS = words('FILES_WORDS', {
  title: 'Files to take along',
  intro: 'Everything is made here, in your browser; nothing is sent anywhere.',
  save: 'Save',
  tables: 'Tables, as CSV',
  tablesSay:
    'Comma-separated values for spreadsheets and scripts: plain numbers with a decimal point, the unit in the name of each column (Mm: millimetres, N: newtons), the same in every language.',
  allTables: 'All tables in one ZIP file',
  template: 'Cutting template, as SVG',
  templateSay: 'One drawing at full size, as long as the board.',
  project: 'Project file',
  projectSay: 'The build itself, to open again in Backbow.',
  model: '3D file, as binary glTF',
  modelSay: (factor: string, moment: string) =>
    `The neck as the picture shows it: ${moment}, ${factor}. Lengths in metres, as glTF demands; scale and stage are stored in the file.`,
  picture: 'Picture, as PNG',
  pictureSay: (view: string) =>
    `The picture in its present view (${view}), with factor, scale and version written into it.`,
  pictureWide: '2400 × 1500 pixels',
  scaleNote: 'at the middle of the picture',
  noPicture: 'The picture is not drawn here, so there is none to save.',
  failed: (what: string, reason: string) => `${what} could not be made: ${reason}`,
  saved: (name: string) => `Saved “${name}”.`,
  parts: {
    neck: 'Neck',
    board: 'Board',
    binding: 'Binding',
    nut: 'Nut',
    frets: 'Frets',
    strings: 'Strings',
    marks: 'Position marks',
  },
  caption: (name: string, version: string, stamp: string) => `${name}, ${version}, ${stamp}`,
  coordinates:
    'x along the neck from the nut, y up from the crown of the board, z across, towards the bass strings of a right-handed neck',
});
