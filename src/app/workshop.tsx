/** Starts the workshop: the bench with its neck, the numbers, the controls. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { listenToKeys } from '../pages/workshop/actions/keys.ts';
import { benchKeeper } from '../state/journal/page-keeper.ts';
import { routeOf } from '../state/share/address.ts';
import { connectSolver } from '../state/solver.ts';
import { store } from '../state/store.ts';
import { App } from './app.tsx';
import { followAddress } from './follow-address.ts';
import { PartBoundary } from './part-boundary.tsx';
import { publishProbe } from './probe.ts';
import { START_WORDS } from '../speech/start-words.ts';
import { startOffline } from './start-offline.ts';
import type { Language } from '../speech/language.ts';

/** @param missing the language whose words did not come */
export async function startWorkshop(root: HTMLElement, missing: Language | null): Promise<void> {
  publishProbe(store);
  startOffline(store);
  await benchKeeper.restore(routeOf(location.hash) === null);
  benchKeeper.follow();
  await followAddress(store);
  if (missing) store.getState().notify('warning', START_WORDS[missing].wordsMissing, [], { lang: missing });
  connectSolver(store);
  void store.getState().readBenchLog();
  listenToKeys(store, window);
  createRoot(root).render(
    <StrictMode>
      <PartBoundary>
        <App />
      </PartBoundary>
    </StrictMode>,
  );
}
