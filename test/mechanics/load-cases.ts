/** Load cases and what they do as full vectors: for checks of the solver's parts. */
import type { Assembly } from '../../src/mechanics/elements/assembly.ts';
import { blockIndex, type BandFactor } from '../../src/mechanics/elements/banded.ts';
import type { LoadBlock } from '../../src/mechanics/elements/loads.ts';
import { solveCases } from '../../src/mechanics/elements/solve-cases.ts';

/** Nodal forces of a load case, one for each degree of freedom, N. */
export function forcesOf({ cases }: LoadBlock, loadCase: number, order: number): Float64Array {
  const force = new Float64Array(order);
  const { freedoms, forceN } = cases[loadCase];
  freedoms.forEach((dof, k) => (force[dof] += forceN[k]));
  return force;
}

/** Displacements of every load case, one for each degree of freedom, mm. */
export function displacementsOf(assembly: Assembly, loads: LoadBlock, factor: BandFactor): Float64Array[] {
  const all: Float64Array[] = [];
  solveCases(assembly, loads, factor, (loadCase, block, lane) => {
    all[loadCase] = Float64Array.from({ length: assembly.shape.order }, (_, dof) => block[blockIndex(dof, lane)]);
  });
  return all;
}
