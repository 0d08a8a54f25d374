/** What to measure next, how well and how long, in words. */
import type { MeasurementId } from '../../../verdict/what-to-measure.ts';
import { words } from '../../language.ts';

export const MEASURE_WORDS = words('MEASURE_WORDS', {
  title: 'What to measure next',
  intro: (width: string) =>
    `Strung and settled, 90 of 100 such necks lie within ${width} of each other. Each line says how much narrower that gets with one thing measured. What narrows it most for each minute comes first.`,
  working: 'Working out what each measurement would tell; this takes some seconds.',
  caption: 'Things that can still be measured, the one that narrows most in a minute first',
  what: 'Measure',
  minutes: 'Minutes',
  removed: 'Narrower by',
  after: 'Leaves',
  actions: 'What to do',
  names: {
    studs: 'Width over the studs, with callipers',
    kerf: 'Kerf, with feelers in a trial slot',
    lens: 'Shape of a stud, with a lens',
    'stud-area': 'Area and pitch of the studs, with a lens and a rule',
    'slot-depth': 'Slot depth, with a depth gauge',
    'board-blank': 'Board blank, weighed and tapped',
    'neck-blank': 'Neck blank, weighed and tapped',
    strip: 'Try strip: an offcut of the board with a few frets',
    fretted: 'Bow of this neck with its frets in, with feelers',
    quarters: 'Bow after each quarter of the frets, with feelers',
    pull: 'Strings’ pull, on a dial over a fret',
    rod: 'Travel of the rod for a turn of the nut, on a dial',
  } satisfies Record<MeasurementId, string>,
  error: (error: string) => `to ±${error}`,
  minutesOf: (name: string) => `Minutes: ${name}`,
  enter: 'Enter it',
  enterName: (name: string) => `Enter it: ${name}`,
  done: 'Count as done',
  doneName: (name: string) => `Count as done: ${name}`,
  counted: 'Counted as done, in this list only:',
  takeBack: 'take back',
  takeBackName: (name: string) => `Take back: ${name}`,
  nothing: 'Nothing that could still be measured would make it narrower.',
  whose: 'The minutes are common practice, no source. Enter those of your workshop; they stay on this device.',
});
