/**
 * What the first months do to a set-up: a neck that is set up on the day it is strung, with the rod for the relief wanted on
 * that day or as near as it comes, and is then left alone until it has settled. Nut and saddle stay where they were set.
 */
import { lineAt } from '../mechanics/states.ts';
import { solveRod } from '../mechanics/inversion/rod.ts';
import { leastRoom, roomChart } from '../playing/room.ts';
import { actionMm, afterwards, setUp, type SetUp, type TopLine } from '../playing/set-up.ts';
import type { Reckoned } from './reckoned.ts';
import { buzzVerdict, playingOf, STRENGTHS, type Hand, type Strength } from './string-room.ts';

interface Then {
  /** Height of the strings over the top of fret 12, mean of bass and treble side, mm. */
  readonly actionMm: number;
  /** Least room of all notes, played medium, mm. */
  readonly roomMm: number;
  /** The hardest playing at which no note buzzes; null where some do even softly played. */
  readonly cleanTo: Strength | null;
}

export interface OverMonths {
  readonly strung: Then;
  readonly settled: Then;
}

function thenOf(reckoned: Reckoned, neck: SetUp, direction: Hand['direction']): Then {
  const charts = STRENGTHS.map((strength) => ({
    strength,
    rooms: roomChart(neck, playingOf(reckoned.build, { strength, direction })),
  }));
  const isClean = ({ rooms }: (typeof charts)[number]) => rooms.flat().every((note) => buzzVerdict(note) !== 'buzzes');
  const outer = [neck.strings[0], neck.strings.at(-1)!].map((string) => actionMm(string, 12));
  return {
    actionMm: (outer[0] + outer[1]) / 2,
    roomMm: leastRoom(charts[STRENGTHS.indexOf('medium')].rooms).leastMm,
    cleanTo: charts.findLast(isClean)?.strength ?? null,
  };
}

export function overMonths(reckoned: Reckoned, direction: Hand['direction']): OverMonths {
  const { build, prediction } = reckoned;
  const { method } = build;
  const rodPercent =
    build.rodSettingPercent || solveRod(prediction, method, { reliefMm: build.targetReliefMm, when: 'strung' }).percent;
  const after = (days: number): TopLine => ({
    stationXMm: prediction.stationXMm,
    reliefMm: lineAt(prediction, method, { strung: true, days, rodPercent }).reliefMm,
  });
  const first = after(0);
  return {
    strung: thenOf(reckoned, setUp(build, first), direction),
    settled: thenOf(reckoned, afterwards(build, first, after(build.settleDays)), direction),
  };
}
