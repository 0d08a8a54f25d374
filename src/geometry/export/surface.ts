/** A piece of the neck that leaves the program: one colour, one material, plain arrays. */
export type Finish = 'wood' | 'plastic' | 'metal';

export interface Surface {
  /** What it is, e.g. "Board". */
  readonly part: string;
  /** Name of its material, e.g. "ebony". */
  readonly material: string;
  readonly finish: Finish;
  /** sRGB hex, "#rrggbb". */
  readonly colour: string;
  /** x along the neck from the nut, y up from the crown of the board, z across; mm, as drawn. */
  readonly positionsMm: Float32Array;
  /** Unit, one for each position. */
  readonly normals: Float32Array;
  /** Three a triangle, counter-clockwise seen from outside. */
  readonly indices: Uint32Array;
}

/** Arrays of a triangle mesh. */
export interface Triangles {
  readonly positions: ArrayLike<number>;
  readonly normals: ArrayLike<number>;
  readonly indices: ArrayLike<number>;
}

/** The chosen triangles with only the vertices that they use. @param triangles numbers of triangles, 0 is the first */
export function pickTriangles(
  mesh: Triangles,
  triangles: Iterable<number>,
): Pick<Surface, 'positionsMm' | 'normals' | 'indices'> {
  const renamed = new Map<number, number>();
  const indices: number[] = [];
  for (const triangle of triangles) {
    for (let corner = 0; corner < 3; corner += 1) {
      const vertex = mesh.indices[3 * triangle + corner];
      let name = renamed.get(vertex);
      if (name === undefined) {
        name = renamed.size;
        renamed.set(vertex, name);
      }
      indices.push(name);
    }
  }
  const positionsMm = new Float32Array(renamed.size * 3);
  const normals = new Float32Array(renamed.size * 3);
  for (const [vertex, name] of renamed) {
    for (let axis = 0; axis < 3; axis += 1) {
      positionsMm[3 * name + axis] = mesh.positions[3 * vertex + axis];
      normals[3 * name + axis] = mesh.normals[3 * vertex + axis];
    }
  }
  return { positionsMm, normals, indices: Uint32Array.from(indices) };
}

/** Triangles in groups, each in the order in which it first appears. @param keyOf undefined leaves the triangle out */
export function groupTriangles<Key>(
  indices: ArrayLike<number>,
  keyOf: (firstVertex: number, triangle: number) => Key | undefined,
): Map<Key, number[]> {
  const groups = new Map<Key, number[]>();
  for (let triangle = 0; 3 * triangle < indices.length; triangle += 1) {
    const key = keyOf(indices[3 * triangle], triangle);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group) group.push(triangle);
    else groups.set(key, [triangle]);
  }
  return groups;
}
