/** A moment on the rail, in words. */
import type { Build } from '../../../neck/build.ts';
import { formatQuantity } from '../../../speech/quantity.ts';
import { fretsInAt, type RailPosition } from '../../../verdict/rail.ts';
import { useBackbow } from '../../../state/store.ts';
import { RAIL_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { timeText } from '../../../speech/times.ts';

export function railText(build: Build, position: RailPosition): string {
  switch (position.phase) {
    case 'bare':
      return RAIL_WORDS.bare;
    case 'frets':
      return RAIL_WORDS.frets(fretsInAt(build, position), build.fretCount);
    case 'strung':
      return RAIL_WORDS.strung;
    case 'weeks':
      return RAIL_WORDS.weeks(timeText(position.days));
    case 'rod':
      return RAIL_WORDS.rod(timeText(build.settleDays), formatQuantity(build.rodSettingPercent, '%', 0, 'metric'));
  }
}

/** The moment that the job is at, of this build. */
export function useRailText(build: Build): string {
  return railText(
    build,
    useBackbow((state) => state.rail),
  );
}
