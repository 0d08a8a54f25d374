/** Where the stops of the rail lie along its track: the frets get room to be seen going in, the rest is spread evenly. */
import { PHASES, type Phase, type RailPosition } from '../../../verdict/rail.ts';

/** Start and end of each phase, as shares of the track. */
const SPANS: Readonly<Record<Phase, readonly [number, number]>> = {
  bare: [0, 0],
  frets: [0.2, 0.52],
  strung: [0.63, 0.63],
  weeks: [0.74, 0.88],
  rod: [1, 1],
};

export interface PhaseSpan {
  readonly phase: Phase;
  /** Indices of its stops. */
  readonly first: number;
  readonly last: number;
  /** Shares of the track. */
  readonly from: number;
  readonly to: number;
}

/** The phases that a row of stops has, in order. */
export function phaseSpans(stops: readonly RailPosition[]): PhaseSpan[] {
  return PHASES.flatMap((phase) => {
    const indices = stops.flatMap((stop, index) => (stop.phase === phase ? [index] : []));
    if (indices.length === 0) return [];
    const [from, to] = SPANS[phase];
    const reachesEnd = indices.at(-1) === stops.length - 1;
    return [{ phase, first: indices[0], last: indices.at(-1)!, from, to: reachesEnd ? 1 : to }];
  });
}

/** Place of every stop, as a share of the track, ascending. */
export function stopPlaces(stops: readonly RailPosition[]): number[] {
  return phaseSpans(stops).flatMap(({ first, last, from, to }) =>
    Array.from({ length: last - first + 1 }, (_, index) =>
      last === first ? to : from + ((to - from) * index) / (last - first),
    ),
  );
}

/** Index of the stop that lies nearest to a place. */
export function nearestStop(places: readonly number[], place: number): number {
  let best = 0;
  for (let index = 1; index < places.length; index += 1) {
    if (Math.abs(places[index] - place) < Math.abs(places[best] - place)) best = index;
  }
  return best;
}
