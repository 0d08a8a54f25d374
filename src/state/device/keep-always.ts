/**
 * Browsers may throw away what a page keeps when room gets short, unless they were asked to keep it always. That is asked
 * when there is first something to keep, and not before: some ask the person.
 */
import { createStore, type StoreApi } from 'zustand/vanilla';

export type Promised =
  /** Nothing was kept yet, so nothing was asked. */
  | 'not-asked'
  | 'granted'
  /** The browser keeps it as long as it has room. */
  | 'denied'
  /** It cannot be asked here: an old browser, or an address that is neither https nor this machine. */
  | 'unavailable';

export interface KeepAlways {
  readonly state: StoreApi<Promised>;
  /** Looks whether it was promised before; asks nobody. */
  readonly look: () => Promise<void>;
  /** Asks once for each page. */
  readonly ask: () => Promise<void>;
}

/** @param manager undefined where the browser has none */
export function createKeepAlways(manager: () => Pick<StorageManager, 'persist' | 'persisted'> | undefined): KeepAlways {
  const state = createStore<Promised>(() => 'not-asked');
  let asked: Promise<void> | undefined;

  async function settle(answer: 'persist' | 'persisted', no: Promised): Promise<void> {
    try {
      const found = manager();
      if (!found?.persist || !found.persisted) state.setState('unavailable', true);
      else state.setState((await found[answer]()) ? 'granted' : no, true);
    } catch {
      state.setState('unavailable', true);
    }
  }

  return {
    state,
    look: () => asked ?? settle('persisted', 'not-asked'),
    ask: () => (asked ??= settle('persist', 'denied')),
  };
}

export const keepAlways = createKeepAlways(
  () => (globalThis.navigator as { readonly storage?: StorageManager } | undefined)?.storage,
);
