/** Which fret lies under the pointer. */
import { Vector3, type PerspectiveCamera } from 'three';
import { fretPositionsMm } from '../neck/neck-shape.ts';
import { fretEnd } from '../fretwork/ends.ts';
import { surfaceHeightMm } from '../geometry/surface.ts';
import type { Stage } from './stage.ts';

const REACH_PX = 16;
const point = new Vector3();

/** Distance of p from the segment a–b, all in pixels. */
function distanceTo(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const long = dx * dx + dy * dy;
  const share = long === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / long));
  return Math.hypot(px - ax - share * dx, py - ay - share * dy);
}

/** A fret that is pointed at in the picture. */
export interface PointedFret {
  /** 0 = the neck itself, then those that it is compared with, in their order. */
  readonly neck: number;
  readonly fret: number;
}

/** The fret nearest to the place (pixels of the picture), within reach; null = none. */
export function fretAt(
  stage: Stage,
  camera: PerspectiveCamera,
  width: number,
  height: number,
  at: { readonly x: number; readonly y: number },
): PointedFret | null {
  let best: PointedFret | null = null;
  let least = REACH_PX;
  stage.necks().forEach(({ build, reader, offset: [shiftX, shiftY, shiftZ] }, neck) => {
    fretPositionsMm(build.scaleLengthMm, build.fretCount).forEach((x, index) => {
      reader.at(x);
      const half = fretEnd(build, index + 1).crownFootHalfMm;
      const drop = surfaceHeightMm(build, x, half);
      const project = (y: number, z: number): [number, number, boolean] => {
        const cosine = 1 / Math.hypot(1, reader.slope);
        point.set(x - y * reader.slope * cosine + shiftX, reader.height + y * cosine + shiftY, z + shiftZ);
        point.project(camera);
        return [((point.x + 1) / 2) * width, ((1 - point.y) / 2) * height, point.z < 1];
      };
      const [ax, ay, aSeen] = project(drop + build.crownHeightMm, -half);
      const [mx, my] = project(build.crownHeightMm, 0);
      const [bx, by, bSeen] = project(drop + build.crownHeightMm, half);
      if (!aSeen || !bSeen) return;
      const distance = Math.min(distanceTo(at.x, at.y, ax, ay, mx, my), distanceTo(at.x, at.y, mx, my, bx, by));
      if (distance < least) {
        least = distance;
        best = { neck, fret: index + 1 };
      }
    });
  });
  return best;
}
