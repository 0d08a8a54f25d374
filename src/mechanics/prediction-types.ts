/**
 * What the library says of a build. Plain data that can cross a worker boundary; every reader (picture, numbers,
 * chart, sheet) reads this and computes nothing of the kind itself.
 *
 * Relief: distance of the fret-top line below a straightedge laid from fret 1 to the body-joint fret.
 * Positive = forward bow (hollow), negative = back-bow (hump). All lengths mm, forces N, x from the nut.
 */
import type { Build } from '../neck/build.ts';

export type Method = Build['method'];
export const METHODS: readonly Method[] = ['press', 'glue', 'both'];

/** A fret-top line over the stations, against the straightedge. */
export interface ReliefLine {
  /** Relief at each station of `Prediction.stationXMm`; 0 at both ends of the straightedge. */
  readonly reliefMm: Float64Array;
  /** The relief of greatest size under the straightedge, with its sign. */
  readonly extremeMm: number;
  /** Where it is. */
  readonly extremeXMm: number;
  readonly atFret7Mm: number;
  readonly atFret8Mm: number;
}

/** A moment in the job. */
export interface Moment {
  /** Fret numbers that are in, in any order; undefined = all. */
  readonly fretsIn?: readonly number[];
  readonly strung: boolean;
  /** Days since the strings went on (ignored before). */
  readonly days: number;
  /** Rod setting in per cent of its range; plus bends the neck backwards. */
  readonly rodPercent: number;
  /** The line of the wood itself: what levelling took off the crowns is not taken off it. */
  readonly ofWood?: boolean;
}

export interface MethodPrediction {
  readonly method: Method;
  /** Kerf that this method works with: a glue fit is sawn so that the studs slide in. */
  readonly kerfMm: number;
  /** Wedge force of each fret right after seating, and once strung. Length = frets. */
  readonly wedgeForceN: readonly number[];
  readonly wedgeForceStrungN: readonly number[];
  /** How far the studs bite into each wall. */
  readonly biteMm: readonly number[];
  /** How far each slot is wedged open, mean over the contact depth. */
  readonly openingMm: readonly number[];
  /** Pressure of the tang's body on the slot's walls over the crushing strength of the board; 1 = the walls crush. */
  readonly wallPressureShare: readonly number[];
  /** Force to press one fret in, and to pull one out. Length = frets. */
  readonly seatingForceN: readonly number[];
  readonly pullOutForceN: readonly number[];
  /** How much more the neck gives under the strings than with unsawn slots: 0.34 = 34 % more. */
  readonly extraFlexibility: number;
  readonly fretted: ReliefLine;
  readonly strung: ReliefLine;
  readonly settled: ReliefLine;
  /** Settled, with the rod as it is set. */
  readonly rodSet: ReliefLine;
  /**
   * How the rod is set there, per cent of its range: as the build says, or, where it says nothing (0), so that the settled
   * neck has the relief wanted, or comes as near to it as the rod can bring it.
   */
  readonly rodSetPercent: number;
  /** Turns of the nut from snug to the rod's limit; 0 without a rod. */
  readonly rodTurnsAtLimit: number;
  /** The relief lines that make every state (see states.ts), over the stations. */
  readonly basis: {
    /** frets × stations: row i is what fret i + 1 does by itself, with its seating force. */
    readonly wedgeMm: Float64Array;
    /** What the strings add, on the day they go on. */
    readonly stringsMm: Float64Array;
    /** What the rod adds at its limit. */
    readonly rodMm: Float64Array;
    /** What the change of moisture adds; zero when climate is off. */
    readonly climateMm: Float64Array;
  };
}

export interface StringPrediction {
  readonly tensionN: number;
  readonly stressMPa: number;
  /** Stress over the least tensile strength of the wire (core of a wound string); above 1 it breaks. */
  readonly stressRatio: number;
  readonly unitMassKgM: number;
  readonly frequencyHz: number;
}

/** What the rod can do. */
export interface RodPrediction {
  readonly kind: Build['rodKind'];
  /** Greatest pull of the bar, N. */
  readonly limitN: number;
  readonly limitedBy: 'none' | 'wrench' | 'thread';
  /** The settings it can take, per cent of its limit. */
  readonly leastPercent: number;
  readonly mostPercent: number;
  /** On the nut at that pull, N·m. */
  readonly torqueAtLimitNm: number;
}

/** What the states need to know of time. */
export interface TimeInputs {
  readonly restDays: number;
  readonly settleDays: number;
  readonly wedgeRelaxation: number;
  /** Factor on the creep of the published curve. */
  readonly creepFactor: number;
}

export interface Prediction {
  readonly fretXMm: readonly number[];
  /** Where the lines are sampled, ascending, from the nut to the end of the board. */
  readonly stationXMm: Float64Array;
  /** Fret numbers under the ends of the straightedge. */
  readonly straightedge: { readonly fromFret: number; readonly toFret: number };
  readonly strings: readonly StringPrediction[];
  readonly stringPullN: number;
  readonly rod: RodPrediction;
  readonly time: TimeInputs;
  /** The board of a neck that is glued on with its frets in; null where they go into the finished neck. */
  readonly frettedBoard: {
    /** Wedge force of each fret while the board is clamped flat. */
    readonly clampedForceN: readonly number[];
    /** Bow of the board on the bench between its first and its last fret, hump positive. */
    readonly freeBowMm: number;
    /** Pressure of the clamps that holds it flat everywhere, MPa. */
    readonly clampPressureMPa: number;
  } | null;
  /** Relief that the neck has before fretting, over the stations; zero for a new neck. */
  readonly startingMm: Float64Array;
  /** How far the last frets are filed lower, against the straightedge, over the stations; zero without fall-away. */
  readonly fallMm: Float64Array;
  /** The state in which the crowns are levelled. */
  readonly levelledIn: Build['levelledIn'];
  readonly methods: Readonly<Record<Method, MethodPrediction>>;
}
