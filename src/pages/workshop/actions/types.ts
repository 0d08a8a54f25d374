/** One thing that a person can do: it feeds the buttons, the keys, the help and the policy of undo. */
import type { BackbowState, BackbowStore } from '../../../state/store.ts';

/** A key with its modifiers, as in "Mod+Shift+Z"; Mod is Ctrl, or Command on a Mac. */
export type KeyCombo = string;

export const ACTION_GROUPS = ['project', 'edit', 'job', 'view', 'page'] as const;
export type ActionGroup = (typeof ACTION_GROUPS)[number];

export interface Action {
  readonly id: string;
  readonly group: ActionGroup;
  /** What a button says; it may name what it will do. */
  readonly label: (state: BackbowState) => string;
  readonly keys: readonly KeyCombo[];
  readonly enabled?: (state: BackbowState) => boolean;
  /** For actions that are on or off. */
  readonly pressed?: (state: BackbowState) => boolean;
  /** Does it change the build, so that it must be one step to undo? */
  readonly changesBuild: boolean;
  readonly run: (store: BackbowStore) => void | Promise<void>;
}
