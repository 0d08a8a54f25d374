/** The keeper of the one bench of this page. */
import { ownBuild } from '../lesson-slice.ts';
import { store } from '../store.ts';
import { createBenchKeeper } from './keep-bench.ts';

export const benchKeeper = createBenchKeeper(store, ownBuild);
