/** Which parameter the hint below the controls speaks of. */
import { create } from 'zustand';
import type { Parameter } from '../../../neck/parameter-kinds.ts';

interface HintState {
  readonly parameter: Parameter | null;
  readonly point: (parameter: Parameter) => void;
}

export const useHint = create<HintState>()((set, get) => ({
  parameter: null,
  point: (parameter) => {
    if (get().parameter !== parameter) set({ parameter });
  },
}));
