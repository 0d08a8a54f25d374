/** The build and its history: every change of the build goes through here, and is accepted whole or refused whole. */
import type { StateCreator } from 'zustand/vanilla';
import type { Build } from '../neck/build.ts';
import { PRESETS } from '../neck/presets.ts';
import type { Problem } from '../neck/problems.ts';
import { checkBuild } from '../neck/schema.ts';
import { EMPTY_HISTORY, recordStep, sameBuild, stepBack, stepForward, type History, type Travel } from './history.ts';
import type { BackbowState } from './store.ts';
import { presetBuild } from '../speech/names.ts';

/** What became of a wish to change the build. */
export type Outcome = { readonly ok: true } | { readonly ok: false; readonly problems: readonly Problem[] };

interface Gesture {
  readonly label: string;
  readonly before: Build;
}

export interface BuildSlice {
  readonly build: Build;
  readonly history: History;
  /** A drag or a held key in progress; its changes become one undo step when it ends. */
  readonly gesture: Gesture | null;
  /** Build as it was last saved or opened; null before the first time. */
  readonly savedBuild: Build | null;
  /** How many times another neck was put in the place of the one before; changes of one neck do not count. */
  readonly necksPlaced: number;

  /**
   * Changes some values of the build. Outside a gesture it is one undo step.
   * @param label what the undo button calls it
   */
  readonly change: (change: Partial<Build>, label: string) => Outcome;
  /** Puts another build in the place of this one, as one undo step. */
  readonly replaceBuild: (build: Build, label: string) => Outcome;
  readonly beginGesture: (label: string) => void;
  readonly endGesture: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly markSaved: (build: Build) => void;
}

const OK: Outcome = { ok: true };

export const createBuildSlice: StateCreator<BackbowState, [], [], BuildSlice> = (set, get) => {
  function accept(wanted: Build, label: string, isAnother = false): Outcome {
    const { build, gesture, history, necksPlaced } = get();
    if (sameBuild(wanted, build)) return OK;
    const checked = checkBuild(wanted);
    if (!checked.ok) return checked;
    set({
      // Itself, not the copy that the check made: what depends on a list sees by identity that it did not change.
      build: wanted,
      history: gesture ? history : recordStep(history, label, build),
      necksPlaced: necksPlaced + (isAnother ? 1 : 0),
    });
    return OK;
  }

  function finishGesture(): void {
    const { build, gesture, history } = get();
    if (!gesture) return;
    const moved = !sameBuild(gesture.before, build);
    set({ gesture: null, history: moved ? recordStep(history, gesture.label, gesture.before) : history });
  }

  function travel(step: (history: History, current: Build) => Travel | undefined): void {
    finishGesture();
    const { build, history } = get();
    const travelled = step(history, build);
    if (travelled) set({ build: travelled.build, history: travelled.history });
  }

  return {
    build: presetBuild(PRESETS[0]),
    history: EMPTY_HISTORY,
    gesture: null,
    savedBuild: null,
    necksPlaced: 0,
    change: (change, label) => accept({ ...get().build, ...change }, label),
    replaceBuild: (build, label) => {
      // Another neck leaves the lesson: it is placed beside the person's own, not beside the lesson's.
      if (get().lesson && checkBuild(build).ok) get().endLesson();
      finishGesture();
      return accept(build, label, true);
    },
    beginGesture: (label) => {
      finishGesture();
      set({ gesture: { label, before: get().build } });
    },
    endGesture: finishGesture,
    undo: () => travel(stepBack),
    redo: () => travel(stepForward),
    markSaved: (build) => set({ savedBuild: build }),
  };
};

/** Has the build changed since it was last saved or opened? */
export function isUnsaved(state: Pick<BackbowState, 'build' | 'savedBuild' | 'history'>): boolean {
  if (state.savedBuild) return !sameBuild(state.build, state.savedBuild);
  return state.history.past.length > 0;
}
