/**
 * The strings over the neck, each a tube with closed ends, from behind the nut to beyond the board.
 *
 *   height over the crown line    h(x) straight through the string heights at the nut and at fret 12
 *
 * Each string stands at that height above the board's arc below it. Drawn sections follow the bow with the neck, so that
 * the clearances in the picture stay true at every exaggeration.
 */
import type { Build } from '../neck/build.ts';
import {
  bassSide,
  boardEndMm,
  boardRadiusMm,
  fretPositionMm,
  sagittaMm,
  stringPlacesMm,
  stringHeightAtNutMm,
} from '../neck/neck-shape.ts';
import { createMeshWriter, type Mesh, type Vertex } from './mesh.ts';
import { NUT_THICKNESS_MM } from './nut.ts';

const SIDES = 8;
const STEP_MM = 12;
const BEYOND_BOARD_MM = 26;
const BEHIND_NUT_MM = 64;
const HEAD_FALL = 0.19;

const COLOURS: Record<Build['strings'][number]['construction'], string> = {
  'steel-plain': '#cfd2d4',
  'steel-wound': '#b9bbba',
  'bronze-wound': '#c79a62',
  'nylon-plain': '#e9e4d4',
  'nylon-wound': '#cdbfa6',
};

/**
 * By how much a string lies higher at x than the mean of all, mm: the bass side's share, which grows from the nut on.
 * @param across of the string, from the middle of the treble string's place (−½) to the bass string's (½)
 */
function besideMeanMm(build: Build, xMm: number, across: number): number {
  return (build.bassHigherMm * across * xMm) / fretPositionMm(build.scaleLengthMm, 12);
}

/** Mean height of the strings over the crown line at x, mm. */
export function stringHeightMm(build: Build, xMm: number): number {
  const twelfth = fretPositionMm(build.scaleLengthMm, 12);
  const atNut = stringHeightAtNutMm(build);
  return atNut + ((build.stringHeightFret12Mm - atNut) * xMm) / twelfth;
}

export function stringsMesh(build: Build): Mesh {
  const writer = createMeshWriter();
  const end = boardEndMm(build) + BEYOND_BOARD_MM;
  const count = Math.ceil(end / STEP_MM);
  const over = Array.from({ length: count + 1 }, (_, i) => (end * i) / count);
  const xs = [-NUT_THICKNESS_MM - BEHIND_NUT_MM, -NUT_THICKNESS_MM - BEHIND_NUT_MM / 2, -NUT_THICKNESS_MM, ...over];
  const side = bassSide(build);
  const placesAt = xs.map((x) => stringPlacesMm(build, Math.max(0, x)));
  build.strings.forEach(({ construction, diameterMm }, index) => {
    writer.colour(COLOURS[construction]);
    const radius = diameterMm / 2;
    const centres = xs.map((x, i) => {
      const z = placesAt[i][index];
      const along = Math.max(0, x);
      const behind = Math.max(0, -NUT_THICKNESS_MM - x);
      const arc = sagittaMm(boardRadiusMm(build, along), z);
      const [treble, bass] = [placesAt[i][0], placesAt[i].at(-1)!];
      const across = bass > treble ? z / (bass - treble) : 0;
      return {
        y: stringHeightMm(build, along) + besideMeanMm(build, along, across) - arc - behind * HEAD_FALL + radius * 0.2,
        z: side * z,
      };
    });
    const rings = xs.map((x, i) =>
      Array.from({ length: SIDES }, (_, side): Vertex => {
        const angle = (2 * Math.PI * side) / SIDES;
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        return writer.vertex(x, centres[i].y + radius * s, centres[i].z + radius * c, 0, s, c);
      }),
    );
    for (let r = 0; r + 1 < rings.length; r++) {
      for (let side = 0; side < SIDES; side++) {
        const next = (side + 1) % SIDES;
        writer.quad(rings[r][side], rings[r + 1][side], rings[r + 1][next], rings[r][next]);
      }
    }
    // The ends have corners of their own, facing along the string.
    const endRing = (ring: readonly Vertex[], i: number, facing: 1 | -1): Vertex[] =>
      ring.map((_, side) => {
        const angle = (2 * Math.PI * side) / SIDES;
        const { y, z } = centres[i];
        return writer.vertex(xs[i], y + radius * Math.sin(angle), z + radius * Math.cos(angle), facing, 0, 0);
      });
    const [first, last] = [endRing(rings[0], 0, -1), endRing(rings[0], xs.length - 1, 1)];
    for (let side = 1; side + 1 < SIDES; side++) {
      writer.triangle(first[0], first[side], first[side + 1]);
      writer.triangle(last[0], last[side + 1], last[side]);
    }
  });
  return writer.finish();
}
