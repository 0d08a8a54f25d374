/**
 * A try strip: an offcut of the board with a few slots, in which frets bow it some thirty times as much as a neck.
 *
 *   wedge j     1 N on each wall of slot j, uniform over contact depth and width
 *   weight      1 N down at the middle between two supports, the slots empty
 *
 * Kept of each: the line of the underside, hump up positive, and the mean opening of every slot over the contact depth.
 *
 * State of stress: the wedges of a strip balance each other within a thickness or two of their slots, which is short beside
 * the width, so the wood is held across it: plane strain. A weight bends the strip as a whole: the constants of the neck
 * (section.ts). Both follow from a model that lets the width strain as it likes, and lie within 0.3 % of it
 * (test/mechanics/strip/strip.test.ts); solids of two strips agree to 1 %.
 *
 * The elements and the banded solver are those of the neck, the mesh is the strip's own.
 */
import {
  bandLength,
  bandStride,
  blockIndex,
  createBlock,
  factorise,
  LANES,
  solveBlock,
  type BandFactor,
  type BandShape,
} from '../elements/banded.ts';
import { elementStiffness, elementWork } from '../elements/element.ts';
import { inPlane, planeStrain } from '../elements/section.ts';
import type { NeckWood } from '../description.ts';
import { sampleLine } from '../relief.ts';
import { stripMesh, type StripMesh, type StripRefinement } from './strip-mesh.ts';

export interface StripDescription {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  /** Middles of the slots from one end, ascending. */
  readonly slotXMm: readonly number[];
  readonly kerfMm: number;
  readonly slotDepthMm: number;
  /** Depth over which the tang stands against the walls; less than the depth of the slot. */
  readonly contactDepthMm: number;
  readonly wood: NeckWood;
}

/** What wedges in the slots of a strip do. */
export interface StripWedges {
  readonly stationXMm: Float64Array;
  /** Height of the underside for 1 N in slot j, up positive, mm/N: slots × stations, up to a straight line. */
  readonly wedgeMm: Float64Array;
  /** How far 1 N in slot j opens slot i, mm/N: row j, column i. */
  readonly openingMm: Float64Array;
}

export interface StripInfluence extends StripWedges {
  /** How far 1 N at the middle of the strip, on supports at both ends, lowers the middle, mm/N. */
  readonly sagMm: number;
}

interface Held {
  readonly mesh: StripMesh;
  readonly shape: BandShape;
  readonly factor: BandFactor;
}

const nodeOf = (mesh: StripMesh, column: number, row: number): number => column * mesh.rowYMm.length + row;

/** Assembles and factorises with the constants given. @param held degrees of freedom without displacement */
function factorised(
  strip: StripDescription,
  mesh: StripMesh,
  constants: readonly [number, number, number, number],
  held: readonly number[],
): Held {
  const { columnXMm, rowYMm } = mesh;
  const rows = rowYMm.length;
  const shape = { order: 2 * columnXMm.length * rows, halfBandwidth: 2 * (rows + 1) + 1 };
  const stride = bandStride(shape);
  const band = new Float64Array(bandLength(shape));
  const work = elementWork();
  const c = Float64Array.from({ length: 16 }, (_, i) => strip.widthMm * constants[i % 4]);
  const inSlot = new Uint8Array(columnXMm.length);
  mesh.leftColumn.forEach((left, slot) => inSlot.fill(1, left, mesh.rightColumn[slot]));
  for (let column = 0; column + 1 < columnXMm.length; column += 1) {
    const [x0, x1] = [columnXMm[column], columnXMm[column + 1]];
    for (let row = inSlot[column] === 1 ? mesh.slotRows : 0; row + 1 < rows; row += 1) {
      const [y0, y1] = [rowYMm[row], rowYMm[row + 1]];
      elementStiffness([x0, x1, x1, x0], [y0, y0, y1, y1], c, 0, work);
      const first = 2 * nodeOf(mesh, column, row);
      const beside = 2 * nodeOf(mesh, column + 1, row);
      const freedoms = [first, first + 1, beside, beside + 1, beside + 2, beside + 3, first + 2, first + 3];
      for (let a = 0; a < 8; a += 1)
        for (let b = 0; b < 8; b += 1) {
          const [i, j] = [freedoms[a], freedoms[b]];
          if (i >= j) band[j * stride + i - j] += work.stiffness[8 * a + b];
        }
    }
  }
  hold(shape, band, held);
  return { mesh, shape, factor: factorise(shape, band) };
}

/** Takes degrees of freedom out of the matrix, and nodes that stand in the air of a slot. */
function hold(shape: BandShape, band: Float64Array, held: readonly number[]): void {
  const stride = bandStride(shape);
  for (const dof of held) {
    for (let k = 0; k <= shape.halfBandwidth; k += 1) {
      band[dof * stride + k] = 0;
      if (dof >= k) band[(dof - k) * stride + k] = 0;
    }
  }
  for (let dof = 0; dof < shape.order; dof += 1) if (band[dof * stride] === 0) band[dof * stride] = 1;
}

/** Weights of the wall's nodes in the mean over the contact depth: Σ = 1. */
function contactWeights({ rowYMm, contactRows }: StripMesh): Float64Array {
  const weights = new Float64Array(contactRows + 1);
  for (let row = 0; row < contactRows; row += 1) {
    const share = (rowYMm[row + 1] - rowYMm[row]) / rowYMm[contactRows] / 2;
    weights[row] += share;
    weights[row + 1] += share;
  }
  return weights;
}

/** What wedges in every slot do. */
function wedges(strip: StripDescription, mesh: StripMesh): Pick<StripWedges, 'wedgeMm' | 'openingMm'> {
  const stations = mesh.columnXMm.length;
  const bottom = mesh.rowYMm.length - 1;
  // Every load is in equilibrium by itself: three displacements of the last column hold the strip and carry nothing.
  const last = stations - 1;
  const held = [2 * nodeOf(mesh, last, 0), 2 * nodeOf(mesh, last, bottom), 2 * nodeOf(mesh, last, bottom) + 1];
  const { shape, factor } = factorised(strip, mesh, planeStrain(strip.wood), held);
  const weights = contactWeights(mesh);
  const slots = strip.slotXMm.length;
  const wedgeMm = new Float64Array(slots * stations);
  const openingMm = new Float64Array(slots * slots);
  const block = createBlock(shape.order);
  for (let first = 0; first < slots; first += LANES) {
    block.fill(0);
    const together = Math.min(LANES, slots - first);
    const at = (column: number, row: number, axis: 0 | 1, lane: number) =>
      blockIndex(2 * nodeOf(mesh, column, row) + axis, lane);
    for (let lane = 0; lane < together; lane += 1)
      weights.forEach((weight, row) => {
        block[at(mesh.leftColumn[first + lane], row, 0, lane)] -= weight;
        block[at(mesh.rightColumn[first + lane], row, 0, lane)] += weight;
      });
    solveBlock(factor, block);
    for (let lane = 0; lane < together; lane += 1) {
      const slot = first + lane;
      for (let column = 0; column < stations; column += 1)
        wedgeMm[slot * stations + column] = -block[at(column, bottom, 1, lane)];
      for (let other = 0; other < slots; other += 1)
        weights.forEach((weight, row) => {
          openingMm[slot * slots + other] +=
            weight *
            (block[at(mesh.rightColumn[other], row, 0, lane)] - block[at(mesh.leftColumn[other], row, 0, lane)]);
        });
    }
  }
  return { wedgeMm, openingMm };
}

/** What a weight at the middle does, on supports under both ends, mm/N. */
function sag(strip: StripDescription, mesh: StripMesh): number {
  const { columnXMm, rowYMm } = mesh;
  const [last, bottom] = [columnXMm.length - 1, rowYMm.length - 1];
  const held = [2 * nodeOf(mesh, 0, bottom), 2 * nodeOf(mesh, 0, bottom) + 1, 2 * nodeOf(mesh, last, bottom) + 1];
  const { shape, factor } = factorised(strip, mesh, inPlane(strip.wood), held);
  const middle = strip.lengthMm / 2;
  // Shared between the two columns beside the middle, on the underside, as a hanging weight is.
  const right = Math.max(
    1,
    columnXMm.findIndex((x) => x >= middle),
  );
  const share = (middle - columnXMm[right - 1]) / (columnXMm[right] - columnXMm[right - 1]);
  const block = createBlock(shape.order);
  const at = (column: number) => blockIndex(2 * nodeOf(mesh, column, bottom) + 1, 0);
  block[at(right - 1)] += 1 - share;
  block[at(right)] += share;
  solveBlock(factor, block);
  return (1 - share) * block[at(right - 1)] + share * block[at(right)];
}

/** The wedges alone. @throws {RangeError} as `stripInfluence` */
export function stripWedges(strip: StripDescription, refinement: StripRefinement = 1): StripWedges {
  requireStrip(strip);
  const mesh = stripMesh(strip, refinement);
  return { stationXMm: mesh.columnXMm, ...wedges(strip, mesh) };
}

/** The weight alone: `StripInfluence.sagMm`. @throws {RangeError} as `stripInfluence` */
export function stripSagMm(strip: StripDescription, refinement: StripRefinement = 1): number {
  requireStrip(strip);
  return sag(strip, stripMesh(strip, refinement));
}

/**
 * @throws {RangeError} on slots that overlap, lie outside the strip or go through it, or on a contact as deep as the slot.
 */
export function stripInfluence(strip: StripDescription, refinement: StripRefinement = 1): StripInfluence {
  requireStrip(strip);
  const mesh = stripMesh(strip, refinement);
  return { stationXMm: mesh.columnXMm, ...wedges(strip, mesh), sagMm: sag(strip, mesh) };
}

function requireStrip(strip: StripDescription): void {
  const { lengthMm, thicknessMm, slotXMm, kerfMm, slotDepthMm, contactDepthMm } = strip;
  const least = 2 * kerfMm;
  [0, ...slotXMm].forEach((x, i) => {
    const next = slotXMm[i] ?? lengthMm;
    if (!(next - x > least))
      throw new RangeError(`slots at ${x} and ${next} mm; they must be more than ${least} mm apart`);
  });
  if (!(slotDepthMm > 0 && slotDepthMm < thicknessMm))
    throw new RangeError(`slot depth is ${slotDepthMm} mm; it must be between 0 and ${thicknessMm} mm`);
  if (!(contactDepthMm > 0 && contactDepthMm < slotDepthMm))
    throw new RangeError(`contact depth is ${contactDepthMm} mm; it must be between 0 and ${slotDepthMm} mm`);
}

/** The greatest height of a line above a straightedge laid from one place to another, with its sign, mm. */
export function humpMm(stationXMm: Float64Array, line: Float64Array, fromXMm: number, toXMm: number): number {
  const [a, b] = [sampleLine(stationXMm, line, fromXMm), sampleLine(stationXMm, line, toXMm)];
  let hump = 0;
  stationXMm.forEach((x, i) => {
    if (x < fromXMm || x > toXMm) return;
    const above = line[i] - a - ((b - a) * (x - fromXMm)) / (toXMm - fromXMm);
    if (Math.abs(above) > Math.abs(hump)) hump = above;
  });
  return hump;
}
