/** Which dialog is open. One at a time; opening one closes the other. */
import type { StateCreator } from 'zustand/vanilla';
import type { ComputedKey } from '../neck/quantities.ts';
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
  | 'try-strip'
  | 'refret'
  | 'reseat'
  | 'proof'
  | 'origin'
  | 'compare';

export interface DialogSlice {
  readonly dialog: DialogId | null;
  readonly openDialog: (dialog: DialogId) => void;
  readonly closeDialog: () => void;
  /** The number that the dialog “origin” is about, and what opens it. */
  readonly originOf: ComputedKey;
  readonly showOrigin: (of: ComputedKey) => void;
}

export const createDialogSlice: StateCreator<BackbowState, [], [], DialogSlice> = (set) => ({
  dialog: null,
  openDialog: (dialog) => set({ dialog, helpOpen: false }),
  closeDialog: () => set({ dialog: null }),
  originOf: 'frettedReliefMm',
  showOrigin: (originOf) => set({ originOf, dialog: 'origin', helpOpen: false }),
});
