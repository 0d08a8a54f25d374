/** Words of the chart of where the strings buzz. */
import { words } from '../../language.ts';

export const ROOM_WORDS = words('ROOM_WORDS', {
  strength: 'Played',
  strengths: { soft: 'softly', medium: 'medium', hard: 'hard' },
  direction: 'Plucked',
  directions: { along: 'along the board', away: 'away from the board', towards: 'towards the board' },
  withForce: (name: string, force: string) => `${name} (${force})`,
  grid: 'Room under each note, string by string',
  string: 'String',
  open: 'open',
  numbers: (unit: string) => `Room, ${unit}.`,
  signs: '! buzzes, ? may buzz if the string is stiff.',
  assumed: (force: string, place: string) => `Assumed: a pluck of ${force}, ${place} from the saddle.`,
  state: 'Strung and settled, rod set.',
  allClear: (notes: number) => `All ${notes} notes are clear.`,
  mayBuzz: (count: number, notes: number) => `No note is sure to buzz; ${count} of ${notes} may.`,
  buzz: (count: number, notes: number) => `${count} of ${notes} notes ${count === 1 ? 'buzzes' : 'buzz'}.`,
  buzzMore: (count: number, notes: number, more: number) =>
    `${count} of ${notes} notes ${count === 1 ? 'buzzes' : 'buzz'}, ${more} more may.`,
  lowest: (lowest: string, now: string) => `Lowest action for this neck: ${lowest} at fret 12, now ${now}.`,
  bestClear: (bow: string, room: string) => `Most room: with ${bow}, ${room} at the worst note.`,
  bestBuzzes: (bow: string, short: string) => `Most room: with ${bow}, but the worst note is still ${short} too low.`,
  cost: (more: string, room: string) => `${more} more relief takes ${room} of it.`,
  reliefBand: (from: string, to: string, low: string, high: string) =>
    `For a pluck of ${from} to ${to} it lies between ${low} and ${high}.`,
  fallClear: (depth: string, fret: number, room: string) =>
    `With the last frets falling away after fret ${fret}, ${depth} at the last: ${room} of room at the worst note.`,
  fallBuzzes: (depth: string, fret: number, short: string) =>
    `With the last frets falling away after fret ${fret}, ${depth} at the last, the worst note is still ${short} too low.`,
  takeFall: (depth: string) => `File the last frets ${depth} lower`,
  stepFall: (depth: string) => `Fall-away: ${depth}`,
  asIs: 'No other relief leaves more room.',
  take: (bow: string) => `Want ${bow}`,
  step: (bow: string) => `Relief wanted: ${bow}`,
  openNote: (string: string) => `String ${string}, open`,
  note: (string: string, fret: number) => `String ${string}, fret ${fret}`,
  clears: (note: string, fret: number, room: string) => `${note}: clears fret ${fret} by ${room}.`,
  mayTouch: (note: string, fret: number, room: string, short: string) =>
    `${note}: clears fret ${fret} by ${room}, but a stiff string may swing up to ${short} too low.`,
  hits: (note: string, fret: number, short: string) => `${note}: buzzes on fret ${fret}, ${short} too low.`,
  pick: 'Choose a note to see its swing in the picture.',
  swingOf: (note: string, bow: string) => `In the picture: ${note}, ×${bow} like the bow.`,
  play: 'Play the swing',
  pause: 'Pause',
  hide: 'Hide the swing',
  see: 'To the picture',
  showAgain: 'Show the swing',
  atFret: (fret: number, room: string) => `fret ${fret}: ${room}`,
  buzzesFrom: (force: string) => `It starts to buzz at ${force}.`,
});
