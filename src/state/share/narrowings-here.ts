/** What this device has measured and accepted for builds of a page that otherwise needs nothing of it. */
import { narrowing, narrowingOptions, type BandNarrowing } from '../../mechanics/bench-log/standing.ts';
import type { Build } from '../../neck/build.ts';
import { store } from '../store.ts';

export interface NarrowingsHere {
  readonly optionsOf: (build: Build) => BandNarrowing;
  readonly hashOf: (build: Build) => string | undefined;
}

export async function narrowingsHere(builds: readonly Build[]): Promise<NarrowingsHere> {
  await store.getState().readBenchLog();
  await store.getState().lookUpGrips(builds);
  return {
    optionsOf: (build) => narrowingOptions(store.getState(), build),
    hashOf: (build) => narrowing(store.getState(), build)?.hash,
  };
}
