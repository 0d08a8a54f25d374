/** The control that something else on the page points at: its group opens and it gets the focus. */
import { create } from 'zustand';

interface RevealState {
  readonly revealed: { readonly parameter: string } | null;
  readonly reveal: (parameter: string) => void;
}

export const useReveal = create<RevealState>()((set) => ({
  revealed: null,
  // A new object each time, so that pointing twice at the same control works twice.
  reveal: (parameter) => set({ revealed: { parameter } }),
}));
