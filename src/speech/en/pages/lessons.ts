/** Words around the lessons; what the lessons themselves say stands in texts.ts. */
import { words } from '../../language.ts';

export const LESSON_WORDS = words('LESSON_WORDS', {
  title: 'Lessons',
  intro:
    'Guess first, then see what is computed. Every step works without the guess too, nothing is marked, and all controls stay in your hands. Your neck is put aside and comes back when you leave.',
  minutes: (count: number) => `about ${count} minutes`,
  begin: 'Begin',
  beginName: (title: string) => `Begin “${title}”`,
  running: (title: string) => `Lesson: ${title}`,
  step: (index: number, count: number) => `Step ${index} of ${count}`,
  next: 'Next',
  back: 'Back',
  finish: 'Finish',
  leave: 'Leave the lesson',
  left: 'Your neck is back on the bench as you left it.',
  take: 'Go on with the lesson’s neck',
  stepTake: 'The lesson’s neck',
  taken: 'The lesson’s neck is on the bench. Undo brings yours back.',
  reveal: 'Show what is computed',
  skip: 'Show it without a guess',
  covered: 'The numbers and the line are covered while you guess.',
  computing: 'It is being computed.',
  yourGuess: 'your guess',
  computed: 'computed',
  noGuess: 'no guess',
  band: (band: string) => `5 to 95 of 100 such necks: ${band}`,
  lineHint: 'Drag the line, or move its three handles with the arrow keys.',
  lineHintTouch: 'Tap a handle, then drag it up or down.',
  lower: (fret: number) => `Lower the line near fret ${fret}`,
  higher: (fret: number) => `Raise the line near fret ${fret}`,
  handleNow: (fret: number, bow: string) => `near fret ${fret}: ${bow}`,
  handle: (fret: number) => `Height of the line near fret ${fret}`,
  lineAnswer: (guessed: string, truth: string) => `You drew ${guessed}; computed ${truth}.`,
  lineAnswerOnly: (truth: string) => `Computed ${truth}.`,
  valueLabel: 'Your guess',
  valueAnswer: (guessed: string, truth: string) => `You said ${guessed}; computed ${truth}.`,
  answerOnly: (truth: string) => `Computed: ${truth}.`,
  whichAnswer: (guessed: string, truth: string) =>
    guessed === truth ? `You said ${guessed}, and so it is.` : `You said ${guessed}; it is ${truth}.`,
  whichOnly: (truth: string) => `It is ${truth}.`,
  changed:
    'You have changed the neck; the numbers are of yours, and the text may speak of the one that the lesson began with.',
});

export const LESSON_FIGURE_WORDS = words('LESSON_FIGURE_WORDS', {
  sharp: 'sharp edges',
  chamfered: (width: string) => `chamfer ${width} wide`,
  alsoSharp: (width: string) => `chamfer ${width} wide: as good as sharp`,
  chippedLabel: (caption: string) => `${caption}: the edges have chipped (drawn for illustration)`,
  pull: 'Pull both frets',
  pulled: (share: string) => `${share} of the way out`,
  illustration: 'Slot, tang, crown and chamfer: sizes of this neck. Chips: drawn for illustration.',
});
