/**
 * The line that the picture draws. It follows the store without React: scrubbing the rail or moving the bow factor
 * computes one line into a buffer that is kept, and tells the picture.
 */
import { lineAt } from '../mechanics/states.ts';
import type { ReliefLine } from '../mechanics/prediction-types.ts';
import type { DrawnLine, LineSource } from '../scene/types.ts';
import { momentOf } from '../verdict/rail.ts';
import type { BackbowState } from './store.ts';
import { drawnBowFactor } from './view-slice.ts';

/** Nothing computed yet: a straight neck. */
const STRAIGHT: DrawnLine = { xMm: [0, 1], reliefMm: [0, 0], factor: 1 };

/** What a line is drawn from: the store, or a part of it that stands in its place. */
export interface DrawnFrom {
  readonly getState: () => Pick<BackbowState, 'solution' | 'rail' | 'bowFactor' | 'chosenFactor' | 'trueScale'>;
  readonly subscribe: (listener: () => void) => () => void;
}

/** Follows the store for as long as somebody listens. The lines belong to the build of the store's solution. */
export function createDrawnLine(store: DrawnFrom): LineSource {
  const listeners = new Set<() => void>();
  let stopFollowing: (() => void) | undefined;
  let drawn = STRAIGHT;
  let of: (Pick<BackbowState, 'solution' | 'rail'> & { factor: number }) | undefined;
  let buffer: ReliefLine | undefined;

  function refresh(): boolean {
    const state = store.getState();
    const { solution, rail } = state;
    const factor = drawnBowFactor(state);
    if (of?.solution === solution && of.rail === rail && of.factor === factor) return false;
    of = { solution, rail, factor };
    if (!solution) {
      drawn = STRAIGHT;
      return true;
    }
    const { build, prediction } = solution;
    const moment = momentOf(solution, rail);
    const reusable = buffer?.reliefMm.length === prediction.stationXMm.length ? buffer : undefined;
    buffer = lineAt(prediction, build.method, moment, reusable);
    drawn = {
      xMm: prediction.stationXMm,
      reliefMm: buffer.reliefMm,
      factor,
      ...(moment.fretsIn ? { liftMm: absentFrets(build.fretCount, moment.fretsIn) } : {}),
    };
    return true;
  }

  return {
    subscribe(listener) {
      listeners.add(listener);
      stopFollowing ??= store.subscribe(() => {
        if (refresh()) for (const tell of listeners) tell();
      });
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        stopFollowing?.();
        stopFollowing = undefined;
      };
    },
    read() {
      refresh();
      return drawn;
    },
  };
}

function absentFrets(count: number, fretsIn: readonly number[]): Float64Array {
  const lift = new Float64Array(count).fill(Infinity);
  for (const fret of fretsIn) lift[fret - 1] = 0;
  return lift;
}
