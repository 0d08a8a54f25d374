/**
 * A companion of the plane model that lets the width strain as it likes, for telling which state of stress holds across it.
 *
 *   u = u₀(x, y) + ζ·u₂(x, y)      v = v₀(x, y) + ζ·v₂(x, y)      w = z·φ(x, y)      ζ = z² − b²/12, b the width there
 *
 * Integrated across a width b the five fields part: (u₀, v₀, φ) with the constants of the solid, times b; (u₂, v₂) times
 * b⁵/180; and the shear between layers of the width, γ_xz = z·(2u₂ + φ_x) and γ_yz = z·(2v₂ + φ_y), times b³/12. Where b is
 * small beside the lengths over which things change, shear holds nothing back and plane stress comes out, with the
 * anticlastic bending of a beam exactly; where it is large, plane strain.
 *
 * Bilinear elements, u₀ and v₀ with incompatible modes; the shear across the width at the element's middle.
 */
import {
  bandLength,
  bandStride,
  blockIndex,
  createBlock,
  factorise,
  solveBlock,
} from '../../../src/mechanics/elements/banded.ts';

/** Constants of a wood in three directions, times E_x. */
export interface Solid {
  readonly modulusMPa: number;
  readonly depthRatio: number;
  readonly widthRatio: number;
  readonly shearXY: number;
  readonly shearXZ: number;
  readonly shearYZ: number;
  readonly poissonXY: number;
  readonly poissonXZ: number;
  readonly poissonYZ: number;
}

/** Stiffness of a solid, MPa: 3 × 3 of the normal strains, and the shear moduli. */
export interface Stiffness3 {
  readonly normal: readonly (readonly number[])[];
  readonly gxy: number;
  readonly gxz: number;
  readonly gyz: number;
}

export function stiffnessOf(wood: Solid): Stiffness3 {
  const [ex, ey, ez] = [1, wood.depthRatio, wood.widthRatio].map((ratio) => ratio * wood.modulusMPa) as [number, number, number]; // prettier-ignore
  const [xy, xz, yz] = [-wood.poissonXY / ex, -wood.poissonXZ / ex, -wood.poissonYZ / ey];
  const normal = inverse([
    [1 / ex, xy, xz],
    [xy, 1 / ey, yz],
    [xz, yz, 1 / ez],
  ]);
  const [gxy, gxz, gyz] = [wood.shearXY, wood.shearXZ, wood.shearYZ].map((ratio) => ratio * wood.modulusMPa) as [number, number, number]; // prettier-ignore
  return { normal, gxy, gxz, gyz };
}

function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let p = 0; p < n; p += 1) {
    const pivot = work[p][p];
    work[p] = work[p].map((value) => value / pivot);
    for (let i = 0; i < n; i += 1) {
      const factor = work[i][p];
      if (i !== p) work[i] = work[i].map((value, j) => value - factor * work[p][j]);
    }
  }
  return work.map((row) => row.slice(n));
}

/** What is held across the width: nothing is chosen (`free`), or one of the two plane states is forced. */
export type Across = 'free' | 'stress' | 'strain';

export interface WideGrid {
  readonly columnXMm: ArrayLike<number>;
  /** y of every node: columns × (rows + 1), column by column. */
  readonly nodeYMm: ArrayLike<number>;
  readonly rows: number;
  readonly present: (column: number, row: number) => boolean;
  /** Width and solid at a point; the width is that of all material there, the solid its mean. */
  readonly at: (xMm: number, yMm: number) => { readonly widthMm: number; readonly solid: Stiffness3 };
  readonly across: Across;
}

/** A force along x on a node. */
export interface Push {
  readonly column: number;
  readonly row: number;
  readonly forceN: number;
}

const G = 1 / Math.sqrt(3);
const XI = [-1, 1, 1, -1] as const;
const ETA = [-1, -1, 1, 1] as const;

interface Point {
  readonly dx: number[];
  readonly dy: number[];
  readonly shape: number[];
  readonly area: number;
  readonly xMm: number;
  readonly yMm: number;
  readonly jacobian: readonly [number, number, number, number];
}

function pointOf(x: readonly number[], y: readonly number[], xi: number, eta: number): Point {
  const [nx, ny] = [XI.map((s, k) => (s * (1 + ETA[k] * eta)) / 4), ETA.map((s, k) => (s * (1 + XI[k] * xi)) / 4)];
  const sum = (n: readonly number[], q: readonly number[]) => n.reduce((total, value, k) => total + value * q[k], 0);
  const jacobian = [sum(nx, x), sum(nx, y), sum(ny, x), sum(ny, y)] as const;
  const [a, b, c, d] = jacobian;
  const area = a * d - b * c;
  const shape = XI.map((s, k) => ((1 + s * xi) * (1 + ETA[k] * eta)) / 4);
  return {
    dx: nx.map((value, k) => (d * value - b * ny[k]) / area),
    dy: nx.map((value, k) => (a * ny[k] - c * value) / area),
    shape,
    area,
    xMm: sum(shape, x),
    yMm: sum(shape, y),
    jacobian,
  };
}

/** Plane constants from those of the solid. */
function plane({ normal }: Stiffness3, across: Across): readonly [number, number, number] {
  const c = (i: number, j: number) => normal[i][j];
  const free = (i: number, j: number) => c(i, j) - (across === 'stress' ? (c(i, 2) * c(j, 2)) / c(2, 2) : 0);
  return [free(0, 0), free(0, 1), free(1, 1)];
}

const MODES = 4;

class WideElement {
  readonly fields: number;
  readonly size: number;
  readonly matrix: Float64Array[];
  private readonly grid: WideGrid;

  constructor(grid: WideGrid, x: readonly number[], y: readonly number[]) {
    this.grid = grid;
    this.fields = grid.across === 'free' ? 5 : 2;
    this.size = 4 * this.fields;
    this.matrix = Array.from({ length: this.size + MODES }, () => new Float64Array(this.size + MODES));
    const middle = pointOf(x, y, 0, 0);
    for (const [xi, eta] of [[-G, -G], [G, -G], [G, G], [-G, G]] as const) this.inPlane(pointOf(x, y, xi, eta), middle, xi, eta); // prettier-ignore
    if (this.fields === 5) this.acrossShear(middle);
    this.condense();
  }

  private strains(count: number): Float64Array[] {
    return Array.from({ length: count }, () => new Float64Array(this.size + MODES));
  }

  private inPlane(point: Point, middle: Point, xi: number, eta: number): void {
    const { fields, size } = this;
    const { widthMm, solid } = this.grid.at(point.xMm, point.yMm);
    const [ex, ey, exy] = this.strains(3) as [Float64Array, Float64Array, Float64Array];
    const [ez] = this.strains(1) as [Float64Array];
    const [second0, second1, second2] = this.strains(3) as [Float64Array, Float64Array, Float64Array];
    for (let k = 0; k < 4; k += 1) {
      const at = k * fields;
      ex[at] = exy[at + 1] = point.dx[k]!;
      ey[at + 1] = exy[at] = point.dy[k]!;
      if (fields === 2) continue;
      ez[at + 2] = point.shape[k]!;
      second0[at + 3] = second2[at + 4] = point.dx[k]!;
      second1[at + 4] = second2[at + 3] = point.dy[k]!;
    }
    const [ja, jb, jc, jd] = middle.jacobian;
    const modes = [[-2 * xi * jd, 2 * xi * jc], [2 * eta * jb, -2 * eta * ja]] as const; // prettier-ignore
    modes.forEach(([along, down], q) => {
      ex[size + 2 * q] = exy[size + 2 * q + 1] = along / point.area;
      ey[size + 2 * q + 1] = exy[size + 2 * q] = down / point.area;
    });
    const [c11, c12, c22] = fields === 5 ? plane(solid, 'strain') : plane(solid, this.grid.across);
    const [c13, c23, c33] = [solid.normal[0][2], solid.normal[1][2], solid.normal[2][2]];
    const first = [[c11, c12, c13, 0], [c12, c22, c23, 0], [c13, c23, c33, 0], [0, 0, 0, solid.gxy]]; // prettier-ignore
    this.add([ex, ey, ez, exy], first, point.area * widthMm);
    if (fields === 2) return;
    const second = [[c11, c12, 0], [c12, c22, 0], [0, 0, solid.gxy]]; // prettier-ignore
    this.add([second0, second1, second2], second, (point.area * widthMm ** 5) / 180);
  }

  private acrossShear(middle: Point): void {
    const { widthMm, solid } = this.grid.at(middle.xMm, middle.yMm);
    const [gx, gy] = this.strains(2) as [Float64Array, Float64Array];
    for (let k = 0; k < 4; k += 1) {
      gx[5 * k + 2] = middle.dx[k]!;
      gy[5 * k + 2] = middle.dy[k]!;
      gx[5 * k + 3] = gy[5 * k + 4] = 0.5;
    }
    this.add([gx, gy], [[solid.gxz, 0], [0, solid.gyz]], (4 * middle.area * widthMm ** 3) / 12); // prettier-ignore
  }

  private add(strains: readonly Float64Array[], constants: readonly (readonly number[])[], weight: number): void {
    for (let i = 0; i < this.matrix.length; i += 1) {
      const stress = constants.map((row) => row.reduce((sum, value, k) => sum + value * strains[k][i], 0));
      if (stress.every((value) => value === 0)) continue;
      for (let j = 0; j < this.matrix.length; j += 1)
        this.matrix[i][j] += weight * stress.reduce((sum, value, k) => sum + value * strains[k][j], 0);
    }
  }

  private condense(): void {
    const { matrix } = this;
    for (let p = matrix.length - 1; p >= this.size; p -= 1)
      for (let i = 0; i < p; i += 1) {
        const factor = matrix[i][p] / matrix[p][p];
        if (factor !== 0) for (let j = 0; j < p; j += 1) matrix[i][j] -= factor * matrix[p][j];
      }
  }
}

/**
 * Displacements of the middle of the width under some sets of pushes, each in equilibrium with a clamped last column.
 * @returns for each set, the displacement of a node along x (axis 0) or down (axis 1), mm
 */
export function solveWide(
  grid: WideGrid,
  sets: readonly (readonly Push[])[],
): ((column: number, row: number, axis: 0 | 1) => number)[] {
  const { columnXMm, nodeYMm, rows } = grid;
  const columns = columnXMm.length;
  const fields = grid.across === 'free' ? 5 : 2;
  const perColumn = (rows + 1) * fields;
  const shape = { order: columns * perColumn, halfBandwidth: perColumn + 2 * fields };
  const stride = bandStride(shape);
  const band = new Float64Array(bandLength(shape));
  const y = (column: number, row: number) => nodeYMm[column * (rows + 1) + row];
  for (let column = 0; column + 1 < columns; column += 1)
    for (let row = 0; row < rows; row += 1) {
      if (!grid.present(column, row)) continue;
      const [left, right] = [columnXMm[column], columnXMm[column + 1]];
      const ys = [y(column, row), y(column + 1, row), y(column + 1, row + 1), y(column, row + 1)];
      const { matrix } = new WideElement(grid, [left, right, right, left], ys);
      const nodes = [[column, row], [column + 1, row], [column + 1, row + 1], [column, row + 1]] as const; // prettier-ignore
      const freedoms = nodes.flatMap(([c, r]) =>
        Array.from({ length: fields }, (_, f) => c * perColumn + r * fields + f),
      );
      freedoms.forEach((i, a) =>
        freedoms.forEach((j, b) => {
          if (i >= j) band[j * stride + i - j] += matrix[a][b];
        }),
      );
    }
  for (let freedom = 0; freedom < shape.order; freedom += 1)
    if (band[freedom * stride] === 0) band[freedom * stride] = 1;
  // Clamped: held by springs a hundred million times as stiff as the elements there.
  const last = (columns - 1) * perColumn;
  for (let row = 0; row <= rows; row += 1) band[(last + row * fields) * stride] *= 1e8;
  band[(last + rows * fields + 1) * stride] *= 1e8;
  const factor = factorise(shape, band);
  return sets.map((pushes) => {
    const block = createBlock(shape.order);
    for (const { column, row, forceN } of pushes) block[blockIndex(column * perColumn + row * fields, 0)] += forceN;
    solveBlock(factor, block);
    return (column, row, axis) => block[blockIndex(column * perColumn + row * fields + axis, 0)];
  });
}
