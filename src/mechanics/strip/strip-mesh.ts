/**
 * The mesh of a try strip: columns along it, rows through its depth, crowding towards the floors of the slots, where the
 * stress concentrates. Halving every element changes the bow by less than 1 % (the tests hold it).
 */
import type { StripDescription } from './strip.ts';

/** Offsets of the columns from a slot's face, mm. */
const OFFSETS_MM = [0.03, 0.08, 0.17, 0.3, 0.5, 0.85, 1.5, 2.6, 4.6, 8];
const WIDEST_MM = 8;
/** Columns of elements in the kerf. */
const KERF_COLUMNS = 6;
/** Rows as shares of the contact depth, of the rest of the slot from its floor up, and of the wood below it, downwards. */
const CONTACT = [0.35, 0.7, 1];
const ABOVE_FLOOR = [0.025, 0.08, 0.2, 0.45, 1];
const BELOW_FLOOR = [0.01, 0.028, 0.06, 0.12, 0.22, 0.4, 0.7, 1];

export type StripRefinement = 1 | 2;

export interface StripMesh {
  readonly columnXMm: Float64Array;
  /** y of the rows of nodes, from the top down. */
  readonly rowYMm: Float64Array;
  /** Rows of elements of the contact depth, and of the slot. */
  readonly contactRows: number;
  readonly slotRows: number;
  /** Columns of nodes at the faces of each slot. */
  readonly leftColumn: Int32Array;
  readonly rightColumn: Int32Array;
}

function halved(values: readonly number[]): number[] {
  return values.flatMap((value, i) => (i === 0 ? [value] : [(values[i - 1] + value) / 2, value]));
}

/** Columns strictly between a and b, graded from the ends that are faces of slots. */
function between(a: number, b: number, fromA: boolean, fromB: boolean): number[] {
  const reach = (b - a) / (fromA && fromB ? 2 : 1);
  const use = OFFSETS_MM.filter((offset) => offset < 0.85 * reach);
  const inner = [...(fromA ? use.map((o) => a + o) : []), ...(fromB ? use.map((o) => b - o).toReversed() : [])];
  const ends = [a, ...inner, b];
  return ends.slice(1).flatMap((to, i) => {
    const from = ends[i];
    const parts = Math.max(1, Math.ceil((to - from) / WIDEST_MM));
    const cuts = Array.from({ length: parts }, (_, p) => from + ((to - from) * (p + 1)) / parts);
    return i === ends.length - 2 ? cuts.slice(0, -1) : cuts;
  });
}

export function stripMesh(strip: StripDescription, refinement: StripRefinement): StripMesh {
  const { lengthMm, thicknessMm, slotXMm, kerfMm, slotDepthMm, contactDepthMm } = strip;
  const half = kerfMm / 2;
  let xs = [0];
  let from = 0;
  slotXMm.forEach((x, slot) => {
    const kerf = Array.from({ length: KERF_COLUMNS + 1 }, (_, i) => x - half + (kerfMm * i) / KERF_COLUMNS);
    xs.push(...between(from, x - half, slot > 0, true), ...kerf);
    from = kerf.at(-1)!;
  });
  xs.push(...between(from, lengthMm, slotXMm.length > 0, false), lengthMm);

  const rest = slotDepthMm - contactDepthMm;
  const below = thicknessMm - slotDepthMm;
  let ys = [
    0,
    ...CONTACT.map((share) => share * contactDepthMm),
    ...ABOVE_FLOOR.slice(0, -1)
      .toReversed()
      .map((share) => slotDepthMm - share * rest),
    slotDepthMm,
    ...BELOW_FLOOR.map((share) => slotDepthMm + share * below),
  ];
  if (refinement === 2) [xs, ys] = [halved(xs), halved(ys)];

  const columnXMm = Float64Array.from(xs);
  const find = (x: number) => columnXMm.findIndex((column) => Math.abs(column - x) < 1e-9);
  return {
    columnXMm,
    rowYMm: Float64Array.from(ys),
    contactRows: CONTACT.length * refinement,
    slotRows: (CONTACT.length + ABOVE_FLOOR.length) * refinement,
    leftColumn: Int32Array.from(slotXMm, (x) => find(x - half)),
    rightColumn: Int32Array.from(slotXMm, (x) => find(x + half)),
  };
}
