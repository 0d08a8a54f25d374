/** How the build is looked at: nothing here changes the build or what is computed from it. */
import type { StateCreator } from 'zustand/vanilla';
import type { UnitSystem } from '../neck/units.ts';
import type { DrawnSwing, SceneView } from '../scene/types.ts';
import type { Hand } from '../verdict/string-room.ts';
import { BOW_FACTOR } from './bow-factor.ts';
import { savePreferences, type Appearance, type Preferences } from './preferences.ts';
import type { BackbowState } from './store.ts';

/** What the chart shows: the line along the neck, the relief against time, or where the strings buzz. */
export type ChartShown = 'line' | 'time' | 'room';

/** A note: string 0 = the highest, note 0 = open. */
export interface SwungNote {
  readonly string: number;
  readonly note: number;
}

export interface ViewSlice extends Preferences {
  readonly view: SceneView;
  /** Every choice of a view counts, so that choosing the same one again brings the camera back. */
  readonly viewChosen: number;
  /** How many times larger than life the bow is drawn, 1 to 200, as a hand has set it; null: as is chosen from the bow. */
  readonly bowFactor: number | null;
  /** Chosen from the bow. */
  readonly chosenFactor: number;
  /** Draws the bow at its true size, whatever the factor. */
  readonly trueScale: boolean;
  /** Are all three methods drawn in the chart, or only the chosen one? */
  readonly comparing: boolean;
  readonly chart: ChartShown;
  /** How the neck is played in the chart of where it buzzes. */
  readonly hand: Hand;
  /** The note whose swing is wanted in the picture. */
  readonly swungNote: SwungNote | null;
  /** The swing that the picture shows; the chart of where it buzzes computes it, and takes it away when it closes. */
  readonly swing: DrawnSwing | null;
  /** Fret that close-ups look at, 1 to the last. */
  readonly selectedFret: number;
  /** Fret under the pointer, in the picture or the chart. */
  readonly hoveredFret: number | null;
  /** Is the fret in view lifted out of its slot? */
  readonly lifted: boolean;
  readonly showRod: boolean;
  readonly showArrows: boolean;
  /** Is the cut across a slot coloured with the stress in the wood? */
  readonly showStress: boolean;
  readonly helpOpen: boolean;
  readonly setView: (view: SceneView) => void;
  /** @param factor null: as is chosen from the bow. @throws {RangeError} outside 1 to 200 */
  readonly setBowFactor: (factor: number | null) => void;
  readonly setTrueScale: (on: boolean) => void;
  readonly setComparing: (on: boolean) => void;
  readonly setChart: (chart: ChartShown) => void;
  readonly setHand: (change: Partial<Hand>) => void;
  readonly setSwungNote: (note: SwungNote | null) => void;
  readonly setSwing: (swing: DrawnSwing | null) => void;
  readonly selectFret: (fret: number) => void;
  readonly hoverFret: (fret: number | null) => void;
  readonly setLifted: (on: boolean) => void;
  readonly setShowRod: (on: boolean) => void;
  readonly setShowArrows: (on: boolean) => void;
  readonly setShowStress: (on: boolean) => void;
  readonly setHelpOpen: (open: boolean) => void;
  readonly setUnitSystem: (system: UnitSystem) => void;
  readonly setAppearance: (appearance: Appearance) => void;
  readonly setSingleKeys: (on: boolean) => void;
  /** Takes effect when the page starts afresh. */
  readonly setLanguage: (language: Preferences['language']) => void;
}

export const createViewSlice =
  (preferences: Preferences): StateCreator<BackbowState, [], [], ViewSlice> =>
  (set, get) => {
    function prefer(change: Partial<Preferences>): void {
      set(change);
      const { unitSystem, appearance, singleKeys, language } = get();
      savePreferences({ unitSystem, appearance, singleKeys, language });
    }
    return {
      ...preferences,
      view: 'neck',
      viewChosen: 0,
      bowFactor: null,
      chosenFactor: BOW_FACTOR.standard,
      trueScale: false,
      comparing: true,
      chart: 'line',
      hand: { strength: 'medium', direction: 'along' },
      swungNote: null,
      swing: null,
      selectedFret: 7,
      hoveredFret: null,
      lifted: false,
      showRod: false,
      showArrows: false,
      showStress: false,
      helpOpen: false,
      setView: (view) => set({ view, viewChosen: get().viewChosen + 1 }),
      setBowFactor: (factor) => {
        if (factor !== null && !(factor >= BOW_FACTOR.min && factor <= BOW_FACTOR.max)) {
          throw new RangeError(`bow factor ${factor}: it takes ${BOW_FACTOR.min} to ${BOW_FACTOR.max}`);
        }
        set({ bowFactor: factor, trueScale: false });
      },
      setTrueScale: (trueScale) => set({ trueScale }),
      setComparing: (comparing) => set({ comparing }),
      setChart: (chart) => set({ chart }),
      setHand: (change) => set({ hand: { ...get().hand, ...change } }),
      setSwungNote: (swungNote) => set({ swungNote }),
      setSwing: (swing) => set({ swing }),
      selectFret: (fret) => {
        if (fret !== get().selectedFret) set({ selectedFret: fret });
      },
      hoverFret: (fret) => {
        if (fret !== get().hoveredFret) set({ hoveredFret: fret });
      },
      setLifted: (lifted) => set({ lifted }),
      setShowRod: (showRod) => set({ showRod }),
      setShowArrows: (showArrows) => set({ showArrows }),
      setShowStress: (showStress) => set({ showStress }),
      setHelpOpen: (helpOpen) => set({ helpOpen }),
      setUnitSystem: (unitSystem) => prefer({ unitSystem }),
      setAppearance: (appearance) => prefer({ appearance }),
      setSingleKeys: (singleKeys) => prefer({ singleKeys }),
      setLanguage: (language) => prefer({ language }),
    };
  };

/** The factor with which the bow is drawn now. */
export function drawnBowFactor(state: Pick<ViewSlice, 'bowFactor' | 'chosenFactor' | 'trueScale'>): number {
  return state.trueScale ? 1 : (state.bowFactor ?? state.chosenFactor);
}
