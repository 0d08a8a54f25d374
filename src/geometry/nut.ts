/**
 * The nut: a block on the neck's wood in front of the board, its top following the strings. One closed solid.
 *
 * Behind a zero fret it only guides the strings, and begins where the crown of that fret ends. Its height is the string height
 * at the nut; its thickness and the depth of the string notches (half a string) are usual
 * sizes (practice). Notches are not cut: the strings are drawn lying in it by that depth.
 */
import type { Build } from '../neck/build.ts';
import { boardRadiusMm, sagittaMm, stringHeightAtNutMm } from '../neck/neck-shape.ts';
import { createMeshWriter, type Mesh, type Vertex } from './mesh.ts';

export const NUT_THICKNESS_MM = 4.5;
const COLOUR = '#efe8d6';
const ACROSS = 16;

/** Height of the nut's top over the crown of the board at its edge towards the board, mm. */
export function nutTopMm(build: Build): number {
  return stringHeightAtNutMm(build) + 0.3;
}

export function nutMesh(build: Build): Mesh {
  const writer = createMeshWriter();
  writer.colour(COLOUR);
  writer.anchor(0);
  const half = build.widthNutMm / 2;
  const front = build.zeroFret ? -build.crownWidthMm / 2 : 0;
  const radius = boardRadiusMm(build, 0);
  const top = nutTopMm(build);
  const bottom = -build.boardThicknessMm;
  const ease = 0.5;
  // Outline in (x, height over the arc), from the board side over the top to the back; the top falls towards the head.
  const profile: readonly (readonly [number, number, number, number])[] = [
    [front, top - ease, 1, 0.3],
    [front - ease * 0.6, top, 0.5, 1],
    [front - NUT_THICKNESS_MM + 1, top - 0.7, -0.3, 1],
    [front - NUT_THICKNESS_MM, top - 1.9, -1, 0.5],
  ];
  const lateral = (j: number): number => (j === ACROSS ? half : j === 0 ? -half : half * ((2 * j) / ACROSS - 1));
  const height = (level: number, z: number): number => Math.max(bottom + 0.5, level - sagittaMm(radius, z));
  const slopeZ = (z: number): number => (radius === Infinity ? 0 : z / radius);
  const rows = profile.map(([x, level, nx, ny]) =>
    Array.from({ length: ACROSS + 1 }, (_, j) =>
      writer.vertex(x, height(level, lateral(j)), lateral(j), nx, ny, ny * slopeZ(lateral(j))),
    ),
  );
  for (let i = 0; i + 1 < rows.length; i++) {
    for (let j = 0; j < ACROSS; j++) writer.quad(rows[i][j], rows[i + 1][j], rows[i + 1][j + 1], rows[i][j + 1]);
  }
  const face = (index: number, facing: 1 | -1): void => {
    const [x, level] = profile[index];
    const at = (y: number, z: number): Vertex => writer.vertex(x, y, z, facing, 0, 0);
    const [left, right] = [at(bottom, -half), at(bottom, half)];
    const edge = Array.from({ length: ACROSS + 1 }, (_, j) => at(height(level, lateral(j)), lateral(j)));
    const turned = (a: Vertex, b: Vertex, c: Vertex): void =>
      facing === 1 ? writer.triangle(a, b, c) : writer.triangle(a, c, b);
    for (let j = 0; j < ACROSS; j++) turned(left, edge[j], edge[j + 1]);
    turned(left, edge[ACROSS], right);
  };
  face(0, 1);
  face(profile.length - 1, -1);
  const corner = (x: number, z: number): Vertex => writer.vertex(x, bottom, z, 0, -1, 0);
  const back = front - NUT_THICKNESS_MM;
  writer.quad(corner(front, -half), corner(front, half), corner(back, half), corner(back, -half));
  for (const side of [-1, 1] as const) {
    const z = side * half;
    const at = (x: number, y: number): Vertex => writer.vertex(x, y, z, 0, 0, side);
    const tops = profile.map(([x, level]) => at(x, height(level, z)));
    const [low, lowBack] = [at(front, bottom), at(back, bottom)];
    const turned = (a: Vertex, b: Vertex, c: Vertex): void =>
      side === 1 ? writer.triangle(a, b, c) : writer.triangle(a, c, b);
    for (let i = 0; i + 1 < tops.length; i++) turned(low, tops[i], tops[i + 1]);
    turned(low, tops[tops.length - 1], lowBack);
  }
  return writer.finish();
}
