/**
 * From how a neck is played to its set-up: the relief that leaves the most room at the action of the build, and the lowest
 * action for the line that it has. The relief is one that the rod of the settled neck reaches and that can be wanted of it.
 */
import type { Check } from '../fretwork/checks/check-types.ts';
import { describeLine, lineAt } from '../mechanics/states.ts';
import type { Build } from '../neck/build.ts';
import { parameterById } from '../neck/parameters.ts';
import type { NumberParameter } from '../neck/parameter-kinds.ts';
import { actionChangeMm, bestRelief, leastClearanceMm, lineWith } from '../playing/aim.ts';
import type { Playing } from '../playing/room.ts';
import { setUp } from '../playing/set-up.ts';
import { isWithinReach } from '../mechanics/inversion/rod.ts';
import { rodForTarget } from './job-figures.ts';
import { raisedBy } from './raised-by.ts';
import type { Reckoned } from './reckoned.ts';
import { playedLine, playingOf, type Hand } from './string-room.ts';

/** A relief beside the one that is at hand. */
export interface ReliefAim {
  readonly reliefMm: number;
  /** Least room of all notes with it, mm. */
  readonly roomMm: number;
  /** How much of that room 0.05 mm more relief takes, mm; null where so much cannot be wanted, or the rod does not reach it. */
  readonly costMm: number | null;
  /** The same relief for a somewhat softer and a somewhat harder pluck, mm, and those plucks. */
  readonly band: { readonly lowMm: number; readonly highMm: number; readonly fromN: number; readonly toN: number };
  /** What takes it over. */
  readonly change: Partial<Build>;
  /** What that would raise among the checks. */
  readonly raised: readonly Check[];
}

/** The last frets filed lower than they are, from the joint on. */
export interface FallAim {
  readonly fallAwayMm: number;
  readonly fromFret: number;
  /** Least room of all notes then, mm. */
  readonly roomMm: number;
  readonly change: Partial<Build>;
  readonly raised: readonly Check[];
}

export interface StringAim {
  /** Height of the strings over the top of fret 12, mm: as the build has it, and the least at which no note buzzes. */
  readonly actionMm: number;
  readonly lowestActionMm: number;
  /**
   * no-rod    the relief is what it is
   * as-is     none leaves more room than the one at hand, to what would be printed
   * better    this one does
   */
  /** The least fall-away that leaves the most room on the line at hand; null where none leaves more. */
  readonly fall: FallAim | null;
  readonly relief: { readonly status: 'no-rod' | 'as-is' } | ({ readonly status: 'better' } & ReliefAim);
}

/** How much more relief it is whose price is told, mm. */
export const MORE_RELIEF_MM = 0.05;
/** A strength is known no better than half way to the next: medium is anything from this share of it to its inverse. */
const STRENGTH_BAND = Math.SQRT1_2;
/** Deepest fall-away that is advised, and its steps, mm. */
const MOST_FALL_MM = 0.3;
const FALL_STEP_MM = 0.05;
/** Gains below this are not seen in hundredths. */
const LEAST_GAIN_MM = 0.005;

/** What can be wanted: in hundredths, within the range of its control. */
function wantable(reliefMm: number): number {
  const { min, max, step } = parameterById('targetReliefMm') as NumberParameter;
  const stepped = Number((Math.round(reliefMm / step) * step).toFixed(4));
  return Math.min(max, Math.max(min, stepped));
}

/** Least room once the rod is set for a relief, or as near to it as it gets, mm; and whether it gets there. */
export function roomFor(reckoned: Reckoned, targetReliefMm: number, playing: Playing) {
  const build = { ...reckoned.build, targetReliefMm };
  const rod = rodForTarget({ ...reckoned, build });
  const moment = { strung: true, days: build.settleDays, rodPercent: rod.percent };
  const { reliefMm } = lineAt(reckoned.prediction, build.method, moment);
  const neck = setUp(build, { stationXMm: reckoned.prediction.stationXMm, reliefMm });
  return { roomMm: leastClearanceMm(neck, playing), isThere: isWithinReach(rod) };
}

/** What 0.05 mm more relief takes of the room, where it can be had. */
function costOfMore(
  reckoned: Reckoned,
  { reliefMm, roomMm }: Pick<ReliefAim, 'reliefMm' | 'roomMm'>,
  playing: Playing,
) {
  const more = Number((reliefMm + MORE_RELIEF_MM).toFixed(4));
  if (wantable(more) !== more) return null;
  const wanted = roomFor(reckoned, more, playing);
  return wanted.isThere ? roomMm - wanted.roomMm : null;
}

/** The relief that leaves the most room under a pluck, as it can be wanted, mm. */
function bestReliefMm({ build, prediction }: Reckoned, playing: Playing): number {
  const { rod, stationXMm } = prediction;
  const { settled, basis } = prediction.methods[build.method];
  const [least, most] = [rod.leastPercent / 100, rod.mostPercent / 100];
  const lines = { stationXMm, baseMm: settled.reliefMm, turnMm: basis.rodMm, least, most };
  const best = lineWith(lines, bestRelief(build, lines, playing).amount);
  return wantable(describeLine(prediction, Float64Array.from(best.reliefMm)).extremeMm);
}

/** @param reliefMm of the pluck itself: it may lie beyond those of both ends */
function bandOf(reckoned: Reckoned, playing: Playing, hand: Hand, reliefMm: number): ReliefAim['band'] {
  const [fromN, toN] = hand.ownForceN
    ? (hand.ownBandN ?? [hand.ownForceN, hand.ownForceN])
    : [playing.forceN * STRENGTH_BAND, playing.forceN / STRENGTH_BAND];
  const ends = [fromN, toN].map((forceN) => bestReliefMm(reckoned, { ...playing, forceN }));
  return { lowMm: Math.min(reliefMm, ...ends), highMm: Math.max(reliefMm, ...ends), fromN, toN };
}

function fallAim(reckoned: Reckoned, playing: Playing, roomNowMm: number): FallAim | null {
  const { build, prediction } = reckoned;
  // From the joint on: before it the straightedge would find another relief, and the rod another setting.
  const fromFret = build.fallAwayMm > 0 ? build.fallAwayFromFret : build.bodyJointFret;
  if (fromFret < build.bodyJointFret || fromFret >= build.fretCount) return null;
  const line = playedLine(reckoned);
  let best: { readonly atLastFretMm: number; readonly roomMm: number } | null = null;
  for (let step = 1; step * FALL_STEP_MM <= MOST_FALL_MM - build.fallAwayMm + 1e-9; step += 1) {
    const atLastFretMm = step * FALL_STEP_MM;
    const roomMm = leastClearanceMm(setUp(build, line, { fromFret, atLastFretMm }), playing);
    if (roomMm - (best?.roomMm ?? roomNowMm) >= LEAST_GAIN_MM) best = { atLastFretMm, roomMm };
  }
  if (!best) return null;
  const fallAwayMm = Number((build.fallAwayMm + best.atLastFretMm).toFixed(4));
  const change = { fallAwayMm, fallAwayFromFret: fromFret };
  const raised = raisedBy(reckoned, { build: { ...build, ...change }, prediction });
  return { fallAwayMm, fromFret, roomMm: best.roomMm, change, raised };
}

const roomNow = (reckoned: Reckoned, playing: Playing) =>
  leastClearanceMm(setUp(reckoned.build, playedLine(reckoned)), playing);

/** The relief that leaves the most room at the action of the build. */
export function reliefAim(reckoned: Reckoned, hand: Hand): StringAim['relief'] {
  const { build, prediction } = reckoned;
  if (prediction.rod.kind === 'none') return { status: 'no-rod' };
  const playing = playingOf(build, hand);
  const reliefMm = bestReliefMm(reckoned, playing);
  const { roomMm } = roomFor(reckoned, reliefMm, playing);
  if (roomMm - roomNow(reckoned, playing) < LEAST_GAIN_MM) return { status: 'as-is' };
  // A rod that was set by hand is set for the relief wanted from then on.
  const change = { targetReliefMm: reliefMm, ...(build.rodSettingPercent === 0 ? {} : { rodSettingPercent: 0 }) };
  return {
    status: 'better',
    reliefMm,
    roomMm,
    band: bandOf(reckoned, playing, hand, reliefMm),
    costMm: costOfMore(reckoned, { reliefMm, roomMm }, playing),
    change,
    raised: raisedBy(reckoned, { build: { ...build, ...change }, prediction }),
  };
}

/** Action of the build, and the lowest at which no note buzzes, on the line that it has. */
/** Height of the strings over the top of fret 12, as the build has it, mm. */
export const actionMmOf = ({ stringHeightFret12Mm, crownHeightMm }: Build): number =>
  stringHeightFret12Mm - crownHeightMm;

export function actionsOf(reckoned: Reckoned, hand: Hand): Pick<StringAim, 'actionMm' | 'lowestActionMm'> {
  const { build } = reckoned;
  const actionMm = actionMmOf(build);
  const neck = setUp(build, playedLine(reckoned));
  return { actionMm, lowestActionMm: actionMm + actionChangeMm(neck, playingOf(build, hand)) };
}

export function stringAim(reckoned: Reckoned, hand: Hand): StringAim {
  const { build } = reckoned;
  const playing = playingOf(build, hand);
  return {
    ...actionsOf(reckoned, hand),
    fall: fallAim(reckoned, playing, roomNow(reckoned, playing)),
    relief: reliefAim(reckoned, hand),
  };
}
