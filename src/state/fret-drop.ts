/**
 * A fret goes in: it drops onto its slot, and then the neck answers. Only the fall is drawn between two computed states; the
 * bow stays that of the state before until the fret is seated, and is then that of the state after.
 */
import type { DrawnLine, LineSource } from '../scene/types.ts';
import { seatingSequence } from '../fretwork/plan/seating-order.ts';
import { createDrawnLine } from './drawn-line.ts';
import { fretsInAt, type RailPosition } from '../verdict/rail.ts';
import type { BackbowState, BackbowStore } from './store.ts';

/** From how high a fret drops, mm, and how long that takes, ms: less than a stop of the rail lasts when it is played. */
export const DROP_MM = 14;
export const DROP_MS = 130;

/** Time and frames, so that tests can make their own. */
export interface DropClock {
  readonly now: () => number;
  readonly nextFrame: (draw: () => void) => number;
  readonly cancelFrame: (id: number) => void;
  /** Is the page asked to keep still? */
  readonly isStill: () => boolean;
}

const PAGE_CLOCK: DropClock = {
  now: () => performance.now(),
  nextFrame: (draw) => requestAnimationFrame(draw),
  cancelFrame: (id) => cancelAnimationFrame(id),
  isStill: () => matchMedia('(prefers-reduced-motion: reduce)').matches,
};

type Seen = Pick<BackbowState, 'solution' | 'rail'>;

/** The fret that went in between two moments, when it was one and nothing else changed. */
function fretGoneIn(before: Seen, after: Seen): number | undefined {
  const { solution } = after;
  const isSeating = ({ phase }: RailPosition) => phase === 'bare' || phase === 'frets';
  if (!solution || before.solution !== solution || !isSeating(before.rail) || !isSeating(after.rail)) return undefined;
  const { build } = solution;
  const count = fretsInAt(build, after.rail);
  return count - fretsInAt(build, before.rail) === 1 ? seatingSequence(build)[count - 1] : undefined;
}

interface Drop {
  readonly fret: number;
  readonly startMs: number;
}

/** @returns the line with one fret on its way down; the same arrays again with every frame. `share` of the time, 0…1 */
function createFallingLine() {
  const falling: { -readonly [Key in keyof DrawnLine]: DrawnLine[Key] } = { xMm: [], reliefMm: [], factor: 1 };
  let lift = new Float64Array(0);
  return (line: DrawnLine, liftMm: ArrayLike<number>, fret: number, share: number): DrawnLine => {
    if (lift.length !== liftMm.length) lift = new Float64Array(liftMm.length);
    lift.set(liftMm);
    // It falls freely: the way grows with the square of the time.
    lift[fret - 1] = DROP_MM * (1 - share ** 2);
    return Object.assign(falling, line, { liftMm: lift });
  };
}

/** The line of the store, with the fall of each fret that goes in. */
export function createFretDrop(store: BackbowStore, clock: DropClock = PAGE_CLOCK): LineSource {
  const listeners = new Set<() => void>();
  const innerListeners = new Set<() => void>();
  let seen: Seen = store.getState();
  let shownRail = seen.rail;
  let drop: Drop | null = null;
  let frame: number | null = null;
  let stop: (() => void) | undefined;
  const falling = createFallingLine();

  const line = createDrawnLine({
    getState: () => ({ ...store.getState(), rail: shownRail }),
    subscribe: (listener) => {
      innerListeners.add(listener);
      return () => innerListeners.delete(listener);
    },
  });

  function tell(): void {
    for (const listener of listeners) listener();
  }

  function seat(): void {
    if (frame !== null) clock.cancelFrame(frame);
    frame = null;
    drop = null;
    shownRail = seen.rail;
  }

  function fall(): void {
    frame = null;
    if (!drop) return;
    if (clock.now() - drop.startMs >= DROP_MS) {
      seat();
      for (const listener of innerListeners) listener();
    } else {
      frame = clock.nextFrame(fall);
      tell();
    }
  }

  function follow(): void {
    const state = store.getState();
    if (state.rail !== seen.rail || state.solution !== seen.solution) {
      const fret = listeners.size > 0 && !clock.isStill() ? fretGoneIn(seen, state) : undefined;
      // A fret that still falls is seated: the next one starts from the neck as it is with it.
      seat();
      seen = state;
      if (fret === undefined) shownRail = state.rail;
      else {
        drop = { fret, startMs: clock.now() };
        frame = clock.nextFrame(fall);
      }
    }
    for (const listener of innerListeners) listener();
    if (drop) tell();
  }

  return {
    subscribe(listener) {
      listeners.add(listener);
      const stopLine = line.subscribe(listener);
      if (!stop) {
        follow();
        stop = store.subscribe(follow);
      }
      return () => {
        listeners.delete(listener);
        stopLine();
        if (listeners.size > 0) return;
        stop?.();
        stop = undefined;
        seat();
      };
    },
    read() {
      if (!stop) {
        seen = store.getState();
        shownRail = seen.rail;
      }
      const now = line.read();
      if (!drop || !now.liftMm) return now;
      return falling(now, now.liftMm, drop.fret, Math.min(1, (clock.now() - drop.startMs) / DROP_MS));
    },
  };
}
