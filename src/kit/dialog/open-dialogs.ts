/** The dialogs that are open, the last on top: whatever must be in reach meanwhile has to be inside the topmost. */
import { useSyncExternalStore } from 'react';

let open: readonly HTMLElement[] = [];
const listeners = new Set<() => void>();

function set(next: readonly HTMLElement[]): void {
  open = next;
  for (const listener of listeners) listener();
}

/** @returns takes it out again */
export function dialogOpened(dialog: HTMLElement): () => void {
  set([...open, dialog]);
  return () => set(open.filter((one) => one !== dialog));
}

export function useTopDialog(): HTMLElement | null {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => open.at(-1) ?? null,
  );
}
