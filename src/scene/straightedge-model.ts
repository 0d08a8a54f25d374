/**
 * The straightedge on the frets. It is a real one: straight at every exaggeration, it rests on the highest fret tops between
 * the first and the body joint, parallel to the line from one to the other, and leaves the gap that the relief line says.
 */
import { Matrix4, type Material, type Mesh as ThreeMesh } from 'three';
import type { Build } from '../neck/build.ts';
import { bassSide, bodyJointMm, fretPositionMm, stringPlacesMm } from '../neck/neck-shape.ts';
import type { BowReader } from '../geometry/bend.ts';
import { straightedgeMesh } from '../geometry/straightedge.ts';
import { createPart } from './part.ts';

export interface StraightedgeModel {
  readonly object: ThreeMesh;
  setBuild(build: Build): void;
  /** Height of its edge and lateral place, as drawn. */
  place(): { readonly yMm: number; readonly zMm: number };
  /** Lays it on the neck as drawn. */
  lay(build: Build, reader: BowReader): void;
  dispose(): void;
}

const BEYOND_MM = 14;

/** Lateral place between two strings nearest to the middle of the board. */
function placeMm(build: Build): number {
  if (build.strings.length < 2) return 0;
  const places = stringPlacesMm(build, bodyJointMm(build) / 2);
  const gaps = places.slice(1).map((place, i) => (place + places[i]) / 2);
  return bassSide(build) * (gaps.toSorted((a, b) => Math.abs(a) - Math.abs(b))[0] ?? 0);
}

/**
 * The greatest gap under the straightedge, in truth, and where it is: it rests on the highest place of the line between fret 1
 * and the body joint.
 */
export function gapUnder(
  build: Build,
  line: { readonly xMm: ArrayLike<number>; readonly reliefMm: ArrayLike<number>; readonly factor: number },
): { readonly xMm: number; readonly gapMm: number } {
  const [from, to] = [fretPositionMm(build.scaleLengthMm, 1), bodyJointMm(build)];
  // Relief is nothing at both ends, where a hollow neck carries the straightedge.
  let [least, most, at] = [0, 0, from];
  for (let i = 0; i < line.xMm.length; i++) {
    const x = line.xMm[i];
    if (x < from || x > to) continue;
    least = Math.min(least, line.reliefMm[i]);
    if (line.reliefMm[i] > most) {
      most = line.reliefMm[i];
      at = x;
    }
  }
  return { xMm: at, gapMm: most - least };
}

export function createStraightedge(material: Material): StraightedgeModel {
  const part = createPart(material);
  part.object.visible = false;
  const matrix = new Matrix4();
  let length = '';
  let [edge, lateral] = [0, 0];
  return {
    object: part.object,
    place: () => ({ yMm: edge, zMm: lateral }),
    setBuild(build) {
      const [from, to] = [fretPositionMm(build.scaleLengthMm, 1) - BEYOND_MM, bodyJointMm(build) + BEYOND_MM];
      const key = `${from} ${to}`;
      if (key === length) return;
      length = key;
      part.setShape(straightedgeMesh(from, to));
    },
    lay(build, reader) {
      let highest = -Infinity;
      for (let fret = 1; fret <= build.bodyJointFret; fret++) {
        reader.at(fretPositionMm(build.scaleLengthMm, fret));
        highest = Math.max(highest, reader.height + build.crownHeightMm / Math.hypot(1, reader.slope));
      }
      edge = highest;
      lateral = placeMm(build);
      // Relief is nothing at both ends, so the straightedge lies level.
      matrix.makeTranslation(0, edge, lateral);
      part.object.matrix.copy(matrix);
      part.object.matrixWorldNeedsUpdate = true;
    },
    dispose: () => part.dispose(),
  };
}
