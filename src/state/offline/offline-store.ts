/** How far the page is with working without a network, and whether a new version of it waits. */
import { createStore, type StoreApi } from 'zustand/vanilla';

export interface Offline {
  /** Is everything the page needs kept in this browser? */
  readonly kept: 'not-here' | 'preparing' | 'ready' | 'failed';
  /** A new version waits to be let in, or another window has already let it in. */
  readonly newVersion: 'none' | 'waiting' | 'in-use';
  /** What was put off: it is not asked about again. */
  readonly putOff: Offline['newVersion'];
  /** Loads the page again in its new version. Does nothing when there is none. */
  readonly useNewVersion: () => void;
}

export type OfflineStore = StoreApi<Offline>;

export function createOfflineStore(): OfflineStore {
  return createStore<Offline>()(() => ({
    kept: 'not-here',
    newVersion: 'none',
    putOff: 'none',
    useNewVersion: () => undefined,
  }));
}

export const offlineStore = createOfflineStore();
