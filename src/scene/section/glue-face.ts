/** Glue in the slots as it shows in a cut: from the surface down as far as it reaches, the tang lies over it. */
import type { Build } from '../../neck/build.ts';
import { fretEnds } from '../../fretwork/ends.ts';
import { seatAt } from '../../neck/kerf.ts';
import type { CutPlane } from '../../geometry/cut.ts';
import { createMeshWriter, type Mesh } from '../../geometry/mesh.ts';
import { createSurface } from '../../geometry/surface.ts';

const STEPS = 24;
export const GLUE_COLOUR = '#d8a23a';

/** Faces of the glue in the plane; an empty mesh when nothing is glued. */
export function glueFace(build: Build, plane: CutPlane): Mesh {
  const writer = createMeshWriter();
  writer.colour(GLUE_COLOUR);
  if (build.method !== 'press' && build.glueReachPercent > 0) {
    const surface = createSurface(build);
    const share = build.glueReachPercent / 100;
    for (const end of fretEnds(build)) {
      const top = (z: number): number => surface.heightMm(end.radiusMm, z);
      const bottom = (z: number): number => top(z) + share * (surface.floorMm(end.radiusMm, z) - top(z));
      writer.anchor(end.xMm);
      writer.fret(end.fret);
      if (plane.axis === 'z') {
        if (Math.abs(plane.atMm) >= end.slotHalfMm) continue;
        const half = seatAt(build, end.fret).kerfMm / 2;
        const [t, b] = [top(plane.atMm), bottom(plane.atMm)];
        const at = (x: number, y: number): number => writer.vertex(end.xMm + x, y, plane.atMm, 0, 0, 1);
        writer.quad(at(-half, b), at(half, b), at(half, t), at(-half, t));
      } else if (Math.abs(plane.atMm - end.xMm) < 1e-6) {
        const rows = Array.from({ length: STEPS + 1 }, (_, i) => {
          const z = end.slotHalfMm * ((2 * i) / STEPS - 1);
          return [top(z), bottom(z)].map((y) => writer.vertex(end.xMm, y, z, 1, 0, 0));
        });
        for (let i = 0; i < STEPS; i++) writer.quad(rows[i][0], rows[i + 1][0], rows[i + 1][1], rows[i][1]);
      }
    }
  }
  return writer.finish();
}
