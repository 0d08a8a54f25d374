/** Which dialog is open. One at a time; opening one closes the other. */
import type { StateCreator } from 'zustand/vanilla';
import type { BackbowState } from './store.ts';

export type DialogId =
  | 'share'
  | 'received'
  | 'library'
  | 'lessons'
  | 'glossary'
  | 'licences'
  | 'wanted'
  | 'bench-log'
  | 'refret'
  | 'proof'
  | 'compare';

export interface DialogSlice {
  readonly dialog: DialogId | null;
  readonly openDialog: (dialog: DialogId) => void;
  readonly closeDialog: () => void;
}

export const createDialogSlice: StateCreator<BackbowState, [], [], DialogSlice> = (set) => ({
  dialog: null,
  openDialog: (dialog) => set({ dialog, helpOpen: false }),
  closeDialog: () => set({ dialog: null }),
});
