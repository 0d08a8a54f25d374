/**
 * The section of the neck, integrated across its width: what one point (x, y) of the plane mesh is worth.
 *
 *   c_ij(x, y) = Σ_k C_ij,k · t_k(x, y)      t_k: width of piece k in the chord of the section at that depth
 *   C = S⁻¹, S see `inPlane`
 *
 * Below the board the chord is that of the back profile (neck/neck-shape.ts) less the channels; bars add E × width of their
 * metal, and take the wood of their outline.
 * A radiused top is replaced by the flat top of equal area. Beyond the joint the section is a full rectangle, the body
 * backing it. Units: mm, MPa; c_ij in N/mm.
 */
import { backChordMm, meanSagittaMm } from '../../neck/neck-shape.ts';
import { linearAt, type BarLayer, type NeckDescription, type NeckWood } from '../description.ts';

/**
 * c11, c12, c22, c66 of a wood per mm of width, MPa: the inverse of
 *
 *   S11 = 1/E_x      S12 = −(ν_xy + ν_xz·ν_yz·E_z/E_y)/E_x      S22 = (1 − ν_yz²·E_z/E_y)/E_y      S66 = 1/G_xy
 *
 * Bending along the neck leaves the width free, and there is no stress through the depth in it: S11 is that of plane
 * stress. Strain through the depth occurs around the slots alone, over lengths that are short beside the width, which the
 * wood beside them holds: S12 and S22 are those of plane strain. That neither need be chosen is shown by a model that lets
 * the width strain as it likes (test/mechanics/elements/across-the-width.test.ts).
 */
export function inPlane(wood: NeckWood): readonly [number, number, number, number] {
  return fromCompliance(wood, 1);
}

/** The same where nothing bends as a whole and the width is held throughout: plane strain, S11 = (1 − ν_xz²·E_z/E_x)/E_x. */
export function planeStrain(wood: NeckWood): readonly [number, number, number, number] {
  return fromCompliance(wood, 1 - wood.poissonWidth ** 2 * wood.widthRatio);
}

/** @param s11 times E_x */
function fromCompliance(wood: NeckWood, s11: number): readonly [number, number, number, number] {
  const { modulusMPa: e, depthRatio, widthRatio, shearRatio, poisson, poissonWidth, poissonDepthWidth } = wood;
  const held = (poissonDepthWidth * widthRatio) / depthRatio;
  const s12 = -(poisson + poissonWidth * held);
  const s22 = (1 - poissonDepthWidth * held) / depthRatio;
  const m = s11 * s22 - s12 * s12;
  return [(e * s22) / m, (-e * s12) / m, (e * s11) / m, shearRatio * e];
}

/** A filler is isotropic; ν = 0.35 is usual for glues and matters little (assumption). */
export function fillerPlaneStress(modulusMPa: number): readonly [number, number, number, number] {
  const nu = 0.35;
  const m = 1 - nu * nu;
  return [modulusMPa / m, (nu * modulusMPa) / m, modulusMPa / m, modulusMPa / (2 * (1 + nu))];
}

export interface Section {
  readonly description: NeckDescription;
  /** Mean depth of the top below the board's crown. */
  topMm(xMm: number): number;
  slotFloorMm(xMm: number): number;
  contactFloorMm(xMm: number): number;
  channelFloorMm(xMm: number): number;
  /** Depth of the back at the centre line, heel included. */
  bottomMm(xMm: number): number;
  widthMm(xMm: number): number;
  /** Width of wood at (x, y), channel left out. */
  chordMm(xMm: number, yMm: number): number;
  /** Depths at which a layer of stiff bars ends, from the top down; empty without any. */
  readonly barFloorsMm: readonly number[];
  /** The section at x: what depends on x alone is computed once for all depths. */
  sliceAt(xMm: number): Slice;
  /** Writes c11, c12, c22, c66 at (x, y) into `out` from `at`, bars included. */
  stiffness(xMm: number, yMm: number, out: Float64Array, at: number): void;
}

export interface Slice {
  /** Width of wood at a depth, channel left out. */
  chordMm(yMm: number): number;
  /** Writes c11, c12, c22, c66 of the wood at a depth into `out` from `at`. */
  stiffness(yMm: number, out: Float64Array, at: number): void;
  /** What bars add to c11 at a depth that they reach: E_bar·width of their metal less E_wood·width of the wood that is gone, N/mm. */
  barStiffness(yMm: number): number;
  /**
   * Goes through one half of the section at a depth, from the centre line outwards: `take` is given the number of a wood (0 the
   * board, then the lines of its binding, then the pieces of the neck) and from where to where it lies, mm.
   */
  layers(yMm: number, take: TakeLayer): void;
  /** The same of bars that reach this depth, with what they have more along the neck than the wood that is gone, MPa. */
  barLayer(yMm: number, take: (modulusMPa: number, fromMm: number, toMm: number) => void): void;
}

/** A piece of the neck, up to a share of its half width. */
interface Piece {
  readonly to: number;
  /** Beyond that share, mm. */
  readonly plusMm: number;
  readonly c: readonly [number, number, number, number];
  readonly modulusMPa: number;
}

function add(out: Float64Array, at: number, c: Piece['c'], width: number): void {
  out[at] += c[0] * width;
  out[at + 1] += c[1] * width;
  out[at + 2] += c[2] * width;
  out[at + 3] += c[3] * width;
}

const pieceOf = ({ toHalfWidthFraction, plusMm = 0, wood }: NeckDescription['neck'][number]): Piece => ({
  to: toHalfWidthFraction,
  plusMm,
  c: inPlane(wood),
  modulusMPa: wood.modulusMPa,
});

/** Where a piece ends, mm from the centre, in a neck as wide as that. */
const reachOf = ({ to, plusMm }: Piece, width: number): number => (to * width) / 2 + plusMm;

/**
 * Both sides of the pieces at one depth, from the centre outwards; the outermost takes whatever is left.
 * @param half to where there is wood, beginning at `from` from the centre, mm
 */
function addPieces(
  out: Float64Array,
  at: number,
  pieces: readonly Piece[],
  width: number,
  half: number,
  from: number,
): void {
  let inner = 0;
  for (let k = 0; k < pieces.length; k += 1) {
    const piece = pieces[k];
    const outer = k === pieces.length - 1 ? half : reachOf(piece, width);
    const here = Math.min(outer, half) - Math.max(inner, from);
    if (here > 0) add(out, at, piece.c, 2 * here);
    inner = outer;
  }
}

/**
 * Stiffness along the neck of the wood whose place a bar takes, one side, N/mm. The difference of the moduli along the neck
 * is what a bar adds: of the wood that is E, not c11; c12 and c22 stay as they are, and take the difference between the two.
 * @param half half width of the section; the bar reaches from `from` to `to` from the centre, mm
 */
function displacedPerMm(pieces: readonly Piece[], width: number, half: number, from: number, to: number): number {
  let inner = 0;
  let displaced = 0;
  for (let k = 0; k < pieces.length; k += 1) {
    const outer = k === pieces.length - 1 ? half : reachOf(pieces[k], width);
    const here = Math.min(outer, to) - Math.max(inner, from);
    if (here > 0) displaced += pieces[k].modulusMPa * here;
    inner = outer;
  }
  return displaced;
}

/** The board across its width: its wood, and beside it binding of other materials. */
function boardOf({ board, ends }: NeckDescription): (out: Float64Array, at: number, width: number) => void {
  const wood = inPlane(board);
  const lines = (ends?.lines ?? []).map((line) => ({ width: 2 * line.widthMm, c: inPlane(line.wood) }));
  const boundMm = lines.reduce((sum, { width }) => sum + width, 0);
  return (out, at, width) => {
    add(out, at, wood, width - boundMm);
    for (const line of lines) add(out, at, line.c, line.width);
  };
}

/** Share of the wood below the board that lies above the row at a straight channel's floor, at most; under a channel it is less. */
const MOST_ROWS_SHARE = 0.95;

/** Depth of the channels below the underside of the board at x. @param plainDepth of the wood there, without the heel */
function channelDepthOf({ channel }: NeckDescription, plainDepth: (xMm: number) => number): (xMm: number) => number {
  if (channel === null) return () => 0;
  const { depthMm, mostShare, straight, risesMm = 0, fromMm, toMm } = channel;
  if (!straight) return (x) => Math.min(depthMm, mostShare * plainDepth(x));
  const cutMm = (x: number) => depthMm - risesMm * Math.min(1, Math.abs(2 * x - fromMm - toMm) / (toMm - fromMm)) ** 2;
  // Before and behind the channel a neck may be thinner than that is deep; the rows of the mesh stay inside the wood.
  return (x) => Math.min(cutMm(x), MOST_ROWS_SHARE * plainDepth(x));
}

const layersOf = ({ bars }: NeckDescription): readonly BarLayer[] =>
  bars === null ? [] : (bars.layers ?? [{ toMm: bars.depthMm, metal: 1, gone: 1 }]);

/** Half widths at a depth below the board, mm: of the neck, to the outer side of the channels there, and where they have a floor above. */
interface Halves {
  readonly half: (below: number) => number;
  readonly channel: (below: number, half: number) => number;
  readonly beside: number;
}

/** Where the bars of one side lie at a depth below the board, and what they add to c11 there, N/mm. */
interface BarsOfSide {
  readonly fromMm: number;
  readonly toMm: number;
  readonly addedNmm: number;
}

/** The bars of one side at a depth below the board, in a neck as wide as that; nothing where there are none. */
function barsOf(
  d: NeckDescription,
  pieces: readonly Piece[],
): (below: number, width: number, halves: Halves) => BarsOfSide | undefined {
  const layers = layersOf(d);
  const { bars } = d;
  if (bars === null) return () => undefined;
  return (below, width, halves) => {
    const layer = below < 0 ? undefined : layers.find(({ toMm }) => below <= toMm);
    if (layer === undefined) return undefined;
    const half = halves.half(below);
    const channel = halves.channel(below, half);
    const bar = Math.min((layer.gone * bars.totalWidthMm) / 2, half - channel);
    const metal = Math.min((layer.metal * bars.totalWidthMm) / 2, bar);
    // Beside the channel, and in line with that where there is none; further in where the back leaves no room.
    const from = Math.max(channel, Math.min(halves.beside, half - bar));
    const displaced = displacedPerMm(pieces, width, half, from, from + bar);
    return { fromMm: from, toMm: from + bar, addedNmm: bars.modulusMPa * metal - displaced };
  };
}

type TakeLayer = (wood: number, fromMm: number, toMm: number) => void;

/** The pieces of one side at one depth, between two distances from the centre. @param first number of the first piece */
function takePieces(
  pieces: readonly Piece[],
  width: number,
  half: number,
  from: number,
  first: number,
  take: TakeLayer,
): void {
  let inner = 0;
  for (let k = 0; k < pieces.length; k += 1) {
    const outer = k === pieces.length - 1 ? half : (pieces[k].to * width) / 2;
    const [begin, end] = [Math.max(inner, from), Math.min(outer, half)];
    if (end > begin) take(first + k, begin, end);
    inner = outer;
  }
}

/** One half of the board: its wood, and beside it the lines of its binding. */
function takeBoard({ ends }: NeckDescription, width: number, take: TakeLayer): void {
  const lines = ends?.lines ?? [];
  let inner = width / 2 - lines.reduce((sum, { widthMm: line }) => sum + line, 0);
  take(0, 0, inner);
  lines.forEach(({ widthMm: line }, k) => take(1 + k, inner, (inner += line)));
}

function takeBars(
  bars: BarsOfSide | undefined,
  take: (modulusMPa: number, fromMm: number, toMm: number) => void,
): void {
  if (bars && bars.toMm > bars.fromMm) take(bars.addedNmm / (bars.toMm - bars.fromMm), bars.fromMm, bars.toMm);
}

function stiffnessAt(slice: Slice, yMm: number, out: Float64Array, at: number): void {
  slice.stiffness(yMm, out, at);
  out[at] += slice.barStiffness(yMm);
}

export function createSection(description: NeckDescription): Section {
  const d = description;
  const addBoard = boardOf(d);
  const pieces = d.neck.map(pieceOf);
  const midWidth = linearAt(d.widthMm, d.lengthMm / 2);

  const widthMm = (x: number) => linearAt(d.widthMm, x);
  const topMm = (x: number) => (d.boardRadiusMm === null ? 0 : meanSagittaMm(linearAt(d.boardRadiusMm, x), widthMm(x)));
  const slotFloorMm = (x: number) => d.slot.depthMm + (d.slot.bottom === 'radiused' ? topMm(x) : 0);
  const contactFloorMm = (x: number) => Math.min(topMm(x) + d.slot.contactDepthMm, slotFloorMm(x));
  const plainDepth = (x: number) => linearAt(d.totalThicknessMm, x) - d.boardThicknessMm;
  const heelMm = (x: number) => {
    if (d.heel === null) return 0;
    const along = (x - (d.jointMm - d.heel.lengthMm)) / d.heel.lengthMm;
    return d.heel.thicknessMm * Math.min(1, Math.max(0, along));
  };
  const bottomMm = (x: number) => d.boardThicknessMm + plainDepth(x) + heelMm(x);
  const channelDepth = channelDepthOf(d, plainDepth);
  const channelFloorMm = (x: number) => d.boardThicknessMm + channelDepth(x);
  const barsOfSide = barsOf(d, pieces);
  const barFloorsMm = layersOf(d).map(({ toMm }) => d.boardThicknessMm + toMm);

  const sliceAt = (x: number): Slice => {
    const width = widthMm(x);
    const beyondJoint = d.heel !== null && x > d.jointMm;
    const depth = plainDepth(x) + heelMm(x);
    const hasChannel = d.channel !== null && x >= d.channel.fromMm && x <= d.channel.toMm;
    const channelTo = hasChannel ? channelDepth(x) : 0;
    const channelWidth = d.channel === null ? 0 : d.channel.widthAtMidMm * (d.channel.straight ? 1 : width / midWidth);
    const apart = d.channel?.apartMm ?? 0;
    // Of one channel both halves; of two the whole of either.
    const inner = apart > 0 ? (apart - channelWidth) / 2 : 0;
    const channelHalf = apart > 0 ? (apart + channelWidth) / 2 : channelWidth / 2;

    /** Half the width of the section at a depth below the board, and where the channel ends. */
    const halfChord = (below: number) =>
      beyondJoint ? width / 2 : backChordMm(below, depth, width, d.backShoulderMm, d.backExponent) / 2;
    const halfChannel = (below: number, half: number) => (below < channelTo ? Math.min(half, channelHalf) : 0);
    /** The wood between two channels. */
    const between = (below: number, half: number) => (below < channelTo ? Math.min(half, inner) : 0);
    const halves = { half: halfChord, channel: halfChannel, beside: channelHalf };
    const barsAt = (y: number) => barsOfSide(y - d.boardThicknessMm, width, halves);

    return {
      chordMm: (y) => {
        const below = y - d.boardThicknessMm;
        if (below < 0) return width;
        const half = halfChord(below);
        return 2 * (half - halfChannel(below, half) + between(below, half));
      },
      stiffness: (y, out, at) => {
        out[at] = out[at + 1] = out[at + 2] = out[at + 3] = 0;
        if (y < d.boardThicknessMm) return addBoard(out, at, width);
        const below = y - d.boardThicknessMm;
        const half = halfChord(below);
        addPieces(out, at, pieces, width, half, halfChannel(below, half));
        const middle = between(below, half);
        if (middle > 0) addPieces(out, at, pieces, width, middle, 0);
      },
      barStiffness: (y) => 2 * (barsAt(y)?.addedNmm ?? 0),
      barLayer: (y, take) => takeBars(barsAt(y), take),
      layers: (y, take) => {
        const below = y - d.boardThicknessMm;
        if (below < 0) return takeBoard(d, width, take);
        const half = halfChord(below);
        const first = 1 + (d.ends?.lines.length ?? 0);
        takePieces(pieces, width, between(below, half), 0, first, take);
        takePieces(pieces, width, half, halfChannel(below, half), first, take);
      },
    };
  };
  return {
    description,
    topMm,
    slotFloorMm,
    contactFloorMm,
    channelFloorMm,
    bottomMm,
    widthMm,
    chordMm: (x, y) => sliceAt(x).chordMm(y),
    barFloorsMm,
    sliceAt,
    stiffness: (x, y, out, at) => stiffnessAt(sliceAt(x), y, out, at),
  };
}
