/**
 * The way through the job as a row of stops: bare board, frets in one by one, strung, settling, rod set. Each stop is
 * a moment that the library can compute; nothing between two stops is invented.
 */
import type { Build } from '../neck/build.ts';
import { seatingSequence } from '../fretwork/plan/seating-order.ts';
import type { Reckoned } from './reckoned.ts';
import type { Moment } from '../mechanics/prediction-types.ts';

/** Where the job stands. `fretsIn: 'all'` stays true when the number of frets changes. */
export type RailPosition =
  | { readonly phase: 'bare' }
  | { readonly phase: 'frets'; readonly fretsIn: number | 'all' }
  | { readonly phase: 'strung' }
  | { readonly phase: 'weeks'; readonly days: number }
  | { readonly phase: 'rod' };

export type Phase = RailPosition['phase'];
export const PHASES: readonly Phase[] = ['bare', 'frets', 'strung', 'weeks', 'rod'];

/** Days after stringing that have a stop of their own: an hour to ten years, evenly on a log scale as people count. */
const DAYS = [1 / 24, 1, 7, 30, 90, 365, 3650];

type ForRail = Pick<Build, 'fretCount' | 'seatingOrder' | 'settleDays' | 'rodKind' | 'workOrder'>;

/** Is the neck never to be had with some of its frets, because its board comes to it with all of them? */
export const isBoardFirst = ({ workOrder }: Pick<Build, 'workOrder'>): boolean => workOrder === 'board-first';

/** Every stop of a build, in order. */
export function railStops(build: ForRail): RailPosition[] {
  const frets = Array.from({ length: build.fretCount }, (_, index): RailPosition => {
    const fretsIn = index + 1;
    return { phase: 'frets', fretsIn: fretsIn === build.fretCount ? 'all' : fretsIn };
  }).slice(isBoardFirst(build) ? -1 : 0);
  const days = [...new Set([...DAYS, build.settleDays])].sort((a, b) => a - b);
  return [
    { phase: 'bare' },
    ...frets,
    { phase: 'strung' },
    ...days.map((value): RailPosition => ({ phase: 'weeks', days: value })),
    ...(build.rodKind === 'none' ? [] : [{ phase: 'rod' } as const]),
  ];
}

/** The stop at which a neck is played: settled, and the rod set where there is one. */
export function playedStop({ rodKind, settleDays }: Pick<ForRail, 'rodKind' | 'settleDays'>): RailPosition {
  return rodKind === 'none' ? { phase: 'weeks', days: settleDays } : { phase: 'rod' };
}

/** Index of the stop at this position, or the nearest one when the build has changed under it. */
export function stopIndex(stops: readonly RailPosition[], position: RailPosition): number {
  const { phase } = position;
  if (phase === 'rod') return stops.length - 1;
  const inPhase = stops.flatMap((stop, index) => (stop.phase === phase ? [index] : []));
  const first = inPhase[0];
  const last = inPhase.at(-1)!;
  if (phase === 'frets') {
    return position.fretsIn === 'all' ? last : Math.min(last, first + Math.max(1, position.fretsIn) - 1);
  }
  if (phase === 'weeks') {
    const after = inPhase.find((index) => (stops[index] as { days: number }).days >= position.days);
    return after ?? last;
  }
  return first;
}

/** Number of frets that are in at a position. */
export function fretsInAt(build: ForRail, position: RailPosition): number {
  if (position.phase === 'bare') return 0;
  if (position.phase !== 'frets' || position.fretsIn === 'all' || isBoardFirst(build)) return build.fretCount;
  return Math.min(position.fretsIn, build.fretCount);
}

/**
 * The moment to compute for a position; the frets go in in the order of the build.
 * @param rodSetPercent how the rod is set at the last stop, from the prediction of the method
 */
export function momentAt(build: ForRail, position: RailPosition, rodSetPercent: number): Moment {
  const count = fretsInAt(build, position);
  const fretsIn = count === build.fretCount ? {} : { fretsIn: seatingSequence(build).slice(0, count) };
  switch (position.phase) {
    case 'bare':
    case 'frets':
      return { ...fretsIn, strung: false, days: 0, rodPercent: 0 };
    case 'strung':
      return { strung: true, days: 0, rodPercent: 0 };
    case 'weeks':
      return { strung: true, days: position.days, rodPercent: 0 };
    case 'rod':
      return { strung: true, days: build.settleDays, rodPercent: rodSetPercent };
  }
}

/** The same of a neck that was predicted, with its own way of seating. */
export function momentOf({ build, prediction }: Reckoned, position: RailPosition): Moment {
  return momentAt(build, position, prediction.methods[build.method].rodSetPercent);
}
