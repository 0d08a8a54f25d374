/**
 * Will it buzz? The room of every string over the frets beyond each note, in the state in which the neck is played: strung,
 * settled, with the rod as it is set, and the saddle set so that fret 12 has the string height of the build.
 *
 * How hard and where a player plucks is assumed: common practice, no source.
 */
import type { TopLine } from '../playing/set-up.ts';
import { setUp } from '../playing/set-up.ts';
import type { OwnStrength } from '../playing/own-strength.ts';
import { leastRoom, roomChart, STRENGTHS_N, type LeastRoom, type NoteRoom, type Playing } from '../playing/room.ts';
import type { PluckDirection } from '../playing/swing.ts';
import { below } from '../fretwork/checks/check-making.ts';
import type { Build } from '../neck/build.ts';
import type { Reckoned } from './reckoned.ts';

export type Strength = keyof typeof STRENGTHS_N;
export const STRENGTHS = Object.keys(STRENGTHS_N) as readonly Strength[];
export const PLUCK_DIRECTIONS: readonly PluckDirection[] = ['along', 'away', 'towards'];

/** How the neck is played. */
export interface Hand {
  readonly strength: Strength;
  readonly direction: PluckDirection;
  /** The maker's own strength, which takes the place of that one; null: not wanted, undefined: there may be one. */
  readonly ownForceN?: number | null;
  /** 90 of 100 of it lie between these, N. */
  readonly ownBandN?: readonly [low: number, high: number];
}

/** A hand that plays as hard as the maker does. */
export function handOf({ forceN, p05N, p95N }: OwnStrength, direction: PluckDirection): Hand {
  return { strength: 'medium', direction, ownForceN: forceN, ownBandN: [p05N, p95N] };
}

/** Distance of the pluck from the saddle over the scale length: about half way between bridge and end of a board. */
const PLUCK_SHARE = 0.2;

export const pluckFromSaddleMm = ({ scaleLengthMm }: Pick<Build, 'scaleLengthMm'>) => PLUCK_SHARE * scaleLengthMm;

export function playingOf(build: Pick<Build, 'scaleLengthMm'>, { strength, direction, ownForceN }: Hand): Playing {
  return { forceN: ownForceN ?? STRENGTHS_N[strength], pluckMm: pluckFromSaddleMm(build), direction };
}

/** The line of the fret tops under the player's hand. */
export function playedLine({ build, prediction }: Reckoned): TopLine {
  return { stationXMm: prediction.stationXMm, reliefMm: prediction.methods[build.method].rodSet.reliefMm };
}

/**
 * buzzes     the ideal string touches a fret
 * may-buzz   it clears all of them, but the bound of its partials does not: a stiff string may touch
 * clear      neither touches
 */
export type BuzzVerdict = 'clear' | 'may-buzz' | 'buzzes';

export function buzzVerdict({ leastMm, boundMm }: Pick<NoteRoom, 'leastMm' | 'boundMm'>): BuzzVerdict {
  if (below(leastMm, 0)) return 'buzzes';
  return below(boundMm, 0) ? 'may-buzz' : 'clear';
}

export interface StringRoom {
  readonly playing: Playing;
  /** Every string (0 = the highest) and note (0 = open … the last but one fret). */
  readonly strings: readonly (readonly NoteRoom[])[];
  /** Where it buzzes first. */
  readonly least: LeastRoom;
  readonly notes: number;
  readonly buzzing: number;
  readonly mayBuzz: number;
}

export function stringRoom(reckoned: Reckoned, hand: Hand): StringRoom {
  const { build } = reckoned;
  const playing = playingOf(build, hand);
  const strings = roomChart(setUp(build, playedLine(reckoned)), playing);
  const verdicts = strings.flatMap((notes) => notes.map(buzzVerdict));
  const count = (of: BuzzVerdict) => verdicts.filter((verdict) => verdict === of).length;
  return {
    playing,
    strings,
    least: leastRoom(strings),
    notes: verdicts.length,
    buzzing: count('buzzes'),
    mayBuzz: count('may-buzz'),
  };
}
