/**
 * The mesh: columns along the neck, rows through its depth, numbered column by column so that the matrix is banded.
 *
 * Columns are graded around every slot (offsets from its faces below) and at most `widestMm` apart; one column is the
 * kerf itself. Rows: contact depth, rest of the slot, board below it, neck, closer together towards the back. Where a tang
 * comes near the slot's floor the rest keeps a height of its own and the tang bears on part of it (`contactWeights`), so that
 * nothing jumps as it comes down.
 */
import { createSection, type Section } from './section.ts';

/** Offsets of the columns from a slot's face, mm, on the mesh that the checks were run with. */
const OFFSETS_MM = [0.4, 1.1, 2.3, 4.4, 7.5, 12];
const WIDEST_MM = 6;
/** Two columns closer than this are one. */
const SAME_MM = 0.25;
/** Rows of the rest of a slot are at least this high together, mm, and never more than this share of the slot. */
const LEAST_REST_MM = 0.1;
const MOST_REST_SHARE = 0.25;
/** A channel shallower than this has no rows of its own: they would be flat to nothing. */
const LEAST_CHANNEL_MM = 0.2;

/** How finely to mesh: 1 is the mesh of the program, 2 halves every element (for the convergence checks). */
export type Refinement = 1 | 2;

export interface Mesh {
  readonly section: Section;
  /** x of each column of nodes. */
  readonly columnXMm: Float64Array;
  /** Elements in a column; nodes per column = rows + 1. */
  readonly rows: number;
  /** y of each node, column by column. */
  readonly nodeYMm: Float64Array;
  /** First row below the slot, below the board. */
  readonly slotRows: number;
  readonly boardRows: number;
  /** For each slot the column of its left face (nut side); the next column is its right face. */
  readonly slotLeftColumn: Int32Array;
  /** For each column of elements the slot it lies in, or −1. */
  readonly slotOfColumn: Int32Array;
  readonly jointColumn: number;
}

/** Node number. */
export function nodeAt(mesh: Mesh, column: number, row: number): number {
  return column * (mesh.rows + 1) + row;
}

function halve(xs: readonly number[]): number[] {
  const out: number[] = [];
  xs.forEach((x, index) => {
    if (index > 0) out.push((xs[index - 1] + x) / 2);
    out.push(x);
  });
  return out;
}

/** Columns strictly between a and b, graded from the ends that are slot faces. */
function between(a: number, b: number, gradeFromA: boolean, gradeFromB: boolean): number[] {
  const gap = b - a;
  const reach = gradeFromA && gradeFromB ? gap / 2 : gap;
  const use = OFFSETS_MM.filter((offset, index) => {
    const size = offset - (OFFSETS_MM[index - 1] ?? 0);
    return offset <= reach - 0.4 * size;
  });
  const inner = [
    ...(gradeFromA ? use.map((offset) => a + offset) : []),
    ...(gradeFromB ? use.map((offset) => b - offset).toReversed() : []),
  ];
  const ends = [a, ...inner, b];
  const out: number[] = [];
  for (let i = 1; i < ends.length; i += 1) {
    const from = ends[i - 1];
    const to = ends[i];
    const parts = Math.max(1, Math.ceil((to - from) / WIDEST_MM - 1e-9));
    for (let p = 1; p <= parts; p += 1)
      if (!(i === ends.length - 1 && p === parts)) out.push(from + ((to - from) * p) / parts);
  }
  return out;
}

function columnsOf(section: Section): number[] {
  const { lengthMm, fretXMm, slot, rod, jointMm, heel } = section.description;
  const half = slot.kerfMm / 2;
  const xs = [0];
  let from = 0;
  fretXMm.forEach((x, index) => {
    xs.push(...between(from, x - half, index > 0, true), x - half, x + half);
    from = x + half;
  });
  xs.push(...between(from, lengthMm, fretXMm.length > 0, false), lengthMm);
  // Columns where the rod is anchored, the heel begins and the joint is, unless one is there or a slot is.
  const wanted = [rod?.startMm, rod?.endMm, jointMm, heel ? jointMm - heel.lengthMm : undefined];
  for (const want of wanted) {
    if (want === undefined || want <= 0 || want >= lengthMm) continue;
    if (xs.some((x) => Math.abs(x - want) < 2 * SAME_MM)) continue;
    if (fretXMm.some((x) => Math.abs(x - want) < half)) continue;
    xs.push(want);
  }
  return xs.toSorted((p, q) => p - q);
}

function spread(from: number, to: number, fractions: readonly number[]): number[] {
  return fractions.map((fraction) => from + (to - from) * fraction);
}

/** Rows crowd around the slot's floor, where the stress concentrates: the same accuracy with fewer unknowns. */
const CONTACT = [0.6, 1];
const REST_OF_SLOT = [0.8, 1];
const BELOW_SLOT = [0.17, 1];
/** Neck rows without a channel, and above and below the channel's floor. Closer towards the back, where the chord closes. */
const NECK = [0.25, 0.48, 0.69, 0.87, 1];
const ABOVE_FLOOR = [0.5, 1];
const BELOW_FLOOR = [0.42, 0.76, 1];

/**
 * The section with its heel beginning on a column of the mesh, where none could be put exactly. Within an element in which
 * a steep heel begins the straight bottom edge would run outside the wood.
 */
function withHeelOnColumn(section: Section, xs: readonly number[]): Section {
  const { description } = section;
  const { heel, jointMm } = description;
  if (heel === null) return section;
  const begin = jointMm - heel.lengthMm;
  const nearest = xs.reduce((best, x) => (Math.abs(x - begin) < Math.abs(best - begin) ? x : best));
  if (nearest === begin || Math.abs(nearest - begin) > 2 * SAME_MM || nearest >= jointMm) return section;
  return createSection({ ...description, heel: { ...heel, lengthMm: jointMm - nearest } });
}

/** @param stated the mesh's own section may have its heel begin up to half a millimetre from where this one has it. */
export function createMesh(stated: Section, refinement: Refinement = 1): Mesh {
  const { description } = stated;
  const half = description.slot.kerfMm / 2;
  const fretBeside = (x: number) => description.fretXMm.find((fret) => Math.abs(x - fret) < half + 1e-9);
  // A kerf stays one column wide: its nodes all lie on the walls, so that an empty slot leaves no loose node.
  const coarse = columnsOf(stated);
  const section = withHeelOnColumn(stated, coarse);
  const xs = refinement === 2 ? halve(coarse).filter((x) => fretBeside(x) === undefined || coarse.includes(x)) : coarse;
  const columnXMm = Float64Array.from(xs);
  const columns = xs.length;

  const hasChannel = description.channel !== null && description.channel.depthMm >= LEAST_CHANNEL_MM;
  const rowsAt = (x: number): number[] => {
    // Both walls of a slot take its depths at the fret: a wedge presses along one line, or it would not balance.
    const slotX = fretBeside(x) ?? x;
    const top = section.topMm(slotX);
    const floor = section.slotFloorMm(slotX);
    const rest = Math.min(LEAST_REST_MM, MOST_REST_SHARE * (floor - top));
    const contact = Math.min(section.contactFloorMm(slotX), floor - rest);
    const board = description.boardThicknessMm;
    const bottom = section.bottomMm(x);
    const channel = section.channelFloorMm(x);
    const slot = [...spread(top, contact, CONTACT), ...spread(contact, floor, REST_OF_SLOT)];
    const ys = [
      top,
      ...slot,
      ...spread(slot.at(-1)!, board, BELOW_SLOT),
      ...(hasChannel
        ? [...spread(board, channel, ABOVE_FLOOR), ...spread(channel, bottom, BELOW_FLOOR)]
        : spread(board, bottom, NECK)),
    ];
    return refinement === 2 ? halve(ys) : ys;
  };

  const first = rowsAt(0);
  const rows = first.length - 1;
  const nodeYMm = new Float64Array(columns * (rows + 1));
  xs.forEach((x, column) => nodeYMm.set(rowsAt(x), column * (rows + 1)));

  const find = (x: number): number => {
    const column = xs.findIndex((candidate) => Math.abs(candidate - x) < 1e-9);
    if (column < 0) throw new RangeError(`the mesh has no column at x = ${x} mm`);
    return column;
  };
  const slotLeftColumn = Int32Array.from(description.fretXMm.map((x) => find(x - half)));
  const slotOfColumn = new Int32Array(columns - 1).fill(-1);
  slotLeftColumn.forEach((column, slot) => slotOfColumn.fill(slot, column, column + 1));

  return {
    section,
    columnXMm,
    rows,
    nodeYMm,
    slotRows: 4 * refinement,
    boardRows: 6 * refinement,
    slotLeftColumn,
    slotOfColumn,
    jointColumn: holdingColumn(xs, description.jointMm, slotOfColumn),
  };
}

/** The column nearest to x, other than the first, that is not beside a sawn slot. */
function holdingColumn(xs: ArrayLike<number>, xMm: number, slotOfColumn: Int32Array): number {
  let best = xs.length - 1;
  for (let column = 1; column < xs.length; column += 1) {
    const cut = (slotOfColumn[column - 1] ?? -1) >= 0 || (slotOfColumn[column] ?? -1) >= 0;
    if (!cut && Math.abs(xs[column] - xMm) < Math.abs(xs[best] - xMm)) best = column;
  }
  return best;
}

/** The column through which a load enters or leaves at x: whole, not beside a sawn slot. Behind the nut it is the first. */
export function loadColumn(mesh: Mesh, xMm: number): number {
  return xMm <= 0 ? 0 : holdingColumn(mesh.columnXMm, xMm, mesh.slotOfColumn);
}
