/** Where a string buzzes, in words. */
import type { NoteRoom } from '../../playing/room.ts';
import type { StringSpec } from '../../neck/strings.ts';
import type { QuantityKey } from '../../neck/quantities.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { buzzVerdict, type BuzzVerdict, type StringRoom } from '../../verdict/string-room.ts';
import { MORE_RELIEF_MM, type FallAim, type ReliefAim, type StringAim } from '../../verdict/string-aim.ts';
import { bowText } from '../bow.ts';
import { ROOM_WORDS } from '../en/workshop/room.ts';
import { pitchName } from '../names.ts';
import { textOf } from '../quantity-text.ts';

/** Stands behind the number, so that nobody needs the colour. */
export const BUZZ_SIGNS: Readonly<Record<BuzzVerdict, string>> = { clear: '✓', 'may-buzz': '?', buzzes: '!' };

/** "2 (B3)". @param string 0 = the highest */
export function stringName(strings: readonly Pick<StringSpec, 'pitch'>[], string: number): string {
  return `${string + 1} (${pitchName(strings[string].pitch)})`;
}

/** "String 2 (B3), fret 5". @param note 0 = open */
export function noteName(strings: readonly Pick<StringSpec, 'pitch'>[], string: number, note: number): string {
  const name = stringName(strings, string);
  return note === 0 ? ROOM_WORDS.openNote(name) : ROOM_WORDS.note(name, note);
}

/** How many notes buzz. */
export function roomSummary({ notes, buzzing, mayBuzz }: Pick<StringRoom, 'notes' | 'buzzing' | 'mayBuzz'>): string {
  if (buzzing > 0) {
    return mayBuzz > 0 ? ROOM_WORDS.buzzMore(buzzing, notes, mayBuzz) : ROOM_WORDS.buzz(buzzing, notes);
  }
  return mayBuzz > 0 ? ROOM_WORDS.mayBuzz(mayBuzz, notes) : ROOM_WORDS.allClear(notes);
}

/** Nothing of it would be printed. */
function isNothing(key: QuantityKey, value: number, system: UnitSystem): boolean {
  return textOf(key, Math.abs(value), system) === textOf(key, 0, system);
}

/**
 * What one note does.
 * @param string as `stringName` has it; @param note 0 = open
 */
export function noteText(string: string, note: number, room: NoteRoom, system: UnitSystem): string {
  const name = note === 0 ? ROOM_WORDS.openNote(string) : ROOM_WORDS.note(string, note);
  const mm = (value: number) => textOf('stringRoomMm', value, system);
  const isNear = isNothing('stringRoomMm', room.leastMm, system);
  const clear = isNear
    ? ROOM_WORDS.justClears(name, room.atFret)
    : ROOM_WORDS.clears(name, room.atFret, mm(room.leastMm));
  switch (buzzVerdict(room)) {
    case 'clear':
      return ROOM_WORDS.clearOnly(clear);
    case 'may-buzz':
      return isNothing('stringRoomBoundMm', room.boundMm, system)
        ? ROOM_WORDS.mayJustTouch(clear)
        : ROOM_WORDS.mayTouch(clear, textOf('stringRoomBoundMm', -room.boundMm, system));
    case 'buzzes':
      return isNear ? ROOM_WORDS.justTouches(name, room.atFret) : ROOM_WORDS.hits(name, room.atFret, mm(-room.leastMm));
  }
}

/** At which pluck the ideal string just touches; nothing where none does. */
export function buzzForceText({ buzzForceN }: Pick<NoteRoom, 'buzzForceN'>, system: UnitSystem): string {
  return Number.isFinite(buzzForceN) ? ROOM_WORDS.buzzesFrom(textOf('buzzForceN', buzzForceN, system)) : '';
}

/** For which plucks the relief lies where; nothing where it is the same to what is printed. */
function bandText({ lowMm, highMm, fromN, toN }: ReliefAim['band'], system: UnitSystem): string {
  const [low, high] = [bowText(lowMm, system), bowText(highMm, system)];
  if (low === high) return '';
  const force = (value: number) => textOf('pluckForceN', value, system);
  return ` ${ROOM_WORDS.reliefBand(force(fromN), force(toN), low, high)}`;
}

/** The relief that leaves the most room, and what a little more of it would take. */
function reliefText({ reliefMm, roomMm, costMm, band }: ReliefAim, system: UnitSystem): string {
  const bow = bowText(reliefMm, system);
  const room = textOf('bestRoomMm', Math.abs(roomMm), system);
  const most = isNothing('bestRoomMm', roomMm, system)
    ? ROOM_WORDS.bestTouches(bow)
    : roomMm < 0
      ? ROOM_WORDS.bestBuzzes(bow, room)
      : ROOM_WORDS.bestClear(bow, room);
  const best = `${most}${bandText(band, system)}`;
  // What would be printed as nothing is not worth a sentence.
  if (costMm === null || isNothing('roomCostMm', costMm, system)) return best;
  const hasRoom = roomMm > 0 && !isNothing('bestRoomMm', roomMm, system);
  const cost = hasRoom ? ROOM_WORDS.cost : ROOM_WORDS.costMore;
  return `${best} ${cost(textOf('moreReliefMm', MORE_RELIEF_MM, system), textOf('roomCostMm', costMm, system))}`;
}

/** What filing the last frets lower gains. */
export function fallText({ fallAwayMm, fromFret, roomMm }: FallAim, system: UnitSystem): string {
  const [depth, room] = [textOf('fallAwayMm', fallAwayMm, system), textOf('bestRoomMm', Math.abs(roomMm), system)];
  if (isNothing('bestRoomMm', roomMm, system)) return ROOM_WORDS.fallTouches(depth, fromFret);
  return roomMm < 0 ? ROOM_WORDS.fallBuzzes(depth, fromFret, room) : ROOM_WORDS.fallClear(depth, fromFret, room);
}

/** The other way round, in one line; nothing of relief where there is no rod to set it. */
export function aimText({ actionMm, lowestActionMm, relief }: StringAim, system: UnitSystem): string {
  const lowest = ROOM_WORDS.lowest(
    textOf('lowestActionMm', lowestActionMm, system),
    textOf('actionMm', actionMm, system),
  );
  if (relief.status === 'no-rod') return lowest;
  return `${lowest} ${relief.status === 'better' ? reliefText(relief, system) : ROOM_WORDS.asIs}`;
}
