/** What to do when the first frets bow the neck otherwise than was predicted. */
import type { RunAheadAdvice } from '../../../mechanics/while-fretting/run-ahead.ts';
import { words } from '../../language.ts';

export const RUN_AHEAD_TEXTS = words('RUN_AHEAD_TEXTS', {
  'go-on': {
    label: 'go on',
    text: 'The bow is where it should be. Seat the next quarter.',
  },
  'widen-kerf': {
    label: 'widen the empty slots',
    text: 'The bow runs ahead. Stop. Gauge the kerf of an empty slot: one that came out too narrow, or dust and filler left in it, is the usual reason. Widen the empty slots a little, seat one fret, and lay the straightedge on again.',
  },
  'glue-the-rest': {
    label: 'glue the rest',
    text: 'The bow is already all that was wanted. Open the remaining slots until the tang drops in by hand, and glue those frets.',
  },
  'past-target': {
    label: 'past what was wanted',
    text: 'The bow is past what was wanted, and the remaining frets can only hold it. Glue them in without wedging, or lift the last frets, open their slots and glue them too. Slacken a rod that was tight. Do not count on string tension for the rest before you have looked at the strung prediction.',
  },
  behind: {
    label: 'behind',
    text: 'There is less bow than predicted. Nothing needs mending now: check that the frets are home and hold, and enter the measurement in the bench log.',
  },
} satisfies Readonly<Record<RunAheadAdvice, { readonly label: string; readonly text: string }>>);
