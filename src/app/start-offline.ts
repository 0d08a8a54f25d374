/** Starts keeping the page in the browser, once the first numbers are there and nothing else is in a hurry. */
import { connectOffline, thisPage } from '../state/offline/offline.ts';
import { offlineStore } from '../state/offline/offline-store.ts';
import type { BackbowStore } from '../state/store.ts';

export function startOffline(store: BackbowStore): void {
  const stop = store.subscribe(({ solverStatus }) => {
    if (solverStatus === 'working') return;
    stop();
    connectOffline(offlineStore, thisPage());
  });
}
