/**
 * A lesson as data: steps that do what the program's own controls do, ask for a guess, and show what is computed. A new
 * lesson is a new entry here and in its texts; it needs no new code.
 */
import type { Build } from '../../neck/build.ts';
import type { CheckCode } from '../../fretwork/checks/check-types.ts';
import type { ParameterId } from '../../neck/parameters.ts';
import type { Method } from '../../mechanics/prediction-types.ts';
import type { SceneView } from '../../scene/types.ts';
import type { ChartShown, SwungNote } from '../../state/view-slice.ts';
import type { Hand } from '../../verdict/string-room.ts';
import type { RailPosition } from '../../verdict/rail.ts';

/**
 * A number of the neck on the bench, computed when it is asked for; how it is written is known before. `method` is the
 * build's own where it is left out.
 */
export type NeckQuantity =
  /** Relief of greatest size under the straightedge, mm. */
  | { readonly q: 'relief'; readonly at: RailPosition; readonly method?: Method }
  /** Greatest distance between the fret tops and a straightedge held level from one fret to another, mm. */
  | { readonly q: 'lightUnder'; readonly fromFret: number; readonly toFret: number; readonly at: RailPosition }
  /** Light under the far end of the straightedge that relief is measured with, when it is held down on fret 1, mm. */
  | { readonly q: 'lightRocked'; readonly at: RailPosition }
  /** Fret under the far end of that straightedge. */
  | { readonly q: 'edgeEnd' }
  /** The same once settled, with the rod at the end of its range. */
  | { readonly q: 'rodReach'; readonly end: 'least' | 'most'; readonly method?: Method }
  /** Distance between those two. */
  | { readonly q: 'rodTravel'; readonly method?: Method }
  /** Mean over the frets, N. */
  | { readonly q: 'wedgeForce' | 'pullOut' | 'seatingForce'; readonly method?: Method }
  /** How much more the neck gives under its strings than with unsawn slots, per cent. */
  | { readonly q: 'extraFlexibility'; readonly method?: Method }
  /** N; and the mass that hangs as heavily, kg. */
  | { readonly q: 'stringPull' | 'stringPullKg' }
  /** Ends of one fret, mm. */
  | { readonly q: 'nip' | 'shelf' | 'wholeLines'; readonly fret: number }
  /** Widest chamfer that the crown still covers, mm. */
  | { readonly q: 'chamferRoom' }
  /** Number of the fret that goes in as the nth. */
  | { readonly q: 'nthFret'; readonly n: number }
  /** Least room of all notes, as the neck is played now, or once it is set for a relief, mm; the fret that it is over. */
  | { readonly q: 'leastRoom' | 'worstFret' }
  | { readonly q: 'roomWith'; readonly reliefMm: number }
  /** At fret 12, mm: as it is, and the least at which no note buzzes. */
  | { readonly q: 'action' | 'lowestAction' }
  | { readonly q: 'parameter'; readonly id: ParameterId };

export type Quantity =
  | NeckQuantity
  /** A number that an earlier step has remembered. */
  | { readonly q: 'remembered'; readonly name: string }
  | { readonly q: 'ratio'; readonly of: Quantity; readonly to: Quantity };

/** What a step does to the page. */
export type Act =
  | { readonly set: 'preset'; readonly id: string; readonly values?: Partial<Build> }
  | { readonly set: 'values'; readonly values: Partial<Build> }
  | { readonly set: 'rail'; readonly at: RailPosition }
  /** Plays from one moment on to another, or jumps there where motion is not wanted. */
  | { readonly set: 'play'; readonly from: RailPosition; readonly to: RailPosition }
  | { readonly set: 'view'; readonly view: SceneView }
  | { readonly set: 'chart'; readonly chart: ChartShown }
  | { readonly set: 'hand'; readonly hand: Hand }
  /** The note whose swing the picture shows, where the chart of where it buzzes is open; null = none. */
  | { readonly set: 'swing'; readonly note: SwungNote | null }
  | { readonly set: 'fret'; readonly fret: number }
  | { readonly set: 'bowFactor'; readonly factor: number }
  | { readonly set: 'comparing' | 'lifted' | 'showRod' | 'showArrows'; readonly on: boolean };

/** A guess to make before the answer is shown. */
export type Ask =
  /** Drag the line of the fret tops. */
  | { readonly kind: 'line'; readonly at: RailPosition; readonly method?: Method; readonly rangeMm: number }
  /** Pick a number. */
  | {
      readonly kind: 'value';
      readonly of: NeckQuantity;
      readonly min: number;
      readonly max: number;
      readonly step: number;
    }
  /** Pick the one that comes out greatest, or least. */
  | {
      readonly kind: 'which';
      readonly is: 'greatest' | 'least';
      readonly options: readonly { readonly id: string; readonly of: Quantity }[];
    };

/** What has to hold once a task is done. */
export type Wanted =
  /** A number between two limits, in the unit of its form; a limit may be another number of the neck. */
  | {
      readonly id: string;
      readonly of: Quantity;
      readonly atLeast?: number | Quantity;
      readonly atMost?: number | Quantity;
    }
  /** None of these checks speaks up. */
  | { readonly id: string; readonly without: readonly CheckCode[] };

/** Something to achieve by one's own hand. */
export interface Goal {
  /** What may be changed for it; everything else stays as the step has set it. */
  readonly by: readonly ParameterId[];
  readonly wanted: readonly Wanted[];
}

export interface Step {
  readonly id: string;
  /** Done when the step is opened. */
  readonly acts?: readonly Act[];
  readonly ask?: Ask;
  /** Done when the answer is shown. */
  readonly reveal?: readonly Act[];
  readonly goal?: Goal;
  /** Numbers for the texts, by the name that stands there in braces. */
  readonly facts?: Readonly<Record<string, Quantity>>;
  /** Numbers to keep for later steps. */
  readonly remember?: Readonly<Record<string, Quantity>>;
  /** A drawing of our own beside the text. */
  readonly figure?: FigureId;
}

export type FigureId = 'pulling';

export interface Lesson {
  readonly id: string;
  readonly minutes: number;
  readonly steps: readonly Step[];
}
