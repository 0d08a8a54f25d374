/**
 * Judging a mesh as a solid: closed and consistently oriented by counting directed edges, and by the manifold-3d library,
 * which refuses what is not an oriented 2-manifold and gives volume and genus.
 */
import Module from 'manifold-3d';
import type { Mesh } from '../../src/geometry/mesh.ts';

const library = await Module();
library.setup();

/** Corners with the same position become one. Returns triangle corners without triangles that lost their area that way. */
export function welded(mesh: Mesh): { corners: number[]; points: number[][] } {
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
