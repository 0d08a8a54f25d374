/**
 * Two or three necks beside each other. One of them may be the one on the bench: it follows every change of the build, and
 * undo. The others stay as they were when they were put here. Nothing here changes the build but choosing and copying,
 * each one step of the build's own history.
 */
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Build } from '../../neck/build.ts';
import type { Outcome } from '../build-slice.ts';
import { sameBuild } from '../history.ts';
import { MOST_SHARED } from '../share/shared.ts';
import type { BackbowStore } from '../store.ts';

/** As many as one link holds. */
export const MOST_COMPARED = MOST_SHARED;
export const LEAST_COMPARED = 2;

export interface Comparison {
  /** None yet, or two or three checked builds. The others are measured against the first. */
  readonly builds: readonly Build[];
  /** Which of them is the one on the bench; null when none is. */
  readonly bench: number | null;
}

export interface PageComparison {
  readonly state: StoreApi<Comparison>;
  /** @throws {RangeError} for fewer than two necks, or more than three */
  readonly compare: (builds: readonly Build[]) => void;
  /** Puts a neck in a place, or in the one after the last. @throws {RangeError} for a place that there is not */
  readonly put: (place: number, build: Build) => void;
  /** @throws {RangeError} when fewer than two would stay, and as `put` */
  readonly remove: (place: number) => void;
  readonly swap: (one: number, other: number) => void;
  /** Makes a neck the one on the bench, as one step of the history. */
  readonly choose: (place: number, label: string) => Outcome;
  /** Gives the neck on the bench some settings of another, as one step of the history. */
  readonly copy: (place: number, settings: readonly (keyof Build)[], label: string) => Outcome;
}

/** Which neck is on the bench: the one that was, if it is the same still; else any that is. */
function placeOf(builds: readonly Build[], bench: Build, before: number | null): number | null {
  if (before !== null && builds[before] && sameBuild(builds[before], bench)) return before;
  const found = builds.findIndex((build) => sameBuild(build, bench));
  return found < 0 ? null : found;
}

/** The comparison after the build on the bench has changed. */
export function followBench({ builds, bench }: Comparison, build: Build): Comparison {
  const place = placeOf(builds, build, bench);
  if (place !== null || bench === null) return { builds, bench: place };
  return { builds: builds.map((old, index) => (index === bench ? build : old)), bench };
}

export function createComparison(store: BackbowStore): PageComparison {
  const state = createStore<Comparison>(() => ({ builds: [], bench: null }));

  store.subscribe(({ build }, before) => {
    if (build !== before.build && state.getState().builds.length > 0) {
      state.setState(followBench(state.getState(), build), true);
    }
  });

  function set(builds: readonly Build[], before: number | null): void {
    if (builds.length < LEAST_COMPARED || builds.length > MOST_COMPARED) {
      throw new RangeError(`${builds.length} necks to compare: it takes ${LEAST_COMPARED} to ${MOST_COMPARED}`);
    }
    state.setState({ builds, bench: placeOf(builds, store.getState().build, before) }, true);
  }

  function at(place: number): Build {
    const build = state.getState().builds[place];
    if (!build) throw new RangeError(`there is no neck in place ${place + 1} of the comparison`);
    return build;
  }

  return {
    state,
    compare: (builds) => set(builds, null),
    put: (place, build) => {
      const { builds, bench } = state.getState();
      if (place !== builds.length) at(place);
      set([...builds.slice(0, place), build, ...builds.slice(place + 1)], bench === place ? null : bench);
    },
    remove: (place) => {
      at(place);
      set(
        state.getState().builds.filter((_, index) => index !== place),
        null,
      );
    },
    swap: (one, other) => {
      const { builds, bench } = state.getState();
      const [first, second] = [at(one), at(other)];
      const moved = bench === one ? other : bench === other ? one : bench;
      set(
        builds.map((build, index) => (index === one ? second : index === other ? first : build)),
        moved,
      );
    },
    choose: (place, label) => store.getState().replaceBuild(at(place), label),
    copy: (place, settings, label) => {
      const from = at(place);
      return store.getState().change(Object.fromEntries(settings.map((key) => [key, from[key]])), label);
    },
  };
}
