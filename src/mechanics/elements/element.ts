/**
 * The element: bilinear quadrilateral with incompatible modes ("QM6").
 *
 *   u = Σ N_a u_a + (1 − ξ²) α₁ + (1 − η²) α₂,   K = ∫ Bᵀ C B dA,   the α condensed out
 *
 * The derivatives of the incompatible modes use the Jacobian at the element's centre scaled by j₀/j, so that constant
 * strain is reproduced in any shape (Taylor, Beresford & Wilson 1976, Int. J. Numer. Methods Eng. 10:1211, from memory).
 * C is plane stress and orthotropic, integrated through the width of the neck: N/mm (that is, MPa·mm); it is given at
 * each of the 2 × 2 Gauss points, so that laminates, channel and taper enter here. A stiff bar ends at a depth of its own,
 * within an element as a rule: such an element is summed over 2 × 2 points of each of its two parts. Every sum is one of
 * positive parts then, whatever the bar and the wood that it displaces.
 *
 *   C = [c11 c12 0; c12 c22 0; 0 0 c66]
 *
 * Nodes: 0 (ξ −1, η −1), 1 (+1, −1), 2 (+1, +1), 3 (−1, +1); degrees of freedom u₀ v₀ u₁ v₁ u₂ v₂ u₃ v₃.
 *
 * Two things keep it cheap, for it is computed some thousands of times for each mesh. Since Σ N_a = 1, what belongs to node
 * 3 is minus the sum of the other three's: it is left out until the end. And the modes come first in the matrix, so that
 * condensing them is eliminating its first four rows.
 */
import { Refused } from '../refusal.ts';

export const GAUSS = 1 / Math.sqrt(3);
/** ξ and η of the Gauss points, in the order in which `elementStiffness` takes them. */
export const POINT_XI = Float64Array.of(-GAUSS, GAUSS, GAUSS, -GAUSS);
export const POINT_ETA = Float64Array.of(-GAUSS, -GAUSS, GAUSS, GAUSS);

const NODE_XI = [-1, 1, 1, -1];
const NODE_ETA = [-1, -1, 1, 1];

/** Four points at which an element is summed, one upright pair on either side. */
interface Points {
  readonly eta: Float64Array;
  /** Share of a standard point's weight. */
  readonly share: Float64Array;
  /** ∂N_a/∂ξ and ∂N_a/∂η: entry 4·g + a. */
  readonly shapeXi: Float64Array;
  readonly shapeEta: Float64Array;
}

function setPoint({ eta, share, shapeXi, shapeEta }: Points, g: number, etaAt: number, shareOf: number): void {
  eta[g] = etaAt;
  share[g] = shareOf;
  for (let a = 0; a < 4; a += 1) {
    shapeXi[4 * g + a] = (NODE_XI[a] * (1 + NODE_ETA[a] * etaAt)) / 4;
    shapeEta[4 * g + a] = (NODE_ETA[a] * (1 + NODE_XI[a] * POINT_XI[g])) / 4;
  }
}

function points(): Points {
  const four = {
    eta: new Float64Array(4),
    share: new Float64Array(4),
    shapeXi: new Float64Array(16),
    shapeEta: new Float64Array(16),
  };
  for (let g = 0; g < 4; g += 1) setPoint(four, g, POINT_ETA[g], 1);
  return four;
}

const WHOLE = points();

/** Functions in the full matrix: two modes, then nodes 0 to 2. Each has a row along the neck and one across. */
const FUNCTIONS = 5;
const MODE_ROWS = 4;
const ROWS = 2 * FUNCTIONS;
/** The forces of the free strain stand beside the matrix, as its last column. */
const FORCE = ROWS;
const WIDTH = ROWS + 1;

export interface ElementWork {
  /** Out: condensed stiffness, 8 × 8 row-major, N/mm. */
  readonly stiffness: Float64Array;
  /** Out: nodal forces of the free strain, 8, N. */
  readonly freeStrainForce: Float64Array;
  /** Upper triangle of the full stiffness, with the forces. */
  readonly full: Float64Array;
  /** Derivatives of function a at Gauss point g, 1/mm: entry 4·a + g. */
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  /** c11, c12, c22, c66 at Gauss point g times its area, N·mm: entries g, 4 + g, 8 + g, 12 + g. */
  readonly weighted: Float64Array;
}

export function elementWork(): ElementWork {
  return {
    stiffness: new Float64Array(64),
    freeStrainForce: new Float64Array(8),
    full: new Float64Array(ROWS * WIDTH),
    dx: new Float64Array(4 * FUNCTIONS),
    dy: new Float64Array(4 * FUNCTIONS),
    weighted: new Float64Array(16),
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
  derive(x, y, c, WHOLE, work);
  integrate(work, freeStrain);
  condense(work);
  closeNode3(work);
}

/**
 * Computes `work.stiffness` of an element within which layers end; its sides stand upright.
 * @param floorsMm depths at which they end, ascending; @param at writes c11, c12, c22, c66 on the upright through the Gauss
 * points of the nut side (0) or the body side (1), N/mm.
 * @throws {RangeError} when the element is turned inside out.
 */
export function layeredStiffness(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  floorsMm: readonly number[],
  at: (side: 0 | 1, yMm: number, out: Float64Array, from: number) => void,
  work: ElementWork,
): void {
  const c = new Float64Array(16);
  const part = points();
  const sum = new Float64Array(work.full.length);
  for (let layer = 0; layer <= floorsMm.length; layer += 1) {
    for (let g = 0; g < 4; g += 1) {
      const right = (1 + POINT_XI[g]) / 2;
      const top = y[0] + right * (y[1] - y[0]);
      const bottom = y[3] + right * (y[2] - y[3]);
      const within = (depthMm: number) => Math.min(1, Math.max(0, (depthMm - top) / (bottom - top)));
      const from = layer === 0 ? 0 : within(floorsMm[layer - 1]);
      const share = (layer === floorsMm.length ? 1 : within(floorsMm[layer])) - from;
      const down = from + (share * (1 + POINT_ETA[g])) / 2;
      setPoint(part, g, 2 * down - 1, share);
      at(right < 0.5 ? 0 : 1, top + down * (bottom - top), c, 4 * g);
    }
    derive(x, y, c, part, work);
    integrate(work, 0);
    for (let k = 0; k < sum.length; k += 1) sum[k] += work.full[k];
  }
  work.full.set(sum);
  condense(work);
  closeNode3(work);
}

/** Derivatives and weighted constants at the points. */
function derive(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  c: ArrayLike<number>,
  { eta: etas, share, shapeXi, shapeEta }: Points,
  { dx, dy, weighted }: ElementWork,
): void {
  // ∂x/∂ξ = xXi0 + xTwist·η, ∂x/∂η = xEta0 + xTwist·ξ, and y alike.
  const xXi0 = (-x[0] + x[1] + x[2] - x[3]) / 4;
  const yXi0 = (-y[0] + y[1] + y[2] - y[3]) / 4;
  const xEta0 = (-x[0] - x[1] + x[2] + x[3]) / 4;
  const yEta0 = (-y[0] - y[1] + y[2] + y[3]) / 4;
  const xTwist = (x[0] - x[1] + x[2] - x[3]) / 4;
  const yTwist = (y[0] - y[1] + y[2] - y[3]) / 4;

  for (let g = 0; g < 4; g += 1) {
    const xi = POINT_XI[g];
    const eta = etas[g];
    const xXi = xXi0 + xTwist * eta;
    const yXi = yXi0 + yTwist * eta;
    const xEta = xEta0 + xTwist * xi;
    const yEta = yEta0 + yTwist * xi;
    const area = xXi * yEta - yXi * xEta;
    if (!(area > 0)) throw new Refused({ code: 'element-inside-out', xMm: x[0], yMm: y[0] });
    const perArea = 1 / area;
    // Modes: derivatives −2ξ and −2η through the centre's Jacobian, times j₀/j (j₀ cancels).
    dx[g] = -2 * xi * yEta0 * perArea;
    dy[g] = 2 * xi * xEta0 * perArea;
    dx[4 + g] = 2 * eta * yXi0 * perArea;
    dy[4 + g] = -2 * eta * xXi0 * perArea;
    for (let a = 0; a < 3; a += 1) {
      const nXi = shapeXi[4 * g + a];
      const nEta = shapeEta[4 * g + a];
      dx[8 + 4 * a + g] = (yEta * nXi - yXi * nEta) * perArea;
      dy[8 + 4 * a + g] = (xXi * nEta - xEta * nXi) * perArea;
    }
    const weight = area * share[g];
    for (let i = 0; i < 4; i += 1) weighted[4 * i + g] = c[4 * g + i] * weight;
  }
}

/**
 * Bᵀ·C·B summed over the Gauss points: each entry of the matrix is finished at once, its four points side by side, rather
 * than written and read again for every point.
 */
function integrate({ full, dx, dy, weighted: c }: ElementWork, freeStrain: number): void {
  for (let a = 0; a < FUNCTIONS; a += 1) {
    // Stresses of a unit of function a, at points 0 to 3: along (x), across (y) and shear (t), by u and then by v.
    const x0 = dx[4 * a], x1 = dx[4 * a + 1], x2 = dx[4 * a + 2], x3 = dx[4 * a + 3]; // prettier-ignore
    const y0 = dy[4 * a], y1 = dy[4 * a + 1], y2 = dy[4 * a + 2], y3 = dy[4 * a + 3]; // prettier-ignore
    const ux0 = c[0] * x0, ux1 = c[1] * x1, ux2 = c[2] * x2, ux3 = c[3] * x3; // prettier-ignore
    const uy0 = c[4] * x0, uy1 = c[5] * x1, uy2 = c[6] * x2, uy3 = c[7] * x3; // prettier-ignore
    const ut0 = c[12] * y0, ut1 = c[13] * y1, ut2 = c[14] * y2, ut3 = c[15] * y3; // prettier-ignore
    const vx0 = c[4] * y0, vx1 = c[5] * y1, vx2 = c[6] * y2, vx3 = c[7] * y3; // prettier-ignore
    const vy0 = c[8] * y0, vy1 = c[9] * y1, vy2 = c[10] * y2, vy3 = c[11] * y3; // prettier-ignore
    const vt0 = c[12] * x0, vt1 = c[13] * x1, vt2 = c[14] * x2, vt3 = c[15] * x3; // prettier-ignore
    const along = 2 * a * WIDTH;
    const across = along + WIDTH;
    for (let b = a; b < FUNCTIONS; b += 1) {
      const p0 = dx[4 * b], p1 = dx[4 * b + 1], p2 = dx[4 * b + 2], p3 = dx[4 * b + 3]; // prettier-ignore
      const q0 = dy[4 * b], q1 = dy[4 * b + 1], q2 = dy[4 * b + 2], q3 = dy[4 * b + 3]; // prettier-ignore
      full[along + 2 * b] = ux0 * p0 + ut0 * q0 + (ux1 * p1 + ut1 * q1) + (ux2 * p2 + ut2 * q2) + (ux3 * p3 + ut3 * q3);
      full[along + 2 * b + 1] =
        uy0 * q0 + ut0 * p0 + (uy1 * q1 + ut1 * p1) + (uy2 * q2 + ut2 * p2) + (uy3 * q3 + ut3 * p3);
      full[across + 2 * b] =
        vx0 * p0 + vt0 * q0 + (vx1 * p1 + vt1 * q1) + (vx2 * p2 + vt2 * q2) + (vx3 * p3 + vt3 * q3);
      full[across + 2 * b + 1] =
        vy0 * q0 + vt0 * p0 + (vy1 * q1 + vt1 * p1) + (vy2 * q2 + vt2 * p2) + (vy3 * q3 + vt3 * p3);
    }
    full[along + FORCE] = (ux0 + ux1 + ux2 + ux3) * freeStrain;
    full[across + FORCE] = (vx0 + vx1 + vx2 + vx3) * freeStrain;
  }
}

/**
 * Eliminates the rows of the modes: with their block L·Lᵀ and Y = L⁻¹·(what couples them with the rest), the rest
 * loses Yᵀ·Y. Writes what is left for nodes 0 to 2.
 */
function condense({ full, stiffness, freeStrainForce }: ElementWork): void {
  const row1 = WIDTH;
  const row2 = 2 * WIDTH;
  const row3 = 3 * WIDTH;
  const d0 = 1 / Math.sqrt(full[0]);
  const l10 = full[1] * d0;
  const l20 = full[2] * d0;
  const l30 = full[3] * d0;
  const d1 = 1 / Math.sqrt(full[row1 + 1] - l10 * l10);
  const l21 = (full[row1 + 2] - l20 * l10) * d1;
  const l31 = (full[row1 + 3] - l30 * l10) * d1;
  const d2 = 1 / Math.sqrt(full[row2 + 2] - l20 * l20 - l21 * l21);
  const l32 = (full[row2 + 3] - l30 * l20 - l31 * l21) * d2;
  const d3 = 1 / Math.sqrt(full[row3 + 3] - l30 * l30 - l31 * l31 - l32 * l32);
  for (let j = MODE_ROWS; j < WIDTH; j += 1) {
    const y0 = full[j] * d0;
    const y1 = (full[row1 + j] - l10 * y0) * d1;
    const y2 = (full[row2 + j] - l20 * y0 - l21 * y1) * d2;
    full[j] = y0;
    full[row1 + j] = y1;
    full[row2 + j] = y2;
    full[row3 + j] = (full[row3 + j] - l30 * y0 - l31 * y1 - l32 * y2) * d3;
  }
  for (let i = MODE_ROWS; i < ROWS; i += 1) {
    const y0 = full[i];
    const y1 = full[row1 + i];
    const y2 = full[row2 + i];
    const y3 = full[row3 + i];
    const here = i * WIDTH;
    for (let j = i; j < WIDTH; j += 1)
      full[here + j] -= y0 * full[j] + y1 * full[row1 + j] + y2 * full[row2 + j] + y3 * full[row3 + j];
  }
  for (let i = 0; i < 6; i += 1) {
    const here = (MODE_ROWS + i) * WIDTH + MODE_ROWS;
    for (let j = i; j < 6; j += 1) stiffness[8 * i + j] = stiffness[8 * j + i] = full[here + j]!;
    freeStrainForce[i] = full[here + 6]!;
  }
}

/** What belongs to node 3: minus the sum of the other nodes', in each of the two directions. */
function closeNode3({ stiffness: k, freeStrainForce: f }: ElementWork): void {
  // The last two rows are filled from above by the time that they are summed.
  for (let row = 0; row < 8; row += 1) {
    const at = 8 * row;
    k[at + 6] = k[48 + row] = -(k[at] + k[at + 2] + k[at + 4]);
    k[at + 7] = k[56 + row] = -(k[at + 1] + k[at + 3] + k[at + 5]);
  }
  f[6] = -(f[0] + f[2] + f[4]);
  f[7] = -(f[1] + f[3] + f[5]);
}
