/**
 * Bows straight shapes along the relief line, in place and without allocating.
 *
 *   height of the crown line     v(x) = −f·r(x)              r relief (positive = hollow), f how many times larger than life
 *   slope                        tan θ = v′(x)
 *   a point of the section at a  x̄ = a + (x − a)·cos θ − y·sin θ,  ȳ = v + (x − a)·sin θ + y·cos θ,  z̄ = z
 *   its normal                   turned by θ, after n_x is divided by the stretch of the fibres there,
 *                                λ = 1/cos θ − y·θ′ for a point that has its own section (a = x), 1 for a rigid piece
 *
 * Sections stay plane and turn with the slope, so frets stay square to the board. v is interpolated between the stations by
 * cubic Hermite pieces with three-point slopes, and runs on straight beyond the first and last station. θ = θ(a).
 * Source: plane differential geometry (Bernoulli's kinematics). Assumed: sections do not shear or change shape.
 */
import type { Mesh } from './mesh.ts';

/** A line to bow along: relief at ascending stations. */
export interface BowLine {
  readonly xMm: ArrayLike<number>;
  readonly reliefMm: ArrayLike<number>;
  readonly factor: number;
}

/** Reads a line anywhere; `load` once a line, then `at` for as many x as wanted. Nothing is allocated after the first load. */
export interface BowReader {
  load(line: BowLine): void;
  /** Fills `height`, `slope`, `curvature` for x. */
  at(xMm: number): void;
  /** Height of the crown line as drawn, mm. */
  height: number;
  slope: number;
  /** θ′, rad/mm. */
  curvature: number;
}

/** Slopes at the stations: three-point inside, those of the first and last piece at the ends. */
function fillSlopes(slopes: Float64Array, xs: Float64Array, heights: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) {
    if (count < 2) {
      slopes[i] = 0;
    } else if (i === 0 || i === count - 1) {
      const j = i === 0 ? 0 : count - 2;
      slopes[i] = (heights[j + 1] - heights[j]) / (xs[j + 1] - xs[j]);
    } else {
      const before = xs[i] - xs[i - 1];
      const after = xs[i + 1] - xs[i];
      const s0 = (heights[i] - heights[i - 1]) / before;
      const s1 = (heights[i + 1] - heights[i]) / after;
      slopes[i] = (s0 * after + s1 * before) / (before + after);
    }
  }
}

export function createBowReader(): BowReader {
  let count = 0;
  let xs = new Float64Array(0);
  let heights = new Float64Array(0);
  let slopes = new Float64Array(0);
  let last = 0;
  const reader: BowReader = {
    height: 0,
    slope: 0,
    curvature: 0,
    load({ xMm, reliefMm, factor }) {
      count = xMm.length;
      if (count !== reliefMm.length) {
        throw new RangeError(`line has ${count} stations but ${reliefMm.length} values`);
      }
      if (xs.length < count) {
        xs = new Float64Array(count);
        heights = new Float64Array(count);
        slopes = new Float64Array(count);
      }
      for (let i = 0; i < count; i++) {
        xs[i] = xMm[i];
        heights[i] = -factor * reliefMm[i];
      }
      fillSlopes(slopes, xs, heights, count);
      last = 0;
    },
    at(xMm) {
      reader.curvature = 0;
      if (count === 0) {
        reader.height = 0;
        reader.slope = 0;
        return;
      }
      if (count === 1 || xMm <= xs[0]) {
        reader.height = heights[0] + slopes[0] * (xMm - xs[0]);
        reader.slope = slopes[0];
        return;
      }
      const end = count - 1;
      if (xMm >= xs[end]) {
        reader.height = heights[end] + slopes[end] * (xMm - xs[end]);
        reader.slope = slopes[end];
        return;
      }
      let low = 0;
      let high = end;
      if (xs[last] <= xMm && xMm < xs[last + 1]) {
        low = last;
      } else {
        while (high - low > 1) {
          const middle = (low + high) >> 1;
          if (xs[middle] <= xMm) low = middle;
          else high = middle;
        }
      }
      last = low;
      const run = xs[low + 1] - xs[low];
      const t = (xMm - xs[low]) / run;
      const rise = heights[low + 1] - heights[low];
      const m0 = slopes[low] * run;
      const m1 = slopes[low + 1] * run;
      const c2 = 3 * rise - 2 * m0 - m1;
      const c3 = m0 + m1 - 2 * rise;
      reader.height = heights[low] + t * (m0 + t * (c2 + t * c3));
      reader.slope = (m0 + t * (2 * c2 + 3 * t * c3)) / run;
      const second = (2 * c2 + 6 * t * c3) / (run * run);
      reader.curvature = second / (1 + reader.slope * reader.slope);
    },
  };
  return reader;
}

/** Fibres squeezed to less than this share of their length (an absurd exaggeration) keep their normals upright. */
const LEAST_STRETCH = 0.05;

/** A mesh that is bowed again and again: the straight arrays are kept, the bowed ones are written. */
export interface Bender {
  readonly mesh: Mesh;
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /**
   * Writes the bowed arrays.
   * @param lift raises the pieces by fret: `lift[n − 1]` mm square to the board; Infinity puts the piece out of sight.
   *   Only for meshes with `fretOf`.
   */
  bend(reader: BowReader, lift?: ArrayLike<number>): void;
}

/** @param room arrays to write into, as long as the mesh's: those of a bender that is used no more */
export function createBender(mesh: Mesh, room?: Pick<Bender, 'positions' | 'normals'>): Bender {
  const { anchorsMm, anchorOf, fretOf } = mesh;
  const straight = mesh.positions;
  const straightNormals = mesh.normals;
  const count = anchorOf.length;
  const positions = room?.positions ?? new Float32Array(straight.length);
  const normals = room?.normals ?? new Float32Array(straightNormals.length);
  positions.set(straight);
  normals.set(straightNormals);
  const sections = anchorsMm.length;
  const height = new Float64Array(sections);
  const cosine = new Float64Array(sections);
  const sine = new Float64Array(sections);
  const stretch = new Float64Array(sections);
  const curvature = new Float64Array(sections);
  // A piece whose vertices all lie off their anchor is rigid: its fibres do not stretch.
  const rigid = new Uint8Array(sections);
  for (let i = 0; i < count; i++) {
    if (Math.abs(straight[3 * i] - anchorsMm[anchorOf[i]]) > 1e-3) rigid[anchorOf[i]] = 1;
  }
  return {
    mesh,
    positions,
    normals,
    bend(reader, lift) {
      for (let s = 0; s < sections; s++) {
        reader.at(anchorsMm[s]);
        const c = 1 / Math.sqrt(1 + reader.slope * reader.slope);
        height[s] = reader.height;
        cosine[s] = c;
        sine[s] = reader.slope * c;
        stretch[s] = rigid[s] === 1 ? 1 : 1 / c;
        curvature[s] = rigid[s] === 1 ? 0 : reader.curvature;
      }
      const lifted = lift !== undefined && fretOf !== undefined;
      for (let i = 0, p = 0; i < count; i++, p += 3) {
        const s = anchorOf[i];
        const c = cosine[s];
        const n = sine[s];
        const anchor = anchorsMm[s];
        const straightY = straight[p + 1];
        let y = straightY;
        let hidden = false;
        if (lifted) {
          const raise = lift[fretOf[i] - 1] ?? 0;
          if (raise === Infinity) hidden = true;
          else y += raise;
        }
        const dx = straight[p] - anchor;
        // A hidden piece shrinks to one point: its triangles have no area and are not drawn.
        positions[p] = hidden ? anchor : anchor + dx * c - y * n;
        positions[p + 1] = hidden ? height[s] : height[s] + dx * n + y * c;
        positions[p + 2] = hidden ? 0 : straight[p + 2];
        const nx = straightNormals[p] / Math.max(LEAST_STRETCH, stretch[s] - straightY * curvature[s]);
        const ny = straightNormals[p + 1];
        const nz = straightNormals[p + 2];
        const size = 1 / Math.sqrt(nx * nx + ny * ny + nz * nz);
        normals[p] = (nx * c - ny * n) * size;
        normals[p + 1] = (nx * n + ny * c) * size;
        normals[p + 2] = nz * size;
      }
    },
  };
}
