/** What each view looks at, and from where. */
import type { Build } from '../../neck/build.ts';
import {
  bassSide,
  boardEndMm,
  boardWidthMm,
  bodyJointMm,
  fretPositionMm,
  heelDepthMm,
  totalThicknessMm,
} from '../../neck/neck-shape.ts';
import type { BowReader } from '../../geometry/bend.ts';
import { HEAD_STUB_MM } from '../../geometry/neck.ts';
import { surfaceHeightMm } from '../../geometry/surface.ts';
import type { SceneView } from '../types.ts';
import { fitted, type Margins, type Orbit } from './orbit.ts';

const degrees = (value: number): number => (value * Math.PI) / 180;

/** Straight (x, y, z) → bowed, pushed onto `out`. */
function pushBowed(out: number[], reader: BowReader, x: number, y: number, z: number): void {
  reader.at(x);
  const cosine = 1 / Math.hypot(1, reader.slope);
  out.push(x - y * reader.slope * cosine, reader.height + y * cosine, z);
}

/** A neck in the picture and where it stands. */
export interface StandingNeck {
  readonly build: Build;
  readonly reader: BowReader;
  readonly offset: readonly [number, number, number];
}

/**
 * Points around all necks as drawn, x, y, z after each other, mm.
 *
 * @param above how far over the board they lie
 * @param steps along the board; with more of them they are close together all around, and not at the corners alone
 */
export function neckPoints(necks: readonly StandingNeck[], above: number, steps = 4): number[] {
  return necks.flatMap(({ build, reader, offset }) => {
    const points = pointsOf(build, reader, above, steps);
    return points.map((value, i) => value + offset[i % 3]);
  });
}

function pointsOf(build: Build, reader: BowReader, above: number, steps: number): number[] {
  const points: number[] = [];
  const end = boardEndMm(build);
  const along = Array.from({ length: steps + 1 }, (_, i) => (end * i) / steps);
  const head = steps > 4 ? [-HEAD_STUB_MM, -HEAD_STUB_MM * 0.7, -HEAD_STUB_MM * 0.35] : [-HEAD_STUB_MM];
  for (const x of [...head, ...along, bodyJointMm(build)]) {
    const half = (boardWidthMm(build, Math.max(0, x)) / 2) * (x < 0 ? 1.42 : 1);
    const depth = totalThicknessMm(build, Math.max(0, x)) + heelDepthMm(build, x);
    for (const z of [-half, half]) {
      pushBowed(points, reader, x, above, z);
      pushBowed(points, reader, x, -depth, z);
      if (steps > 4) pushBowed(points, reader, x, -depth / 2, z);
    }
  }
  return points;
}

function boxPoints(
  reader: BowReader,
  x: readonly [number, number],
  y: readonly [number, number],
  z: readonly [number, number],
): number[] {
  const points: number[] = [];
  for (const px of x) for (const py of y) for (const pz of z) pushBowed(points, reader, px, py, pz);
  return points;
}

/** The fret that a close view shows. */
export function shownFret(build: Build, selected: number | null): number {
  const fret = selected ?? Math.min(7, build.fretCount);
  return Math.min(build.fretCount, Math.max(1, fret));
}

/** Half the length of neck that stays in the `slot` view, mm. */
export function slotReachMm(build: Build): number {
  return Math.max(build.slotDepthMm, build.crownWidthMm) * 2.2;
}

/** Size of the picture in page pixels. */
export interface Frame {
  readonly width: number;
  readonly height: number;
}

/** Pixels of a cut that belong to the factor of the bow, at the bottom: there it has no corner of its own. */
const FOOT_PX = 74;
const MOST_MARGIN = 0.26;
/** Shares of the picture that stay free around a whole neck. */
const BESIDE = 0.04;
const ABOVE = 0.06;
/** From this share of width to height on the neck is turned to lie along the picture; at the second it lies flattest. */
const WIDE_FROM = 2.2;
const WIDEST = 4.2;

/**
 * The home place of a view for a picture of this size.
 * @param necks all necks in the picture; the close views show the first
 * @param liftedMm how high the fret of a close view stands above its seat
 */
export function homeOf(
  view: SceneView,
  necks: readonly StandingNeck[],
  selected: number | null,
  frame: Frame,
  liftedMm = 0,
): Orbit {
  const aspect = frame.width / frame.height;
  const { build, reader } = necks[0];
  const start = (azimuth: number, elevation: number, field: number): Orbit => ({
    target: [0, 0, 0],
    azimuth: degrees(azimuth),
    elevation: degrees(elevation),
    distance: 1000,
    field: degrees(field),
  });
  const room = (side: number, top: number, bottom: number): Margins => ({ left: side, right: side, top, bottom });
  const foot = Math.min(MOST_MARGIN, Math.max(0.1, FOOT_PX / frame.height));
  const head = 0.06;
  // The narrower the picture, the more the neck is turned into its depth.
  const turn = Math.min(1, Math.max(0, (1.9 - aspect) / 1.3));
  const along = Math.min(1, Math.max(0, (aspect - WIDE_FROM) / (WIDEST - WIDE_FROM)));
  const lean = (widest: number, wide: number, narrow: number): number =>
    wide + (narrow - wide) * turn + (widest - wide) * along;
  const whole = room(BESIDE, ABOVE, ABOVE);
  // A left-handed neck is looked at as in a mirror, from its own bass side.
  const fromBass = (azimuth: number): number => (bassSide(build) > 0 ? azimuth : 180 - azimuth);
  const fret = shownFret(build, selected);
  const x = fretPositionMm(build.scaleLengthMm, fret);
  const half = boardWidthMm(build, x) / 2;
  const edge = surfaceHeightMm(build, x, half);
  switch (view) {
    case 'neck': {
      const orbit = start(fromBass(lean(-13, -24, -58)), lean(27, 33, 42), lean(18, 20, 26));
      return fitted(orbit, neckPoints(necks, 6), aspect, whole);
    }
    case 'back': {
      const orbit = start(fromBass(lean(-12, -20, -58)), lean(-30, -38, -44), lean(18, 20, 26));
      return fitted(orbit, neckPoints(necks, 6), aspect, whole);
    }
    case 'edge':
      return fitted(start(0, 1.5, 4), neckPoints(necks, 26), aspect, room(0.04, head, foot));
    case 'slot': {
      const reach = slotReachMm(build);
      const points = boxPoints(
        reader,
        [x - reach * 1.1, x + reach * 1.1],
        [-build.boardThicknessMm * 1.02, build.crownHeightMm * 1.15 + liftedMm],
        [0, 0],
      );
      return fitted(start(-9, 7, 9), points, aspect, room(0.16, head + 0.03, foot));
    }
    case 'fret': {
      const points = boxPoints(
        reader,
        [x, x],
        [edge - build.boardThicknessMm, build.crownHeightMm + 2 + liftedMm],
        [-half * 1.06, half * 1.06],
      );
      return fitted(start(82, 10, 8), points, aspect, room(0.13, head + 0.05, foot + 0.05));
    }
    case 'end': {
      const points = boxPoints(
        reader,
        [x, x],
        [edge - build.boardThicknessMm * 0.75, edge + build.crownHeightMm * 2.2 + liftedMm],
        [half - 13, half + 3],
      );
      return fitted(start(62, 20, 12), points, aspect, room(0.12, head + 0.05, foot));
    }
  }
}
