/** The page's side: what it says of the service worker, and that it is loaded again on request only. */
import { describe, expect, test, vi } from 'vitest';
import { connectOffline, type OfflinePage } from '../../../src/state/offline/offline.ts';
import { createOfflineStore } from '../../../src/state/offline/offline-store.ts';
import { TAKE_OVER } from '../../../src/state/offline/take-over.ts';

class FakeWorker extends EventTarget {
  state: ServiceWorkerState = 'installing';
  readonly postMessage = vi.fn();
  become(state: ServiceWorkerState): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class FakeRegistration extends EventTarget {
  active: FakeWorker | null = null;
  installing: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  readonly update = vi.fn(() => Promise.resolve());
  find(worker: FakeWorker): void {
    this.installing = worker;
    this.dispatchEvent(new Event('updatefound'));
  }
}

async function connect(setup: { controlled?: boolean; registration?: FakeRegistration; fails?: boolean } = {}) {
  const registration = setup.registration ?? new FakeRegistration();
  const workers = Object.assign(new EventTarget(), {
    controller: setup.controlled ? new FakeWorker() : null,
    register: vi.fn(() => (setup.fails ? Promise.reject(new Error('refused')) : Promise.resolve(registration))),
  });
  const reload = vi.fn();
  let look = (): void => undefined;
  const store = createOfflineStore();
  connectOffline(store, {
    workers: workers as unknown as OfflinePage['workers'],
    reload,
    onReturn: (callback) => {
      look = callback;
    },
  });
  await vi.waitFor(() => expect(workers.register).toHaveBeenCalled());
  await new Promise((resolve) => setTimeout(resolve));
  return { registration, workers, reload, store, look: () => look() };
}

describe('the first visit', () => {
  test('keeps the page, and the worker taking charge is no new version', async () => {
    const { registration, workers, reload, store } = await connect();
    const worker = new FakeWorker();
    expect(store.getState().kept).toBe('preparing');
    registration.find(worker);
    worker.become('installed');
    worker.become('activated');
    workers.dispatchEvent(new Event('controllerchange'));
    expect(store.getState()).toMatchObject({ kept: 'ready', newVersion: 'none' });
    expect(reload).not.toHaveBeenCalled();
  });

  test('that cannot keep the page says so', async () => {
    const { registration, store } = await connect();
    const worker = new FakeWorker();
    registration.find(worker);
    worker.become('redundant');
    expect(store.getState().kept).toBe('failed');
    expect((await connect({ fails: true })).store.getState().kept).toBe('failed');
  });

  test('without service workers changes nothing', () => {
    const store = createOfflineStore();
    connectOffline(store, { workers: undefined, reload: vi.fn(), onReturn: vi.fn() });
    store.getState().useNewVersion();
    expect(store.getState()).toMatchObject({ kept: 'not-here', newVersion: 'none' });
  });
});

describe('a new version', () => {
  async function withNewVersion() {
    const connected = await connect({ controlled: true });
    const worker = new FakeWorker();
    connected.registration.find(worker);
    worker.become('installed');
    return { ...connected, worker };
  }

  test('waits; asked for, it takes over and the page is loaded again once', async () => {
    const { workers, reload, store, worker } = await withNewVersion();
    expect(store.getState().newVersion).toBe('waiting');
    expect(worker.postMessage).not.toHaveBeenCalled();
    store.getState().useNewVersion();
    expect(worker.postMessage).toHaveBeenCalledExactlyOnceWith(TAKE_OVER);
    expect(reload).not.toHaveBeenCalled();
    workers.dispatchEvent(new Event('controllerchange'));
    expect(reload).toHaveBeenCalledTimes(1);
  });

  test('let in by another window does not load this one again until it is asked for', async () => {
    const { workers, reload, store } = await withNewVersion();
    workers.dispatchEvent(new Event('controllerchange'));
    expect(store.getState().newVersion).toBe('in-use');
    expect(reload).not.toHaveBeenCalled();
    store.getState().useNewVersion();
    expect(reload).toHaveBeenCalledTimes(1);
  });

  test('that was already waiting when the page was opened is told too', async () => {
    const registration = new FakeRegistration();
    registration.waiting = new FakeWorker();
    registration.waiting.state = 'installed';
    const { store } = await connect({ controlled: true, registration });
    expect(store.getState().newVersion).toBe('waiting');
  });

  test('that could not be fetched whole leaves the page as kept as it was', async () => {
    const registration = new FakeRegistration();
    registration.active = new FakeWorker();
    registration.active.state = 'activated';
    const { store } = await connect({ controlled: true, registration });
    const worker = new FakeWorker();
    registration.find(worker);
    worker.become('redundant');
    expect(store.getState()).toMatchObject({ kept: 'ready', newVersion: 'none' });
  });

  test('is looked for when the page is returned to, and a missing network is no trouble', async () => {
    const { registration, look } = await connect();
    registration.update.mockRejectedValueOnce(new Error('no network'));
    look();
    await new Promise((resolve) => setTimeout(resolve));
    expect(registration.update).toHaveBeenCalledTimes(1);
  });
});
