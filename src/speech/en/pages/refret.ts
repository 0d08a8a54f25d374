/** Words of the refret helper. */
import { words } from '../../language.ts';

export const REFRET_WORDS = words('REFRET_WORDS', {
  title: 'Tangs for a refret',
  intro:
    'A fatter tang in a stretch of frets takes an old forward bow out of a neck; a thinner one lets it come back. Say which tangs you have, and get the combinations that bring the fret tops nearest to the line you want. The slots keep their kerfs.',
  isNew:
    'This build is a new neck. Make it a refret, and say under “A neck that exists” how it is bowed before fretting.',
  makeRefret: 'Make it a refret',
  stepRefret: 'The job: a refret',
  isGlue: 'A glue fit does not wedge: no tang moves the neck. The combinations are those of a press fit.',
  method: 'Seating',
  stretches: 'Stretches, nut to body',
  tangs: 'Tangs to hand',
  tangsCaption: 'Tangs to choose from',
  body: 'Body',
  studs: 'Over the studs',
  tang: (index: number) => `Tang ${index}`,
  add: 'Another tang',
  remove: 'Remove',
  removeName: (index: number) => `Remove tang ${index}`,
  narrow: (index: number) => `Tang ${index} is wider in its body than over its studs.`,
  now: (bow: string) => `With the tangs as the build has them: ${bow}.`,
  plans: 'The best combinations',
  plan: (index: number) => `Combination ${index}`,
  reaches: (bow: string, miss: string) => `It comes to ${bow}: ${miss}.`,
  fromLine: (size: string) => `No fret top is further than ${size} from the wanted line.`,
  frets: 'Frets',
  fretRange: (from: number, to: number) => (from === to ? `${from}` : `${from} to ${to}`),
  tangSize: 'Tang, body / studs',
  force: 'Wedge force per fret',
  forceRange: (low: string, high: string) => (low === high ? high : `${low} to ${high}`),
  pressure: 'Pressure on the walls',
  ofCrushing: (percent: string) => `${percent} of crushing`,
  studsOnly: 'studs only',
  crushes: (frets: string) =>
    `Frets ${frets}: the body of the tang presses on the walls as hard as the board can bear. They crush, the wedge goes no further, and the next fret will be loose there.`,
  nearCrushing: (frets: string) =>
    `Frets ${frets}: the body of the tang presses on the walls with more than three quarters of what the board bears.`,
  use: 'Use this combination',
  inUse: 'The build has these tangs.',
  step: (index: number) => `Tangs of combination ${index}`,
});
