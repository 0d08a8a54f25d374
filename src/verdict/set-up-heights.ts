/** The heights to set on a neck that is strung and settled, with the rod as it is set, string by string. */
import { stringHeights, type StringHeights } from '../playing/heights.ts';
import { actionMm, afterwards, setUp } from '../playing/set-up.ts';
import type { Reckoned } from './reckoned.ts';
import { playedLine } from './string-room.ts';

export interface SetUpHeights {
  /** From the highest string to the lowest. */
  readonly strings: readonly StringHeights[];
  /** What a full turn of the rod's nut, the way that bends the neck backwards, changes the action at fret 12 by, mm; null without a rod. */
  readonly actionPerTurnMm: number | null;
}

function actionPerTurnMm(reckoned: Reckoned): number | null {
  const { build, prediction } = reckoned;
  const { basis, rodTurnsAtLimit } = prediction.methods[build.method];
  if (rodTurnsAtLimit === 0) return null;
  const line = playedLine(reckoned);
  const turned = {
    stationXMm: line.stationXMm,
    reliefMm: basis.rodMm.map((mm, i) => line.reliefMm[i] + mm / rodTurnsAtLimit),
  };
  const neck = afterwards(build, line, turned);
  // All strings move alike: the nut and the saddle carry all of them.
  return actionMm(neck.strings[0], 12) - actionMm(setUp(build, line).strings[0], 12);
}

/** Relief and action under one string as predicted, in hundredths: what a reading of this neck starts from. */
export function stringLineHeights({ build, prediction }: Reckoned, string: number) {
  const { extremeMm } = prediction.methods[build.method].rodSet;
  const { actionMm: action } = stringHeights(setUp(build, playedLine({ build, prediction })), build.bodyJointFret)[
    string
  ];
  return { reliefMm: Number(extremeMm.toFixed(2)), actionMm: Number(action.toFixed(2)) };
}

export function setUpHeights(reckoned: Reckoned): SetUpHeights {
  const { build } = reckoned;
  const strings = stringHeights(setUp(build, playedLine(reckoned)), build.bodyJointFret);
  return { strings, actionPerTurnMm: actionPerTurnMm(reckoned) };
}
