/**
 * Frets in before the board is on the neck: the board is fretted on the bench, clamped flat on the neck, and let go when the
 * glue has set. By superposition (elements/board-hold.ts), with s the share of its own way that the board slides:
 *
 *   clamped     C_c = s·C_slide + (1 − s)·C_stick              how far wedges open the slots of the board held flat
 *   let go      C_e = s·(C_slide + O) + (1 − s)·C              O: the slots of the neck under the reversed hold, C: those of
 *                                                              the neck that is fretted finished
 *   line        w_i = s·l_i + (1 − s)·w_i(pressed)             l: the neck under the reversed hold of wedge i
 *
 * Forces: seated in the clamped board along the curve of first loading, since clamping flat closes the slots of a board that
 * has bowed freely; then, as the slots open when the clamps come off, back along the elastic lines of seated contacts.
 * What holds it flat pushes and pulls. The pull, averaged from slot to slot, is what clamps have to press against:
 *
 *   p_i = max(0, Σ_{x in i} R_y)/(b·Δx_i)                      R_y > 0: the hold pulls the board down; b its width there
 *
 * s is an assumption (`clampSlidePercent`), and in the band.
 */
import type { Build } from '../neck/build.ts';
import type { Deviations } from './deviations.ts';
import { boardAlone, released } from './elements/board-hold.ts';
import { contactForce, seatedAt, type Contact, type Seated } from './seating/contact.ts';
import { seat, type Seating } from './seating/seating.ts';
import { giveOwn, solveCasesOnEmpty, type Influence, type NeckModel } from './influence.ts';
import { extremeRelief, reliefFromDepth } from './relief.ts';

/** What a fretted board does, for wedges of 1 N: made once for a mesh. */
export interface BoardFirst {
  readonly stationXMm: Float64Array;
  readonly freeMm: Float64Array;
  readonly clampedSlideMm: Float64Array;
  readonly clampedStickMm: Float64Array;
  readonly releasedMm: Float64Array;
  /** Depth of the underside of the free board, slots × stations. */
  readonly freeLineMm: Float64Array;
  /** Relief of the neck when the hold is let go, slots × stations. */
  readonly slideLineMm: Float64Array;
  /** Pressure of the hold on the board between neighbouring slots, MPa/N, pulling positive: slots × (slots − 1). */
  readonly pullMPa: { readonly slide: Float64Array; readonly stick: Float64Array };
}

export function boardFirst(model: NeckModel): BoardFirst {
  const { assembly } = model;
  const held = boardAlone(assembly);
  const own = assembly.holds?.map(({ ownMm }) => ownMm);
  const [free, slide, stick] = (['free', 'slide', 'stick'] as const).map((kind) => {
    const board = held(kind);
    if (own) giveOwn(board.openingMm, own);
    return board;
  });
  const letGo = solveCasesOnEmpty(model, released(assembly, slide));
  const { fretXMm } = assembly.mesh.section.description;
  const pull = (reactionN: Float64Array) => pullBetween(model, reactionN, fretXMm);
  return {
    stationXMm: assembly.mesh.columnXMm,
    freeMm: free.openingMm,
    clampedSlideMm: slide.openingMm,
    clampedStickMm: stick.openingMm,
    releasedMm: slide.openingMm.map((opening, k) => opening + letGo.openingMm[k]),
    freeLineMm: free.lineMm,
    slideLineMm: letGo.lineMm,
    pullMPa: { slide: pull(slide.reactionN), stick: pull(stick.reactionN) },
  };
}

/** The hold on the underside, summed between the middles of neighbouring slots and shared over the board there. */
function pullBetween({ assembly }: NeckModel, reactionN: Float64Array, fretXMm: readonly number[]): Float64Array {
  const { columnXMm, section } = assembly.mesh;
  const columns = columnXMm.length;
  const gaps = fretXMm.length - 1;
  const out = new Float64Array(fretXMm.length * gaps);
  for (let j = 0; j < fretXMm.length; j += 1)
    for (let gap = 0; gap < gaps; gap += 1) {
      const [from, to] = [fretXMm[gap], fretXMm[gap + 1]];
      let sum = 0;
      for (let column = 0; column < columns; column += 1)
        if (columnXMm[column] > from && columnXMm[column] < to) sum += reactionN[2 * (j * columns + column) + 1];
      out[j * gaps + gap] = sum / ((to - from) * section.widthMm((from + to) / 2));
    }
  return out;
}

/** The board of a build when it is fretted first. */
export interface FrettedBoard extends Seating {
  readonly standing: (forceLeft: number) => Seated[];
  /** Force of each fret while the board is held flat, N. */
  readonly clampedForceN: Float64Array;
  /** Bow of the free board between its first and its last fret, hump positive, mm. */
  readonly freeBowMm: number;
  /** Pressure at which clamps hold it flat everywhere, MPa. */
  readonly clampPressureMPa: number;
  /** Relief of each wedge with its force, slots × stations. */
  readonly wedgeMm: Float64Array;
}

const mixed = (a: Float64Array, b: Float64Array, share: number): Float64Array =>
  a.map((value, k) => share * value + (1 - share) * b[k]);

/** C + Cᵀ over 2: what is let go is not symmetric to the last digit, since the board slides on one side of the glue only. */
function symmetric(matrix: Float64Array, n: number): Float64Array {
  return matrix.map((value, k) => (value + matrix[(k % n) * n + Math.floor(k / n)]) / 2);
}

/** @param share s, 0 to 1 */
export function frettedBoard(
  unit: BoardFirst,
  contacts: readonly Contact[],
  empty: Influence,
  pressedMm: Float64Array,
  share: number,
  fretXMm: readonly number[],
): FrettedBoard {
  const n = contacts.length;
  const stations = empty.stationXMm.length;
  const clamped = seat(contacts, mixed(unit.clampedSlideMm, unit.clampedStickMm, share));
  const standing = (forceLeft: number) =>
    contacts.map((contact, i) => seatedAt(contact, clamped.openingMm[i], forceLeft));
  const flexibility = symmetric(mixed(unit.releasedMm, pressedMm, share), n);
  const { forceN, openingMm, stiffnessNMm } = seat(contacts, flexibility, undefined, standing(1), clamped.forceN);
  const free = seat(contacts, unit.freeMm);

  const wedgeMm = new Float64Array(n * stations);
  for (let i = 0; i < n; i += 1)
    for (let at = i * stations; at < (i + 1) * stations; at += 1)
      wedgeMm[at] = forceN[i] * (share * unit.slideLineMm[at] + (1 - share) * empty.lineMm[at]);
  return {
    forceN,
    openingMm,
    stiffnessNMm,
    standing,
    clampedForceN: clamped.forceN,
    freeBowMm: freeBowMm(unit.freeLineMm, free.forceN, empty.stationXMm, fretXMm),
    clampPressureMPa: Math.max(0, ...pullOf(mixed(unit.pullMPa.slide, unit.pullMPa.stick, share), clamped.forceN)),
    wedgeMm,
  };
}

/** Pressure of the pull between neighbouring slots under all wedges, MPa. */
function pullOf(pullMPa: Float64Array, forceN: Float64Array): number[] {
  const gaps = forceN.length - 1;
  return Array.from({ length: gaps }, (_, gap) =>
    forceN.reduce((sum, force, j) => sum + force * pullMPa[j * gaps + gap], 0),
  );
}

function freeBowMm(
  lineMm: Float64Array,
  forceN: Float64Array,
  stationXMm: Float64Array,
  fretXMm: readonly number[],
): number {
  const stations = stationXMm.length;
  const depth = new Float64Array(stations);
  forceN.forEach((force, j) => {
    for (let k = 0; k < stations; k += 1) depth[k] += force * lineMm[j * stations + k];
  });
  const [from, to] = [fretXMm[0], fretXMm.at(-1)!];
  return -extremeRelief(stationXMm, reliefFromDepth(stationXMm, depth, from, to), from, to).extremeMm;
}

/** Force of contacts as they stand at an opening. */
export function forcesAt(
  contacts: readonly Contact[],
  standing: readonly Seated[],
  openingMm: Float64Array,
): Float64Array {
  return openingMm.map((opening, i) => contactForce(contacts[i], opening, standing[i]).forceN);
}

/** s of a build. */
export function slideShare(
  build: Pick<Build, 'clampSlidePercent'>,
  { clampSlide }: Pick<Deviations, 'clampSlide'>,
): number {
  return Math.min(1, Math.max(0, build.clampSlidePercent / 100 + clampSlide));
}
