import type { Mesh } from './mesh.ts';

function joined<T extends Float32Array | Uint8Array>(
  meshes: readonly Mesh[],
  pick: (mesh: Mesh) => T | undefined,
  perVertex: number,
  make: (length: number) => T,
): T | undefined {
  if (!meshes.some((mesh) => pick(mesh) !== undefined)) return undefined;
  const all = make(meshes.reduce((sum, { anchorOf }) => sum + anchorOf.length, 0) * perVertex);
  let at = 0;
  for (const mesh of meshes) {
    const part = pick(mesh);
    if (part) all.set(part, at);
    at += mesh.anchorOf.length * perVertex;
  }
  return all;
}

/** Several meshes as one, for drawing; an optional array that only some have is zero for the others. */
export function mergeMeshes(meshes: readonly Mesh[]): Mesh {
  if (meshes.length === 1) return meshes[0];
  const corners = meshes.reduce((sum, { indices }) => sum + indices.length, 0);
  const vertices = meshes.reduce((sum, { anchorOf }) => sum + anchorOf.length, 0);
  const indices = new Uint32Array(corners);
  const anchorOf = new Uint16Array(vertices);
  const anchors: number[] = [];
  const known = new Map<number, number>();
  let [corner, vertex] = [0, 0];
  for (const mesh of meshes) {
    const renamed = [...mesh.anchorsMm].map((x) => {
      const at = known.get(x);
      if (at !== undefined) return at;
      anchors.push(x);
      known.set(x, anchors.length - 1);
      return anchors.length - 1;
    });
    for (let i = 0; i < mesh.indices.length; i++) indices[corner + i] = mesh.indices[i] + vertex;
    for (let i = 0; i < mesh.anchorOf.length; i++) anchorOf[vertex + i] = renamed[mesh.anchorOf[i]];
    corner += mesh.indices.length;
    vertex += mesh.anchorOf.length;
  }
  const floats = (length: number): Float32Array => new Float32Array(length);
  const bytes = (length: number): Uint8Array => new Uint8Array(length);
  const colours = joined(meshes, (mesh) => mesh.colours, 3, bytes);
  const fretOf = joined(meshes, (mesh) => mesh.fretOf, 1, bytes);
  const cavity = joined(meshes, (mesh) => mesh.cavity, 1, floats);
  const contact = joined(meshes, (mesh) => mesh.contact, 1, floats);
  return {
    positions: joined(meshes, (mesh) => mesh.positions, 3, floats) ?? new Float32Array(0),
    normals: joined(meshes, (mesh) => mesh.normals, 3, floats) ?? new Float32Array(0),
    indices,
    anchorsMm: Float64Array.from(anchors),
    anchorOf,
    ...(colours ? { colours } : {}),
    ...(fretOf ? { fretOf } : {}),
    ...(cavity ? { cavity } : {}),
    ...(contact ? { contact } : {}),
  };
}
