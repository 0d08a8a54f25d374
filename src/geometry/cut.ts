/**
 * Cutting a mesh open with a plane across an axis: the outline of the cut face as closed loops.
 *
 * Each triangle that crosses the plane gives one segment, directed so that the solid lies on its left when the loop is seen
 * from the side that is taken away (larger x or z). The plane is moved by a ten-thousandth of a millimetre, so that no corner
 * lies exactly on it.
 */
import type { Mesh } from './mesh.ts';

export interface CutPlane {
  readonly axis: 'x' | 'z';
  readonly atMm: number;
}

/** One closed outline: points as x, y, z one after another, and the section that each moves with. */
export interface CutLoop {
  readonly points: Float64Array;
  readonly anchorsMm: Float64Array;
}

const NUDGE_MM = 1e-4;

interface Segment {
  readonly from: string;
  readonly to: string;
  readonly point: readonly [number, number, number];
  readonly anchorMm: number;
}

/** The loops of the cut face; empty when the plane misses the mesh. @throws {RangeError} when the mesh is not closed there */
export function cutLoops(mesh: Mesh, plane: CutPlane): CutLoop[] {
  const axis = plane.axis === 'x' ? 0 : 2;
  const at = plane.atMm + NUDGE_MM;
  const { positions: p, indices, anchorOf, anchorsMm } = mesh;
  const key = (v: number): string => `${p[3 * v]} ${p[3 * v + 1]} ${p[3 * v + 2]}`;
  const crossing = (v: number, w: number): { key: string; point: [number, number, number]; anchorMm: number } => {
    // The same edge seen from either triangle must give the same point: order its ends.
    const [kv, kw] = [key(v), key(w)];
    const [a, b, name] = kv < kw ? [v, w, `${kv}|${kw}`] : [w, v, `${kw}|${kv}`];
    const share = (at - p[3 * a + axis]) / (p[3 * b + axis] - p[3 * a + axis]);
    const point = [0, 1, 2].map((k) => p[3 * a + k] + share * (p[3 * b + k] - p[3 * a + k]));
    point[axis] = at;
    const rigid = anchorOf[a] === anchorOf[b] && Math.abs(p[3 * a] - anchorsMm[anchorOf[a]]) > 1e-3;
    const sameSection = anchorOf[a] === anchorOf[b];
    const anchorMm = rigid || sameSection ? anchorsMm[anchorOf[a]] : point[0];
    return { key: name, point: point as [number, number, number], anchorMm };
  };

  const next = new Map<string, Segment>();
  for (let t = 0; t < indices.length; t += 3) {
    const corners = [indices[t], indices[t + 1], indices[t + 2]];
    const beyond = corners.map((v) => p[3 * v + axis] > at);
    const count = Number(beyond[0]) + Number(beyond[1]) + Number(beyond[2]);
    if (count === 0 || count === 3) continue;
    // The corner alone on its side; the segment runs between its two edges.
    const alone = beyond.indexOf(count === 1);
    const v = corners[alone];
    const first = crossing(v, corners[(alone + 1) % 3]);
    const second = crossing(v, corners[(alone + 2) % 3]);
    if (first.key === second.key) continue;
    // Counter-clockwise triangles, seen from outside: leaving the far side through the edge after the lone corner.
    const [from, to] = count === 1 ? [first, second] : [second, first];
    next.set(from.key, { from: from.key, to: to.key, point: from.point, anchorMm: from.anchorMm });
  }

  const loops: CutLoop[] = [];
  while (next.size > 0) {
    const [start] = next.keys();
    const points: number[] = [];
    const anchors: number[] = [];
    let name = start;
    do {
      const segment = next.get(name);
      if (!segment) throw new RangeError(`the mesh is open where it is cut at ${plane.axis} = ${plane.atMm} mm`);
      next.delete(name);
      const last = points.length - 3;
      const [x, y, z] = segment.point;
      const moved =
        last < 0 || Math.abs(points[last] - x) + Math.abs(points[last + 1] - y) + Math.abs(points[last + 2] - z) > 1e-6;
      if (moved) {
        points.push(x, y, z);
        anchors.push(segment.anchorMm);
      }
      name = segment.to;
    } while (name !== start);
    if (anchors.length >= 3) loops.push({ points: Float64Array.from(points), anchorsMm: Float64Array.from(anchors) });
  }
  return loops;
}
