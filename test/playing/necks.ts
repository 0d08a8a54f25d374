/** Invented necks with a line that is simple enough to say what must come out. */
import { defaultBuild, type Build } from '../../src/neck/build.ts';
import { fretPositionMm, lastFretMm } from '../../src/neck/neck-shape.ts';
import type { Playing } from '../../src/playing/room.ts';
import type { TopLine } from '../../src/playing/set-up.ts';

export const MEDIUM: Playing = { forceN: 1, pluckMm: 130, direction: 'away' };
export const AT_REST: Playing = { ...MEDIUM, forceN: 0 };

export const FLAT_BOARD: Build = { ...defaultBuild(), boardShape: 'flat' };

const STATIONS = 80;

/** A line whose relief is `reliefMm` in the middle between fret 1 and the joint, an arc through both. */
export function arcLine(build: Build, reliefMm: number): TopLine {
  const from = fretPositionMm(build.scaleLengthMm, 1);
  const to = fretPositionMm(build.scaleLengthMm, build.bodyJointFret);
  const end = lastFretMm(build) + build.boardBeyondLastFretMm;
  const stationXMm = Float64Array.from({ length: STATIONS + 1 }, (_, i) => (end * i) / STATIONS);
  return { stationXMm, reliefMm: stationXMm.map((x) => (reliefMm * 4 * (x - from) * (to - x)) / (to - from) ** 2) };
}

export const straightLine = (build: Build): TopLine => arcLine(build, 0);
