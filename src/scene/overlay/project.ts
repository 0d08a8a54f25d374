/** From places on the neck to places in the picture. */
import { Vector3, type PerspectiveCamera } from 'three';
import type { BowReader } from '../../geometry/bend.ts';
import type { Place } from './ink.ts';

const point = new Vector3();

export interface Projector {
  /** Drawn (bowed) place → pixels; null behind the camera. */
  drawn(x: number, y: number, z: number): Place | null;
  /** Straight place that moves with the section at `anchorMm` → pixels. */
  straight(anchorMm: number, x: number, y: number, z: number): Place | null;
}

export function createProjector(
  camera: PerspectiveCamera,
  width: number,
  height: number,
  reader: BowReader,
): Projector {
  const drawn = (x: number, y: number, z: number): Place | null => {
    point.set(x, y, z).project(camera);
    return point.z > 1 ? null : [((point.x + 1) / 2) * width, ((1 - point.y) / 2) * height];
  };
  return {
    drawn,
    straight(anchorMm, x, y, z) {
      reader.at(anchorMm);
      const cosine = 1 / Math.hypot(1, reader.slope);
      const sine = reader.slope * cosine;
      const along = x - anchorMm;
      return drawn(anchorMm + along * cosine - y * sine, reader.height + along * sine + y * cosine, z);
    },
  };
}
