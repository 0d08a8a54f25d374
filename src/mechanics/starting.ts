/**
 * The bow that a neck has before its frets go in (a refret), and the fall-away that it is given.
 *
 *   one number B      r(x) = 4·B·s·(1 − s),  s = (x − x₁)/(x_e − x₁)     between fret 1 and the body-joint fret (assumption:
 *                     a bow of constant curvature), and straight on from the joint
 *   pressed with heat the bow that was measured once the neck had sprung back; nothing of it is predicted
 *   one per fret      linear between frets, against the straightedge from fret 1 to the joint
 */
import type { Build } from '../neck/build.ts';
import { bowBeforeFrettingMm, fallAwayAtMm, fretPositionsMm } from '../neck/neck-shape.ts';
import { reliefFromDepth, sampleLine } from './relief.ts';
import { straightedgeOf } from './states.ts';

/** Relief in mm at each station; all zero for a new neck. */
export function startingRelief(build: Build, stationXMm: Float64Array): Float64Array {
  if (build.job === 'new') return new Float64Array(stationXMm.length);
  const { fromXMm, toXMm } = straightedgeOf(build);
  if (build.startingReliefMm.length > 0) {
    const fretXMm = fretPositionsMm(build.scaleLengthMm, build.fretCount);
    const measured = stationXMm.map((x) => sampleLine(fretXMm, build.startingReliefMm, x));
    return reliefFromDepth(stationXMm, measured, fromXMm, toXMm);
  }
  return stationXMm.map((x) => {
    const s = (Math.min(x, toXMm) - fromXMm) / (toXMm - fromXMm);
    const beyond = Math.max(0, x - toXMm) / (toXMm - fromXMm);
    return 4 * bowBeforeFrettingMm(build) * (s * (1 - s) - beyond);
  });
}

/** What the fall-away adds to the relief at each station, mm; all zero without. */
export function fallLine(build: Build, stationXMm: Float64Array): Float64Array {
  if (build.fallAwayMm === 0) return new Float64Array(stationXMm.length);
  const { fromXMm, toXMm } = straightedgeOf(build);
  const lower = stationXMm.map((x) => fallAwayAtMm(build, x));
  return reliefFromDepth(stationXMm, lower, fromXMm, toXMm);
}
