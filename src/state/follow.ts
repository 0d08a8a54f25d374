/**
 * What may follow a held control: the state as it was when it last rested. While a thumb is held each of its steps renders
 * the neck and its numbers; what costs more (the chart, the checks, the verdict) waits until the thumb rests for a moment.
 */
import { useSyncExternalStore } from 'react';
import type { Build } from '../neck/build.ts';
import type { Solution } from './solution-slice.ts';
import { isCutOpen } from './stress-view.ts';
import { store, useBackbow, type BackbowState, type BackbowStore } from './store.ts';

/** So long a thumb rests before what follows is drawn, ms: longer than from one of its steps to the next. */
const REST_MS = 300;

export interface Follower {
  readonly getState: () => BackbowState;
  readonly subscribe: (listener: () => void) => () => void;
}

/** Follows a store for as long as it is there. */
export function createFollower(of: BackbowStore): Follower {
  const listeners = new Set<() => void>();
  let rested = of.getState();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const catchUp = (): void => {
    clearTimeout(timer);
    timer = undefined;
    if (rested === of.getState()) return;
    rested = of.getState();
    for (const tell of listeners) tell();
  };
  of.subscribe((state, before) => {
    if (state.gesture === null) catchUp();
    else if (timer === undefined || state.build !== before.build) {
      clearTimeout(timer);
      timer = setTimeout(catchUp, REST_MS);
    }
  });
  return {
    getState: () => rested,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

const follower = createFollower(store);

/** Like `useBackbow`, of the state that may follow. */
export function useFollowed<T>(select: (state: BackbowState) => T): T {
  return useSyncExternalStore(follower.subscribe, () => select(follower.getState()));
}

/** What is not seen on a whole neck: the slots under the frets. */
const UNSEEN: ReadonlySet<string> = new Set<keyof Build>(['kerfMm', 'slotDepthMm']);

/** Would two builds look alike, but for what is not seen on a whole neck? */
function looksAlike(one: Build, other: Build): boolean {
  return (Object.keys(one) as (keyof Build)[]).every((key) => one[key] === other[key] || UNSEEN.has(key));
}

/**
 * The solution whose shapes the picture draws: while a thumb is held and changes nothing but what is out of sight, that of
 * before. The bow that they are drawn with is the current one all the same.
 */
export function useDrawnSolution(): Solution | null {
  const rested = useFollowed((state) => state.solution);
  return useBackbow(({ solution, view }) =>
    rested && solution && !isCutOpen(view) && looksAlike(rested.build, solution.build) ? rested : solution,
  );
}
