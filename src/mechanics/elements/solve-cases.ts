/** Load cases solved with one factor, and what is read out of their displacements. */
import type { Assembly } from './assembly.ts';
import { blockIndex, createBlock, LANES, solveBlock, type BandFactor } from './banded.ts';
import { wedgeWeights, type LoadBlock } from './loads.ts';
import { nodeAt } from './mesh.ts';

/**
 * Solves load cases a block at a time, in a buffer that stays in the processor's cache: of the displacements only the few
 * that are wanted are kept.
 * @param take is given the displacements of each case: those of degree of freedom d are `block[blockIndex(d, lane)]`.
 */
export function solveCases(
  { shape, held }: Assembly,
  { cases }: Pick<LoadBlock, 'cases'>,
  factor: BandFactor,
  take: (loadCase: number, block: Float64Array, lane: number) => void,
): void {
  const block = createBlock(shape.order);
  for (let first = 0; first < cases.length; first += LANES) {
    const together = cases.slice(first, first + LANES);
    let firstRow = shape.order;
    block.fill(0);
    together.forEach(({ freedoms, forceN }, lane) => {
      for (let k = 0; k < freedoms.length; k += 1) {
        block[blockIndex(freedoms[k], lane)] += forceN[k];
        firstRow = Math.min(firstRow, freedoms[k]);
      }
    });
    for (const dof of held) block.fill(0, blockIndex(dof, 0), blockIndex(dof + 1, 0));
    solveBlock(factor, block, firstRow);
    together.forEach((_, lane) => take(first + lane, block, lane));
  }
}

/** Reads the line of the glue (the board's underside) and the openings of the slots out of the displacements of a case. */
export function caseReader(assembly: Assembly) {
  const { mesh } = assembly;
  const stations = mesh.columnXMm.length;
  const slots = mesh.slotLeftColumn.length;
  const weights = Array.from({ length: slots }, (_, slot) => wedgeWeights(assembly, slot));
  return (loadCase: number, block: Float64Array, lane: number, lineMm: Float64Array, openingMm: Float64Array): void => {
    const at = (node: number, axis: 0 | 1) => block[blockIndex(2 * node + axis, lane)];
    for (let station = 0; station < stations; station += 1)
      lineMm[loadCase * stations + station] = at(nodeAt(mesh, station, mesh.boardRows), 1);
    for (let slot = 0; slot < slots; slot += 1) {
      const left = mesh.slotLeftColumn[slot];
      let opening = 0;
      for (let row = 0; row <= mesh.slotRows; row += 1)
        opening += weights[slot][row] * (at(nodeAt(mesh, left + 1, row), 0) - at(nodeAt(mesh, left, row), 0));
      openingMm[loadCase * slots + slot] = opening;
    }
  };
}
