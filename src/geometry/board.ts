/** The board's wood with its slots, and the lines of binding along its edges. */
import { bindingInUse, type Build } from '../neck/build.ts';
import { boardEndMm, fretPositionsMm, lastFretMm, slotShortMm } from '../neck/neck-shape.ts';
import { bindingFromLineMm } from './edges.ts';
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

/** Lateral line that runs beside the edge, on one side. @param fromEdgeMm how far inside it */
function beside(build: Build, fromEdgeMm: number, side: 1 | -1): (xMm: number) => number {
  const atNut = build.widthNutMm / 2 - fromEdgeMm;
  const slope = (build.widthLastFretMm - build.widthNutMm) / 2 / lastFretMm(build);
  return (x) => side * (atNut + slope * x);
}

/** Sums of decimals differ by less than this, mm. */
const SLACK_MM = 1e-9;

/** Closed strips between two lines beside an edge: cut by the slots as far out as they reach, and whole beyond. */
function edgeStrips(build: Build, side: 1 | -1, innerMm: number, outerMm: number, colour?: string): Mesh[] {
  const short = slotShortMm(build);
  const strip = (from: number, to: number, slotted: boolean) => {
    const [left, right] = side === 1 ? [from, to] : [to, from];
    return stripMesh({
      ...common(build),
      leftMm: beside(build, left, side),
      rightMm: beside(build, right, side),
      segmentsAcross: 1,
      slotted,
      ...(colour === undefined ? {} : { colour }),
    });
  };
  if (short <= outerMm + SLACK_MM) return [strip(innerMm, outerMm, true)];
  if (short >= innerMm - SLACK_MM) return [strip(innerMm, outerMm, false)];
  return [strip(innerMm, short, true), strip(short, outerMm, false)];
}

/** The wood of the board between its bindings: a closed solid that is sawn from side to side, and what is left whole beside it. */
export function boardMeshes(build: Build): Mesh[] {
  const edge = bindingFromLineMm(build, 0);
  const short = Math.max(edge, slotShortMm(build));
  const sawn = stripMesh({
    ...common(build),
    leftMm: beside(build, short, -1),
    rightMm: beside(build, short, 1),
    segmentsAcross: build.boardShape === 'flat' ? 1 : SEGMENTS_ACROSS_BOARD,
    slotted: true,
  });
  if (short <= edge + SLACK_MM) return [sawn];
  return [...edgeStrips(build, -1, short, edge), sawn, ...edgeStrips(build, 1, short, edge)];
}

/**
 * The lines of binding from the wood outwards, closed solids on either side, each sawn or whole: the slots go as far out as
 * the saw does. On the left (treble side, z < 0) first; none for an unbound board.
 */
export function bindingMeshes(build: Build): { readonly mesh: Mesh; readonly colour: string }[] {
  return bindingInUse(build).flatMap(({ colour }, line) => {
    const [inner, outer] = [bindingFromLineMm(build, line), bindingFromLineMm(build, line + 1)];
    return ([-1, 1] as const).flatMap((side) =>
      edgeStrips(build, side, inner, outer, colour).map((mesh) => ({ mesh, colour })),
    );
  });
}
