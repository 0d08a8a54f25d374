/**
 * Cuts the triangles of a neck along the joints of its laminates, so that each piece can have a colour of its own.
 *
 *   place across     q = z/(w/2)                       −1 … 1 over the width w(x) of the neck, which may taper
 *   joints           q = ±q_1, ±q_2, …                 q_i = share of the half width that pieces 1…i take together
 *
 * A triangle that a joint crosses is cut where q, taken as linear along its sides, equals the joint's; the new vertices
 * lie on the old sides, so that the surface stays where it was. Source: geometry. Assumed: q is linear over a triangle; the
 * sides are a few millimetres long and the taper a few per cent, so a joint is off by less than a micrometre.
 */
import type { Triangles } from './surface.ts';

interface Grown {
  readonly positions: number[];
  readonly normals: number[];
  readonly indices: number[];
  /** q of each vertex. */
  readonly across: number[];
}

/** The vertex on the side a–b where q equals the joint's; shared by the triangles on both sides of it. */
function cutSide(mesh: Grown, known: Map<string, number>, a: number, b: number, joint: number): number {
  const [low, high] = a < b ? [a, b] : [b, a];
  const key = `${low} ${high}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const share = (joint - mesh.across[low]) / (mesh.across[high] - mesh.across[low]);
  const at = (list: readonly number[], axis: number) =>
    list[3 * low + axis] + share * (list[3 * high + axis] - list[3 * low + axis]);
  const made = mesh.across.length;
  mesh.positions.push(at(mesh.positions, 0), at(mesh.positions, 1), at(mesh.positions, 2));
  const normal = [at(mesh.normals, 0), at(mesh.normals, 1), at(mesh.normals, 2)];
  const size = Math.hypot(...normal);
  mesh.normals.push(...normal.map((part) => part / size));
  mesh.across.push(joint);
  known.set(key, made);
  return made;
}

/** Cuts along one joint. */
function cutAlong(mesh: Grown, joint: number): Grown {
  const known = new Map<string, number>();
  const indices: number[] = [];
  for (let i = 0; i < mesh.indices.length; i += 3) {
    const corners = [mesh.indices[i], mesh.indices[i + 1], mesh.indices[i + 2]];
    const beyond = corners.map((vertex) => Math.sign(mesh.across[vertex] - joint));
    if (beyond.every((side) => side >= 0) || beyond.every((side) => side <= 0)) {
      indices.push(...corners);
      continue;
    }
    // Turned so that the first corner lies on the joint, or is alone on its side of it.
    const onJoint = beyond.indexOf(0);
    const first =
      onJoint >= 0 ? onJoint : beyond.findIndex((side) => beyond.filter((other) => other === side).length === 1);
    const [a, b, c] = [0, 1, 2].map((turn) => corners[(first + turn) % 3]);
    if (onJoint >= 0) {
      const cut = cutSide(mesh, known, b, c, joint);
      indices.push(a, b, cut, a, cut, c);
    } else {
      const ab = cutSide(mesh, known, a, b, joint);
      const ca = cutSide(mesh, known, c, a, joint);
      indices.push(a, ab, ca, ab, b, c, ab, c, ca);
    }
  }
  return { ...mesh, indices };
}

export interface Split extends Triangles {
  readonly positions: readonly number[];
  readonly normals: readonly number[];
  readonly indices: readonly number[];
  /** Which piece each triangle belongs to, counted from the centre line outwards. */
  readonly pieceOf: readonly number[];
}

/**
 * Cuts a mesh along joints that are symmetric about the centre line.
 * @param acrossOf q of each vertex
 * @param joints ascending, between 0 and 1, both excluded
 */
export function splitAcross(mesh: Triangles, acrossOf: ArrayLike<number>, joints: readonly number[]): Split {
  let cut: Grown = {
    positions: Array.from(mesh.positions),
    normals: Array.from(mesh.normals),
    indices: Array.from(mesh.indices),
    across: Array.from(acrossOf),
  };
  for (const joint of joints) {
    cut = cutAlong(cut, joint);
    cut = cutAlong(cut, -joint);
  }
  const pieceOf = Array.from({ length: cut.indices.length / 3 }, (_, triangle) => {
    const middle = [0, 1, 2].reduce((sum, corner) => sum + cut.across[cut.indices[3 * triangle + corner]], 0) / 3;
    return joints.filter((joint) => Math.abs(middle) > joint).length;
  });
  return { positions: cut.positions, normals: cut.normals, indices: cut.indices, pieceOf };
}
