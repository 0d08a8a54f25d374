/** The worker itself, by a module that imports nothing: it can be on its way before the rest of the page has come. */

const early = new Map<string, Worker>();

const create = (name: string): Worker =>
  new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name });

/** Starts a worker that somebody will ask for soon. */
export function startEarly(name: string): void {
  if (!early.has(name)) early.set(name, create(name));
}

/** @param name what tools for developers call it */
export function newSolverWorker(name: string): Worker {
  const started = early.get(name);
  early.delete(name);
  return started ?? create(name);
}
