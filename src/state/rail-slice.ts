/** Where on the rail the job stands, and playing it. The clock belongs to the panel; here is only what is so. */
import type { StateCreator } from 'zustand/vanilla';
import { railStops, stopIndex, type RailPosition } from '../verdict/rail.ts';
import type { BackbowState } from './store.ts';

export interface RailSlice {
  readonly rail: RailPosition;
  readonly playing: boolean;
  readonly setRail: (position: RailPosition) => void;
  /** Moves by whole stops; stops at the ends. @returns whether it moved */
  readonly stepRail: (stops: number) => boolean;
  /** Playing from the last stop begins again at the first. */
  readonly setPlaying: (playing: boolean) => void;
}

export const createRailSlice: StateCreator<BackbowState, [], [], RailSlice> = (set, get) => ({
  rail: { phase: 'frets', fretsIn: 'all' },
  playing: false,
  setRail: (rail) => set({ rail }),
  stepRail: (steps) => {
    const { build, rail } = get();
    const stops = railStops(build);
    const from = stopIndex(stops, rail);
    const to = Math.max(0, Math.min(stops.length - 1, from + steps));
    if (to === from) return false;
    set({ rail: stops[to] });
    return true;
  },
  setPlaying: (playing) => {
    const { build, rail } = get();
    const stops = railStops(build);
    const atEnd = stopIndex(stops, rail) === stops.length - 1;
    set(playing && atEnd ? { playing, rail: stops[0] } : { playing });
  },
});
