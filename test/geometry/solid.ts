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
    const point = [mesh.positions[i], mesh.positions[i + 1], mesh.positions[i + 2]];
    // Either zero is one place.
    const key = `${point[0] || 0} ${point[1] || 0} ${point[2] || 0}`;
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
  // Each direction as one number, sorted: the same list twice is what a closed solid has, and most are.
  const there = new Float64Array(corners.length);
  const back = new Float64Array(corners.length);
  for (let t = 0; t < corners.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const [from, to] = [corners[t + k], corners[t + ((k + 1) % 3)]];
      there[t + k] = from * points.length + to;
      back[t + k] = to * points.length + from;
    }
  }
  there.sort();
  back.sort();
  if (there.every((edge, index) => edge === back[index])) return [];
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
    const returning = count.get(`${to} ${from}`) ?? 0;
    if (times !== returning)
      loose.push(`${times}× (${points[from].join(', ')}) → (${points[to].join(', ')}), ${returning}× back`);
  }
  return loose;
}

function flat(points: readonly number[][]): Float32Array {
  const array = new Float32Array(points.length * 3);
  points.forEach((point, index) => array.set(point, index * 3));
  return array;
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
    vertProperties: flat(points),
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
        vertProperties: flat(points),
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
      vertProperties: flat(points),
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

const minus = (u: Point, v: Point): Point => [u[0] - v[0], u[1] - v[1], u[2] - v[2]];
const cross = (u: Point, v: Point): Point => [
  u[1] * v[2] - u[2] * v[1],
  u[2] * v[0] - u[0] * v[2],
  u[0] * v[1] - u[1] * v[0],
];
const dot = (u: Point, v: Point): number => u[0] * v[0] + u[1] * v[1] + u[2] * v[2];

/** Half a micrometre covers the arrays' single precision. */
const CLEAR_MM = 5e-4;

/**
 * Does the segment p–q, whose ends lie `before` and `after` above the triangle's plane, pass through its inside? Touching
 * at its rim or with an end does not count.
 */
function pierces(p: Point, before: number, q: Point, after: number, a: Point, b: Point, c: Point): boolean {
  if (before * after >= 0 || Math.min(Math.abs(before), Math.abs(after)) < CLEAR_MM) return false;
  const [ab, ac] = [minus(b, a), minus(c, a)];
  const normal = cross(ab, ac);
  const square = dot(normal, normal);
  const t = before / (before - after);
  const direction = minus(q, p);
  const at: Point = [p[0] + t * direction[0], p[1] + t * direction[1], p[2] + t * direction[2]];
  const v = dot(cross(minus(at, a), ac), normal) / square;
  const w = dot(cross(ab, minus(at, a)), normal) / square;
  return v > 1e-3 && w > 1e-3 && v + w < 1 - 1e-3;
}

/**
 * Places where an edge of the mesh passes through one of its triangles. Only near ones are compared: triangles are sorted
 * into slices along x, and across the neck within each slice.
 */
export function selfCrossings(mesh: Mesh): string[] {
  const { corners, points } = welded(mesh);
  const at = (index: number): Point => points[index] as unknown as Point;
  // Box of each triangle: least x, y, z, then most.
  const boxes = new Float64Array(corners.length * 2);
  let [least, most] = [Infinity, -Infinity];
  for (let t = 0; t < corners.length; t += 3) {
    const [a, b, c] = [points[corners[t]], points[corners[t + 1]], points[corners[t + 2]]];
    for (let axis = 0; axis < 3; axis++) {
      boxes[2 * t + axis] = Math.min(a[axis], b[axis], c[axis]);
      boxes[2 * t + axis + 3] = Math.max(a[axis], b[axis], c[axis]);
    }
    least = Math.min(least, boxes[2 * t]);
    most = Math.max(most, boxes[2 * t + 3]);
  }
  // Plane of each triangle: unit normal, and its distance from the origin; no normal where it has no area.
  const planes = new Float64Array((corners.length / 3) * 4);
  for (let t = 0; t < corners.length; t += 3) {
    const [a, b, c] = [at(corners[t]), at(corners[t + 1]), at(corners[t + 2])];
    const normal = cross(minus(b, a), minus(c, a));
    const size = Math.hypot(...normal);
    if (size < 1e-9) continue;
    const unit: Point = [normal[0] / size, normal[1] / size, normal[2] / size];
    planes.set([...unit, dot(unit, a)], (t / 3) * 4);
  }
  const above = (plane: number, point: number[]): number =>
    planes[plane] * point[0] + planes[plane + 1] * point[1] + planes[plane + 2] * point[2] - planes[plane + 3];
  const width = Math.max(0.5, (most - least) / 400);
  const sliceOf = (x: number): number => Math.floor((x - least) / width);
  const slices = new Map<number, number[]>();
  for (let t = 0; t < corners.length; t += 3) {
    const last = sliceOf(boxes[2 * t + 3]);
    for (let s = sliceOf(boxes[2 * t]); s <= last; s++) {
      const slice = slices.get(s);
      if (slice) slice.push(t);
      else slices.set(s, [t]);
    }
  }
  const found = new Set<string>();
  /** Edges of u through the triangle t. */
  const compare = (t: number, u: number): void => {
    const plane = (t / 3) * 4;
    const h0 = above(plane, points[corners[u]]);
    const h1 = above(plane, points[corners[u + 1]]);
    const h2 = above(plane, points[corners[u + 2]]);
    if (Math.min(h0, h1, h2) > -CLEAR_MM || Math.max(h0, h1, h2) < CLEAR_MM) return;
    const heights = [h0, h1, h2];
    const [a, b, c] = [corners[t], corners[t + 1], corners[t + 2]];
    for (let k = 0; k < 3; k++) {
      const next = (k + 1) % 3;
      const [from, to] = [corners[u + k], corners[u + next]];
      if (from === a || from === b || from === c || to === a || to === b || to === c) continue;
      if (pierces(at(from), heights[k], at(to), heights[next], at(a), at(b), at(c))) {
        const triangle = [a, b, c].map((i) => at(i).join(' ')).join(' | ');
        found.add(`${at(from).join(' ')} → ${at(to).join(' ')} through ${triangle}`);
      }
    }
  };
  for (const [slice, members] of slices) {
    members.sort((t, u) => boxes[2 * t + 2] - boxes[2 * u + 2]);
    members.forEach((t, index) => {
      for (let next = index + 1; next < members.length; next++) {
        const u = members[next];
        if (boxes[2 * u + 2] > boxes[2 * t + 5]) break;
        if (boxes[2 * u + 1] > boxes[2 * t + 4] || boxes[2 * u + 4] < boxes[2 * t + 1]) continue;
        if (boxes[2 * u] > boxes[2 * t + 3] || boxes[2 * u + 3] < boxes[2 * t]) continue;
        // Two that share several slices are compared in the first of them.
        if (sliceOf(Math.max(boxes[2 * t], boxes[2 * u])) !== slice) continue;
        compare(t, u);
        compare(u, t);
      }
    });
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
