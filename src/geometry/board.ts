/** The board's wood with its slots, and the lines of binding along its edges. */
import { bindingInUse, type Build } from '../build/build.ts';
import { boardEndMm, fretPositionsMm } from '../build/neck-shape.ts';
import { halfWidthToLineMm, sawnLines } from './edges.ts';
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

/** The wood of the board between its bindings, sawn through from side to side. One closed solid. */
export function boardMesh(build: Build): Mesh {
  return stripMesh({
    ...common(build),
    leftMm: (x) => -halfWidthToLineMm(build, 0, x),
    rightMm: (x) => halfWidthToLineMm(build, 0, x),
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
    const inner = (x: number): number => halfWidthToLineMm(build, line, x);
    const outer = (x: number): number => halfWidthToLineMm(build, line + 1, x);
    const shared = { ...common(build), segmentsAcross: 1, slotted: line < sawnLines(build), colour };
    return [
      stripMesh({ ...shared, leftMm: (x) => -outer(x), rightMm: (x) => -inner(x) }),
      stripMesh({ ...shared, leftMm: inner, rightMm: outer }),
    ];
  });
}
