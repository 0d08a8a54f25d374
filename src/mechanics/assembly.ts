/**
 * Assembly of the banded stiffness matrix. The matrix without anything in the slots is made once; what stands in the
 * slots is added to a copy, so that empty, filled and uncut slots share the rest. The neck is held in a statically
 * determinate way at the joint: every load case is in equilibrium by itself, so the supports carry nothing.
 */
import { bandLength, bandStride, factorise, type BandFactor, type BandShape } from './banded.ts';
import type { SlotFilling } from './description.ts';
import { elementStiffness, elementWork, GAUSS_POINTS, type ElementWork } from './element.ts';
import { nodeAt, type Mesh } from './mesh.ts';
import { fillerPlaneStress } from './section.ts';

export interface Assembly {
  readonly mesh: Mesh;
  readonly shape: BandShape;
  /** Without slot elements and without supports. */
  readonly band: Float64Array;
  /** Nodal forces of a unit free strain of the board along the grain. */
  readonly boardStrainForce: Float64Array;
  /** The degrees of freedom that are held, all in the joint's column. */
  readonly held: readonly number[];
}

const NODE_COLUMN = [0, 1, 1, 0];
const NODE_ROW = [0, 0, 1, 1];

class ElementLoop {
  readonly x = new Float64Array(4);
  readonly y = new Float64Array(4);
  readonly c = new Float64Array(16);
  readonly nodes = new Int32Array(4);
  readonly work: ElementWork = elementWork();
  private readonly mesh: Mesh;

  constructor(mesh: Mesh) {
    this.mesh = mesh;
  }

  place(column: number, row: number): void {
    const { mesh, nodes, x, y } = this;
    for (let a = 0; a < 4; a += 1) {
      const node = nodeAt(mesh, column + NODE_COLUMN[a]!, row + NODE_ROW[a]!);
      nodes[a] = node;
      x[a] = mesh.columnXMm[column + NODE_COLUMN[a]!]!;
      y[a] = mesh.nodeYMm[node]!;
    }
  }

  /** Calls back with x, y of each Gauss point. */
  forGaussPoints(visit: (x: number, y: number, g: number) => void): void {
    const { x, y } = this;
    for (let g = 0; g < 4; g += 1) {
      const [xi, eta] = GAUSS_POINTS[g]!;
      const n0 = ((1 - xi) * (1 - eta)) / 4;
      const n1 = ((1 + xi) * (1 - eta)) / 4;
      const n2 = ((1 + xi) * (1 + eta)) / 4;
      const n3 = ((1 - xi) * (1 + eta)) / 4;
      visit(n0 * x[0]! + n1 * x[1]! + n2 * x[2]! + n3 * x[3]!, n0 * y[0]! + n1 * y[1]! + n2 * y[2]! + n3 * y[3]!, g);
    }
  }

  addTo(band: Float64Array, stride: number): void {
    const { nodes, work } = this;
    for (let a = 0; a < 8; a += 1) {
      const i = 2 * nodes[a >> 1]! + (a & 1);
      for (let b = 0; b < 8; b += 1) {
        const j = 2 * nodes[b >> 1]! + (b & 1);
        if (i >= j) band[j * stride + i - j]! += work.stiffness[a * 8 + b]!;
      }
    }
  }
}

export function assemble(mesh: Mesh): Assembly {
  const { section, rows } = mesh;
  const columns = mesh.columnXMm.length;
  const order = 2 * columns * (rows + 1);
  const shape: BandShape = { order, halfBandwidth: 2 * (rows + 2) + 1 };
  const band = new Float64Array(bandLength(shape));
  const boardStrainForce = new Float64Array(order);
  const loop = new ElementLoop(mesh);

  for (let column = 0; column < columns - 1; column += 1) {
    const slotted = mesh.slotOfColumn[column]! >= 0;
    for (let row = slotted ? mesh.slotRows : 0; row < rows; row += 1) {
      loop.place(column, row);
      loop.forGaussPoints((x, y, g) => section.stiffness(x, y, loop.c, 4 * g));
      const inBoard = row < mesh.boardRows;
      elementStiffness(loop.x, loop.y, loop.c, inBoard ? 1 : 0, loop.work);
      loop.addTo(band, bandStride(shape));
      if (inBoard) {
        for (let a = 0; a < 8; a += 1)
          boardStrainForce[2 * loop.nodes[a >> 1]! + (a & 1)]! += loop.work.freeStrainForce[a]!;
      }
    }
  }
  return { mesh, shape, band, boardStrainForce, held: heldFreedoms(mesh) };
}

function heldFreedoms(mesh: Mesh): number[] {
  const node = (row: number) => nodeAt(mesh, mesh.jointColumn, row);
  const along =
    mesh.section.description.support === 'plane'
      ? Array.from({ length: mesh.rows + 1 }, (_, row) => 2 * node(row))
      : [2 * node(mesh.boardRows), 2 * node(mesh.rows)];
  return [...along, 2 * node(mesh.boardRows) + 1];
}

/** The matrix with what stands in the slots, without supports: for residuals and for the factor. */
export function withSlots(assembly: Assembly, filling: SlotFilling): Float64Array {
  const band = Float64Array.from(assembly.band);
  if (filling.kind === 'empty') return band;
  const { mesh, shape } = assembly;
  const { section } = mesh;
  const loop = new ElementLoop(mesh);
  const filler = filling.kind === 'filled' ? fillerPlaneStress(filling.modulusMPa) : undefined;

  for (let column = 0; column < mesh.slotOfColumn.length; column += 1) {
    if (mesh.slotOfColumn[column]! < 0) continue;
    const xMid = (mesh.columnXMm[column]! + mesh.columnXMm[column + 1]!) / 2;
    const top = section.topMm(xMid);
    const reachMm = filling.kind === 'filled' ? top + filling.reach * (section.slotFloorMm(xMid) - top) : 0;
    for (let row = 0; row < mesh.slotRows; row += 1) {
      loop.place(column, row);
      if (filler === undefined) {
        loop.forGaussPoints((x, y, g) => section.stiffness(x, y, loop.c, 4 * g));
      } else {
        // An element that the glue reaches in part carries that part of the stiffness.
        const upper = loop.y[0]!;
        const lower = loop.y[3]!;
        const share = Math.min(1, Math.max(0, (reachMm - upper) / (lower - upper)));
        if (share === 0) continue;
        const width = section.widthMm(xMid) * share;
        for (let at = 0; at < 16; at += 1) loop.c[at] = filler[at & 3]! * width;
      }
      elementStiffness(loop.x, loop.y, loop.c, 0, loop.work);
      loop.addTo(band, bandStride(shape));
    }
  }
  return band;
}

/** Factorises the matrix of `withSlots` after holding the supports; `band` is used up. */
export function hold(assembly: Assembly, band: Float64Array): BandFactor {
  const { shape, held } = assembly;
  const stride = bandStride(shape);
  for (const dof of held) {
    for (let k = 1; k <= shape.halfBandwidth; k += 1) {
      band[dof * stride + k] = 0;
      if (dof - k >= 0) band[(dof - k) * stride + k] = 0;
    }
    band[dof * stride] = 1;
  }
  return factorise(shape, band);
}

/** K·u, for residuals. @param band as from `withSlots`. */
export function multiply(shape: BandShape, band: Float64Array, u: ArrayLike<number>): Float64Array {
  const { order, halfBandwidth } = shape;
  const stride = bandStride(shape);
  const out = new Float64Array(order);
  for (let j = 0; j < order; j += 1) {
    out[j]! += band[j * stride]! * u[j]!;
    for (let k = 1; k <= halfBandwidth && j + k < order; k += 1) {
      out[j + k]! += band[j * stride + k]! * u[j]!;
      out[j]! += band[j * stride + k]! * u[j + k]!;
    }
  }
  return out;
}
