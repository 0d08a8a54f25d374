/**
 * Glue to fill a slot around its tang.
 *
 *   at z the glue stands       f(z) = φ·d(z)                                 d(z) = slot depth there (slots.ts)
 *   gap area at z              g(z) = k·f(z) − b·min(t, f(z))·[|z| < tang]   across the slot
 *   chamfer                    2·c·f − f², no more than c², per length       two bevels of 45°, filled down to f(z)
 *   studs in the gap           2·n·A·min(p, (k − b)/2),  n = length of tang/pitch per side
 *   volume                     ∫ g dz over the slot + chamfer − studs
 *   bead                       d = √(4·volume/(π·slot length))                a round bead of that volume along the slot
 *
 * k = kerf, b = tang body width, t = tang depth, φ = share of the depth that the glue reaches (neck/glue-reach.ts), c = chamfer width,
 * A = area of a stud against the wall, p = how far a stud stands out of the body = (stud width − b)/2; all mm.
 * Source: geometry. Assumed: a stud is a prism of area A; where the glue does not reach the foot of the tang, studs count in
 * proportion; the chamfer under the crown is full. The body in contact with the walls (k ≤ b) leaves no room beside it.
 * A drop is taken as 0.05 mL (20 drops to the millilitre, the pharmacist's convention, from memory).
 */
import type { Build } from '../neck/build.ts';
import { gluedDepthMm, gluedTangMm2, integrateTo } from '../neck/glue-reach.ts';
import { madeEnds, type FretEnd } from './ends.ts';
import { seatAt } from '../neck/kerf.ts';

const DROP_MM3 = 50;

export interface SlotGlue {
  readonly fret: number;
  /** Room for glue in the slot; 0 when the fret is pressed in dry. */
  readonly volumeMm3: number;
  /** Depth below the surface, at the centre line, that the glue fills. */
  readonly reachMm: number;
  /** Diameter of a round bead along the whole slot that just fills it. */
  readonly beadMm: number;
}

export interface Glue {
  readonly slots: readonly SlotGlue[];
  readonly totalMm3: number;
  /** mL */
  readonly totalMl: number;
  readonly dropsPerSlot: number;
}

function slotVolumeMm3(build: Build, end: FretEnd): number {
  const { kerfMm: kerf, tangWidthMm, studWidthMm } = seatAt(build, end.fret);
  const body = Math.min(tangWidthMm, kerf);
  const filled = (z: number) => gluedDepthMm(build, end.radiusMm, z);
  const inBevels = (z: number) => {
    const deep = Math.min(filled(z), build.chamferMm);
    return (2 * build.chamferMm - deep) * deep;
  };

  const slot = 2 * integrateTo(end.slotHalfMm, (z) => kerf * filled(z));
  const tangArea = gluedTangMm2(build, end.radiusMm, end.tangHalfMm);
  const chamfer = 2 * integrateTo(end.slotHalfMm, inBevels);
  const standsOut = Math.min((studWidthMm - tangWidthMm) / 2, (kerf - body) / 2);
  // Studs that overlap (see the check "studs-overlap") cannot take more than the whole gap.
  const shareOfWall = Math.min(1, build.studAreaMm2 / (build.studPitchMm * build.tangDepthMm));
  const studs = 2 * tangArea * shareOfWall * standsOut;
  // Where body and kerf leave no room, the difference of equal volumes may round to just below zero.
  return Math.max(0, slot - body * tangArea + chamfer - studs);
}

/** Glue per slot and in all; all zero for a press fit. */
export function glueNeeded(build: Build, ends: readonly FretEnd[] = madeEnds(build)): Glue {
  const dry = build.method === 'press';
  const slots = ends.map((end): SlotGlue => {
    const volumeMm3 = dry ? 0 : slotVolumeMm3(build, end);
    return {
      fret: end.fret,
      volumeMm3,
      reachMm: dry ? 0 : gluedDepthMm(build, Infinity, 0),
      beadMm: Math.sqrt((4 * volumeMm3) / (Math.PI * 2 * end.slotHalfMm)),
    };
  });
  const totalMm3 = slots.reduce((sum, slot) => sum + slot.volumeMm3, 0);
  return { slots, totalMm3, totalMl: totalMm3 / 1000, dropsPerSlot: totalMm3 / slots.length / DROP_MM3 };
}
