/**
 * Twist of a neck whose frets are slanted: what is odd about the middle of the neck, driven by what is even.
 *
 * With x + z·t(x) in place of x, t the tangent of the slant, slots lie across the mesh again and the plane model holds. Beside
 * its u₀ and v₀ the neck has displacements that are odd across the width (twist-element.ts): warping, torsion, shear of the
 * section and sideways bending. They are solved by themselves,
 *
 *   K·q = f + D·q₀,   D·q₀ what u₀ and v₀ do to them,   f a wedge that stands against its slanted walls
 *
 * and what they do back to u₀ and v₀, of the second power of t, is the cos² by which the wedges of the plane model are less: one
 * cosine for the part of a push that goes along the neck, one because the slot is longer. Of a unit of push the other part, sin,
 * goes across: f = ∓sin·cos on w at the walls.
 *
 * Torsion is that of Saint-Venant, u = φ′·ψ(y, z), with ψ = z·f(y) + z³·g(y): within 2 % of the series for a rectangle. Strings
 * that pull alone turn the section only where slots are slanted; a neck of slanted ends and no slots bends as a square one.
 *
 * Nothing is fitted.
 */
import { slantAt, type Fan, type NeckDescription, type SlotFilling } from '../description.ts';
import type { Assembly } from './assembly.ts';
import {
  bandLength,
  bandStride,
  blockIndex,
  createBlock,
  factoriseHeld,
  LANES,
  solveBlock,
  type BandFactor,
  type BandShape,
} from './banded.ts';
import { POINT_ETA, POINT_XI } from './element.ts';
import { contactWeights } from './loads.ts';
import { nodeAt, type Mesh } from './mesh.ts';
import { fillerPlaneStress, inPlane, type Slice } from './section.ts';
import {
  ALONG_WIDTH,
  DEPTH_WIDTH,
  EVEN,
  EVEN_FREEDOMS,
  FREEDOMS,
  NODE_FREEDOMS,
  POINT_NUMBERS,
  SCALE_MM,
  TAPER_NUMBERS,
  TwistElement,
} from './twist-element.ts';

const CORNER_COLUMN = [0, 1, 1, 0];
const CORNER_ROW = [0, 0, 1, 1];

/** c11, c12, c22, c66, G_xz, G_yz of a wood, MPa. */
type Constants = readonly [number, number, number, number, number, number];

/**
 * What of the plane mesh is enough here: of its rows of nodes all of the board's but one and two in the neck; of its columns all but the
 * two next to each face of a slot, since the local give of a slot has little weight.
 */
const ROWS = [0, 2, 3, 4, 5, 6, 8, 11];
const SLOT_ROWS = 3;
const BOARD_ROWS = 5;
const LEFT_OUT = 2;

/** The mesh of the twist: some of the columns and rows of the plane one. */
interface Grid {
  readonly mesh: Mesh;
  /** Columns of the plane mesh. */
  readonly columns: readonly number[];
  /** Rows of the plane mesh. */
  readonly rows: readonly number[];
  /** Of each slot the column of its nut side, in `columns`. */
  readonly slotColumn: readonly number[];
}

function gridOf(mesh: Mesh): Grid {
  const finer = mesh.slotRows / 4;
  const last = mesh.columnXMm.length - 1;
  const firm = [...new Set([0, last, ...Array.from(mesh.slotLeftColumn).flatMap((left) => [left, left + 1])])].toSorted(
    (p, q) => p - q,
  );
  const columns: number[] = [0];
  for (let k = 1; k < firm.length; k += 1) {
    const [from, to] = [firm[k - 1], firm[k]];
    for (let column = from + 1; column < to; column += 1)
      if (Math.min(column - from, to - column) > LEFT_OUT * finer) columns.push(column);
    columns.push(to);
  }
  return {
    mesh,
    columns,
    rows: ROWS.map((row) => row * finer),
    slotColumn: Array.from(mesh.slotLeftColumn, (left) => columns.indexOf(left)),
  };
}

/** Adds both halves of a layer of the width. */
function addLayer(out: Float64Array, at: number, c: ArrayLike<number>, from: number, to: number): void {
  const h2 = SCALE_MM * SCALE_MM;
  const from2 = from * from;
  const to2 = to * to;
  const w1 = 2 * (to - from);
  const w3 = (2 * (to2 * to - from2 * from)) / 3;
  const w5 = (2 * (to2 * to2 * to - from2 * from2 * from)) / (5 * h2);
  const w7 = (2 * (to2 * to2 * to2 * to - from2 * from2 * from2 * from)) / (7 * h2 * h2);
  for (let i = 0; i < 4; i += 1) {
    out[at + EVEN + i] += c[i] * w1;
    out[at + 3 * i] += c[i] * w3;
    out[at + 3 * i + 1] += c[i] * w5;
    out[at + 3 * i + 2] += c[i] * w7;
  }
  out[at + ALONG_WIDTH] += c[4] * w1;
  out[at + ALONG_WIDTH + 1] += (3 * c[4] * w3) / h2;
  out[at + ALONG_WIDTH + 2] += (9 * c[4] * w5) / h2;
  out[at + DEPTH_WIDTH] += c[5] * w1;
}

/** Woods in the order in which `Slice.layers` numbers them. */
function constantsOf({ board, ends, neck }: NeckDescription, fan: Fan): Constants[] {
  const of = (wood: NeckDescription['board'], shears: Fan['boardShears']): Constants => [
    ...inPlane(wood),
    shears.alongWidth * wood.modulusMPa,
    shears.depthWidth * wood.modulusMPa,
  ];
  return [
    of(board, fan.boardShears),
    ...(ends?.lines ?? []).map((line) => of(line.wood, line.shears)),
    ...neck.map(({ wood }, piece) => of(wood, fan.neckShears[piece])),
  ];
}

export interface TwistModel {
  readonly grid: Grid;
  readonly factor: BandFactor;
  /** D: of each element 16 × 8, column by column of elements. */
  readonly drives: Float64Array;
  readonly held: readonly number[];
  readonly fan: Fan;
}

/** The elements of a grid, one at a time. */
class TwistLoop {
  readonly element = new TwistElement();
  private readonly grid: Grid;
  private readonly woods: readonly Constants[];
  private readonly fan: Fan;
  private readonly x = new Float64Array(4);
  private readonly y = new Float64Array(4);
  private readonly points = new Float64Array(4 * POINT_NUMBERS);
  private readonly tapers = new Float64Array(4 * TAPER_NUMBERS);
  private readonly beside = new Float64Array(POINT_NUMBERS);
  private readonly slices: Slice[] = [];
  private slant = 0;
  private slope = 0;

  constructor(grid: Grid, fan: Fan) {
    this.grid = grid;
    this.fan = fan;
    this.woods = constantsOf(grid.mesh.section.description, fan);
  }

  enterColumn(column: number): void {
    const { mesh, columns } = this.grid;
    const [left, right] = [mesh.columnXMm[columns[column]], mesh.columnXMm[columns[column + 1]]];
    const middle = (left + right) / 2;
    const off = (POINT_XI[1] * (right - left)) / 2;
    this.x[0] = this.x[3] = left;
    this.x[1] = this.x[2] = right;
    this.slices[0] = mesh.section.sliceAt(middle - off);
    this.slices[1] = mesh.section.sliceAt(middle + off);
    this.slant = slantAt(this.fan, middle);
    this.slope = (slantAt(this.fan, right) - slantAt(this.fan, left)) / (right - left);
  }

  place(column: number, row: number): void {
    const { mesh, columns, rows } = this.grid;
    const at = (c: number, r: number) => mesh.nodeYMm[nodeAt(mesh, columns[column + c], rows[row + r])];
    for (let a = 0; a < 4; a += 1) this.y[a] = at(CORNER_COLUMN[a], CORNER_ROW[a]);
    this.points.fill(0);
    this.tapers.fill(0);
  }

  /** Depths of the element's top and bottom, at its middle. */
  depthsMm(): readonly [number, number] {
    const { y } = this;
    return [(y[0] + y[1]) / 2, (y[2] + y[3]) / 2];
  }

  takeSection(): void {
    const { x, y, points, tapers, beside, slices } = this;
    const apart = POINT_XI[1] * (x[1] - x[0]);
    for (let g = 0; g < 4; g += 1) {
      const right = (1 + POINT_XI[g]) / 2;
      const upper = y[0] + right * (y[1] - y[0]);
      const lower = y[3] + right * (y[2] - y[3]);
      const yMm = upper + ((1 + POINT_ETA[g]) / 2) * (lower - upper);
      const side = right < 0.5 ? 0 : 1;
      this.take(slices[side], yMm, points, POINT_NUMBERS * g);
      beside.fill(0);
      this.take(slices[1 - side], yMm, beside, 0);
      const share = ((side === 0 ? 1 : -1) * this.slant) / apart;
      for (let i = 0; i < 4; i += 1)
        for (let k = 0; k < 2; k += 1)
          tapers[TAPER_NUMBERS * g + 2 * i + k] = share * (beside[3 * i + k] - points[POINT_NUMBERS * g + 3 * i + k]);
    }
  }

  private take(slice: Slice, yMm: number, out: Float64Array, at: number): void {
    slice.layers(yMm, (wood, from, to) => addLayer(out, at, this.woods[wood], from, to));
    slice.barLayer(yMm, (modulusMPa, from, to) => addLayer(out, at, [modulusMPa, 0, 0, 0, 0, 0], from, to));
  }

  /** A layer of the width that is the same all over the element. */
  takeLayer(c: ArrayLike<number>, fromMm: number, toMm: number): void {
    for (let g = 0; g < 4; g += 1) addLayer(this.points, POINT_NUMBERS * g, c, fromMm, toMm);
  }

  compute(): void {
    this.element.compute(this.x, this.y, this.points, this.tapers, this.slant, this.slope);
  }
}

/** Sets what stands in a slot into the element in hand. @returns whether anything does. */
function fillSlot(loop: TwistLoop, assembly: Assembly, slot: number, xMm: number, filling: SlotFilling): boolean {
  const { section } = assembly.mesh;
  const { ends, board } = section.description;
  if (filling.kind === 'uncut') {
    loop.takeSection();
    return true;
  }
  const half = section.widthMm(xMm) / 2;
  const stripMm = assembly.holds?.[slot].stripMm ?? 0;
  const [upper, lower] = loop.depthsMm();
  const top = section.topMm(xMm);
  const reachMm = filling.kind === 'filled' ? top + filling.reach * (section.slotFloorMm(xMm) - top) : 0;
  const share = Math.min(1, Math.max(0, (reachMm - upper) / (lower - upper)));
  if (share === 0 && stripMm === 0) return false;
  if (filling.kind === 'filled' && share > 0) {
    const [c11, c12, c22, c66] = fillerPlaneStress(filling.modulusMPa);
    const filler = [c11, c12, c22, c66, c66, c66].map((c) => c * share);
    loop.takeLayer(filler, 0, half - (ends?.slotShortMm ?? 0));
  }
  // What the ends of a slot hold is at its ends.
  if (stripMm > 0) loop.takeLayer([...inPlane(board), 0, 0], half - Math.min(half, stripMm / 2), half);
  return true;
}

export function createTwist(assembly: Assembly, fan: Fan, filling: SlotFilling): TwistModel {
  const { mesh } = assembly;
  const grid = gridOf(mesh);
  const rows = grid.rows.length - 1;
  const columns = grid.columns.length;
  const shape: BandShape = {
    order: NODE_FREEDOMS * columns * (rows + 1),
    halfBandwidth: NODE_FREEDOMS * (rows + 3) - 1,
  };
  const band = new Float64Array(bandLength(shape));
  const stride = bandStride(shape);
  const perElement = FREEDOMS * EVEN_FREEDOMS;
  const drives = new Float64Array((columns - 1) * rows * perElement);
  const offsets = CORNER_COLUMN.flatMap((column, a) =>
    Array.from({ length: NODE_FREEDOMS }, (_, f) => NODE_FREEDOMS * (column * (rows + 1) + CORNER_ROW[a]) + f),
  );
  // Entries of an element in the lower triangle, and where in the band from the column of its first freedom on.
  const lower = offsets.flatMap((i, a) =>
    offsets.flatMap((j, b) => (i >= j ? [{ entry: FREEDOMS * a + b, place: j * stride + i - j }] : [])),
  );
  const entries = Int32Array.from(lower, ({ entry }) => entry);
  const places = Int32Array.from(lower, ({ place }) => place);
  const loop = new TwistLoop(grid, fan);
  for (let column = 0; column + 1 < columns; column += 1) {
    const slot = grid.slotColumn.indexOf(column);
    const xMm = (mesh.columnXMm[grid.columns[column]] + mesh.columnXMm[grid.columns[column + 1]]) / 2;
    loop.enterColumn(column);
    for (let row = 0; row < rows; row += 1) {
      loop.place(column, row);
      if (slot < 0 || row >= SLOT_ROWS) loop.takeSection();
      else if (!fillSlot(loop, assembly, slot, xMm, filling)) continue;
      loop.compute();
      const { stiffness, drive } = loop.element;
      const start = NODE_FREEDOMS * (column * (rows + 1) + row) * stride;
      for (let k = 0; k < entries.length; k += 1) band[start + places[k]] += stiffness[entries[k]];
      drives.set(drive, (column * rows + row) * perElement);
    }
  }
  const held = heldFreedoms(grid);
  return { grid, factor: factoriseHeld(shape, band, held), drives, held, fan };
}

/** At the far end: turning, and sideways; at the nut sideways, unless the far end is a face that keeps its place. */
function heldFreedoms({ mesh, columns, rows }: Grid): number[] {
  const last = NODE_FREEDOMS * ((columns.length - 1) * rows.length);
  const end = last + NODE_FREEDOMS * BOARD_ROWS;
  const face = rows.flatMap((_, row) => [last + NODE_FREEDOMS * row, last + NODE_FREEDOMS * row + 3]);
  const sideways = mesh.section.description.support === 'plane' ? face : [NODE_FREEDOMS * BOARD_ROWS + 2];
  return [end + 1, end + 2, ...sideways];
}

/** A load case of the twist. */
export interface TwistCase {
  /** u₀, v₀ of the grid's nodes, from `evenOf`. */
  readonly even: Float64Array;
  /** Forces across the neck on the wall of a slot's nut side and on the other, N. */
  readonly sideways?: { readonly slot: number; readonly nutSideN: number; readonly bodySideN: number };
}

/** u₀, v₀ of the grid's nodes, out of a block of solutions of the plane mesh, times an amount. */
export function evenOf({ mesh, columns, rows }: Grid, block: Float64Array, lane: number, amount: number): Float64Array {
  const even = new Float64Array(2 * columns.length * rows.length);
  let at = 0;
  for (const column of columns)
    for (const row of rows) {
      const freedom = 2 * nodeAt(mesh, column, row);
      even[at] = amount * block[blockIndex(freedom, lane)];
      even[at + 1] = amount * block[blockIndex(freedom + 1, lane)];
      at += 2;
    }
  return even;
}

/** Weights of the wall's nodes in the contact, of the rows that the grid has. */
function gridContact({ mesh, rows }: Grid, slot: number): number[] {
  const weights = contactWeights(mesh, slot);
  const y = (row: number) => mesh.nodeYMm[nodeAt(mesh, mesh.slotLeftColumn[slot], row)];
  const out = rows.slice(0, SLOT_ROWS + 1).map(() => 0);
  weights.forEach((weight, row) => {
    const below = Math.max(
      1,
      rows.findIndex((kept) => kept >= row),
    );
    const share = (y(row) - y(rows[below - 1])) / (y(rows[below]) - y(rows[below - 1]));
    out[below - 1] += weight * (1 - share);
    out[below] += weight * share;
  });
  return out;
}

/** Adds D·q₀ to a block. @param evens u₀, v₀ of the grid's nodes, as a block of the same lanes */
function addDrive({ grid, drives }: TwistModel, evens: Float64Array, block: Float64Array): void {
  const perColumn = grid.rows.length;
  const columns = grid.columns.length;
  const from = new Int32Array(EVEN_FREEDOMS);
  let at = 0;
  for (let column = 0; column + 1 < columns; column += 1)
    for (let row = 0; row + 1 < perColumn; row += 1) {
      const first = column * perColumn + row;
      for (let k = 0; k < EVEN_FREEDOMS; k += 1) {
        const node = first + CORNER_COLUMN[k >> 1] * perColumn + CORNER_ROW[k >> 1];
        from[k] = LANES * (2 * node + (k & 1));
      }
      for (let i = 0; i < FREEDOMS; i += 1) {
        const node = first + CORNER_COLUMN[i >> 2] * perColumn + CORNER_ROW[i >> 2];
        const to = LANES * (NODE_FREEDOMS * node + (i & 3));
        let f0 = 0, f1 = 0, f2 = 0, f3 = 0; // prettier-ignore
        for (let k = 0; k < EVEN_FREEDOMS; k += 1, at += 1) {
          const drive = drives[at];
          const q = from[k];
          f0 += drive * evens[q];
          f1 += drive * evens[q + 1];
          f2 += drive * evens[q + 2];
          f3 += drive * evens[q + 3];
        }
        block[to] += f0;
        block[to + 1] += f1;
        block[to + 2] += f2;
        block[to + 3] += f3;
      }
    }
}

/**
 * Tilt of the neck at the glue joint, v₁ in rad, at every column of the plane mesh, cases × columns: at z towards the bass the
 * line of the frets lies at v₀ + z·v₁.
 */
export function solveTwist(model: TwistModel, cases: readonly TwistCase[]): Float64Array {
  const { grid, factor, held } = model;
  const { mesh, columns, rows } = grid;
  const perColumn = rows.length;
  const stations = mesh.columnXMm.length;
  const tilt = new Float64Array(cases.length * stations);
  const block = createBlock(factor.order);
  const evens = new Float64Array(2 * columns.length * perColumn * LANES);
  for (let first = 0; first < cases.length; first += LANES) {
    const together = cases.slice(first, first + LANES);
    block.fill(0);
    evens.fill(0);
    together.forEach(({ even }, lane) => {
      for (let k = 0; k < even.length; k += 1) evens[blockIndex(k, lane)] = even[k];
    });
    addDrive(model, evens, block);
    together.forEach(({ sideways }, lane) => {
      if (!sideways) return;
      gridContact(grid, sideways.slot).forEach((weight, row) => {
        const node = grid.slotColumn[sideways.slot] * perColumn + row;
        block[blockIndex(NODE_FREEDOMS * node + 2, lane)] += weight * sideways.nutSideN;
        block[blockIndex(NODE_FREEDOMS * (node + perColumn) + 2, lane)] += weight * sideways.bodySideN;
      });
    });
    for (const dof of held) block.fill(0, blockIndex(dof, 0), blockIndex(dof + 1, 0));
    solveBlock(factor, block);
    together.forEach((_case, lane) => {
      const at = (k: number) => block[blockIndex(NODE_FREEDOMS * (k * perColumn + BOARD_ROWS) + 1, lane)];
      const out = tilt.subarray((first + lane) * stations, (first + lane + 1) * stations);
      for (let k = 0; k + 1 < columns.length; k += 1) {
        const [from, to] = [columns[k], columns[k + 1]];
        const [left, length] = [mesh.columnXMm[from], mesh.columnXMm[to] - mesh.columnXMm[from]];
        for (let column = from; column <= to; column += 1) {
          const share = (mesh.columnXMm[column] - left) / length;
          out[column] = (1 - share) * at(k) + share * at(k + 1);
        }
      }
    });
  }
  return tilt;
}
