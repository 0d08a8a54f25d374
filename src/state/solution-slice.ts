/** What the library last said, and of which build it said it. */
import type { StateCreator } from 'zustand/vanilla';
import type { Build } from '../neck/build.ts';
import type { Uncertainty } from '../mechanics/uncertainty/types.ts';
import type { StressField } from '../mechanics/elements/stress.ts';
import type { Prediction } from '../mechanics/prediction-types.ts';
import type { Failure } from '../speech/failures.ts';
import { chosenBowFactor } from './bow-factor.ts';
import type { BackbowState } from './store.ts';

/** A prediction together with the build that it is true of. */
export interface Solution {
  readonly build: Build;
  readonly prediction: Prediction;
  /** 1 for the first, and one more for each that follows. */
  readonly version: number;
}

/** How sure the library is of a build. */
export interface Bands {
  readonly build: Build;
  readonly uncertainty: Uncertainty;
}

/** Stress around one slot of a build. */
export interface SlotStress {
  readonly build: Build;
  readonly fret: number;
  readonly field: StressField;
}

export type SolverStatus = 'working' | 'idle' | 'failed';

/** What could not be computed of the build on the bench: anything at all, or only how sure it is. */
export interface NotComputed {
  readonly what: 'prediction' | 'bands';
  readonly failure: Failure;
}

/** A passing message for the whole page. */
export interface Notice {
  readonly id: number;
  readonly kind: 'info' | 'warning' | 'error';
  readonly text: string;
  /** More lines, such as the problems of a file. */
  readonly details: readonly string[];
  /** Language of the text where it is not that of the page. */
  readonly lang?: string;
  /** A text that can be copied from the message, and what it is. */
  readonly copy?: { readonly label: string; readonly text: string };
}

export type NoticeMore = Pick<Notice, 'lang' | 'copy'>;

export interface SolutionSlice {
  /** Null before the first, and when the build on the bench could not be computed: no number of another neck stays. */
  readonly solution: Solution | null;
  /** Bands of the latest build that had any time to rest; they may be of an earlier build than the solution. */
  readonly bands: Bands | null;
  /** The last one asked for; it may be of an earlier build or another slot. */
  readonly stress: SlotStress | null;
  readonly solverStatus: SolverStatus;
  /** Null while there is an answer, or one is still to come. */
  readonly notComputed: NotComputed | null;
  readonly notices: readonly Notice[];
  readonly setSolution: (build: Build, prediction: Prediction) => void;
  readonly setBands: (build: Build, uncertainty: Uncertainty) => void;
  readonly setStress: (stress: SlotStress) => void;
  readonly setSolverStatus: (status: SolverStatus) => void;
  readonly setNotComputed: (notComputed: NotComputed) => void;
  readonly notify: (kind: Notice['kind'], text: string, details?: readonly string[], more?: NoticeMore) => void;
  readonly dismiss: (id: number) => void;
}

/** Messages on screen at once; the oldest gives way. */
const MAX_NOTICES = 4;

export const createSolutionSlice: StateCreator<BackbowState, [], [], SolutionSlice> = (set, get) => {
  let lastNotice = 0;
  let lastVersion = 0;
  return {
    solution: null,
    bands: null,
    stress: null,
    solverStatus: 'working',
    notComputed: null,
    notices: [],
    setSolution: (build, prediction) => {
      const { gesture, chosenFactor } = get();
      set({
        solution: { build, prediction, version: (lastVersion += 1) },
        notComputed: null,
        // Under a thumb it stays, so that what moves is the bow.
        chosenFactor: gesture ? chosenFactor : chosenBowFactor(chosenFactor, build, prediction),
      });
    },
    setBands: (build, uncertainty) => set({ bands: { build, uncertainty } }),
    setStress: (stress) => set({ stress }),
    setSolverStatus: (solverStatus) => {
      if (solverStatus !== get().solverStatus) set({ solverStatus, notComputed: null });
    },
    setNotComputed: (notComputed) => {
      const rest = { bands: null, solverStatus: 'failed', notComputed } as const;
      set(notComputed.what === 'bands' ? rest : { ...rest, solution: null, stress: null });
    },
    notify: (kind, text, details = [], more = {}) => {
      const others = get().notices.filter((notice) => notice.text !== text);
      set({ notices: [...others, { id: (lastNotice += 1), kind, text, details, ...more }].slice(-MAX_NOTICES) });
    },
    dismiss: (id) => set({ notices: get().notices.filter((notice) => notice.id !== id) }),
  };
};

/** The bands of the solution, or null while they are being computed. */
export function currentBands({ solution, bands }: Pick<BackbowState, 'solution' | 'bands'>): Uncertainty | null {
  return solution && bands?.build === solution.build ? bands.uncertainty : null;
}
