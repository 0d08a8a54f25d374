/**
 * Position marks of our own design: on the face a slim seed lying along the neck on the bass side, two of them at
 * the octaves; on the side a round dot under each. Thin closed plates, proud of the wood by `PROUD_MM` so that they show.
 * Places: frets 3, 5, 7, 9, 12 and the same an octave up (common practice, no source), between that fret and the one before.
 */
import type { Build } from '../neck/build.ts';
import { bassSide, boardWidthMm, fretPositionMm } from '../neck/neck-shape.ts';
import { createMeshWriter, type Mesh, type MeshWriter, type Vertex } from './mesh.ts';
import { surfaceHeightMm, surfaceSlope } from './surface.ts';

const PROUD_MM = 0.03;
const DEEP_MM = 1;
const FACE_COLOUR = '#ece6da';
const MARKED = [3, 5, 7, 9, 12];
const OUTLINE = 20;

/** Frets with a mark on a neck of `count` frets. */
export function markedFrets(count: number): number[] {
  return [0, 12, 24].flatMap((octave) => MARKED.map((fret) => fret + octave)).filter((fret) => fret <= count);
}

/** A plate: the outline at the top and again below, both faces as fans, the rim between. */
function writePlate(
  writer: MeshWriter,
  outline: readonly (readonly [x: number, y: number, z: number])[],
  normal: readonly [number, number, number],
): void {
  const shifted = (point: readonly [number, number, number], by: number): [number, number, number] => [
    point[0] + normal[0] * by,
    point[1] + normal[1] * by,
    point[2] + normal[2] * by,
  ];
  const ring = (by: number, facing: 1 | -1): Vertex[] =>
    outline.map((point) =>
      writer.vertex(...shifted(point, by), normal[0] * facing, normal[1] * facing, normal[2] * facing),
    );
  const [top, bottom] = [ring(PROUD_MM, 1), ring(-DEEP_MM, -1)];
  for (let i = 1; i + 1 < outline.length; i++) {
    writer.triangle(top[0], top[i], top[i + 1]);
    writer.triangle(bottom[0], bottom[i + 1], bottom[i]);
  }
  const middle = [0, 1, 2].map((axis) => outline.reduce((sum, point) => sum + point[axis], 0) / outline.length);
  const rim = outline.map((point) => {
    const out: [number, number, number] = [point[0] - middle[0], point[1] - middle[1], point[2] - middle[2]];
    return [PROUD_MM, -DEEP_MM].map((by) => writer.vertex(...shifted(point, by), ...out));
  });
  for (let i = 0; i < rim.length; i++) {
    const next = rim[(i + 1) % rim.length];
    writer.quad(rim[i][0], rim[i][1], next[1], next[0]);
  }
}

/** Marks on the face and on the bass side. */
export function markersMesh(build: Build, sideColour: string): Mesh {
  const writer = createMeshWriter();
  const side = bassSide(build);
  for (const fret of markedFrets(build.fretCount)) {
    const before = fretPositionMm(build.scaleLengthMm, fret - 1);
    const at = fretPositionMm(build.scaleLengthMm, fret);
    const middle = (before + at) / 2;
    const room = at - before - build.crownWidthMm;
    const width = boardWidthMm(build, middle);
    const halfLength = Math.min(5.5, room * 0.36);
    const halfWidth = halfLength * 0.28;
    writer.colour(FACE_COLOUR);
    writer.anchor(null);
    for (const place of fret % 12 === 0 ? [-0.24, 0.24] : [0.24]) {
      const z0 = side * place * width;
      const outline = Array.from({ length: OUTLINE }, (_, i): [number, number, number] => {
        // A seed: two arcs that meet in points; from the body end back on one side, forth on the other.
        const share = (2 * i) / OUTLINE;
        const place = share <= 1 ? 1 - 2 * share : 2 * share - 3;
        const x = middle + halfLength * place;
        const z = z0 + (share <= 1 ? -1 : 1) * halfWidth * (1 - place * place);
        return [x, surfaceHeightMm(build, x, z), z];
      });
      const [slopeX, slopeZ] = surfaceSlope(build, middle, z0);
      const size = Math.hypot(slopeX, 1, slopeZ);
      writePlate(writer, outline, [slopeX / size, 1 / size, slopeZ / size]);
    }
    writer.colour(sideColour);
    const radius = Math.min(1.1, build.boardThicknessMm * 0.22, room * 0.2);
    for (const dx of fret % 12 === 0 ? [-2.2 * radius, 2.2 * radius] : [0]) {
      const slope =
        (build.widthLastFretMm - build.widthNutMm) / 2 / fretPositionMm(build.scaleLengthMm, build.fretCount);
      const size = Math.hypot(slope, 1);
      const outline = Array.from({ length: OUTLINE }, (_, i): [number, number, number] => {
        const angle = (2 * Math.PI * i) / OUTLINE;
        // The other way about on the other side, so that it is seen from outside.
        const x = middle + dx + side * radius * Math.cos(angle);
        const edge = boardWidthMm(build, x) / 2;
        const y = surfaceHeightMm(build, middle, edge);
        return [x, (y - build.boardThicknessMm) / 2 + radius * Math.sin(angle), side * edge];
      });
      writePlate(writer, outline, [-slope / size, 0, side / size]);
    }
  }
  return writer.finish();
}
