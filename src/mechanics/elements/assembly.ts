/**
 * Assembly of the banded stiffness matrix. The matrix without anything in the slots is made once; what stands in the
 * slots is added to a copy, so that empty, filled and uncut slots share the rest. The neck is held in a statically
 * determinate way: every load case is in equilibrium by itself, so the supports carry nothing. It is held at the joint and
 * kept from turning at the nut, both on the glue line: held against turning within one section, a stiff board on a soft
 * neck, or the reverse, would be kept in place through the soft one alone, and rounding grows with how soft that is.
 */
import { bandLength, bandStride, factoriseHeld, type BandFactor, type BandShape } from './banded.ts';
import type { SlotFilling } from '../description.ts';
import {
  elementStiffness,
  elementWork,
  GAUSS,
  layeredStiffness,
  POINT_ETA,
  POINT_XI,
  type ElementWork,
} from './element.ts';
import { nodeAt, type Mesh } from './mesh.ts';
import { fillerPlaneStress, inPlane, type Slice } from './section.ts';
import type { SlotHold } from './slot-cell.ts';
import { slotHolds } from './slot-holds.ts';

export interface Assembly {
  readonly mesh: Mesh;
  readonly shape: BandShape;
  /** Without slot elements and without supports. */
  readonly band: Float64Array;
  /** Nodal forces of a unit free strain of the board along the grain. */
  readonly boardStrainForce: Float64Array;
  /** What holds each slot at its ends; undefined where every slot opens alike across the board. */
  readonly holds: readonly SlotHold[] | undefined;
  /** The degrees of freedom that are held: of the joint's column, and of the nut's where that keeps it from turning. */
  readonly held: readonly number[];
}

/** Corner nodes 0 to 3 of an element, from its first column and row. */
const CORNER_COLUMN = [0, 1, 1, 0];
const CORNER_ROW = [0, 0, 1, 1];

/**
 * The elements of a mesh, one at a time. Their sides stand upright, so the Gauss points of a column of elements lie in two
 * slices of the neck; and nodes are numbered alike everywhere, so an entry of an element's stiffness goes to the same
 * place in the band from its first node on.
 */
class ElementLoop {
  readonly x = new Float64Array(4);
  readonly y = new Float64Array(4);
  readonly c = new Float64Array(16);
  readonly work: ElementWork = elementWork();
  /** Degrees of freedom of the element, from that of its first node on. */
  readonly freedoms: readonly number[];
  /** The element's first degree of freedom. */
  first = 0;
  private readonly mesh: Mesh;
  private readonly stride: number;
  /** Entries of the stiffness that lie in the lower triangle, and where in the band, from the first freedom's column on. */
  private readonly entries: Int32Array;
  private readonly places: Int32Array;
  private readonly slices: Slice[] = [];

  constructor({ mesh, shape }: Pick<Assembly, 'mesh' | 'shape'>) {
    this.mesh = mesh;
    this.stride = bandStride(shape);
    this.freedoms = CORNER_COLUMN.flatMap((column, a) => {
      const first = 2 * (column * (mesh.rows + 1) + CORNER_ROW[a]);
      return [first, first + 1];
    });
    const lower = this.freedoms.flatMap((i, a) =>
      this.freedoms.flatMap((j, b) => (i >= j ? [{ entry: 8 * a + b, place: j * this.stride + i - j }] : [])),
    );
    this.entries = Int32Array.from(lower, ({ entry }) => entry);
    this.places = Int32Array.from(lower, ({ place }) => place);
  }

  /** Goes to a column of elements. */
  enterColumn(column: number): void {
    const { mesh, x } = this;
    const left = mesh.columnXMm[column];
    const right = mesh.columnXMm[column + 1];
    x[0] = x[3] = left;
    x[1] = x[2] = right;
    const middle = (left + right) / 2;
    const off = (GAUSS * (right - left)) / 2;
    this.slices[0] = mesh.section.sliceAt(middle - off);
    this.slices[1] = mesh.section.sliceAt(middle + off);
  }

  /** Goes to an element of the column that was entered. */
  place(column: number, row: number): void {
    const { mesh, y } = this;
    const node = nodeAt(mesh, column, row);
    const beside = node + mesh.rows + 1;
    this.first = 2 * node;
    y[0] = mesh.nodeYMm[node]!;
    y[1] = mesh.nodeYMm[beside]!;
    y[2] = mesh.nodeYMm[beside + 1]!;
    y[3] = mesh.nodeYMm[node + 1]!;
  }

  /** The stiffness of the neck at the Gauss points, bars included. */
  takeSection(): void {
    const { y, c } = this;
    for (let g = 0; g < 4; g += 1) {
      const right = (1 + POINT_XI[g]) / 2;
      const down = (1 + POINT_ETA[g]) / 2;
      const upper = y[0] + right * (y[1] - y[0]);
      const lower = y[3] + right * (y[2] - y[3]);
      this.takePoint(right < 0.5 ? 0 : 1, upper + down * (lower - upper), c, 4 * g);
    }
  }

  private readonly takePoint = (side: 0 | 1, yMm: number, out: Float64Array, at: number): void => {
    const slice = this.slices[side];
    slice.stiffness(yMm, out, at);
    out[at] += slice.barStiffness(yMm);
  };

  /** Adds the stiffness of the element in hand, with the c that was set, to the band. */
  addTo(band: Float64Array, freeStrain: 0 | 1): void {
    elementStiffness(this.x, this.y, this.c, freeStrain, this.work);
    this.spread(band);
  }

  /** Adds an element of the neck's own wood to the band, in parts where layers of stiff bars end within it. */
  addNeckTo(band: Float64Array): void {
    const { x, y, mesh, work } = this;
    const [top, bottom] = [Math.min(y[0], y[1]), Math.max(y[2], y[3])];
    const floors = mesh.section.barFloorsMm.filter((floor) => top < floor && floor < bottom);
    if (floors.length > 0) {
      layeredStiffness(x, y, floors, this.takePoint, work);
      this.spread(band);
      return;
    }
    this.takeSection();
    this.addTo(band, 0);
  }

  private spread(band: Float64Array): void {
    const { work, entries, places } = this;
    const start = this.first * this.stride;
    for (let k = 0; k < entries.length; k += 1) band[start + places[k]] += work.stiffness[entries[k]];
  }
}

/** @param holds what holds the slots at their ends, where that is known of a larger mesh */
export function assemble(mesh: Mesh, holds: Assembly['holds'] = slotHolds(mesh)): Assembly {
  const { rows } = mesh;
  const columns = mesh.columnXMm.length;
  const order = 2 * columns * (rows + 1);
  const shape: BandShape = { order, halfBandwidth: 2 * (rows + 2) + 1 };
  const band = new Float64Array(bandLength(shape));
  const boardStrainForce = new Float64Array(order);
  const loop = new ElementLoop({ mesh, shape });

  for (let column = 0; column < columns - 1; column += 1) {
    const slotted = mesh.slotOfColumn[column] >= 0;
    loop.enterColumn(column);
    for (let row = slotted ? mesh.slotRows : 0; row < rows; row += 1) {
      loop.place(column, row);
      if (row >= mesh.boardRows) {
        loop.addNeckTo(band);
        continue;
      }
      loop.takeSection();
      loop.addTo(band, 1);
      for (let a = 0; a < 8; a += 1) boardStrainForce[loop.first + loop.freedoms[a]] += loop.work.freeStrainForce[a];
    }
  }
  return { mesh, shape, band, boardStrainForce, holds, held: heldFreedoms(mesh) };
}

function heldFreedoms(mesh: Mesh): number[] {
  const [nut, joint] = [0, mesh.jointColumn].map((column) => nodeAt(mesh, column, mesh.boardRows));
  const turning =
    mesh.section.description.support === 'plane'
      ? Array.from({ length: mesh.rows + 1 }, (_, row) => 2 * nodeAt(mesh, mesh.jointColumn, row))
      : [2 * nut + 1, 2 * joint];
  return [...turning, 2 * joint + 1];
}

/**
 * The matrix with what stands in the slots, without supports: for residuals and for the factor.
 * @param band room for it, as long as `assembly.band`.
 */
export function withSlots(
  assembly: Assembly,
  filling: SlotFilling,
  band: Float64Array = new Float64Array(assembly.band.length),
): Float64Array {
  band.set(assembly.band);
  const { mesh, holds } = assembly;
  if (filling.kind === 'empty' && holds === undefined) return band;
  const { section } = mesh;
  const loop = new ElementLoop(assembly);
  const filler = filling.kind === 'filled' ? fillerPlaneStress(filling.modulusMPa) : undefined;
  const { board, ends } = section.description;
  const strip = inPlane(board);

  for (let column = 0; column < mesh.slotOfColumn.length; column += 1) {
    if (mesh.slotOfColumn[column] < 0) continue;
    loop.enterColumn(column);
    const xMid = (mesh.columnXMm[column] + mesh.columnXMm[column + 1]) / 2;
    const top = section.topMm(xMid);
    const stripMm = holds?.[mesh.slotOfColumn[column]].stripMm ?? 0;
    const reachMm = filling.kind === 'filled' ? top + filling.reach * (section.slotFloorMm(xMid) - top) : 0;
    for (let row = 0; row < mesh.slotRows; row += 1) {
      loop.place(column, row);
      if (filling.kind === 'uncut') {
        loop.takeSection();
      } else {
        // An element that the glue reaches in part carries that part of the stiffness.
        const upper = loop.y[0];
        const lower = loop.y[3];
        const share = Math.min(1, Math.max(0, (reachMm - upper) / (lower - upper)));
        if (share === 0 && stripMm === 0) continue;
        const width = (section.widthMm(xMid) - 2 * (ends?.slotShortMm ?? 0)) * share;
        for (let at = 0; at < 16; at += 1) loop.c[at] = (filler?.[at & 3] ?? 0) * width + strip[at & 3] * stripMm;
      }
      loop.addTo(band, 0);
    }
  }
  return band;
}

/** Factorises the matrix of `withSlots` after holding the supports; `band` is used up. */
export function hold(assembly: Assembly, band: Float64Array): BandFactor {
  return factoriseHeld(assembly.shape, band, assembly.held);
}

/** K·u, for residuals. @param band as from `withSlots`. */
export function multiply(shape: BandShape, band: Float64Array, u: ArrayLike<number>): Float64Array {
  const { order, halfBandwidth } = shape;
  const stride = bandStride(shape);
  const out = new Float64Array(order);
  for (let j = 0; j < order; j += 1) {
    out[j] += band[j * stride] * u[j];
    for (let k = 1; k <= halfBandwidth && j + k < order; k += 1) {
      out[j + k] += band[j * stride + k] * u[j];
      out[j] += band[j * stride + k] * u[j + k];
    }
  }
  return out;
}
