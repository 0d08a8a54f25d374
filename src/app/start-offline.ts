/** Starts keeping the page in the browser, once the first numbers are there and nothing else is in a hurry. */
import { connectOffline, pageOf } from '../state/offline/offline.ts';
import { takeAcrossReload } from '../state/offline/across-reload.ts';
import { offlineStore } from '../state/offline/offline-store.ts';
import type { BackbowStore } from '../state/store.ts';
import { OFFLINE_WORDS } from '../panels/words/offline.ts';

export function startOffline(store: BackbowStore): void {
  const kept = takeAcrossReload();
  if (kept) store.getState().replaceBuild(kept, OFFLINE_WORDS.stepKept);
  const stop = store.subscribe(({ solverStatus }) => {
    if (solverStatus === 'working') return;
    stop();
    connectOffline(offlineStore, pageOf(store));
  });
}
