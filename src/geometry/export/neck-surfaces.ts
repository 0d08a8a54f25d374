/** The neck of a build as drawn: bowed along a line, with the frets that are in, in pieces of one colour each. */
import type { Build } from '../../neck/build.ts';
import { metalById } from '../../neck/metals.ts';
import { areLaminatesConstant, boardWidthMm, laminateJoints } from '../../neck/neck-shape.ts';
import { isOwnWood } from '../../neck/materials/own-woods.ts';
import { woodById } from '../../neck/woods.ts';
import { createBender, createBowReader, type BowLine } from '../bend.ts';
import type { Mesh } from '../mesh.ts';
import { PARTS } from '../parts.ts';
import { splitAcross } from './split-across.ts';
import { groupTriangles, pickTriangles, type Finish, type Surface } from './surface.ts';

export interface Drawn {
  readonly line: BowLine;
  /** Are the strings on? */
  readonly strung: boolean;
  /** Fret numbers that are in; undefined = all. */
  readonly fretsIn?: readonly number[];
  /** Words for the parts and for what they are made of. */
  readonly words: {
    readonly neck: string;
    readonly board: string;
    readonly binding: string;
    readonly nut: string;
    readonly frets: string;
    readonly strings: string;
    readonly marks: string;
    readonly wood: (id: string) => string;
    readonly metal: (id: string) => string;
  };
  /** sRGB hex of wood that was typed in by its numbers. */
  readonly ownWoodColour: string;
}

interface Bowed extends Mesh {
  readonly bowedPositions: Float32Array;
  readonly bowedNormals: Float32Array;
}

const hex = (red: number, green: number, blue: number) =>
  `#${[red, green, blue].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;

/**
 * @returns surfaces in mm; no two triangles coincide, frets that are not in are left out
 * @throws {RangeError} when the line has another number of heights than of stations
 */
export function neckSurfaces(build: Build, drawn: Drawn): Surface[] {
  const { words } = drawn;
  const reader = createBowReader();
  reader.load(drawn.line);
  const bowed = (mesh: Mesh): Bowed => {
    const bender = createBender(mesh);
    bender.bend(reader);
    return { ...mesh, bowedPositions: bender.positions, bowedNormals: bender.normals };
  };
  const arrays = ({ bowedPositions, bowedNormals, indices }: Bowed) => ({
    positions: bowedPositions,
    normals: bowedNormals,
    indices,
  });
  const wood = (id: string) =>
    isOwnWood(id)
      ? { material: words.wood(id), colour: drawn.ownWoodColour }
      : { material: words.wood(id), colour: woodById(id).colour };

  const whole = (part: string, mesh: Bowed, look: { material: string; colour: string }, finish: Finish): Surface => {
    const all = Array.from({ length: mesh.indices.length / 3 }, (_, triangle) => triangle);
    return { part, ...look, finish, ...pickTriangles(arrays(mesh), all) };
  };

  /** A mesh whose vertices carry their colours: one surface for each. */
  const byColour = (part: string, mesh: Bowed, finish: Finish): Surface[] => {
    const colours = mesh.colours;
    const groups = groupTriangles(mesh.indices, (vertex) =>
      colours ? hex(colours[3 * vertex], colours[3 * vertex + 1], colours[3 * vertex + 2]) : '#ffffff',
    );
    return [...groups].map(([colour, triangles]) => ({
      part,
      material: `${part}, ${colour}`,
      finish,
      colour,
      ...pickTriangles(arrays(mesh), triangles),
    }));
  };

  const shaft = (): Surface[] => {
    const mesh = bowed(PARTS.neck.make(build));
    if (build.laminates.length === 1) return [whole(words.neck, mesh, wood(build.laminates[0].wood), 'wood')];
    const isConstant = areLaminatesConstant(build);
    const across = Float64Array.from({ length: mesh.anchorOf.length }, (_, vertex) => {
      const x = Math.max(0, mesh.positions[3 * vertex]);
      return mesh.positions[3 * vertex + 2] / (isConstant ? 1 : boardWidthMm(build, x) / 2);
    });
    const joints = laminateJoints(build);
    const split = splitAcross(arrays(mesh), across, joints);
    const groups = groupTriangles(split.indices, (_vertex, triangle) => split.pieceOf[triangle]);
    return [...groups]
      .sort(([a], [b]) => a - b)
      .map(([piece, triangles]) => ({
        part: words.neck,
        ...wood(build.laminates[piece].wood),
        finish: 'wood',
        ...pickTriangles(split, triangles),
      }));
  };

  const wire = (): Surface[] => {
    const mesh = bowed(PARTS.frets.make(build));
    const fretsIn = drawn.fretsIn && new Set(drawn.fretsIn);
    const groups = groupTriangles(mesh.indices, (vertex) =>
      fretsIn === undefined || fretsIn.has(mesh.fretOf?.[vertex] ?? 0) ? true : undefined,
    );
    const metal = metalById(build.wireMetal);
    return [...groups.values()].map((triangles) => ({
      part: words.frets,
      material: words.metal(metal.id),
      finish: 'metal',
      colour: metal.colour,
      ...pickTriangles(arrays(mesh), triangles),
    }));
  };

  return [
    ...shaft(),
    whole(words.board, bowed(PARTS.board.make(build)), wood(build.boardWood), 'wood'),
    ...(build.bindingLineCount > 0 ? byColour(words.binding, bowed(PARTS.binding.make(build)), 'plastic') : []),
    ...byColour(words.nut, bowed(PARTS.nut.make(build)), 'plastic'),
    ...byColour(words.marks, bowed(PARTS.markers.make(build)), 'plastic'),
    ...wire(),
    ...(drawn.strung ? byColour(words.strings, bowed(PARTS.strings.make(build)), 'metal') : []),
  ];
}
