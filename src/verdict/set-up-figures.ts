/** What papers, files and `predict` say of the set-up: the room at each strength, plucked along the board as with a plectrum. */
import type { LeastRoom } from '../playing/room.ts';
import type { PluckDirection } from '../playing/swing.ts';
import type { Reckoned } from './reckoned.ts';
import { actionsOf } from './string-aim.ts';
import { STRENGTHS, stringRoom, type StringRoom, type Strength } from './string-room.ts';

export const USUAL_DIRECTION: PluckDirection = 'along';

export interface StrengthFigures extends Pick<StringRoom, 'buzzing' | 'mayBuzz' | 'notes'> {
  readonly strength: Strength;
  readonly forceN: number;
  /** The note with the least room. */
  readonly least: LeastRoom;
  readonly lowestActionMm: number;
}

export interface SetUpFigures {
  readonly actionMm: number;
  readonly pluckMm: number;
  readonly strengths: readonly StrengthFigures[];
  /** Room of every note at each strength, strings from the treble side to the bass side, notes from the open string on. */
  readonly rooms: Readonly<Record<Strength, StringRoom['strings']>>;
}

export function setUpFigures(reckoned: Reckoned): SetUpFigures {
  const all = STRENGTHS.map((strength) => {
    const hand = { strength, direction: USUAL_DIRECTION };
    return { strength, room: stringRoom(reckoned, hand), ...actionsOf(reckoned, hand) };
  });
  return {
    actionMm: all[0].actionMm,
    pluckMm: all[0].room.playing.pluckMm,
    strengths: all.map(({ strength, room, lowestActionMm }) => ({
      strength,
      forceN: room.playing.forceN,
      least: room.least,
      notes: room.notes,
      buzzing: room.buzzing,
      mayBuzz: room.mayBuzz,
      lowestActionMm,
    })),
    rooms: Object.fromEntries(all.map(({ strength, room }) => [strength, room.strings])) as SetUpFigures['rooms'],
  };
}
