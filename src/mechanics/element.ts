/**
 * The element: bilinear quadrilateral with incompatible modes ("QM6").
 *
 *   u = Σ N_a u_a + (1 − ξ²) α₁ + (1 − η²) α₂,   K = ∫ Bᵀ C B dA,   the α condensed out
 *
 * The derivatives of the incompatible modes use the Jacobian at the element's centre scaled by j₀/j, so that constant
 * strain is reproduced in any shape (Taylor, Beresford & Wilson 1976, Int. J. Numer. Methods Eng. 10:1211, from memory).
 * C is plane stress and orthotropic, integrated through the width of the neck: N/mm (that is, MPa·mm); it is given at
 * each of the 2 × 2 Gauss points, so that laminates, channel, bars and taper enter here.
 *
 *   C = [c11 c12 0; c12 c22 0; 0 0 c66]
 *
 * Nodes: 0 (ξ −1, η −1), 1 (+1, −1), 2 (+1, +1), 3 (−1, +1); degrees of freedom u₀ v₀ u₁ v₁ u₂ v₂ u₃ v₃.
 */
import { say } from '../build/language.ts';

export const GAUSS = 1 / Math.sqrt(3);
/** ξ and η of the Gauss points, in the order in which `stiffness` takes them. */
export const GAUSS_POINTS = [
  [-GAUSS, -GAUSS],
  [GAUSS, -GAUSS],
  [GAUSS, GAUSS],
  [-GAUSS, GAUSS],
] as const;

const NODE_XI = [-1, 1, 1, -1];
const NODE_ETA = [-1, -1, 1, 1];

/** ∂N_a/∂ξ and ∂N_a/∂η at each Gauss point: entry 4·g + a. */
const SHAPE_XI = new Float64Array(16);
const SHAPE_ETA = new Float64Array(16);
GAUSS_POINTS.forEach(([xi, eta], g) => {
  for (let a = 0; a < 4; a += 1) {
    SHAPE_XI[4 * g + a] = (NODE_XI[a]! * (1 + NODE_ETA[a]! * eta)) / 4;
    SHAPE_ETA[4 * g + a] = (NODE_ETA[a]! * (1 + NODE_XI[a]! * xi)) / 4;
  }
});

/** Six functions: four nodes, two modes. Twelve degrees of freedom before the condensation of the last four. */
const FUNCTIONS = 6;
const FULL = 12;

export interface ElementWork {
  /** Out: condensed stiffness, 8 × 8 row-major, N/mm. */
  readonly stiffness: Float64Array;
  /** Out: nodal forces of the free strain, 8, N. */
  readonly freeStrainForce: Float64Array;
  readonly full: Float64Array;
  readonly fullForce: Float64Array;
  readonly dx: Float64Array;
  readonly dy: Float64Array;
}

export function elementWork(): ElementWork {
  return {
    stiffness: new Float64Array(64),
    freeStrainForce: new Float64Array(8),
    full: new Float64Array(FULL * FULL),
    fullForce: new Float64Array(FULL),
    dx: new Float64Array(FUNCTIONS),
    dy: new Float64Array(FUNCTIONS),
  };
}

/**
 * Computes `work.stiffness` and `work.freeStrainForce`.
 * @param x, y corner coordinates, mm, 4 each; @param c c11, c12, c22, c66 at each Gauss point, 16 numbers, N/mm;
 * @param freeStrain longitudinal free strain ε₀ (times c11 and c12) at each Gauss point, or 0.
 * @throws {RangeError} when the element is turned inside out.
 */
export function elementStiffness(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  c: ArrayLike<number>,
  freeStrain: number,
  work: ElementWork,
): void {
  const { full, fullForce, dx, dy } = work;
  full.fill(0);
  fullForce.fill(0);

  // Jacobian at the centre.
  const xXi0 = (-x[0]! + x[1]! + x[2]! - x[3]!) / 4;
  const yXi0 = (-y[0]! + y[1]! + y[2]! - y[3]!) / 4;
  const xEta0 = (-x[0]! - x[1]! + x[2]! + x[3]!) / 4;
  const yEta0 = (-y[0]! - y[1]! + y[2]! + y[3]!) / 4;

  for (let g = 0; g < 4; g += 1) {
    const [xi, eta] = GAUSS_POINTS[g]!;
    let xXi = 0, yXi = 0, xEta = 0, yEta = 0; // prettier-ignore
    for (let a = 0; a < 4; a += 1) {
      const nXi = SHAPE_XI[4 * g + a]!;
      const nEta = SHAPE_ETA[4 * g + a]!;
      xXi += nXi * x[a]!;
      yXi += nXi * y[a]!;
      xEta += nEta * x[a]!;
      yEta += nEta * y[a]!;
    }
    const area = xXi * yEta - yXi * xEta;
    if (!(area > 0)) throw new RangeError(say`element is turned inside out at x = ${x[0]} mm, y = ${y[0]} mm`);
    for (let a = 0; a < 4; a += 1) {
      const nXi = SHAPE_XI[4 * g + a]!;
      const nEta = SHAPE_ETA[4 * g + a]!;
      dx[a] = (yEta * nXi - yXi * nEta) / area;
      dy[a] = (xXi * nEta - xEta * nXi) / area;
    }
    // Modes: derivatives −2ξ and −2η through the centre's Jacobian, times j₀/j (j₀ cancels).
    dx[4] = (-2 * xi * yEta0) / area;
    dy[4] = (2 * xi * xEta0) / area;
    dx[5] = (2 * eta * yXi0) / area;
    dy[5] = (-2 * eta * xXi0) / area;

    const c11 = c[4 * g]! * area;
    const c12 = c[4 * g + 1]! * area;
    const c22 = c[4 * g + 2]! * area;
    const c66 = c[4 * g + 3]! * area;
    for (let a = 0; a < FUNCTIONS; a += 1) {
      const ax = dx[a]!;
      const ay = dy[a]!;
      const sx = c11 * ax;
      const sy = c12 * ax;
      const tx = c66 * ay;
      const ty = c66 * ax;
      const uy = c12 * ay;
      const vy = c22 * ay;
      const row = 2 * a * FULL;
      for (let bb = a; bb < FUNCTIONS; bb += 1) {
        const bx = dx[bb]!;
        const by = dy[bb]!;
        const at = row + 2 * bb;
        full[at]! += sx * bx + tx * by;
        full[at + 1]! += sy * by + tx * bx;
        full[at + FULL]! += uy * bx + ty * by;
        full[at + FULL + 1]! += vy * by + ty * bx;
      }
      if (freeStrain !== 0) {
        fullForce[2 * a]! += c11 * ax * freeStrain;
        fullForce[2 * a + 1]! += c12 * ay * freeStrain;
      }
    }
  }
  condense(work);
}

/** Gauss elimination of the four mode unknowns, last first, on the upper triangle. */
function condense({ full, fullForce, stiffness, freeStrainForce }: ElementWork): void {
  for (let p = FULL - 1; p >= 8; p -= 1) {
    const pivot = full[p * FULL + p]!;
    for (let i = 0; i < p; i += 1) {
      const factor = full[i * FULL + p]! / pivot;
      if (factor === 0) continue;
      for (let j = i; j < p; j += 1) full[i * FULL + j]! -= factor * full[j * FULL + p]!;
      fullForce[i]! -= factor * fullForce[p]!;
    }
  }
  for (let i = 0; i < 8; i += 1) {
    freeStrainForce[i] = fullForce[i]!;
    for (let j = i; j < 8; j += 1) {
      const value = full[i * FULL + j]!;
      stiffness[i * 8 + j] = value;
      stiffness[j * 8 + i] = value;
    }
  }
}
