/** The board's wood with its slots, and the lines of binding along its edges. */
import { bindingInUse, type Build } from '../neck/build.ts';
import { boardEndMm, fretPositionsMm, lastFretMm } from '../neck/neck-shape.ts';
import { bindingFromLineMm, sawnLines } from './edges.ts';
import type { Mesh } from './mesh.ts';
import { stripMesh } from './strip.ts';

const SEGMENTS_ACROSS_BOARD = 20;

function common(build: Build) {
  return {
    build,
    startMm: 0,
    endMm: boardEndMm(build),
    undersideMm: build.boardThicknessMm,
    fretXMm: fretPositionsMm(build.scaleLengthMm, build.fretCount),
  };
}

/** Lateral line of the outside of line `line` (0 = the wood alone), on one side. */
function edgeOf(build: Build, line: number, side: 1 | -1): (xMm: number) => number {
  const atNut = build.widthNutMm / 2 - bindingFromLineMm(build, line);
  const slope = (build.widthLastFretMm - build.widthNutMm) / 2 / lastFretMm(build);
  return (x) => side * (atNut + slope * x);
}

/** The wood of the board between its bindings, sawn through from side to side. One closed solid. */
export function boardMesh(build: Build): Mesh {
  return stripMesh({
    ...common(build),
    leftMm: edgeOf(build, 0, -1),
    rightMm: edgeOf(build, 0, 1),
    segmentsAcross: build.boardShape === 'flat' ? 1 : SEGMENTS_ACROSS_BOARD,
    slotted: true,
  });
}

/**
 * The lines of binding from the wood outwards, each a closed solid on either side; the inner ones are sawn through.
 * @returns two meshes a line, the left one (treble side, z < 0) first; empty for an unbound board
 */
export function bindingMeshes(build: Build): Mesh[] {
  return bindingInUse(build).flatMap(({ colour }, line) => {
    const shared = { ...common(build), segmentsAcross: 1, slotted: line < sawnLines(build), colour };
    return [
      stripMesh({ ...shared, leftMm: edgeOf(build, line + 1, -1), rightMm: edgeOf(build, line, -1) }),
      stripMesh({ ...shared, leftMm: edgeOf(build, line, 1), rightMm: edgeOf(build, line + 1, 1) }),
    ];
  });
}
