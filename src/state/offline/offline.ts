/**
 * The page's side of working without a network: starts the service worker, says how far it is, and tells when a new
 * version waits. The page is never loaded again unless the person asks for it.
 */
import type { OfflineStore } from './offline-store.ts';
import { TAKE_OVER } from './take-over.ts';

/** What of the page is needed; tests bring their own. */
export interface OfflinePage {
  /** Undefined where the browser has no service workers or the page did not come over a safe connection. */
  readonly workers: Pick<ServiceWorkerContainer, 'controller' | 'register' | 'addEventListener'> | undefined;
  /** Loads the page again. The draft on the bench is kept by the library and comes back with it. */
  readonly reload: () => void;
  /** Calls back from time to time, when it is worth asking the server for a new version. */
  readonly onReturn: (look: () => void) => void;
}

const WORKER_ADDRESS = './service-worker.js';

export function connectOffline(store: OfflineStore, page: OfflinePage): void {
  const { workers } = page;
  if (!workers) return;
  let waiting: ServiceWorker | undefined;
  let wantsNewVersion = false;
  // The first worker of a browser takes charge of a page that is already of its version.
  let controlled = workers.controller !== null;

  function follow(worker: ServiceWorker): void {
    const look = () => {
      if (worker.state === 'installed' && controlled) {
        waiting = worker;
        store.setState({ newVersion: 'waiting' });
      }
      if (worker.state === 'activated') store.setState({ kept: 'ready' });
      // A new version that could not be fetched whole leaves the old one in charge.
      if (worker.state === 'redundant' && !controlled) store.setState({ kept: 'failed' });
    };
    worker.addEventListener('statechange', look);
    look();
  }

  async function start(container: NonNullable<OfflinePage['workers']>): Promise<void> {
    container.addEventListener('controllerchange', () => {
      if (wantsNewVersion) page.reload();
      else if (controlled) store.setState({ newVersion: 'in-use' });
      controlled = true;
    });
    const registration = await container.register(WORKER_ADDRESS, { scope: './', updateViaCache: 'none' });
    for (const worker of [registration.active, registration.installing, registration.waiting]) {
      if (worker) follow(worker);
    }
    registration.addEventListener('updatefound', () => {
      if (registration.installing) follow(registration.installing);
    });
    // Without a network there is nothing to ask; the next visit asks again.
    page.onReturn(() => void registration.update().catch(() => undefined));
  }

  store.setState({
    kept: 'preparing',
    useNewVersion: () => {
      const { newVersion } = store.getState();
      if (newVersion === 'in-use') page.reload();
      if (newVersion !== 'waiting' || !waiting) return;
      wantsNewVersion = true;
      waiting.postMessage(TAKE_OVER);
    },
  });
  start(workers).catch(() => store.setState({ kept: 'failed' }));
}

const HOUR_MS = 3_600_000;

/** The real page. Only the built page is kept: while it is being developed every change must show. */
export function thisPage(): OfflinePage {
  return {
    workers: import.meta.env.PROD && 'serviceWorker' in navigator ? navigator.serviceWorker : undefined,
    reload: () => location.reload(),
    onReturn: (look) => {
      let last = performance.now();
      document.addEventListener('visibilitychange', () => {
        if (document.visibilityState !== 'visible' || performance.now() - last < HOUR_MS) return;
        last = performance.now();
        look();
      });
    },
  };
}
