/**
 * What the finite-element core needs to know of a neck: plain numbers, mm and MPa. It takes more than the controls of
 * the program offer (laminates by modulus, an empty channel), so that measured and published cases can be described too.
 */

/** Elastic constants of a wood: along the neck (x), through its depth (y), across its width (z). */
export interface NeckWood {
  /** E along the grain. */
  readonly modulusMPa: number;
  /** E through the depth over E along the grain. */
  readonly depthRatio: number;
  /** E across the width over E along the grain. */
  readonly widthRatio: number;
  /** G in the (x, y) plane over E along the grain. */
  readonly shearRatio: number;
  /** Poisson's ratio ν_xy: how much it thins through the depth under stress along the grain. */
  readonly poisson: number;
  /** ν_xz: how much across the width under stress along the grain. */
  readonly poissonWidth: number;
  /** ν_yz: how much across the width under stress through the depth. */
  readonly poissonDepthWidth: number;
}

/** A piece of the neck, from where the piece before it ends (the centre line at first) to a fraction of the half width. */
export interface NeckPiece {
  readonly toHalfWidthFraction: number;
  /** Beyond that fraction, mm: of laminates of constant width the fraction is none and this all. */
  readonly plusMm?: number;
  readonly wood: NeckWood;
}

/** A value linear in x: at the nut, and its slope. */
export interface Linear {
  readonly atNut: number;
  readonly slope: number;
}

export function linearAt(line: Linear, xMm: number): number {
  return line.atNut + line.slope * xMm;
}

/** G across the width over E along the grain: in the (x, z) and in the (y, z) plane. */
export interface WidthShears {
  readonly alongWidth: number;
  readonly depthWidth: number;
}

/** What makes the ends of the slots differ from their middle. */
export interface SlotEnds {
  readonly boardShears: WidthShears;
  /** Binding of another material than the board's, on either side, from the wood outwards to the edge. */
  readonly lines: readonly { readonly widthMm: number; readonly wood: NeckWood; readonly shears: WidthShears }[];
  /** The slot stops this far from either edge of the board, and the tang this far. */
  readonly slotShortMm: number;
  readonly tangShortMm: number;
}

/** A layer of stiff bars, down to a depth below the underside of the board. */
export interface BarLayer {
  readonly toMm: number;
  readonly metal: number;
  readonly gone: number;
}

/**
 * Slanted frets. The model's x of anything that lies across the neck is where it crosses the middle; beside it, z towards the
 * bass, it lies at x + z·tan, tan = rise/run, each linear in x.
 */
export interface Fan {
  readonly rise: Linear;
  readonly run: Linear;
  readonly boardShears: WidthShears;
  /** Of each piece of the neck. */
  readonly neckShears: readonly WidthShears[];
}

/** Tangent of the slant at x: positive where the bass end lies nearer the body. */
export function slantAt({ rise, run }: Pick<Fan, 'rise' | 'run'>, xMm: number): number {
  return linearAt(rise, xMm) / linearAt(run, xMm);
}

export interface NeckDescription {
  /** Length of the model from the nut. */
  readonly lengthMm: number;
  /** Where the neck is held and the string pull leaves it: the body joint. */
  readonly jointMm: number;
  /**
   * How it is held. `determinate`: three displacements, there and at the nut, which carry nothing, since every load is in
   * equilibrium by itself. `plane`: the whole section keeps its place along the neck (a clamped face, as in published cases).
   */
  readonly support: 'determinate' | 'plane';
  readonly fretXMm: readonly number[];
  readonly widthMm: Linear;
  readonly boardThicknessMm: number;
  /** Radius of the board; null when flat. */
  readonly boardRadiusMm: Linear | null;
  readonly totalThicknessMm: Linear;
  readonly backShoulderMm: number;
  readonly backExponent: number;
  readonly heel: { readonly thicknessMm: number; readonly lengthMm: number } | null;
  /** Removed at the centre from the underside of the board down. The width tapers with the neck's. */
  readonly channel: {
    readonly widthAtMidMm: number;
    readonly depthMm: number;
    /** Never deeper than this share of the neck below the board. */
    readonly mostShare: number;
    readonly fromMm: number;
    readonly toMm: number;
    /** As wide and as deep all along as it is said to be. */
    readonly straight?: true;
    /** A straight one is this much shallower at its ends than in its middle, along a parabola. */
    readonly risesMm?: number;
    /** Two channels, as far apart from middle to middle; else one in the middle. */
    readonly apartMm?: number;
  } | null;
  /** Bars bonded beside the channel, from the underside of the board down, over the whole length. */
  readonly bars: {
    readonly totalWidthMm: number;
    readonly depthMm: number;
    readonly modulusMPa: number;
    /**
     * What hollow bars and bars with a flange are in each layer, from the top down, as shares of their width: metal, and
     * wood that is gone. Absent where all of it is metal.
     */
    readonly layers?: readonly BarLayer[];
  } | null;
  readonly board: NeckWood;
  readonly neck: readonly NeckPiece[];
  /** Absent on a board of one wood whose slots are sawn through and whose tangs are as long. */
  readonly ends?: SlotEnds;
  /** Absent where every fret stands square. */
  readonly fan?: Fan;
  readonly slot: {
    readonly kerfMm: number;
    /** Depth at the centre line, below the board's surface. */
    readonly depthMm: number;
    readonly bottom: 'radiused' | 'flat';
    /** Depth over which the tang stands against the walls. */
    readonly contactDepthMm: number;
  };
  /** The rod's anchors; the mesh gets a column at each. Null without a rod. */
  readonly rod: { readonly startMm: number; readonly endMm: number } | null;
}

/** What stands in the slots of a mesh: nothing, wood (slots never sawn), or a filler by its modulus along the neck. */
export type SlotFilling =
  | { readonly kind: 'empty' }
  | { readonly kind: 'uncut' }
  | {
      readonly kind: 'filled';
      /** Modulus of the filled slot as one material of the mesh's kerf width, MPa. */
      readonly modulusMPa: number;
      /** Share of the slot's depth, from the top, that is filled. */
      readonly reach: number;
    };

export const EMPTY: SlotFilling = { kind: 'empty' };
export const UNCUT: SlotFilling = { kind: 'uncut' };
