/**
 * The service worker: answers the page from the files kept in the browser. It never takes the place of a running version
 * by itself; the page asks for that when the person has agreed. Stands alone: it is fetched as one plain script.
 */
import { createKeeper } from './keeper.ts';
import type { KeptFile } from './kept-file.ts';
import { TAKE_OVER } from './take-over.ts';

/** Written in when the page is built. */
declare const __KEPT_FILES__: readonly KeptFile[];

interface LastingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface AskingEvent extends LastingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface WorkerEvents {
  install: LastingEvent;
  activate: LastingEvent;
  fetch: AskingEvent;
  message: MessageEvent<unknown>;
}

/** The parts of a service worker's surroundings that are used here (W3C Service Workers). */
interface Surroundings {
  addEventListener<K extends keyof WorkerEvents>(type: K, listener: (event: WorkerEvents[K]) => void): void;
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
}

const here = self as unknown as Surroundings;
const keeper = createKeeper(__KEPT_FILES__, {
  caches,
  fetch: (request) => fetch(request),
  scope: here.registration.scope,
});

here.addEventListener('install', (event) => event.waitUntil(keeper.keep()));

here.addEventListener('activate', (event) => event.waitUntil(keeper.forgetOld().then(() => here.clients.claim())));

here.addEventListener('fetch', (event) => {
  if (keeper.covers(event.request)) event.respondWith(keeper.answer(event.request));
});

here.addEventListener('message', (event) => {
  if (event.data === TAKE_OVER) void here.skipWaiting();
});
