/** A moment on the rail, in words. */
import { nutTurn } from '../../../mechanics/rod.ts';
import type { Prediction } from '../../../mechanics/prediction-types.ts';
import type { Build } from '../../../neck/build.ts';
import type { Reckoned } from '../../../verdict/reckoned.ts';
import { fretsInAt, isBoardFirst, type RailPosition } from '../../../verdict/rail.ts';
import { useBackbow } from '../../../state/store.ts';
import { RAIL_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { settingText } from '../../../speech/rod.ts';
import { timeText } from '../../../speech/times.ts';

/** @param prediction that the rod's turns are taken from; without it, the rod is set but not told how far */
export function railText(build: Build, position: RailPosition, prediction?: Prediction): string {
  switch (position.phase) {
    case 'bare':
      return RAIL_WORDS.bare;
    case 'frets':
      if (isBoardFirst(build)) return RAIL_WORDS.boardOn;
      return RAIL_WORDS.frets(fretsInAt(build, position), build.fretCount);
    case 'strung':
      return RAIL_WORDS.strung;
    case 'weeks':
      return RAIL_WORDS.weeks(timeText(position.days));
    case 'rod': {
      const percent = prediction?.methods[build.method].rodSetPercent;
      const set = percent === undefined ? '' : settingText(nutTurn(prediction!, build.method, percent));
      return RAIL_WORDS.rod(timeText(build.settleDays), set);
    }
  }
}

/** The moment that the job is at, of this neck. */
export function useRailText({ build, prediction }: Reckoned): string {
  return railText(
    build,
    useBackbow((state) => state.rail),
    prediction,
  );
}
