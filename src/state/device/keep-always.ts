/**
 * Browsers may throw away what a page keeps when room gets short, unless they were asked to keep it always. That is asked
 * when there is first something to keep, and not before: some ask the person. It is asked once on a device, and again only
 * when the person wants it.
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
  /** Asks, if this device has not been asked before. */
  readonly ask: () => Promise<void>;
  /** Asks, whatever was answered before. */
  readonly askAgain: () => Promise<void>;
}

const KEY = 'backbow.asked-to-keep';

type Memory = Pick<Storage, 'getItem' | 'setItem'>;

/**
 * @param manager undefined where the browser has none
 * @param memory where it is remembered that it was asked; may throw
 */
export function createKeepAlways(
  manager: () => Pick<StorageManager, 'persist' | 'persisted'> | undefined,
  memory: () => Memory,
): KeepAlways {
  const state = createStore<Promised>(() => 'not-asked');
  let asked: Promise<void> | undefined;

  function wasAsked(): boolean {
    try {
      return memory().getItem(KEY) !== null;
    } catch {
      return false;
    }
  }

  function rememberAsking(): void {
    try {
      memory().setItem(KEY, '1');
    } catch {
      // It is asked again in the next page.
    }
  }

  async function settle(mayAsk: boolean): Promise<void> {
    try {
      const found = manager();
      if (!found?.persist || !found.persisted) {
        state.setState('unavailable', true);
        return;
      }
      let promised = await found.persisted();
      if (!promised && mayAsk) {
        rememberAsking();
        promised = await found.persist();
      }
      state.setState(promised ? 'granted' : wasAsked() || mayAsk ? 'denied' : 'not-asked', true);
    } catch {
      state.setState('unavailable', true);
    }
  }

  return {
    state,
    look: () => asked ?? settle(false),
    ask: () => (asked ??= settle(!wasAsked())),
    askAgain: () => (asked = settle(true)),
  };
}

export const keepAlways = createKeepAlways(
  () => (globalThis.navigator as { readonly storage?: StorageManager } | undefined)?.storage,
  () => localStorage,
);
