import type { DrawnLine, LineSource } from './types.ts';

/** A line source that is set by hand: `set` replaces the line and tells every listener. */
export function createLineSource(first: DrawnLine): LineSource & { set(line: DrawnLine): void } {
  let current = first;
  const listeners = new Set<() => void>();
  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    read: () => current,
    set(line) {
      current = line;
      for (const listener of listeners) listener();
    },
  };
}
