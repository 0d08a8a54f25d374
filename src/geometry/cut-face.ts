/**
 * Cut faces: the outlines of a cut (cut.ts), filled, as one flat mesh that bows with the neck.
 *
 * A face is divided into trapezoids between all lateral places where its outlines have corners, so that no triangle is
 * longer than the sections are apart: a long one would leave the face when it is bowed. The outlines themselves are
 * appended as vertices of their own, for drawing them as lines.
 */
import { cutLoops, type CutLoop, type CutPlane } from './cut.ts';
import { createMeshWriter, type Mesh, type MeshWriter } from './mesh.ts';

/** A line along an outline: vertices first…first + count − 1 of the mesh, in order. */
export interface OutlineRun {
  readonly first: number;
  readonly count: number;
  readonly closed: boolean;
}

export interface CutFace {
  readonly mesh: Mesh;
  readonly outlines: readonly OutlineRun[];
}

export interface CutPiece {
  readonly mesh: Mesh;
  /** sRGB hex, for materials that take it from the vertices. */
  readonly colour?: string;
  /**
   * Part of an outline that is not drawn, because the solid goes on there in another piece: a range of the lateral
   * coordinate, for segments that lie along it.
   */
  readonly joint?: (loop: CutLoop) => Joint | null;
  /** Outlines that do not count. */
  readonly skip?: (loop: CutLoop) => boolean;
}

export interface Joint {
  /** Is this point of the outline on the line of the joint? */
  readonly on: (x: number, y: number, z: number) => boolean;
  /** Lateral range that the two pieces share: x for a cut across z, z for a cut across x. */
  readonly from: number;
  readonly to: number;
}

interface Edge {
  readonly u0: number;
  readonly v0: number;
  readonly u1: number;
  readonly v1: number;
}

/** Fills one set of loops that share a section (rigid pieces) or have their own sections. */
function fill(writer: MeshWriter, loops: readonly CutLoop[], plane: CutPlane, rigidAnchor: number | null): void {
  const lateral = plane.axis === 'z' ? 0 : 2;
  const edges: Edge[] = [];
  const places = new Set<number>();
  for (const { points } of loops) {
    const count = points.length / 3;
    for (let i = 0; i < count; i++) {
      const j = (i + 1) % count;
      const [u0, u1] = [points[3 * i + lateral], points[3 * j + lateral]];
      places.add(u0);
      if (u0 === u1) continue;
      const [v0, v1] = [points[3 * i + 1], points[3 * j + 1]];
      edges.push(u0 < u1 ? { u0, v0, u1, v1 } : { u0: u1, v0: v1, u1: u0, v1: v0 });
    }
  }
  const us = Float64Array.from(places).toSorted();
  const slab = new Map<number, number>();
  us.forEach((u, index) => slab.set(u, index));
  const crossing: Edge[][] = Array.from({ length: Math.max(0, us.length - 1) }, () => []);
  for (const edge of edges) {
    const last = slab.get(edge.u1) as number;
    for (let s = slab.get(edge.u0) as number; s < last; s++) crossing[s].push(edge);
  }
  const heightAt = (edge: Edge, u: number): number =>
    u === edge.u0
      ? edge.v0
      : u === edge.u1
        ? edge.v1
        : edge.v0 + ((edge.v1 - edge.v0) * (u - edge.u0)) / (edge.u1 - edge.u0);
  const put = (u: number, v: number): number => {
    if (plane.axis === 'z') {
      writer.anchor(rigidAnchor ?? u);
      return writer.vertex(u, v, plane.atMm, 0, 0, 1);
    }
    writer.anchor(rigidAnchor ?? plane.atMm);
    return writer.vertex(plane.atMm, v, u, 1, 0, 0);
  };
  crossing.forEach((found, s) => {
    const [a, b] = [us[s], us[s + 1]];
    const middle = (a + b) / 2;
    found.sort((p, q) => heightAt(p, middle) - heightAt(q, middle));
    for (let k = 0; k + 1 < found.length; k += 2) {
      const [low, high] = [found[k], found[k + 1]];
      const corners = [
        put(a, heightAt(low, a)),
        put(b, heightAt(low, b)),
        put(b, heightAt(high, b)),
        put(a, heightAt(high, a)),
      ];
      // Counter-clockwise seen from the side that is taken away: right is +x across z, −z across x.
      if (plane.axis === 'z') writer.quad(corners[0], corners[1], corners[2], corners[3]);
      else writer.quad(corners[0], corners[3], corners[2], corners[1]);
    }
  });
}

/** The outline as runs without the joint. Points are x, y, z. */
function runsOf({ points }: CutLoop, plane: CutPlane, joint: Joint | null): { points: number[][]; closed: boolean }[] {
  const lateral = plane.axis === 'z' ? 0 : 2;
  const count = points.length / 3;
  const at = (i: number): number[] => [...points.subarray(3 * (i % count), 3 * (i % count) + 3)];
  const all = Array.from({ length: count }, (_, i) => at(i));
  if (!joint) return [{ points: all, closed: true }];
  const runs: number[][][] = [];
  let run: number[][] = [];
  const add = (p: number[], q: number[]): void => {
    if (run.at(-1) !== p) {
      if (run.length > 1) runs.push(run);
      run = [p];
    }
    run.push(q);
  };
  for (let i = 0; i < count; i++) {
    const [p, q] = [all[i], all[(i + 1) % count]];
    const along = joint.on(p[0], p[1], p[2]) && joint.on(q[0], q[1], q[2]);
    if (!along || p[lateral] === q[lateral]) {
      add(p, q);
      continue;
    }
    // Keep what sticks out of the shared range on either side.
    const share = (u: number): number => Math.min(1, Math.max(0, (u - p[lateral]) / (q[lateral] - p[lateral])));
    const [t0, t1] = [share(joint.from), share(joint.to)].toSorted((x, y) => x - y);
    const between = (t: number): number[] => p.map((value, k) => value + t * (q[k] - value));
    if (t0 > 1e-6) add(p, t0 === 1 ? q : between(t0));
    if (t1 < 1 - 1e-6) add(t1 === 0 ? p : between(t1), q);
  }
  if (run.length > 1) runs.push(run);
  return runs.map((pieces) => ({ points: pieces, closed: false }));
}

/**
 * Cuts the pieces with the plane.
 * @param fretOfAnchor fret that an outline belongs to, from the section it moves with
 */
export function cutFace(
  pieces: readonly CutPiece[],
  plane: CutPlane,
  fretOfAnchor?: (anchorMm: number) => number,
): CutFace {
  const writer = createMeshWriter();
  const lines: { points: number[][]; closed: boolean; anchor: number | null; fret: number }[] = [];
  for (const { mesh, colour, joint, skip } of pieces) {
    if (colour) writer.colour(colour);
    const groups = new Map<number | null, CutLoop[]>();
    for (const loop of cutLoops(mesh, plane)) {
      if (skip?.(loop)) continue;
      const [first] = loop.anchorsMm;
      const rigid = loop.anchorsMm.every((anchor) => anchor === first) ? first : null;
      const group = groups.get(rigid);
      if (group) group.push(loop);
      else groups.set(rigid, [loop]);
    }
    for (const [anchor, loops] of groups) {
      const fret = anchor !== null && fretOfAnchor ? fretOfAnchor(anchor) : 0;
      writer.fret(fret);
      fill(writer, loops, plane, anchor);
      for (const loop of loops) {
        for (const run of runsOf(loop, plane, joint?.(loop) ?? null)) lines.push({ ...run, anchor, fret });
      }
    }
  }
  const outlines: OutlineRun[] = lines.map(({ points, closed, anchor, fret }) => {
    writer.fret(fret);
    const vertices = points.map(([x, y, z]) => {
      writer.anchor(anchor ?? x);
      return writer.vertex(x, y, z, plane.axis === 'x' ? 1 : 0, 0, plane.axis === 'z' ? 1 : 0);
    });
    return { first: vertices[0] ?? 0, count: vertices.length, closed };
  });
  return { mesh: writer.finish(), outlines };
}
