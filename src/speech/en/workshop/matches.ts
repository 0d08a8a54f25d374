/** Words for a maker's own strength, from necks that just buzz. */
import type { MatchNumber } from '../../../playing/buzz-match.ts';
import { words } from '../../language.ts';

export const MATCH_WORDS = words('MATCH_WORDS', {
  own: 'my own',
  title: 'My own strength',
  how: 'Take a neck that just buzzes when you play as you do. Lower it or straighten it until one note starts to buzz, find the fret it buzzes on, and measure relief and action as they are.',
  string: 'String',
  note: 'Fretted at',
  open: 'open',
  fret: 'Just buzzes on fret',
  numbers: {
    reliefMm: 'Relief',
    actionMm: 'Action of this string at fret 12',
    reliefErrorMm: 'Error of the relief, ±',
    actionErrorMm: 'Error of the action, ±',
    fretErrorMm: 'Unevenness of the frets, ±',
  } satisfies Record<MatchNumber, string>,
  errors: 'Errors are standard deviations: two readings of three lie closer.',
  says: (force: string, error: string) => `This pluck was ${force}, ± ${error}.`,
  parts: (relief: string, action: string, frets: string) =>
    `Of that: relief ± ${relief}, action ± ${action}, fret tops ± ${frets}.`,
  keep: 'Keep this reading',
  kept: (neck: string, note: string, fret: number, force: string) =>
    `${neck}, ${note}: buzzes on fret ${fret}, ${force}`,
  unnamed: 'a neck without a name',
  remove: 'Remove',
  removeName: (which: string) => `Remove the reading ${which}`,
  joined: (matches: number, force: string, from: string, to: string) =>
    `${matches === 1 ? 'One reading' : `${matches} readings together`}: ${force}, 90 % sure: ${from} to ${to}.`,
  accept: 'Play with this strength',
  accepted: 'The chart plays with it.',
  release: 'Go back to soft, medium, hard',
  notBeyond: 'A fret can only be hit beyond the one at which the string is stopped.',
  liesOn: (room: string) =>
    `With this relief and action the string lies ${room} too low over that fret without being plucked. It cannot just buzz there at any strength. Measure both again.`,
  justLiesOn:
    'With this relief and action the string touches that fret without being plucked. It cannot just buzz there at any strength. Measure both again.',
  otherFirst: (fret: number, force: string, would: string) =>
    `This neck cannot just buzz there at any strength: it hits fret ${fret} first, from ${force}, and that fret only from ${would}. A fret stands proud, or relief or action are not what was entered.`,
  tooUnsure: 'The errors are as large as the strength. Measure relief and action more closely.',
  newer: 'The readings on this device are from a newer release and stay as they are.',
  notKept: 'This browser keeps nothing: the reading lasts as long as this page.',
  full: (most: number) => `This device keeps ${most} readings at most. Remove one first.`,
});
