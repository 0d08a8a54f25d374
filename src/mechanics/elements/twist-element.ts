/**
 * An element of what is odd about the middle of the neck (twist.ts). Of each node u₁, v₁, w, u₃, h = `SCALE_MM`:
 *
 *   u = z·u₁ + (z³/h²)·u₃      v = z·v₁      w = w
 *   ε_x = z·u₁,x + (z³/h²)·u₃,x      ε_y = z·v₁,y      γ_xy = z·(u₁,y + v₁,x) + (z³/h²)·u₃,y
 *   γ_xz = u₁ + w,x + (3z²/h²)·u₃      γ_yz = v₁ + w,y
 *
 * Bilinear, u₁ and v₁ with the incompatible modes of element.ts. γ_xz is taken halfway along the element and γ_yz at its middle,
 * where a bent element shears neither falsely.
 *
 * `drive` is what displacements u₀, v₀ that are even across the width do to them where frets are slanted. With x + z·t(x) in
 * place of x, ∂/∂x is (∂/∂x)/(1 + z·t′), ∂/∂z is ∂/∂z − t·∂/∂x, and the section is that of x + z·t; to the first power of z·t:
 *
 *   γ_xz, γ_yz   less t·u₀,x and t·v₀,x
 *   ε_x, ε_y …   c·z² of their products becomes c·z²·(t·c,x/c ∓ t′): minus with ∂/∂x in both, plus with it in neither
 */
import { GAUSS, POINT_ETA, POINT_XI } from './element.ts';

export const SCALE_MM = 25;

/** Numbers of a point of the section; both halves of it together, N/mm to N·mm. */
export const POINT_NUMBERS = 20;
/** First ∫c·z², ∫c·z⁴/h², ∫c·z⁶/h⁴ of c11, c12, c22, c66: 3·i + k. Then: */
/** ∫G_xz, ∫G_xz·3z²/h², ∫G_xz·9z⁴/h⁴; ∫G_yz. */
export const ALONG_WIDTH = 12;
export const DEPTH_WIDTH = 15;
/** ∫c. */
export const EVEN = 16;

/** t·∂/∂x of ∫c·z² and ∫c·z⁴/h²: 2·i + k. */
export const TAPER_NUMBERS = 8;

export const NODE_FREEDOMS = 4;
export const FREEDOMS = 16;
/** Freedoms u₀, v₀ of the nodes. */
export const EVEN_FREEDOMS = 8;

const MODES = 4;
const SIZE = FREEDOMS + MODES;
const EVEN_SIZE = EVEN_FREEDOMS + MODES;
const FUNCTIONS = 6;
const NODE_XI = [-1, 1, 1, -1];
const NODE_ETA = [-1, -1, 1, 1];

/** Freedom of u₁ or v₁ of a function: of a node, or of a mode. */
const ODD = Int32Array.from({ length: 2 * FUNCTIONS }, (_, k) =>
  k < 8 ? NODE_FREEDOMS * (k >> 1) + (k & 1) : FREEDOMS + k - 8,
);

export class TwistElement {
  /** 16 × 16, node by node u₁ v₁ w u₃. */
  readonly stiffness = new Float64Array(FREEDOMS * FREEDOMS);
  /** 16 × 8: forces by u₀ v₀ of the nodes. */
  readonly drive = new Float64Array(FREEDOMS * EVEN_FREEDOMS);
  private readonly full = new Float64Array(SIZE * SIZE);
  private readonly driveFull = new Float64Array(SIZE * EVEN_SIZE);
  private readonly even = new Float64Array(EVEN_SIZE * EVEN_SIZE);
  private readonly dx = new Float64Array(FUNCTIONS);
  private readonly dy = new Float64Array(FUNCTIONS);
  private readonly middle = new Float64Array(5);
  private readonly here = new Float64Array(5);
  private readonly row1 = new Float64Array(FREEDOMS);
  private readonly row3 = new Float64Array(FREEDOMS);

  /**
   * @param x, y corners in the order of element.ts, mm
   * @param points the section at the Gauss points, `POINT_NUMBERS` each
   * @param tapers how it changes along the neck, times the slant, `TAPER_NUMBERS` each
   * @param slant tangent of the slant at the middle; @param slope its change along the neck, 1/mm
   */
  compute(
    x: ArrayLike<number>,
    y: ArrayLike<number>,
    points: ArrayLike<number>,
    tapers: ArrayLike<number>,
    slant: number,
    slope: number,
  ): void {
    this.full.fill(0);
    this.driveFull.fill(0);
    this.even.fill(0);
    this.jacobian(x, y, 0, 0, this.middle);
    for (let g = 0; g < 4; g += 1) {
      this.derive(x, y, POINT_XI[g], POINT_ETA[g]);
      this.addModes(POINT_XI[g], POINT_ETA[g]);
      this.addInPlane(points, POINT_NUMBERS * g, tapers, TAPER_NUMBERS * g, slope);
    }
    this.addAlongWidth(x, y, points, slant);
    this.addDepthWidth(x, y, points, slant);
    this.recoverEvenModes();
    this.condense();
  }

  /** x_ξ, y_ξ, x_η, y_η and the area of a point. */
  private jacobian(x: ArrayLike<number>, y: ArrayLike<number>, xi: number, eta: number, out: Float64Array): void {
    out.fill(0);
    for (let a = 0; a < 4; a += 1) {
      const nXi = (NODE_XI[a] * (1 + NODE_ETA[a] * eta)) / 4;
      const nEta = (NODE_ETA[a] * (1 + NODE_XI[a] * xi)) / 4;
      out[0] += nXi * x[a];
      out[1] += nXi * y[a];
      out[2] += nEta * x[a];
      out[3] += nEta * y[a];
    }
    out[4] = out[0] * out[3] - out[1] * out[2];
  }

  private derive(x: ArrayLike<number>, y: ArrayLike<number>, xi: number, eta: number): void {
    const { here, dx, dy } = this;
    this.jacobian(x, y, xi, eta, here);
    for (let a = 0; a < 4; a += 1) {
      const nXi = (NODE_XI[a] * (1 + NODE_ETA[a] * eta)) / 4;
      const nEta = (NODE_ETA[a] * (1 + NODE_XI[a] * xi)) / 4;
      dx[a] = (here[3] * nXi - here[1] * nEta) / here[4];
      dy[a] = (here[0] * nEta - here[2] * nXi) / here[4];
    }
  }

  private addModes(xi: number, eta: number): void {
    const { here, middle, dx, dy } = this;
    dx[4] = (-2 * xi * middle[3]) / here[4];
    dy[4] = (2 * xi * middle[2]) / here[4];
    dx[5] = (2 * eta * middle[1]) / here[4];
    dy[5] = (-2 * eta * middle[0]) / here[4];
  }

  /** Strains along, through the depth and in shear, at a Gauss point. */
  private addInPlane(
    points: ArrayLike<number>,
    at: number,
    tapers: ArrayLike<number>,
    taperAt: number,
    slope: number,
  ): void {
    const { full, driveFull, even, dx, dy } = this;
    const area = this.here[4];
    const x1 = points[at] * area, m1 = points[at + 3] * area, y1 = points[at + 6] * area, s1 = points[at + 9] * area; // prettier-ignore
    const x3 = points[at + 1] * area, m3 = points[at + 4] * area, s3 = points[at + 10] * area; // prettier-ignore
    const x5 = points[at + 2] * area, s5 = points[at + 11] * area; // prettier-ignore
    const ex = points[at + EVEN] * area, em = points[at + EVEN + 1] * area, ey = points[at + EVEN + 2] * area, es = points[at + EVEN + 3] * area; // prettier-ignore
    // Of products of even and odd: with ∂/∂x in both, in neither, in one.
    const tx = tapers[taperAt] * area, tm = tapers[taperAt + 2] * area, ty = tapers[taperAt + 4] * area, ts = tapers[taperAt + 6] * area; // prettier-ignore
    const tx3 = tapers[taperAt + 1] * area, tm3 = tapers[taperAt + 3] * area, ts3 = tapers[taperAt + 7] * area; // prettier-ignore
    const bothX = tx - slope * x1, neitherY = ty + slope * y1, neitherS = ts + slope * s1, bothS = ts - slope * s1; // prettier-ignore
    const bothX3 = tx3 - slope * x3, neitherS3 = ts3 + slope * s3; // prettier-ignore
    for (let a = 0; a < FUNCTIONS; a += 1) {
      const ax = dx[a];
      const ay = dy[a];
      const uRow = ODD[2 * a] * SIZE;
      const vRow = ODD[2 * a + 1] * SIZE;
      const uEven = ODD[2 * a] * EVEN_SIZE;
      const vEven = ODD[2 * a + 1] * EVEN_SIZE;
      const third = NODE_FREEDOMS * a + 3;
      for (let b = 0; b < FUNCTIONS; b += 1) {
        const xx = ax * dx[b];
        const yy = ay * dy[b];
        const xy = ax * dy[b];
        const yx = ay * dx[b];
        const bu = ODD[2 * b];
        const bv = ODD[2 * b + 1];
        full[uRow + bu] += x1 * xx + s1 * yy;
        full[uRow + bv] += m1 * xy + s1 * yx;
        full[vRow + bu] += m1 * yx + s1 * xy;
        full[vRow + bv] += y1 * yy + s1 * xx;
        const e = 2 * a * EVEN_SIZE + 2 * b;
        even[e] += ex * xx + es * yy;
        even[e + 1] += em * xy + es * yx;
        even[e + EVEN_SIZE] += em * yx + es * xy;
        even[e + EVEN_SIZE + 1] += ey * yy + es * xx;
        driveFull[uEven + 2 * b] -= bothX * xx + neitherS * yy;
        driveFull[uEven + 2 * b + 1] -= tm * xy + ts * yx;
        driveFull[vEven + 2 * b] -= tm * yx + ts * xy;
        driveFull[vEven + 2 * b + 1] -= neitherY * yy + bothS * xx;
        if (a >= 4) continue;
        const toU = x3 * xx + s3 * yy;
        const toV = m3 * xy + s3 * yx;
        full[third * SIZE + bu] += toU;
        full[bu * SIZE + third] += toU;
        full[third * SIZE + bv] += toV;
        full[bv * SIZE + third] += toV;
        if (b < 4) full[third * SIZE + NODE_FREEDOMS * b + 3] += x5 * xx + s5 * yy;
        driveFull[third * EVEN_SIZE + 2 * b] -= bothX3 * xx + neitherS3 * yy;
        driveFull[third * EVEN_SIZE + 2 * b + 1] -= tm3 * xy + ts3 * yx;
      }
    }
  }

  private addAlongWidth(x: ArrayLike<number>, y: ArrayLike<number>, points: ArrayLike<number>, slant: number): void {
    const { row1, row3, dx } = this;
    for (let half = 0; half < 2; half += 1) {
      const eta = half === 0 ? -GAUSS : GAUSS;
      this.derive(x, y, 0, eta);
      // The points of that depth: 0 and 1, or 2 and 3. Weight 2 for the one place along.
      const at = 2 * half * POINT_NUMBERS + ALONG_WIDTH;
      const s = (k: number) => (points[at + k] + points[at + POINT_NUMBERS + k]) * this.here[4];
      row1.fill(0);
      row3.fill(0);
      for (let a = 0; a < 4; a += 1) {
        const shape = (1 + NODE_ETA[a] * eta) / 4;
        row1[NODE_FREEDOMS * a] = shape;
        row1[NODE_FREEDOMS * a + 2] = dx[a];
        row3[NODE_FREEDOMS * a + 3] = shape;
      }
      const [s1, s3, s5] = [s(0), s(1), s(2)];
      for (let i = 0; i < FREEDOMS; i += 1) {
        // γ_xz knows nothing of v₁.
        if (i % NODE_FREEDOMS === 1) continue;
        const first = s1 * row1[i] + s3 * row3[i];
        const third = s3 * row1[i] + s5 * row3[i];
        for (let j = 0; j < FREEDOMS; j += NODE_FREEDOMS) {
          this.full[i * SIZE + j] += first * row1[j];
          this.full[i * SIZE + j + 2] += first * row1[j + 2];
          this.full[i * SIZE + j + 3] += third * row3[j + 3];
        }
        for (let b = 0; b < 4; b += 1) this.driveFull[i * EVEN_SIZE + 2 * b] += slant * first * dx[b];
      }
    }
  }

  private addDepthWidth(x: ArrayLike<number>, y: ArrayLike<number>, points: ArrayLike<number>, slant: number): void {
    const { row1, dx, dy } = this;
    this.derive(x, y, 0, 0);
    let stiffness = 0;
    for (let g = 0; g < 4; g += 1) stiffness += points[POINT_NUMBERS * g + DEPTH_WIDTH] * this.here[4];
    row1.fill(0);
    for (let a = 0; a < 4; a += 1) {
      row1[NODE_FREEDOMS * a + 1] = 1 / 4;
      row1[NODE_FREEDOMS * a + 2] = dy[a];
    }
    for (let i = 0; i < FREEDOMS; i += 1) {
      const force = stiffness * row1[i];
      if (force === 0) continue;
      for (let j = 0; j < FREEDOMS; j += 1) this.full[i * SIZE + j] += force * row1[j];
      for (let b = 0; b < 4; b += 1) this.driveFull[i * EVEN_SIZE + 2 * b + 1] += slant * force * dx[b];
    }
  }

  /** The modes of the even element follow from its nodes: what they drive is put down to these. */
  private recoverEvenModes(): void {
    const { even, driveFull } = this;
    for (let p = EVEN_SIZE - 1; p >= EVEN_FREEDOMS; p -= 1) {
      const row = p * EVEN_SIZE;
      const pivot = even[row + p];
      for (let i = 0; i < p; i += 1) {
        const factor = even[i * EVEN_SIZE + p] / pivot;
        if (factor === 0) continue;
        for (let j = 0; j < p; j += 1) even[i * EVEN_SIZE + j] -= factor * even[row + j];
      }
      for (let i = 0; i < SIZE; i += 1) {
        const factor = driveFull[i * EVEN_SIZE + p] / pivot;
        if (factor === 0) continue;
        for (let j = 0; j < p; j += 1) driveFull[i * EVEN_SIZE + j] -= factor * even[row + j];
      }
    }
  }

  private condense(): void {
    const { full, driveFull, stiffness, drive } = this;
    for (let p = SIZE - 1; p >= FREEDOMS; p -= 1) {
      const pivot = full[p * SIZE + p];
      for (let i = 0; i < p; i += 1) {
        const factor = full[i * SIZE + p] / pivot;
        if (factor === 0) continue;
        for (let j = 0; j < p; j += 1) full[i * SIZE + j] -= factor * full[p * SIZE + j];
        for (let j = 0; j < EVEN_FREEDOMS; j += 1)
          driveFull[i * EVEN_SIZE + j] -= factor * driveFull[p * EVEN_SIZE + j];
      }
    }
    for (let i = 0; i < FREEDOMS; i += 1) {
      for (let j = 0; j < FREEDOMS; j += 1) stiffness[i * FREEDOMS + j] = full[i * SIZE + j];
      for (let j = 0; j < EVEN_FREEDOMS; j += 1) drive[i * EVEN_FREEDOMS + j] = driveFull[i * EVEN_SIZE + j];
    }
  }
}
