/**
 * A slot that does not open alike across the board: one that stops before the edges, a tang shorter than its slot, or binding
 * of another material beside the wood. What holds the edge closed spreads over a few millimetres of the slot, by shear across
 * the width, which a plane model does not know. So a piece of the neck around one slot is solved with displacements that
 * differ across the width, and the plane model is given what makes it answer alike:
 *
 *   u(x, y, z) = Σ_m N_m(z)·u_m(x, y), v and w alike       N_m: hats over half the width, graded towards where the slot ends;
 *                                                          between the centre and the first node u and v are even, w linear
 *
 * The strains are those of a solid, products of the N_m and their slopes integrated exactly, the plane as in element.ts. The
 * piece reaches from the middle of the slot to halfway to the next, and from the centre line to the edge: it is symmetric
 * about all of them but the edge, which is free. Halfway to the next slot, and below the board, all u_m and v_m are one. Two
 * loads, a couple M at the far end and a wedge F over the length of the tang, give three compliances. The same piece as a
 * plane model, with a strip of board wood κ wide left in the slot, has them too, and
 *
 *   κ       W_MM(plane, κ) = W_MM               the hinge gives as much under the couple
 *   wedge   W_MF = wedge·W_MF(plane, κ)         what a wedge over the tang alone does to the neck, and (Maxwell) how far the
 *                                               slot opens along the tang
 *   own     W_FF = wedge²·W_FF(plane, κ) + own  what it opens its own slot beyond that
 *
 * No number is fitted. Where slots are sawn through, tangs as long and the board of one wood, the piece is the plane model but
 * for the state of stress across the width; that part, a few thousandths, is taken out of all three.
 */
import { bandLength, bandStride, blockIndex, createBlock, factorise, solveBlock, type BandShape } from './banded.ts';
import { elementStiffness, elementWork, GAUSS } from './element.ts';
import type { Section } from './section.ts';

/** Constants of a material per mm of width, MPa. */
export interface CellMaterial {
  /** c11, c12, c22, c66 of the plane model (section.ts). */
  readonly plane: readonly [number, number, number, number];
  /** C11, C12, C22, C66 of the solid; C13, C23, C33; G_xz, G_yz. */
  readonly solid: readonly [number, number, number, number];
  readonly across: readonly [c13: number, c23: number, c33: number];
  readonly shears: readonly [xz: number, yz: number];
}

/** A piece of the board's width, from the centre line outwards. */
export interface CellLayer {
  /** Where it ends, from the centre line, mm. */
  readonly toHalfMm: number;
  readonly material: CellMaterial;
}

export interface SlotCell {
  readonly section: Section;
  /** Where the section is taken, the same as the rows. */
  readonly xMm: number;
  /** y of the rows of nodes, as in the mesh; the first `slotRows` of elements are the slot's, `boardRows` the board's. */
  readonly rowYMm: ArrayLike<number>;
  readonly slotRows: number;
  readonly boardRows: number;
  /** Weights of the wall's nodes in the contact, Σ = 1: slotRows + 1 of them. */
  readonly contact: ArrayLike<number>;
  readonly kerfMm: number;
  /** Half the way to the next slot, mm. */
  readonly halfPitchMm: number;
  /** The outermost ends at the edge of the board. */
  readonly layers: readonly CellLayer[];
  readonly slotHalfMm: number;
  readonly tangHalfMm: number;
}

/** What the plane model is given for a slot. */
export interface SlotHold {
  /** κ: width of the strip of board wood in the slot, mm. */
  readonly stripMm: number;
  readonly wedge: number;
  /** mm/N. */
  readonly ownMm: number;
}

/** Columns from the face of the slot, mm. */
const OFFSETS_MM = [0.6, 2, 5, 10];
/** Nodes across the width: into the board from where the slot ends, and into what is left whole, mm. */
const INWARDS_MM = [0.6, 1.8, 5];
const OUTWARDS_MM = [1.5];
const SAME_MM = 0.2;
/** The outer node of two that a plain slot is solved with, from the edge, mm. */
const PLAIN_MM = 10;

/** Nodes across the width, from the centre outwards, mm; the first one stands for all between the centre and itself. */
function nodesAcross({ layers, slotHalfMm }: SlotCell): number[] {
  const edge = layers.at(-1)!.toHalfMm;
  const firm = [slotHalfMm, ...layers.map(({ toHalfMm }) => toHalfMm)].filter((z) => z > 1);
  const graded = [...INWARDS_MM.map((d) => slotHalfMm - d), ...OUTWARDS_MM.map((d) => slotHalfMm + d)].filter(
    (z) => z > 1 && z < edge,
  );
  const nodes: number[] = [];
  for (const z of firm) if (nodes.every((known) => Math.abs(known - z) > 1e-6)) nodes.push(z);
  for (const z of graded) if (nodes.every((known) => Math.abs(known - z) > SAME_MM)) nodes.push(z);
  return nodes.toSorted((p, q) => p - q);
}

/** The half of a load case: couple and wedge. */
interface Compliances {
  readonly coupleCouple: number;
  readonly coupleWedge: number;
  readonly wedgeWedge: number;
}

interface Interval {
  readonly from: number;
  readonly to: number;
  readonly innerMm: number;
  readonly lengthMm: number;
  readonly material: CellMaterial;
  readonly isWhole: boolean;
}

/** The intervals across half the width: the middle one, even, then those between the nodes. */
function intervalsOf({ layers, slotHalfMm }: SlotCell, nodes: readonly number[]): Interval[] {
  const intervals: Interval[] = [];
  let inner = 0;
  // The even middle may hold more than one material: it is cut where they meet.
  const cuts = [...layers.map(({ toHalfMm }) => toHalfMm), ...nodes].toSorted((p, q) => p - q);
  for (const outer of cuts) {
    if (outer - inner < 1e-9) continue;
    const middle = (inner + outer) / 2;
    const layer = layers.find(({ toHalfMm }) => middle < toHalfMm) ?? layers.at(-1)!;
    const right = nodes.findIndex((z) => z > middle);
    intervals.push({
      from: Math.max(0, right - 1),
      to: right,
      innerMm: inner,
      lengthMm: outer - inner,
      material: layer.material,
      isWhole: middle > slotHalfMm,
    });
    inner = outer;
  }
  return intervals;
}

type Axis = 0 | 1 | 2;

/** What of a node differs across the width: nothing; the displacement across it alone; all. */
const EVEN = 0;
const ACROSS_ONLY = 1;
const SPREAD = 2;

/** Columns from the middle of the slot to halfway to the next, graded from the slot's face. */
function columnsOf({ kerfMm, halfPitchMm }: SlotCell): number[] {
  const face = kerfMm / 2;
  const offsets = OFFSETS_MM.filter(
    (offset, k) => face + offset + (offset - (OFFSETS_MM[k - 1] ?? 0)) / 2 < halfPitchMm,
  );
  return [0, face, ...offsets.map((offset) => face + offset), halfPitchMm];
}

/** The freedoms of the piece, and its matrix. */
class Piece {
  readonly xMm: readonly number[];
  readonly across: number;
  readonly cell: SlotCell;
  private readonly first: Int32Array;
  private readonly spread: Uint8Array;
  private order = 0;

  /** @param across nodes across the width; 1 is the plane model */
  constructor(cell: SlotCell, across: number) {
    this.cell = cell;
    this.across = across;
    this.xMm = columnsOf(cell);
    const rows = cell.rowYMm.length;
    this.first = new Int32Array(this.xMm.length * rows);
    this.spread = new Uint8Array(this.first.length);
    for (let column = 0; column < this.xMm.length; column += 1)
      for (let row = 0; row < rows; row += 1) {
        const node = column * rows + row;
        const isBoard = across > 1 && row <= cell.boardRows;
        const isEven = !isBoard || row === cell.boardRows || column === this.xMm.length - 1;
        this.spread[node] = isEven ? (isBoard ? ACROSS_ONLY : EVEN) : SPREAD;
        this.first[node] = this.order;
        this.order += isEven ? 2 + (isBoard ? across : 0) : 3 * across;
      }
  }

  get size(): number {
    return this.order;
  }

  /** @returns −1 for a displacement across the width where there is none. */
  freedom(column: number, row: number, m: number, axis: Axis): number {
    const node = column * this.cell.rowYMm.length + row;
    const kind = this.spread[node];
    if (kind === SPREAD) return this.first[node] + 3 * m + axis;
    if (axis < 2) return this.first[node] + axis;
    return kind === ACROSS_ONLY ? this.first[node] + 2 + m : -1;
  }
}

const CORNER_COLUMN = [0, 1, 1, 0];
const CORNER_ROW = [0, 0, 1, 1];
/** The constants of the four points of an element that is even across the width, from those per mm. */
function fill(out: Float64Array, material: ArrayLike<number>): void {
  for (let g = 0; g < 4; g += 1) for (let i = 0; i < 4; i += 1) out[4 * g + i] = material[i];
}

interface Matrix {
  readonly shape: BandShape;
  readonly band: Float64Array;
  add(i: number, j: number, value: number): void;
}

function matrixOf(piece: Piece): Matrix {
  const { across, cell } = piece;
  const rows = cell.rowYMm.length;
  // From a node's first freedom to the last one of the node beside and below it.
  let reach = 0;
  for (let column = 0; column + 1 < piece.xMm.length; column += 1)
    for (let row = 0; row + 1 < rows; row += 1)
      reach = Math.max(
        reach,
        Math.max(piece.freedom(column + 1, row + 1, across - 1, 1), piece.freedom(column + 1, row + 1, across - 1, 2)) -
          piece.freedom(column, row, 0, 0),
      );
  const shape: BandShape = { order: piece.size, halfBandwidth: reach };
  const stride = bandStride(shape);
  const band = new Float64Array(bandLength(shape));
  return {
    shape,
    band,
    add: (i, j, value) => {
      if (i >= j && j >= 0) band[j * stride + i - j] += value;
    },
  };
}

/** ∫N_a·N_b, ∫∂xN_a·N_b, ∫∂yN_a·N_b, ∫∂xN_a·∂xN_b and ∫∂yN_a·∂yN_b over a rectangle, 16 of each. */
function planeIntegrals(width: number, height: number) {
  const xi = [-1, 1, 1, -1];
  const eta = [-1, -1, 1, 1];
  const table = (of: (a: number, b: number) => number) =>
    Float64Array.from({ length: 16 }, (_, k) => of(k >> 2, k & 3));
  const [even, slope] = [(p: number, q: number) => 1 + (p * q) / 3, (p: number, q: number) => p * q];
  const area = width * height;
  return {
    mass: table((a, b) => (area / 16) * even(xi[a], xi[b]) * even(eta[a], eta[b])),
    dx: table((a, b) => (height / 8) * xi[a] * even(eta[a], eta[b])),
    dy: table((a, b) => (width / 8) * eta[a] * even(xi[a], xi[b])),
    dxx: table((a, b) => (height / width / 4) * slope(xi[a], xi[b]) * even(eta[a], eta[b])),
    dyy: table((a, b) => (width / height / 4) * slope(eta[a], eta[b]) * even(xi[a], xi[b])),
  };
}

/** A function across the width within an interval: of u and v, and of w. ∫ of products with others' and their slopes. */
interface AcrossIntegrals {
  /** Node of each local function. */
  readonly ends: readonly number[];
  readonly uu: readonly number[];
  /** ∫N_u′·N_u′, ∫N_u′·N_w, ∫N_u·N_w′, ∫N_w·N_w, ∫N_w′·N_w′; entry (m, n), m of the first. */
  readonly slopes: readonly number[];
  readonly slopeW: readonly number[];
  readonly uSlopeW: readonly number[];
  readonly ww: readonly number[];
  readonly slopesW: readonly number[];
}

/** @param inner, outer where the interval lies; the middle one has u and v even, and w from nothing at the centre line. */
function acrossIntegrals({ from, to, lengthMm: l, innerMm }: Interval, firstNodeMm: number): AcrossIntegrals {
  if (from === to) {
    const [p, q] = [innerMm / firstNodeMm, (innerMm + l) / firstNodeMm];
    return {
      ends: [from],
      uu: [l],
      slopes: [0],
      slopeW: [0],
      uSlopeW: [q - p],
      ww: [(l * (p * p + p * q + q * q)) / 3],
      slopesW: [(q - p) ** 2 / l],
    };
  }
  const mass = [l / 3, l / 6, l / 6, l / 3];
  const apart = [1 / l, -1 / l, -1 / l, 1 / l];
  return {
    ends: [from, to],
    uu: mass,
    slopes: apart,
    slopeW: [-1 / 2, -1 / 2, 1 / 2, 1 / 2],
    uSlopeW: [-1 / 2, 1 / 2, -1 / 2, 1 / 2],
    ww: mass,
    slopesW: apart,
  };
}

/** Adds a strip of the piece that lies between two nodes across the width, in all elements of the board. */
function addInterval(piece: Piece, matrix: Matrix, interval: Interval, firstNodeMm: number): void {
  const { cell } = piece;
  const { material, isWhole } = interval;
  const work = elementWork();
  const c = new Float64Array(16);
  fill(c, material.solid);
  const z = acrossIntegrals(interval, firstNodeMm);
  const [c13, c23, c33] = material.across;
  const [xz, yz] = material.shears;
  for (let column = 0; column + 1 < piece.xMm.length; column += 1) {
    const width = piece.xMm[column + 1] - piece.xMm[column];
    for (let row = column === 0 && !isWhole ? cell.slotRows : 0; row < cell.boardRows; row += 1) {
      const [y0, y1] = [cell.rowYMm[row], cell.rowYMm[row + 1]];
      elementStiffness([0, width, width, 0], [y0, y0, y1, y1], c, 0, work);
      const plane = planeIntegrals(width, y1 - y0);
      const at = (a: number, m: number, axis: Axis) =>
        piece.freedom(column + CORNER_COLUMN[a], row + CORNER_ROW[a], z.ends[m], axis);
      const both = (i: number, j: number, value: number) => {
        matrix.add(i, j, value);
        if (i !== j) matrix.add(j, i, value);
      };
      for (let m = 0; m < z.ends.length; m += 1)
        for (let n = 0; n < z.ends.length; n += 1) {
          const mn = z.ends.length * m + n;
          for (let a = 0; a < 4; a += 1)
            for (let b = 0; b < 4; b += 1) {
              const ab = 4 * a + b;
              const k = (i: 0 | 1, j: 0 | 1) => z.uu[mn] * work.stiffness[8 * (2 * a + i) + 2 * b + j];
              const shear = z.slopes[mn] * plane.mass[ab];
              matrix.add(at(a, m, 0), at(b, n, 0), k(0, 0) + xz * shear);
              matrix.add(at(a, m, 1), at(b, n, 1), k(1, 1) + yz * shear);
              matrix.add(at(a, m, 0), at(b, n, 1), k(0, 1));
              matrix.add(at(a, m, 1), at(b, n, 0), k(1, 0));
              matrix.add(
                at(a, m, 2),
                at(b, n, 2),
                c33 * z.slopesW[mn] * plane.mass[ab] + z.ww[mn] * (xz * plane.dxx[ab] + yz * plane.dyy[ab]),
              );
              // u or v of (a, m) with w of (b, n): ε_x·ε_z and γ_xz, and the same through the depth.
              const ba = 4 * b + a;
              both(at(a, m, 0), at(b, n, 2), c13 * z.uSlopeW[mn] * plane.dx[ab] + xz * z.slopeW[mn] * plane.dx[ba]);
              both(at(a, m, 1), at(b, n, 2), c23 * z.uSlopeW[mn] * plane.dy[ab] + yz * z.slopeW[mn] * plane.dy[ba]);
            }
        }
    }
  }
}

/** Adds elements that are even across the width. @param constants of half the width at a row, N/mm, at each of its points */
function addEven(
  piece: Piece,
  matrix: Matrix,
  columns: readonly [number, number],
  rows: readonly [number, number],
  constants: (row: number, out: Float64Array) => void,
): void {
  const work = elementWork();
  const c = new Float64Array(16);
  for (let row = rows[0]; row < rows[1]; row += 1) {
    constants(row, c);
    const [y0, y1] = [piece.cell.rowYMm[row], piece.cell.rowYMm[row + 1]];
    for (let column = columns[0]; column < columns[1]; column += 1) {
      const width = piece.xMm[column + 1] - piece.xMm[column];
      elementStiffness([0, width, width, 0], [y0, y0, y1, y1], c, 0, work);
      for (let a = 0; a < 8; a += 1)
        for (let b = 0; b < 8; b += 1)
          matrix.add(
            piece.freedom(column + CORNER_COLUMN[a >> 1], row + CORNER_ROW[a >> 1], 0, (a & 1) as 0 | 1),
            piece.freedom(column + CORNER_COLUMN[b >> 1], row + CORNER_ROW[b >> 1], 0, (b & 1) as 0 | 1),
            work.stiffness[8 * a + b],
          );
    }
  }
}

/** Constants of half the section at the points of a row, N/mm: of the board's layers, and below them of the neck. */
function sectionAt({ section, xMm, rowYMm, layers, boardRows }: SlotCell): (row: number, out: Float64Array) => void {
  const slice = section.sliceAt(xMm);
  const board = [0, 0, 0, 0];
  layers.forEach(({ toHalfMm, material }, k) => {
    const width = toHalfMm - (layers[k - 1]?.toHalfMm ?? 0);
    material.plane.forEach((value, i) => (board[i] += value * width));
  });
  return (row, out) => {
    if (row < boardRows) return fill(out, board);
    const [y0, y1] = [rowYMm[row], rowYMm[row + 1]];
    [-GAUSS, -GAUSS, GAUSS, GAUSS].forEach((eta, g) => {
      const y = y0 + ((1 + eta) / 2) * (y1 - y0);
      slice.stiffness(y, out, 4 * g);
      out[4 * g] += slice.barStiffness(y);
      for (let i = 0; i < 4; i += 1) out[4 * g + i] /= 2;
    });
  };
}

/** Solves the piece for both loads. @param shares of a wedge over the nodes across the width, Σ = 1 */
function solve(piece: Piece, matrix: Matrix, shares: ArrayLike<number>): Compliances {
  const { cell } = piece;
  const { shape, band } = matrix;
  const rows = cell.rowYMm.length;
  const stride = bandStride(shape);
  const hold = (dof: number) => {
    for (let k = 0; k <= shape.halfBandwidth; k += 1) {
      band[dof * stride + k] = 0;
      if (dof >= k) band[(dof - k) * stride + k] = 0;
    }
  };
  for (let row = 0; row < rows; row += 1) for (let m = 0; m < piece.across; m += 1) hold(piece.freedom(0, row, m, 0));
  const last = piece.xMm.length - 1;
  hold(piece.freedom(last, rows - 1, 0, 1));
  for (let dof = 0; dof < shape.order; dof += 1) if (band[dof * stride] === 0) band[dof * stride] = 1;

  const couple = coupleForces(piece, last);
  const block = createBlock(shape.order);
  for (const [dof, force] of couple) block[blockIndex(dof, 0)] += force;
  const wedge: [number, number][] = [];
  for (let row = 0; row <= cell.slotRows; row += 1)
    for (let m = 0; m < piece.across; m += 1)
      wedge.push([piece.freedom(1, row, m, 0), (cell.contact[row] * shares[m]) / 2]);
  for (const [dof, force] of wedge) block[blockIndex(dof, 1)] += force;
  solveBlock(factorise(shape, band), block);
  const work = (forces: readonly [number, number][], lane: number) =>
    forces.reduce((sum, [dof, force]) => sum + force * block[blockIndex(dof, lane)], 0);
  return { coupleCouple: work(couple, 0), coupleWedge: work(couple, 1), wedgeWedge: work(wedge, 1) };
}

/** A couple of 1 N·mm on half the section at the far end, as a strain linear in depth. */
function coupleForces(piece: Piece, column: number): [number, number][] {
  const { rowYMm } = piece.cell;
  const constants = sectionAt(piece.cell);
  const c = new Float64Array(16);
  const points: { row: number; y: number; stiffness: number; along: number }[] = [];
  for (let row = 0; row + 1 < rowYMm.length; row += 1) {
    constants(row, c);
    const [y0, y1] = [rowYMm[row], rowYMm[row + 1]];
    for (const [eta, g] of [
      [-GAUSS, 0],
      [GAUSS, 2],
    ] as const)
      // prettier-ignore
      points.push({ row, y: y0 + ((1 + eta) / 2) * (y1 - y0), stiffness: (c[4 * g] * (y1 - y0)) / 2, along: (1 + eta) / 2 });
  }
  const sum = (of: (p: (typeof points)[number]) => number) => points.reduce((total, p) => total + of(p), 0);
  const middle = sum((p) => p.stiffness * p.y) / sum((p) => p.stiffness);
  const stiffness = sum((p) => p.stiffness * (p.y - middle) ** 2);
  return points.flatMap(({ row, y, stiffness: s, along }) => {
    const force = (s * (y - middle)) / stiffness;
    return [
      [piece.freedom(column, row, 0, 0), force * (1 - along)],
      [piece.freedom(column, row + 1, 0, 0), force * along],
    ] as [number, number][];
  });
}

/** ∫N_m over the tang, over its length. */
function tangShares(nodes: readonly number[], tangHalfMm: number): Float64Array {
  const shares = new Float64Array(nodes.length);
  const add = (m: number, value: number) => (shares[m] += value / tangHalfMm);
  add(0, Math.min(nodes[0], tangHalfMm));
  for (let m = 1; m < nodes.length; m += 1) {
    const [a, b] = [nodes[m - 1], nodes[m]];
    const covered = Math.min(1, (tangHalfMm - a) / (b - a));
    if (covered <= 0) break;
    const outer = ((b - a) * covered * covered) / 2;
    add(m - 1, (b - a) * covered - outer);
    add(m, outer);
  }
  return shares;
}

function solveAcross(cell: SlotCell, nodes: readonly number[]): Compliances {
  const piece = new Piece(cell, nodes.length);
  const matrix = matrixOf(piece);
  for (const interval of intervalsOf(cell, nodes)) addInterval(piece, matrix, interval, nodes[0]);
  addEven(piece, matrix, [0, piece.xMm.length - 1], [cell.boardRows, cell.rowYMm.length - 1], sectionAt(cell));
  return solve(piece, matrix, tangShares(nodes, cell.tangHalfMm));
}

function solvePlane(cell: SlotCell, stripMm: number): Compliances {
  const piece = new Piece(cell, 1);
  const matrix = matrixOf(piece);
  const last = piece.xMm.length - 1;
  const section = sectionAt(cell);
  addEven(piece, matrix, [0, 1], [cell.slotRows, cell.rowYMm.length - 1], section);
  addEven(piece, matrix, [1, last], [0, cell.rowYMm.length - 1], section);
  if (stripMm > 0) {
    const wood = cell.layers[0].material.plane;
    addEven(piece, matrix, [0, 1], [0, cell.slotRows], (_row, out) =>
      fill(
        out,
        [0, 1, 2, 3].map((i) => (wood[i] * stripMm) / 2),
      ),
    );
  }
  return solve(piece, matrix, [1]);
}

const MOST_STEPS = 40;
const CLOSE = 1e-9;

/**
 * κ at which the plane piece gives as much under the couple. The strip is nearly a spring beside the slot's own give:
 * 1/(W(0) − W(κ)) is nearly linear in 1/κ, so secants in these two find it in a few steps.
 */
function stripFor(cell: SlotCell, coupleCouple: number): number {
  const none = solvePlane(cell, 0).coupleCouple;
  const wanted = none - coupleCouple;
  if (!(wanted > none * CLOSE)) return 0;
  const offAt = (stripMm: number) => 1 / (none - solvePlane(cell, stripMm).coupleCouple) - 1 / wanted;
  let [known, strip] = [0.5, 0.1];
  let [offKnown, off] = [offAt(known), offAt(strip)];
  for (let step = 0; step < MOST_STEPS && Math.abs(off) * wanted > CLOSE; step += 1) {
    const slope = (off - offKnown) / (1 / strip - 1 / known);
    // A strip as stiff as the whole board is the most that can be wanted.
    const inverse = Math.max(1 / (2 * cell.layers.at(-1)!.toHalfMm), 1 / strip - off / slope);
    [known, offKnown] = [strip, off];
    strip = 1 / inverse;
    off = offAt(strip);
    // As near as the difference of the two compliances can tell.
    if (strip === known || off === offKnown) break;
  }
  return strip;
}

/** The same board of one wood, sawn through, with a tang as long: what the plane model takes it for. */
function plain(cell: SlotCell): SlotCell {
  const half = cell.layers.at(-1)!.toHalfMm;
  return {
    ...cell,
    layers: [{ toHalfMm: half, material: cell.layers[0].material }],
    slotHalfMm: half,
    tangHalfMm: half,
  };
}

export function slotHold(cell: SlotCell): SlotHold {
  const nodes = nodesAcross(cell);
  const across = solveAcross(cell, nodes);
  // What a state of stress that varies across the width makes of a plain slot is not to be put down to its ends.
  const edge = nodes.at(-1)!;
  const plainAcross = solveAcross(plain(cell), [edge - PLAIN_MM, edge]);
  const plainPlane = solvePlane(plain(cell), 0);
  const wanted = (key: keyof Compliances) => (across[key] * plainPlane[key]) / plainAcross[key];
  const stripMm = stripFor(cell, wanted('coupleCouple'));
  const plane = solvePlane(cell, stripMm);
  const wedge = wanted('coupleWedge') / plane.coupleWedge;
  // Forces of half the neck in half of the slot's length: a wedge of 1 N opens it by four times their work.
  return { stripMm, wedge, ownMm: 4 * (wanted('wedgeWedge') - wedge * wedge * plane.wedgeWedge) };
}
