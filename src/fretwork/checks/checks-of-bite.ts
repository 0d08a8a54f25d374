/** Checks of the tang in its slot: does it bite, and how hard. Bite per wall = (width over the studs − kerf)/2. */
import type { Build } from '../../neck/build.ts';
import { above, atLeast, atMost, below, check, NO_MEASURE, PRACTICE } from './check-making.ts';
import type { Check } from './check-types.ts';
import { isEarlierGrip } from '../../neck/file.ts';
import { basedOn } from '../facts.ts';
import { seatGroups, type Seat } from '../../neck/kerf.ts';
import * as limits from './limits.ts';

function glueFit(seat: Seat, frets: readonly number[]): Check[] {
  const gap = seat.kerfMm - seat.tangWidthMm;
  if (!above(gap, limits.MOST_GLUE_GAP_MM)) return [];
  const measure = atMost('glueGapMm', limits.MOST_GLUE_GAP_MM, gap);
  return [check('loose-glue-fit', 'warn', 'kerfMm', measure, PRACTICE, { frets })];
}

function studs(build: Build, seat: Seat, frets: readonly number[]): Check[] {
  const bite = (seat.studWidthMm - seat.kerfMm) / 2;
  const least = atLeast('studBiteMm', limits.LEAST_BITE_MM, bite);
  if (!above(bite, 0)) {
    return [check('no-bite', build.method === 'press' ? 'stop' : 'warn', 'kerfMm', least, PRACTICE, { frets })];
  }
  if (below(bite, limits.LEAST_BITE_MM)) return [check('weak-bite', 'warn', 'kerfMm', least, PRACTICE, { frets })];
  if (!above(bite, limits.MOST_BITE_MM)) return [];
  const severity = above(bite, limits.SPLITTING_BITE_MM) ? 'stop' : 'warn';
  const most = atMost('studBiteMm', limits.MOST_BITE_MM, bite);
  return [check('too-tight', severity, 'kerfMm', most, PRACTICE, { frets })];
}

/** A build from a file of version 1, as long as nobody has looked at its studs. */
function earlierGrip(build: Build): Check[] {
  return isEarlierGrip(build) ? [check('earlier-grip', 'note', 'studShape', NO_MEASURE, basedOn('assumption'))] : [];
}

/** One set of findings for each slot and tang in use; without frets where all are alike. */
export function biteChecks(build: Build): Check[] {
  const groups = seatGroups(build);
  const ofSeats = groups.flatMap(({ seat, frets }) => {
    const named = groups.length === 1 ? [] : frets;
    return build.method === 'glue' ? glueFit(seat, named) : studs(build, seat, named);
  });
  return build.method === 'glue' ? ofSeats : [...ofSeats, ...earlierGrip(build)];
}
