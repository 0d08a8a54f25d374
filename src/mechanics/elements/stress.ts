/**
 * Stress in the wood around one slot, for the section picture.
 *
 *   σ = C·ε at the middle of each element, C of the board or, below it, of the whole width (plane stress, section.ts)
 *
 * σ_x acts along the grain: negative is compression, as between a tang and its wall; positive is tension, as under the
 * slot. At the middle of an element the incompatible modes have no strain, so the nodes' displacements are enough.
 * The peak at the corner of a slot's floor depends on the mesh (it is a singularity in theory): read the colours, not the
 * peak.
 */
import { Refused } from '../refusal.ts';
import type { Build } from '../../neck/build.ts';
import { hold, withSlots } from './assembly.ts';
import { blockIndex, createBlock, solveBlock } from './banded.ts';
import { EMPTY, type SlotFilling } from '../description.ts';
import type { NeckModel } from '../influence.ts';
import { CASES, caseColumn, type CaseName } from './loads.ts';
import { nodeAt, type Mesh } from './mesh.ts';

export interface StressField {
  readonly fret: number;
  /** Corners of each element, x and y in mm: 8 numbers an element (nut side top, body side top, body side bottom, nut side bottom). */
  readonly cornersMm: Float64Array;
  /** Stress along the grain in each element, MPa; negative is compression. */
  readonly alongMPa: Float64Array;
  /** Stress across the grain (through the depth) in each element, MPa. */
  readonly acrossMPa: Float64Array;
}

export interface StressLoad {
  readonly wedgeN: ArrayLike<number>;
  readonly cases?: Partial<Readonly<Record<CaseName, number>>>;
}

/** Displacements under one combination of the load cases, a value for each degree of freedom, mm. */
function displacements({ assembly, loads }: NeckModel, filling: SlotFilling, load: StressLoad): Float64Array {
  const { order } = assembly.shape;
  const block = createBlock(order);
  const add = (loadCase: number, amount: number) => {
    if (amount === 0) return;
    const { freedoms, forceN } = loads.cases[loadCase];
    freedoms.forEach((dof, k) => (block[blockIndex(dof, 0)] += amount * forceN[k]));
  };
  for (let slot = 0; slot < loads.wedges; slot += 1) add(slot, load.wedgeN[slot]);
  for (const name of CASES) add(caseColumn(loads.wedges, name), load.cases?.[name] ?? 0);
  for (const dof of assembly.held) block[blockIndex(dof, 0)] = 0;
  solveBlock(hold(assembly, withSlots(assembly, filling)), block);
  return Float64Array.from({ length: order }, (_, row) => block[blockIndex(row, 0)]);
}

/**
 * Stresses in the elements whose middle lies within `aroundMm` of fret n's slot and above `deepestMm` (from the crown).
 * @throws {RangeError} when the neck has no such fret.
 */
export function stressAround(
  model: NeckModel,
  load: StressLoad,
  fret: number,
  aroundMm: number,
  deepestMm: number,
  filling: SlotFilling = EMPTY,
): StressField {
  const { mesh } = model.assembly;
  const { fretXMm } = mesh.section.description;
  const centre = fretXMm[fret - 1];
  if (centre === undefined) throw new Refused({ code: 'fret-not-there', fret, frets: fretXMm.length });
  const u = displacements(model, filling, load);
  const corners: number[] = [];
  const along: number[] = [];
  const across: number[] = [];
  for (let column = 0; column < mesh.columnXMm.length - 1; column += 1) {
    const x = (mesh.columnXMm[column] + mesh.columnXMm[column + 1]) / 2;
    if (Math.abs(x - centre) > aroundMm) continue;
    const cut = mesh.slotOfColumn[column] >= 0;
    for (let row = cut ? mesh.slotRows : 0; row < mesh.rows; row += 1) {
      const element = elementStress(mesh, u, column, row);
      if (element.yMm > deepestMm) continue;
      corners.push(...element.corners);
      along.push(element.along);
      across.push(element.across);
    }
  }
  return {
    fret,
    cornersMm: Float64Array.from(corners),
    alongMPa: Float64Array.from(along),
    acrossMPa: Float64Array.from(across),
  };
}

function elementStress(mesh: Mesh, u: Float64Array, column: number, row: number) {
  const nodes = [
    nodeAt(mesh, column, row),
    nodeAt(mesh, column + 1, row),
    nodeAt(mesh, column + 1, row + 1),
    nodeAt(mesh, column, row + 1),
  ];
  const x = [0, 1, 1, 0].map((side) => mesh.columnXMm[column + side]);
  const y = nodes.map((node) => mesh.nodeYMm[node]);
  // Derivatives at the middle of the element.
  const width = x[1] - x[0];
  const height = (y[2] + y[3] - y[0] - y[1]) / 2;
  const tilt = (y[1] + y[2] - y[0] - y[3]) / 2 / width;
  const dEta = (axis: number) => (at(2, axis) + at(3, axis) - at(0, axis) - at(1, axis)) / 2 / height;
  const dXi = (axis: number) => (at(1, axis) + at(2, axis) - at(0, axis) - at(3, axis)) / 2 / width - tilt * dEta(axis);
  const at = (corner: number, axis: number) => u[2 * nodes[corner] + axis];
  const strainX = dXi(0);
  const strainY = dEta(1);

  const xMm = (x[0] + x[1]) / 2;
  const yMm = (y[0] + y[1] + y[2] + y[3]) / 4;
  const c = new Float64Array(4);
  mesh.section.stiffness(xMm, yMm, c, 0);
  const chord = mesh.section.chordMm(xMm, yMm);
  return {
    corners: [x[0], y[0], x[1], y[1], x[2], y[2], x[3], y[3]],
    yMm,
    along: (c[0] * strainX + c[1] * strainY) / chord,
    across: (c[1] * strainX + c[2] * strainY) / chord,
  };
}

/** How much of the neck around a slot the section picture shows, mm. */
export const STRESS_WINDOW_MM = 8;

/** The part of the depth that the section picture shows: the board and a little of the neck, mm. */
export function stressDepthMm(build: Pick<Build, 'boardThicknessMm'>): number {
  return build.boardThicknessMm + 4;
}
