/**
 * The slots: where, how deep, and what is left of the board.
 *
 *   drop of the surface        s(z) = R − √(R² − z²)                      below the crown of the board, R = radius at the fret
 *   slot that follows          depth D everywhere below the surface
 *   flat saw cut               depth D − s(z) below the surface, D at the centre line
 *   depth needed               t + c                                      follows
 *                              t + c + s(tang half length)                flat: measured at the centre, clears at the tang's end
 *   board left                 b − s(z) − D                               follows: least at the slot's end
 *                              b − D                                      flat: the same everywhere
 *   chamfer that stays covered (crown width − kerf)/2                     per edge
 *
 * t = tang depth, c = air wanted below the tang, D = slot depth, b = board thickness at the centre line, all mm. The
 * board's underside is flat, so a radiused board is thinner at its edges, and so is what a following cut leaves there.
 * Source: geometry. Assumed: the tang hangs straight down; in truth it leans out with the arc and reaches
 * t·(1 − cos θ) less deep: 0.01 mm on a usual board, 0.1 mm on the widest and tightest. What is asked for is on the safe side.
 */
import type { Build } from '../neck/build.ts';
import { slotDepthAtMm } from '../neck/glue-reach.ts';
import { lastFretMm, sagittaMm } from '../neck/neck-shape.ts';
import { fretEnds, type FretEnd } from './ends.ts';
import { seatAt } from '../neck/kerf.ts';

export interface Slot {
  readonly fret: number;
  readonly xMm: number;
  /** Distance from the last fret, towards the nut. */
  readonly fromLastFretMm: number;
  /** Distance from the fret before (from the nut for fret 1). */
  readonly fromPreviousMm: number;
  readonly boardWidthMm: number;
  /** Infinity on a flat board. */
  readonly radiusMm: number;
  /** Length of the slot, end to end, seen from above. */
  readonly lengthMm: number;
  /** The slot runs out through the edges of the board. */
  readonly open: boolean;
  readonly kerfMm: number;
  /** Depth at the centre line as the build has it, and the least that clears the tang with the air wanted. */
  readonly depthMm: number;
  readonly depthNeededMm: number;
  /** Depth below the surface at the slot's end: what a depth gauge shows there. */
  readonly depthAtEndMm: number;
  /** Air below the tang at the centre line and at the tang's end; negative = the tang stands on the floor. */
  readonly airAtCentreMm: number;
  readonly airAtTangEndMm: number;
  /** Board below the slot at the centre line, and where it is least. */
  readonly leftAtCentreMm: number;
  readonly leftLeastMm: number;
  /** Board thickness at its edge. */
  readonly edgeThicknessMm: number;
  /** Widest chamfer per edge that the crown still covers. */
  readonly chamferLimitMm: number;
}

/** Depth below the centre line's surface at which the slot just clears the tang everywhere. */
export function slotDepthNeededMm(build: Build, end: FretEnd): number {
  const straight = build.tangDepthMm + build.slotClearanceMm;
  return build.slotBottom === 'flat' ? straight + sagittaMm(end.radiusMm, end.tangHalfMm) : straight;
}

/** Widest chamfer per slot edge that the crown covers at a fret; negative when the crown is narrower than the kerf. */
export function chamferLimitMm(build: Build, fret: number): number {
  return (build.crownWidthMm - seatAt(build, fret).kerfMm) / 2;
}

function slotOf(build: Build, end: FretEnd, previousXMm: number): Slot {
  const dropAtSlotEnd = sagittaMm(end.radiusMm, end.slotHalfMm);
  const leftAtCentreMm = build.boardThicknessMm - build.slotDepthMm;
  return {
    fret: end.fret,
    xMm: end.xMm,
    fromLastFretMm: lastFretMm(build) - end.xMm,
    fromPreviousMm: end.xMm - previousXMm,
    boardWidthMm: 2 * end.boardHalfMm,
    radiusMm: end.radiusMm,
    lengthMm: 2 * end.slotHalfMm,
    open: end.slotOpen,
    kerfMm: seatAt(build, end.fret).kerfMm,
    depthMm: build.slotDepthMm,
    depthNeededMm: slotDepthNeededMm(build, end),
    depthAtEndMm: slotDepthAtMm(build, end.radiusMm, end.slotHalfMm),
    airAtCentreMm: build.slotDepthMm - build.tangDepthMm,
    airAtTangEndMm: slotDepthAtMm(build, end.radiusMm, end.tangHalfMm) - build.tangDepthMm,
    leftAtCentreMm,
    leftLeastMm: build.slotBottom === 'flat' ? leftAtCentreMm : leftAtCentreMm - dropAtSlotEnd,
    edgeThicknessMm: build.boardThicknessMm - sagittaMm(end.radiusMm, end.boardHalfMm),
    chamferLimitMm: chamferLimitMm(build, end.fret),
  };
}

/** The slots of frets 1…count. @param ends of the same build, when the caller has them already. */
export function slots(build: Build, ends: readonly FretEnd[] = fretEnds(build)): Slot[] {
  return ends.map((end, index) => slotOf(build, end, ends[index - 1]?.xMm ?? 0));
}
