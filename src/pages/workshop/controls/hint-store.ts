/** Which control the hint below the controls speaks of. */
import { create } from 'zustand';
import type { Parameter } from '../../../neck/parameter-kinds.ts';
import type { ControlWords } from '../../../speech/names.ts';

interface HintState {
  readonly parameter: Parameter | null;
  /** Asked for whenever it is shown: the language may change meanwhile. */
  readonly words: () => ControlWords;
  readonly point: (parameter: Parameter, words: () => ControlWords) => void;
}

export const useHint = create<HintState>()((set, get) => ({
  parameter: null,
  words: () => ({ label: '', hint: '', source: '' }),
  point: (parameter, words) => {
    if (get().parameter !== parameter) set({ parameter, words });
  },
}));
