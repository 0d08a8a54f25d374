/** From places on the neck to places in the picture. */
import { Vector3, type PerspectiveCamera } from 'three';
import type { BowReader } from '../../geometry/bend.ts';
import type { Place } from './ink.ts';

const point = new Vector3();
const HERE = [0, 0, 0] as const;

export interface Projector {
  /** Drawn (bowed) place → pixels; null behind the camera. */
  drawn(x: number, y: number, z: number): Place | null;
  /** Straight place that moves with the section at `anchorMm` → pixels. */
  straight(anchorMm: number, x: number, y: number, z: number): Place | null;
}

/** @param offset where the neck stands, added to every place */
export function createProjector(
  camera: PerspectiveCamera,
  width: number,
  height: number,
  reader: BowReader,
  offset: readonly [number, number, number] = HERE,
): Projector {
  const drawn = (x: number, y: number, z: number): Place | null => {
    point.set(x + offset[0], y + offset[1], z + offset[2]).project(camera);
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
