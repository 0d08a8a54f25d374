/** A steel straightedge standing on its bevelled edge along x; its edge lies at y = 0. One closed solid. */
import { createMeshWriter, type Mesh } from './mesh.ts';

export const STRAIGHTEDGE_HEIGHT_MM = 26;
const THICKNESS_MM = 5;
const EDGE_MM = 1.4;
const BEVEL_MM = 6;
const COLOUR = '#b4babd';

export function straightedgeMesh(fromMm: number, toMm: number): Mesh {
  const writer = createMeshWriter();
  writer.colour(COLOUR);
  writer.anchor(0);
  // Outline across, counter-clockwise seen from the body: y, z.
  const outline: readonly (readonly [number, number])[] = [
    [0, EDGE_MM / 2],
    [0, -EDGE_MM / 2],
    [BEVEL_MM, -THICKNESS_MM / 2],
    [STRAIGHTEDGE_HEIGHT_MM, -THICKNESS_MM / 2],
    [STRAIGHTEDGE_HEIGHT_MM, THICKNESS_MM / 2],
    [BEVEL_MM, THICKNESS_MM / 2],
  ];
  outline.forEach(([y0, z0], i) => {
    const [y1, z1] = outline[(i + 1) % outline.length];
    const [ny, nz] = [z1 - z0, y0 - y1];
    const at = (x: number, y: number, z: number): number => writer.vertex(x, y, z, 0, ny, nz);
    writer.quad(at(fromMm, y0, z0), at(fromMm, y1, z1), at(toMm, y1, z1), at(toMm, y0, z0));
  });
  for (const [x, facing] of [
    [fromMm, -1],
    [toMm, 1],
  ] as const) {
    const corners = outline.map(([y, z]) => writer.vertex(x, y, z, facing, 0, 0));
    for (let i = 1; i + 1 < corners.length; i++) {
      if (facing === 1) writer.triangle(corners[0], corners[i], corners[i + 1]);
      else writer.triangle(corners[0], corners[i + 1], corners[i]);
    }
  }
  return writer.finish();
}
