/**
 * Rod and stiff bars inside the neck, and the channel that the rod lies in: tubes and boxes with closed ends.
 *
 *   one-way   the middle of the bar lies on the channel's floor, its anchors higher by the curve: a parabola between them
 *   two-way   the lower bar on the channel's floor, the other above it by their distance
 *   bars      from the underside of the board down, one in the middle (beside the rod where there is one), or one on each side
 *
 * A channel that tapers is never deeper than 0.55 of the wood there (mechanics); a T bar has its flange under the board. Diameters are those of the thread; where two bars do
 * not fit above each other under the board they are drawn thinner and nearer together, so that they do. Assumed: blocks at
 * the ends, length of the bars.
 */
import type { Build } from '../neck/build.ts';
import {
  bodyJointMm,
  boardEndMm,
  channelDepthMm,
  channelsReachMm,
  channelWidthMm,
  rodPlacesMm,
} from '../neck/neck-shape.ts';
import { mergeMeshes } from './merge.ts';
import { createMeshWriter, type Mesh, type MeshWriter, type Vertex } from './mesh.ts';

const SIDES = 20;
/** No bar is drawn thinner. */
const LEAST_BAR_MM = 1.6;
const STEP_MM = 9;
const STEEL = '#9aa1a6';
const BLOCK = '#b08d4f';
const CARBON = '#3a3d42';

/** Depth of the floor of the rod channel below the crown of the board, mm. */
export function channelFloorMm(build: Build, xMm: number): number {
  return build.boardThicknessMm + channelDepthMm(build, xMm);
}

function places(from: number, to: number): number[] {
  const count = Math.max(2, Math.ceil((to - from) / STEP_MM));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

/** A round bar whose axis has the height y(x), at a place across the neck. */
function writeTube(
  writer: MeshWriter,
  [from, to]: readonly [number, number],
  y: (xMm: number) => number,
  radius: number,
  z: number,
): void {
  const xs = places(from, to);
  const rings = xs.map((x) =>
    Array.from({ length: SIDES }, (_, side): Vertex => {
      const angle = (2 * Math.PI * side) / SIDES;
      return writer.vertex(
        x,
        y(x) + radius * Math.sin(angle),
        z + radius * Math.cos(angle),
        0,
        Math.sin(angle),
        Math.cos(angle),
      );
    }),
  );
  for (let r = 0; r + 1 < rings.length; r++) {
    for (let side = 0; side < SIDES; side++) {
      const next = (side + 1) % SIDES;
      writer.quad(rings[r][side], rings[r + 1][side], rings[r + 1][next], rings[r][next]);
    }
  }
  for (const [x, facing] of [
    [from, -1],
    [to, 1],
  ] as const) {
    const ring = Array.from({ length: SIDES }, (_, side): Vertex => {
      const angle = (2 * Math.PI * side) / SIDES;
      return writer.vertex(x, y(x) + radius * Math.sin(angle), z + radius * Math.cos(angle), facing, 0, 0);
    });
    for (let side = 1; side + 1 < SIDES; side++) {
      if (facing === 1) writer.triangle(ring[0], ring[side + 1], ring[side]);
      else writer.triangle(ring[0], ring[side], ring[side + 1]);
    }
  }
}

/** A box along the neck between two heights and two lateral places. */
function writeBox(
  writer: MeshWriter,
  [from, to]: readonly [number, number],
  y: (xMm: number) => readonly [low: number, high: number],
  z: (xMm: number) => readonly [left: number, right: number],
): void {
  const xs = places(from, to);
  const face = (
    corners: (x: number) => readonly (readonly [y: number, z: number])[],
    normal: readonly [number, number, number],
  ): void => {
    const rows = xs.map((x) => corners(x).map(([py, pz]) => writer.vertex(x, py, pz, ...normal)));
    for (let r = 0; r + 1 < rows.length; r++) writer.quad(rows[r][0], rows[r][1], rows[r + 1][1], rows[r + 1][0]);
  };
  face(
    (x) => [
      [y(x)[1], z(x)[0]],
      [y(x)[1], z(x)[1]],
    ],
    [0, 1, 0],
  );
  face(
    (x) => [
      [y(x)[1], z(x)[1]],
      [y(x)[0], z(x)[1]],
    ],
    [0, 0, 1],
  );
  face(
    (x) => [
      [y(x)[0], z(x)[1]],
      [y(x)[0], z(x)[0]],
    ],
    [0, -1, 0],
  );
  face(
    (x) => [
      [y(x)[0], z(x)[0]],
      [y(x)[1], z(x)[0]],
    ],
    [0, 0, -1],
  );
  for (const [x, facing] of [
    [from, -1],
    [to, 1],
  ] as const) {
    const [low, high] = y(x);
    const [left, right] = z(x);
    const at = (py: number, pz: number): Vertex => writer.vertex(x, py, pz, facing, 0, 0);
    const [a, b, c, d] = [at(low, left), at(low, right), at(high, right), at(high, left)];
    if (facing === 1) writer.quad(a, d, c, b);
    else writer.quad(a, b, c, d);
  }
}

/** Where the rod and its channel begin and end, mm from the nut; null without a rod. */
export function rodRunMm(build: Build): readonly [from: number, to: number] | null {
  if (build.rodKind === 'none') return null;
  return [Math.max(0, build.rodStartMm), Math.min(build.rodEndMm, boardEndMm(build))];
}

/** The channel under the board, as empty as it is counted; an empty mesh without one. */
export function channelMesh(build: Build): Mesh {
  const writer = createMeshWriter();
  const run = rodRunMm(build);
  if (run && build.channelWidthMm > 0 && build.channelDepthMm > 0) {
    const depth = (x: number) => [-channelFloorMm(build, x), -build.boardThicknessMm] as const;
    for (const z of rodPlacesMm(build)) {
      const width = (x: number) => [z - channelWidthMm(build, x) / 2, z + channelWidthMm(build, x) / 2] as const;
      writeBox(writer, run, depth, width);
    }
  }
  return writer.finish();
}

/** Pieces of one material. */
export interface RodPiece {
  readonly colour: string;
  readonly mesh: Mesh;
}

/** Bars of the rod, blocks at its ends, stiff bars beside it: those that the build has. */
export function rodPieces(build: Build): RodPiece[] {
  const pieces: RodPiece[] = [];
  const add = (colour: string, write: (writer: MeshWriter) => void): void => {
    const writer = createMeshWriter();
    writer.colour(colour);
    write(writer);
    pieces.push({ colour, mesh: writer.finish() });
  };
  const underside = -build.boardThicknessMm;
  const run = rodRunMm(build);
  if (run) {
    const [from, to] = run;
    const rods = rodPlacesMm(build);
    const diameter = build.rodThread === 'M6' ? 6 : 5;
    const middle = (from + to) / 2;
    const onFloor = (x: number): number => -channelFloorMm(build, x) + diameter / 2;
    let low: (x: number) => number = onFloor;
    let high: (x: number) => number = onFloor;
    if (build.rodKind === 'one-way') {
      const deepest = onFloor(middle);
      low = (x) => deepest + build.rodCurveMm * ((2 * (x - middle)) / (to - from)) ** 2;
      high = low;
      add(STEEL, (writer) => {
        for (const z of rods) writeTube(writer, run, low, diameter / 2, z);
      });
    } else {
      const room = Math.min(...[from, to].map((x) => channelFloorMm(build, x))) - build.boardThicknessMm;
      const thin = Math.max(LEAST_BAR_MM, Math.min(diameter, build.rodSpacingMm - 0.4, room / 2 - 0.1));
      low = (x) => -channelFloorMm(build, x) + thin / 2;
      high = (x) => Math.max(low(x) + 0.6 * thin, Math.min(underside - thin / 2, low(x) + build.rodSpacingMm));
      add(STEEL, (writer) => {
        for (const z of rods) {
          writeTube(writer, run, low, thin / 2, z);
          writeTube(writer, run, high, thin / 2, z);
        }
      });
    }
    const half = Math.max(diameter, build.channelWidthMm) / 2;
    const block = (x: number): readonly [number, number] => [low(x) - diameter * 0.62, high(x) + diameter * 0.62];
    add(BLOCK, (writer) => {
      for (const z of rods) {
        const lateral = (): readonly [number, number] => [z - half, z + half];
        writeBox(writer, [from - 4, from + 6], block, lateral);
        writeBox(writer, [to - 6, to + 4], block, lateral);
      }
    });
  }
  if (build.barCount > 0) {
    const beside = channelsReachMm(build) + 2.5;
    const alone = build.barCount === 1;
    const inner = alone ? (run ? beside : -build.barWidthMm / 2) : run ? beside : 3;
    add(build.barKind === 'solid' ? CARBON : STEEL, (writer) => {
      for (const left of alone ? [inner] : [inner, -inner - build.barWidthMm]) writeBar(writer, build, left);
    });
  }
  return pieces;
}

/** A stiff bar from the underside of the board down; of a T its flange lies under the board. */
function writeBar(writer: MeshWriter, build: Build, left: number): void {
  const { barKind, barWidthMm, barDepthMm, barWallMm } = build;
  const ends = [6, bodyJointMm(build)] as const;
  const underside = -build.boardThicknessMm;
  const box = (from: number, to: number, z: readonly [number, number]) =>
    writeBox(
      writer,
      ends,
      () => [underside - to, underside - from],
      () => z,
    );
  if (barKind !== 'steel-t') {
    box(0, barDepthMm, [left, left + barWidthMm]);
    return;
  }
  const web = left + (barWidthMm - barWallMm) / 2;
  box(0, barWallMm, [left, left + barWidthMm]);
  box(barWallMm, barDepthMm, [web, web + barWallMm]);
}

/** Rod and bars of the build; an empty mesh when it has neither. */
export function rodMesh(build: Build): Mesh {
  return mergeMeshes(rodPieces(build).map(({ mesh }) => mesh));
}
