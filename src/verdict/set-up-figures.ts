/**
 * What papers, files and `predict` say of the set-up: the room at each strength, plucked along the board as with a plectrum;
 * and at the maker's own, where one was measured and accepted.
 */
import type { OwnStrength } from '../playing/own-strength.ts';
import type { LeastRoom } from '../playing/room.ts';
import type { PluckDirection } from '../playing/swing.ts';
import type { Reckoned } from './reckoned.ts';
import { actionsOf } from './string-aim.ts';
import { handOf, STRENGTHS, stringRoom, type Hand, type StringRoom, type Strength } from './string-room.ts';

export const USUAL_DIRECTION: PluckDirection = 'along';

interface PluckFigures extends Pick<StringRoom, 'buzzing' | 'mayBuzz' | 'notes'> {
  readonly forceN: number;
  /** The note with the least room. */
  readonly least: LeastRoom;
  readonly lowestActionMm: number;
}

export interface StrengthFigures extends PluckFigures {
  readonly strength: Strength;
}

/** At the maker's own strength. */
export interface OwnFigures extends PluckFigures {
  readonly strength: 'own';
  readonly own: OwnStrength;
  /** Notes that buzz at the harder end of its band. */
  readonly buzzingAtMost: number;
}

export interface SetUpFigures {
  readonly actionMm: number;
  readonly pluckMm: number;
  readonly strengths: readonly StrengthFigures[];
  /** Null where none was accepted. */
  readonly own: OwnFigures | null;
  /** Room of every note at each strength, strings from the treble side to the bass side, notes from the open string on. */
  readonly rooms: Readonly<Record<Strength, StringRoom['strings']>>;
}

function pluckFigures(reckoned: Reckoned, hand: Hand, room: StringRoom): PluckFigures {
  return {
    forceN: room.playing.forceN,
    least: room.least,
    notes: room.notes,
    buzzing: room.buzzing,
    mayBuzz: room.mayBuzz,
    lowestActionMm: actionsOf(reckoned, hand).lowestActionMm,
  };
}

function ownFigures(reckoned: Reckoned, own: OwnStrength): OwnFigures {
  const hand = handOf(own, USUAL_DIRECTION);
  return {
    strength: 'own',
    own,
    ...pluckFigures(reckoned, hand, stringRoom(reckoned, hand)),
    buzzingAtMost: stringRoom(reckoned, { ...hand, ownForceN: own.p95N }).buzzing,
  };
}

/** @param own what the accepted readings of this device leave; null where there are none */
export function setUpFigures(reckoned: Reckoned, own: OwnStrength | null = null): SetUpFigures {
  const all = STRENGTHS.map((strength) => {
    const hand = { strength, direction: USUAL_DIRECTION };
    return { strength, hand, room: stringRoom(reckoned, hand) };
  });
  return {
    actionMm: actionsOf(reckoned, all[0].hand).actionMm,
    pluckMm: all[0].room.playing.pluckMm,
    strengths: all.map(({ strength, hand, room }) => ({ strength, ...pluckFigures(reckoned, hand, room) })),
    own: own && ownFigures(reckoned, own),
    rooms: Object.fromEntries(all.map(({ strength, room }) => [strength, room.strings])) as SetUpFigures['rooms'],
  };
}
