/** The one store: the build and its history, how it is looked at, where the job stands, and what the library says. */
import { useStore } from 'zustand';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { createGripsSlice, type GripsSlice } from './strips/grips-slice.ts';
import { createBenchLogSlice, type BenchLogSlice } from './bench-log/bench-log-slice.ts';
import { deviceLogStorage, type LogStorage } from './bench-log/log-storage.ts';
import { createBuildSlice, type BuildSlice } from './build-slice.ts';
import { createComparisonSlice, type ComparisonSlice } from './compare/comparison-slice.ts';
import { createDialogSlice, type DialogSlice } from './dialog-slice.ts';
import { createLessonSlice, type LessonSlice } from './lesson-slice.ts';
import { loadPreferences, type Preferences } from './preferences.ts';
import { createRailSlice, type RailSlice } from './rail-slice.ts';
import { createSolutionSlice, type SolutionSlice } from './solution-slice.ts';
import { createViewSlice, type ViewSlice } from './view-slice.ts';

export type BackbowState = BuildSlice &
  ViewSlice &
  RailSlice &
  SolutionSlice &
  DialogSlice &
  ComparisonSlice &
  LessonSlice &
  BenchLogSlice &
  GripsSlice;
export type BackbowStore = StoreApi<BackbowState>;

/** A store of its own; the page uses the one below, tests make theirs. */
export function createBackbowStore(
  preferences: Preferences = loadPreferences(),
  log: LogStorage = deviceLogStorage(),
): BackbowStore {
  return createStore<BackbowState>()((...api) => ({
    ...createBuildSlice(...api),
    ...createViewSlice(preferences)(...api),
    ...createRailSlice(...api),
    ...createSolutionSlice(...api),
    ...createDialogSlice(...api),
    ...createComparisonSlice()(...api),
    ...createBenchLogSlice(log)(...api),
    ...createGripsSlice(...api),
    ...createLessonSlice(...api),
  }));
}

export const store: BackbowStore = createBackbowStore();

/** A part of the state, for a component; it renders again when that part changes. */
export function useBackbow<T>(select: (state: BackbowState) => T): T {
  return useStore(store, select);
}
