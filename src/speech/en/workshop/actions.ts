/** Words of the actions and of the help. */
import { words } from '../../language.ts';

/** What opens each part of the page: told apart from its words, which come with it. */
export const OPENING_WORDS = words('OPENING_WORDS', {
  keep: 'Keep in the library',
  library: 'Library …',
  share: 'Share …',
  compare: 'Compare …',
  wanted: 'Aim for a relief …',
  log: 'Bench log …',
  bench: 'At the bench …',
  refret: 'Tangs for a refret …',
  reseat: 'A fret seated again …',
  proof: 'Accuracy and proof …',
  lessons: 'Lessons …',
  glossary: 'Words of the trade …',
});

export const ACTION_WORDS = words('ACTION_WORDS', {
  nextMethod: 'Next way of seating',
  nextFret: 'Next fret, towards the body',
  previousFret: 'Previous fret, towards the nut',
  moreBow: 'Show more bow',
  lessBow: 'Show less bow',
  trueSize: 'True size',
  lift: 'Lift the fret out',
  rod: 'Show the rod',
  arrows: 'Show the forces',
  stress: 'Show the stress in the wood (slot cut open)',
  comparing: 'All three methods in the chart',
  units: 'mm or inches',
  help: 'Help and keys',
});

export const ACTION_GROUP_WORDS = words('ACTION_GROUP_WORDS', {
  project: 'The project',
  edit: 'Changing the build',
  job: 'The way through the job',
  view: 'The picture',
  page: 'The page',
});

export const HELP_WORDS = words('HELP_WORDS', {
  title: 'Help and keys',
  intro: [
    'Backbow shows what frets do to one particular neck. Set the neck on the controls; the picture, the numbers and the line below it are computed again at once.',
    'Each pressed fret wedges its slot a little and bends the neck backwards; the strings pull it forward again. The bow in the picture is drawn larger than life, by the factor that stands in it.',
    'The wood scatters by a fifth and more. Take the numbers as a well-founded guess, and measure.',
  ],
  keys: 'Keys',
  action: 'What',
  combos: 'Key',
  undoable: 'can be undone',
  numbers:
    'On a slider or a number: arrow keys step, with Shift finer, Page keys coarser, Home and End go to the limits. Double-click a slider to reset it.',
  singleKeys: 'Single letters act as keys (turn off if you dictate)',
  typed: 'Lengths may be typed with their unit, whatever the page shows: 0.58 mm, 0.023 in, 23 thou, 1 5/8 in.',
});
