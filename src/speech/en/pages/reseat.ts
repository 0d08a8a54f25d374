/** Words of the dialog about a fret that is seated again. */
import type { ReseatWay } from '../../../mechanics/seating/reseat.ts';
import { words } from '../../language.ts';

export const RESEAT_WORDS = words('RESEAT_WORDS', {
  title: 'A fret seated again',
  intro:
    'A fret was spoilt or lifted, and has come out. Measure its slot with feelers, and see what a fret still holds in it. The numbers suppose that nothing chipped out beside what the wider slot shows: where it did, glue the chips back and let them set first.',
  fret: 'Fret',
  kerf: 'Slot now',
  days: 'Days it had been in',
  was: (force: string, pullOut: string) => `When it was new it wedged with ${force}, and took ${pullOut} to pull out.`,
  force: 'Wedges with',
  ofFirst: (percent: string) => `${percent} of what it had`,
  pullOut: 'Pulls out with',
  bow: 'Bow with all frets in',
  studs: 'Over the studs',
  advised: 'Advised',
  ways: {
    'same-place': 'The same fret, or one like it, in the same place',
    beside: 'The same wire, half a stud pitch along',
    wider: 'Wire with wider studs',
    glue: 'In the same place, with glue',
  } satisfies Record<ReseatWay, string>,
  hows: {
    'same-place': 'The studs go back into their own pits. They hold what time has left of their force.',
    beside: 'Cut the piece so that its studs stand between the old pits: they bite into fresh wood.',
    wider:
      'Wider by as much as the slot has grown: each stud stands as deep in its wall as before. Or crimp the tang to that width.',
    glue: 'Run a little glue into the slot, seat, and hold the fret down until it has set. It keeps the fret in; it wedges no more than without. Gloves and fresh air, as the label of the glue says.',
  } satisfies Record<ReseatWay, string>,
  use: 'Enter it in the build',
  inUse: 'The build has it so.',
  step: (fret: number) => `Fret ${fret} seated again`,
  pressing: 'A glue fit does not wedge. The forces are those of a press fit in these slots.',
});
