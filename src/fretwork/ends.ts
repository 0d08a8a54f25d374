/**
 * The end of a fret: where the saw, the tang and the crown stop. Both sides of a neck are alike, so one end is described.
 * All `…HalfMm` are distances from the centre line as seen from above; lengths along the wire say so.
 *
 *   binding                    lines of thickness t₁…t_n from the wood outwards, inside the board width w
 *   slot, half length          w/2 − max(t_{k+1} + … + t_n, b)    the saw passes through the first k lines, and stops b before
 *                                                                 the edge whatever is there
 *   tang, half length          slot − c where it is nipped short, w/2 else
 *   nip, along the wire        a(w/2) − a(tang) + o               nipped; else 0: the tang is filed flush there
 *   crown at its foot          w/2 − i
 *   shelf                      crown foot − slot                  the crown rests on the lines left whole
 *   crown at height h          (R + h)·sin θ_h,  θ_h = asin(R/(R + h)·sin(θ_f + β)) − β,  R·sin θ_f = crown foot
 *                              flat board: crown foot − h·tan β
 *
 * k = lines sawn through, b = bridge, c = nip clearance, o = oversize per end (along the wire), i = inset of the fret end,
 * β = bevel from the vertical, R = board radius under the fret, a(z) = arc from the crown of the board to z (arc.ts).
 * The bevel formula is the plane of the file through the foot, met with the circle of radius R + h.
 * Source: geometry; the nip rule "lines left whole + clearance + oversize" is common practice, no source.
 * Assumed: the faces between binding lines are upright; the bevel is one plane.
 */
import { bindingInUse, type Build } from '../neck/build.ts';
import { boardRadiusMm, boardWidthMm, fretPositionMm, slotShortMm, tangShortMm } from '../neck/neck-shape.ts';
import { arcMm } from './arc.ts';

/** One line of binding at a fret. */
export interface LineAtFret {
  readonly thicknessMm: number;
  readonly colour: string;
  /** Its inner and outer face. */
  readonly innerMm: number;
  readonly outerMm: number;
  /** The saw passes through it, or into it. */
  readonly sawn: boolean;
}

export interface FretEnd {
  readonly fret: number;
  readonly xMm: number;
  /** Infinity on a flat board. */
  readonly radiusMm: number;
  readonly boardHalfMm: number;
  /** Half width of the board's own wood, inside all binding. */
  readonly woodHalfMm: number;
  /** From the wood outwards; empty on an unbound board. */
  readonly lines: readonly LineAtFret[];
  readonly linesSawn: number;
  readonly linesWhole: number;
  /** How far from the edge the slot stops: the width of what is left whole, seen from above. */
  readonly wholeWidthMm: number;
  readonly slotHalfMm: number;
  /** The slot runs out through the edge of the board. */
  readonly slotOpen: boolean;
  readonly tangHalfMm: number;
  /** Tang to nip off this end of the wire as cut, along the wire; 0 where it goes to the edge. */
  readonly nipMm: number;
  /** Bare crown (no tang below) that remains after the end is filed, along the wire. */
  readonly nipFiledMm: number;
  readonly crownFootHalfMm: number;
  readonly crownTopHalfMm: number;
  /** Crown resting on lines left whole, seen from above; 0 when there are none. */
  readonly shelfMm: number;
  /** Slot left uncovered beyond the filed crown, seen from above; 0 when the crown covers it. */
  readonly slotUncoveredMm: number;
  /** Wire beyond the edge before filing, along the wire. */
  readonly overhangMm: number;
  /** How much shorter the crown is at its top than at its foot, seen from above. */
  readonly bevelLossMm: number;
}

/** Sums of decimals differ by less than this, mm. */
const SLACK_MM = 1e-9;

/** Where a bevelled crown ends at a height above the board. */
export interface BevelPoint {
  /** Distance from the centre line, seen from above. */
  readonly halfMm: number;
  /** The same point carried down square to the board: its distance from the centre line on the board's surface. */
  readonly onBoardHalfMm: number;
}

/** End of the crown at `heightMm` above the board's surface, for a bevel that begins at `footHalfMm` on the board. */
export function bevelPoint(
  radiusMm: number,
  footHalfMm: number,
  heightMm: number,
  bevelFromVerticalDegrees: number,
): BevelPoint {
  const bevel = (bevelFromVerticalDegrees * Math.PI) / 180;
  if (radiusMm === Infinity) {
    const halfMm = footHalfMm - heightMm * Math.tan(bevel);
    return { halfMm, onBoardHalfMm: halfMm };
  }
  const footAngle = arcMm(radiusMm, footHalfMm) / radiusMm;
  const outer = radiusMm + heightMm;
  const angle = Math.asin((radiusMm / outer) * Math.sin(footAngle + bevel)) - bevel;
  return { halfMm: outer * Math.sin(angle), onBoardHalfMm: radiusMm * Math.sin(angle) };
}

/**
 * One end of fret n (1 is the first, 0 a zero fret).
 * @throws {RangeError} when there is no such fret, or the binding leaves no room for slot and tang.
 */
export function fretEnd(build: Build, fret: number): FretEnd {
  if (!Number.isInteger(fret) || fret < (build.zeroFret ? 0 : 1) || fret > build.fretCount) {
    throw new RangeError(`fret ${fret} is not on this board: frets are 1 to ${build.fretCount}`);
  }
  const xMm = fretPositionMm(build.scaleLengthMm, fret);
  const radiusMm = boardRadiusMm(build, xMm);
  const boardHalfMm = boardWidthMm(build, xMm) / 2;

  const binding = bindingInUse(build);
  const short = slotShortMm(build);
  const slotHalfMm = boardHalfMm - short;
  const bindingWidthMm = binding.reduce((sum, line) => sum + line.thicknessMm, 0);
  const woodHalfMm = boardHalfMm - bindingWidthMm;
  if (!(woodHalfMm > 0)) {
    throw new RangeError(
      `binding of ${bindingWidthMm} mm per side is too wide at fret ${fret}: it must be less than half the board, ${boardHalfMm.toFixed(2)} mm`,
    );
  }
  const lines: LineAtFret[] = [];
  let innerMm = woodHalfMm;
  for (const [index, { thicknessMm, colour }] of binding.entries()) {
    const sawn = index < build.linesSawnThrough && innerMm < slotHalfMm - SLACK_MM;
    // The last face is the edge of the board itself, whatever the rounding of the sum.
    const outerMm = index === binding.length - 1 ? boardHalfMm : innerMm + thicknessMm;
    lines.push({ thicknessMm, colour, innerMm, outerMm, sawn });
    innerMm = outerMm;
  }

  const linesSawn = lines.filter(({ sawn }) => sawn).length;
  const slotOpen = short === 0;
  const tangShort = tangShortMm(build);
  const tangHalfMm = boardHalfMm - tangShort;
  const crownFootHalfMm = boardHalfMm - build.endInsetMm;
  const top = bevelPoint(radiusMm, crownFootHalfMm, build.crownHeightMm, build.endBevelDegrees);
  if (!(tangHalfMm > 0)) {
    throw new RangeError(
      `nip clearance of ${build.nipClearanceMm} mm leaves no tang at fret ${fret}: it must be less than the slot's half length, ${slotHalfMm.toFixed(2)} mm`,
    );
  }
  if (!(top.halfMm > 0)) {
    throw new RangeError(
      `bevel of ${build.endBevelDegrees}° leaves no crown at fret ${fret}: it takes ${(crownFootHalfMm - top.halfMm).toFixed(2)} mm of ${crownFootHalfMm.toFixed(2)} mm per side`,
    );
  }

  const tangArcMm = arcMm(radiusMm, tangHalfMm);
  return {
    fret,
    xMm,
    radiusMm,
    boardHalfMm,
    woodHalfMm,
    lines,
    linesSawn,
    linesWhole: binding.length - linesSawn,
    wholeWidthMm: short,
    slotHalfMm,
    slotOpen,
    tangHalfMm,
    nipMm: tangShort === 0 ? 0 : arcMm(radiusMm, boardHalfMm) - tangArcMm + build.oversizeMm,
    nipFiledMm: Math.max(0, arcMm(radiusMm, crownFootHalfMm) - tangArcMm),
    crownFootHalfMm,
    crownTopHalfMm: top.halfMm,
    shelfMm: Math.max(0, crownFootHalfMm - slotHalfMm),
    slotUncoveredMm: Math.max(0, slotHalfMm - crownFootHalfMm),
    overhangMm: build.oversizeMm,
    bevelLossMm: crownFootHalfMm - top.halfMm,
  };
}

/** The ends of frets 1…count. */
/** The zero fret, where the board has one: cut, bent and seated like the others, and no fret of the board's count. */
export const zeroEnds = (build: Build): FretEnd[] => (build.zeroFret ? [fretEnd(build, 0)] : []);

/** Every fret that is made: a zero fret first, and those of the board. */
export const madeEnds = (build: Build): FretEnd[] => [...zeroEnds(build), ...fretEnds(build)];

export function fretEnds(build: Build): FretEnd[] {
  return Array.from({ length: build.fretCount }, (_, index) => fretEnd(build, index + 1));
}
