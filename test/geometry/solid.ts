/**
 * Judging a mesh as a solid: closed and consistently oriented by counting directed edges, and by the manifold-3d library,
 * which refuses what is not an oriented 2-manifold and gives volume and genus.
 */
import { createHash } from 'node:crypto';
import Module from 'manifold-3d';
import type { Mesh } from '../../src/geometry/mesh.ts';

const library = await Module();
library.setup();

interface Welded {
  readonly corners: number[];
  readonly points: number[][];
}

const weldedOnce = new WeakMap<Mesh, Welded>();

/** Corners with the same position become one. Returns triangle corners without triangles that lost their area that way. */
export function welded(mesh: Mesh): Welded {
  let known = weldedOnce.get(mesh);
  if (!known) {
    known = weld(mesh);
    weldedOnce.set(mesh, known);
  }
  return known;
}

function weld(mesh: Mesh): Welded {
  const seen = new Map<string, number>();
  const points: number[][] = [];
  const of: number[] = [];
  for (let i = 0; i < mesh.positions.length; i += 3) {
    const point = [...mesh.positions.subarray(i, i + 3)];
    const key = point.map((value) => (value === 0 ? 0 : value)).join(' ');
    let at = seen.get(key);
    if (at === undefined) {
      at = points.length;
      points.push(point);
      seen.set(key, at);
    }
    of.push(at);
  }
  const corners: number[] = [];
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => of[mesh.indices[t + k]]);
    if (a !== b && b !== c && c !== a) corners.push(a, b, c);
  }
  return { corners, points };
}

/** Directed edges without exactly one partner running the other way; empty = closed and consistently oriented. */
export function looseEdges(mesh: Mesh): string[] {
  const { corners, points } = welded(mesh);
  const count = new Map<string, number>();
  for (let t = 0; t < corners.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const key = `${corners[t + k]} ${corners[t + ((k + 1) % 3)]}`;
      count.set(key, (count.get(key) ?? 0) + 1);
    }
  }
  const loose: string[] = [];
  for (const [key, times] of count) {
    const [from, to] = key.split(' ').map(Number);
    const back = count.get(`${to} ${from}`) ?? 0;
    if (times !== back)
      loose.push(`${times}× (${points[from].join(', ')}) → (${points[to].join(', ')}), ${back}× back`);
  }
  return loose;
}

export interface Solid {
  readonly status: string;
  readonly volumeMm3: number;
  readonly areaMm2: number;
  readonly genus: number;
}

/** What manifold-3d says of the mesh. */
export function solidOf(mesh: Mesh): Solid {
  const { corners, points } = welded(mesh);
  const input = new library.Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(points.flat()),
    triVerts: Uint32Array.from(corners),
  });
  const solid = new library.Manifold(input);
  const result = {
    status: solid.status() as unknown as string,
    volumeMm3: solid.volume(),
    areaMm2: solid.surfaceArea(),
    genus: solid.genus(),
  };
  solid.delete();
  return result;
}

/** Volume inside both meshes. */
export function commonVolumeMm3(first: Mesh, second: Mesh): number {
  const [a, b] = [first, second].map((mesh) => {
    const { corners, points } = welded(mesh);
    return new library.Manifold(
      new library.Mesh({
        numProp: 3,
        vertProperties: Float32Array.from(points.flat()),
        triVerts: Uint32Array.from(corners),
      }),
    );
  });
  const both = a.intersect(b);
  const volume = both.volume();
  for (const solid of [a, b, both]) solid.delete();
  return volume;
}

/** Area of the cut across an axis, by manifold-3d: the solid is turned so that its own slice across z is that cut. */
export function sliceAreaMm2(mesh: Mesh, axis: 'x' | 'z', atMm: number): number {
  const { corners, points } = welded(mesh);
  const solid = new library.Manifold(
    new library.Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(points.flat()),
      triVerts: Uint32Array.from(corners),
    }),
  );
  const turned = axis === 'z' ? solid.translate([0, 0, 0]) : solid.rotate([0, -90, 0]);
  const slice = turned.slice(atMm);
  const area = slice.area();
  for (const made of [solid, turned, slice]) made.delete();
  return area;
}

/** Volume by the divergence theorem over the triangles as they are, mm³: negative when turned inside out. */
export function signedVolumeMm3({ positions, indices }: Mesh): number {
  let six = 0;
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [indices[t] * 3, indices[t + 1] * 3, indices[t + 2] * 3];
    const [ax, ay, az] = positions.subarray(a, a + 3);
    const [bx, by, bz] = positions.subarray(b, b + 3);
    const [cx, cy, cz] = positions.subarray(c, c + 3);
    six += ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx);
  }
  return six / 6;
}

/**
 * The worst disagreement between a vertex normal and the triangle it belongs to, as cosine; slivers under `leastAreaMm2`
 * do not count, their own normal is noise.
 */
export function worstNormal(mesh: Mesh, leastAreaMm2 = 1e-4): number {
  const { positions: p, normals, indices } = mesh;
  let worst = 1;
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [indices[t] * 3, indices[t + 1] * 3, indices[t + 2] * 3];
    const u = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]];
    const v = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const size = Math.hypot(...n);
    if (size / 2 < leastAreaMm2) continue;
    for (const corner of [a, b, c]) {
      worst = Math.min(
        worst,
        (n[0] * normals[corner] + n[1] * normals[corner + 1] + n[2] * normals[corner + 2]) / size,
      );
    }
  }
  return worst;
}

type Point = readonly [number, number, number];

/** Does the segment p–q pass through the inside of the triangle a-b-c? Touching at its rim or its ends does not count. */
function pierces(p: Point, q: Point, a: Point, b: Point, c: Point): boolean {
  const sub = (u: Point, v: Point): Point => [u[0] - v[0], u[1] - v[1], u[2] - v[2]];
  const cross = (u: Point, v: Point): Point => [
    u[1] * v[2] - u[2] * v[1],
    u[2] * v[0] - u[0] * v[2],
    u[0] * v[1] - u[1] * v[0],
  ];
  const dot = (u: Point, v: Point): number => u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
  const [ab, ac] = [sub(b, a), sub(c, a)];
  const direction = sub(q, p);
  const normal = cross(ab, ac);
  const size = Math.hypot(...normal);
  if (size < 1e-9) return false;
  const [before, after] = [dot(sub(p, a), normal) / size, dot(sub(q, a), normal) / size];
  // Both ends must lie clearly on different sides: half a micrometre covers the arrays' single precision.
  if (before * after >= 0 || Math.min(Math.abs(before), Math.abs(after)) < 5e-4) return false;
  const t = before / (before - after);
  const at: Point = [p[0] + t * direction[0], p[1] + t * direction[1], p[2] + t * direction[2]];
  const v = dot(cross(sub(at, a), ac), normal) / (size * size);
  const w = dot(cross(ab, sub(at, a)), normal) / (size * size);
  return v > 1e-3 && w > 1e-3 && v + w < 1 - 1e-3;
}

/**
 * Places where an edge of the mesh passes through one of its triangles. Triangles are sorted into slices along x, so only
 * near ones are compared.
 */
export function selfCrossings(mesh: Mesh): string[] {
  const { corners, points } = welded(mesh);
  const at = (index: number): Point => points[index] as unknown as Point;
  const slices = new Map<number, number[]>();
  const xs = points.map(([x]) => x);
  const width = Math.max(0.5, (Math.max(...xs) - Math.min(...xs)) / 400);
  for (let t = 0; t < corners.length; t += 3) {
    const [x0, x1, x2] = [xs[corners[t]], xs[corners[t + 1]], xs[corners[t + 2]]];
    const last = Math.floor(Math.max(x0, x1, x2) / width);
    for (let s = Math.floor(Math.min(x0, x1, x2) / width); s <= last; s++) {
      const slice = slices.get(s);
      if (slice) slice.push(t);
      else slices.set(s, [t]);
    }
  }
  // Box of each triangle: least x, y, z, then most.
  const boxes = new Float64Array(corners.length * 2);
  for (let t = 0; t < corners.length; t += 3) {
    for (let axis = 0; axis < 3; axis++) {
      const values = [0, 1, 2].map((k) => points[corners[t + k]][axis]);
      boxes[2 * t + axis] = Math.min(...values);
      boxes[2 * t + axis + 3] = Math.max(...values);
    }
  }
  const apart = (t: number, u: number, axis: number): boolean =>
    boxes[2 * u + axis] > boxes[2 * t + axis + 3] || boxes[2 * u + axis + 3] < boxes[2 * t + axis];
  const found = new Set<string>();
  for (const members of slices.values()) {
    for (const t of members) {
      const triangle = corners.slice(t, t + 3);
      for (const u of members) {
        if (u === t || apart(t, u, 0) || apart(t, u, 1) || apart(t, u, 2)) continue;
        const second = corners.slice(u, u + 3);
        for (let k = 0; k < 3; k++) {
          const [from, to] = [second[k], second[(k + 1) % 3]];
          if (triangle.includes(from) || triangle.includes(to)) continue;
          if (pierces(at(from), at(to), at(triangle[0]), at(triangle[1]), at(triangle[2]))) {
            found.add(
              `${at(from).join(' ')} → ${at(to).join(' ')} through ${triangle.map((i) => at(i).join(' ')).join(' | ')}`,
            );
          }
        }
      }
    }
  }
  return [...found].slice(0, 5);
}

/** What the tests ask of a solid, judged once for each distinct mesh. */
export interface Judgement {
  readonly loose: string[];
  readonly crossings: string[];
  readonly signedVolumeMm3: number;
  readonly solid: Solid;
  readonly worstNormal: number;
}

const judged = new Map<string, Judgement>();

export function judge(mesh: Mesh): Judgement {
  const key = createHash('sha1')
    .update(new Uint8Array(mesh.positions.buffer))
    .update(new Uint8Array(mesh.indices.buffer))
    .digest('hex');
  let judgement = judged.get(key);
  if (!judgement) {
    judgement = {
      loose: looseEdges(mesh),
      crossings: selfCrossings(mesh),
      signedVolumeMm3: signedVolumeMm3(mesh),
      solid: solidOf(mesh),
      worstNormal: worstNormal(mesh),
    };
    judged.set(key, judgement);
  }
  return judgement;
}
