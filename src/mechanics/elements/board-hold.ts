/**
 * The board by itself, fretted, and held flat on the neck while the glue takes hold: the same elements as in the neck, down to
 * the board's underside.
 *
 *   free      nothing on the underside: how far the board bows on the bench
 *   slide     no displacement through the depth anywhere on the underside, free to slide along the neck
 *   stick     no displacement at all on the underside
 *
 * What the hold pushes and pulls with is let go when the clamps come off: it acts reversed on the whole neck. Held by
 * `stick` the two add up to wedges in the slots of the whole neck, since a displacement of nothing on the underside and
 * reversed reactions are the equations of the whole. A board that slides a share s of the way that it would go by itself is
 * held by s times `slide` and 1 − s times `stick`: prescribed displacements add up as loads do.
 */
import { assemble, hold, multiply, withSlots, type Assembly } from './assembly.ts';
import { blockIndex, type BandFactor } from './banded.ts';
import { EMPTY } from '../description.ts';
import { wedgeLoads, type NodalForces } from './loads.ts';
import { nodeAt, type Mesh } from './mesh.ts';
import { caseReader, solveCases } from './solve-cases.ts';

/** What the board does under 1 N in each slot, held in one way: row j, wedge j. */
export interface BoardHeld {
  /** How far slot i opens along the tang, mm/N: slots × slots. */
  readonly openingMm: Float64Array;
  /** What the hold does to the board's underside, N/N: slots × (2 × columns), along the neck and through the depth. */
  readonly reactionN: Float64Array;
  /** Depth displacement of the underside, mm/N: slots × columns. */
  readonly lineMm: Float64Array;
}

export type BoardHold = 'free' | 'slide' | 'stick';

/** The board alone as a mesh: the neck's, down to the board's underside. */
function boardMesh(mesh: Mesh): Mesh {
  const rows = mesh.boardRows;
  const columns = mesh.columnXMm.length;
  const nodeYMm = new Float64Array(columns * (rows + 1));
  for (let column = 0; column < columns; column += 1)
    for (let row = 0; row <= rows; row += 1)
      nodeYMm[column * (rows + 1) + row] = mesh.nodeYMm[nodeAt(mesh, column, row)];
  return { ...mesh, rows, nodeYMm };
}

function heldBy(mesh: Mesh, kind: BoardHold): number[] {
  const columns = mesh.columnXMm.length;
  const under = Array.from({ length: columns }, (_, column) => 2 * nodeAt(mesh, column, mesh.rows));
  const joint = under[mesh.jointColumn];
  const isPlane = mesh.section.description.support === 'plane';
  const along = isPlane ? Array.from({ length: mesh.rows + 1 }, (_, row) => joint - 2 * row) : [joint];
  if (kind === 'free') return [...along, joint + 1, ...(isPlane ? [] : [under[0] + 1])];
  return [...along, ...under.map((dof) => dof + 1), ...(kind === 'stick' ? under : [])];
}

/** @param neck the whole neck, whose slots are held at their ends as there */
export function boardAlone(neck: Assembly): (kind: BoardHold) => BoardHeld {
  const mesh = boardMesh(neck.mesh);
  const whole = assemble(mesh, neck.holds);
  const band = withSlots(whole, EMPTY);
  return (kind) => {
    const assembly: Assembly = { ...whole, held: heldBy(mesh, kind) };
    return wedged(assembly, band, hold(assembly, band.slice()));
  };
}

function wedged(assembly: Assembly, band: Float64Array, factor: BandFactor): BoardHeld {
  const { mesh, shape } = assembly;
  const columns = mesh.columnXMm.length;
  const slots = mesh.slotLeftColumn.length;
  const out: BoardHeld = {
    openingMm: new Float64Array(slots * slots),
    reactionN: new Float64Array(slots * 2 * columns),
    lineMm: new Float64Array(slots * columns),
  };
  const read = caseReader(assembly);
  const u = new Float64Array(shape.order);
  solveCases(assembly, { cases: wedgeLoads(assembly) }, factor, (j, block, lane) => {
    read(j, block, lane, out.lineMm, out.openingMm);
    for (let dof = 0; dof < shape.order; dof += 1) u[dof] = block[blockIndex(dof, lane)];
    // No wedge reaches the underside: what the matrix makes of the displacements there is the hold.
    const force = multiply(shape, band, u);
    for (let column = 0; column < columns; column += 1) {
      const under = 2 * nodeAt(mesh, column, mesh.rows);
      out.reactionN.set([force[under], force[under + 1]], 2 * (j * columns + column));
    }
  });
  return out;
}

/** The reactions of a hold, reversed, as load cases of the whole neck: one for each wedge. */
export function released(neck: Assembly, { reactionN }: Pick<BoardHeld, 'reactionN'>): NodalForces[] {
  const { mesh } = neck;
  const columns = mesh.columnXMm.length;
  return Array.from({ length: mesh.slotLeftColumn.length }, (_, j) => {
    const freedoms = Array.from({ length: columns }, (__, column) => 2 * nodeAt(mesh, column, mesh.boardRows));
    return {
      freedoms: freedoms.flatMap((dof) => [dof, dof + 1]),
      forceN: Array.from(reactionN.subarray(2 * j * columns, 2 * (j + 1) * columns), (force) => -force),
    };
  });
}
