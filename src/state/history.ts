/** Undo and redo over builds: whole builds are kept, which costs little because unchanged lists are shared. */
import type { Build } from '../neck/build.ts';

export interface HistoryEntry {
  /** What was done, as the undo button names it: "Kerf", "Open a project". */
  readonly label: string;
  /** The build on the other side of the step. */
  readonly build: Build;
}

export interface History {
  /** Oldest first; the last one is undone next. */
  readonly past: readonly HistoryEntry[];
  /** The last one is redone next. */
  readonly future: readonly HistoryEntry[];
}

/** Steps kept; older ones are forgotten. */
export const MAX_STEPS = 200;

export const EMPTY_HISTORY: History = { past: [], future: [] };

/** Adds a step that led away from `before`; whatever was undone can no longer be redone. */
export function recordStep(history: History, label: string, before: Build): History {
  return { past: [...history.past, { label, build: before }].slice(-MAX_STEPS), future: [] };
}

export interface Travel {
  readonly history: History;
  readonly build: Build;
  readonly label: string;
}

/** One step back from `current`, or undefined when there is none. */
export function stepBack(history: History, current: Build): Travel | undefined {
  const entry = history.past.at(-1);
  if (!entry) return undefined;
  return {
    build: entry.build,
    label: entry.label,
    history: {
      past: history.past.slice(0, -1),
      future: [...history.future, { label: entry.label, build: current }],
    },
  };
}

/** One step forward from `current`, or undefined when there is none. */
export function stepForward(history: History, current: Build): Travel | undefined {
  const entry = history.future.at(-1);
  if (!entry) return undefined;
  return {
    build: entry.build,
    label: entry.label,
    history: {
      past: [...history.past, { label: entry.label, build: current }],
      future: history.future.slice(0, -1),
    },
  };
}

/** Do two builds say the same? Lists are compared by what they hold. */
export function sameBuild(a: Build, b: Build): boolean {
  if (a === b) return true;
  const keys = Object.keys(a) as (keyof Build)[];
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => {
      const [left, right] = [a[key], b[key]];
      return left === right || (typeof left === 'object' && JSON.stringify(left) === JSON.stringify(right));
    })
  );
}
