/** The strips and readings that builds refer to, looked up on this device; loaded when a build refers to any. */
import type { StateCreator } from 'zustand/vanilla';
import type { GripsHere } from '../../mechanics/bench-log/standing.ts';
import type { Build } from '../../neck/build.ts';
import type { BackbowState } from '../store.ts';

export interface GripsSlice {
  /** By the hash of the reference; what has not been looked up is not in it. */
  readonly gripsHere: GripsHere;
  /** Looks up what these builds refer to, and goes on doing so when strips, log or what was accepted change. */
  readonly lookUpGrips: (builds: readonly Build[]) => Promise<void>;
}

export const createGripsSlice: StateCreator<BackbowState, [], [], GripsSlice> = (set, get, api) => ({
  gripsHere: {},
  lookUpGrips: async (builds) => {
    const references = builds.flatMap(({ gripReference }) => gripReference ?? []);
    const fresh = references.filter(({ hash }) => !get().gripsHere[hash]);
    if (fresh.length === 0) return;
    const { followGrips } = await import('./follow-grips.ts');
    await followGrips({ get, set, subscribe: api.subscribe, references: fresh });
  },
});
