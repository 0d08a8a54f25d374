/**
 * A lesson borrows the bench: what the person had there, with its undo, is put aside and comes back whole when the lesson
 * is left, however that happens. Putting another neck on the bench meanwhile leaves the lesson first.
 */
import type { StateCreator } from 'zustand/vanilla';
import type { Build } from '../neck/build.ts';
import { checkBuild } from '../neck/schema.ts';
import type { Outcome } from './build-slice.ts';
import { EMPTY_HISTORY } from './history.ts';
import type { BackbowState } from './store.ts';

/** What a lesson may change, and therefore gives back. */
const BORROWED = [
  'build',
  'history',
  'savedBuild',
  'rail',
  'view',
  'chart',
  'hand',
  'swungNote',
  'bowFactor',
  'trueScale',
  'comparing',
  'selectedFret',
  'lifted',
  'showRod',
  'showArrows',
  'showStress',
] as const satisfies readonly (keyof BackbowState)[];

type Borrowed = Pick<BackbowState, (typeof BORROWED)[number]>;

export interface RunningLesson {
  readonly id: string;
  /** 0 is the first. */
  readonly step: number;
  /** Is a guess asked for whose answer has not been shown yet? The page covers its numbers meanwhile. */
  readonly asking: boolean;
  /** The neck that the lesson put on the bench last, before the learner's hand; null before the first one. */
  readonly placed: Build | null;
  /** What was on the bench before. */
  readonly kept: Borrowed;
}

export interface LessonSlice {
  readonly lesson: RunningLesson | null;
  /** Puts aside what is on the bench. One that runs already is left first. */
  readonly beginLesson: (id: string) => void;
  readonly setLessonStep: (step: number, asking: boolean) => void;
  readonly setLessonAnswered: () => void;
  /** Puts the lesson's neck on the bench, without a step to undo: undo takes back what the learner changes. */
  readonly placeLessonBuild: (build: Build) => Outcome;
  /** Gives everything back. */
  readonly endLesson: () => void;
}

/** The build that is the person's own, whether it is on the bench or put aside for a lesson. */
export function ownBuild(state: Pick<BackbowState, 'build' | 'lesson'>): Build {
  return state.lesson?.kept.build ?? state.build;
}

export const createLessonSlice: StateCreator<BackbowState, [], [], LessonSlice> = (set, get) => {
  function change(values: Partial<RunningLesson>): void {
    const { lesson } = get();
    if (lesson) set({ lesson: { ...lesson, ...values } });
  }

  function endLesson(): void {
    const { lesson, viewChosen } = get();
    if (!lesson) return;
    // The camera goes home with the view.
    set({ ...lesson.kept, lesson: null, gesture: null, playing: false, viewChosen: viewChosen + 1 });
  }

  return {
    lesson: null,
    endLesson,
    beginLesson: (id) => {
      endLesson();
      get().endGesture();
      const state = get();
      const kept = Object.fromEntries(BORROWED.map((key) => [key, state[key]])) as unknown as Borrowed;
      set({ lesson: { id, step: 0, asking: false, placed: null, kept }, history: EMPTY_HISTORY, playing: false });
    },
    setLessonStep: (step, asking) => change({ step, asking }),
    setLessonAnswered: () => change({ asking: false }),
    placeLessonBuild: (build) => {
      const { lesson, necksPlaced } = get();
      if (!lesson) throw new Error('no lesson is running');
      const checked = checkBuild(build);
      if (!checked.ok) return checked;
      set({
        lesson: { ...lesson, placed: checked.build },
        build: checked.build,
        savedBuild: checked.build,
        history: EMPTY_HISTORY,
        gesture: null,
        necksPlaced: necksPlaced + 1,
      });
      return { ok: true };
    },
  };
};
