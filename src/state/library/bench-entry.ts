/**
 * Which neck of the library the one on the bench comes from, if any. A neck is followed through its changes, its undo and
 * its redo; another neck put in its place comes from elsewhere.
 */
import type { Build } from '../../neck/build.ts';
import type { BackbowStore } from '../store.ts';

export interface BenchEntry {
  /** Id of the entry that the build on the bench was opened from or kept as; null when there is none. */
  readonly current: () => string | null;
  readonly set: (id: string | null) => void;
  readonly stop: () => void;
}

export function followBenchEntry(store: BackbowStore): BenchEntry {
  const origins = new WeakMap<Build, string | null>([[store.getState().build, null]]);
  const stop = store.subscribe((state, before) => {
    if (state.build === before.build) return;
    // A preset that is chosen again is another neck, though its build was on the bench before.
    if (state.necksPlaced !== before.necksPlaced) origins.set(state.build, null);
    else if (!origins.has(state.build)) origins.set(state.build, origins.get(before.build) ?? null);
  });
  return {
    current: () => origins.get(store.getState().build) ?? null,
    set: (id) => void origins.set(store.getState().build, id),
    stop,
  };
}
