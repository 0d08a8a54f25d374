/**
 * What may follow a held control: the state as it was when it last rested. While a thumb is held each of its steps renders
 * the neck and its numbers; what costs more (the chart, the checks, the verdict) waits until the thumb rests for a moment.
 */
import { useSyncExternalStore } from 'react';
import { store, type BackbowState, type BackbowStore } from './store.ts';

/** So long a thumb rests before what follows is drawn, ms: longer than from one of its steps to the next. */
const REST_MS = 200;

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
