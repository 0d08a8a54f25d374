/**
 * A plane rectangle of the library's elements on a grid of one's own, solved by the library's banded solver: for checking
 * elements and solver apart from necks. Thickness 1 mm.
 */
import { multiply } from '../../../src/mechanics/elements/assembly.ts';
import {
  bandLength,
  bandStride,
  blockIndex,
  createBlock,
  factorise,
  solveBlock,
  type BandShape,
} from '../../../src/mechanics/elements/banded.ts';
import { elementStiffness, elementWork } from '../../../src/mechanics/elements/element.ts';

/** c11, c12, c22, c66 in MPa. */
export type Stiffness = readonly [number, number, number, number];

export interface Grid {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly stiffness: (column: number, row: number) => Stiffness;
  /** Which elements there are; all of them when left out. */
  readonly present?: (column: number, row: number) => boolean;
  /** Moves node (column, row) off the grid. */
  readonly move?: (column: number, row: number) => readonly [dx: number, dy: number];
  /** Longitudinal free strain of an element. */
  readonly freeStrain?: (column: number, row: number) => number;
}

export interface PlaneModel {
  readonly shape: BandShape;
  readonly band: Float64Array;
  readonly freeStrainForce: Float64Array;
  /** x and y of every node. */
  readonly node: (column: number, row: number) => { readonly x: number; readonly y: number; readonly dof: number };
  /**
   * Displacements under nodal forces, with some degrees of freedom given.
   * @param held degree of freedom → displacement
   */
  solve(forces: Float64Array, held: ReadonlyMap<number, number>): Float64Array;
}

export function planeModel(grid: Grid): PlaneModel {
  const columns = grid.xs.length;
  const rows = grid.ys.length;
  const order = 2 * columns * rows;
  const shape = { order, halfBandwidth: 2 * (rows + 1) + 1 };
  const stride = bandStride(shape);
  const band = new Float64Array(bandLength(shape));
  const freeStrainForce = new Float64Array(order);
  const node = (column: number, row: number) => {
    const [dx, dy] = grid.move?.(column, row) ?? [0, 0];
    return { x: grid.xs[column] + dx, y: grid.ys[row] + dy, dof: 2 * (column * rows + row) };
  };
  const work = elementWork();
  const used = new Uint8Array(order);
  for (let column = 0; column + 1 < columns; column += 1) {
    for (let row = 0; row + 1 < rows; row += 1) {
      if (grid.present && !grid.present(column, row)) continue;
      const corners = [node(column, row), node(column + 1, row), node(column + 1, row + 1), node(column, row + 1)];
      const c = Array.from({ length: 4 }, () => grid.stiffness(column, row)).flat();
      elementStiffness(
        corners.map((corner) => corner.x),
        corners.map((corner) => corner.y),
        c,
        grid.freeStrain?.(column, row) ?? 0,
        work,
      );
      const dofs = corners.flatMap((corner) => [corner.dof, corner.dof + 1]);
      dofs.forEach((i, a) => {
        used[i] = 1;
        freeStrainForce[i] += work.freeStrainForce[a];
        dofs.forEach((j, b) => {
          if (i >= j) band[j * stride + i - j] += work.stiffness[a * 8 + b];
        });
      });
    }
  }
  // Nodes of no element stand still.
  used.forEach((isUsed, dof) => {
    if (!isUsed) band[dof * stride] = 1;
  });

  return {
    shape,
    band,
    freeStrainForce,
    node,
    solve(forces, held) {
      const given = new Float64Array(order);
      held.forEach((value, dof) => (given[dof] = value));
      const moved = multiply(shape, band, given);
      const block = createBlock(order);
      forces.forEach((force, dof) => (block[blockIndex(dof, 0)] = force - moved[dof]));
      const matrix = Float64Array.from(band);
      for (const dof of held.keys()) {
        for (let k = 1; k <= shape.halfBandwidth; k += 1) {
          matrix[dof * stride + k] = 0;
          if (dof >= k) matrix[(dof - k) * stride + k] = 0;
        }
        matrix[dof * stride] = 1;
        block[blockIndex(dof, 0)] = 0;
      }
      solveBlock(factorise(shape, matrix), block);
      return given.map((value, dof) => value + block[blockIndex(dof, 0)]);
    },
  };
}

/** Plane stress of an orthotropic material, MPa. */
export function orthotropic(modulusMPa: number, depthRatio: number, shearRatio: number, poisson: number): Stiffness {
  const m = 1 - poisson * poisson * depthRatio;
  return [
    modulusMPa / m,
    (poisson * depthRatio * modulusMPa) / m,
    (depthRatio * modulusMPa) / m,
    shearRatio * modulusMPa,
  ];
}

export function isotropic(modulusMPa: number, poisson: number): Stiffness {
  return orthotropic(modulusMPa, 1, 1 / (2 * (1 + poisson)), poisson);
}

/** Nodal forces of a traction in x, linear along a vertical edge of the grid. */
export function edgeTraction(
  model: PlaneModel,
  column: number,
  ys: readonly number[],
  traction: (y: number) => number,
): Float64Array {
  const forces = new Float64Array(model.shape.order);
  for (let row = 0; row + 1 < ys.length; row += 1) {
    const height = ys[row + 1] - ys[row];
    const upper = traction(ys[row]);
    const lower = traction(ys[row + 1]);
    forces[model.node(column, row).dof] += (height * (2 * upper + lower)) / 6;
    forces[model.node(column, row + 1).dof] += (height * (upper + 2 * lower)) / 6;
  }
  return forces;
}
